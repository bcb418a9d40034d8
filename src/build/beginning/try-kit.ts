import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { withHeight } from "../../core/fit/shape.ts";
import type { PatternedKit } from "../../core/pattern/patterned-kit.ts";
import { toDegrees } from "../../core/units/angle.ts";
import { MM_PER_INCH } from "../../core/units/length.ts";
import { PROJECT_CONTENT } from "../../input/files/content-folder.ts";
import { formatMessages } from "../../input/files/format-message.ts";
import { KitError } from "../../input/files/message.ts";
import { readKit, type StatedKit } from "../../input/kit/read-kit.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import { patternKit } from "../library/pattern-kit.ts";
import type { Answers } from "./answers.ts";
import { kitText } from "./kit-text.ts";
import { newKit, type Relief, type Try } from "./new-kit.ts";
import type { Sketch } from "./sketch.ts";

/** A kit that fits its book. */
export interface Fitting {
  readonly text: string;
  readonly kit: PatternedKit;
  /** Whether its light has room. */
  readonly lit: boolean;
}

type Way = Omit<Try, "height">;

/** The tallest picture tried, as a share of the leaf's height, and the steps down from it. */
const TALLEST = 0.66;
const TRIES = 16;

/** Wider than that a book is opened only where nothing else fits, degrees. */
const COMFORTABLE = 120;

/**
 * The tallest picture that fits the book, with its light where that has room. What a build reads and computes decides, so a kit
 * that was begun can be built.
 * @throws BuildError where none fits; KitError for a picture that cannot be read
 */
export function tryKit(answers: Answers, sketch: Sketch): Fitting {
  const base = mkdtempSync(join(tmpdir(), "leaflight-new-"));
  try {
    const folder = join(base, PROJECT_CONTENT, "kits", answers.slug);
    mkdirSync(folder, { recursive: true });
    for (const { name, bytes } of sketch.files) writeFileSync(join(folder, name), bytes);
    const read = (one: Try): { text: string; stated: StatedKit } => {
      const text = kitText(newKit(answers, sketch, one));
      writeFileSync(join(folder, "index.md"), text);
      return { text, stated: readKit(folder, base, []) };
    };
    const found = firstFitting(
      waysOf(answers, sketch),
      heightsOf(answers),
      (way, height) => read({ ...way, height }).stated,
    );
    const { text, stated } = read(found);
    return { text, kit: patternKit(stated), lit: found.light !== undefined };
  } finally {
    rmSync(base, { recursive: true, force: true });
  }
}

/** With the light, where there is one, before without it. */
function waysOf({ light }: Answers, { levels }: Sketch): Way[] {
  const reliefs: readonly Relief[] = light && levels.length === 1 ? ["hollow", "raised"] : ["raised"];
  const lit = light ? reliefs.map((relief) => ({ relief, light })) : [];
  return [...lit, { relief: reliefs.at(-1)!, light: undefined }];
}

/** The first way and height that fit. The picture is read once a way. */
function firstFitting(
  ways: readonly Way[],
  heights: readonly number[],
  read: (way: Way, height: number) => StatedKit,
): Try {
  let why = "";
  for (const way of ways) {
    const stated = read(way, heights[0]!);
    const fitting = heights.flatMap((height) => {
      try {
        return [{ height, opening: patternKit(atHeight(stated, height)).pattern.fit.opening }];
      } catch (error) {
        if (!(error instanceof KitError)) throw error;
        why = formatMessages(error.messages);
        return [];
      }
    });
    const found = fitting.find(({ opening }) => toDegrees(opening) <= COMFORTABLE) ?? fitting[0];
    if (found) return { ...way, height: found.height };
  }
  throw new BuildError(say.newNoFit({ why }));
}

function atHeight(stated: StatedKit, height: number): StatedKit {
  const { kit } = stated;
  return { ...stated, kit: { ...kit, fit: { ...kit.fit, shape: withHeight(kit.fit.shape, height) } } };
}

function heightsOf({ book, units }: Answers): number[] {
  const step = units === "mm" ? 5 : MM_PER_INCH / 4;
  const tallest = Math.floor((book.leafHeight * TALLEST) / step);
  return Array.from({ length: Math.min(TRIES, tallest) }, (_, i) => Math.round(tallest * (1 - i / TRIES)) * step);
}
