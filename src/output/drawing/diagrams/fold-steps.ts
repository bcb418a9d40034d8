import type { Kit } from "../../../core/kit/kit.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { benchCutDepth } from "../../../core/plan/bench.ts";
import { formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import type { Figure } from "../figure.ts";
import { linesWithin } from "../words-width.ts";
import { type Boundary, depthOf, exampleBoundary, exampleLeaf } from "./example-leaf.ts";
import { FACE_CELL, type FaceCell } from "./fold-face.ts";
import { foldPanels } from "./fold-panels.ts";
import { diagram, SMALL, WIDTH } from "./ink.ts";
import { penFor } from "./pen.ts";
import { LINE } from "./pen-words.ts";

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
  const panels = foldPanels(pattern, boundary, size, kit.fit.cutWith);
  const drawn = panels.map((panel, i) => {
    const row = Math.floor(i / 2);
    const field = { left: (i % 2) * (CELL.width + CELL.gap), top: row * CELL.height, width: CELL.width };
    const head = penFor("ltr", field);
    const title = head.words([5.4, TITLES[row]!], panel.title, { bold: true, size: 3.3, room: CELL.width - 3.4 });
    return (
      head.turn([2.1, TITLES[row]! - 1.15], i + 1) +
      title +
      panel.draw(faceCell(penFor(kit.book.direction, field), pattern, boundary))
    );
  });
  const foot = 2 * CELL.height + 6;
  const more = Math.max(0, linesWithin(WIDTH, say.drawFoldFoot(), SMALL).length - 2);
  return diagram(foot + 4 + more * LINE * SMALL, labelOf(pattern, boundary, size), [
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

function labelOf(pattern: Pattern, { upper, lower }: Boundary, size: (mm: number) => string): string {
  const [a, b] = [depthOf(pattern, upper), depthOf(pattern, lower)];
  const deeper = Math.max(a, b);
  const figures = { upper, lower, deeper: size(deeper) };
  return pattern.fit.foldStyle === "stepped"
    ? say.drawFoldStepped({ ...figures, front: size(depthOf(pattern, 1)), cut: size(benchCutDepth(pattern, deeper)) })
    : say.drawFoldSingle({ ...figures, nearer: size(Math.min(a, b)), upperDepth: size(a), lowerDepth: size(b) });
}
