import * as say from "../../../words/messages.ts";
import { BUTTON, type ClosingPlace, STRING, TAB_GLUED } from "./closing-place.ts";
import { CARD, PAPER, THIN } from "./ink.ts";
import type { Pen } from "./pen.ts";

/** Heights of the layers from the head, the viewer at the foot; all are drawn as thick as each other. */
const TIPS = 54.5;
const TAB = 58.8;
const FRAME = 61.2;
const DOOR = 64.8;
const THICK = 1.3;

/** Room for the names of frame and door at the side of the hinge. */
const NAMES = 17;

/** Tips of the book, tab, frame and door with its button from the head. */
export function closingSection(pen: Pen, place: ClosingPlace, scale: number): string {
  const x = (mm: number): number => BUTTON.x + mm * scale;
  const edge = x(place.edge);
  const end = x(place.edge + place.end);
  const hole = x(place.edge + place.hole);
  const near = Math.max(NAMES, x(-place.edge));
  const layer = (from: number, to: number, y: number): string => pen.box([from, y], [to, y + THICK], CARD, THIN);
  const { x: middle, radius } = BUTTON;
  return [
    ...Array.from({ length: 12 }, (_, i) => edge - 1 - i * 2).map((at) => pen.segment(at, TIPS, at, TAB - 0.2, THIN)),
    layer(x(place.edge - TAB_GLUED), end, TAB),
    layer(near, edge, FRAME),
    layer(near, edge, DOOR),
    pen.box([middle - radius, DOOR + THICK], [middle + radius, DOOR + THICK + 1.4], PAPER, THIN),
    pen.line(
      [
        [hole, TAB + THICK / 2],
        [edge + 1.2, DOOR + 2],
        [middle + radius + 0.4, DOOR + THICK + 0.7],
      ],
      STRING,
    ),
    pen.dot([hole, TAB + THICK / 2], 0.5, "#000"),
    pen.words([end + 2, TAB + 1.8], say.drawClosingTab()),
    pen.words([near - 1.4, FRAME + 1.7], say.partBaseFrame(), { anchor: "end" }),
    pen.words([near - 1.4, DOOR + 1.9], say.partDoor(), { anchor: "end" }),
  ].join("");
}
