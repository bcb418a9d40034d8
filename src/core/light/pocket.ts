import { leafNumber } from "../book/leaf-number.ts";
import { type Fan, leafAngle, leafRoot, type Place } from "../fan/fan.ts";
import type { FrontCurve } from "../fan/front-curve.ts";
import type { Obstacle } from "../findings/failure.ts";
import type { Outcome } from "../findings/outcome.ts";
import { lazily } from "../lazily.ts";
import type { Span } from "../spans/span.ts";
import { tidy } from "../units/length.ts";
import type { LightWish, Notch, Pocket } from "./light.ts";
import { type RegionRows, ROW_STEP } from "./region-rows.ts";

/** Paper that must remain between a notch and the gutter, mm. */
export const LEAST_REMAINING = 15;

/** What a pocket is cut into. */
export interface PocketBook {
  readonly fan: Fan;
  readonly curve: FrontCurve;
  readonly rows: RegionRows;
  /** Top and bottom of the picture, mm from the head. */
  readonly top: number;
  readonly bottom: number;
  readonly markStep: number;
  readonly depths: readonly number[];
  /** Spans of each leaf of the book, 0-based; an unfolded leaf has none, a lost one is undefined. */
  readonly leaves: readonly (readonly Span[] | undefined)[];
}

/** Where a light would stand and what it would need, or what keeps it from standing. */
type Attempt =
  | { readonly floor: number; readonly centre: Place; readonly notches: readonly Notch[] }
  | { readonly obstacle: Obstacle };

/**
 * Cuts the room for a light: its axis stands at the middle of the region's extent at the floor, D/2 + setback behind the
 * front level's tips; each leaf whose ray enters the cylinder grown by the clearance is notched back to where it enters.
 * Where it cannot stand, the failure names the largest light that can.
 */
export function cutPocket(light: LightWish, book: PocketBook): Outcome<Pocket> {
  const attempt = tryLight(light, book);
  const largest = (): Pocket["largest"] => largestIn(light, book);
  if (!("obstacle" in attempt)) {
    const pocket = { light, ...attempt, leastWidth: leastWidth(light, book, attempt.floor) };
    return { value: lazily({ largest }, pocket) };
  }
  const { level, diameter, height, clearance } = light;
  const { obstacle } = attempt;
  return { failure: { kind: "no-room-for-light", level, diameter, height, clearance, obstacle, largest: largest() } };
}

/** The largest light that stands: the widest of its height, the highest of its width; 0 where none does. */
export function largestIn(light: LightWish, book: PocketBook): Pocket["largest"] {
  return { diameter: largestValue(light, book, "diameter"), height: largestValue(light, book, "height") };
}

function tryLight(light: LightWish, book: PocketBook): Attempt {
  const floor = light.floor === "auto" ? lowestFloor(light, book) : light.floor;
  if (floor === undefined) return { obstacle: { kind: "nowhere-wide", need: light.diameter + 2 * light.clearance } };
  const run = book.rows(floor - JUST_ABOVE);
  if (!run) return { obstacle: { kind: "level-absent", floor } };
  const front = book.curve.atAcross((run.from + run.to) / 2);
  const centre = { x: front.x, z: front.z - light.setback - light.diameter / 2 };
  const from = floor - light.height - light.clearance;
  if (from < 0) return { obstacle: { kind: "above-head", by: -from } };
  const notches = notchesOf(light, book, centre, from, floor);
  const tight = tightest(notches);
  if (tight && tight.remaining < LEAST_REMAINING) {
    const { leaf, remaining } = tight;
    return { obstacle: { kind: "little-paper", leaf, remaining, least: LEAST_REMAINING } };
  }
  return { floor, centre, notches };
}

function notchesOf(light: LightWish, book: PocketBook, centre: Place, from: number, to: number): Notch[] {
  return book.leaves.flatMap((spans, j) => (spans && notchOf(light, book, j, spans, centre, from, to)) ?? []);
}

/** The notch that leaves the least paper at the gutter; the first among equals. */
function tightest(notches: readonly Notch[]): Notch | undefined {
  return notches.reduce<Notch | undefined>(
    (worst, notch) => (worst && worst.remaining <= notch.remaining ? worst : notch),
    undefined,
  );
}

/** The notch of leaf j: from the fore-edge to where its ray enters the cylinder; nothing where it misses or its tips stand behind. */
function notchOf(
  light: LightWish,
  book: PocketBook,
  j: number,
  spans: readonly Span[],
  centre: Place,
  from: number,
  to: number,
): Notch | undefined {
  const entry = rayEntry(book.fan, j, centre, light.diameter / 2 + light.clearance);
  if (entry === undefined) return undefined;
  const tips = spans
    .filter((span) => span.from < to && span.to > from)
    .map((span) => book.fan.leafWidth - book.depths[span.level - 1]!);
  const proudest = spans.length === 0 ? book.fan.leafWidth : Math.max(...tips);
  if (proudest <= entry) return undefined;
  const depth = tidy(Math.ceil((book.fan.leafWidth - entry) / book.markStep - 1e-9) * book.markStep);
  return {
    leaf: leafNumber(j + 1),
    from: tidy(from),
    to: tidy(to),
    depth,
    remaining: tidy(book.fan.leafWidth - depth),
  };
}

/** Distance from the root at which leaf j's ray enters a circle: the smaller root of |root + s·dir − centre| = radius. */
function rayEntry(fan: Fan, j: number, centre: Place, radius: number): number | undefined {
  const root = leafRoot(fan, j);
  const angle = leafAngle(fan, j);
  const toRoot = { x: root.x - centre.x, z: root.z - centre.z };
  const half = toRoot.x * Math.sin(angle) + toRoot.z * Math.cos(angle);
  const under = half * half - (toRoot.x * toRoot.x + toRoot.z * toRoot.z - radius * radius);
  if (under <= 0 || -half + Math.sqrt(under) <= 0) return undefined;
  return -half - Math.sqrt(under);
}

/** The light stands on what is just above its floor: a region with a level foot ends at the floor itself, mm. */
const JUST_ABOVE = 1e-3;

function leastWidth(light: LightWish, book: PocketBook, floor: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let height = floor - JUST_ABOVE; height >= floor - light.height; height -= ROW_STEP) {
    const run = book.rows(height);
    least = Math.min(least, run ? run.to - run.from : 0);
  }
  return tidy(least, 3);
}

/** The greatest height from the head at which the region is wide enough over all heights the light fills, a multiple of the step: rows are tried, and the edge between too narrow and wide enough is then found exactly. */
function lowestFloor(light: LightWish, book: PocketBook): number | undefined {
  const need = light.diameter + 2 * light.clearance;
  const wide: IsWide = (height, others) => {
    const run = book.rows(height, others);
    return run !== undefined && run.to - run.from >= need - 1e-9;
  };
  let bottom: number | undefined;
  for (let height = book.bottom; height >= book.top - ROW_STEP; height -= ROW_STEP) {
    const at = Math.max(height, book.top);
    const fits =
      bottom !== undefined &&
      floorFor(bottom, book.markStep) - light.height >= at &&
      wide(floorFor(bottom, book.markStep) - light.height);
    if (fits) return floorFor(bottom!, book.markStep);
    if (!wide(at)) bottom = undefined;
    else bottom ??= lowestWide(wide, at, Math.min(at + ROW_STEP, book.bottom));
  }
  return undefined;
}

/** The mark at or above a height. */
function floorFor(height: number, step: number): number {
  return tidy(Math.floor(height / step + 1e-9) * step);
}

/** Whether a height is wide enough; `others` may be asked for next. */
type IsWide = (height: number, others?: readonly number[]) => boolean;

/** So many halvings are looked ahead: reading some rows takes hardly longer than reading one. */
const AHEAD = 3;

function lowestWide(wide: IsWide, inside: number, outside: number): number {
  if (wide(outside)) return outside;
  let low = inside;
  let high = outside;
  for (let step = 0; step < 30; step += 1) {
    const middle = (low + high) / 2;
    if (wide(middle, step % AHEAD === 0 ? middlesOf(low, high, AHEAD) : [])) low = middle;
    else high = middle;
  }
  return low;
}

/** All middles that so many halvings may come to. */
function middlesOf(low: number, high: number, halvings: number): number[] {
  if (halvings === 0) return [];
  const middle = (low + high) / 2;
  return [middle, ...middlesOf(low, middle, halvings - 1), ...middlesOf(middle, high, halvings - 1)];
}

/** The largest diameter or height, to 0.5 mm, at which the light still stands; 0 where none does. */
function largestValue(light: LightWish, book: PocketBook, key: "diameter" | "height"): number {
  const stands = (value: number): boolean => !("obstacle" in tryLight({ ...light, [key]: value }, book));
  let low = 0;
  let high = 600;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (stands(middle / 2)) low = middle;
    else high = middle;
  }
  return low / 2;
}
