import { LengthError, parseLength } from "../../core/units/length.ts";

const BETWEEN = /\s*[x×*]\s*/i;

/**
 * Lengths with a cross between them, in mm: "198 x 126 x 21", "7 3/4 × 5 × 7/8 in". A unit at the end goes for all that have none.
 * @param count how many there must be
 * @returns undefined for anything else
 */
export function readMeasures(text: string, count: number): number[] | undefined {
  const parts = text.trim().split(BETWEEN);
  if (parts.length !== count) return undefined;
  const [unit = "mm"] = /[a-z"″”]+$/i.exec(parts.at(-1)!) ?? [];
  try {
    const lengths = parts.map((part) => parseLength(/[a-z"″”]$/i.test(part) ? part : `${part} ${unit}`));
    return lengths.every((length) => length > 0) ? lengths : undefined;
  } catch (error) {
    if (error instanceof LengthError) return undefined;
    throw error;
  }
}
