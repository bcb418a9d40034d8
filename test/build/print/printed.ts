import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { inject } from "vitest";
import { TALL } from "../../site/own-kits.ts";
import { type ReadPdf, readPdf } from "./read-pdf.ts";

/** What the tests take from a published pattern; mm. */
export interface Published {
  readonly kit: string;
  readonly title: string;
  readonly book: { readonly leafHeight: number; readonly leaves: number };
  readonly levels: readonly { readonly name: string; readonly depth: number }[];
  readonly fit: { readonly foldStyle: "single" | "stepped"; readonly markStep: number };
  readonly leaves: readonly PublishedLeaf[];
}

export interface PublishedLeaf {
  readonly leaf: number;
  readonly patternPage: number | null;
  readonly bookPage: number | null;
  readonly unnumbered?: {
    readonly kind: "front" | "plate" | "end";
    readonly index: number;
    readonly of: number;
    readonly afterPage?: number;
  };
  readonly spans: readonly { readonly from: number; readonly to: number; readonly level: number }[];
  readonly cuts: readonly { readonly at: number; readonly depth: number }[];
}

export type PaperName = "a4" | "letter";

/** One printed PDF with what it was printed from. */
export interface PrintedPdf extends ReadPdf {
  readonly name: string;
  readonly path: string;
  readonly kind: "packet" | "table-large" | "table-compact";
  readonly paper: PaperName;
  readonly units: "mm" | "in";
  /** The gauge's lines as the kit's front matter states them, mm. */
  readonly gauge: readonly number[];
  readonly pattern: Published;
}

export interface Printed {
  readonly pdfs: readonly PrintedPdf[];
  readonly packets: readonly PrintedPdf[];
}

interface PrintedKit {
  readonly slug: string;
  readonly units: "mm" | "in";
  readonly gauge: readonly number[];
}

/** Lengths of the fixture kits' gauges as their index.md states them; without lines, the levels' depths. */
const KITS: readonly PrintedKit[] = [
  { slug: "little-gull", units: "mm", gauge: [12, 24] },
  { slug: "tide-and-lamp", units: "in", gauge: [25.4 / 2, (25.4 * 3) / 4, 25.4, (25.4 * 11) / 8] },
  { slug: TALL.slug, units: "mm", gauge: TALL.gauge },
];

/** Reads every PDF of two fixture kits and one for tests. */
export async function readPrinted(): Promise<Printed> {
  const pdfs: PrintedPdf[] = [];
  for (const kit of KITS) {
    const { folder } = kit.slug === TALL.slug ? inject("ownKits") : inject("site");
    const dist = join(folder, "dist/kits", kit.slug);
    const pattern: Published = JSON.parse(readFileSync(join(dist, "pattern.json"), "utf8"));
    for (const kind of ["packet", "table-large", "table-compact"] as const) {
      for (const paper of ["a4", "letter"] as const) {
        const path = join(dist, `${kind}-${paper}.pdf`);
        pdfs.push({
          name: `${kit.slug}/${kind}-${paper}`,
          path,
          kind,
          paper,
          ...kit,
          pattern,
          ...(await readPdf(path)),
        });
      }
    }
  }
  return { pdfs, packets: pdfs.filter(({ kind }) => kind === "packet") };
}

/** Every PDF of a project's built site with its bytes. */
export function bytesOf(project: string): Map<string, Buffer> {
  const folder = join(project, "dist");
  const paths = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((path) => path.endsWith(".pdf"));
  return new Map(paths.sort().map((path) => [path, readFileSync(join(folder, path))]));
}
