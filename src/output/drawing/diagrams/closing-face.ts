import { boxOf } from "../../../core/geometry/box.ts";
import type { Ring } from "../../../core/geometry/point.ts";
import type { Part } from "../../../core/window/part.ts";
import * as say from "../../../words/messages.ts";
import { partName } from "../../../words/parts.ts";
import { lookedAt } from "../looked-at.ts";
import { tag } from "../svg-text.ts";
import { BUTTON, type ClosingPlace, STRING, TAB_GLUED } from "./closing-place.ts";
import { ACETATE, type At, CARD, NO_LINE, PAPER, POSITION, THIN } from "./ink.ts";
import type { Pen } from "./pen.ts";

const TOP = 7;
const FOOT = 45;
const MIDDLE = (TOP + FOOT) / 2;

/** Room for the words below the tab. */
const TAB_WORDS = 34;

/** Distances from the button as places in the drawing. */
interface Scaled {
  readonly x: (mm: number) => number;
  readonly y: (mm: number) => number;
}

/** Tab, door and string from the front. */
export function closingFace(pen: Pen, door: Part, place: ClosingPlace, scale: number): string {
  const at: Scaled = { x: (mm) => BUTTON.x + mm * scale, y: (mm) => MIDDLE + mm * scale };
  const hole: At = [at.x(place.edge + place.hole), MIDDLE];
  return [
    tabShape(pen, at, place),
    pen.dot(hole, 1.5 * scale, "#ffffff"),
    doorEdge(pen, door, place, scale),
    pen.dot([BUTTON.x, MIDDLE], BUTTON.radius, PAPER),
    ...[-0.9, 0.9].map((dx) => pen.dot([BUTTON.x + dx, MIDDLE], 0.35, "#000")),
    loop(pen, hole),
    faceWords(pen, door, at, place, hole),
  ].join("");
}

/** The tab with its round end; dash-dot where the frame hides it. */
function tabShape(pen: Pen, { x, y }: Scaled, { halfTab, edge, end }: ClosingPlace): string {
  const middle = edge + end - halfTab;
  const round: At[] = Array.from({ length: 25 }, (_, i) => {
    const angle = -Math.PI / 2 + (Math.PI * i) / 24;
    return [x(middle + halfTab * Math.cos(angle)), y(halfTab * Math.sin(angle))] as const;
  });
  return [
    pen.box([x(edge - TAB_GLUED), y(-halfTab)], [x(middle), y(halfTab)], CARD, POSITION),
    pen.shape([[x(edge), y(-halfTab)], ...round, [x(edge), y(halfTab)]], CARD),
  ].join("");
}

/** The string from the hole round the button, and its knot. */
function loop(pen: Pen, hole: At): string {
  const radius = BUTTON.radius + 0.3;
  const knot: At = [hole[0] + 2.6, hole[1] + 3.2];
  const round: At[] = Array.from({ length: 21 }, (_, i) => {
    const angle = Math.PI / 2 + (Math.PI * i) / 20;
    return [BUTTON.x + radius * Math.cos(angle), MIDDLE + radius * Math.sin(angle)] as const;
  });
  return [
    pen.line([hole, [BUTTON.x, MIDDLE - radius]], STRING),
    pen.line([hole, [BUTTON.x, MIDDLE + radius]], STRING),
    pen.line(round, STRING),
    pen.line([hole, knot], STRING),
    pen.dot(knot, 0.7, "#000"),
  ].join("");
}

function faceWords(pen: Pen, door: Part, { x, y }: Scaled, { halfTab, edge }: ClosingPlace, hole: At): string {
  return [
    pen.leader([
      [45, 5],
      [(BUTTON.x + hole[0]) / 2 + 2, MIDDLE - BUTTON.radius * 0.42],
    ]),
    pen.turn([BUTTON.x - 7.6, FOOT - 3.4], 1),
    pen.words([BUTTON.x, FOOT - 2.4], say.drawClosingButton(), { anchor: "middle" }),
    pen.leader([
      [BUTTON.x, FOOT - 5.2],
      [BUTTON.x, MIDDLE + 2.4],
    ]),
    pen.words([BUTTON.x, TOP + 5], partName(door), { anchor: "middle" }),
    pen.wrapped([79, FOOT - 4.6], say.drawClosingTabGlued(), TAB_WORDS, { anchor: "end" }),
    pen.leader([
      [63, FOOT - 7.4],
      [x(edge) + 2.4, y(halfTab * 0.6)],
    ]),
  ].join("");
}

/** The door as it is cut, clipped to what lies near the button. */
function doorEdge(pen: Pen, door: Part, { button, out }: ClosingPlace, scale: number): string {
  const [x, y, width, height] = [3, TOP, 74, FOOT - TOP];
  const place = (ring: Ring): At[] =>
    ring.map(([px, py]) => pen.place([BUTTON.x + (px - button[0]) * out * scale, MIDDLE + (py - button[1]) * scale]));
  const widest = door.outlines.toSorted((a, b) => widthOf(b) - widthOf(a))[0]!;
  return tag(
    "svg",
    { x, y, width, height, viewBox: `${x} ${y} ${width} ${height}` },
    tag("path", { d: lookedAt([place(widest)]), fill: ACETATE, ...NO_LINE }) +
      tag("path", { d: lookedAt(door.outlines.map(place)), ...THIN, fill: CARD, "fill-rule": "evenodd" }),
  );
}

function widthOf(ring: Ring): number {
  const box = boxOf([ring]);
  return box.right - box.left;
}
