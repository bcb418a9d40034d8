import { describe, expect, it } from "vitest";
import {
  distanceTo,
  extentOf,
  isInside,
  type Point,
  pointsAlong,
  type Ring,
  stretchesAt,
} from "../../core/geometry/plane.ts";
import type { PublishedWindow } from "../../core/light/published-window.ts";
import { fanOf } from "../../core/light/standing.ts";
import { tip } from "../fan.ts";
import { alongTips, discWindow, frameOf, harbourMoon, partOf } from "./window.ts";

const PLATE = '<rect id="rim" x="10" y="10" width="180" height="180"/><circle id="well" cx="90" cy="100" r="60"/>';
const EGG =
  '<path id="rim" d="M100 5C160 5 190 70 190 120C190 170 150 195 100 195C50 195 10 170 10 120C10 70 40 5 100 5Z"/><path id="well" d="M60 60H130V150H50Z"/>';
const SOLID = '<ellipse id="rim" cx="95" cy="110" rx="90" ry="70"/><circle id="well" cx="180" cy="15" r="6"/>';

const WINDOWS: readonly (readonly [name: string, make: () => PublishedWindow])[] = [
  ["the demo kit", harbourMoon],
  ["discs, flat, hinge left", () => discWindow({ insert: { panel: "flat" } })],
  ["discs, wrap, hinge right", () => discWindow({ insert: { hinge: "right" } })],
  [
    "discs, rtl, rounded spine, unequal borders",
    () => discWindow({ book: { direction: "rtl" }, fit: { spine: "rounded", borderLeaves: [4, 25] } }),
  ],
  ["discs with a light", () => discWindow({ light: {}, insert: { lip: 6 } })],
  ["a square plate", () => discWindow({ shapes: PLATE, insert: { lip: 4 } })],
  [
    "a square plate, hinge right, flat",
    () => discWindow({ shapes: PLATE, insert: { lip: 2, hinge: "right", panel: "flat" } }),
  ],
  ["an egg", () => discWindow({ shapes: EGG, insert: { lip: 3 } })],
  ["an ellipse without a hole of its own", () => discWindow({ shapes: SOLID, insert: { lip: 8 } })],
];

/** Two outlines of 0.02 mm against each other. */
const CHORD = 0.04;

// Source: the parts' own purpose; insides and distances by the tests' own ray casting.
describe.each(WINDOWS)("window of %s", (_, make) => {
  const pattern = make();
  const { lip, hinge } = pattern.insert;
  const base = partOf(pattern, "base frame");
  const { rim, window } = frameOf(base);
  const door = partOf(pattern, "door");
  const glazing = partOf(pattern, "glazing").outlines;
  const fold = door.scores[0]!;
  const hingeX = fold[0]![0];
  /** Positive on the door's side of the hinge. */
  const beyondHinge = (point: Point): number => (hinge === "left" ? 1 : -1) * (point[0] - hingeX);

  it("has glazing of one piece inside the base frame's rim by the lip, clear of the hinge", () => {
    expect(glazing).toHaveLength(1);
    for (const point of pointsAlong(glazing[0]!, 1)) {
      expect(isInside(point, [rim])).toBe(true);
      expect(distanceTo(point, [rim])).toBeGreaterThan(lip - CHORD);
      expect(beyondHinge(point)).toBeGreaterThan(0.9);
    }
  });

  it("has glazing that covers the window by 1.5 mm all round", () => {
    for (const point of pointsAlong(window, 1)) {
      expect(isInside(point, glazing)).toBe(true);
      expect(distanceTo(point, glazing)).toBeGreaterThan(1.5 - CHORD);
    }
  });

  it("has a door like the base frame, but for a bulge of at most 4 mm at the hinge and the flap beyond it", () => {
    const leaf = frameOf(door);
    for (const point of pointsAlong(leaf.rim, 1).filter((one) => beyondHinge(one) > CHORD))
      expect(distanceTo(point, [rim])).toBeLessThan(CHORD);
    for (const point of pointsAlong(rim, 1)) {
      const beyond = beyondHinge(point);
      if (beyond > CHORD) expect(distanceTo(point, [leaf.rim])).toBeLessThan(CHORD);
      else expect(beyond).toBeGreaterThan(-4 - CHORD);
    }
    for (const point of pointsAlong(leaf.window, 1)) expect(distanceTo(point, [window])).toBeLessThan(CHORD);
  });

  it("has one upright score of 18 mm or more, on the card and ending at its edge", () => {
    expect(door.scores).toHaveLength(1);
    expect(fold).toHaveLength(2);
    expect(fold[1]![0]).toBe(hingeX);
    const [top, bottom] = [fold[0]![1], fold[1]![1]].sort((a, b) => a - b) as [number, number];
    expect(bottom - top).toBeGreaterThanOrEqual(18 - CHORD);
    for (let y = top + 0.05; y < bottom - 0.05; y += 0.25) {
      expect(isInside([hingeX, y], door.outlines)).toBe(true);
      expect(isInside([hingeX, y], base.outlines)).toBe(true);
    }
    for (const point of fold) expect(distanceTo(point, door.outlines)).toBeLessThan(CHORD);
  });

  it("has a flap of 5 mm or more that lies on the card of base and door when folded back", () => {
    const flap = frameOf(door).rim.filter((point) => beyondHinge(point) < -CHORD);
    expect(flap.length).toBeGreaterThanOrEqual(2);
    const width = Math.max(...flap.map((point) => -beyondHinge(point)));
    expect(width).toBeGreaterThanOrEqual(5 - CHORD);
    const folded: Ring = [fold[0]!, ...byHeight(flap), fold[1]!].map(([x, y]): Point => [2 * hingeX - x, y]);
    for (const point of pointsAlong(folded, 0.5)) {
      if (beyondHinge(point) < 0.01) continue;
      expect(isInside(point, base.outlines) || distanceTo(point, base.outlines) < CHORD).toBe(true);
      expect(distanceTo(point, [window])).toBeGreaterThan(1);
    }
  });

  it("has the closure opposite the hinge at middle height, the button in the middle of the card there", () => {
    const { top, bottom } = extentOf([rim]);
    const middle = (top + bottom) / 2;
    const cross = door.marks.map((mark) => extentOf([mark.line]));
    expect(door.marks.map((mark) => mark.label)).toEqual(["button", ""]);
    const [level, upright] = cross as [(typeof cross)[0], (typeof cross)[0]];
    const button: Point = [(level.left + level.right) / 2, (upright.top + upright.bottom) / 2];
    expect(Math.abs(button[1] - middle)).toBeLessThan(CHORD);
    const card = stretchesAt(base.outlines, middle + 0.001);
    const [from, to] = hinge === "left" ? card.at(-1)! : card[0]!;
    expect(Math.abs(button[0] - (from + to) / 2)).toBeLessThan(CHORD);
    const tab = extentOf(base.marks.map((mark) => mark.line));
    expect(Math.abs((tab.top + tab.bottom) / 2 - middle)).toBeLessThan(CHORD);
    expect(base.marks[0]!.label).toContain("tab");
  });

  it("has a holder whose slots stand where the outer picture leaves are folded at the head", () => {
    const { firstLeaf, lastLeaf, holdWidth } = pattern.fit;
    const ends = [firstLeaf, lastLeaf].map((number) => {
      const leaf = pattern.leaves.find((one) => one.leaf === number)!;
      return tip(fanOf(pattern), number, pattern.levels[leaf.spans[0]!.level - 1]!.depth);
    });
    const hold = Math.hypot(ends[0]!.x - ends[1]!.x, ends[0]!.z - ends[1]!.z);
    expect(Math.abs(holdWidth - hold)).toBeLessThan(0.002);
    const holder = partOf(pattern, "holder");
    const { bottom } = extentOf(holder.outlines);
    const gaps = gapsAt(holder.outlines, bottom - 1);
    expect(gaps, "two slots, and the free space between them over the other leaves").toHaveLength(3);
    const slots = [gaps[0]!, gaps[2]!];
    const [one, two] = slots.map(([from, to]) => (from + to) / 2);
    expect(Math.abs(two! - one! - hold)).toBeLessThan(0.005);
    for (const [from, to] of slots) expect(to - from).toBeLessThanOrEqual(3);
  });

  it("has parts of one panel, and others of their own frame", () => {
    for (const part of pattern.insert.parts)
      expect(part.frame).toBe(
        ["base frame", "glazing", "door", "decoration guide"].includes(part.name) ? pattern.insert.panel : "own",
      );
  });
});

function byHeight(points: readonly Point[]): Point[] {
  return points.toSorted((a, b) => a[1] - b[1]);
}

/** Between the stretches of a level line inside outlines. */
function gapsAt(rings: readonly Ring[], y: number): [number, number][] {
  const inside = stretchesAt(rings, y);
  return inside.slice(1).map(([from], i) => [inside[i]![1], from]);
}

describe("decoration guide", () => {
  it.each(["wrap", "flat"] as const)("shows where the light stands behind the window, %s", (panel) => {
    const pattern = discWindow({ light: { setback: 6 }, insert: { panel } });
    const guide = partOf(pattern, "decoration guide");
    const { light } = pattern;
    const marked = extentOf(guide.marks.map((mark) => mark.line));
    const at = (x: number): number => (panel === "wrap" ? alongTips(pattern, x) : x);
    expect(guide.marks).toHaveLength(1);
    expect(Math.abs(marked.left - at(light.centre.x - 19))).toBeLessThan(0.01);
    expect(Math.abs(marked.right - at(light.centre.x + 19))).toBeLessThan(0.01);
    expect(Math.abs(marked.bottom - light.floor)).toBeLessThan(0.001);
    expect(Math.abs(marked.top - (light.floor - 45))).toBeLessThan(0.001);
    expect(guide.outlines).toHaveLength(1);
    expect(distanceTo(guide.outlines[0]![0]!, [frameOf(partOf(pattern, "base frame")).window])).toBeLessThan(CHORD);
  });

  it("has no marks where there is no light", () => {
    expect(partOf(discWindow(), "decoration guide").marks).toEqual([]);
  });
});

describe("motifs", () => {
  const pattern = harbourMoon();
  const motifs = pattern.insert.parts.filter((part) => part.name.startsWith("motif "));

  it("are single pieces that fit into the window, and the largest covers the light", () => {
    const window = extentOf([frameOf(partOf(pattern, "base frame")).window]);
    expect(motifs.length).toBeGreaterThanOrEqual(3);
    for (const motif of motifs) {
      expect(motif.width).toBeLessThan(window.width);
      expect(motif.height).toBeLessThan(window.height);
    }
    const largest = motifs.reduce((most, motif) => (motif.area > most.area ? motif : most));
    expect(largest.width).toBeGreaterThan(pattern.light.diameter);
    expect(largest.height).toBeGreaterThan(pattern.light.height);
  });
});

// A picture that is its own mirror image in a book whose borders are alike has a window that is the other's mirror image.
describe("hinge", () => {
  it.each([
    ["discs, wrap", {}],
    ["discs, flat", { insert: { panel: "flat" } }],
    ["discs, rounded spine, rtl", { fit: { spine: "rounded" }, book: { direction: "rtl" } }],
  ] as const)("left and right are mirror images: %s", (_, changes) => {
    const insert = "insert" in changes ? changes.insert : {};
    const [left, right] = (["left", "right"] as const).map((hinge) =>
      discWindow({ ...changes, insert: { ...insert, hinge } }),
    ) as [PublishedWindow, PublishedWindow];
    for (const name of ["base frame", "glazing", "door"]) {
      const [one, other] = [partOf(left, name), partOf(right, name)];
      const mirrored = one.outlines.map((ring) => ring.map(([x, y]): Point => [-x, y]));
      for (const ring of mirrored) {
        for (const point of pointsAlong(ring, 2)) expect(distanceTo(point, other.outlines)).toBeLessThan(CHORD);
      }
      expect(Math.abs(one.area - other.area)).toBeLessThan(1);
      expect(Math.abs(one.perimeter - other.perimeter)).toBeLessThan(0.2);
    }
    const folds = [left, right].map((pattern) => partOf(pattern, "door").scores[0]![0]![0]);
    expect(Math.abs(folds[0]! + folds[1]!)).toBeLessThan(CHORD);
    expect(left.insert.stringLength).toBeCloseTo(right.insert.stringLength, 0);
  });
});
