import { join } from "node:path";
import { build } from "esbuild";
import type { Library } from "../library/library.ts";
import { CLASSIC_SCRIPT } from "./classic-script.ts";
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
 * Bundles the view's scripts into `assets/scripts`.
 * Names and bytes are the same every time.
 */
export async function bundleScripts(output: string, { words, settings }: Library): Promise<Bundle[]> {
  const source = join(import.meta.dirname, "../../page/view3d");
  const { metafile } = await build({
    entryPoints: Object.fromEntries(Object.entries(ENTRIES).map(([name, file]) => [name, join(source, file)])),
    outdir: join(output, "assets/scripts"),
    ...CLASSIC_SCRIPT,
    metafile: true,
    plugins: [wordsPlugin(words, settings.language)],
  });
  return Object.keys(ENTRIES).map((name) => {
    const made = Object.entries(metafile.outputs).find(([path]) => path.endsWith(`/${name}.js`));
    return { path: `assets/scripts/${name}.js`, bytes: made?.[1].bytes ?? 0 };
  });
}
