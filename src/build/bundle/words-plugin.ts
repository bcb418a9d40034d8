import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Plugin } from "esbuild";
import type { Catalogue } from "../../words/message.ts";
import { functionName, spokenModule } from "./messages-module.ts";

/** A module of ours, and what it is called with where it says a message without arguments. */
const MODULES = /[\\/]src[\\/](core|input|output|page|words)[\\/].*\.ts$/;
const SAID = /\bsay\.(\w+)\(\)/g;

/**
 * Gives a page's script the words of the site's language in place of messages.ts: only the messages that the script uses stay
 * in it. A message without arguments stands as text where it is said, which is less to load than a function and its call.
 */
export function wordsPlugin(words: Catalogue, language: string): Plugin {
  const texts = plainTexts(words);
  return {
    name: "words",
    setup: (setup) => {
      setup.onLoad({ filter: /[\\/]words[\\/]messages\.ts$/ }, () => ({
        contents: spokenModule(words, language),
        loader: "js",
        resolveDir: join(import.meta.dirname, "../../words"),
      }));
      setup.onLoad({ filter: MODULES }, ({ path }) => ({
        contents: readFileSync(path, "utf8").replace(SAID, (call, name: string) => texts.get(name) ?? call),
        loader: "ts",
      }));
    },
  };
}

/** Messages without arguments as literals of a script, by the names of their functions. */
function plainTexts(words: Catalogue): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(words).flatMap(([id, pattern]) => {
      const [text, ...more] = pattern;
      return typeof text === "string" && more.length === 0 ? [[functionName(id), JSON.stringify(text)]] : [];
    }),
  );
}
