import { type BuildLineId, buildLines, COUNTS, type Count } from "../build-lines.ts";
import type { Figure } from "../figure.ts";
import { middleAndMost } from "../numbers.ts";
import { measureBare } from "../process/bare-site.ts";
import { type StrangersSite, strangersSite } from "../process/strangers-site.ts";
import type { Scale } from "../scale.ts";
import { yardstick } from "../yardstick.ts";

const MEBIBYTE = 2 ** 20;

/** Turns of bare Eleventy, which takes little. */
const BARE_TURNS = 3;

/** Whole builds without packets, first and again, beside Eleventy that writes the same pages and does nothing else. */
export async function measureBuilds({ quick, full }: Scale): Promise<Figure[]> {
  const counts = COUNTS.slice(0, quick ? 1 : full ? 3 : 2);
  const figures: Figure[] = [];
  let memory: number | undefined;
  for (const count of counts) {
    const site = strangersSite(count);
    try {
      const { peak, ...own } = await measureCount(site, count);
      figures.push(...own.figures);
      if (memory !== undefined) figures.push({ line: `build-${count}-flat`, value: peak / memory });
      memory = peak;
    } catch (error) {
      console.error(String(error));
      figures.push(...notEnded(count));
    } finally {
      site.remove();
    }
  }
  return figures;
}

async function measureCount(
  site: StrangersSite,
  count: Count,
): Promise<{ readonly peak: number; readonly figures: readonly Figure[] }> {
  const turn = yardstick();
  const first = await site.build();
  const bare = await barely(site);
  const none = await site.build();
  site.changeOne();
  const one = await site.build();
  const share = (cpu: number): number => (100 * cpu) / first.cpu;
  const peak = Math.max(first.peak, none.peak, one.peak);
  const figures: Figure[] = [
    { line: `build-${count}`, value: first.cpu / count, yardstick: turn },
    { line: `build-${count}-memory`, value: peak / MEBIBYTE },
    { line: `build-${count}-none`, value: share(none.cpu) },
    { line: `build-${count}-one`, value: share(one.cpu) },
  ];
  if (bare !== undefined) figures.push({ line: `build-${count}-bare`, value: first.cpu / bare });
  return { peak, figures };
}

/** Processor that bare Eleventy takes for the same pages, s; undefined where they are too many for it. */
async function barely({ dist }: StrangersSite): Promise<number | undefined> {
  try {
    const turns: number[] = [];
    for (let i = 0; i < BARE_TURNS; i += 1) turns.push((await measureBare(dist)).cpu);
    return middleAndMost(turns).median;
  } catch (error) {
    console.error(String(error));
    return undefined;
  }
}

/** A build that did not end, for want of memory or time, has lost every line. */
function notEnded(count: Count): Figure[] {
  const all = Object.keys(buildLines(count)) as BuildLineId[];
  const lines = all.filter((line) => count > COUNTS[0] || !line.endsWith("-flat"));
  return lines.map((line) => ({ line, value: Number.POSITIVE_INFINITY }));
}
