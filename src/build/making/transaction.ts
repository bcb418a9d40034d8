import { lstatSync, readlinkSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import { diskFault } from "../errors/disk-fault.ts";
import { atExit } from "./at-exit.ts";
import { holdLock } from "./lock.ts";
import { removeAll, removeBusy } from "./remove.ts";
import { mendSwap, newSite, type Step, swap } from "./swap.ts";
import { syncAll } from "./sync-all.ts";
import { clearLeftovers, openWorkshop, ownFolder, targetName } from "./workshop.ts";

export interface Transaction {
  /** The project's folder. */
  readonly base: string;
  /** The folder in it that is made anew as a whole. */
  readonly output: string;
  readonly tell?: (line: string) => void;
  /** How long to wait for another that makes the same, ms. */
  readonly patience?: number;
  /** Called before each step of putting the site in place. */
  readonly step?: (name: Step) => void;
}

/** Longer than other builds take, ms. */
const PATIENCE = 600_000;

/**
 * Makes a site in a folder of its own, and puts it in the output's place when all of it is there. One process at a time makes
 * an output; whatever goes wrong, the output is as it was.
 * @throws BuildError where the disk or another build is in the way; what `make` throws
 */
export async function inTransaction<T>(
  { base, output, tell = console.warn, patience = PATIENCE, step = () => undefined }: Transaction,
  make: (folder: string) => Promise<T>,
): Promise<T> {
  const target = resolve(base, output);
  try {
    const workshop = openWorkshop(base, target);
    const release = await holdLock(workshop, targetName(workshop, target), {
      patience,
      busy: (holder) => say.makingBusy({ ...holder, output }),
      tell: (holder) => tell(say.makingWait({ ...holder, output, minutes: Math.ceil(patience / 60_000) })),
    });
    try {
      mendSwap(workshop, target);
      tellLeft(clearLeftovers(workshop), tell);
      refuse(target, output);
      return await makeAndSwap(workshop, target, { tell, step, make });
    } finally {
      release();
    }
  } catch (error) {
    throw diskFault(error, target) ?? error;
  }
}

async function makeAndSwap<T>(
  workshop: string,
  target: string,
  {
    tell,
    step,
    make,
  }: Required<Pick<Transaction, "tell" | "step">> & { readonly make: (folder: string) => Promise<T> },
): Promise<T> {
  const own = ownFolder(workshop);
  const folder = join(workshop, own);
  // What was begun beside a failure may still write when that is told: so it is cleared again at the end.
  const cleared = atExit(() => removeBusy(folder));
  try {
    const site = newSite({ workshop, own });
    const result = await make(site);
    await syncAll(site);
    swap({ workshop, own, target }, step);
    step("clear");
    tellLeft(removeAll(folder), tell);
    cleared();
    return result;
  } catch (error) {
    removeAll(folder);
    throw error;
  }
}

/** What stands in the output's place and is no folder of ours to replace. */
function refuse(target: string, output: string): void {
  const found = lstatSync(target, { throwIfNoEntry: false });
  if (found?.isSymbolicLink()) throw new BuildError(say.makingLink({ output, leads: readlinkSync(target) }));
  if (found && !found.isDirectory()) throw new BuildError(say.makingNoFolder({ output }));
}

function tellLeft(left: readonly string[], tell: (line: string) => void): void {
  if (left.length > 0) tell(say.makingLeft({ count: left.length, path: relative(process.cwd(), left[0]!) }));
}
