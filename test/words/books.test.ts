import { describe, expect, it } from "vitest";
import { bookText, statedBook } from "../../src/words/books.ts";

describe("statedBook(book, units)", () => {
  it.each([
    [{}, "mm", ""],
    [{ leafHeight: 184.15 }, "mm", ""],
    [{ leaves: 160, blockThickness: 19 }, "mm", "160 leaves, 19 mm thick"],
    [{ leafHeight: 178, leafWidth: 110, leaves: 1 }, "mm", "178 × 110 mm, one leaf"],
    // 7 1/4 in × 4 3/4 in.
    [{ leafHeight: 184.15, leafWidth: 120.65 }, "in", "7 1/4 × 4 3/4 in"],
  ] as const)("%j in %s is “%s”", (book, units, text) => {
    expect(statedBook(book, units).replaceAll("\u00a0", " ")).toBe(text);
  });

  it("begins what is said of a whole book", () => {
    const book = { leafHeight: 178, leafWidth: 110, leaves: 96, blockThickness: 9.5, direction: "rtl" } as const;
    expect(bookText(book, "mm")).toBe(`${statedBook(book, "mm")}, reads right to left`);
  });
});
