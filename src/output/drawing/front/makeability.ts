import type { Box } from "../../../core/geometry/box.ts";
import type { Point } from "../../../core/geometry/point.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import type { Makeability, TroubleWithWays } from "../../../core/makeability/makeability.ts";
import type { PicturePlace } from "../../../core/makeability/picture-place.ts";
import * as say from "../../../words/messages.ts";
import { type Figure, figureOf } from "../figure.ts";
import { ringsPath } from "../path.ts";
import { tag } from "../svg-text.ts";
import { paperTone } from "./tone.ts";
import { areaMark, leavesMark, markPatterns, placeMark } from "./trouble-marks.ts";
import { troubleNumbers } from "./trouble-numbers.ts";

/** Shares of the picture's greater side: the pen, and the ring of a number. */
const PEN = 1 / 230;
const RING = 1 / 36;

type Marked = Makeability["troubles"][number]["trouble"];

/** Most places of a kind that are marked, the largest. */
const MARKED = 200;

/** A trouble on the picture: its marks, and the places where its number may stand, the first ones first. */
interface Marks {
  readonly drawn: string;
  readonly places: readonly Point[];
}

/**
 * The picture as it lies on the book's front, in the paper's tones, with what is hard to make or to see: each kind has a
 * pattern of its own, and the number that it has in the list. Units are mm of the book.
 */
export function makeabilityFigure(kit: Kit, made: Makeability): Figure {
  const { place, troubles } = made;
  const size = Math.max(place.width, place.height);
  const [pen, ring] = [PEN * size, RING * size];
  const marks = troubles.map(({ trouble }) => marksOf(trouble, made, pen, ring));
  const along = kit.fit.view === "along";
  const margin = { side: 1.5 * ring, top: isBracketed(troubles) ? 3.6 * ring : 1.5 * ring };
  const area = {
    left: place.left - margin.side,
    top: place.top - margin.top,
    width: place.width + 2 * margin.side,
    height: place.height + margin.top + margin.side,
  };
  return figureOf(
    area,
    along ? say.makeableDrawingAlong() : say.makeableDrawing(),
    [
      `<defs><clipPath id="mark-picture">${frame(place)}</clipPath>${markPatterns(pen)}</defs>`,
      pictureOnBook(kit, place),
      ...marks.map(({ drawn }) => drawn),
      ...troubleNumbers(
        marks.map(({ places }) => places),
        area,
        ring,
      ),
    ].join(""),
  );
}

/** The levels in the paper's tones, the proudest lightest. */
function pictureOnBook({ levels, picture }: Kit, place: PicturePlace): string {
  const [front, deepest] = [levels[0]!.depth, levels.at(-1)!.depth];
  const tone = (level: number): string => paperTone((levels[level - 1]!.depth - front) / (deepest - front), 1);
  const onBook = ([x, y]: Point): Point => [
    place.left + (x / picture.width) * place.width,
    place.top + (y / picture.height) * place.height,
  ];
  const edge = { stroke: "#7d6747", "stroke-width": place.width / 600 };
  const shapes = picture.shapes.map(({ level, rule, rings }) =>
    tag("path", { d: ringsPath(rings.map((ring) => ring.map(onBook))), fill: tone(level), "fill-rule": rule, ...edge }),
  );
  const ground = frame(place, { fill: tone(picture.background) });
  return (
    ground + tag("g", { "clip-path": "url(#mark-picture)" }, shapes.join("")) + frame(place, { fill: "none", ...edge })
  );
}

function frame(
  { left, top, width, height }: PicturePlace,
  look: Readonly<Record<string, string | number>> = {},
): string {
  return tag("rect", { x: left, y: top, width, height, ...look });
}

function marksOf(trouble: Marked, made: Makeability, pen: number, ring: number): Marks {
  switch (trouble.kind) {
    case "hidden":
    case "out-of-reach":
      return areaMarks(trouble, made, pen);
    case "slivers": {
      const boxes = made.slivers
        .slice(0, MARKED)
        .map(({ left, right, from, to }) => ({ left, right, top: from, bottom: to }));
      return { drawn: boxes.map((box) => placeMark("slivers", box, pen)).join(""), places: boxes.map(besideOf(ring)) };
    }
    case "narrow": {
      const boxes = made.narrow.slice(0, MARKED);
      return { drawn: boxes.map((box) => placeMark("narrow", box, pen)).join(""), places: boxes.map(besideOf(ring)) };
    }
    case "many-cuts": {
      const y = made.place.top - 0.7 * ring;
      const drawn = made.full.map(({ left, right }) => leavesMark(left, right, y, pen)).join("");
      return { drawn, places: made.full.map(({ left, right }) => [(left + right) / 2, y - 1.4 * ring]) };
    }
    case "springs-open":
      return { drawn: "", places: [] };
  }
}

/** Hatches what a level loses; the number stands on the greatest stretch of each side, the greater side first. */
function areaMarks(
  trouble: Extract<Marked, { readonly kind: "hidden" | "out-of-reach" }>,
  { seen }: Makeability,
  pen: number,
): Marks {
  const fate = trouble.kind === "hidden" ? "hidden" : "unreached";
  const boxes = seen!.lost.filter((box) => box.level === trouble.level && box.fate === fate);
  const sides = [boxes.filter(({ left }) => left < 0), boxes.filter(({ left }) => left >= 0)]
    .filter((side) => side.length > 0)
    .toSorted((a, b) => areaOf(b) - areaOf(a));
  const seenWell = boxes.filter(({ top, bottom }) => bottom - top >= pen / 2);
  return { drawn: areaMark(trouble.kind, seenWell), places: sides.map(middleOfGreatest) };
}

function areaOf(boxes: readonly Box[]): number {
  return boxes.reduce((sum, { left, right, top, bottom }) => sum + (right - left) * (bottom - top), 0);
}

function middleOfGreatest(boxes: readonly Box[]): Point {
  const greatest = boxes.reduce((best, box) => (areaOf([box]) > areaOf([best]) ? box : best));
  return [(greatest.left + greatest.right) / 2, (greatest.top + greatest.bottom) / 2];
}

function besideOf(ring: number): (box: Box) => Point {
  return ({ right, top }) => [right + 1.3 * ring, top - 0.6 * ring];
}

function isBracketed(troubles: readonly TroubleWithWays[]): boolean {
  return troubles.some(({ trouble }) => trouble.kind === "many-cuts");
}
