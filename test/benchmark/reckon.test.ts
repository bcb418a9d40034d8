import { describe, expect, it } from "vitest";
import { reckon } from "./reckon.ts";

describe("reckon(few, many)", () => {
  it("tells what each kit takes, and by that what very many take", () => {
    // 3 for any number of kits, and 2 for each.
    const { each, of } = reckon({ kits: 10, taken: 23 }, { kits: 100, taken: 203 });
    expect([each, of(0), of(10_000)]).toEqual([2, 3, 20_003]);
  });
});
