import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Level } from "../../../src/core/kit/kit.ts";
import { drawSvg } from "../../../src/input/picture/assign-levels.ts";
import type { Selection } from "../../../src/input/picture/selection.ts";
import { readSvg } from "../../../src/input/svg/read-svg.ts";
import { drawnIn, overlapOf, type Size, shownAt } from "./level-raster.ts";

/** Drawings in the form in which three kinds of programs save them, each level in one colour of its own. */
interface Saved {
  readonly file: string;
  readonly size: Size;
  /** Levels from front to back, each with its colour in the drawing and what picks its shapes. */
  readonly levels: readonly { readonly name: string; readonly colour: string; readonly by: Selection }[];
}

const SAVED: readonly Saved[] = [
  {
    file: "layers.svg",
    size: { across: 600, down: 500, nominal: 340.157 },
    levels: [
      { name: "water", colour: "#2255aa", by: "waves" },
      { name: "moon", colour: "#aa3355", by: ["Far moon"] },
      { name: "sky", colour: "#dddd66", by: "#layer1" },
    ],
  },
  {
    file: "exporter.svg",
    size: { across: 600, down: 500, nominal: 340.2 },
    levels: [
      { name: "tower", colour: "#884422", by: "Roof & tower" },
      { name: "water", colour: "#227766", by: ["Water", ".st4"] },
      { name: "wall", colour: "#e5d9b6", by: "Back wall" },
    ],
  },
  {
    file: "frames.svg",
    size: { across: 600, down: 500, nominal: 240 },
    levels: [
      { name: "rim", colour: "#cc3333", by: "Front rim" },
      { name: "boat", colour: "#3355aa", by: ["Boat hull"] },
      { name: "leaf", colour: "#449944", by: { fill: "#494" } },
      { name: "wall", colour: "#ffffff", by: "#Frame 12" },
    ],
  },
];

const textOf = (file: string): string =>
  readFileSync(new URL(`../../fixtures/drawings/${file}`, import.meta.url), "utf8");

const kitLevels = (names: readonly string[]): Level[] =>
  names.map((name, i) => ({ name, depth: 10 + i, line: i + 1, background: i === names.length - 1 }));

describe("a drawing as a program saves it", () => {
  it.each(SAVED)("shows each level where librsvg paints it: $file", async ({ file, size, levels }) => {
    const text = textOf(file);
    const picture = readSvg(text);
    const asked = { levels: Object.fromEntries(levels.map(({ name, by }) => [name, by])) };
    const drawn = drawSvg(picture, asked, kitLevels(levels.map(({ name }) => name)), { file, at: ["picture"] });
    const colours = levels.map(({ colour }) => colour);
    for (const [i, { name, colour }] of levels.entries()) {
      const theirs = await drawnIn(
        text,
        size,
        colour,
        colours.filter((other) => other !== colour),
      );
      const ours = shownAt(drawn.shapes, picture, i + 1, size);
      expect(overlapOf(ours, theirs), name).toBeGreaterThan(0.99);
    }
  });

  it.each(SAVED)("needs nothing but its colours: $file", ({ file, levels }) => {
    const picture = readSvg(textOf(file));
    const byColour = levels.map(({ name, colour }) => [name, [{ fill: colour }, { stroke: colour }]] as const);
    const stated = byColour.map(([name, selectors]) => [
      name,
      selectors.filter((one) => {
        const [kind, value] = Object.entries(one)[0]!;
        return picture.shapes.some(({ paint, colour }) => paint === kind && colour === value);
      }),
    ]);
    const drawn = drawSvg(picture, { levels: Object.fromEntries(stated) }, kitLevels(levels.map(({ name }) => name)), {
      file,
      at: ["picture"],
    });
    expect(drawn.shapes).toHaveLength(picture.shapes.length);
  });
});
