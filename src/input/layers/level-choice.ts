import type { Level } from "../../core/kit/kit.ts";
import * as say from "../../words/messages.ts";
import { eachOf } from "../files/each-of.ts";
import { isRasterName } from "../files/photo-kinds.ts";
import { type FieldPath, type ProblemError, problem } from "../files/problem.ts";
import { levelNumber } from "../picture/level-number.ts";
import type { Selection } from "../picture/selection.ts";
import type { LayerMatter } from "./schema.ts";
import { type SourceKey, sourceKeyOf } from "./source-form.ts";

/** Which levels a source draws at, by number from 1. */
export type LevelChoice =
  | { readonly kind: "one"; readonly level: number }
  /** A level for each line of words. */
  | { readonly kind: "lines"; readonly levels: readonly number[] }
  /** All levels of the kit. */
  | { readonly kind: "all" }
  /** Shapes or colours of a file, by the name of the level; undefined where the file's own names say it. */
  | { readonly kind: "shapes"; readonly of: Readonly<Record<string, Selection>> | undefined };

type Fields = Pick<LayerMatter, "level" | "levels" | "file" | "text" | "trace">;

/** The levels that fields state, of a kit with these levels; `whole` of a source that is all of the picture. @throws ProblemError */
export function levelChoice(
  fields: Fields,
  at: FieldPath,
  { levels, whole }: { readonly levels: readonly Level[]; readonly whole: boolean },
): LevelChoice {
  const { level, levels: parts, trace } = fields;
  if (trace === "tones" || trace === "depth") return overAll(fields, at, trace);
  if (level !== undefined && parts !== undefined) {
    const advice = { given: say.layerBothLevels(), allowed: say.layerOneOfLevels(), remedy: say.layerSplit() };
    throw problem([...at, "levels"], advice);
  }
  if (level !== undefined) return { kind: "one", level: levelNumber(level, levels, [...at, "level"]) };
  if (parts !== undefined) return choiceOf(fields, parts, { at: [...at, "levels"], levels });
  if (fields.file !== undefined && !isRasterName(fields.file)) return { kind: "shapes", of: undefined };
  // A photograph that says nothing shows as many tones as the kit has levels, and of two levels a silhouette.
  if (whole && fields.file !== undefined && trace === undefined && levels.length > 2) return { kind: "all" };
  if (whole) return { kind: "one", level: 1 };
  const allowed = say.layerLevelAllowed({ levels: namesOf(levels) });
  throw problem([...at, "level"], { given: say.checkNotGiven(), allowed, remedy: say.layerNameLevel() });
}

/** Tones and depth are parted by all levels, so that none may be stated. @throws ProblemError */
function overAll({ level, levels }: Fields, at: FieldPath, trace: string): LevelChoice {
  if (level === undefined && levels === undefined) return { kind: "all" };
  const advice = {
    given: say.layerOneOfLevels(),
    allowed: say.layerAllLevels({ trace }),
    remedy: say.layerRemoveKey(),
  };
  throw problem([...at, level === undefined ? "levels" : "level"], advice);
}

function choiceOf(
  fields: Fields,
  parts: NonNullable<LayerMatter["levels"]>,
  { at, levels }: { readonly at: FieldPath; readonly levels: readonly Level[] },
): LevelChoice {
  const key = sourceKeyOf(fields as LayerMatter);
  if (isList(parts)) {
    if (key !== "text") throw wrongForm(at, say.layerLevelsList(), say.layerLevelsMap());
    const lines = linesOf(fields.text);
    const asked = say.layerLevelsOfLines({ lines: lines.length });
    if (parts.length !== lines.length) throw wrongForm(at, say.checkGiven({ value: parts.join(", ") }), asked);
    return { kind: "lines", levels: eachOf(parts.map((name, i) => () => levelNumber(name, levels, [...at, i]))) };
  }
  if (key !== "file") throw wrongForm(at, say.layerLevelsMap(), keyForm(key, fields));
  return { kind: "shapes", of: parts };
}

/** Lines of words, as one text with breaks or as a list. */
export function linesOf(text: string | readonly string[] | undefined): readonly string[] {
  return typeof text === "string" ? text.split(/\r?\n/) : (text ?? []);
}

function keyForm(key: SourceKey, { text }: Fields): string {
  return key === "text" ? say.layerLevelsOfLines({ lines: linesOf(text).length }) : say.layerOneOfLevels();
}

function wrongForm(at: FieldPath, given: string, allowed: string): ProblemError {
  return problem(at, { given, allowed, remedy: say.layerLevelsMatch() });
}

function namesOf(levels: readonly Level[]): string {
  return levels.map(({ name }) => name).join(", ");
}

function isList(parts: NonNullable<LayerMatter["levels"]>): parts is string[] {
  return Array.isArray(parts);
}

/** The level of a line of words, counted from 0. */
export function levelOfLine(choice: LevelChoice, line: number): number {
  if (choice.kind === "lines") return choice.levels[line]!;
  return choice.kind === "one" ? choice.level : 1;
}
