import { writeFileSync } from "node:fs";
import { schemaText } from "./schema.ts";

/** `npm run schema`: writes the JSON Schema beside the kits, where editors look for it. */
writeFileSync("content/kits/kit.schema.json", schemaText());
