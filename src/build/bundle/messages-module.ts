import { argumentsOf, type WordsEntry } from "../../input/words/fluent.ts";
import type { Catalogue, MessageParts } from "../../words/message.ts";

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

/**
 * The same functions for a page's script, with the words of one language in them; what a page does not use is left out of it.
 * They are written as code, not as patterns to be filled, because that is what a page loads least of.
 */
export function spokenModule(words: Catalogue, language: string): string {
  return [
    'import { setLanguage } from "./language.ts";',
    'import { chosen, written } from "./message.ts";',
    `setLanguage(${JSON.stringify(language)});`,
    ...Object.entries(words).map(([id, pattern]) => `export const ${functionName(id)} = (a) => ${codeOf(pattern)};`),
  ].join("\n");
}

/** A pattern as an expression of its text; `a` holds the arguments. */
function codeOf(pattern: MessageParts): string {
  const pieces = pattern.map((piece) => {
    if (typeof piece === "string") return literal(piece);
    if ("arg" in piece) return `\${written(a.${piece.arg})}`;
    const choices = Object.entries(piece.of).filter(([, one]) => one !== piece.other);
    const of = choices.map(([key, one]) => `${JSON.stringify(key)}: ${codeOf(one)}`);
    return `\${chosen(a.${piece.by}, { ${of.join(", ")} }, ${codeOf(piece.other)})}`;
  });
  return `\`${pieces.join("")}\``;
}

/** Text as it stands in a template literal. */
function literal(text: string): string {
  return text.replace(/[`\\]|\$(?=\{)/g, "\\$&");
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
function inEnglish(pattern: MessageParts): string {
  return pattern
    .map((piece) => {
      if (typeof piece === "string") return piece;
      if ("arg" in piece) return `{${piece.arg}}`;
      return Object.values(piece.of).map(inEnglish).join("|");
    })
    .join("");
}
