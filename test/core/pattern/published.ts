import type { PatternedKit } from "../../../src/core/pattern/patterned-kit.ts";
import { countsOf, effortOf } from "../../../src/core/plan/effort.ts";
import { suppliesOf } from "../../../src/core/supplies/supplies.ts";
import { patternJson } from "../../../src/output/data/pattern-json.ts";
import type { Published } from "../../oracle/compare.ts";

/** The text of the published pattern.json of a kit, made in this process. */
export function publishedText({ kit, pattern, findings }: PatternedKit): string {
  const counts = countsOf(pattern);
  return patternJson(kit, pattern, findings, suppliesOf(kit, pattern, counts), effortOf(counts, kit.rates));
}

/** The published pattern, parsed. */
export function published(folder: PatternedKit): Published {
  return JSON.parse(publishedText(folder)) as Published;
}
