import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build, type Plugin } from "esbuild";
import nunjucks from "nunjucks";
import type { Caution } from "./cautions.ts";
import type { KitView } from "./kit-view.ts";

/** Page scripts by the name they get below assets/scripts, each with the folders of templates that it fills again. */
const SCRIPTS = [
  { name: "kit", entry: "kit-entry.ts", folders: ["parts", "parts/kit"] },
  { name: "packet", entry: "packet-entry.ts", folders: ["parts", "pages"] },
  { name: "bench", entry: "bench-entry.ts", folders: [] },
  { name: "finder", entry: "finder-entry.ts", folders: [] },
  { name: "offline", entry: "offline-entry.ts", folders: [] },
] as const;

/** Bundles the page scripts with the templates they fill, and writes each kit's data beside its page. */
export async function bundlePageScripts(
  base: string,
  output: string,
  views: readonly KitView[],
  cautions: readonly Caution[],
): Promise<void> {
  const source = join(import.meta.dirname, "../page");
  for (const { name, entry, folders } of SCRIPTS) {
    await build({
      entryPoints: { [name]: join(source, entry) },
      outdir: join(output, "assets/scripts"),
      bundle: true,
      format: "iife",
      target: "es2022",
      minify: true,
      charset: "utf8",
      logLevel: "warning",
      plugins: [templatesPlugin(join(base, "layouts"), folders)],
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

/** Gives `leaflight:templates` the precompiled templates, so that no page needs a compiler. */
function templatesPlugin(layouts: string, folders: readonly string[]): Plugin {
  return {
    name: "templates",
    setup: (setup) => {
      setup.onResolve({ filter: /^leaflight:templates$/ }, ({ path }) => ({ path, namespace: "leaflight" }));
      setup.onLoad({ filter: /.*/, namespace: "leaflight" }, () => ({
        contents: precompiled(layouts, folders),
        loader: "js",
      }));
    },
  };
}

function precompiled(layouts: string, folders: readonly string[]): string {
  return folders
    .flatMap((folder) =>
      readdirSync(join(layouts, folder))
        .filter((file) => file.endsWith(".njk"))
        .sort()
        .map((file) =>
          nunjucks.precompileString(readFileSync(join(layouts, folder, file), "utf8"), {
            name: `${folder}/${file}`,
            env: new nunjucks.Environment(null, { autoescape: true }),
          }),
        ),
    )
    .join("\n");
}
