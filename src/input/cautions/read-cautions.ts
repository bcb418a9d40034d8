import { type Caution, OCCASIONS } from "../../core/plan/caution.ts";
import * as say from "../../words/messages.ts";
import { sharedPaths } from "../files/content-folder.ts";
import { toldOfFile } from "../files/file-message.ts";
import { KitError } from "../files/message.ts";
import { readText } from "../files/read-file.ts";
import { isThere } from "../files/real-path.ts";
import { fieldIn, schemaMessages } from "../files/schema-messages.ts";
import { readYaml } from "../files/yaml.ts";
import { SOURCE } from "../words/read-words.ts";
import { cautionList, cautionsJsonSchema } from "./schema.ts";

/** Where the cautions of a language stand below the project. */
export function cautionsFile(base: string, language: string): string {
  const files = [language, language.split("-")[0]!, SOURCE].flatMap((folder) =>
    sharedPaths(`words/${folder}/cautions.yaml`),
  );
  return files.find((one) => isThere(base, one)) ?? files.at(-1)!;
}

/**
 * The cautions of a language in the project `base`: of its own folder of words, of the language without its region, or the
 * English ones. @throws KitError with one message for each thing wrong
 */
export function readCautions(base: string, language: string): Caution[] {
  const file = cautionsFile(base, language);
  const whole = say.checkFieldCautions();
  const text = isThere(base, file) ? toldOfFile(() => readText({ base, file, kind: "cautions" })) : "";
  const yaml = readYaml(file, text, 0, whole);
  const parsed = cautionList.safeParse(yaml.value);
  if (!parsed.success) {
    const checked = { file, yaml, schema: cautionsJsonSchema(), whole };
    throw new KitError(schemaMessages(checked, parsed.error.issues));
  }
  const missing = OCCASIONS.find((occasion) => !parsed.data.some(({ when }) => when === occasion));
  if (missing !== undefined) {
    const given = say.frontCautionMissing({ when: missing });
    const allowed = say.frontCautionOccasions({ all: OCCASIONS.join(", ") });
    throw new KitError([{ file, ...yaml.placeOf([]), field: whole, given, allowed, remedy: say.frontCautionWrite() }]);
  }
  const ids = parsed.data.map(({ id }) => id);
  const twice = ids.findIndex((id, i) => ids.indexOf(id) !== i);
  if (twice < 0) return parsed.data;
  const path = [twice, "id"];
  const given = say.frontCautionTwice({ id: ids[twice]! });
  const advice = { given, allowed: say.frontCautionIds(), remedy: say.frontRename() };
  throw new KitError([{ file, ...yaml.placeOf(path), field: fieldIn(whole, path), ...advice }]);
}
