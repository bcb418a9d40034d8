import { describe, expect, it } from "vitest";
import type { Supply } from "../../../src/core/supplies/supply.ts";
import { LIGHT, madeKit } from "../kit/made-kit.ts";
import { madePattern, madeWindow } from "../plan/made-pattern.ts";
import { all, type Given, listOf, one, WINDOWED } from "./made-supplies.ts";

const PLAIN = madePattern();
const SCISSORS = { fit: { ...madeKit().fit, cutWith: "scissors" } } as const;

const ids = (given: Given, kind: Supply["kind"]) =>
  listOf(given)
    .filter((supply) => supply.kind === kind)
    .map(({ id, quantity, unit }) => [id, quantity, unit]);

/*
 * Source: common practice of the trade, no standard. A bone folder presses and folds, ruler and pencil mark, the gauge wants
 * packing under the side that sinks; a knife and its mat only where something is cut.
 */
describe("tools", () => {
  const always = ["boneFolder", "ruler", "pencil", "awl", "scissors", "slips"];

  it.each<[string, Given, string[]]>([
    ["nothing is cut", { pattern: PLAIN }, [...always, "packing"]],
    ["leaves are cut", { pattern: PLAIN, counts: { cuts: 1 } }, [...always, "knife", "mat", "packing"]],
    ["leaves are cut with scissors", { pattern: PLAIN, kit: SCISSORS, counts: { cuts: 1 } }, [...always, "packing"]],
    [
      "notches are cut",
      { pattern: PLAIN, kit: SCISSORS, counts: { notches: 1 } },
      [...always, "knife", "mat", "packing"],
    ],
    ["a window is cut", { pattern: WINDOWED }, [...always, "knife", "mat", "weight", "packing"]],
  ])("are one of each where %s", (_, given, tools) => {
    expect(ids(given, "tool")).toEqual(tools.map((id) => [id, 1, "each"]));
  });

  // By hand: the block is 6 mm thick, so pieces of 2.5 mm are three, of 2 mm three, of 1.9 mm four.
  it.each([
    [undefined, 0],
    [2.5, 3],
    [2, 3],
    [1.9, 4],
  ])("count packing in pieces of %s mm as %d", (gaugeTile, pieces) => {
    expect(one({ kit: { gaugeTile } }, "packing").reason).toEqual({
      kind: "packing",
      height: 6,
      piece: gaugeTile,
      pieces,
    });
  });

  it("have no price and no reason but that they are tools", () => {
    expect(one({ kit: { prices: { book: 1 } } }, "boneFolder")).toEqual({
      kind: "tool",
      id: "boneFolder",
      own: undefined,
      quantity: 1,
      exact: 1,
      unit: "each",
      reason: { kind: "tool" },
      price: undefined,
    });
  });
});

// Counted by hand from the made window: a frame, door, two tabs, a holder and two motifs of card on one A4, one glazing.
describe("materials", () => {
  it("of a kit with light and window are each of these once", () => {
    const given = { kit: { light: LIGHT }, counts: { cuts: 250, tacks: 3, parts: 9 } };
    expect(ids(given, "material")).toEqual([
      ["book", 1, "each"],
      ["card", 2, "sheet"],
      ["acetate", 1, "sheet"],
      ["blades", 2, "each"],
      ["glueDots", 5, "each"],
      ["light", 1, "each"],
      ["cells", 1, "set"],
      ["tape", 0.9, "m"],
      ["string", 0.2, "m"],
      ["button", 1, "each"],
      ["glue", 1, "each"],
      ["spacers", 2, "each"],
    ]);
  });

  it("of a kit that is only folded are its book and the gauge's card", () => {
    expect(ids({ pattern: madePattern(), counts: {} }, "material")).toEqual([
      ["book", 1, "each"],
      ["card", 1, "sheet"],
    ]);
  });

  it("tell of the book and the light which ones", () => {
    expect(one({}, "book").reason).toEqual({ kind: "book", leaves: 40, leafHeight: 120, leafWidth: 80 });
    expect(one({ kit: { light: LIGHT } }, "light").reason).toEqual({ kind: "light", diameter: 20, height: 20 });
    expect(one({ kit: { light: LIGHT } }, "cells").own).toBeUndefined();
    expect(one({ kit: { light: LIGHT, cells: "CR2032" } }, "cells").own).toEqual({ item: "CR2032", unit: "" });
  });
});

// A fresh blade for every 250 cuts begun (common practice, no source), and one for the window.
describe("blades", () => {
  it.each([
    [0, 0, 0, undefined],
    [1, 0, 0, 1],
    [250, 0, 0, 1],
    [249, 1, 0, 1],
    [249, 2, 0, 2],
    [251, 0, 0, 2],
    [0, 1, 0, 1],
    [0, 0, 1, 1],
    [250, 0, 9, 2],
  ])("for %d cuts, %d notches and %d parts are %s", (cuts, notches, parts, blades) => {
    const [bought] = all({ counts: { cuts, notches, parts } }, "blades");
    expect(bought?.quantity).toBe(blades);
    if (bought) expect(bought.reason).toEqual({ kind: "blades", cuts: cuts + notches, perBlade: 250 });
  });
});

describe("wet glue", () => {
  it("for tacks comes with baking paper, and no dots", () => {
    const kit = { fit: { ...madeKit().fit, tackWith: "glue" } } as const;
    expect(ids({ pattern: madePattern(), kit, counts: { tacks: 3 } }, "material").slice(2)).toEqual([
      ["glue", 1, "each"],
      ["bakingPaper", 1, "each"],
    ]);
  });
});

const FLAT = madePattern({
  window: { ...madeWindow(), motifs: madeWindow().motifs.map((motif) => ({ ...motif, spacers: 0 })) },
});

describe("glue dots", () => {
  it.each([
    [0, "none", madePattern(), undefined],
    [1, "none", madePattern(), 1],
    [0, "raised motifs", WINDOWED, 2],
    [5, "raised motifs", WINDOWED, 7],
    [0, "two flat motifs", FLAT, 8],
  ] as const)(
    "are one a tack (%d), two for a button, three for a flat motif: window with %s",
    (tacks, _, pattern, dots) => {
      const [bought] = all({ pattern, counts: { tacks } }, "glueDots");
      expect(bought?.quantity).toBe(dots);
      if (bought) expect(bought.reason).toEqual({ kind: "glue-dots", tacks, window: bought.quantity - tacks });
    },
  );
});
