import type { z } from "zod";
import { FACTS } from "../files/schema-facts.ts";
import { fieldIn } from "../files/schema-messages.ts";
import type { YamlFile } from "../files/yaml.ts";
import type { AuthoredText } from "./authored-text.ts";

/** A file of fields, read as YAML, and the schema that it is checked by. */
export interface FieldsFile {
  readonly file: string;
  readonly yaml: YamlFile;
  readonly schema: z.core.$ZodType;
  /** What all of it is called. */
  readonly whole: string;
}

/** The texts of a file's fields that people read, in the order of the schema. What the schema does not know is left out. */
export function fieldTexts({ file, yaml, schema, whole }: FieldsFile): AuthoredText[] {
  return proseIn(schema as Schema, yaml.value, []).map(({ path, text, printed }) => ({
    file,
    ...yaml.placeOf(path),
    field: fieldIn(whole, path),
    text,
    printed,
  }));
}

type Schema = z.core.$ZodTypes;

interface Prose {
  readonly path: readonly PropertyKey[];
  readonly text: string;
  readonly printed: boolean;
}

function proseIn(schema: Schema, value: unknown, path: readonly PropertyKey[]): Prose[] {
  if (value === undefined || value === null) return [];
  const { prose } = FACTS.get(schema) ?? {};
  if (prose) return typeof value === "string" ? [{ path, text: value, printed: prose === "packet" }] : [];
  const { def } = schema._zod;
  switch (def.type) {
    case "object":
      return Object.entries(def.shape).flatMap(([key, one]) =>
        proseIn(one as Schema, (value as Readonly<Record<string, unknown>>)[key], [...path, key]),
      );
    case "array":
      if (!Array.isArray(value)) return [];
      return value.flatMap((one, i) => proseIn(def.element as Schema, one, [...path, i]));
    case "union":
      return def.options.flatMap((one) => proseIn(one as Schema, value, path));
    case "optional":
    case "default":
    case "prefault":
      return proseIn(def.innerType as Schema, value, path);
    case "pipe":
      return proseIn(def.in as Schema, value, path);
    default:
      return [];
  }
}
