import type { LeafNumber } from "../../core/book/leaf-number.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import { tidy } from "../../core/units/length.ts";
import { leafToken } from "./leaf-token.ts";

/**
 * One row a leaf (RFC 4180: CRLF, quotes where needed), lengths in mm, marks from the head and cuts from the fore-edge.
 * `spans` lists from-to:level, `cuts` at:depth, `tacks` from-to, `notch` from-to:depth, each separated by spaces.
 */
export function patternCsv(pattern: Pattern): string {
  const header = [
    "leaf",
    "pattern page",
    "book page",
    "leaf name",
    "spans (mm)",
    "cuts (mm)",
    "tacks (mm)",
    "notch (mm)",
  ];
  const rows = pattern.leaves.map((leaf) => [
    String(leaf.leaf),
    leaf.patternPage === null ? "" : String(leaf.patternPage),
    leaf.bookPage === null ? "" : String(leaf.bookPage),
    leafToken(leaf.name),
    leaf.spans.map((span) => `${tidy(span.from)}-${tidy(span.to)}:${span.level}`).join(" "),
    leaf.cuts.map((cut) => `${tidy(cut.at)}:${tidy(cut.depth)}`).join(" "),
    leaf.tacks.map((tack) => `${tidy(tack.from)}-${tidy(tack.to)}`).join(" "),
    notchOf(pattern, leaf.leaf),
  ]);
  return [header, ...rows].map((row) => `${row.map(quote).join(",")}\r\n`).join("");
}

function quote(field: string): string {
  return /[",\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field;
}

function notchOf(pattern: Pattern, leaf: LeafNumber): string {
  const notch = pattern.pocket?.notches.find((one) => one.leaf === leaf);
  return notch ? `${tidy(notch.from)}-${tidy(notch.to)}:${tidy(notch.depth)}` : "";
}
