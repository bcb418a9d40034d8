import { describe, expect, it } from "vitest";
import { SQUARE, WELL } from "../core/kit/made-kit.ts";
import { dottedPicture, hatchedPicture, wavyPicture } from "./drawn-pictures.ts";
import { askLibrary, onePass } from "./plain-crossings.ts";

const edgesOf = ({ shapes }: ReturnType<typeof wavyPicture>): number =>
  shapes.reduce((sum, { rings }) => sum + rings.reduce((edges, ring) => edges + ring.length, 0), 0);

describe("onePass(picture, lines)", () => {
  // Of ten lines at 5, 15 … 95, those at 25 … 75 meet the square from 20 to 80, each at its top and its foot.
  it("notes every crossing", () => {
    expect(onePass(SQUARE, 10)).toBe(12);
  });

  it("grows with what it notes", () => {
    expect(onePass(SQUARE, 4000)).toBe(4800);
  });
});

describe("askLibrary(picture, lines)", () => {
  it("gives a piece of each line inside a square, and two where a well is in it", () => {
    expect(askLibrary(SQUARE, 10)).toBe(6);
    // Lines at 5, 15 … 95 meet the rim from 5 to 95 at 15 … 85 at least, and the well from 15 to 85 at 25 … 75.
    expect(askLibrary(WELL, 10)).toBeGreaterThanOrEqual(2 * 6 + 2);
  });

  it("meets the same outlines as the pass", () => {
    const picture = wavyPicture(1000);
    expect(2 * askLibrary(picture, 50)).toBe(onePass(picture, 50));
  });
});

describe("the drawn pictures", () => {
  it("have as many edges and shapes as they are asked for", () => {
    expect(edgesOf(wavyPicture(10_000))).toBe(10_000);
    expect(dottedPicture(1000).shapes).toHaveLength(1000);
    expect(hatchedPicture(400).shapes).toHaveLength(400);
  });
});
