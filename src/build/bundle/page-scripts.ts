import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build, type Plugin } from "esbuild";
import type { Library } from "../library.ts";
import { RUNTIME, templateModule } from "./template-code.ts";
import { wordsPlugin } from "./words-plugin.ts";

const KIT_PARTS = [
  "book",
  "cautions",
  "figures",
  "measure",
  "pattern",
  "preparation",
  "steps",
  "supplies",
  "tacks",
  "warnings",
  "window",
].map((part) => `parts/kit/${part}.njk`);

/** The templates that the pages' scripts fill again for a reader's book. */
export const FILLED = { kit: KIT_PARTS, packet: ["pages/packet.njk", "pages/large.njk"] } as const;

/** Page scripts by the name they get below assets/scripts, each with the templates that it fills again. */
const SCRIPTS = [
  { name: "kit", entry: "kit/kit-entry.ts", templates: FILLED.kit },
  { name: "files", entry: "kit/files-entry.ts", templates: [] },
  { name: "packet", entry: "packet/packet-entry.ts", templates: FILLED.packet },
  { name: "bench", entry: "bench/bench-entry.ts", templates: [] },
  { name: "finder", entry: "finder/finder-entry.ts", templates: [] },
  { name: "offline", entry: "offline/offline-entry.ts", templates: [] },
] as const;

/** Bundles the page scripts with the templates they fill, and writes each kit's data beside its page. */
export async function bundlePageScripts(
  base: string,
  output: string,
  { views, cautions, words, settings }: Library,
): Promise<void> {
  const source = join(import.meta.dirname, "../../page");
  for (const { name, entry, templates } of SCRIPTS) {
    await build({
      entryPoints: { [name]: join(source, entry) },
      outdir: join(output, "assets/scripts"),
      bundle: true,
      format: "iife",
      target: "es2022",
      minify: true,
      charset: "utf8",
      logLevel: "warning",
      plugins: [wordsPlugin(words, settings.language), templatesPlugin(join(base, "layouts"), source, templates)],
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

/** Gives `leaflight:templates` the templates as functions, so that no page needs a template engine. */
function templatesPlugin(layouts: string, source: string, templates: readonly string[]): Plugin {
  return {
    name: "templates",
    setup: (setup) => {
      setup.onResolve({ filter: /^leaflight:templates$/ }, ({ path }) => ({ path, namespace: "leaflight" }));
      setup.onResolve({ filter: new RegExp(`^${RUNTIME}$`) }, () => ({
        path: join(source, "kit/template-runtime.ts"),
      }));
      setup.onLoad({ filter: /.*/, namespace: "leaflight" }, () => ({
        contents: templateModule(templates, (path) => readFileSync(join(layouts, path), "utf8")),
        loader: "js",
      }));
    },
  };
}
