import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Answers, Relief } from "../../core/beginning/answers.ts";
import { withHeight } from "../../core/fit/shape.ts";
import type { PatternedKit } from "../../core/pattern/patterned-kit.ts";
import { toDegrees } from "../../core/units/angle.ts";
import { MM_PER_INCH } from "../../core/units/length.ts";
import { PROJECT_CONTENT } from "../../input/files/content-folder.ts";
import { KitError, type KitMessage } from "../../input/files/message.ts";
import type { OwnFont } from "../../input/fonts/own-fonts.ts";
import { readKit, type StatedKit } from "../../input/kit/read-kit.ts";
import { patternKit } from "../library/pattern-kit.ts";
import { kitText } from "./kit-text.ts";
import { newKit, type Try } from "./new-kit.ts";
import { NoFit } from "./no-fit.ts";
import type { Sketch } from "./sketch.ts";

/** A kit that fits its book. */
export interface Fitting {
  readonly text: string;
  readonly kit: PatternedKit;
  /** Whether its light has room. */
  readonly lit: boolean;
}

type Way = Omit<Try, "height">;

/** How a kit is tried. */
export interface Trial {
  /** Fonts that the site's settings name. */
  readonly fonts?: readonly OwnFont[] | undefined;
  /** The height for which the picture is drawn first, mm: near the one that will fit, so that it need not be drawn again. */
  readonly near?: number | undefined;
  /** Hears of the picture as soon as it is drawn, also where it fits nowhere. */
  readonly drawn?: ((stated: StatedKit) => void) | undefined;
}

/** The tallest picture tried, as a share of the leaf's height, and the steps down from it. */
const TALLEST = 0.66;
const TRIES = 16;

/** Wider than that a book is opened only where nothing else fits, degrees. */
const COMFORTABLE = 120;

/**
 * The tallest picture that fits the book, with its light where that has room. What a build reads and computes decides, so a kit
 * that was begun can be built.
 * @throws NoFit where none fits; KitError for a picture that cannot be read
 */
export function tryKit(answers: Answers, sketch: Sketch, trial: Trial = {}): Fitting {
  const base = mkdtempSync(join(tmpdir(), "leaflight-new-"));
  try {
    const folder = join(base, PROJECT_CONTENT, "kits", answers.slug);
    mkdirSync(folder, { recursive: true });
    for (const { name, bytes } of sketch.files) writeFileSync(join(folder, name), bytes);
    const read = (one: Try): ReadKit => {
      const text = kitText(newKit(answers, sketch, one));
      writeFileSync(join(folder, "index.md"), text);
      const stated = readKit(folder, base, [], trial.fonts);
      trial.drawn?.(stated);
      return { ...one, text, stated };
    };
    const { text, stated, light } = firstFitting(answers, sketch, { read, near: trial.near });
    return { text, kit: patternKit(stated), lit: light !== undefined };
  } finally {
    rmSync(base, { recursive: true, force: true });
  }
}

/** With the light, where there is one, before without it. */
function waysOf({ light, relief }: Answers, { levels }: Sketch): Way[] {
  const reliefs = levels.length === 1 ? reliefsOf(relief, light !== undefined) : (["raised"] as const);
  const lit = light ? reliefs.map((one) => ({ relief: one, light })) : [];
  return [...lit, { relief: reliefs.at(-1)!, light: undefined }];
}

function reliefsOf(wished: Relief | undefined, isLit: boolean): readonly Relief[] {
  if (wished) return [wished];
  return isLit ? ["hollow", "raised"] : ["raised"];
}

/** A kit as it was read in order to try it. */
interface ReadKit extends Try {
  readonly text: string;
  readonly stated: StatedKit;
}

/** The first way and height that fit. The picture is drawn once a way, and once more where another height than that fits. */
function firstFitting(
  answers: Answers,
  sketch: Sketch,
  { read, near }: { readonly read: (one: Try) => ReadKit; readonly near: number | undefined },
): ReadKit {
  let why: readonly KitMessage[] = [];
  const heights = heightsOf(answers);
  for (const way of waysOf(answers, sketch)) {
    const drawn = read({ ...way, height: heights.find((height) => height === near) ?? heights[0]! });
    const height = fittingHeight(heights, (one) => {
      try {
        return toDegrees(patternKit(atHeight(drawn.stated, one)).pattern.fit.opening);
      } catch (error) {
        if (!(error instanceof KitError)) throw error;
        why = error.messages;
        return undefined;
      }
    });
    if (height === drawn.height) return drawn;
    if (height !== undefined) return read({ ...way, height });
  }
  throw new NoFit(why);
}

/** The tallest height at which a book is opened comfortably, else the tallest that fits at all. */
function fittingHeight(
  heights: readonly number[],
  openingAt: (height: number) => number | undefined,
): number | undefined {
  let fitting: number | undefined;
  for (const height of heights) {
    const opening = openingAt(height);
    if (opening !== undefined && opening <= COMFORTABLE) return height;
    if (opening !== undefined) fitting ??= height;
  }
  return fitting;
}

function atHeight(stated: StatedKit, height: number): StatedKit {
  const { kit } = stated;
  return { ...stated, kit: { ...kit, fit: { ...kit.fit, shape: withHeight(kit.fit.shape, height) } } };
}

/** Heights to try, mm, the tallest first. */
function heightsOf({ book, units }: Answers): number[] {
  const step = units === "mm" ? 5 : MM_PER_INCH / 4;
  const tallest = Math.floor((book.leafHeight * TALLEST) / step);
  return Array.from({ length: Math.min(TRIES, tallest) }, (_, i) => Math.round(tallest * (1 - i / TRIES)) * step);
}
