import type { Figure, LineId } from "../lines.ts";
import { middleAndMost } from "../numbers.ts";
import { measureBare } from "../process/bare-site.ts";
import { type StrangersSite, strangersSite } from "../process/strangers-site.ts";
import type { Scale } from "../scale.ts";
import { yardstick } from "../yardstick.ts";

const MEBIBYTE = 2 ** 20;

/** Turns of bare Eleventy, which takes little. */
const BARE_TURNS = 3;

type Count = 10 | 100 | 1000;

/** Whole builds without packets, first and again, beside Eleventy that writes the same pages and does nothing else. */
export async function measureBuilds({ quick, full }: Scale): Promise<Figure[]> {
  const counts: readonly Count[] = quick ? [10] : full ? [10, 100, 1000] : [10, 100];
  const figures: Figure[] = [];
  for (const count of counts) {
    const site = strangersSite(count);
    try {
      figures.push(...(await measureCount(site, count)));
    } catch (error) {
      console.error(String(error));
      figures.push(...notEnded(count));
    } finally {
      site.remove();
    }
  }
  return figures;
}

async function measureCount(site: StrangersSite, count: Count): Promise<Figure[]> {
  const turn = yardstick();
  const first = await site.build();
  const bare = await barely(site);
  const none = await site.build();
  site.changeOne();
  const one = await site.build();
  const share = (cpu: number): number => (100 * cpu) / first.cpu;
  return [
    { line: `build-${count}`, value: first.cpu / count, yardstick: turn },
    ...(bare === undefined ? [] : [{ line: `build-${count}-bare`, value: first.cpu / bare } as const]),
    { line: `build-${count}-memory`, value: Math.max(first.peak, none.peak, one.peak) / MEBIBYTE },
    { line: `rebuild-${count}-none`, value: share(none.cpu) },
    { line: `rebuild-${count}-one`, value: share(one.cpu) },
  ];
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
  const lines: readonly LineId[] = [
    `build-${count}`,
    `build-${count}-bare`,
    `build-${count}-memory`,
    `rebuild-${count}-none`,
    `rebuild-${count}-one`,
  ];
  return lines.map((line) => ({ line, value: Number.POSITIVE_INFINITY }));
}
