import { tidy } from "../../core/units/length.ts";
import * as say from "../../words/messages.ts";
import type { FieldPath, Problem } from "../files/problem.ts";
import type { StatedMotif } from "./schema-motif.ts";

/** Lengths in mm inside a motif that is not sized in mm, so that nobody knows how large they are on it. */
export function strayLengths(stated: StatedMotif, at: FieldPath): Problem[] {
  if (isSizedInMm(stated)) return [];
  const { at: _, width, height, ...inside } = stated;
  return lengthsIn(inside, at).map(({ field, mm }) => ({
    at: field,
    given: say.motifStrayLength({ length: tidy(mm, 2) }),
    allowed: say.motifShares(),
    remedy: say.motifWriteShare(),
  }));
}

function isSizedInMm({ width, height }: StatedMotif): boolean {
  const sides = [width, height].filter((side) => side !== undefined);
  return sides.length > 0 && sides.every((side) => "mm" in side);
}

/** Every length in mm below a field; one of 0 is the same everywhere. */
function lengthsIn(value: unknown, field: FieldPath): { readonly field: FieldPath; readonly mm: number }[] {
  if (Array.isArray(value)) return value.flatMap((one, i) => lengthsIn(one, [...field, i]));
  if (typeof value !== "object" || value === null) return [];
  if ("mm" in value && typeof value.mm === "number") return value.mm === 0 ? [] : [{ field, mm: value.mm }];
  return Object.entries(value).flatMap(([key, one]) => lengthsIn(one, [...field, key]));
}
