import { describe, expect, it } from "vitest";
import { checkParts, type Joined } from "../../../src/build/shards/check-parts.ts";
import type { Part } from "../../../src/build/shards/read-part.ts";

const inputs = { content: "c0", program: "b0", address: "https://quay.test/", browser: "one 1.0", kits: "a0" };
const joined: Joined = {
  inputs,
  kits: new Map([
    ["boat", "b1"],
    ["gull", "91"],
    ["moon", "71"],
  ]),
};

/** A part without files. */
function made(number: number | undefined, slugs: readonly string[], of = 2): Part {
  return {
    schema: "leaflight/part/1",
    folder: `parts/${number ?? slugs.join("-")}`,
    shard: number === undefined ? undefined : { number, of },
    inputs,
    kits: slugs.map((slug) => ({ slug, key: joined.kits.get(slug) ?? "00", files: [] })),
    shared: [],
  };
}

describe("checkParts(parts, joined)", () => {
  const first = made(1, ["boat"]);
  const second = made(2, ["gull", "moon"]);
  const refused = (...parts: Part[]): string => {
    try {
      checkParts(parts, joined);
    } catch (error) {
      return (error as Error).message;
    }
    return "joined";
  };

  it("joins all parts of a site, in any order, also where no kit was dealt to one", () => {
    expect(refused(first, second)).toBe("joined");
    expect(refused(second, first)).toBe("joined");
    expect(refused(made(1, ["boat", "gull", "moon"]), made(2, []))).toBe("joined");
  });

  it("joins kits that were picked by hand, also in place of a part", () => {
    expect(refused(made(undefined, ["boat"]), made(undefined, ["gull", "moon"]))).toBe("joined");
    expect(refused(second, made(undefined, ["boat"]))).toBe("joined");
  });

  it.each([
    ["content", "other content"],
    ["program", "another version of the program"],
    ["address", "another address"],
    ["browser", "another browser"],
    ["kits", "other kits"],
  ] as const)("says that %s is another", (what, words) => {
    expect(refused(first, { ...second, inputs: { ...inputs, [what]: "f0" } })).toContain(
      `parts/2 was made from ${words}`,
    );
  });

  it("says which kit was made from another folder, or is none of the site", () => {
    const changed = { ...second, kits: [{ slug: "moon", key: "72", files: [] }] };
    expect(refused(first, changed)).toContain("moon in parts/2 was made from another folder moon");
    expect(refused(first, second, made(undefined, ["lamp"]))).toContain("lamp in parts/lamp was made from another");
  });

  it("says which part is missing, or which kits are in none", () => {
    expect(refused(first)).toBe("Part 2 of 2 is missing. Name the folders of all parts.");
    expect(refused(made(2, ["boat", "gull", "moon"]))).toContain("Part 1 of 2 is missing.");
    expect(refused(made(undefined, ["gull"]))).toBe("No part has boat, moon. Name the folders of all parts.");
  });

  it("says which part or kit is there twice", () => {
    expect(refused(first, second, { ...second, folder: "copy" })).toContain("copy and parts/2 are the same part");
    expect(refused(first, second, made(undefined, ["moon"]))).toContain("moon is in parts/moon and in parts/2");
  });

  it("does not join one of two parts with one of three", () => {
    expect(refused(first, made(2, ["gull", "moon"], 3))).toContain("parts/2 is one of 3 parts, and parts/1 one of 2");
  });
});
