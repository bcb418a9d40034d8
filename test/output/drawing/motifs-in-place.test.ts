import { describe, expect, it } from "vitest";
import type { MotifPart } from "../../../src/core/window/motif.ts";
import { motifsInPlace } from "../../../src/output/drawing/diagrams/motifs-in-place.ts";
import { litWindow } from "../../../src/output/drawing/front/lit-window.ts";
import { madeKit } from "../../core/kit/made-kit.ts";
import { madePart, madePattern, madeWindow } from "../../core/plan/made-pattern.ts";

const motif = (left: number, top: number, name = "gull"): MotifPart => ({
  ...madePart("motif", "card", 20, 20, { id: `motif-${name}`, motif: name }),
  seat: [left, top],
  spacers: 0,
});

/** Words of the figure, in order, for motifs on a frame of 100 by 120 mm whose corner is at 0, 0. */
function drawn(motifs: readonly MotifPart[], units: "mm" | "in" = "mm"): string[] {
  const figure = motifsInPlace(madeKit({ units }), madePattern({ window: madeWindow({ motifs }) }));
  return [...figure!.svg.matchAll(/<text[^>]*>([^<]*)</g)].map(([, words]) => words!.replaceAll("\u00a0", " "));
}

describe("motifsInPlace(kit, pattern)", () => {
  it("is none without motifs, and without a window", () => {
    expect(motifsInPlace(madeKit(), madePattern({ window: madeWindow({ motifs: [] }) }))).toBeUndefined();
    expect(motifsInPlace(madeKit(), madePattern({ window: undefined }))).toBeUndefined();
  });

  it("says how far each is from the frame's left and upper edge, to the millimetre", () => {
    expect(drawn([motif(40.2, 50.4)])).toEqual(["1: 40 mm", "1: 50 mm", "1", "from the front"]);
  });

  it("says it in sixteenths of an inch", () => {
    expect(drawn([motif(25.4, 42.9)], "in")).toEqual(["1: 1 in", "1: 1 11/16 in", "1", "from the front"]);
  });

  it("draws the dimension that reaches furthest nearest to the frame, so that no line runs through words", () => {
    const words = drawn([motif(10, 70), motif(60, 20), motif(30, 40)]);
    expect(words.slice(0, 6)).toEqual(["2: 60 mm", "3: 30 mm", "1: 10 mm", "1: 70 mm", "3: 40 mm", "2: 20 mm"]);
    expect(words.slice(6, 9)).toEqual(["1", "2", "3"]);
  });

  it("numbers more than eight without dimensions", () => {
    const nine = Array.from({ length: 9 }, (_, i) => motif(5 + 8 * i, 10 * i));
    expect(drawn(nine)).toEqual([...nine.map((_, i) => String(i + 1)), "from the front"]);
  });

  it("draws what stands on more spacers over the others", () => {
    const card = (colour: string) => ({ card: { name: colour, colour } });
    const motifs = [
      { ...motif(10, 10), spacers: 2, ...card("#111111") },
      { ...motif(20, 20), ...card("#222222") },
    ];
    const { svg } = motifsInPlace(madeKit(), madePattern({ window: madeWindow({ motifs }) }))!;
    expect(svg.indexOf("#222222")).toBeGreaterThan(0);
    expect(svg.indexOf("#222222")).toBeLessThan(svg.indexOf("#111111"));
  });
});

describe("litWindow(kit, pattern)", () => {
  it("is none without a light", () => {
    expect(litWindow(madeKit(), madePattern({ window: madeWindow(), pocket: undefined }))).toBeUndefined();
  });
});
