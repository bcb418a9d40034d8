import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { GuidePage, GuidePassage } from "../../core/guide/guide-page.ts";
import { REFERENCES, type ReferenceName } from "../../core/guide/reference.ts";
import * as say from "../../words/messages.ts";
import { readFrontMatter } from "../files/front-matter.ts";
import { KitError } from "../files/message.ts";
import { type Readings, readEach } from "../files/readings.ts";
import { schemaMessages } from "../files/schema-messages.ts";
import { SOURCE } from "../words/read-words.ts";
import { guideJsonSchema, guideMatter } from "./schema.ts";

/** Where the guide stands below the project: a folder for each language. */
export const GUIDE_FOLDER = "content/guide";

/** A line that says where a table of keys stands: `<!-- reference: kit -->`. */
const DIRECTIVE = /^<!--\s*reference:\s*(\S*)\s*-->$/;

/**
 * The guide of a language in the project `base`, in its order. A page that the language's folder has not is the one of the
 * language without its region, or the English one. A page that cannot be read stops none of the others.
 */
export function readGuide(base: string, language: string): Readings<GuidePage> {
  const languages = [...new Set([language, language.split("-")[0]!, SOURCE])];
  const names = [...new Set(languages.flatMap((one) => pagesIn(base, one)))].sort();
  const sources = names.map((name) => ({
    name,
    language: languages.find((one) => pagesIn(base, one).includes(name))!,
  }));
  const { made, messages } = readEach(sources, (source) => readPage(base, source));
  return { made: made.toSorted((a, b) => a.order - b.order).map(({ page }) => page), messages };
}

function pagesIn(base: string, language: string): string[] {
  const folder = join(base, GUIDE_FOLDER, language);
  const files = existsSync(folder) ? readdirSync(folder) : [];
  return files.filter((file) => file.endsWith(".md")).map((file) => file.slice(0, -".md".length));
}

function readPage(
  base: string,
  { name, language }: { readonly name: string; readonly language: string },
): { readonly order: number; readonly page: GuidePage } {
  const file = `${GUIDE_FOLDER}/${language}/${name}.md`;
  const text = readFileSync(join(base, file), "utf8")
    .replaceAll("\r\n", "\n")
    .replace(/^\uFEFF/, "");
  const yaml = readFrontMatter(file, text);
  const parsed = guideMatter.safeParse(yaml.value);
  if (!parsed.success) {
    const checked = { file, yaml, schema: guideJsonSchema(), whole: say.checkFieldFrontMatter() };
    throw new KitError(schemaMessages(checked, parsed.error.issues));
  }
  const { order, title, summary, kind } = parsed.data;
  const lines = text.split("\n");
  const begin = lines.indexOf("---", 1) + 1;
  return { order, page: { name, title, summary, kind, language, passages: passagesOf(file, lines, begin) } };
}

/** The lines after the front matter, from the line with this number on. */
function passagesOf(file: string, lines: readonly string[], begin: number): GuidePassage[] {
  const passages: GuidePassage[] = [];
  let begun: string[] = [];
  const end = (): void => {
    if (begun.join("").trim() !== "") passages.push({ markdown: begun.join("\n") });
    begun = [];
  };
  for (const [i, line] of lines.slice(begin).entries()) {
    const [, name] = DIRECTIVE.exec(line.trim()) ?? [];
    if (name === undefined) begun.push(line);
    else {
      end();
      passages.push({ reference: referenceNamed(name, file, begin + i + 1) });
    }
  }
  end();
  return passages;
}

function referenceNamed(name: string, file: string, line: number): ReferenceName {
  const known = REFERENCES.find((one) => one === name);
  if (known !== undefined) return known;
  const advice = {
    given: say.checkGiven({ value: JSON.stringify(name) }),
    allowed: say.guideReferences({ names: REFERENCES.join(", ") }),
    remedy: say.frontCorrectName(),
  };
  throw new KitError([{ file, line, column: 1, field: say.guideReferenceField(), ...advice }]);
}
