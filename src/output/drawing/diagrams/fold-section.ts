import * as say from "../../../words/messages.ts";
import { depthOf } from "./example-leaf.ts";
import { FACE_CELL, type FaceCell } from "./fold-face.ts";
import { type At, FAINT, GROUND, THIN } from "./ink.ts";
import { foldedLayers, layersBehind, paperLine } from "./section.ts";

const BODY_Y = 44.5;
const LAYER = 1.5;
/** How far down a flap may hang. */
const LOWEST = 6.5;

/** The leaf edge-on, folded at a depth as its style asks, or flat where the depth is 0. */
export function sectionOf(cell: FaceCell, depth: number): string {
  if (depth === 0) return cell.pen.leaf(levelAt(BODY_Y, FACE_CELL.torn, cell.x(0)));
  return paperLine(layersOf(cell, depth), (mm, layer) => cell.pen.place([cell.x(mm), BODY_Y + layer * LAYER]));
}

/** Two tips of the blunt tool on the lines. */
export function scoringTools(cell: FaceCell, depths: readonly number[]): string {
  return depths
    .map((depth) => {
      const x = cell.x(depth);
      return cell.pen.shape(
        [
          [x, BODY_Y - 0.4],
          [x + 0.8, BODY_Y - 3],
          [x + 0.8, BODY_Y - 5],
          [x - 0.8, BODY_Y - 5],
          [x - 0.8, BODY_Y - 3],
        ],
        "#ffffff",
        THIN,
      );
    })
    .join("");
}

/** The mat under what is cut. */
export function matUnder(cell: FaceCell, folded: number): string {
  const y = BODY_Y + 0.7 + (folded > 0 ? LAYER : 0);
  return (
    cell.pen.box([6, y], [36, y + 2.2], GROUND, THIN) +
    cell.pen.words([21, y + 5.4], say.drawFoldMat(), { anchor: "middle" })
  );
}

/** The blade set where the cut ends, and the way it is drawn: out through the edge. */
export function bladeAbove(cell: FaceCell, depth: number): string {
  const x = cell.x(depth);
  return (
    cell.pen.shape(
      [
        [x, BODY_Y + 0.2],
        [x + 3.4, BODY_Y - 4],
        [x + 3.4, BODY_Y - 6],
        [x + 1.4, BODY_Y - 6],
      ],
      "#ffffff",
      THIN,
    ) + cell.pen.arrow(x + 5, BODY_Y - 3, cell.x(0) + 2.6, BODY_Y - 3)
  );
}

/** Scissors that go in from the edge to where the cut ends. */
export function scissorsIn(cell: FaceCell, edge: number, depth: number): string {
  const [tip, end] = [cell.x(depth), cell.x(edge) + 4];
  const blade = (way: 1 | -1): string =>
    cell.pen.shape(
      [
        [tip, BODY_Y + way * 0.6],
        [end, BODY_Y + way * 4],
        [end, BODY_Y + way * 2],
      ],
      "#ffffff",
    );
  return blade(-1) + blade(1) + cell.pen.arrow(end, BODY_Y - 5.4, tip + 1, BODY_Y - 5.4);
}

/** A flap on its way under the body. */
export function foldingOver(cell: FaceCell, depth: number, from: number): string {
  const { pen, x } = cell;
  const hinge: At = [x(depth), BODY_Y];
  const length = (depth - from) * cell.scale;
  const angle = Math.asin(Math.min(0.9, LOWEST / length));
  const tip: At = [hinge[0] + length * Math.cos(angle), BODY_Y + length * Math.sin(angle)];
  const end: At = [hinge[0] - Math.max(0.75 * length, 3.5), BODY_Y + 3.2];
  return [
    pen.leaf([[FACE_CELL.torn, BODY_Y], hinge, tip]),
    pen.line([hinge, [x(from), BODY_Y]], FAINT),
    pen.arrow(tip[0] - 1, tip[1] - 0.4, end[0], end[1], [hinge[0] - length * 0.3, tip[1] + 1.4]),
  ].join("");
}

/** The next leaf's body under the flap, and the words for both. */
export function nextLeaf(cell: FaceCell, depth: number): string {
  const { pen } = cell;
  const behind = layersBehind(layersOf(cell, depth));
  const y = BODY_Y + (behind + 1) * LAYER;
  return [
    pen.leaf(levelAt(y, FACE_CELL.torn, cell.x(depth)), true),
    pen.words([cell.x(depth) + 4.6, BODY_Y + 0.8], say.drawFlap()),
    pen.leader([
      [cell.x(depth) + 4.2, BODY_Y],
      [cell.x(depth) - 1, BODY_Y + behind * LAYER - 0.4],
    ]),
    pen.words([FACE_CELL.torn + 1, BODY_Y - 1.2], say.drawThisLeaf()),
    pen.words([FACE_CELL.torn + 1, y + 3.4], say.drawNextLeaf()),
  ].join("");
}

function layersOf(cell: FaceCell, depth: number): ReturnType<typeof foldedLayers> {
  const gutter = (FACE_CELL.foreEdge - FACE_CELL.torn) / cell.scale;
  return foldedLayers(depth, depthOf(cell.pattern, 1), cell.pattern.fit.foldStyle, gutter);
}

function levelAt(y: number, from: number, to: number): At[] {
  return [
    [from, y],
    [to, y],
  ];
}
