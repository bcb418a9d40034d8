import { join } from "node:path";
import type { Plugin } from "esbuild";
import type { Catalogue } from "../../words/message.ts";
import { spokenModule } from "./messages-module.ts";

/** Gives a page's script the words of the site's language in place of messages.ts: only the messages that the script uses stay in it. */
export function wordsPlugin(words: Catalogue, language: string): Plugin {
  return {
    name: "words",
    setup: (setup) => {
      setup.onLoad({ filter: /[\\/]words[\\/]messages\.ts$/ }, () => ({
        contents: spokenModule(words, language),
        loader: "js",
        resolveDir: join(import.meta.dirname, "../../words"),
      }));
    },
  };
}
