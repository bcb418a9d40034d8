import {
  type Entry,
  type Expression,
  FluentParser,
  type InlineExpression,
  type Pattern as Written,
} from "@fluent/syntax";
import type { Catalogue, MessagePart, MessageParts } from "../../words/message.ts";
import type { KitMessage } from "../files/message.ts";
import { WordsError } from "./words-error.ts";

/** A message of a words file with where it stands. */
export interface WordsEntry {
  readonly id: string;
  readonly pattern: MessageParts;
  /** What its translators are told. */
  readonly comment: string;
  readonly file: string;
  readonly line: number;
}

/** Arguments of a message, each with what it may be: `number` where a plural hangs on it. */
export type ArgumentKinds = ReadonlyMap<string, "number" | "word">;

const PLURALS: readonly string[] = ["zero", "one", "two", "few", "many", "other"];

/** Files that were read, by name and text: a run reads the same words several times, and many runs may share a process. */
const read = new Map<string, readonly WordsEntry[]>();

/** More files than a site has words in. */
const MOST_HELD = 500;

/**
 * Reads a file of words (Project Fluent, syntax 1.0): messages with arguments, terms, and choices by number, plural or word.
 * Attributes and functions are not used here. @throws WordsError with every place that cannot be read
 */
export function readFluent(file: string, text: string): readonly WordsEntry[] {
  const name = `${file}\n${text}`;
  const known = read.get(name);
  if (known) return known;
  const entries = parsed(file, text);
  if (read.size >= MOST_HELD) read.clear();
  read.set(name, entries);
  return entries;
}

/** What was read so far: plain data, so that it can be sent to a thread, which then need not read it again. */
export function readSoFar(): ReadonlyMap<string, readonly WordsEntry[]> {
  return read;
}

/** Takes over what another thread has read. */
export function takeRead(lent: ReadonlyMap<string, readonly WordsEntry[]>): void {
  for (const [name, entries] of lent) read.set(name, entries);
}

function parsed(file: string, text: string): readonly WordsEntry[] {
  const resource = new FluentParser().parse(text);
  const problems: KitMessage[] = [];
  const ends = [...text.matchAll(/\n/g)].map(({ index }) => index);
  const lineOf = ({ span }: Entry): number => 1 + ends.filter((end) => end < (span?.start ?? 0)).length;
  const terms = new Map<string, MessageParts>();
  const entries: WordsEntry[] = [];
  const tell = (entry: Entry, field: string, given: string, allowed: string): void => {
    problems.push({ file, line: lineOf(entry), column: undefined, field, given, allowed, remedy: "correct it here" });
  };
  for (const entry of resource.body) {
    if (entry.type === "Junk")
      tell(entry, "words", entry.annotations[0]?.message ?? "no message", "messages in Fluent syntax: id = Text");
    if (entry.type !== "Message" && entry.type !== "Term") continue;
    const name = entry.id.name;
    try {
      const pattern = patternOf(entry.value, terms);
      if (entry.type === "Term") terms.set(name, pattern);
      else entries.push({ id: name, pattern, comment: entry.comment?.content ?? "", file, line: lineOf(entry) });
    } catch (error) {
      if (!(error instanceof UnknownForm)) throw error;
      tell(entry, name, error.message, "text, { $argument }, { -term }, and choices by an argument");
    }
  }
  if (problems.length > 0) throw new WordsError(problems);
  return entries;
}

/** Messages by id. */
export function catalogueOf(entries: readonly WordsEntry[]): Catalogue {
  return Object.fromEntries(entries.map(({ id, pattern }) => [id, pattern]));
}

/** The arguments of a message in the order in which they first stand in it. */
export function argumentsOf(pattern: MessageParts): ArgumentKinds {
  const found = new Map<string, "number" | "word">();
  const look = (pieces: MessageParts): void => {
    for (const piece of pieces) {
      if (typeof piece === "string") continue;
      if ("arg" in piece) {
        if (!found.has(piece.arg)) found.set(piece.arg, "word");
        continue;
      }
      const keys = Object.keys(piece.of);
      const counts = keys.some((key) => PLURALS.includes(key) || /^\d+$/.test(key));
      if (counts || !found.has(piece.by)) found.set(piece.by, counts ? "number" : "word");
      for (const key of keys) look(piece.of[key]!);
      look(piece.other);
    }
  };
  look(pattern);
  return found;
}

/** A form of the syntax that is not used here. */
class UnknownForm extends Error {}

function patternOf(written: Written | null, terms: ReadonlyMap<string, MessageParts>): MessageParts {
  if (!written) throw new UnknownForm("a message without a text");
  const pieces = written.elements.flatMap((element) =>
    element.type === "TextElement" ? [element.value] : piecesOf(element.expression, terms),
  );
  return joined(pieces);
}

function piecesOf(
  expression: Expression | InlineExpression,
  terms: ReadonlyMap<string, MessageParts>,
): readonly MessagePart[] {
  switch (expression.type) {
    case "StringLiteral":
      return [expression.parse().value];
    case "NumberLiteral":
      return [expression.value];
    case "VariableReference":
      return [{ arg: expression.id.name }];
    case "TermReference": {
      const term = terms.get(expression.id.name);
      if (!term) throw new UnknownForm(`the term -${expression.id.name} before it is stated`);
      return term;
    }
    case "SelectExpression": {
      if (expression.selector.type !== "VariableReference") throw new UnknownForm("a choice by something else");
      const of: Record<string, MessageParts> = {};
      let other: MessageParts = [];
      for (const variant of expression.variants) {
        const pattern = patternOf(variant.value, terms);
        if (variant.default) other = pattern;
        of[variant.key.type === "Identifier" ? variant.key.name : variant.key.value] = pattern;
      }
      return [{ by: expression.selector.id.name, of, other }];
    }
    default:
      throw new UnknownForm(`a ${expression.type}`);
  }
}

/** Neighbouring texts as one. */
function joined(pieces: readonly MessagePart[]): MessageParts {
  const all: MessagePart[] = [];
  for (const piece of pieces) {
    const last = all.at(-1);
    if (typeof piece === "string" && typeof last === "string") all[all.length - 1] = last + piece;
    else all.push(piece);
  }
  return all;
}
