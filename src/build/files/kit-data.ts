import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Kit } from "../../core/kit/kit.ts";
import type { Caution } from "../../core/plan/caution.ts";
import { kitScript } from "../../output/data/kit-script.ts";

/** Writes what a page needs to fit a kit to another book as a script beside its page, which also loads from the disk. */
export function writeKitData(folder: string, kit: Kit, cautions: readonly Caution[]): void {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "kit-data.js"), kitScript({ kit, cautions }));
}
