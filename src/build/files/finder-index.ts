import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { FINDER_INDEX, finderIndex } from "../../output/data/finder-index.ts";
import type { KitEntry } from "../library/kit-entry.ts";

/** Writes the outlines of all kits, from which the finder knows which of them it has to ask. */
export function writeFinderIndex(output: string, kits: readonly Pick<KitEntry, "outline">[]): void {
  mkdirSync(join(output, "assets"), { recursive: true });
  writeFileSync(join(output, FINDER_INDEX), finderIndex(kits.map(({ outline }) => outline)));
}
