import * as say from "../../words/messages.ts";
import { KitError } from "./message.ts";
import { readYaml, type YamlFile } from "./yaml.ts";

const BLOCK = /^---[ \t]*\r?\n([\s\S]*?)\r?\n---[ \t]*(?:\r?\n|$)/;

/** What stands below the front matter, and how many lines are above it. */
export function afterFrontMatter(text: string): { readonly body: string; readonly above: number } {
  const plain = text.replaceAll("\r\n", "\n");
  const begin = BLOCK.exec(plain)?.[0].length ?? 0;
  return { body: plain.slice(begin), above: plain.slice(0, begin).split("\n").length - 1 };
}

/** The YAML between the two `---` lines of a file, as it is written, and how many letters are above it; undefined where there are no such lines. */
export function frontMatterIn(text: string): { readonly yaml: string; readonly from: number } | undefined {
  const match = BLOCK.exec(text);
  return match ? { yaml: match[1]!, from: match[0].indexOf("\n") + 1 } : undefined;
}

/** The YAML between the two `---` lines of a file. @throws KitError when there is none or it is not YAML. */
export function readFrontMatter(file: string, text: string): YamlFile {
  const block = frontMatterIn(text);
  const field = say.checkFieldFrontMatter();
  if (block) return readYaml(file, block.yaml, 1, field);
  const advice = {
    given: say.checkNoFrontMatter(),
    allowed: say.checkFrontMatterBlock(),
    remedy: say.checkStartFrontMatter(),
  };
  throw new KitError([{ file, line: 1, column: 1, field, ...advice }]);
}
