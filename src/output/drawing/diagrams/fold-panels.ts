import type { Kit } from "../../../core/kit/kit.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { benchCutDepth } from "../../../core/plan/bench.ts";
import * as say from "../../../words/messages.ts";
import { type Boundary, depthOf } from "./example-leaf.ts";
import { drawFace, type FaceCell, type FaceState } from "./fold-face.ts";
import { bladeAbove, foldingOver, matUnder, nextLeaf, scissorsIn, scoringTools, sectionOf } from "./fold-section.ts";

type CutWith = Kit["fit"]["cutWith"];

/** One panel: what is done, on the face and edge-on. */
export interface FoldPanel {
  readonly title: string;
  readonly draw: (cell: FaceCell) => string;
}

/** The four steps of a kit's fold style at a boundary of two spans. */
export function foldPanels(
  pattern: Pattern,
  boundary: Boundary,
  size: (mm: number) => string,
  cutWith: CutWith,
): FoldPanel[] {
  const depths = [depthOf(pattern, boundary.upper), depthOf(pattern, boundary.lower)] as const;
  const front = depthOf(pattern, 1);
  return pattern.fit.foldStyle === "stepped"
    ? steppedPanels(
        depths,
        front,
        say.drawCut({ depth: size(benchCutDepth(pattern, Math.max(...depths))) }),
        size,
        cutWith,
      )
    : singlePanels(depths, size, cutWith);
}

/** Depths of the upper and the lower span. */
type Depths = readonly [upper: number, lower: number];

function singlePanels([a, b]: Depths, size: (mm: number) => string, cutWith: CutWith): FoldPanel[] {
  const deeper = Math.max(a, b);
  const scores = [a, b].sort((one, other) => one - other);
  const cut = say.drawCut({ depth: size(deeper) });
  return [
    scorePanel(scores, size),
    cutPanel({ edges: [0, 0], scores, cut: [0, deeper], dimensions: [{ depth: deeper, words: cut }] }, cutWith),
    {
      title: say.drawFoldEach(),
      draw: (cell) =>
        drawFace(cell, { edges: [a, 0], scores: [b], cut: [0, deeper], folding: true }) + foldingOver(cell, a, 0),
    },
    tuckPanel(say.drawFoldTuck(), [a, b]),
  ];
}

function steppedPanels(
  [a, b]: Depths,
  front: number,
  cut: string,
  size: (mm: number) => string,
  cutWith: CutWith,
): FoldPanel[] {
  const deeper = Math.max(a, b);
  const scores = [deeper];
  const edges = [front, front] as const;
  return [
    scorePanel([...new Set([front, deeper])], size),
    {
      title: say.drawFoldWhole({ depth: size(front) }),
      draw: (cell) => drawFace(cell, { edges, scores, folding: true }) + foldingOver(cell, front, 0),
    },
    cutPanel(
      { edges, scores, cut: [front, deeper], dimensions: [{ depth: deeper, from: front, words: cut }] },
      cutWith,
    ),
    tuckPanel(say.drawFoldAgain(), [a, b]),
  ];
}

function scorePanel(scores: readonly number[], size: (mm: number) => string): FoldPanel {
  const dimensions = scores.map((depth, i) => ({ depth, words: size(depth), above: i === 0 }));
  return {
    title: say.drawFoldScore(),
    draw: (cell) =>
      drawFace(cell, { edges: [0, 0], scores, dimensions }) + sectionOf(cell, 0) + scoringTools(cell, scores),
  };
}

function cutPanel(state: FaceState & Required<Pick<FaceState, "cut">>, cutWith: CutWith): FoldPanel {
  const [edge, depth] = state.cut;
  return {
    title: say.drawFoldCut(),
    draw: (cell) =>
      drawFace(cell, state) +
      sectionOf(cell, edge) +
      (cutWith === "knife" ? matUnder(cell, edge) + bladeAbove(cell, depth) : scissorsIn(cell, edge, depth)),
  };
}

function tuckPanel(title: string, edges: Depths): FoldPanel {
  const deeper = Math.max(...edges);
  return {
    title,
    draw: (cell) => drawFace(cell, { edges, scores: [] }) + sectionOf(cell, deeper) + nextLeaf(cell, deeper),
  };
}
