import { language } from "./language.ts";

/** What stands in a message for one of its arguments: text as it is, or a number, which is written as the language writes it. */
export type Word = string | number;

/** Values of a message's arguments by name. */
export type Arguments = Readonly<Record<string, Word>>;

/**
 * A piece of a message: its own text, an argument, or a choice by an argument: by the number itself, by the language's plural
 * category of a number (CLDR: one, few, other …), or by a word.
 */
export type Piece =
  | string
  | { readonly arg: string }
  | { readonly by: string; readonly of: Readonly<Record<string, Pattern>>; readonly other: Pattern };

/** A message as a translator wrote it, in pieces. */
export type Pattern = readonly Piece[];

/** All messages of one language by their ids. */
export type Catalogue = Readonly<Record<string, Pattern>>;

const numbers = new Map<string, Intl.NumberFormat>();
const plurals = new Map<string, Intl.PluralRules>();

/** Fills a message. Numbers keep up to three decimals; groups of digits are parted from five digits on. */
export function fill(pattern: Pattern, args: Arguments): string {
  let text = "";
  for (const piece of pattern) {
    if (typeof piece === "string") text += piece;
    else if ("arg" in piece) text += written(args[piece.arg]!);
    else text += fill(chosen(piece, args[piece.by]!), args);
  }
  return text;
}

/** A message of a fixed pattern as a function: what the pages' scripts carry instead of the whole catalogue. */
export function message(pattern: Pattern): (args?: Arguments) => string {
  return (args = {}) => fill(pattern, args);
}

function written(value: Word): string {
  return typeof value === "number" ? numberFormat().format(value) : value;
}

function chosen(piece: Exclude<Piece, string | { readonly arg: string }>, value: Word): Pattern {
  // An author's word may be the name of something that every object has.
  const exact = Object.hasOwn(piece.of, String(value)) ? piece.of[String(value)] : undefined;
  if (exact || typeof value === "string") return exact ?? piece.other;
  return piece.of[pluralRules().select(value)] ?? piece.other;
}

function numberFormat(): Intl.NumberFormat {
  return once(numbers, () => new Intl.NumberFormat(language(), { useGrouping: "min2" as unknown as boolean }));
}

function pluralRules(): Intl.PluralRules {
  return once(plurals, () => new Intl.PluralRules(language()));
}

function once<T>(known: Map<string, T>, make: () => T): T {
  const found = known.get(language()) ?? make();
  known.set(language(), found);
  return found;
}
