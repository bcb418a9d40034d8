import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { z } from "zod";
import { cautionList } from "../../input/cautions/schema.ts";
import { classMatter } from "../../input/class/schema.ts";
import { foldersIn, pathBelow } from "../../input/files/folders.ts";
import { readFrontMatter } from "../../input/files/front-matter.ts";
import { readEach } from "../../input/files/readings.ts";
import { readYaml } from "../../input/files/yaml.ts";
import { frontMatter } from "../../input/kit/schema.ts";
import { SETTINGS_FILE, siteSettings } from "../../input/settings/settings.ts";
import type { AuthoredText } from "../../input/texts/authored-text.ts";
import { fieldTexts } from "../../input/texts/field-texts.ts";
import { pageTexts } from "../../input/texts/page-texts.ts";
import * as say from "../../words/messages.ts";

/** A file of texts as it is read here. */
interface Source {
  readonly file: string;
  readonly schema: z.core.$ZodType;
  readonly form: "page" | "fields";
  readonly whole: string;
}

/** Every text that authors wrote for the site in the project `base`. What cannot be read is told where it is read for use. */
export function siteTexts(base: string, cautionsFile: string): readonly AuthoredText[] {
  const sources: Source[] = [
    { file: SETTINGS_FILE, schema: siteSettings, form: "fields", whole: say.checkFieldSettings() },
    { file: cautionsFile, schema: cautionList, form: "fields", whole: say.checkFieldCautions() },
    ...pagesIn(base, "content/kits", frontMatter),
    ...pagesIn(base, "content/classes", classMatter),
  ];
  return readEach(sources, (source) => textsOf(base, source)).made.flat();
}

function pagesIn(base: string, folder: string, schema: z.core.$ZodType): Source[] {
  return foldersIn(join(base, folder)).map((one) => ({
    file: pathBelow(base, join(one, "index.md")),
    schema,
    form: "page",
    whole: say.checkFieldFrontMatter(),
  }));
}

function textsOf(base: string, { file, schema, form, whole }: Source): AuthoredText[] {
  const path = join(base, file);
  if (!existsSync(path)) return [];
  const text = readFileSync(path, "utf8").replace(/^\uFEFF/, "");
  if (form === "fields") return fieldTexts({ file, yaml: readYaml(file, text, 0, whole), schema, whole });
  const fields = fieldTexts({ file, yaml: readFrontMatter(file, text), schema, whole });
  return [...fields, ...pageTexts(file, text, say.checkFieldPageText())];
}
