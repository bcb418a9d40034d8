import type { Catalogue } from "../../words/message.ts";
import { PSEUDO, pseudoWords } from "../../words/pseudo.ts";
import { PROJECT_CONTENT, sharedPaths } from "../files/content-folder.ts";
import { entriesIn, readText } from "../files/read-file.ts";
import { isThere } from "../files/real-path.ts";
import { argumentsOf, catalogueOf, readFluent, type WordsEntry } from "./fluent.ts";
import { WordsError } from "./words-error.ts";
import { toldOfWords } from "./words-file.ts";

/** Where the program's own words stand. */
const PROGRAM = `${PROJECT_CONTENT}/words`;

/** The file in a language's folder in which a site says some phrases its own way. */
const OWN = "own.ftl";

/** The language that every message has words in. */
export const SOURCE = "en";

/**
 * The words of a language below the project `base`: its own folder's, those of the language without its region (`en` for
 * `en-GB`), and English where a message has none. What `own.ftl` states replaces a phrase.
 * @throws WordsError where a file cannot be read, or a message is not known or has other arguments than the English one
 */
export function readWords(base: string, language: string): Catalogue {
  const source = catalogueOf(readLanguage(base, SOURCE));
  const stated = statedWords(base, language);
  checkKnown(stated, source);
  const words = { ...source, ...catalogueOf(stated) };
  return language === PSEUDO ? pseudoWords(words) : words;
}

/** What stands in place of the English words: translations first, then the site's own phrases. */
export function statedWords(base: string, language: string): WordsEntry[] {
  const folders = [...new Set([SOURCE, language.split("-")[0]!, language])];
  const translated = folders.slice(1).flatMap((folder) => readLanguage(base, folder));
  const own = folders.flatMap((folder) => sharedPaths(`words/${folder}/${OWN}`).toReversed());
  return [...translated, ...own.flatMap((file) => readFile(base, file))];
}

/** All messages of a language's own folder but the site's own phrases. @throws WordsError also where an id stands twice */
export function readLanguage(base: string, language: string): WordsEntry[] {
  const folders = language === SOURCE ? [`${PROGRAM}/${SOURCE}`] : sharedPaths(`words/${language}`);
  const entries = folders.flatMap((folder) => entriesOf(base, folder));
  if (language === SOURCE && entries.length === 0) throw noWords(folders[0]!);
  const seen = new Map<string, WordsEntry>();
  for (const entry of entries) {
    const before = seen.get(entry.id);
    if (before)
      throw wordsError(entry, "a second message of this id", `each id once (it also stands in ${before.file})`);
    seen.set(entry.id, entry);
  }
  return entries;
}

function entriesOf(base: string, folder: string): WordsEntry[] {
  const files = toldOfWords(() => entriesIn(base, folder)).map(({ name }) => name);
  const messages = files.filter((file) => file.endsWith(".ftl") && file !== OWN);
  return messages.flatMap((file) => readFile(base, `${folder}/${file}`));
}

/** Without its English words the program can say nothing else. */
function noWords(folder: string): WordsError {
  const about = { file: folder, line: undefined, column: undefined, field: "words" };
  const allowed = "the program’s English words, in the project’s own folder";
  const remedy = "run the command in the project’s folder, or put this folder back as it came";
  return new WordsError([{ ...about, given: "no words there", allowed, remedy }]);
}

function readFile(base: string, file: string): readonly WordsEntry[] {
  return isThere(base, file)
    ? readFluent(
        file,
        toldOfWords(() => readText({ base, file, kind: "words" })),
      )
    : [];
}

function checkKnown(entries: readonly WordsEntry[], source: Catalogue): void {
  for (const entry of entries) {
    const known = source[entry.id];
    if (!known) throw wordsError(entry, "a message that the program does not use", `an id of ${PROGRAM}/${SOURCE}`);
    const allowed = argumentsOf(known);
    const strange = [...argumentsOf(entry.pattern).keys()].find((name) => !allowed.has(name));
    if (strange !== undefined)
      throw wordsError(
        entry,
        `the argument $${strange}`,
        [...allowed.keys()].map((name) => `$${name}`).join(", ") || "none",
      );
  }
}

function wordsError({ file, line, id }: WordsEntry, given: string, allowed: string): WordsError {
  return new WordsError([{ file, line, column: undefined, field: id, given, allowed, remedy: "correct this message" }]);
}
