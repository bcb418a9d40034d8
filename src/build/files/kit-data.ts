import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { kitScript } from "../../output/data/kit-script.ts";
import type { Library } from "../library/library.ts";

/** Writes what a page needs to fit each kit to another book as a script beside its page, which also loads from the disk. */
export function writeKitData(output: string, { views, cautions }: Library): void {
  for (const { slug, kit } of views) {
    const folder = join(output, "kits", slug);
    mkdirSync(folder, { recursive: true });
    writeFileSync(join(folder, "kit-data.js"), kitScript({ kit, cautions }));
  }
}
