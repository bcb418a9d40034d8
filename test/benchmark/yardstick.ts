import { wavyPicture } from "./drawn-pictures.ts";
import { onePass } from "./plain-crossings.ts";

export const LEAVES = 200;
export const EDGES = 10_000;

const TURNS = 1000;

/** Milliseconds of processor that this thread has used: time that other programs take does not count. Coarse, so only sums are true. */
export function cpuTime(): number {
  const { user, system } = process.threadCpuUsage();
  return (user + system) / 1000;
}

/** What one pass over 10,000 edges takes, ms of processor: how fast this machine is just now. */
export function yardstick(): number {
  const picture = wavyPicture(EDGES);
  const start = cpuTime();
  for (let i = 0; i < TURNS; i += 1) onePass(picture, LEAVES);
  return (cpuTime() - start) / TURNS;
}
