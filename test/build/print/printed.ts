import { readdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { makeProject, type Project } from "../site/project.ts";
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
  readonly kind: "packet" | "table-large";
  readonly paper: PaperName;
  readonly units: "mm" | "in";
  /** The gauge's lines as the kit's front matter states them, mm. */
  readonly gauge: readonly number[];
  readonly pattern: Published;
}

export interface Printed {
  readonly project: Project;
  readonly pdfs: readonly PrintedPdf[];
  readonly packets: readonly PrintedPdf[];
}

/** Leaves higher than any true-scale sheet, stepped folds, many marks and folds on a leaf, plates and a torn leaf. */
const TALL = {
  slug: "tall",
  title: 'Tall "Test" & \\ <Kit>',
  gauge: [8, 14.5, 16, 40],
} as const;

const TALL_PICTURE = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 150">
<g id="near">${Array.from({ length: 6 }, (_, i) => `<path d="M0 ${i * 25}h100v10h-100z"/>`).join("")}</g>
<path id="middle" d="M30 0h40v150h-40z"/>
</svg>
`;

const TALL_KIT = `---
title: ${JSON.stringify(TALL.title)}
summary: "A test of the printed output: bands & bars, 'high' leaves."
units: mm
picture:
  file: bands.svg
  levels: { near: ["#near"], middle: ["#middle"] }
levels:
  - { name: near, line: 1 }
  - { name: middle, line: 2 }
  - { name: far, depth: 40, background: true }
gauge: { lines: [${TALL.gauge.join(", ")}] }
book:
  leafHeight: 300
  leafWidth: 200
  blockThickness: 12
  leaves: 90
  pageOneLeaf: 3
  lastPage: 160
  plates: [{ afterPage: 40, leaves: 3 }]
fit:
  borderLeaves: [5, 5]
  head: 110
  height: 150
  opening: solve
  markStep: 0.5
  foldStyle: stepped
  lostLeaves: [33]
---
A kit for tests.
`;

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

/** Builds a project with two fixture kits and one for tests, and reads every PDF of it. */
export async function printKits(): Promise<Printed> {
  const project = makeProject({ kits: ["little-gull", "tide-and-lamp"] });
  project.write(`content/kits/${TALL.slug}/index.md`, TALL_KIT);
  project.write(`content/kits/${TALL.slug}/bands.svg`, TALL_PICTURE);
  const run = project.build();
  if (run.code !== 0) {
    project.remove();
    throw new Error(`the build failed:\n${run.stdout}\n${run.stderr}`);
  }
  const pdfs: PrintedPdf[] = [];
  for (const kit of KITS) {
    const pattern: Published = JSON.parse(project.read(`dist/kits/${kit.slug}/pattern.json`));
    for (const kind of ["packet", "table-large"] as const) {
      for (const paper of ["a4", "letter"] as const) {
        const path = join(project.folder, `dist/kits/${kit.slug}/${kind}-${paper}.pdf`);
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
  return { project, pdfs, packets: pdfs.filter(({ kind }) => kind === "packet") };
}

/** Every PDF of the built site with its bytes. */
export function bytesOf(project: Project): Map<string, Buffer> {
  const folder = join(project.folder, "dist");
  const paths = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((path) => path.endsWith(".pdf"));
  return new Map(paths.sort().map((path) => [path, readFileSync(join(folder, path))]));
}

export function forgetPackets(project: Project): void {
  rmSync(join(project.folder, ".cache/packets"), { recursive: true });
}
