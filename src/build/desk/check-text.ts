import { classJsonSchema, classMatter } from "../../input/class/schema.ts";
import { decodeText } from "../../input/files/decode.ts";
import { FileError } from "../../input/files/file-error.ts";
import { fileMessage } from "../../input/files/file-message.ts";
import { readFrontMatter } from "../../input/files/front-matter.ts";
import { KitError, type KitMessage } from "../../input/files/message.ts";
import { type JsonSchema, schemaMessages } from "../../input/files/schema-messages.ts";
import { FILE_LIMITS, MB } from "../../input/files/site-file.ts";
import { readYaml, type YamlFile } from "../../input/files/yaml.ts";
import { frontMatter, kitJsonSchema } from "../../input/kit/schema.ts";
import { settingsJsonSchema, siteSettings } from "../../input/settings/settings.ts";
import { readDelimited } from "../../input/tables/delimited.ts";
import * as say from "../../words/messages.ts";
import type { DeskFile } from "./desk-file.ts";

/** What is wrong with a text before it is written: what would keep any reader from it, and what its schema does not allow. */
export function checkText(source: DeskFile, text: string): readonly KitMessage[] {
  try {
    checkBytes(source, text);
    return messagesOf(source, text);
  } catch (error) {
    if (error instanceof KitError) return error.messages;
    if (error instanceof FileError) return [fileMessage(error)];
    throw error;
  }
}

/** @throws FileError */
function checkBytes(source: DeskFile, text: string): void {
  const bytes = Buffer.from(text, "utf8");
  const most = FILE_LIMITS[source.kind] * MB;
  if (bytes.length > most) throw new FileError(source, { kind: "too-large", size: bytes.length, most });
  const decoded = decodeText(bytes);
  if ("fault" in decoded) throw new FileError(source, decoded.fault);
}

/** @throws KitError */
function messagesOf({ states, file }: DeskFile, text: string): readonly KitMessage[] {
  if (states === "books") {
    readDelimited(file, text);
    return [];
  }
  if (states === "settings") {
    const whole = say.checkFieldSettings();
    return bySchema(file, readYaml(file, text, 0, whole), siteSettings, settingsJsonSchema(), whole);
  }
  const yaml = readFrontMatter(file, text);
  const whole = say.checkFieldFrontMatter();
  return states === "kit" ? bySchema(file, yaml, frontMatter, kitJsonSchema(), whole) : byClass(file, yaml, whole);
}

/** A class may take over what it leaves out from another. */
function byClass(file: string, yaml: YamlFile, whole: string): readonly KitMessage[] {
  const { value } = yaml;
  const isWhole = typeof value !== "object" || value === null || !("from" in value);
  return isWhole ? bySchema(file, yaml, classMatter, classJsonSchema(), whole) : [];
}

function bySchema(
  file: string,
  yaml: YamlFile,
  schema: typeof frontMatter | typeof classMatter | typeof siteSettings,
  described: JsonSchema,
  whole: string,
): readonly KitMessage[] {
  const parsed = schema.safeParse(yaml.value);
  return parsed.success ? [] : schemaMessages({ file, yaml, schema: described, whole }, parsed.error.issues);
}
