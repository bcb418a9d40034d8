import { ASKED, type Asked } from "../core/finder/book-figures.ts";
import type { Verdicts } from "../core/finder/kit-list.ts";
import type { Refit } from "../core/refit/refit.ts";

const NAMES: Readonly<Record<Asked, string>> = {
  leafHeight: "leaf height",
  leafWidth: "leaf width",
  blockThickness: "thickness",
  leaves: "leaves",
};

/** What the finder announces: `3 of 4 kits. 1 fits your book as it is, 2 fit with a change.` */
export function summary(shown: readonly { readonly slug: string }[], all: number, verdicts: Verdicts): string {
  const kits = shown.length === all ? `${all} ${all === 1 ? "kit" : "kits"}` : `${shown.length} of ${all} kits`;
  const count = (kind: string): number => shown.filter((kit) => verdicts.get(kit.slug)?.kind === kind).length;
  const parts = [
    part(count("own"), "fits your book as it is", "fit your book as they are"),
    part(count("change"), "fits with a change", "fit with a change"),
    part(count("no"), "does not fit", "do not fit"),
    part(count("unknown"), "could not be checked", "could not be checked"),
  ].filter((words) => words !== "");
  return parts.length > 0 ? `${kits}: ${parts.join(", ")}.` : `${kits}.`;
}

/** Which figures of the book are still missing, so that each kit's own stand in; empty where none or all are. */
export function missingFigures(book: Refit): string {
  const missing = ASKED.filter((key) => book[key] === undefined);
  if (missing.length === 0 || Object.keys(book).length === 0) return "";
  return `For ${list(missing.map((key) => NAMES[key]))}, each kit’s own book stands in until you state yours.`;
}

function part(count: number, one: string, more: string): string {
  return count === 0 ? "" : `${count} ${count === 1 ? one : more}`;
}

function list(words: readonly string[]): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}
