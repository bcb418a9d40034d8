import { AT_ONCE, FRAME } from "./bounds.ts";

/** How a figure is told: as a number of times, as a share of something, or in a unit that a machine changes. */
export type Unit = "times" | "turns" | "%" | "ms" | "s" | "min" | "MiB" | "MB" | "kB";

/** A line of the table. */
export interface Line {
  readonly part: PartName;
  /** What is measured, as the guide says it. */
  readonly work: string;
  readonly unit: Unit;
  readonly goal: number;
  /** Whether more is better; else less is. */
  readonly more?: true;
}

export const PART_NAMES = ["functions", "page", "builds", "shards", "serve", "packets", "bytes"] as const;

export type PartName = (typeof PART_NAMES)[number];

const builds = (kits: number) => `${kits.toLocaleString("en")} kits without packets`;

/** Every line of the table, in its order. */
export const LINES = {
  "pattern-library": {
    part: "functions",
    work: "A pattern of 200 leaves from 10,000 edges, faster than a polygon library finds the crossings",
    unit: "times",
    goal: 5,
    more: true,
  },
  "pattern-pass": {
    part: "functions",
    work: "The same pattern, as against one pass that only notes the crossings",
    unit: "times",
    goal: 15,
  },
  dots: { part: "functions", work: "A pattern from 1,000 dots", unit: "ms", goal: 10 },
  hatches: { part: "functions", work: "A pattern from 400 hatch lines", unit: "ms", goal: 50 },
  "key-1": {
    part: "page",
    work: "From a key in the fit panel to the whole answer, window included",
    unit: "ms",
    goal: 2 * FRAME,
  },
  "key-4": {
    part: "page",
    work: "From a key to the whole answer on a device that is 4 times slower",
    unit: "ms",
    goal: AT_ONCE,
  },
  "task-1": { part: "page", work: "The longest time meanwhile that the page answers nothing", unit: "ms", goal: 50 },
  "task-4": {
    part: "page",
    work: "The longest time that the page answers nothing on the slower device",
    unit: "ms",
    goal: 50,
  },
  "build-10": { part: "builds", work: `${builds(10)}: processor for a kit`, unit: "s", goal: 0.1 },
  "build-10-bare": { part: "builds", work: `${builds(10)}, as against Eleventy alone`, unit: "times", goal: 2 },
  "build-10-memory": { part: "builds", work: `${builds(10)}: most memory`, unit: "MiB", goal: 1024 },
  "rebuild-10-none": {
    part: "builds",
    work: "10 kits built again, nothing changed, of the first build",
    unit: "%",
    goal: 5,
  },
  "rebuild-10-one": {
    part: "builds",
    work: "10 kits built again, one changed, of the first build",
    unit: "%",
    goal: 8,
  },
  "build-100": { part: "builds", work: `${builds(100)}: processor for a kit`, unit: "s", goal: 0.1 },
  "build-100-bare": { part: "builds", work: `${builds(100)}, as against Eleventy alone`, unit: "times", goal: 2 },
  "build-100-memory": { part: "builds", work: `${builds(100)}: most memory`, unit: "MiB", goal: 1024 },
  "rebuild-100-none": {
    part: "builds",
    work: "100 kits built again, nothing changed, of the first build",
    unit: "%",
    goal: 5,
  },
  "rebuild-100-one": {
    part: "builds",
    work: "100 kits built again, one changed, of the first build",
    unit: "%",
    goal: 8,
  },
  "build-1000": { part: "builds", work: `${builds(1000)}: processor for a kit`, unit: "s", goal: 0.1 },
  "build-1000-bare": { part: "builds", work: `${builds(1000)}, as against Eleventy alone`, unit: "times", goal: 2 },
  "build-1000-memory": { part: "builds", work: `${builds(1000)}: most memory`, unit: "MiB", goal: 1024 },
  "rebuild-1000-none": {
    part: "builds",
    work: "1,000 kits built again, nothing changed, of the first build",
    unit: "%",
    goal: 5,
  },
  "rebuild-1000-one": {
    part: "builds",
    work: "1,000 kits built again, one changed, of the first build",
    unit: "%",
    goal: 8,
  },
  "part-kit": { part: "shards", work: "A part of a site, without packets: processor for a kit", unit: "s", goal: 0.1 },
  "join-kit": { part: "shards", work: "Parts joined to a site: processor for a kit", unit: "s", goal: 0.02 },
  "part-10000": {
    part: "shards",
    work: "10,000 kits without packets on 8 machines, reckoned: processor for one machine’s part",
    unit: "min",
    goal: 3,
  },
  "join-10000": {
    part: "shards",
    work: "10,000 kits, reckoned: processor for joining all parts",
    unit: "min",
    goal: 4,
  },
  "serve-4": { part: "serve", work: "`npm start` with 4 kits: from saving a file to its page", unit: "s", goal: 0.3 },
  "serve-100": {
    part: "serve",
    work: "`npm start` with 100 kits: from saving a file to its page",
    unit: "s",
    goal: 0.5,
  },
  "packets-one": {
    part: "packets",
    work: "Printing with one page at work: pages in a second, as against Chromium alone",
    unit: "times",
    goal: 1,
    more: true,
  },
  "packets-two": {
    part: "packets",
    work: "Printing with two pages at work, as against Chromium alone with one",
    unit: "times",
    goal: 1.5,
    more: true,
  },
  "kit-bytes": { part: "bytes", work: "Files of a kit without packets", unit: "MB", goal: 1 },
  "page-bytes": { part: "bytes", work: "The page of a kit of 204 leaves, packed", unit: "kB", goal: 42 },
  "data-bytes": {
    part: "bytes",
    work: "What a page computes a kit without a window from, packed",
    unit: "kB",
    goal: 30,
  },
  "window-bytes": {
    part: "bytes",
    work: "What a page computes a kit with a window from, packed",
    unit: "kB",
    goal: 60,
  },
} as const satisfies Readonly<Record<string, Line>>;

export type LineId = keyof typeof LINES;

/** What was measured for a line. */
export interface Figure {
  readonly line: LineId;
  readonly value: number;
  /** How long a turn of the yardstick took in the same run, ms: what a time means on any machine. */
  readonly yardstick?: number;
}

/** A time in turns of the yardstick; undefined where a figure is no time. */
export function turnsOf({ line, value, yardstick }: Figure): number | undefined {
  if (yardstick === undefined) return undefined;
  return (LINES[line].unit === "s" ? 1000 * value : value) / yardstick;
}

/** What two machines can be compared by: a time in turns of the yardstick, all else as it is. */
export function shareOf(figure: Figure): number {
  return turnsOf(figure) ?? figure.value;
}
