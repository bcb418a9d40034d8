import { type Box, boxOf } from "../../../core/geometry/box.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { cardColour } from "../../../core/window/card.ts";
import { type MotifPart, setOutlines } from "../../../core/window/motif.ts";
import { formatByHand } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import type { Figure } from "../figure.ts";
import { lookedAt } from "../looked-at.ts";
import { tag } from "../svg-text.ts";
import { type At, diagram, FAINT, type Look, POSITION, SCORE, THIN, WIDTH } from "./ink.ts";
import { type Pen, penFor } from "./pen.ts";

/** Card is drawn so pale that lines and numbers show on it. */
const PALE = "0.45";

/** Height of the figure's words above the frame, most of the frame's own height, and how far dimensions lie apart. */
const TOP = 19.5;
const MOST_HEIGHT = 66;
const APART = 4.6;
const TICK = 0.9;

/** More motifs than these have no room for their dimensions, which stand in the step's words. */
const MOST_MEASURED = 8;

/** A motif with its number and its box in the drawing. */
interface Numbered {
  readonly number: number;
  readonly motif: MotifPart;
  readonly box: Box;
  readonly outlines: readonly (readonly At[])[];
}

/** The closed window from the front: each motif with its number, and how far its left side and its top are from the frame's edges. Undefined without motifs. */
export function motifsInPlace(kit: Kit, { window }: Pattern): Figure | undefined {
  if (!window || window.motifs.length === 0) return undefined;
  const own = boxOf(window.frame.outlines);
  const dimensions = window.motifs.length > MOST_MEASURED ? 0 : window.motifs.length;
  const room = WIDTH - dimensions * APART - 2;
  const scale = Math.min(room / (own.right - own.left), MOST_HEIGHT / (own.bottom - own.top));
  const place = ([x, y]: At): At => [(x - own.left) * scale, TOP + (y - own.top) * scale];
  const frame = boxOf([[place([own.left, own.top]), place([own.right, own.bottom])]]);
  const pen = penFor("ltr");
  const numbered = window.motifs.map((motif, i): Numbered => {
    const outlines = setOutlines(motif).map((ring) => ring.map(place));
    return { number: i + 1, motif, box: boxOf(outlines), outlines };
  });
  const length = (mm: number): string => formatByHand(mm / scale, kit.units);
  const drawing = [
    card(
      window.frame.outlines.map((ring) => ring.map(place)),
      cardColour(window.wish.card, "door"),
      THIN,
    ),
    ...window.door.scores.map((line) => pen.line(line.map(place), SCORE)),
    ...window.guide.marks.map(({ line }) => pen.line(line.map(place), POSITION)),
    ...numbered.toSorted(bySpacers).map(({ outlines, motif }) => card(outlines, cardColour(motif.card, "motif"), THIN)),
    ...(dimensions > 0 ? [fromLeft(pen, numbered, frame, length), fromTop(pen, numbered, frame, length)] : []),
    ...numbered.map(({ number, box }) => pen.badge(badgeAt(box), String(number))),
    pen.words([0, 3.4], say.drawFromFront(), { bold: true }),
  ];
  const names = numbered.map(({ number, motif }) => say.drawMotifNumber({ number, motif: motif.motif ?? "" }));
  return diagram(frame.bottom + dimensions * APART + 3, say.drawMotifs({ motifs: names.join(", ") }), drawing);
}

/** In the middle of a motif, or at the corner of one that it would hide. */
function badgeAt({ left, top, right, bottom }: Box): At {
  const small = Math.min(right - left, bottom - top) < LEAST_UNDER_BADGE;
  return small ? [left - 1, top - 1] : [(left + right) / 2, (top + bottom) / 2];
}

const LEAST_UNDER_BADGE = 8;

function bySpacers(a: Numbered, b: Numbered): number {
  return a.motif.spacers - b.motif.spacers;
}

function card(outlines: readonly (readonly At[])[], colour: string, edge: Look): string {
  return tag("path", { d: lookedAt(outlines), ...edge, fill: colour, "fill-opacity": PALE, "fill-rule": "evenodd" });
}

/** Rows below the frame: the one that reaches furthest stands uppermost, so that no line runs through words. */
function fromLeft(pen: Pen, numbered: readonly Numbered[], frame: Box, length: (mm: number) => string): string {
  const rows = numbered.toSorted((a, b) => b.box.left - a.box.left);
  const foot = frame.bottom + rows.length * APART;
  const edge = pen.segment(frame.left, (frame.top + frame.bottom) / 2, frame.left, foot + TICK, FAINT);
  return rows.reduce((drawn, { number, box }, i) => {
    const y = frame.bottom + (i + 1) * APART;
    const words = say.drawMotifDistance({ number, length: length(box.left - frame.left) });
    return [
      drawn,
      pen.segment(box.left, box.bottom, box.left, y + TICK, FAINT),
      pen.segment(frame.left, y, box.left, y, THIN),
      ...[frame.left, box.left].map((x) => pen.segment(x - TICK / 2, y + TICK / 2, x + TICK / 2, y - TICK / 2, THIN)),
      pen.words([Math.max(box.left, frame.left) + 1.2, y + 1], words),
    ].join("");
  }, edge);
}

/** Columns at the right of the frame, their words above its top, clear of every line. */
function fromTop(pen: Pen, numbered: readonly Numbered[], frame: Box, length: (mm: number) => string): string {
  const columns = numbered.toSorted((a, b) => b.box.top - a.box.top);
  const end = frame.right + columns.length * APART;
  const edge = pen.segment((frame.left + frame.right) / 2, frame.top, end + TICK, frame.top, FAINT);
  return columns.reduce((drawn, { number, box }, i) => {
    const x = frame.right + (i + 1) * APART;
    const words = say.drawMotifDistance({ number, length: length(box.top - frame.top) });
    return [
      drawn,
      pen.segment(box.right, box.top, x + TICK, box.top, FAINT),
      pen.segment(x, frame.top, x, box.top, THIN),
      ...[frame.top, box.top].map((y) => pen.segment(x - TICK / 2, y + TICK / 2, x + TICK / 2, y - TICK / 2, THIN)),
      pen.upright([x + 1, frame.top - WORDS], words),
    ].join("");
  }, edge);
}

/** Where the middle of upright words stands above the frame. */
const WORDS = 9.6;
