import { describe, expect, it } from "vitest";
import type { MotifPart } from "../../../src/core/window/motif.ts";
import { type MotifFault, motifFaults } from "../../../src/core/window/motif-faults.ts";
import type { BookWindow } from "../../../src/core/window/window.ts";
import { box, CURVE, plate } from "./made.ts";
import { faceWith, LIGHT, motifAt } from "./made-face.ts";

const faults = (...motifs: readonly MotifPart[]): MotifFault[] =>
  motifFaults(faceWith(...motifs) as BookWindow, undefined, CURVE);

const BLOCK = box(0, 0, 10, 10);

// By hand: the window is 100 mm wide and high, from −50 and from 0; its hole is 60 mm.
describe("motifFaults(window, pocket, curve)", () => {
  it("finds nothing in motifs that lie on the window", () => {
    expect(faults()).toEqual([]);
    expect(faults(motifAt([0, 40], [BLOCK]), motifAt([-50, 0], [BLOCK]), motifAt([40, 90], [BLOCK]))).toEqual([]);
  });

  it.each([
    [[45.5, 40], 5.5],
    [[-52, 40], 2],
    [[0, -9], 9],
    [[0, 90.2], undefined],
  ] as const)("tells by how much one at %o reaches beyond the frame", (seat, by) => {
    const [fault] = faults(motifAt(seat, [BLOCK]));
    if (by === undefined) return expect(fault).toBeUndefined();
    expect(fault).toMatchObject({ kind: "beyond-frame", motif: 0 });
    // Half a square millimetre is not seen: 0.05 mm of a side of 10 mm; and it is told to a tenth.
    expect(Math.abs((fault as { by: number }).by - by)).toBeLessThan(0.16);
  });

  it("tells of one beside the window alone", () => {
    expect(faults(motifAt([0, 40], [BLOCK]), motifAt([70, 40], [BLOCK, box(20, 0, 21, 9)]))).toEqual([
      { kind: "off-window", motif: 1 },
    ]);
  });

  it("tells of motifs that overlap on as many spacers", () => {
    const on = (spacers: number) => motifAt([5, 45], [BLOCK], spacers);
    expect(faults(motifAt([0, 40], [BLOCK], 1), on(1))).toEqual([{ kind: "overlap", motif: 1, other: 0 }]);
    expect(faults(motifAt([0, 40], [BLOCK], 1), on(2))).toEqual([]);
    expect(faults(motifAt([0, 40], [BLOCK], 1), motifAt([10, 40], [BLOCK], 1))).toEqual([]);
  });

  describe("in several pieces", () => {
    const pieces = [BLOCK, box(20, 0, 30, 10)];

    it("counts those that touch neither frame nor a motif that stands lower", () => {
      expect(faults(motifAt([-15, 40], pieces))).toEqual([{ kind: "loose", motif: 0, pieces: 2 }]);
      expect(faults(motifAt([-35, 40], pieces))).toEqual([{ kind: "loose", motif: 0, pieces: 1 }]);
    });

    it("is content where each touches one of them", () => {
      expect(faults(motifAt([-35, 5], pieces))).toEqual([]);
      const below = motifAt([-15, 45], [box(0, 0, 30, 10)]);
      expect(faults(below, motifAt([-15, 40], pieces, 1))).toEqual([]);
      expect(faults(below, motifAt([-15, 40], pieces, 0))).toHaveLength(2);
    });
  });

  it.each([
    [0.7, true],
    [0.9, false],
  ])("tells whether one falls apart at a bridge of %d mm: %s", (wide, told) => {
    const ring = [
      [0, 0],
      [10, 0],
      [10, 5],
      [12, 5],
      [12, 0],
      [22, 0],
      [22, 10],
      [12, 10],
      [12, 5 + wide],
      [10, 5 + wide],
      [10, 10],
      [0, 10],
    ] as const;
    expect(faults(motifAt([0, 40], [ring]))).toEqual(told ? [{ kind: "narrow", motif: 0, least: 0.8 }] : []);
  });

  it("tells last how much of the light shows, but not where motifs cover it", () => {
    const withLight = (...motifs: readonly MotifPart[]) => motifFaults(faceWith(...motifs) as BookWindow, LIGHT, CURVE);
    expect(withLight()).toMatchObject([{ kind: "light-shows", beside: 1 }]);
    const opened = plate(box(0, 0, 20, 30), box(5, 5, 15, 15));
    expect(withLight(motifAt([-10, 45], opened))).toEqual([
      { kind: "light-shows", beside: expect.closeTo(0.25, 6), through: expect.closeTo(0.125, 6) },
    ]);
    expect(withLight(motifAt([-10, 35], [box(0, 0, 20, 40)]))).toEqual([]);
  });
});
