import type { Kit } from "../../../core/kit/kit.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { benchCutDepth } from "../../../core/plan/bench.ts";
import { formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import type { Figure } from "../figure.ts";
import { type Boundary, depthOf, exampleBoundary, exampleLeaf } from "./example-leaf.ts";
import { FACE_CELL, type FaceCell, faceOf } from "./fold-face.ts";
import { bladeAbove, foldingOver, matUnder, nextLeaf, scoringTools, sectionOf } from "./fold-section.ts";
import { diagram, SMALL, WIDTH } from "./ink.ts";
import { penFor } from "./pen.ts";

/** One panel: what is done, on the face and edge-on. */
interface Panel {
  readonly title: string;
  readonly draw: (cell: FaceCell) => string;
}

const CELL = { width: 38, height: 52, gap: 4 };

/** Heights of the titles: only the first row has dimensions above the piece. */
const TITLES = [4, 8.5];

/** The kit's own fold style in four steps, with the depths of two neighbouring spans of its example leaf. Undefined where no leaf has a cut. */
export function foldSteps(kit: Kit, pattern: Pattern): Figure | undefined {
  const leaf = exampleLeaf(pattern);
  const stepped = pattern.fit.foldStyle === "stepped";
  const boundary = exampleBoundary(pattern, leaf, stepped ? "with" : "either");
  if (!boundary) return undefined;
  const size = (mm: number): string => formatSize(mm, kit.units);
  const panels = stepped ? steppedPanels(pattern, boundary, size) : singlePanels(pattern, boundary, size);
  const drawn = panels.map((panel, i) => {
    const row = Math.floor(i / 2);
    const field = { left: (i % 2) * (CELL.width + CELL.gap), top: row * CELL.height, width: CELL.width };
    const title = penFor("ltr", field).words(
      [0, TITLES[row]!],
      say.drawFoldTitle({ number: i + 1, step: panel.title }),
      { bold: true, size: 3.3 },
    );
    return title + panel.draw(faceCell(penFor(kit.book.direction, field), pattern, boundary));
  });
  const foot = 2 * CELL.height + 6;
  return diagram(foot + 4, labelOf(pattern, boundary, size), [
    ...drawn,
    penFor("ltr").wrapped([0, foot - 1], say.drawFoldFoot(), WIDTH, { size: SMALL }),
  ]);
}

function faceCell(pen: FaceCell["pen"], pattern: Pattern, boundary: Boundary): FaceCell {
  const front = depthOf(pattern, 1);
  const stepped = pattern.fit.foldStyle === "stepped";
  const deeper = Math.max(depthOf(pattern, boundary.upper), depthOf(pattern, boundary.lower));
  const reach = stepped ? Math.max(2 * deeper - front, 2 * front) : 2 * deeper;
  const scale = (FACE_CELL.foreEdge - FACE_CELL.torn - 2) / reach;
  return { pen, pattern, boundary, scale, x: (depth) => FACE_CELL.foreEdge - depth * scale };
}

function singlePanels(pattern: Pattern, boundary: Boundary, size: (mm: number) => string): Panel[] {
  const { upper, lower } = boundary;
  const [a, b] = [depthOf(pattern, upper), depthOf(pattern, lower)];
  const deeper = Math.max(a, b);
  const depths = [a, b].sort((one, other) => one - other);
  return [
    {
      title: say.drawFoldScore(),
      draw: (cell) =>
        faceOf(cell, {
          edges: [0, 0],
          scores: depths,
          dimensions: depths.map((depth, i) => ({ depth, words: size(depth), above: i === 0 })),
        }) +
        sectionOf(cell, 0) +
        scoringTools(cell, depths),
    },
    {
      title: say.drawFoldCut(),
      draw: (cell) =>
        faceOf(cell, {
          edges: [0, 0],
          scores: depths,
          cut: [0, deeper],
          dimensions: [{ depth: deeper, words: say.drawCut({ depth: size(deeper) }) }],
        }) +
        sectionOf(cell, 0) +
        matUnder(cell, 0) +
        bladeAbove(cell, deeper),
    },
    {
      title: say.drawFoldEach(),
      draw: (cell) =>
        faceOf(cell, { edges: [a, 0], scores: [b], cut: [0, deeper], folding: true }) + foldingOver(cell, a, 0),
    },
    {
      title: say.drawFoldTuck(),
      draw: (cell) => faceOf(cell, { edges: [a, b], scores: [] }) + sectionOf(cell, deeper) + nextLeaf(cell, deeper),
    },
  ];
}

function steppedPanels(pattern: Pattern, boundary: Boundary, size: (mm: number) => string): Panel[] {
  const front = depthOf(pattern, 1);
  const [a, b] = [depthOf(pattern, boundary.upper), depthOf(pattern, boundary.lower)];
  const deeper = Math.max(a, b);
  const bench = benchCutDepth(pattern, deeper);
  const lines = [...new Set([front, deeper])];
  return [
    {
      title: say.drawFoldScore(),
      draw: (cell) =>
        faceOf(cell, {
          edges: [0, 0],
          scores: lines,
          dimensions: lines.map((depth, i) => ({ depth, words: size(depth), above: i === 0 })),
        }) +
        sectionOf(cell, 0) +
        scoringTools(cell, lines),
    },
    {
      title: say.drawFoldWhole({ depth: size(front) }),
      draw: (cell) =>
        faceOf(cell, { edges: [front, front], scores: [deeper], folding: true }) + foldingOver(cell, front, 0),
    },
    {
      title: say.drawFoldCut(),
      draw: (cell) =>
        faceOf(cell, {
          edges: [front, front],
          scores: [deeper],
          cut: [front, deeper],
          dimensions: [{ depth: deeper, from: front, words: say.drawCut({ depth: size(bench) }) }],
        }) +
        sectionOf(cell, front) +
        matUnder(cell, front) +
        bladeAbove(cell, deeper),
    },
    {
      title: say.drawFoldAgain(),
      draw: (cell) => faceOf(cell, { edges: [a, b], scores: [] }) + sectionOf(cell, deeper) + nextLeaf(cell, deeper),
    },
  ];
}

function labelOf(pattern: Pattern, { upper, lower }: Boundary, size: (mm: number) => string): string {
  const [a, b] = [depthOf(pattern, upper), depthOf(pattern, lower)];
  const deeper = Math.max(a, b);
  const figures = { upper, lower, deeper: size(deeper) };
  return pattern.fit.foldStyle === "stepped"
    ? say.drawFoldStepped({ ...figures, front: size(depthOf(pattern, 1)), cut: size(benchCutDepth(pattern, deeper)) })
    : say.drawFoldSingle({ ...figures, nearer: size(Math.min(a, b)), upperDepth: size(a), lowerDepth: size(b) });
}
