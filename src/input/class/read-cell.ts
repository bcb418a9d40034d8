import { readPlates } from "../../core/book/plates.ts";
import type { Kit } from "../../core/kit/kit.ts";
import * as say from "../../words/messages.ts";

/** What is wrong with a cell: what stands there, and how it is written. */
export interface CellFault {
  readonly given: string;
  readonly allowed: string;
}

/** A cell of a books table as the front matter would state it: a bare number is a length in mm, another text is left for the schema. */
export function readCell(name: string, cell: string, kits: readonly Kit[]): { value: unknown } | CellFault {
  switch (name) {
    case "plates": {
      const value = readPlates(platesTyped(cell));
      return value ? { value } : { given: say.frontPlatesCell({ cell }), allowed: say.frontPlatesForm() };
    }
    case "depths":
      return { value: cell.split(/[;_]/).flatMap((one) => (one.trim() === "" ? [] : numberOr(one.trim()))) };
    case "kit":
      return { value: kitCalled(cell, kits) ?? cell };
    case "direction":
    case "foldStyle":
      return { value: cell.toLowerCase() };
    default:
      return { value: numberOr(cell) };
  }
}

function numberOr(cell: string): number | string {
  const typed = withPoint(cell);
  return /^-?\d+(\.\d+)?$/.test(typed) ? Number(typed) : typed;
}

/** `12,5` as `12.5`, as spreadsheets of many languages write it; after a comma that stands in a number only. */
function withPoint(cell: string): string {
  return cell.replace(/^(-?\d+),(\d+)(?![\d.,/])/, "$1.$2");
}

/** A spreadsheet takes `192:4` for a time: it saves it as `192:04:00`, or as a share of a day. */
function platesTyped(cell: string): string {
  if (!/^\d+\.\d{3,}$/.test(cell)) return cell.replace(/^(\d+:\d+):00$/, "$1");
  const minutes = Math.round(Number(cell) * 24 * 60);
  return `${Math.floor(minutes / 60)}:${minutes % 60}`;
}

/** A kit by its folder's name or its title, in any capitals. */
function kitCalled(cell: string, kits: readonly Kit[]): string | undefined {
  const called = cell.toLowerCase();
  return kits.find(({ slug, title }) => [slug, title.toLowerCase()].includes(called))?.slug;
}
