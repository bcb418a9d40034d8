import { listText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { problem } from "../files/problem.ts";
import { isCutOut, type Layer, type Layers, opaque, type Source, withinOpaque } from "./layers.ts";
import { histogramOf, lightnessOf, middleLimits } from "./lightness.ts";
import { median, medianRow } from "./median.ts";
import { distinctValues } from "./otsu.ts";
import type { Pixels } from "./pixels.ts";

/** Grain is evened out over squares of at most 7 × 7 pixels. */
const MOST_REACH = 3;
/** Every so many rows are enough to see whether there is grain. */
const SAMPLE = 16;

/** One subject at the first of the levels: what is nearer than the limit, or what is not transparent. @throws ProblemError */
export function silhouetteLayers(source: Source): Layers {
  const { pixels, plan } = source;
  const level = plan.levels[0]!;
  if (!plan.limits && isCutOut(pixels))
    return { layers: [{ level, values: () => opaque(pixels) }], notes: [say.rasterAlpha()] };
  return toneLayers({ ...source, plan: { ...plan, levels: [level, plan.background] } });
}

/** Levels from front to back by lightness. @throws ProblemError */
export function toneLayers(source: Source): Layers {
  const { pixels, plan } = source;
  const light = lightnessOf(pixels);
  const { limits, notes } = limitsOf(source, histogramOf(light, pixels));
  const even = withoutGrain(light, source);
  const isDarkNear = (plan.near ?? (plan.trace === "depth" ? "light" : "dark")) === "dark";
  const layers = plan.levels.map((level, k): Layer => {
    const limit = limits.at(isDarkNear ? k : -1 - k);
    if (k === plan.levels.length - 1 || limit === undefined) return { level, values: () => opaque(pixels) };
    const sense = isDarkNear ? 1 : -1;
    return {
      level,
      values: () => withinOpaque(nearness(even, limit, sense), pixels),
    };
  });
  return { layers, notes };
}

/** By how much each pixel is darker than the limit, or lighter with the other sense. */
function nearness(light: Uint8Array, limit: number, sense: 1 | -1): Float32Array {
  const values = new Float32Array(light.length);
  for (let i = 0; i < light.length; i += 1) values[i] = sense * (limit - light[i]!);
  return values;
}

/** A picture's lightness without its grain, as it was evened out last. */
interface Even {
  readonly reach: number;
  readonly light: Uint8Array;
}

const evened = new WeakMap<Pixels, Even>();

/**
 * Evens out the grain of a photograph over half the tolerance. A drawing has none: in its flat areas nothing would change, and
 * its corners would lose their points.
 */
function withoutGrain(light: Uint8Array, { pixels, plan }: Source): Uint8Array {
  const { width, saved } = pixels;
  const mmPerPixel = (plan.mmPerUnit(saved) * saved.width) / width;
  const reach = Math.min(MOST_REACH, Math.floor(plan.tolerance / mmPerPixel / 2));
  const last = evened.get(pixels);
  if (last?.reach === reach) return last.light;
  const even = reach > 0 && isGrainy(light, pixels, reach) ? median(light, pixels, reach) : light;
  evened.set(pixels, { reach, light: even });
  return even;
}

/** Whether most pixels differ from those round them, as some rows show. */
function isGrainy(light: Uint8Array, pixels: Pixels, reach: number): boolean {
  let [changed, seen] = [0, 0];
  for (let y = 0; y < pixels.height; y += SAMPLE) {
    medianRow(light, pixels, { reach, y }).forEach((value, x) => {
      seen += 1;
      if (value !== light[y * pixels.width + x]) changed += 1;
    });
  }
  return changed > seen / 2;
}

/** Where the levels part, ascending. A stated limit belongs to the darker side, so the outline runs just above it. */
function limitsOf({ at, plan, name }: Source, histogram: Uint32Array): { limits: readonly number[]; notes: string[] } {
  const classes = plan.levels.length;
  if (plan.limits) {
    checkLimits(plan.limits, classes - 1, [...at, "limits"]);
    return { limits: plan.limits.map((limit) => limit + 0.5), notes: [] };
  }
  const limits = middleLimits(histogram, classes);
  if (!limits) {
    const tones = distinctValues(histogram);
    throw problem([...at, "file"], {
      given: tones === 0 ? say.rasterClear({ file: name }) : say.rasterFewTones({ file: name, tones }),
      allowed: say.rasterTonesAllowed({ classes }),
      remedy: say.rasterOtherPicture(),
    });
  }
  const stated = limits.map((limit) => String(Math.floor(limit)));
  return {
    limits,
    notes: [say.rasterLimits({ count: stated.length, list: listText(stated), limits: stated.join(", ") })],
  };
}

function checkLimits(limits: readonly number[], count: number, at: Source["at"]): void {
  const back = limits.findIndex((limit, i) => i > 0 && limit <= limits[i - 1]!);
  if (back > 0)
    throw problem(at, {
      given: say.rasterLimitAfter({ limit: limits[back]!, before: limits[back - 1]! }),
      allowed: say.rasterLimitsAscend(),
      remedy: say.rasterOrderLimits(),
    });
  if (limits.length === count) return;
  throw problem(at, {
    given: say.rasterLimitCount({ count: limits.length }),
    allowed: say.rasterLimitsAllowed({ count }),
    remedy: say.rasterMatchLimits(),
  });
}
