import { writeFileSync } from "node:fs";
import { classSchemaText } from "../input/class/schema.ts";
import { schemaText } from "../input/kit/schema.ts";
import { settingsSchemaText } from "../input/settings/settings.ts";

/** `npm run schema`: writes the JSON Schemas beside kits, classes and settings, where editors look for them. */
writeFileSync("content/kits/kit.schema.json", schemaText());
writeFileSync("content/classes/class.schema.json", classSchemaText());
writeFileSync("content/site.schema.json", settingsSchemaText());
