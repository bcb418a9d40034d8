import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { stringify } from "yaml";
import { displayedWidth } from "./fan.ts";
import type { BookInput, FitInput, KitInput } from "./kit-input.ts";
import { between, type Random, SHAPES, seeded } from "./random-shapes.ts";

export interface RandomKit {
  slug: string;
  frontMatter: KitInput & { title: string; summary: string };
  svg: string;
}

/** What is varied on purpose; the seed fills in the rest. `shapes` are painted in order, by level counted from 1. */
interface Plan {
  slug: string;
  levels: number;
  background: number;
  shapes: [shape: keyof typeof SHAPES, level: number][];
  solve: "opening" | "height" | "pictureLeaves";
  leaves: "fill" | number;
  depth: "depth" | "line";
  book: Partial<BookInput>;
  fit: Partial<FitInput>;
}

const rtl = { direction: "rtl" } as const;
const plates = (...list: [number, number][]) => ({
  plates: list.map(([afterPage, leaves]) => ({ afterPage, leaves })),
});

// biome-ignore format: a table reads best with one kit a line pair
const PLANS: Plan[] = [
  { slug: "ring-flat", levels: 2, background: 2, shapes: [["ring", 1]], solve: "opening", leaves: "fill", depth: "depth",
    book: {}, fit: { borderLeaves: [10, 10], foldStyle: "single" } },
  { slug: "flower-rtl", levels: 3, background: 2, shapes: [["flower", 1], ["bubble", 3]], solve: "opening", leaves: "fill", depth: "line",
    book: { ...rtl, ...plates([120, 3]) }, fit: { borderLeaves: [14, 9], markStep: 1, spine: "rounded" } },
  { slug: "star-wide", levels: 2, background: 1, shapes: [["star", 2]], solve: "height", leaves: "fill", depth: "depth",
    book: {}, fit: { borderLeaves: [8, 20], opening: 128, markStep: 1.5875 } },
  { slug: "wave-along", levels: 3, background: 3, shapes: [["wave", 2], ["crescent", 1]], solve: "height", leaves: 120, depth: "line",
    book: {}, fit: { borderLeaves: [12, 12], opening: 95, view: "along", foldStyle: "single" } },
  { slug: "gear-count", levels: 4, background: 2, shapes: [["gear", 1], ["ring", 3], ["star", 4]], solve: "pictureLeaves", leaves: 131, depth: "depth",
    book: plates([64, 2], [193, 4]), fit: { borderLeaves: [11, 16], opening: 74 } },
  { slug: "pebble-rounded", levels: 5, background: 3, shapes: [["pebble", 1], ["flower", 4], ["gear", 5], ["bubble", 2]], solve: "opening", leaves: 150, depth: "line",
    book: {}, fit: { borderLeaves: [20, 6], spine: "rounded", leastTab: 4 } },
  { slug: "crescent-along-rtl", levels: 3, background: 1, shapes: [["crescent", 3], ["pebble", 2]], solve: "opening", leaves: "fill", depth: "depth",
    book: rtl, fit: { borderLeaves: [5, 25], view: "along", markStep: 1, foldStyle: "single" } },
  { slug: "star-flower", levels: 4, background: 4, shapes: [["wave", 3], ["flower", 2], ["star", 1]], solve: "height", leaves: 140, depth: "depth",
    book: { ...rtl, ...plates([1, 1]) }, fit: { borderLeaves: [9, 9], opening: 60, spine: "rounded", markStep: 1.5875, leastTab: 5 } },
  { slug: "bubble-count", levels: 2, background: 1, shapes: [["bubble", 2], ["ring", 2]], solve: "pictureLeaves", leaves: 98, depth: "line",
    book: rtl, fit: { borderLeaves: [30, 12], opening: 100, markStep: 1, leastTab: 2 } },
  { slug: "covered-background", levels: 3, background: 2, shapes: [["gear", 1], ["ring", 2], ["crescent", 3], ["star", 2]], solve: "opening", leaves: "fill", depth: "depth",
    book: plates([200, 2]), fit: { borderLeaves: [0, 15], foldStyle: "single" } },
  { slug: "count-along", levels: 3, background: 2, shapes: [["pebble", 3], ["flower", 1]], solve: "pictureLeaves", leaves: 110, depth: "line",
    book: {}, fit: { borderLeaves: [13, 13], opening: 140, view: "along", spine: "rounded" } },
  { slug: "five-levels", levels: 5, background: 5, shapes: [["ring", 4], ["gear", 3], ["bubble", 2], ["star", 1]], solve: "opening", leaves: 133, depth: "depth",
    book: { ...rtl, ...plates([88, 5]) }, fit: { borderLeaves: [40, 7], markStep: 1.5875, foldStyle: "single" } },
];

const NAMES = ["rim", "ledge", "wall", "shelf", "well"];

/** Twelve kits that fit their books, the same for the same seed. */
export function randomKits(seed = 1): RandomKit[] {
  return PLANS.map((plan, i) => makeKit(plan, seeded(seed * 1000 + i)));
}

/** Writes `dir/<slug>/index.md` and the picture beside it. */
export async function writeKit(dir: string, kit: RandomKit): Promise<void> {
  const folder = join(dir, kit.slug);
  await mkdir(folder, { recursive: true });
  await writeFile(join(folder, "index.md"), `---\n${stringify(kit.frontMatter)}---\nA kit for tests.\n`);
  await writeFile(join(folder, kit.frontMatter.picture.file!), kit.svg);
}

function makeKit(plan: Plan, random: Random): RandomKit {
  const names = NAMES.slice(0, plan.levels);
  const book = makeBook(plan, random);
  const gauge = { lines: depthsFor(book, random, 7) };
  const depths = depthsFor(book, random, plan.levels);
  const levels = names.map((name, i) => {
    const where = plan.depth === "line" ? { line: i + 2 } : { depth: depths[i]! };
    return { name, ...where, ...(plan.background === i + 1 ? { background: true } : {}) };
  });
  const width = widthOf(plan, book, plan.depth === "line" ? gauge.lines[1]! : depths[0]!, random);
  const picture = makePicture(plan, names, width / (book.leafHeight - 45), random);
  const frontMatter = {
    title: plan.slug,
    summary: `A random kit: ${plan.shapes.map(([shape]) => shape).join(", ")}.`,
    picture: { file: "picture.svg", levels: picture.levels, crop: "canvas" },
    levels,
    ...(plan.depth === "line" ? { gauge } : {}),
    book,
    fit: makeFit(plan, book, width / picture.aspect, random),
  };
  return { slug: plan.slug, frontMatter, svg: picture.svg };
}

function makeBook(plan: Plan, random: Random): BookInput {
  const leaves = 190 + Math.floor(random() * 60);
  const pageOneLeaf = 1 + Math.floor(random() * 8);
  const plateLeaves = (plan.book.plates ?? []).reduce((sum, p) => sum + p.leaves, 0);
  const unnumbered = Math.floor(random() * 4);
  return {
    leafHeight: between(random, 205, 245, 1),
    leafWidth: between(random, 128, 152, 1),
    blockThickness: between(random, 0.09 * leaves, 0.13 * leaves, 1),
    leaves,
    pageOneLeaf,
    lastPage: 2 * (leaves - pageOneLeaf + 1 - plateLeaves - unnumbered) - Math.floor(random() * 2),
    ...plan.book,
  };
}

/** Growing depths that all leave room for the flap: 2·d + 5 is at most the leaf's width. */
function depthsFor(book: BookInput, random: Random, count: number): number[] {
  const most = Math.floor((book.leafWidth - 5) / 2) - 1;
  const first = between(random, 8, 16, 0);
  const step = Math.min(9, (most - first) / (count - 1));
  return Array.from({ length: count }, (_, i) => first + Math.floor(i * step));
}

/** Displayed width at the planned opening, or at a random one where the opening is to be solved. */
function widthOf(plan: Plan, book: BookInput, front: number, random: Random): number {
  const [before, after] = plan.fit.borderLeaves!;
  const n = plan.leaves === "fill" ? book.leaves - before - after : plan.leaves;
  const degrees = typeof plan.fit.opening === "number" ? plan.fit.opening : between(random, 50, 110, 1);
  const spine = plan.fit.spine ?? "flat";
  const fan = { ...book, opening: (degrees * Math.PI) / 180, spine, direction: "ltr" as const };
  return displayedWidth(fan, before + 1, before + n, front, plan.fit.view ?? "front");
}

/** The quantities that are given, such that the last one can be solved. */
function makeFit(plan: Plan, book: BookInput, height: number, random: Random): FitInput {
  const room = book.leafHeight - height;
  return {
    borderLeaves: plan.fit.borderLeaves!,
    pictureLeaves: plan.solve === "pictureLeaves" ? "solve" : plan.leaves,
    head: between(random, 0.3 * room, 0.6 * room, 1),
    height: plan.solve === "height" ? "solve" : Number(height.toFixed(2)),
    opening: plan.fit.opening ?? "solve",
    view: plan.fit.view ?? "front",
    spine: plan.fit.spine ?? "flat",
    markStep: plan.fit.markStep ?? 0.5,
    leastTab: plan.fit.leastTab ?? 3,
    foldStyle: plan.fit.foldStyle ?? "stepped",
  };
}

/** Shapes about the middle of a box with any origin, each smaller than the one it is painted on. */
function makePicture(plan: Plan, names: string[], leastAspect: number, random: Random) {
  const width = between(random, 80, 300, 1);
  const aspect = Math.max(leastAspect, between(random, 0.95, 1.25));
  const height = Number((width / aspect).toFixed(2));
  const [x, y] = [between(random, -1.2 * width, 0.3 * width), between(random, -height, 0.4 * height)];
  const levels: Record<string, string[]> = {};
  const parts = plan.shapes.map(([shape, level], i) => {
    const id = `s${i + 1}`;
    const name = names[level - 1]!;
    levels[name] = [...(levels[name] ?? []), `#${id}`];
    const r = Math.min(width, height) * (0.47 - 0.07 * i);
    const drift = () => 0.04 * (i + 1) * width * (random() - 0.5);
    const place = { id, cx: x + width / 2 + drift(), cy: y + height / 2 + drift(), r };
    return SHAPES[shape]!(random, { ...place, cx: Number(place.cx.toFixed(2)), cy: Number(place.cy.toFixed(2)) });
  });
  const box = `${x} ${y} ${width} ${height}`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box}">\n${parts.join("\n")}\n</svg>\n`;
  return { svg, levels, aspect: width / height };
}
