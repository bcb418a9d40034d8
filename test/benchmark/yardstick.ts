import { wavyPicture } from "./drawn-pictures.ts";
import { middleAndMost } from "./numbers.ts";
import { onePass } from "./plain-crossings.ts";

export const LEAVES = 200;
export const EDGES = 10_000;

const TURNS = 2000;

/** Milliseconds of processor that this thread has used: time that other programs take does not count. Coarse, so only sums are true. */
export function cpuTime(): number {
  const { user, system } = process.threadCpuUsage();
  return (user + system) / 1000;
}

/** What one pass over 10,000 edges takes at a middle turn, ms: how fast this machine is just now. A turn is too short to be interrupted. */
export function yardstick(): number {
  const picture = wavyPicture(EDGES);
  const turns = Array.from({ length: TURNS }, () => {
    const start = performance.now();
    onePass(picture, LEAVES);
    return performance.now() - start;
  });
  return middleAndMost(turns).median;
}
