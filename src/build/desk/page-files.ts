import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { build } from "esbuild";
import { CLASSIC_SCRIPT } from "../bundle/classic-script.ts";
import { wordsPlugin } from "../bundle/words-plugin.ts";
import { facesFor } from "../fonts/faces.ts";
import { fontStyles } from "../fonts/font-styles.ts";
import type { DeskWords } from "./desk-words.ts";

const ROOT = join(import.meta.dirname, "../../..");
const PAGE = join(ROOT, "src/page/desk");
const STYLES = join(ROOT, "layouts/styles");

/** Scripts of the desk, by their names: the page's own, those of threads, and what served pages have. What they load late gets names of its own. */
const ENTRY = /^desk-(entry|worker|served)\.ts$/;

/**
 * The desk's own page: scripts, style and fonts. They are made when they are asked for, held till something of them changes, and
 * never written to a site.
 */
export class PageFiles {
  readonly #words: () => DeskWords;
  #scripts: Promise<ReadonlyMap<string, string>> | undefined;
  #style: string | undefined;

  constructor(words: () => DeskWords) {
    this.#words = words;
  }

  /** Something changed: all is made again when it is asked for next. */
  forget(): void {
    this.#scripts = undefined;
    this.#style = undefined;
  }

  /** A script by its name, `desk-entry.js`; undefined where there is none. */
  async script(name: string): Promise<string | undefined> {
    this.#scripts ??= bundle(this.#words());
    const made = this.#scripts;
    try {
      return (await made).get(name);
    } catch (error) {
      // What is wrong may be mended by the next time.
      if (this.#scripts === made) this.#scripts = undefined;
      throw error;
    }
  }

  style(): string {
    this.#style ??= [
      fontStyles("site", []),
      ...[
        "base.css",
        "site.css",
        "measure.css",
        ...readdirSync(STYLES).filter((name) => /^desk.*\.css$/.test(name)),
      ].map((name) => readFileSync(join(STYLES, name), "utf8")),
    ].join("\n");
    return this.#style;
  }

  /** A face of the site's pages; undefined where none is called so. */
  font(name: string): Uint8Array<ArrayBuffer> | undefined {
    const face = facesFor("site").find(({ file }) => file === name);
    return face && new Uint8Array(readFileSync(face.source));
  }
}

async function bundle({ words, language }: DeskWords): Promise<ReadonlyMap<string, string>> {
  const entries = readdirSync(PAGE).filter((name) => ENTRY.test(name));
  const { outputFiles } = await build({
    ...CLASSIC_SCRIPT,
    entryPoints: entries.map((name) => join(PAGE, name)),
    outdir: "assets",
    format: "esm",
    splitting: true,
    write: false,
    minify: false,
    plugins: [wordsPlugin(words, language)],
  });
  return new Map(outputFiles.map(({ path, text }) => [basename(path), text]));
}
