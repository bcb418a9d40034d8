import { AT_ONCE, FRAME } from "./bounds.ts";
import { BUILD_LINES } from "./build-lines.ts";
import type { Line } from "./line.ts";
import { SHARD_LINES } from "./shard-lines.ts";

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
  "desk-leaves": {
    part: "functions",
    work: "The desk: a handle moved on a kit of 204 leaves, text and leaves",
    unit: "ms",
    goal: FRAME,
  },
  "desk-whole": { part: "functions", work: "The same with light and window", unit: "ms", goal: AT_ONCE },
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
  "desk-key": {
    part: "desk",
    work: "The desk in Chromium: a key on a handle of a kit of 204 leaves, computation and drawing",
    unit: "ms",
    goal: FRAME,
  },
  "desk-painted": {
    part: "desk",
    work: "The same from the key to the frame on the screen, without a graphics card",
    unit: "ms",
    goal: 2 * FRAME,
  },
  "desk-light": { part: "desk", work: "The same with light and window", unit: "ms", goal: AT_ONCE },
  ...BUILD_LINES,
  ...SHARD_LINES,
  "serve-4": { part: "serve", work: "`npm start` with 4 kits: from saving a file to its page", unit: "s", goal: 0.3 },
  "serve-100": {
    part: "serve",
    work: "`npm start` with 100 kits: from saving a file to its page",
    unit: "s",
    goal: 0.5,
  },
  "start-4": {
    part: "serve",
    work: "`npm start` with 4 new kits: till catalogue and desk answer",
    unit: "s",
    goal: 3,
  },
  "start-100": {
    part: "serve",
    work: "`npm start` with 100 new kits: till catalogue and desk answer",
    unit: "s",
    goal: 3,
  },
  "desk-4": { part: "serve", work: "The same with 4 kits: from saving a file to the desk", unit: "s", goal: 0.3 },
  "desk-100": { part: "serve", work: "The same with 100 kits: from saving a file to the desk", unit: "s", goal: 0.5 },
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
