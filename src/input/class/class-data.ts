import * as say from "../../words/messages.ts";
import { KitError } from "../files/message.ts";
import { schemaMessages } from "../files/schema-messages.ts";
import type { YamlFile } from "../files/yaml.ts";
import { isPersonKey, personAdvice } from "./person-keys.ts";
import { type ClassMatter, classJsonSchema, classMatter } from "./schema.ts";

/** What the front matter of a class says, with what it takes over from another, by its schema. It needs no files. @throws KitError */
export function classData(file: string, yaml: YamlFile): ClassMatter {
  const parsed = classMatter.safeParse(yaml.value);
  if (parsed.success) return parsed.data;
  const refused = (key: string, path: readonly PropertyKey[]) =>
    path[0] === "seats" && isPersonKey(key) ? personAdvice(say.checkUnknownKey({ key })) : undefined;
  const checked = { file, yaml, schema: classJsonSchema(), whole: say.checkFieldFrontMatter(), refused };
  throw new KitError(schemaMessages(checked, parsed.error.issues));
}
