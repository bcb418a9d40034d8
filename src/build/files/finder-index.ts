import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { outlineOf } from "../../core/finder/outline.ts";
import { FINDER_INDEX, finderIndex } from "../../output/data/finder-index.ts";
import type { Library } from "../library/library.ts";

/** Writes the outlines of all kits, from which the finder knows which of them it has to ask. */
export function writeFinderIndex(output: string, { views }: Library): void {
  mkdirSync(join(output, "assets"), { recursive: true });
  writeFileSync(join(output, FINDER_INDEX), finderIndex(views.map(({ kit }) => outlineOf(kit))));
}
