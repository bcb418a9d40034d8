import { afterEach, describe, expect, it } from "vitest";
import { type OwnBook, roundSource, shared } from "../../../src/page/view3d/shared.ts";

describe("what the view is made from", () => {
  afterEach(() => {
    globalThis.leaflightRound = undefined;
  });

  it("is the reader's own book, also where the kit's comes after it", () => {
    expect(roundSource()).toBeUndefined();
    const own = { ready: () => Promise.resolve(), own: {} } as OwnBook;
    shared().own = own;
    expect(roundSource()).toBe(own);
    shared().data = { kit: "gull" } as never;
    expect(roundSource()).toBe(own);
    shared().own = undefined as never;
    expect(roundSource()).toEqual({ kit: "gull" });
  });
});
