import { Composer, type CST, type Document, Lexer, type LineCounter, Parser } from "yaml";
import * as say from "../../words/messages.ts";
import { YamlFault } from "./yaml-fault.ts";

/** Lists and maps within each other; no front matter needs a tenth of it, and the parser works each level on its own stack. */
const MOST_DEPTH = 64;

/** Words and signs of a text; two hundred seats with all their figures have a fifth of them. */
const MOST_TOKENS = 100_000;

/** Texts that look like days or truth of another kind stay texts, `<<` is a key like others, and tags are told of elsewhere. */
const OPTIONS = {
  version: "1.2",
  schema: "core",
  resolveKnownTags: false,
  // With many keys the package compares each with each: yaml-check.ts looks them up.
  uniqueKeys: false,
  stringKeys: true,
  prettyErrors: false,
} as const;

/** The one document of a YAML text (version 1.2); `lines` learns where its lines begin. @throws YamlFault */
export function parseYaml(yaml: string, lines: LineCounter): Document {
  const [document, second] = atParser(() => [
    ...new Composer(OPTIONS).compose(tokensOf(yaml, lines), true, yaml.length),
  ]);
  const [error] = document!.errors;
  if (error) throw new YamlFault(error.pos[0], yamlFault(error.message));
  if (second) throw new YamlFault(second.range?.[0] ?? 0, say.checkYamlDocuments());
  return document as Document;
}

/** What the package throws in place of reporting it is a fault of the text, too. @throws YamlFault */
export function atParser<T>(parse: () => T): T {
  try {
    return parse();
  } catch (error) {
    if (error instanceof YamlFault || !(error instanceof Error)) throw error;
    throw new YamlFault(0, yamlFault(error.message));
  }
}

/** The parts of a text, as long as they are not nested too deeply. */
function* tokensOf(yaml: string, lines: LineCounter): Generator<CST.Token, void> {
  const parser = new Parser(lines.addNewLine);
  lines.addNewLine(0);
  let count = 0;
  for (const lexeme of new Lexer().lex(yaml)) {
    yield* parser.next(lexeme);
    count += 1;
    if (count > MOST_TOKENS) throw new YamlFault(parser.offset, say.checkYamlLong({ most: MOST_TOKENS }));
    if (parser.stack.length > MOST_DEPTH) throw new YamlFault(parser.offset, say.checkYamlDepth({ most: MOST_DEPTH }));
  }
  yield* parser.end();
}

/** The parser's own words, with what they usually mean in a kit. */
function yamlFault(message: string): string {
  const fault = message
    .split("\n", 1)[0]!
    .replace(/ at line \d+.*$/, "")
    .slice(0, 200);
  if (/compact mapping|Nested mapping/i.test(fault)) return say.checkYamlNested({ fault });
  if (/Comments must be separated/i.test(fault)) return say.checkYamlHash({ fault });
  return fault;
}
