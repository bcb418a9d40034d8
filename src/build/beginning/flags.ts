import { parseArgs } from "node:util";
import {
  type Answers,
  type BookAnswer,
  type LightAnswer,
  OUTLINES,
  type PictureAnswer,
} from "../../core/beginning/answers.ts";
import { BOUNDS } from "../../core/kit/bounds.ts";
import { nearestName } from "../../input/files/nearest-name.ts";
import { shortValue } from "../../input/files/short.ts";
import { rowText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import { readMeasures } from "./measures.ts";

const OPTIONS = {
  title: { type: "string" },
  picture: { type: "string" },
  word: { type: "string" },
  font: { type: "string" },
  outline: { type: "string" },
  icon: { type: "string" },
  book: { type: "string" },
  leaves: { type: "string" },
  light: { type: "string" },
  units: { type: "string" },
  draft: { type: "boolean" },
} as const;

/** What was said of a new kit already; the rest is asked for, or has a usual answer. */
export type Said = { readonly [Key in keyof Answers]?: Answers[Key] | undefined };

/** Reads the words behind `npm run new --`. @throws BuildError for one that cannot be used, with what is allowed */
export function readFlags(words: readonly string[]): Said {
  const { positionals, tokens, values } = parseArgs({
    args: [...words],
    options: OPTIONS,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  for (const token of tokens) if (token.kind === "option") checkOption(token.name, token.rawName, token.value);
  if (positionals.length > 1) throw new BuildError(say.newOneFolder({ folders: rowText(positionals.map(shortValue)) }));
  const given = values as Partial<Record<keyof typeof OPTIONS, string>>;
  return {
    slug: positionals[0],
    title: given.title,
    picture: pictureOf(given),
    book: given.book === undefined ? undefined : bookOf(given.book, given.leaves),
    light: given.light === undefined ? undefined : lightOf(given.light),
    units: given.units === undefined ? undefined : unitsOf(given.units),
    draft: values.draft === true,
  };
}

/** All options in a row, as they are written. */
export function optionNames(): string {
  return rowText(Object.keys(OPTIONS).map((name) => `--${name}`));
}

function checkOption(name: string, given: string, value: string | undefined): void {
  const names = Object.keys(OPTIONS);
  if (!Object.hasOwn(OPTIONS, name)) {
    const meant = nearestName(name, names);
    throw new BuildError(
      meant === undefined
        ? say.newOption({ option: given, known: optionNames() })
        : say.newOptionMeant({ option: given, meant: `--${meant}` }),
    );
  }
  const takes = OPTIONS[name as keyof typeof OPTIONS].type === "string";
  if (takes && !value) throw new BuildError(say.newOptionEmpty({ option: given }));
  if (!takes && value !== undefined) throw new BuildError(say.newOptionAlone({ option: given }));
}

/** @throws BuildError where more than one is given */
function pictureOf(
  given: {
    readonly [Key in PictureFlag | "font"]?: string;
  },
): PictureAnswer | undefined {
  const said = PICTURE_FLAGS.filter((name) => given[name] !== undefined);
  if (said.length > 1) throw new BuildError(say.newOnePicture({ options: rowText(said.map((name) => `--${name}`)) }));
  const [name] = said;
  if (given.font !== undefined && name !== "word") throw new BuildError(say.newFontAlone());
  if (name === undefined) return undefined;
  const value = given[name]!;
  if (name === "picture") return { from: "file", path: value };
  if (name === "word") return { from: "word", text: value, ...(given.font === undefined ? {} : { font: given.font }) };
  if (name === "icon") return { from: "icon", name: value };
  const outline = OUTLINES.find((one) => one === value);
  if (outline === undefined)
    throw new BuildError(say.newOutline({ given: shortValue(value), outlines: rowText([...OUTLINES]) }));
  return { from: "outline", name: outline };
}

const PICTURE_FLAGS = ["picture", "word", "outline", "icon"] as const;

type PictureFlag = (typeof PICTURE_FLAGS)[number];

/** @throws BuildError */
export function bookOf(measures: string, leaves: string | undefined): BookAnswer {
  const lengths = readMeasures(measures, 3);
  const bounds = [BOUNDS.leafHeight, BOUNDS.leafWidth, BOUNDS.blockThickness];
  const fit = lengths?.every((length, i) => length >= bounds[i]!.least && length <= bounds[i]!.most);
  if (!lengths || !fit) throw new BuildError(say.newBook({ given: shortValue(measures) }));
  const { least, most } = BOUNDS.leaves;
  if (leaves === undefined) throw new BuildError(say.newNoLeaves());
  const count = Number(leaves);
  if (!Number.isInteger(count) || count < least || count > most)
    throw new BuildError(say.newLeaves({ given: shortValue(leaves), least, most }));
  const [leafHeight, leafWidth, blockThickness] = lengths as [number, number, number];
  return { leafHeight, leafWidth, blockThickness, leaves: count };
}

/** @throws BuildError */
export function lightOf(measures: string): LightAnswer {
  const [diameter, height] = readMeasures(measures, 2) ?? [];
  const { lightDiameter, lightHeight } = BOUNDS;
  const isIn = (length: number, { least, most }: typeof lightDiameter): boolean => length >= least && length <= most;
  if (diameter === undefined || height === undefined || !isIn(diameter, lightDiameter) || !isIn(height, lightHeight))
    throw new BuildError(say.newLight({ given: shortValue(measures) }));
  return { diameter, height };
}

function unitsOf(given: string): "mm" | "in" {
  if (given === "mm" || given === "in") return given;
  throw new BuildError(say.newUnits({ given: shortValue(given) }));
}
