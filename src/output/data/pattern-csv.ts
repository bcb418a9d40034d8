import type { LeafNumber } from "../../core/book/leaf-number.ts";
import { creasesOf } from "../../core/corner/leaf-fold.ts";
import type { CornerPattern } from "../../core/pattern/corner-pattern.ts";
import type { Pattern, PatternLeafBase } from "../../core/pattern/pattern.ts";
import { tidy } from "../../core/units/length.ts";
import { leafToken } from "./leaf-token.ts";

/**
 * One row a leaf (RFC 4180: CRLF, quotes where needed), lengths in mm, marks from the head and cuts from the fore-edge.
 * `spans` lists from-to:level, `cuts` at:depth, `tacks` from-to, `notch` from-to:depth, each separated by spaces.
 */
export function patternCsv(pattern: Pattern): string {
  const header = [...LEAF_COLUMNS, "spans (mm)", "cuts (mm)", "tacks (mm)", "notch (mm)"];
  const rows = pattern.leaves.map((leaf) => [
    ...leafCells(leaf),
    leaf.spans.map((span) => `${tidy(span.from)}-${tidy(span.to)}:${span.level}`).join(" "),
    leaf.cuts.map((cut) => `${tidy(cut.at)}:${tidy(cut.depth)}`).join(" "),
    leaf.tacks.map((tack) => `${tidy(tack.from)}-${tidy(tack.to)}`).join(" "),
    notchOf(pattern, leaf.leaf),
  ]);
  return csvText([header, ...rows]);
}

/**
 * The same of a kit that is folded by corners: `spans` is the strip that is shown, `turn` which of how many (`2 of 3`), `creases`
 * lists corner:mark-end, the mark from the head and the end from the fore-edge, and `straight` is the depth of a whole leaf's fold.
 */
export function cornerCsv({ leaves }: CornerPattern): string {
  const header = [...LEAF_COLUMNS, "spans (mm)", "turn", "creases (mm)", "straight (mm)"];
  const rows = leaves.map((leaf) => {
    const { fold } = leaf;
    const shown = fold.kind === "corners" ? `${tidy(fold.shown.from)}-${tidy(fold.shown.to)}:1` : "";
    const turn = fold.kind === "corners" && fold.turn ? `${fold.turn.which} of ${fold.turn.of}` : "";
    const creases = creasesOf(fold).map(({ corner, from, to }) => `${corner}:${tidy(from.at)}-${tidy(to.depth)}`);
    const straight = fold.kind === "straight" ? String(tidy(fold.depth)) : "";
    return [...leafCells(leaf), shown, turn, creases.join(" "), straight];
  });
  return csvText([header, ...rows]);
}

const LEAF_COLUMNS = ["leaf", "pattern page", "book page", "leaf name"] as const;

function leafCells({ leaf, patternPage, bookPage, name }: PatternLeafBase): string[] {
  const figure = (page: number | null): string => (page === null ? "" : String(page));
  return [String(leaf), figure(patternPage), figure(bookPage), leafToken(name)];
}

function csvText(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(quote).join(",")}\r\n`).join("");
}

function quote(field: string): string {
  return /[",\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field;
}

function notchOf(pattern: Pattern, leaf: LeafNumber): string {
  const notch = pattern.pocket?.notches.find((one) => one.leaf === leaf);
  return notch ? `${tidy(notch.from)}-${tidy(notch.to)}:${tidy(notch.depth)}` : "";
}
