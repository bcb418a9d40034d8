import { type Crease, flapOf, isTurned, type LeafPoint } from "../../../core/corner/crease.ts";
import { creasesOf } from "../../../core/corner/leaf-fold.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import type { CornerPattern } from "../../../core/pattern/corner-pattern.ts";
import { formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { type At, CARD, diagram, FAINT, FOLDED, PAPER, SCORE, SMALL, THIN, WIDTH } from "../diagrams/ink.ts";
import { type Pen, penFor } from "../diagrams/pen.ts";
import { LINE } from "../diagrams/pen-words.ts";
import type { Figure } from "../figure.ts";
import { linesWithin } from "../words-width.ts";
import { exampleCorner } from "./example-corner.ts";
import { bodyOf, KEPT, type LeafPlace } from "./leaf-shape.ts";

const CELL = { width: 38, height: 52, gap: 4 };

/** A leaf's field in a cell: below the title, gutter to the left, room for marks at the fore-edge. */
const FIELD = { left: 2, top: 9, edge: 28, height: 40 };

/** The back of a page that lies folded on its own front. */
const BACK = "#efe3c4";

interface Panel {
  readonly title: string;
  readonly draw: (scene: Scene) => string;
}

interface Scene {
  readonly pen: Pen;
  readonly pattern: CornerPattern;
  readonly place: LeafPlace;
  readonly creases: readonly Crease[];
  readonly size: (mm: number) => string;
}

/** Folding a leaf by its corners in four steps, on the kit's own example leaf. */
export function cornerSteps(kit: Kit, pattern: CornerPattern): Figure {
  const { fold } = exampleCorner(pattern);
  const creases = creasesOf(fold);
  const { book } = pattern;
  const size = (mm: number): string => formatSize(mm, kit.units);
  const scale = Math.min(FIELD.height / book.leafHeight, (FIELD.edge - FIELD.left) / book.leafWidth);
  const place: LeafPlace = { x: (depth) => FIELD.edge - depth * scale, y: (height) => FIELD.top + height * scale };
  const drawn = panels(creases).map(({ title, draw }, i) => {
    const field = {
      left: (i % 2) * (CELL.width + CELL.gap),
      top: Math.floor(i / 2) * CELL.height,
      width: CELL.width,
    };
    const head = penFor("ltr", field);
    return (
      head.turn([2.1, 2.9], i + 1) +
      head.words([5.4, 4], title, { bold: true, size: 3.3, room: CELL.width - 5.4 }) +
      draw({ pen: penFor(book.direction, field), pattern, place, creases, size })
    );
  });
  const foot = 2 * CELL.height + 3;
  const lines = linesWithin(WIDTH, say.drawCornerFoot(), SMALL).length;
  const [from, to] = [creases[0]!, creases.at(-1)!].map((crease) => size(crease.from.at)) as [string, string];
  return diagram(foot + lines * LINE * SMALL, say.drawCornerSteps({ from, to }), [
    ...drawn,
    penFor("ltr").wrapped([0, foot], say.drawCornerFoot(), WIDTH, { size: SMALL }),
  ]);
}

/** Marking, each crease in its turn, and the folded leaf. */
function panels(creases: readonly Crease[]): Panel[] {
  const folding = creases.map((crease, i): Panel => {
    const before = creases.slice(0, i);
    return {
      title: crease.corner === "head" ? say.drawCornerAbove() : say.drawCornerBelow(),
      draw: (scene) =>
        leafOf(scene, before) +
        (isTurned(crease) ? "" : gaugeAt(scene, crease)) +
        creaseOf(scene, crease) +
        foldingOver(scene, crease),
    };
  });
  return [
    { title: say.drawCornerMark(), draw: (scene) => leafOf(scene, []) + marksOf(scene) },
    ...folding,
    { title: say.drawCornerDone(), draw: (scene) => leafOf(scene, creases) + keptOf(scene) },
  ];
}

/** The leaf with some creases folded: its body, and the corners as they lie on it. */
function leafOf({ pen, pattern, place }: Scene, folded: readonly Crease[]): string {
  const points = (of: readonly LeafPoint[]): At[] => of.map(({ at, depth }) => [place.x(depth), place.y(at)]);
  const whole = points(bodyOf([], pattern));
  return [
    folded.length > 0 ? pen.shape(whole, "none", FAINT) : "",
    pen.shape(points(bodyOf(folded, pattern)), PAPER, THIN),
    ...folded.map((crease) => pen.shape(points(flapOf(crease)), BACK, THIN)),
    ...folded.map(({ from, to }) =>
      pen.segment(place.x(from.depth), place.y(from.at), place.x(to.depth), place.y(to.at), FOLDED),
    ),
  ].join("");
}

function marksOf({ pen, place, creases, size }: Scene): string {
  return creases
    .map(({ from, corner }) => {
      const y = place.y(from.at);
      const words = pen.words([FIELD.edge + 1.4, y + (corner === "head" ? -0.6 : 2.6)], size(from.at), {
        size: SMALL,
        room: CELL.width - FIELD.edge - 1.4,
      });
      return pen.segment(FIELD.edge - 2.4, y, FIELD.edge + 1, y, { ...THIN, "stroke-width": "0.4" }) + words;
    })
    .join("");
}

function creaseOf({ pen, place }: Scene, { from, to }: Crease): string {
  return pen.segment(place.x(from.depth), place.y(from.at), place.x(to.depth), place.y(to.at), SCORE);
}

/** The corner gauge: its straight side along the fore-edge away from the corner, its point at the mark, its slanted side on the crease. */
function gaugeAt({ pen, place }: Scene, { corner, from }: Crease): string {
  const side = corner === "head" ? -1 : 1;
  const [x, y] = [place.x(0), place.y(from.at)];
  // As long a slant as the crease needs, within the cell.
  const wide = Math.min(15, corner === "head" ? y - FIELD.top + 3 : CELL.height - 1 - y);
  const long = 9;
  const outline: At[] = [
    [x, y],
    [x - wide, y + side * wide],
    [x - wide, y - side * long],
    [x, y - side * long],
  ];
  return (
    pen.shape(outline, CARD, THIN) +
    pen.words([x - wide / 2 - 0.6, y - side * 3 + 1], say.drawCornerGaugeShort(), { anchor: "middle", size: SMALL })
  );
}

/** From the corner to where it comes to lie. */
function foldingOver({ pen, place }: Scene, crease: Crease): string {
  const [, , corner] = flapOf(crease);
  const [x1, y1] = [place.x(0), place.y(crease.to.at)];
  const [x2, y2] = [place.x(corner.depth), place.y(corner.at)];
  const over: At = [(x1 + x2) / 2 + (y1 - y2) * 0.25, (y1 + y2) / 2 + (x2 - x1) * 0.25];
  return pen.arrow(x1, y1, x2, y2, over);
}

function keptOf({ pen, place, creases, pattern }: Scene): string {
  const of = (corner: Crease["corner"]) => creases.find((one) => one.corner === corner);
  const [from, to] = [of("head")?.from.at ?? 0, of("tail")?.from.at ?? pattern.book.leafHeight];
  const middle = (place.y(from) + place.y(to)) / 2;
  return (
    pen.segment(place.x(0), place.y(from), place.x(0), place.y(to), KEPT) +
    pen.upright([FIELD.edge + 3.4, middle], say.drawCornerStays(), { bold: true })
  );
}
