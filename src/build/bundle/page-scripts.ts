import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import type { Library } from "../library/library.ts";
import { CLASSIC_SCRIPT } from "./classic-script.ts";
import { wordsPlugin } from "./words-plugin.ts";

/** Page scripts by the name they get below assets/scripts. */
const SCRIPTS = [
  { name: "kit", entry: "kit/kit-entry.ts" },
  { name: "files", entry: "kit/files-entry.ts" },
  { name: "packet", entry: "packet/packet-entry.ts" },
  { name: "bench", entry: "bench/bench-entry.ts" },
  { name: "finder", entry: "finder/finder-entry.ts" },
  { name: "offline", entry: "offline/offline-entry.ts" },
] as const;

/** Bundles the page scripts, and writes each kit's data beside its page. */
export async function bundlePageScripts(output: string, { views, cautions, words, settings }: Library): Promise<void> {
  const source = join(import.meta.dirname, "../../page");
  for (const { name, entry } of SCRIPTS) {
    await build({
      entryPoints: { [name]: join(source, entry) },
      outdir: join(output, "assets/scripts"),
      ...CLASSIC_SCRIPT,
      plugins: [wordsPlugin(words, settings.language)],
    });
  }
  for (const { slug, kit, notes } of views) {
    mkdirSync(join(output, "kits", slug), { recursive: true });
    writeFileSync(
      join(output, "kits", slug, "kit-data.js"),
      `(self.leaflightKits??={})[${JSON.stringify(slug)}]=self.leaflightKit=${JSON.stringify({ kit, cautions, notes })};\n`,
    );
  }
}
