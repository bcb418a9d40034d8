import { describe, expect, it } from "vitest";
import { countChange, mergedVersions, standingOf, type Versions } from "../../../src/core/piece/versions.ts";
import { fc } from "../../seed.ts";

const anyVersions: fc.Arbitrary<Versions> = fc.dictionary(fc.constantFrom("a", "b", "c"), fc.nat(4));

describe("standingOf(one, other)", () => {
  // By hand: a device that counts more knows changes that the other copy has not seen.
  it.each([
    [{}, {}, "same"],
    [{ a: 1 }, { a: 1 }, "same"],
    [{ a: 1, b: 0 }, { a: 1 }, "same"],
    [{ a: 2 }, { a: 1 }, "ahead"],
    [{ a: 1, b: 1 }, { a: 1 }, "ahead"],
    [{ a: 1 }, { a: 1, b: 3 }, "behind"],
    [{ a: 2, b: 1 }, { a: 1, b: 2 }, "apart"],
    [{ a: 1 }, { b: 1 }, "apart"],
  ] as const)("of %j to %j is %s", (one, other, wanted) => {
    expect(standingOf(one, other)).toBe(wanted);
  });

  it("turns round with the two", () => {
    const turned = { same: "same", ahead: "behind", behind: "ahead", apart: "apart" };
    fc.assert(
      fc.property(anyVersions, anyVersions, (one, other) => {
        expect(standingOf(other, one)).toBe(turned[standingOf(one, other)]);
      }),
    );
  });
});

describe("countChange(versions, device)", () => {
  it("is ahead of what it counts on from, and counts for its device alone", () => {
    expect(countChange({ a: 2, b: 7 }, "a")).toEqual({ a: 3, b: 7 });
    expect(countChange({ a: 2 }, "b")).toEqual({ a: 2, b: 1 });
  });
});

describe("mergedVersions(one, other)", () => {
  it("knows both, and nothing more", () => {
    expect(mergedVersions({ a: 3, b: 1 }, { b: 2, c: 5 })).toEqual({ a: 3, b: 2, c: 5 });
    fc.assert(
      fc.property(anyVersions, anyVersions, (one, other) => {
        const merged = mergedVersions(one, other);
        expect(["same", "ahead"]).toContain(standingOf(merged, one));
        expect(["same", "ahead"]).toContain(standingOf(merged, other));
      }),
    );
  });
});
