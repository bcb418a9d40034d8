import { GUIDE_FIGURES, type GuidePage, type GuidePassage } from "../../core/guide/guide-page.ts";
import { REFERENCES } from "../../core/guide/reference.ts";
import * as say from "../../words/messages.ts";
import { checkAddressName } from "../files/address-name.ts";
import { sharedPaths } from "../files/content-folder.ts";
import { toldOfFile } from "../files/file-message.ts";
import { readFrontMatter } from "../files/front-matter.ts";
import { KitError, type KitMessage } from "../files/message.ts";
import { pageText } from "../files/page-text.ts";
import { entriesIn } from "../files/read-file.ts";
import { type Readings, readEach } from "../files/readings.ts";
import { schemaMessages } from "../files/schema-messages.ts";
import { SOURCE } from "../words/read-words.ts";
import { guideJsonSchema, guideMatter } from "./schema.ts";

/** A line that says where a table of keys or a drawing stands: `<!-- reference: kit -->`, `<!-- figure: measure -->`. */
const DIRECTIVE = /^<!--\s*(reference|figure):\s*(\S*)\s*-->$/;

/**
 * The guide of a language in the project `base`, in its order. A page that the language's folder has not is the one of the
 * language without its region, or the English one; the site's own comes before the program's. A page that cannot be read stops none of the others.
 */
export function readGuide(base: string, language: string): Readings<GuidePage> {
  const languages = [...new Set([language, language.split("-")[0]!, SOURCE])];
  const listed = readEach(languages, (one) => pagesIn(base, one));
  const sources = Map.groupBy(listed.made.flat(), ({ name }) => name);
  const { made, messages } = readEach([...sources.values()], ([nearest]) => readPage(base, nearest!));
  const pages = made.toSorted((a, b) => a.order - b.order || (a.page.name < b.page.name ? -1 : 1));
  return { made: pages.map(({ page }) => page), messages: [...listed.messages, ...messages] };
}

/** A page's file: its name becomes an address. */
interface PageFile {
  readonly name: string;
  readonly language: string;
  /** Below the project. */
  readonly file: string;
}

function pagesIn(base: string, language: string): PageFile[] {
  return sharedPaths(`guide/${language}`).flatMap((folder) =>
    toldOfFile(() => entriesIn(base, folder))
      .filter((entry) => entry.name.endsWith(".md"))
      .map((entry) => ({ name: entry.name.slice(0, -".md".length), language, file: `${folder}/${entry.name}` })),
  );
}

function readPage(
  base: string,
  { name, language, file }: PageFile,
): { readonly order: number; readonly page: GuidePage } {
  checkAddressName("page", name, { file, field: say.fileField({ kind: "page" }), remedy: say.guideRename() });
  const text = pageText({ base, file }).replaceAll("\r\n", "\n");
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
    const [, what, name] = DIRECTIVE.exec(line.trim()) ?? [];
    if (name === undefined) begun.push(line);
    else {
      end();
      const place = { file, line: begin + i + 1, column: 1 };
      if (what === "figure")
        passages.push({ figure: oneOf(GUIDE_FIGURES, name, { ...place, field: say.guideFigureField() }) });
      else passages.push({ reference: oneOf(REFERENCES, name, { ...place, field: say.guideReferenceField() }) });
    }
  }
  end();
  return passages;
}

/** What a directive names. @throws KitError where there is none of that name */
function oneOf<T extends string>(
  known: readonly T[],
  name: string,
  place: Pick<KitMessage, "file" | "line" | "column" | "field">,
): T {
  const found = known.find((one) => one === name);
  if (found !== undefined) return found;
  const given = say.checkGiven({ value: JSON.stringify(name) });
  const allowed = say.guideDirectives({ names: known.join(", ") });
  throw new KitError([{ ...place, given, allowed, remedy: say.frontCorrectName() }]);
}
