import type { Answers, LightAnswer, Relief } from "../../core/beginning/answers.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { MM_PER_INCH, roundTo, tidy } from "../../core/units/length.ts";
import * as say from "../../words/messages.ts";
import type { Sketch } from "./sketch.ts";

/** A new kit's front matter, key by key. */
export type NewKit = Readonly<Record<string, unknown>>;

/** How a new kit is tried on its book. */
export interface Try {
  readonly relief: Relief;
  readonly light: LightAnswer | undefined;
  /** Of the picture, mm. */
  readonly height: number;
}

/** Shares of the leaf's width: the first fold, the step between levels, and the deepest fold. */
const FIRST = 0.08;
const STEP = 0.08;
const DEEPEST = 0.36;

/** Clear paper at the gutter, mm; as a kit leaves it that says nothing. */
const GUTTER = 5;

/** The front matter of a kit begun from these answers. */
export function newKit(answers: Answers, sketch: Sketch, { relief, light, height }: Try): NewKit {
  const { book, units } = answers;
  const ground = sketch.grounded ? sketch.levels.at(-1)! : say.newLevelGround();
  const drawn = sketch.levels.filter((name) => name !== ground);
  const names = relief === "raised" ? [...drawn, ground] : [ground, ...drawn];
  const depths = depthsOf(names.length, book.leafWidth, units);
  const border = Math.max(2, Math.min(10, Math.floor(book.leaves / 12)));
  const long = (mm: number): number | string => stated(mm, units);
  return {
    title: answers.title,
    summary: say.newTextSummary({ title: answers.title }),
    ...(answers.draft ? { draft: true } : {}),
    ...(units === "in" ? { units } : {}),
    picture: sketch.picture,
    levels: names.map((name, i) => ({
      name,
      depth: long(depths[i]!),
      ...(name === ground ? { background: true } : {}),
    })),
    book: {
      leafHeight: long(book.leafHeight),
      leafWidth: long(book.leafWidth),
      blockThickness: long(book.blockThickness),
      leaves: book.leaves,
      ...(book.pageOneLeaf === undefined ? {} : { pageOneLeaf: book.pageOneLeaf }),
      ...(book.lastPage === undefined ? {} : { lastPage: book.lastPage }),
    },
    fit: { borderLeaves: [border, border], height: long(height) },
    ...(light ? { light: { diameter: long(light.diameter), height: long(light.height) } } : {}),
    ...(sketch.credit ? { credit: sketch.credit } : {}),
  };
}

/** Depths from the fore-edge, mm, in steps that a maker can set. */
function depthsOf(count: number, leafWidth: number, units: UnitSystem): number[] {
  const fine = units === "mm" ? 1 : MM_PER_INCH / 16;
  const deepest = Math.min(leafWidth * DEEPEST, (leafWidth - GUTTER) / 2 - 1);
  const first = Math.max(fine, roundTo(leafWidth * FIRST, fine));
  const step = Math.max(fine, Math.floor(Math.min(leafWidth * STEP, (deepest - first) / (count - 1)) / fine) * fine);
  return Array.from({ length: count }, (_, i) => first + i * step);
}

function stated(mm: number, units: UnitSystem): number | string {
  return units === "mm" ? tidy(mm, 2) : `${tidy(mm / MM_PER_INCH, 4)} in`;
}
