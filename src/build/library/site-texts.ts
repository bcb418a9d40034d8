import { join } from "node:path";
import type { z } from "zod";
import { catalogueFile } from "../../input/catalogue/read-catalogue.ts";
import { catalogueMatter } from "../../input/catalogue/schema.ts";
import { cautionList } from "../../input/cautions/schema.ts";
import { classMatter } from "../../input/class/schema.ts";
import { contentPath } from "../../input/files/content-folder.ts";
import { toldOfFile } from "../../input/files/file-message.ts";
import { foldersIn, pathBelow } from "../../input/files/folders.ts";
import { readFrontMatter } from "../../input/files/front-matter.ts";
import { readText } from "../../input/files/read-file.ts";
import { readEach } from "../../input/files/readings.ts";
import { isThere } from "../../input/files/real-path.ts";
import type { FileKind } from "../../input/files/site-file.ts";
import { readYaml } from "../../input/files/yaml.ts";
import { frontMatter } from "../../input/kit/schema.ts";
import { settingsFile, siteSettings } from "../../input/settings/settings.ts";
import type { AuthoredText } from "../../input/texts/authored-text.ts";
import { fieldTexts } from "../../input/texts/field-texts.ts";
import { pageTexts } from "../../input/texts/page-texts.ts";
import * as say from "../../words/messages.ts";

/** A file of texts as it is read here. */
interface Source {
  readonly file: string;
  readonly home?: string;
  readonly kind: FileKind;
  readonly schema: z.core.$ZodType;
  readonly form: "page" | "fields";
  readonly whole: string;
}

/** The texts of settings, cautions and the catalogue in the project `base`. What cannot be read is told where it is read for use. */
export function sharedTexts(base: string, cautionsFile: string): readonly AuthoredText[] {
  const sources: Source[] = [
    { file: settingsFile(), kind: "settings", schema: siteSettings, form: "fields", whole: say.checkFieldSettings() },
    { file: cautionsFile, kind: "cautions", schema: cautionList, form: "fields", whole: say.checkFieldCautions() },
    { file: catalogueFile(), kind: "page", schema: catalogueMatter, form: "page", whole: say.checkFieldFrontMatter() },
  ];
  return textsIn(base, sources);
}

/** The texts of a kit's folder. */
export function kitTexts(base: string, folder: string): readonly AuthoredText[] {
  return textsIn(base, [pageIn(base, folder, frontMatter)]);
}

/** The texts of all classes. */
export function classTexts(base: string): readonly AuthoredText[] {
  const folders = foldersIn(join(base, contentPath("classes")), base);
  return textsIn(
    base,
    folders.map((folder) => pageIn(base, folder, classMatter)),
  );
}

function textsIn(base: string, sources: readonly Source[]): readonly AuthoredText[] {
  return readEach(sources, (source) => textsOf(base, source)).made.flat();
}

function pageIn(base: string, folder: string, schema: z.core.$ZodType): Source {
  return {
    file: pathBelow(base, join(folder, "index.md")),
    home: pathBelow(base, folder),
    kind: "page",
    schema,
    form: "page",
    whole: say.checkFieldFrontMatter(),
  };
}

function textsOf(base: string, { file, home, kind, schema, form, whole }: Source): AuthoredText[] {
  if (!isThere(base, file)) return [];
  const text = toldOfFile(() => readText({ base, file, kind, home }));
  if (form === "fields") return fieldTexts({ file, yaml: readYaml(file, text, 0, whole), schema, whole });
  const fields = fieldTexts({ file, yaml: readFrontMatter(file, text), schema, whole });
  return [...fields, ...pageTexts(file, text, say.checkFieldPageText())];
}
