import { compareCheckAndBuild } from "../hostile/check-equals-build.ts";
import type { Bench } from "./trial.ts";

/** Sites that are printed, too: the bundle plugin writes style sheets once a process, and others would be printed without. */
const PRINTED = 1;

/** Feeds random sites to check and build, as many as there is time for. */
export async function tryRandomSites(sites: number, { random, goesOn, say }: Bench): Promise<void> {
  const seed = Math.floor(random() * 2 ** 31);
  const { tried, built, printed } = await compareCheckAndBuild({ sites, print: PRINTED, seed, goesOn });
  say(`${tried} of ${sites} sites: ${built} were built, ${printed} of them printed; the others were told of`);
}
