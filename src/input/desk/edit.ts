import type { UnitSystem } from "../../core/units/length.ts";
import { frontMatterIn } from "../files/front-matter.ts";
import type { FieldPath } from "../files/problem.ts";
import { YamlFault } from "../files/yaml-fault.ts";
import { editYaml } from "./edit-yaml.ts";
import { lengthValue } from "./length-text.ts";
import { lineEndOf } from "./splice.ts";
import { valueIn, type YamlValue } from "./yaml-value.ts";
import { yamlText } from "./yaml-walk.ts";

/**
 * One change of a front matter: a value for the field at a path, `undefined` to take the field out, or a length in mm, which
 * is written in the unit that the field has. Steps of a path are keys, and places in lists from 0; what is missing on the way is made.
 */
export type Edit =
  | { readonly at: FieldPath; readonly value: YamlValue | undefined }
  | { readonly at: FieldPath; readonly mm: number };

/**
 * The text of an index.md with changes of its front matter, one after the other. Everything else stays byte for byte:
 * comments, order, quotes, line ends, and what stands below. Undefined where the text has no front matter that can be read.
 */
export function editText(text: string, edits: readonly Edit[]): string | undefined {
  const block = frontMatterIn(text);
  if (!block) return undefined;
  try {
    return (
      text.slice(0, block.from) + editedBlock(block.yaml, text, edits) + text.slice(block.from + block.yaml.length)
    );
  } catch (error) {
    if (error instanceof YamlFault) return undefined;
    throw error;
  }
}

/** Line ends are as the page has them, also where its front matter is one line. */
function editedBlock(yaml: string, page: string, edits: readonly Edit[]): string {
  const isMixed = lineEndOf(page) === "\n" || /(^|[^\r])\n/.test(yaml);
  if (isMixed) return edits.reduce(editedYaml, yaml);
  return edits.reduce(editedYaml, yaml.replaceAll("\r\n", "\n")).replaceAll("\n", "\r\n");
}

function editedYaml(yaml: string, edit: Edit): string {
  if ("value" in edit) return editYaml(yaml, edit.at, edit.value);
  const { value } = yamlText(yaml);
  const units: UnitSystem = valueIn(value, ["units"]) === "in" ? "in" : "mm";
  return editYaml(yaml, edit.at, lengthValue(edit.mm, valueIn(value, edit.at), units));
}
