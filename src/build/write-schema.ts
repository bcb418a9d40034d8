import { writeFileSync } from "node:fs";
import { classSchemaText } from "../input/class/schema.ts";
import { schemaText } from "../input/kit/schema.ts";
import { settingsSchemaText } from "../input/settings/settings.ts";
import { readWords, SOURCE } from "../input/words/read-words.ts";
import { speak } from "../words/speak.ts";

/** `npm run schema`: writes the JSON Schemas beside kits, classes and settings, where editors look for them. They are in English. */
speak(readWords(process.cwd(), SOURCE), SOURCE);
writeFileSync("content/kits/kit.schema.json", schemaText());
writeFileSync("content/classes/class.schema.json", classSchemaText());
writeFileSync("content/site.schema.json", settingsSchemaText());
