import type { Kit } from "../../../core/kit/kit.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { benchCutDepth } from "../../../core/plan/bench.ts";
import { formatSize } from "../../../words/lengths.ts";
import type { Figure } from "../pocket-figure.ts";
import { type Boundary, depthOf, exampleBoundary, exampleLeaf } from "./example-leaf.ts";
import { FACE_CELL, type FaceCell, faceOf } from "./fold-face.ts";
import { bladeAbove, foldingOver, matUnder, nextLeaf, scoringTools, sectionOf } from "./fold-section.ts";
import { diagram, SMALL } from "./ink.ts";
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
    const title = penFor("ltr", field).words([0, TITLES[row]!], `${i + 1}  ${panel.title}`, { bold: true, size: 3.3 });
    return title + panel.draw(faceCell(penFor(kit.book.direction, field), pattern, boundary));
  });
  const words = penFor("ltr");
  const foot = 2 * CELL.height + 6;
  return diagram(foot + 4, labelOf(pattern, boundary, size), [
    ...drawn,
    words.words([0, foot - 1], "Upper: the page before you. Lower: the same leaf", { size: SMALL }),
    words.words([0, foot + 2.6], "edge-on, seen from the head; thickness exaggerated.", { size: SMALL }),
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
      title: "Score both lines",
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
      title: "Mark and cut",
      draw: (cell) =>
        faceOf(cell, {
          edges: [0, 0],
          scores: depths,
          cut: [0, deeper],
          dimensions: [{ depth: deeper, words: `cut ${size(deeper)}` }],
        }) +
        sectionOf(cell, 0) +
        matUnder(cell, 0) +
        bladeAbove(cell, deeper),
    },
    {
      title: "Fold each span back",
      draw: (cell) =>
        faceOf(cell, { edges: [a, 0], scores: [b], cut: [0, deeper], folding: true }) + foldingOver(cell, a, 0),
    },
    {
      title: "Tuck behind the leaf",
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
      title: "Score both lines",
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
      title: `Fold all of it at ${size(front)}`,
      draw: (cell) =>
        faceOf(cell, { edges: [front, front], scores: [deeper], folding: true }) + foldingOver(cell, front, 0),
    },
    {
      title: "Mark and cut",
      draw: (cell) =>
        faceOf(cell, {
          edges: [front, front],
          scores: [deeper],
          cut: [front, deeper],
          dimensions: [{ depth: deeper, from: front, words: `cut ${size(bench)}` }],
        }) +
        sectionOf(cell, front) +
        matUnder(cell, front) +
        bladeAbove(cell, deeper),
    },
    {
      title: "Fold again, tuck",
      draw: (cell) => faceOf(cell, { edges: [a, b], scores: [] }) + sectionOf(cell, deeper) + nextLeaf(cell, deeper),
    },
  ];
}

function labelOf(pattern: Pattern, { upper, lower }: Boundary, size: (mm: number) => string): string {
  const [a, b] = [depthOf(pattern, upper), depthOf(pattern, lower)];
  const deeper = Math.max(a, b);
  const front = depthOf(pattern, 1);
  const steps =
    pattern.fit.foldStyle === "stepped"
      ? `1: score the lines at ${size(front)} and ${size(deeper)} from the fore-edge. 2: fold the whole leaf back at ${size(front)}. 3: mark, and cut from the folded edge ${size(benchCutDepth(pattern, deeper))} inward, through both layers, on a mat. 4: fold the deeper span back again at its line and tuck it between this leaf and the next; the other stays at the folded edge.`
      : `1: score the lines at ${size(Math.min(a, b))} and ${size(deeper)} from the fore-edge. 2: mark, and cut from the fore-edge ${size(deeper)} inward, on a mat. 3: fold each span back at its own line, the upper one at ${size(a)}, the lower one at ${size(b)}. 4: tuck the flaps between this leaf and the next.`;
  return `The ${pattern.fit.foldStyle} fold in four steps, for two neighbouring spans at levels ${upper} and ${lower}. ${steps}`;
}
