import { argumentsOf, type WordsEntry } from "../../input/words/fluent.ts";
import type { Catalogue, Pattern } from "../../words/message.ts";

/** The module of typed functions that the program says its words with: one for each message, named after its id. */
export function messagesModule(entries: readonly WordsEntry[]): string {
  return [
    "// Made by `npm run words` from content/words/en: change the messages there.",
    'import type { Word } from "./message.ts";',
    'import { say } from "./speak.ts";',
    "",
    ...entries.map(typedFunction),
    "",
  ].join("\n");
}

/** The same functions for a page's script, with the words of one language in them; what a page does not use is left out of it. */
export function spokenModule(words: Catalogue, language: string): string {
  return [
    'import { setLanguage } from "./language.ts";',
    'import { message } from "./message.ts";',
    `setLanguage(${JSON.stringify(language)});`,
    ...Object.entries(words).map(
      ([id, pattern]) => `export const ${functionName(id)} = /* @__PURE__ */ message(${JSON.stringify(pattern)});`,
    ),
  ].join("\n");
}

/** `leaf-count` → `leafCount`. */
export function functionName(id: string): string {
  return id.replace(/-+([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());
}

function typedFunction({ id, pattern, comment }: WordsEntry): string {
  const args = [...argumentsOf(pattern)];
  const told = [inEnglish(pattern), comment].filter(Boolean).join(" — ").replaceAll("*/", "* /").replaceAll("\n", " ");
  const name = functionName(id);
  const type = args.map(([arg, kind]) => `readonly ${arg}: ${kind === "number" ? "number" : "Word"}`).join("; ");
  return args.length === 0
    ? `/** ${told} */\nexport const ${name} = (): string => say(${JSON.stringify(id)});`
    : `/** ${told} */\nexport const ${name} = (args: { ${type} }): string => say(${JSON.stringify(id)}, args);`;
}

/** The message as a developer reads it: `{count} leaf|{count} leaves`. */
function inEnglish(pattern: Pattern): string {
  return pattern
    .map((piece) => {
      if (typeof piece === "string") return piece;
      if ("arg" in piece) return `{${piece.arg}}`;
      return Object.values(piece.of).map(inEnglish).join("|");
    })
    .join("");
}
