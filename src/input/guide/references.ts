import { z } from "zod";
import type { Reference, ReferenceName } from "../../core/guide/reference.ts";
import { catalogueMatter } from "../catalogue/schema.ts";
import { cautionList } from "../cautions/schema.ts";
import { classMatter } from "../class/schema.ts";
import { BOOK_COLUMNS } from "../class/schema-seat.ts";
import { frontMatter } from "../kit/schema.ts";
import { siteSettings } from "../settings/settings.ts";
import { guideMatter } from "./schema.ts";
import { walkSchema } from "./schema-walk.ts";

/** The schema of each file that has a table of its keys. */
export const SCHEMAS: Readonly<Record<ReferenceName, z.ZodType>> = {
  kit: frontMatter,
  class: classMatter,
  books: z.strictObject(BOOK_COLUMNS),
  settings: siteSettings,
  catalogue: catalogueMatter,
  cautions: cautionList,
  guide: guideMatter,
};

/** The keys of a file with what they are for, in the language that is spoken. */
export function referenceOf(name: ReferenceName): Reference {
  return walkSchema(SCHEMAS[name]);
}
