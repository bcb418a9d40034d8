import { parseArgs } from "node:util";
import "../english.ts";
import { seeded } from "../oracle/random-shapes.ts";
import { breakBrowsers, loseBrowser } from "./browsers.ts";
import { damageCaches } from "./caches.ts";
import { fillDisk, lockFiles } from "./disk.ts";
import { killBuilds, killSwaps } from "./kills.ts";
import { tryRandomSites } from "./random-sites.ts";
import type { Bench, Trial } from "./trial.ts";
import { buildTwice } from "./two-builds.ts";
import { twoStates } from "./two-states.ts";

/** All of it together, ms. */
const BOUND = 15 * 60_000;

const TRIALS: readonly Trial[] = [
  { name: "swaps", run: (bench) => killSwaps(10, bench) },
  { name: "kills", run: (bench) => killBuilds(50, bench) },
  { name: "caches", run: (bench) => damageCaches(9, bench) },
  { name: "builds at once", run: (bench) => buildTwice(3, bench) },
  { name: "locked", run: lockFiles },
  { name: "disk", run: (bench) => fillDisk(6, bench) },
  { name: "browsers", run: breakBrowsers },
  {
    name: "lost browser",
    run: async (bench) => {
      const states = await twoStates();
      await loseBrowser(bench, states);
      states.project.remove();
    },
  },
  { name: "random sites", run: (bench) => tryRandomSites(1000, bench) },
];

/**
 * `npm run torture -- [names of trials] [--seed 1]`: kills builds, fills disks, locks files, damages what is kept and breaks
 * browsers, and holds after each that dist is whole and nothing is left behind; then feeds random sites to check and build.
 */
const { values, positionals } = parseArgs({
  options: { seed: { type: "string", default: String(Math.floor(Math.random() * 1e9)) } },
  allowPositionals: true,
});
console.log(`seed ${values.seed}: npm run torture -- --seed ${values.seed}`);
const until = performance.now() + BOUND;
const chosen = TRIALS.filter(({ name }) => positionals.length === 0 || positionals.includes(name));
for (const [i, { name, run }] of chosen.entries()) {
  const began = performance.now();
  // One trial leaves time for those after it.
  const share = began + Math.max(0, until - began) * (i + 1 < chosen.length ? 0.6 : 1);
  const bench: Bench = {
    random: seeded(Number(values.seed)),
    goesOn: () => performance.now() < share,
    say: (line) => console.log(`  ${line}`),
  };
  console.log(name);
  try {
    await run(bench);
  } catch (error) {
    console.error(`  FAILED ${(error as Error).message}`);
    process.exitCode = 1;
  }
  console.log(`  ${Math.round((performance.now() - began) / 1000)} s`);
}
