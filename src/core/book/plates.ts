import type { Plate } from "./book.ts";

/** How plates are written: between a page and its leaves, and between one entry and the next. */
const FORMS = {
  /** `192 × 4, 300 × 2` */
  plain: { sign: " × ", apart: ", " },
  /** `192x4.300x2` */
  address: { sign: "x", apart: "." },
} as const;

/** Writes plates: the page that they follow, and how many leaves. Empty where there are none. */
export function writePlates(plates: readonly Plate[], form: keyof typeof FORMS): string {
  const { sign, apart } = FORMS[form];
  return plates.map(({ afterPage, leaves }) => `${afterPage}${sign}${leaves}`).join(apart);
}

/** Reads plates in each way that panel, measuring card, books table and address write them: `192 × 4, 300 × 2`, `192:4; 300:2`, `192x4.300x2`. */
export function readPlates(text: string): Plate[] | undefined {
  const entries = text.split(/[,;.]/).filter((entry) => entry.trim() !== "");
  const plates = entries.map((entry) => /^\s*(\d+)\s*[:×x*]\s*(\d+)\s*$/i.exec(entry));
  return plates.every((match) => match !== null)
    ? plates.map((match) => ({ afterPage: Number(match![1]), leaves: Number(match![2]) }))
    : undefined;
}
