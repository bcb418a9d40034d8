import { readFileSync } from "node:fs";
import { join } from "node:path";

/** Where pages and packets take their own faces from; subsets each have a file, so that a page loads what it shows. */
const FONTS = join(import.meta.dirname, "../../../node_modules");

/** Letters of our own faces by subset; a browser asks the last first. */
const SUBSETS = ["cyrillic-ext", "cyrillic", "greek-ext", "greek", "vietnamese", "latin-ext", "latin"] as const;

/** What a face is used for: pages have variable ones, packets static cuts, as variable ones would be embedded as Type 3. */
export type Use = "site" | "print";

/** One file of our own faces. */
export interface Face {
  readonly family: Family;
  /** As the style sheet writes it. */
  readonly weight: string;
  readonly source: string;
  /** Its name among the site's fonts. */
  readonly file: string;
  /** Characters that it is asked for, as the style sheet writes them. */
  readonly range: string;
}

const FAMILIES = { "source-sans-3": "Source Sans 3", literata: "Literata" } as const;

type Slug = keyof typeof FAMILIES;
export type Family = (typeof FAMILIES)[Slug];

/** Weights of each family in packets. */
const PRINTED: Readonly<Record<Slug, readonly number[]>> = { "source-sans-3": [400, 600, 700], literata: [600] };
/** Weights that a variable file has. */
export const VARIABLE = "200 900";

export function facesFor(use: Use): Face[] {
  return (Object.keys(FAMILIES) as Slug[]).flatMap((slug) => {
    const folder = join(FONTS, use === "site" ? "@fontsource-variable" : "@fontsource", slug);
    const ranges = JSON.parse(readFileSync(join(folder, "unicode.json"), "utf8")) as Record<string, string>;
    const weights = use === "site" ? [VARIABLE] : PRINTED[slug].map(String);
    return weights.flatMap((weight) =>
      SUBSETS.map((subset): Face => {
        const cut = use === "site" ? "wght" : weight;
        const named = [slug, ...(subset === "latin" ? [] : [subset]), ...(use === "site" ? [] : [weight])];
        return {
          family: FAMILIES[slug],
          weight,
          source: join(folder, "files", `${slug}-${subset}-${cut}-normal.woff2`),
          file: `${named.join("-")}.woff2`,
          range: ranges[subset]!,
        };
      }),
    );
  });
}

/** Whether a face is asked for a character. */
export function isAsked({ range }: Face, codePoint: number): boolean {
  return range.split(",").some((part) => {
    const [from, to] = part
      .replace("U+", "")
      .split("-")
      .map((code) => Number.parseInt(code, 16));
    return codePoint >= from! && codePoint <= (to ?? from!);
  });
}
