import { language } from "./language.ts";

/** What stands in a message for one of its arguments: text as it is, or a number, which is written as the language writes it. */
export type Word = string | number;

/** Values of a message's arguments by name. */
export type Arguments = Readonly<Record<string, Word>>;

/**
 * A piece of a message: its own text, an argument, or a choice by an argument: by the number itself, by the language's plural
 * category of a number (CLDR: one, few, other …), or by a word.
 */
export type MessagePart =
  | string
  | { readonly arg: string }
  | { readonly by: string; readonly of: Readonly<Record<string, MessageParts>>; readonly other: MessageParts };

/** A message as a translator wrote it, in pieces. */
export type MessageParts = readonly MessagePart[];

/** All messages of one language by their ids. */
export type Catalogue = Readonly<Record<string, MessageParts>>;

const numbers = new Map<string, Intl.NumberFormat>();
const plurals = new Map<string, Intl.PluralRules>();

/**
 * Fills a message. Numbers keep up to three decimals; groups of digits are parted from five digits on.
 * @throws Error where an argument has no value: a layout, which no compiler reads, hands over a misspelt name
 */
export function fill(pattern: MessageParts, args: Arguments): string {
  let text = "";
  for (const piece of pattern) {
    if (typeof piece === "string") text += piece;
    else if ("arg" in piece) text += written(given(args, piece.arg));
    else text += fill(chosen(given(args, piece.by), piece.of, piece.other), args);
  }
  return text;
}

function given(args: Arguments, name: string): Word {
  const value = args[name];
  if (value === undefined) throw new Error(`a message without its argument "${name}"`);
  return value;
}

/** An argument as it stands in a message. */
export function written(value: Word): string {
  return typeof value === "number" ? numberFormat().format(value) : value;
}

/** The choice for a value: by itself, or by the plural category of a number; otherwise the other one. */
export function chosen<T>(value: Word, of: Readonly<Record<string, T>>, other: T): T {
  // An author's word may be the name of something that every object has.
  if (Object.hasOwn(of, value)) return of[value]!;
  return typeof value === "string" ? other : (of[pluralRules().select(value)] ?? other);
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
