import type { Run } from "./kit-input.ts";
import type { Expected, ExpectedLeaf } from "./oracle.ts";

/** What is read of a published pattern. */
export interface Published {
  levels: { name: string; depth: number; background?: boolean }[];
  fit: { firstLeaf: number; lastLeaf: number; opening: number; height: number; width: number; tipWidth: number };
  leaves: PublishedLeaf[];
  absorbed: { leaf: number; from: number; to: number; level: number; into: number }[];
  light?: { notches: { leaf: number; from: number; to: number; depth: number }[] };
}

export interface PublishedLeaf {
  leaf: number;
  patternPage: number | null;
  bookPage: number | null;
  x: number[];
  spans: Run[];
  cuts: { at: number; depth: number }[];
  tacks: { from: number; to: number }[];
}

export interface CompareOptions {
  /** Radians. */
  openingTolerance?: number;
  /** For height, width and tipWidth. */
  widthTolerance?: number;
  xTolerance?: number;
  /** Added to half a mark step around each expected boundary. */
  boundaryTolerance?: number;
  /** Half of the last published decimal, for marks and depths. */
  printTolerance?: number;
  sampleStep?: number;
}

const DEFAULTS: Required<CompareOptions> = {
  openingTolerance: 1e-4,
  widthTolerance: 0.02,
  xTolerance: 0.01,
  boundaryTolerance: 0.06,
  printTolerance: 0.006,
  sampleStep: 0.1,
};

/** Differences between a published pattern and the oracle's, one line each; empty when they agree. */
export function compareWithOracle(published: Published, expected: Expected, options: CompareOptions = {}): string[] {
  const o = { ...DEFAULTS, ...options };
  const found = compareFit(published, expected, o);
  const numbers = published.leaves.map((l) => l.leaf).join();
  if (numbers !== expected.leaves.map((l) => l.leaf).join()) found.push(`leaves are ${numbers}`);
  for (const want of expected.leaves) {
    const leaf = published.leaves.find((l) => l.leaf === want.leaf);
    if (!leaf) {
      found.push(`leaf ${want.leaf}: missing`);
      continue;
    }
    const notes = [
      ...compareNumbers(leaf, want, o),
      ...compareLevels(leaf, want, expected, o),
      ...checkSpans(leaf, expected, o),
      ...checkCuts(leaf, expected, o),
      ...checkTacks(leaf, published, expected),
      ...checkReported(leaf, want, published, expected),
    ];
    found.push(...notes.map((note) => `leaf ${want.leaf}: ${note}`));
  }
  for (const a of published.absorbed) {
    if (!(a.to - a.from < expected.leastTab + expected.markStep)) {
      found.push(`absorbed on leaf ${a.leaf}: ${a.from} to ${a.to} is no short span`);
    }
  }
  return found;
}

/** Where flaps of a leaf come loose, from the spans of that leaf and of the next one in the book. */
export function tackIntervals(leaves: PublishedLeaf[], leaf: number, depths: number[], bookLeaves: number) {
  const spansOf = (n: number) => leaves.find((l) => l.leaf === n)?.spans ?? [];
  const own = spansOf(leaf);
  const next = spansOf(leaf + 1);
  const heights = [...new Set([...own, ...next].flatMap((s) => [s.from, s.to]))].sort((a, b) => a - b);
  return heights.slice(1).map((to, i) => {
    const from = heights[i]!;
    const depth = depthAt(own, (from + to) / 2, depths);
    const free = leaf === bookLeaves ? depth : depthAt(next, (from + to) / 2, depths) - depth;
    return { from, to, tacked: free > depth / 2 + 1e-9 };
  });
}

/** Depth of a leaf at a height; an unfolded leaf is cut back nowhere. */
function depthAt(spans: Run[], u: number, depths: number[]): number {
  const span = spans.find((s) => s.from <= u && u < s.to);
  return span ? depths[span.level - 1]! : 0;
}

function compareFit({ fit, levels }: Published, expected: Expected, o: Required<CompareOptions>): string[] {
  const found: string[] = [];
  const number = (name: string, got: number, want: number, tolerance: number) => {
    if (!(Math.abs(got - want) <= tolerance)) found.push(`${name} is ${got}, not ${want}`);
  };
  number("firstLeaf", fit.firstLeaf, expected.firstLeaf, 0);
  number("lastLeaf", fit.lastLeaf, expected.lastLeaf, 0);
  number("opening", fit.opening, expected.opening, o.openingTolerance);
  number("height", fit.height, expected.height, o.widthTolerance);
  number("width", fit.width, expected.width, o.widthTolerance);
  number("tipWidth", fit.tipWidth, expected.tipWidth, o.widthTolerance);
  number("count of levels", levels.length, expected.depths.length, 0);
  expected.depths.forEach((d, i) => {
    number(`depth of level ${i + 1}`, levels[i]?.depth ?? Number.NaN, d, o.printTolerance);
  });
  return found;
}

function compareNumbers(leaf: PublishedLeaf, want: ExpectedLeaf, o: Required<CompareOptions>): string[] {
  const found: string[] = [];
  if (leaf.patternPage !== want.patternPage) found.push(`patternPage is ${leaf.patternPage}, not ${want.patternPage}`);
  if (leaf.bookPage !== want.bookPage) found.push(`bookPage is ${leaf.bookPage}, not ${want.bookPage}`);
  const near = want.x.every((x, i) => Math.abs((leaf.x[i] ?? Number.NaN) - x) <= o.xTolerance);
  if (!near || leaf.x.length !== want.x.length) found.push(`x is ${leaf.x}, not ${want.x.map((x) => x.toFixed(3))}`);
  return found;
}

/** Levels at sampled heights, except near boundaries, in and around runs that may be absorbed, and where unsure. */
function compareLevels(leaf: PublishedLeaf, want: ExpectedLeaf, e: Expected, o: Required<CompareOptions>): string[] {
  const near = e.markStep / 2 + o.boundaryTolerance;
  const around = 1.5 * e.markStep + o.boundaryTolerance;
  const short = want.runs.filter((r) => r.to - r.from < e.leastTab + 2 * e.markStep);
  const within = (r: { from: number; to: number }, u: number, by: number) => r.from - by <= u && u <= r.to + by;
  const wrong: number[] = [];
  for (let u = o.sampleStep / 2; u < e.book.leafHeight; u += o.sampleStep) {
    const run = want.runs.find((r) => r.from <= u && u < r.to);
    if (leaf.spans.find((s) => s.from <= u && u < s.to)?.level === run?.level) continue;
    if (want.runs.some((r, i) => i > 0 && Math.abs(r.from - u) <= near)) continue;
    if (short.some((r) => within(r, u, around)) || want.unsure.some((r) => within(r, u, near))) continue;
    wrong.push(u);
  }
  if (wrong.length === 0) return [];
  const wanted = want.runs.map((r) => `${r.from.toFixed(2)}–${r.to.toFixed(2)}:${r.level}`).join(" ");
  return [`${wrong.length} heights at another level, first ${wrong[0]!.toFixed(2)}; expected ${wanted}`];
}

function checkSpans({ spans }: PublishedLeaf, e: Expected, o: Required<CompareOptions>): string[] {
  const found: string[] = [];
  if (spans[0]?.from !== 0) found.push("spans do not start at the head");
  if (!(Math.abs((spans.at(-1)?.to ?? 0) - e.book.leafHeight) <= o.printTolerance))
    found.push("spans do not end at the tail");
  spans.forEach((s, i) => {
    const before = spans[i - 1];
    if (!(s.to - s.from >= e.leastTab - 2 * o.printTolerance)) found.push(`span ${s.from} to ${s.to} is too short`);
    if (!before) return;
    if (before.to !== s.from) found.push(`gap between ${before.to} and ${s.from}`);
    if (before.level === s.level) found.push(`equal levels meet at ${s.from}`);
    const off = Math.abs(s.from - Math.round(s.from / e.markStep) * e.markStep);
    if (off > o.printTolerance) found.push(`mark ${s.from} is no multiple of ${e.markStep}`);
  });
  return found;
}

function checkCuts({ spans, cuts }: PublishedLeaf, e: Expected, o: Required<CompareOptions>): string[] {
  const wanted = spans.slice(1).map((s, i) => ({
    at: s.from,
    depth: Math.max(e.depths[s.level - 1]!, e.depths[spans[i]!.level - 1]!),
  }));
  const same =
    cuts.length === wanted.length &&
    wanted.every((w, i) => cuts[i]!.at === w.at && Math.abs(cuts[i]!.depth - w.depth) <= o.printTolerance);
  return same ? [] : [`cuts are ${JSON.stringify(cuts)}, not ${JSON.stringify(wanted)}`];
}

function checkTacks(leaf: PublishedLeaf, published: Published, e: Expected): string[] {
  const found: string[] = [];
  for (const part of tackIntervals(published.leaves, leaf.leaf, e.depths, e.book.leaves)) {
    const u = (part.from + part.to) / 2;
    const tacked = leaf.tacks.some((t) => t.from <= u && u <= t.to);
    if (tacked !== part.tacked) found.push(`${part.from} to ${part.to} ${tacked ? "needs no tack" : "lacks a tack"}`);
  }
  return found;
}

/** Runs below this may be an artefact of the raster where two shapes meet. */
const LEAST_RUN = 0.03;

/** A short run that did not make it to the spans is listed as absorbed. */
function checkReported(leaf: PublishedLeaf, want: ExpectedLeaf, published: Published, e: Expected): string[] {
  return want.runs.flatMap((r) => {
    const u = (r.from + r.to) / 2;
    const sure = !want.unsure.some((p) => p.from <= r.to && r.from <= p.to);
    const lost = !leaf.spans.some(
      (s) => s.level === r.level && s.from < r.to + e.markStep && s.to > r.from - e.markStep,
    );
    if (r.to - r.from >= e.leastTab || r.to - r.from < LEAST_RUN || !sure || !lost) return [];
    const listed = published.absorbed.some(
      (a) => a.leaf === want.leaf && a.from - e.markStep <= u && u <= a.to + e.markStep,
    );
    return listed ? [] : [`run ${r.from.toFixed(2)} to ${r.to.toFixed(2)} at level ${r.level} vanished unreported`];
  });
}
