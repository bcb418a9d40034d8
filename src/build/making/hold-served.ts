import { join, resolve, sep } from "node:path";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import { diskFault } from "../errors/disk-fault.ts";
import { atExit } from "./at-exit.ts";
import { holdLock } from "./lock.ts";
import { removeAll, removeBusy } from "./remove.ts";
import { clearLeftovers, openWorkshop, ownFolder, targetName } from "./workshop.ts";

/**
 * Holds the folder that a site is served from until the process ends, and begins it anew where it is a folder of the cache.
 * Gives a folder of this process for what is not yet part of the site.
 * @throws BuildError where another serves from it already, or the disk is in the way
 */
export async function holdServed(base: string, output: string): Promise<string> {
  const target = resolve(base, output);
  try {
    const workshop = openWorkshop(base, target);
    atExit(
      await holdLock(workshop, targetName(workshop, target), {
        patience: 0,
        busy: say.makingServing,
        tell: () => undefined,
      }),
    );
    clearLeftovers(workshop);
    if (target.startsWith(join(resolve(base), ".cache") + sep)) removeAll(target);
    const own = join(workshop, ownFolder(workshop));
    atExit(() => removeBusy(own));
    return own;
  } catch (error) {
    throw error instanceof BuildError ? error : (diskFault(error, target) ?? error);
  }
}
