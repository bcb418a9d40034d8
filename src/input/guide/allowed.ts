import { z } from "zod";
import type { Allowed, Measure } from "../../core/guide/reference.ts";
import { FACTS } from "../files/schema-facts.ts";

/** The forms that a value may have by its schema: several where it is a choice. @throws Error for a kind of schema that no file has yet */
export function allowedBy(schema: z.core.$ZodType): Allowed[] {
  const { measure, least, most } = FACTS.get(schema) ?? {};
  if (least !== undefined && most !== undefined) return [{ kind: "length", least, most }];
  const { def } = (schema as z.core.$ZodTypes)._zod;
  switch (def.type) {
    case "number":
      return [numberIn(schema, measure)];
    case "string":
      return [textIn(schema)];
    case "boolean":
      return [{ kind: "flag" }];
    case "enum":
      return [{ kind: "words", words: Object.values(def.entries).map(String) }];
    case "literal":
      return [{ kind: "words", words: def.values.map(String) }];
    case "object":
      return [{ kind: "keys" }];
    case "union":
      return def.options.flatMap(allowedBy);
    case "array":
      return [listIn(schema as z.core.$ZodArray)];
    case "tuple":
      return [{ kind: "list", least: def.items.length, most: def.items.length, of: allowedBy(def.items[0]!) }];
    case "record":
      return [{ kind: "named", names: namesOf(def.keyType), of: allowedBy(def.valueType) }];
    case "pipe":
      return allowedBy(def.in);
    case "optional":
    case "default":
    case "prefault":
      return allowedBy(def.innerType);
    default:
      throw new Error(`no words for a schema of the type ${def.type}`);
  }
}

function numberIn(schema: z.core.$ZodType, measure: Measure | undefined): Allowed {
  const { type, minimum: least, maximum: most, exclusiveMinimum } = z.toJSONSchema(schema, { io: "input" });
  const above = typeof exclusiveMinimum === "number" ? exclusiveMinimum : undefined;
  return { kind: "number", whole: type === "integer", measure, least, most, above };
}

function textIn(schema: z.core.$ZodType): Allowed {
  const { format, maxLength } = z.toJSONSchema(schema, { io: "input" });
  if (format === "date") return { kind: "day" };
  return format === "uri" ? { kind: "address" } : { kind: "text", most: maxLength };
}

function listIn(schema: z.core.$ZodArray): Allowed {
  const { minItems, maxItems } = z.toJSONSchema(schema, { io: "input" });
  return { kind: "list", least: minItems ?? 0, most: maxItems, of: allowedBy(schema._zod.def.element) };
}

function namesOf(keys: z.core.$ZodType): string[] {
  const { def } = (keys as z.core.$ZodTypes)._zod;
  return def.type === "enum" ? Object.values(def.entries).map(String) : [];
}
