import { existsSync, lstatSync, readFileSync, renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import { isOwner } from "./owner.ts";
import { targetName } from "./workshop.ts";
import { writeAside } from "./write-aside.ts";

/** The steps of putting a site in place; a test stops the process before one of them. */
export type Step = "journal" | "aside" | "place" | "seal" | "clear";

/** Where a swap happens. */
export interface SwapPlace {
  /** The folder of all that is being made. */
  readonly workshop: string;
  /** The name of the folder in it that holds the new site. */
  readonly own: string;
  /** What is put in place. */
  readonly target: string;
}

const NEW = "site";
const OLD = "before";

/** The new site's folder. */
export function newSite({ workshop, own }: Omit<SwapPlace, "target">): string {
  return join(workshop, own, NEW);
}

/**
 * Puts the new site in place by two renames, with nothing between them; a journal tells the next start of a swap that was
 * cut off. The old site stays beside the new one's place to be removed. @throws BuildError where the target stays as it was
 */
export function swap(place: SwapPlace, step: (name: Step) => void): void {
  const { workshop, own, target } = place;
  const [made, before] = [newSite(place), join(workshop, own, OLD)];
  step("journal");
  writeJournal(place);
  step("aside");
  const had = lstatSync(target, { throwIfNoEntry: false }) !== undefined;
  try {
    if (had) rename(target, before);
  } catch (error) {
    rmSync(journalOf(place), { force: true });
    throw stays(target, error);
  }
  step("place");
  try {
    rename(made, target);
  } catch (error) {
    if (had) restore(before, target);
    rmSync(journalOf(place), { force: true });
    throw stays(target, error);
  }
  step("seal");
  rmSync(journalOf(place), { force: true });
}

/** Undoes or finishes a swap that was cut off; the target is whole afterwards, if it ever was. */
export function mendSwap(workshop: string, target: string): void {
  const journal = journalOf({ workshop, target });
  if (!existsSync(journal)) return;
  const own = readFileSync(journal, "utf8");
  if (isOwner(own) && !existsSync(target)) {
    const [before, made] = [join(workshop, own, OLD), join(workshop, own, NEW)];
    if (existsSync(before)) rename(before, target);
    else if (existsSync(made)) rename(made, target);
  }
  rmSync(journal, { force: true });
}

function journalOf({ workshop, target }: Omit<SwapPlace, "own">): string {
  return join(workshop, `${targetName(workshop, target)}.swap`);
}

function writeJournal(place: SwapPlace): void {
  writeAside(journalOf(place), join(place.own, "swap"), Buffer.from(place.own));
}

function restore(before: string, target: string): void {
  try {
    rename(before, target);
  } catch (error) {
    throw new BuildError(say.makingAside({ target, before, fault: codeOf(error) }));
  }
}

function stays(target: string, error: unknown): BuildError {
  return new BuildError(say.makingUnmovable({ target, code: codeOf(error) }));
}

/** Windows refuses for a moment what a virus scanner or an index looks at. */
const TRIES = process.platform === "win32" ? 20 : 1;

function rename(from: string, to: string): void {
  for (let left = TRIES; ; left -= 1) {
    try {
      renameSync(from, to);
      return;
    } catch (error) {
      if (left <= 1) throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 100);
    }
  }
}

function codeOf(error: unknown): string {
  return (error as NodeJS.ErrnoException).code ?? String(error);
}
