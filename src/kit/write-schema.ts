import { writeFileSync } from "node:fs";
import { settingsSchemaText } from "../settings/settings.ts";
import { schemaText } from "./schema.ts";

/** `npm run schema`: writes the JSON Schemas beside the kits and the settings, where editors look for them. */
writeFileSync("content/kits/kit.schema.json", schemaText());
writeFileSync("content/site.schema.json", settingsSchemaText());
