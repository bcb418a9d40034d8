import { describe, expect, it } from "vitest";
import { readFlags } from "../../../src/build/beginning/flags.ts";
import { BuildError } from "../../../src/build/errors/build-error.ts";

describe("readFlags(words)", () => {
  it("reads all that can be said", () => {
    const words = ["moon", "--title", "A moon", "--outline=moon", "--book", "8 x 5 x 1 in", "--leaves", "180"];
    expect(readFlags([...words, "--light", "22x24", "--units", "in", "--draft"])).toEqual({
      slug: "moon",
      title: "A moon",
      picture: { from: "outline", name: "moon" },
      book: { leafHeight: 203.2, leafWidth: 127, blockThickness: 25.4, leaves: 180 },
      light: { diameter: 22, height: 24 },
      units: "in",
      draft: true,
    });
  });

  it("leaves open what is not said", () => {
    const { draft, ...rest } = readFlags([]);
    expect(draft).toBe(false);
    expect(Object.values(rest).every((one) => one === undefined)).toBe(true);
  });

  it.each([
    [["--picture", "a b.svg"], { from: "file", path: "a b.svg" }],
    [["--word", "Ahoy"], { from: "word", text: "Ahoy" }],
    [["--word", "Ahoy", "--font", "a.woff2"], { from: "word", text: "Ahoy", font: "a.woff2" }],
    [["--icon", "anchor"], { from: "icon", name: "anchor" }],
  ])("takes the picture from %j", (words, picture) => {
    expect(readFlags(words).picture).toEqual(picture);
  });

  it.each([
    [["--wrd", "Ahoy"], /Did you mean --word\?/],
    [["--elephant", "x"], /There are: --title/],
    [["-w"], /no option “-w”/],
    [["--word"], /--word needs something/],
    [["--word", "a", "--icon", "anchor"], /--word, --icon/],
    [["--outline", "whale"], /heart/],
    [["--outline", "heart", "--font", "a.woff2"], /needs --word/],
    [["--book", "198 x 126"], /height x width x thickness/],
    [["--book", "198 x 126 x 21"], /--leaves/],
    [["--book", "9 x 9 x 9", "--leaves", "180"], /cannot be used/],
    [["--book", "198 x 126 x 21", "--leaves", "many"], /whole number from 4 to 3000/],
    [["--light", "big"], /diameter x height/],
    [["--light", "2 x 2"], /diameter x height/],
    [["--units", "feet"], /mm and in/],
    [["--draft=no"], /stands alone/],
    [["two", "names"], /one folder/],
  ])("refuses %j with what is allowed", (words, told) => {
    expect(() => readFlags(words)).toThrow(BuildError);
    expect(() => readFlags(words)).toThrow(told);
  });
});
