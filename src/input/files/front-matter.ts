import { type Alias, type Document, isMap, isNode, isPair, isScalar, LineCounter, parseDocument, visit } from "yaml";
import { KitError, type KitMessage } from "./message.ts";

export interface Place {
  readonly line: number;
  readonly column: number;
}

/** YAML with places in its file. */
export interface YamlFile {
  readonly value: unknown;
  /** Place of a field, or of the nearest field around it that exists; of the key itself with `key`. */
  readonly placeOf: (path: readonly PropertyKey[], key?: string) => Place;
}

/** The YAML between the two `---` lines, and the Markdown after them. */
export interface FrontMatterFile extends YamlFile {
  readonly body: string;
}

/** @throws KitError when there is no front matter or it is not YAML. */
export function readFrontMatter(file: string, text: string): FrontMatterFile {
  const match = /^---[ \t]*\r?\n([\s\S]*?)\r?\n---[ \t]*(?:\r?\n|$)/.exec(text.replace(/^\uFEFF/, ""));
  if (!match) {
    throw new KitError([
      message(
        file,
        { line: 1, column: 1 },
        "no front matter",
        "a block of YAML between two lines of ---",
        "start the file with ---, the kit's fields, and --- again",
      ),
    ]);
  }
  return {
    ...readYaml(file, match[1]!, 1),
    body: text.slice(match[0].length + (text.startsWith("\uFEFF") ? 1 : 0)),
  };
}

/** `above` is the number of the file's lines before the YAML, `whole` what all of it is called. @throws KitError when it is not YAML. */
export function readYaml(file: string, yaml: string, above: number, whole = "front matter"): YamlFile {
  const lines = new LineCounter();
  const document = parseDocument(yaml, { lineCounter: lines });
  const placeAt = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { line: line + above, column: col };
  };
  const broken = (offset: number, given: string): KitError => {
    const about = message(file, placeAt(offset), given, "well-formed YAML", "correct the YAML here");
    return new KitError([{ ...about, field: whole }]);
  };
  const [error] = document.errors;
  if (error) throw broken(error.pos[0], yamlAdvice(error.message.split("\n")[0]!.replace(/ at line \d+.*$/, "")));
  const alias = unresolvedAlias(document);
  if (alias) throw broken(alias.range![0], `an alias without an anchor before it: *${alias.source}`);
  return {
    value: document.toJS() ?? {},
    placeOf: (path, key) => placeAt(offsetOf(document, path, key)),
  };
}

function offsetOf(document: Document, path: readonly PropertyKey[], key: string | undefined): number {
  let node: unknown = document.contents;
  let offset = 0;
  for (const step of key === undefined ? path : [...path, key]) {
    const pair = isMap(node)
      ? node.items.find((item) => isPair(item) && isScalar(item.key) && String(item.key.value) === String(step))
      : undefined;
    if (pair && isNode(pair.key) && pair.key.range) offset = pair.key.range[0];
    const next: unknown = pair
      ? pair.value
      : isNode(node) && "get" in node
        ? (node as { get(key: unknown, keep: boolean): unknown }).get(step, true)
        : undefined;
    if (!isNode(next)) break;
    if (!pair && next.range) offset = next.range[0];
    node = next;
  }
  return offset;
}

/** What a YAML parser's words usually mean in a kit. */
function yamlAdvice(words: string): string {
  if (/compact mapping|Nested mapping/i.test(words))
    return `${words} (is this line indented like its neighbours? a text with a colon needs quotes: title: "Fish: a first piece")`;
  if (/Comments must be separated/i.test(words)) return `${words} (# starts a comment: write ids in quotes, ["#eye"])`;
  return words;
}

function unresolvedAlias(document: Document): Alias | undefined {
  let found: Alias | undefined;
  visit(document, {
    Alias: (_, alias) => {
      if (alias.resolve(document)) return undefined;
      found = alias;
      return visit.BREAK;
    },
  });
  return found;
}

function message(file: string, place: Place, given: string, allowed: string, remedy: string): KitMessage {
  return { file, ...place, field: "front matter", given, allowed, remedy };
}
