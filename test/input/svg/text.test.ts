import { describe, expect, it } from "vitest";
import type { LetterStyle, Letters } from "../../../src/input/svg/letters.ts";
import { PictureError, readSvg } from "../../../src/input/svg/read-svg.ts";
import { boundsOf } from "./figure.ts";

/** A font whose every letter is a square as high as the font, half as wide. */
const letters: Letters = (text, { size }) => ({
  rings: [...text].map((_, i) => [
    [(i * size) / 2, -size],
    [((i + 1) * size) / 2, -size],
    [((i + 1) * size) / 2, 0],
    [(i * size) / 2, 0],
  ]),
  advance: (text.length * size) / 2,
});

const svg = (body: string): string => `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 100">${body}</svg>`;

const boxes = (body: string): number[][] => readSvg(svg(body), { letters }).shapes.map(({ rings }) => boundsOf(rings));

describe("text in a drawing", () => {
  it.each<[string, number[][]]>([
    ['<text x="10" y="50" font-size="20">moon</text>', [[10, 30, 50, 50]]],
    ['<text x="100" y="50" font-size="20" text-anchor="middle">moon</text>', [[80, 30, 120, 50]]],
    ['<text x="100" y="50" font-size="20" text-anchor="end">moon</text>', [[60, 30, 100, 50]]],
    ['<text x="10" y="50" font-size="20" transform="scale(2)">m</text>', [[20, 60, 40, 100]]],
    [
      '<text x="10" y="50" style="font-size:20px">\n  <tspan>mo</tspan><tspan font-size="10">on</tspan></text>',
      [
        [10, 30, 30, 50],
        [30, 40, 40, 50],
      ],
    ],
    [
      '<text font-size="20"><tspan x="0" y="20">a</tspan><tspan x="0" dy="25">b</tspan></text>',
      [
        [0, 0, 10, 20],
        [0, 25, 10, 45],
      ],
    ],
    ['<text x="10" y="50" fill="none">moon</text><text x="1" y="2"> </text>', []],
  ])("is set where %s says", (body, want) => {
    expect(boxes(body)).toEqual(want);
  });

  it("is asked for in its font", () => {
    const asked: [string, LetterStyle][] = [];
    const listen: Letters = (text, style) => {
      asked.push([text, style]);
      return letters(text, style);
    };
    readSvg(
      svg(
        `<g font-family="'Old Face', serif" font-weight="bold"><text font-style="italic" font-size="5">moon</text></g>`,
      ),
      { letters: listen },
    );
    expect(asked).toEqual([["moon", { families: ["Old Face", "serif"], size: 5, weight: 700, italic: true }]]);
  });

  it("clips as its letters do", () => {
    const body =
      '<clipPath id="c"><text x="10" y="50" font-size="20">m</text></clipPath><rect width="200" height="100" clip-path="url(#c)"/>';
    expect(boxes(body).map((box) => box.map((side) => Number(side.toFixed(6))))).toEqual([[10, 30, 20, 50]]);
  });

  it.each([
    "<text>moon</text>",
    '<text x="1 2 3">moon</text>',
    '<text rotate="9">moon</text>',
    '<text textLength="90">moon</text>',
    '<text><textPath href="#p">moon</textPath></text>',
  ])("is an error that says what to do: %s", (body) => {
    const without: Letters | undefined = body === "<text>moon</text>" ? () => undefined : letters;
    expect(() => readSvg(svg(body), { letters: without })).toThrow(PictureError);
    expect(() => readSvg(svg(body), { letters: without })).toThrow(/turn the text into paths/);
  });
});
