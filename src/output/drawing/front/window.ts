import type { FrontCurve } from "../../../core/fan/front-curve.ts";
import { boxOf } from "../../../core/geometry/area.ts";
import type { Point, Ring } from "../../../core/geometry/point.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import type { Insert } from "../../../core/window/insert.ts";
import type { Part } from "../../../core/window/part.ts";
import { num, tag } from "../svg-text.ts";
import { inMood, type Mood } from "./tone.ts";

const CARD = [96, 120, 120] as const;
const CARD_EDGE = [176, 196, 190] as const;
const MOTIF = [46, 38, 44] as const;

/** The window closed: sheen of the glazing, motifs on it, the door's card over the base frame; as seen from the front. */
export function closedWindow(pattern: Pattern, insert: Insert, curve: FrontCurve, mood: Mood): string {
  const toFront = ([x, y]: Point): Point => [insert.wish.panel === "wrap" ? curve.atArc(x).x : x, y];
  const part = (name: string): Part => insert.parts.find((one) => one.name === name)!;
  const opening = part("decoration guide").outlines.map((ring) => ring.map(toFront));
  const box = boxOf(opening);
  const sheen = tag("path", {
    d: `M${num(box.left)} ${num(box.top)}L${num(box.left + (box.right - box.left) * 0.45)} ${num(box.top)}L${num(box.left)} ${num(box.bottom - (box.bottom - box.top) * 0.25)}z`,
    fill: "#ffffff",
    "fill-opacity": "0.05",
  });
  const frame = part("base frame").outlines.map((ring) => ring.map(toFront));
  return [
    sheen,
    ...motifsInPlace(pattern, insert, box).map((rings) =>
      tag("path", { d: pathOf(rings), fill: inMood(MOTIF, mood), "fill-rule": "evenodd" }),
    ),
    tag("path", {
      d: pathOf(frame),
      fill: inMood(CARD, mood),
      "fill-rule": "evenodd",
      stroke: inMood(CARD_EDGE, mood),
      "stroke-width": 0.5,
    }),
  ].join("");
}

/** The largest motif stands low, before the light; the second high on the right, the third low on the left, where they do not touch it. */
function motifsInPlace(pattern: Pattern, insert: Insert, box: ReturnType<typeof boxOf>): Ring[][] {
  const motifs = insert.parts.filter((part) => part.name.startsWith("motif "));
  const middle = pattern.pocket?.centre.x ?? (box.left + box.right) / 2;
  const width = box.right - box.left;
  const height = box.bottom - box.top;
  const foot = Math.min(pattern.pocket?.floor ?? box.bottom, box.bottom - 1);
  const seats: ((size: { width: number; height: number }) => Point)[] = [
    (size) => [middle - size.width / 2, foot - size.height],
    (size) => [box.right - size.width - width * 0.05, box.top + height * 0.25],
    (size) => [box.left + width * 0.025, box.bottom - height * 0.13 - size.height],
  ];
  return motifs.slice(0, seats.length).map((motif, i) => {
    const own = boxOf(motif.outlines);
    const [x, y] = seats[i]!({ width: own.right - own.left, height: own.bottom - own.top });
    return motif.outlines.map((ring) => ring.map(([px, py]) => [x + px - own.left, y + py - own.top] as const));
  });
}

function pathOf(rings: readonly Ring[]): string {
  return rings.map((ring) => `M${ring.map(([x, y]) => `${num(x)} ${num(y)}`).join("L")}Z`).join("");
}
