import { readFileSync } from "node:fs";
import { join } from "node:path";
import { openTypeface, type Typeface } from "./typeface.ts";

/** Where the project's own fonts stand: each in subsets, a file for each of its weights. */
const FONTS = join(import.meta.dirname, "../../../node_modules/@fontsource");

/** Letters of our own fonts by subset, in the order in which a letter is looked for. */
const SUBSETS = ["latin", "latin-ext", "vietnamese", "greek", "greek-ext", "cyrillic", "cyrillic-ext"] as const;

/** The families that come with the project: as a front matter calls them, and by their names. */
const FAMILIES: Readonly<Record<string, string>> = { literata: "Literata", "source-sans-3": "Source Sans 3" };

export const PROJECT_FAMILIES = Object.keys(FAMILIES);

const WEIGHTS = { least: 200, most: 900, step: 100 } as const;

/** The key of a family of the project by its name, however its letters are written; undefined for another one. */
export function projectFamily(name: string): string | undefined {
  const folded = name.trim().toLowerCase();
  return PROJECT_FAMILIES.find((key) => key === folded || FAMILIES[key]!.toLowerCase() === folded);
}

const opened = new Map<string, Typeface>();

/** The subsets of a family in the weight nearest to the one wished, each opened when it is first asked. */
export function projectFonts(family: string, weight: number, italic = false): Iterable<Typeface> {
  const near = Math.min(WEIGHTS.most, Math.max(WEIGHTS.least, Math.round(weight / WEIGHTS.step) * WEIGHTS.step));
  const style = italic ? "italic" : "normal";
  return {
    *[Symbol.iterator]() {
      for (const subset of SUBSETS)
        yield subsetFont(join(family, "files", `${family}-${subset}-${near}-${style}.woff`));
    },
  };
}

function subsetFont(file: string): Typeface {
  const known = opened.get(file);
  if (known) return known;
  const font = openTypeface(readFileSync(join(FONTS, file)), 0)!;
  opened.set(file, font);
  return font;
}
