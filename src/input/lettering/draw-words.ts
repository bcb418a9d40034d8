import type { Affine } from "../../core/geometry/affine.ts";
import { boxOf, type Size } from "../../core/geometry/box.ts";
import type { Ring } from "../../core/geometry/point.ts";
import type { LevelShape } from "../../core/picture/level-map.ts";
import * as say from "../../words/messages.ts";
import { type Advice, type FieldPath, problem } from "../files/problem.ts";
import { ValueError } from "../svg/picture-error.ts";
import { seatsOf } from "./bend.ts";
import { FontFault } from "./font-table.ts";
import { fontsFor, type WordsPlace } from "./fonts-for.ts";
import { clusterRings } from "./glyph-rings.ts";
import { checkCovered } from "./missing-letters.ts";
import type { WordFields } from "./schema.ts";
import { type Cluster, type SetLine, setLine } from "./set-line.ts";

/** A line of words and its level. */
export interface Line {
  readonly text: string;
  readonly level: number;
}

/** Words as areas in painter order, in heights of their letters; x to the right, y down, the corner of their box at 0,0. */
export interface SetWords extends Size {
  readonly shapes: readonly LevelShape[];
}

/** The longer side of words in chord errors, as of picture files. */
const CHORD_ERRORS_PER_SIDE = 200_000;

/** More points than the letters of a sound font have on so many lines. */
const MOST_POINTS = 500_000;

/** Words as areas, on a canvas that their letters fill from edge to edge. @throws ProblemError where a font or a letter is missing */
export function drawWords(lines: readonly Line[], style: WordFields, place: WordsPlace): SetWords {
  const texts = lines.map(({ text }) => text.normalize("NFC").replace(/\s/g, " "));
  const { at } = place;
  const fonts = fontsFor(style, place);
  checkCovered(texts.join("\n"), fonts, [...at, "text"]);
  const set = texts.map((text) => setLine(text, fonts, style.spacing ?? 0));
  const drawn = drawLines(set, style, at);
  const { left, top, right, bottom } = boxOf(drawn.flat(2));
  const [width, height] = [right - left, bottom - top];
  if (!(width > 0 && height > 0)) throw problem([...at, "text"], noLetters());
  const moved = (ring: Ring): Ring => ring.map(([x, y]) => [x - left, y - top]);
  const shapes = drawn.flatMap((runs, line) =>
    runs.map((rings): LevelShape => ({ level: lines[line]!.level, rule: "nonzero", rings: rings.map(moved) })),
  );
  return { width, height, shapes };
}

/** Of each line, the outlines of each of its fonts in turn: the ways that outlines run differ from font to font. */
function drawLines(lines: readonly SetLine[], style: WordFields, at: FieldPath): Ring[][][] {
  const { align = "centre", lineHeight = 1.2, arc = 0 } = style;
  const seats = seatsOf(lines, { align, lineHeight, arc });
  if (!seats) {
    const advice = { given: say.checkGiven({ value: String(arc) }), allowed: say.lettersArcRoom() };
    throw problem([...at, "arc"], { ...advice, remedy: say.lettersArcLess() });
  }
  const longer = Math.max(1, lines.length * lineHeight, ...lines.map(({ advance }) => advance));
  let points = 0;
  return lines.map(({ clusters }, line) =>
    fontRuns(clusters).map((run) =>
      run.flatMap((cluster) => {
        const rings = outlined(cluster, seats(line, cluster), longer / CHORD_ERRORS_PER_SIDE, at);
        points += rings.reduce((sum, ring) => sum + ring.length, 0);
        if (points > MOST_POINTS) throw problem([...at, "text"], wildLetters());
        return rings;
      }),
    ),
  );
}

function fontRuns(clusters: readonly Cluster[]): Cluster[][] {
  const runs: Cluster[][] = [];
  for (const cluster of clusters) {
    if (runs.at(-1)?.[0]?.font === cluster.font) runs.at(-1)!.push(cluster);
    else runs.push([cluster]);
  }
  return runs;
}

function outlined(cluster: Cluster, seat: Affine, tolerance: number, at: FieldPath): Ring[] {
  try {
    return clusterRings(cluster, seat, tolerance);
  } catch (error) {
    if (!(error instanceof ValueError || error instanceof FontFault)) throw error;
    throw problem([...at, "text"], wildLetters());
  }
}

function noLetters(): Advice {
  return { given: say.lettersNone(), allowed: say.lettersSome(), remedy: say.lettersAdd() };
}

function wildLetters(): Advice {
  return { given: say.lettersWild(), allowed: say.lettersTame(), remedy: say.lettersOtherFont() };
}
