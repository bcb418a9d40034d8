import { describe, expect, it } from "vitest";
import { isOver, stateOf } from "../../../src/core/class/class-state.ts";

describe("stateOf(stated, books, awaiting)", () => {
  it.each([
    [0, 12, "announced"],
    [1, 11, "collecting"],
    [12, 0, "fitted"],
  ] as const)("of %d seats with a book and %d without: %s", (books, awaiting, state) => {
    expect(stateOf(undefined, books, awaiting)).toBe(state);
    expect(isOver(state)).toBe(false);
  });

  it("is what the teacher states, whatever the seats have", () => {
    expect([stateOf("held", 3, 2), stateOf("closed", 0, 0)]).toEqual(["held", "closed"]);
    expect([isOver("held"), isOver("closed")]).toEqual([true, true]);
  });
});
