import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Kept } from "./kept.ts";
import { tableOf } from "./table.ts";

/** The page of the guide that tells what was measured, from the project's folder. */
export const MEASURED_PAGE = "content/guide/en/many-kits.md";

const FILE = join(import.meta.dirname, "../..", MEASURED_PAGE);

/** Below this heading the benchmark writes, and nobody else. */
const HEADING = "\n## What was measured\n";

/** A page of the guide without what the benchmark wrote. */
export function writtenByHand(page: string): string {
  return page.split(HEADING)[0]!;
}

/** What the benchmark writes for figures. */
export function measuredPart({ machine, day, figures }: Kept): string {
  return `${HEADING}
\`npm run benchmark -- --accept\` wrote this table. It ran on ${machine}, with Leaflight as it was on ${day}.

${tableOf(figures)}
`;
}

export function writeGuide(kept: Kept): void {
  writeFileSync(FILE, `${writtenByHand(readFileSync(FILE, "utf8"))}${measuredPart(kept)}`);
}
