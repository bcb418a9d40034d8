import { availableParallelism, freemem } from "node:os";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";

/** Says how many browsers print at once. */
const VARIABLE = "LEAFLIGHT_PRESSES";
/** As many as may be asked for; more would only wait for each other. */
const MOST = 8;
/** As many as are taken unasked. */
const USUAL = 2;
/** Free memory that a browser should find, bytes. */
const ROOM = 1 << 30;

/** How many browsers print at once: as many as are asked for, or as cores and memory allow. @throws BuildError for what is no such number */
export function pressCount(asked = process.env[VARIABLE], cores = availableParallelism(), free = freemem()): number {
  if (!asked) return Math.max(1, Math.min(USUAL, cores, Math.floor(free / ROOM)));
  const count = Number(asked);
  if (!Number.isInteger(count) || count < 1 || count > MOST)
    throw new BuildError(say.printPresses({ variable: VARIABLE, given: asked, most: MOST }));
  return count;
}
