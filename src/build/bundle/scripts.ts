import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { type RoundData, roundData, roundScript } from "../../output/data/round-data.ts";
import type { Library } from "../library.ts";
import { wordsPlugin } from "./words-plugin.ts";

/** A script of the site after bundling. */
export interface Bundle {
  /** Path below the output folder. */
  readonly path: string;
  readonly bytes: number;
}

/** Scripts by the name they get below assets/scripts: the first is in every kit page, the other is fetched on demand. */
const ENTRIES = { "turn-round": "entry.ts", "round-view": "main.ts" };

/**
 * Bundles the view's scripts into `assets/scripts` and writes each kit's `round-data.js` from its pattern.json.
 * Classic scripts, because a module does not load from a page opened from the disk; names and bytes are the same every time.
 */
export async function bundleScripts(output: string, { words, settings }: Library): Promise<Bundle[]> {
  const source = join(import.meta.dirname, "../../page/view3d");
  const { metafile } = await build({
    entryPoints: Object.fromEntries(Object.entries(ENTRIES).map(([name, file]) => [name, join(source, file)])),
    outdir: join(output, "assets/scripts"),
    bundle: true,
    format: "iife",
    target: "es2022",
    minify: true,
    metafile: true,
    charset: "utf8",
    logLevel: "warning",
    plugins: [wordsPlugin(words, settings.language)],
  });
  const kits = join(output, "kits");
  for (const kit of existsSync(kits) ? readdirSync(kits) : []) writeRoundData(join(output, "kits", kit));
  return Object.keys(ENTRIES).map((name) => {
    const made = Object.entries(metafile.outputs).find(([path]) => path.endsWith(`/${name}.js`));
    return { path: `assets/scripts/${name}.js`, bytes: made?.[1].bytes ?? 0 };
  });
}

function writeRoundData(folder: string): void {
  const published: RoundData = JSON.parse(readFileSync(join(folder, "pattern.json"), "utf8"));
  writeFileSync(join(folder, "round-data.js"), roundScript(roundData(published)));
}
