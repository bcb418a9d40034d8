import { readFileSync } from "node:fs";
import { join } from "node:path";
import { stringify } from "yaml";
import { fixtureFolder, fixtureFrontMatter } from "../input/kit/kit-folders.ts";
import type { Project } from "./project.ts";

/** Leaves higher than any true-scale sheet, stepped folds, many marks and folds on a leaf, plates and a torn leaf. */
export const TALL = {
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

/** Kits of their own with the books of two seats: what a seat's pages must be equal to. */
export const SINGLE = [
  {
    seat: 2,
    kit: "harbour-moon",
    slug: "single-moon",
    book: { leafHeight: 222, leafWidth: 148, blockThickness: 31, leaves: 248, pageOneLeaf: 5, lastPage: 486 },
    fit: {},
  },
  {
    seat: 3,
    kit: "little-gull",
    slug: "single-gull",
    book: { leafHeight: 132, leafWidth: 98, blockThickness: 14, leaves: 128, pageOneLeaf: 4, lastPage: 248 },
    fit: { height: 110 },
  },
];

/** Writes the kits that only tests have into a project of all fixtures. */
export function writeOwnKits(project: Project): void {
  writeTall(project);
  for (const { kit, slug, book, fit } of SINGLE) {
    const matter = fixtureFrontMatter(kit);
    const own = { ...matter, book, fit: { ...matter.fit, ...fit } };
    if (matter.fit.head + own.fit.height > book.leafHeight) own.fit.head = undefined;
    const picture = matter.picture.file;
    project.write(`content/kits/${slug}/index.md`, `---\n${stringify(own)}---\n`);
    project.write(`content/kits/${slug}/${picture}`, readFileSync(join(fixtureFolder(kit), picture), "utf8"));
  }
}

export function writeTall(project: Project): void {
  project.write(`content/kits/${TALL.slug}/index.md`, TALL_KIT);
  project.write(`content/kits/${TALL.slug}/bands.svg`, TALL_PICTURE);
}
