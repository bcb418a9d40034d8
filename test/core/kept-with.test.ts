import { describe, expect, it } from "vitest";
import { lastPer, oncePer } from "../../src/core/kept-with.ts";

describe("oncePer(make)", () => {
  it("makes once of each object, also where nothing comes of it", () => {
    const asked: object[] = [];
    const of = oncePer((one: { readonly size?: number }) => {
      asked.push(one);
      return one.size;
    });
    const [some, none] = [{ size: 3 }, {}];
    expect([of(some), of(none), of(some), of(none), of({ size: 3 })]).toEqual([3, undefined, 3, undefined, 3]);
    expect(asked).toEqual([some, none, { size: 3 }]);
  });
});

describe("lastPer(most)", () => {
  it("keeps what was asked for last of each object", () => {
    const made: string[] = [];
    const [one, other] = [{}, {}];
    const kept = lastPer<object, string>(2);
    const ask = (of: object, by: string) =>
      kept(of, by, () => {
        made.push(by);
        return `${by}!`;
      });
    expect(["a", "b", "a", "c", "a", "b"].map((by) => ask(one, by))).toEqual(["a!", "b!", "a!", "c!", "a!", "b!"]);
    // "b" was asked for before "a" when "c" came.
    expect(made).toEqual(["a", "b", "c", "b"]);
    ask(other, "a");
    ask(one, "a");
    expect(made).toEqual(["a", "b", "c", "b", "a"]);
  });
});
