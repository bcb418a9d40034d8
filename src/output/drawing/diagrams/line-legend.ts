import * as say from "../../../words/messages.ts";
import type { Figure } from "../figure.ts";
import { CUT, diagram, FOLDED, GLUE, type Look, POSITION, SCORE, THIN } from "./ink.ts";
import { penFor } from "./pen.ts";

const ROW = 5.2;
const COLUMNS = [1, 42] as const;
const SAMPLE = 13;
const ROOM = COLUMNS[1] - COLUMNS[0] - SAMPLE - 3.5;

const pen = penFor("ltr");

interface Sample {
  readonly words: string;
  readonly draw: (x: number, y: number) => string;
}

/** What each line of the diagrams means. */
export function lineLegend(): Figure {
  return legendOf([
    { words: say.drawLegendCut(), draw: line(CUT) },
    { words: say.drawLegendEdge(), draw: line(THIN) },
    { words: say.drawLegendScore(), draw: line(SCORE) },
    { words: say.drawLegendPosition(), draw: line(POSITION) },
    { words: say.drawLegendFolded(), draw: line(FOLDED) },
    { words: say.drawLegendDimension(), draw: (x, y) => pen.across(x + 0.5, x + SAMPLE - 0.5, y, "") },
    {
      words: say.drawLegendLeaf(),
      draw: (x, y) =>
        pen.leaf([
          [x + 0.5, y],
          [x + SAMPLE - 0.5, y],
        ]),
    },
    ...ofHands(),
    { words: say.drawDotOfGlue(), draw: (x, y) => pen.dot([x + SAMPLE / 2, y], 1, GLUE) },
  ]);
}

/** The same where corners are folded: nothing is cut or glued. */
export function cornerLegend(): Figure {
  return legendOf([
    { words: say.drawLegendEdge(), draw: line(THIN) },
    { words: say.drawCornerCrease(), draw: line(SCORE) },
    { words: say.drawLegendFolded(), draw: line(FOLDED) },
    ...ofHands(),
  ]);
}

const ofHands = (): Sample[] => [
  { words: say.drawLegendMove(), draw: (x, y) => pen.arrow(x, y, x + SAMPLE, y) },
  { words: say.drawLegendTurn(), draw: (x, y) => pen.turn([x + SAMPLE / 2, y], 1) },
];

function line(look: Look): Sample["draw"] {
  return (x, y) => pen.segment(x, y, x + SAMPLE, y, look);
}

function legendOf(items: readonly Sample[]): Figure {
  const rows = Math.ceil(items.length / 2);
  const drawn = items.map(({ words, draw }, i) => {
    const x = COLUMNS[Math.floor(i / rows)]!;
    const y = 3 + (i % rows) * ROW;
    return draw(x, y) + pen.words([x + SAMPLE + 2.5, y + 1.05], words, { room: ROOM });
  });
  return diagram(rows * ROW + 2, say.drawLegend(), drawn);
}
