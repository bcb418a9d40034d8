import { frontMatterIn } from "../files/front-matter.ts";
import { YamlFault } from "../files/yaml-fault.ts";
import type { YamlValue } from "./yaml-value.ts";
import { yamlText } from "./yaml-walk.ts";

/** What the front matter of a text means; undefined where it has none that can be read. */
export function frontValue(text: string): YamlValue | undefined {
  const block = frontMatterIn(text);
  if (!block) return undefined;
  try {
    return yamlText(block.yaml).value;
  } catch (error) {
    if (error instanceof YamlFault) return undefined;
    throw error;
  }
}
