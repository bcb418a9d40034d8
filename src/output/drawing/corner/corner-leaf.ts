import { isTurned } from "../../../core/corner/crease.ts";
import { creasesOf } from "../../../core/corner/leaf-fold.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import type { CornerLeaf, CornerPattern } from "../../../core/pattern/corner-pattern.ts";
import { formatDepth, formatNumber } from "../../../words/lengths.ts";
import { rowText } from "../../../words/lists.ts";
import * as say from "../../../words/messages.ts";
import { diagram, GROUND, NO_LINE, PAPER, SCORE, THIN } from "../diagrams/ink.ts";
import { type Pen, penFor } from "../diagrams/pen.ts";
import { leafTitle, markStyle } from "../diagrams/whole-leaf-text.ts";
import type { Figure } from "../figure.ts";
import { exampleCorner } from "./example-corner.ts";
import { cornersOf, KEPT, type LeafPlace } from "./leaf-shape.ts";

const GUTTER = 12;
const EDGE = 50;
const TOP = 14;
const MOST_HEIGHT = 84;

/** One leaf whole as it lies when it is marked: both marks on its fore-edge, the creases from them, and what stays between. */
export function cornerLeaf(kit: Kit, pattern: CornerPattern): Figure {
  const leaf = exampleCorner(pattern);
  const { book } = pattern;
  const scale = Math.min(MOST_HEIGHT / book.leafHeight, (EDGE - GUTTER) / book.leafWidth);
  const place: LeafPlace = { x: (depth) => EDGE - depth * scale, y: (height) => TOP + height * scale };
  const [gutter, foot] = [place.x(book.leafWidth), place.y(book.leafHeight)];
  const pen = penFor(book.direction);
  const middle = { anchor: "middle" } as const;
  return diagram(foot + 6, labelOf(kit, leaf), [
    penFor("ltr").words([40, 4], leafTitle(leaf), { anchor: "middle", bold: true, size: 3.3 }),
    pen.box([gutter, TOP], [EDGE, foot], PAPER, NO_LINE),
    ...cornersOf(leaf.fold).map((corner) =>
      pen.shape(
        corner.map((at) => [place.x(at.depth), place.y(at.at)] as const),
        GROUND,
        NO_LINE,
      ),
    ),
    ...creasesOf(leaf.fold).map(({ from, to }) =>
      pen.segment(place.x(from.depth), place.y(from.at), place.x(to.depth), place.y(to.at), SCORE),
    ),
    pen.box([gutter, TOP], [EDGE, foot], "none", THIN),
    keptEdge(pen, leaf, place),
    markWords(pen, kit, leaf, place),
    pen.words([(gutter + EDGE) / 2, TOP - 1.2], say.drawHead(), middle),
    pen.words([gutter, foot + 3.6], say.drawGutter()),
    pen.words([EDGE + 5, foot + 3.6], say.drawForeEdge(), { anchor: "end" }),
  ]);
}

/** The stretch that stays, heavy along the fore-edge. */
function keptEdge(pen: Pen, { fold }: CornerLeaf, { x, y }: LeafPlace): string {
  if (fold.kind !== "corners") return "";
  const { from, to } = fold.shown;
  const words = pen.upright([EDGE - 2.6, (y(from) + y(to)) / 2], say.drawCornerStays(), { bold: true });
  return pen.segment(x(0), y(from), x(0), y(to), KEPT) + (y(to) - y(from) > 9 ? words : "");
}

/** The marks as in the table, with the end of a steeper crease. */
function markWords(pen: Pen, kit: Kit, { fold }: CornerLeaf, { x, y }: LeafPlace): string {
  const creases = creasesOf(fold);
  return creases
    .map((crease) => {
      const at = formatNumber(crease.from.at, markStyle(kit));
      const end = say.cornerCreaseEnd({ end: formatDepth(crease.to.depth, kit.units) });
      const aside = creases.length > 1 && y(creases[1]!.from.at) - y(creases[0]!.from.at) < 4;
      const height = y(crease.from.at) + (aside ? (crease.corner === "head" ? -1.4 : 3.4) : 1.05);
      return (
        pen.segment(x(0), y(crease.from.at), x(0) + 3.6, y(crease.from.at), THIN) +
        pen.words([EDGE + 4.6, height], isTurned(crease) ? `${at} ${end}` : at, { bold: true })
      );
    })
    .join("");
}

function labelOf(kit: Kit, leaf: CornerLeaf): string {
  const creases = creasesOf(leaf.fold);
  const marks = creases.map(({ from }) => formatNumber(from.at, markStyle(kit)));
  const turned = creases
    .filter(isTurned)
    .map(({ to }) => say.drawCornerLeafTurned({ end: `${formatDepth(to.depth, kit.units)} ${kit.units}` }));
  const whole = say.drawCornerLeaf({ title: leafTitle(leaf), units: kit.units, marks: rowText(marks) });
  return [whole, ...turned].join(" ");
}
