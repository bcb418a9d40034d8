import { LevelPicture, type PictureBox } from "./columns.ts";
import { cellEdges, displayedWidth, type Fan, readingPositions, tip } from "./fan.ts";
import type { BookInput, KitInput, Run } from "./kit-input.ts";

export { compareWithOracle, type Published, tackIntervals } from "./compare.ts";
export type { KitInput, Run } from "./kit-input.ts";

/** The fit of a kit to its book: lengths in millimetres, the opening in radians, leaves counted from 1. */
export interface ExpectedFit {
  depths: number[];
  /** Level of what no shape covers, counted from 1. */
  background: number;
  firstLeaf: number;
  lastLeaf: number;
  opening: number;
  height: number;
  width: number;
  tipWidth: number;
  cellEdges: number[];
  fan: Fan;
}

export interface ExpectedLeaf {
  leaf: number;
  patternPage: number | null;
  bookPage: number | null;
  x: number[];
  /** Unrounded levels from head to tail. */
  runs: Run[];
  /** Stretches where a column 0.02 mm further left or right shows another level. */
  unsure: { from: number; to: number }[];
}

export interface Expected extends ExpectedFit {
  book: BookInput;
  markStep: number;
  leastTab: number;
  leaves: ExpectedLeaf[];
}

/** What the published pattern of a kit should hold, computed from the front matter and the picture's own text. */
export async function expectPattern(input: KitInput, svgText: string): Promise<Expected> {
  const background = input.levels.findIndex((l) => l.background) + 1;
  const selectors = input.levels.map((l) => input.picture.levels[l.name] ?? []);
  const picture = new LevelPicture(svgText, selectors, background);
  const fit = expectFit(input, picture.box);
  const pages = bookPages(input.book);
  const [before, after] = input.fit.borderLeaves;
  const numbers = range(fit.firstLeaf - before, fit.lastLeaf + after);
  const columns = await pictureLeaves(input, fit, picture);
  const leaves = numbers.map((leaf): ExpectedLeaf => {
    const read = columns.get(leaf);
    return {
      leaf,
      patternPage: read ? 2 * (leaf - fit.firstLeaf) + 1 : null,
      bookPage: pages[leaf - 1]!,
      x: fit.depths.map((d) => tip(fit.fan, leaf, d).x),
      runs: read?.runs ?? [{ from: 0, to: input.book.leafHeight, level: background }],
      unsure: read?.unsure ?? [],
    };
  });
  const { markStep = 0.5, leastTab = 3 } = input.fit;
  return { ...fit, book: input.book, markStep, leastTab, leaves };
}

/** Solves the one free quantity. `box` is the picture's viewBox: only its aspect counts. Throws when nothing fits. */
export function expectFit(input: KitInput, box: Pick<PictureBox, "width" | "height">): ExpectedFit {
  const { book, fit } = input;
  const depths = input.levels.map((l) => l.depth ?? input.gauge!.lines[l.line! - 1]!);
  const firstLeaf = fit.borderLeaves[0] + 1;
  const most = book.leaves - fit.borderLeaves[0] - fit.borderLeaves[1];
  const aspect = box.width / box.height;
  const fanAt = (opening: number): Fan => ({
    leafWidth: book.leafWidth,
    blockThickness: book.blockThickness,
    leaves: book.leaves,
    opening,
    spine: fit.spine ?? "flat",
    direction: book.direction ?? "ltr",
  });
  const widthOf = (n: number, opening: number) =>
    displayedWidth(fanAt(opening), firstLeaf, firstLeaf + n - 1, depths[0]!, fit.view ?? "front");

  let n = typeof fit.pictureLeaves === "number" ? fit.pictureLeaves : most;
  let height = fit.height === "solve" ? Number.NaN : fit.height;
  let opening = fit.opening === "solve" ? Number.NaN : (fit.opening * Math.PI) / 180;
  if (fit.opening === "solve") opening = bisect((o) => widthOf(n, o) - aspect * height, 1e-6, Math.PI);
  else if (fit.height === "solve") height = widthOf(n, opening) / aspect;
  else if (fit.pictureLeaves === "solve") n = nearestCount((m) => widthOf(m, opening) - aspect * height, most);
  if (n > most) throw new Error(`${n} picture leaves, but only ${most} are left`);

  const fan = fanAt(opening);
  const lastLeaf = firstLeaf + n - 1;
  const [a, b] = [tip(fan, firstLeaf, depths[0]!), tip(fan, lastLeaf, depths[0]!)];
  const edges = cellEdges(readingPositions(fan, firstLeaf, lastLeaf, depths[0]!, fit.view ?? "front"));
  return {
    depths,
    background: input.levels.findIndex((l) => l.background) + 1,
    firstLeaf,
    lastLeaf,
    opening,
    height,
    width: edges[n]! - edges[0]!,
    tipWidth: Math.hypot(a.x - b.x, a.z - b.z),
    cellEdges: edges,
    fan,
  };
}

/** Printed page on the recto of each leaf, in book order; null where the leaf has no number. */
export function bookPages(book: BookInput): (number | null)[] {
  const pages: (number | null)[] = Array.from({ length: book.pageOneLeaf - 1 }, () => null);
  for (let recto = 1; pages.length < book.leaves; recto += 2) {
    pages.push(recto <= book.lastPage ? recto : null);
    for (const plate of book.plates ?? []) {
      if (plate.afterPage !== recto && plate.afterPage !== recto + 1) continue;
      for (let i = 0; i < plate.leaves; i++) pages.push(null);
    }
  }
  return pages.slice(0, book.leaves);
}

async function pictureLeaves(input: KitInput, fit: ExpectedFit, picture: LevelPicture) {
  const view = input.fit.view ?? "front";
  const along = readingPositions(fit.fan, fit.firstLeaf, fit.lastLeaf, fit.depths[0]!, view);
  const toPicture = (x: number) => picture.box.x + ((x - fit.cellEdges[0]!) / fit.width) * picture.box.width;
  const read = async (leaf: number) => {
    const own = along[leaf - fit.firstLeaf]!;
    const positions = view === "along" ? [own] : fit.depths.map((d) => tip(fit.fan, leaf, d).x);
    const columns = await Promise.all(positions.map((x) => picture.read(toPicture(x), fit.width, fit.height)));
    const levels = [0, 1, 2].map((side) => firstReached(columns.map((c) => c[side]!)));
    return [leaf, { runs: runsOf(levels[1]!, input, fit), unsure: unsureParts(levels, input, fit) }] as const;
  };
  return new Map(await Promise.all(range(fit.firstLeaf, fit.lastLeaf).map(read)));
}

/** At each row the smallest k whose own column is at level k or prouder; a single column is taken as it is. */
function firstReached(columns: Uint8Array[]): Uint8Array {
  if (columns.length === 1) return columns[0]!;
  const reached = new Uint8Array(columns[0]!.length);
  for (let row = 0; row < reached.length; row += 1) {
    let level = 1;
    while (columns[level - 1]![row]! > level) level += 1;
    reached[row] = level;
  }
  return reached;
}

function runsOf(levels: Uint8Array, input: KitInput, fit: ExpectedFit): Run[] {
  const runs: Run[] = [];
  const add = (to: number, level: number) => {
    const last = runs.at(-1);
    if (last?.level === level) last.to = to;
    else if (to > (last?.to ?? 0)) runs.push({ from: last?.to ?? 0, to, level });
  };
  const { head } = input.fit;
  add(head, fit.background);
  levels.forEach((level, row) => {
    // Only the last row of a run says where it ends.
    if (levels[row + 1] === level) return;
    add(head + ((row + 1) / levels.length) * fit.height, level);
  });
  add(input.book.leafHeight, fit.background);
  return runs;
}

function unsureParts([left, own, right]: Uint8Array[], input: KitInput, fit: ExpectedFit) {
  const parts: { from: number; to: number }[] = [];
  const row = fit.height / own!.length;
  own!.forEach((level, i) => {
    if (left![i] === level && right![i] === level) return;
    const from = input.fit.head + i * row;
    const last = parts.at(-1);
    if (last && from - last.to < row / 2) last.to = from + row;
    else parts.push({ from, to: from + row });
  });
  return parts;
}

function bisect(f: (x: number) => number, low: number, high: number): number {
  if (f(low) > 0 || f(high) < 0) throw new Error(`no opening fits: off by ${f(low)} to ${f(high)} mm`);
  let [a, b] = [low, high];
  for (let i = 0; i < 80; i++) {
    const middle = (a + b) / 2;
    if (f(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

/** The count from 2 to `most` whose width is nearest to the wanted one; `f` is the width's excess. */
function nearestCount(f: (n: number) => number, most: number): number {
  const counts = range(2, most);
  if (f(most) < f(most - 1) - f(most)) throw new Error(`${most} leaves are too few by ${-f(most)} mm`);
  return counts.reduce((best, n) => (Math.abs(f(n)) < Math.abs(f(best)) ? n : best));
}

function range(first: number, last: number): number[] {
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}
