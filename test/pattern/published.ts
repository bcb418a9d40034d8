import type { KitFolder } from "../../src/kit/read-kit.ts";
import { countsOf, effortOf } from "../../src/plan/effort.ts";
import { patternJson } from "../../src/publish/pattern-json.ts";
import { suppliesOf } from "../../src/supplies/supplies.ts";
import type { Published } from "../oracle/compare.ts";

/** The text of the published pattern.json of a kit, made in this process. */
export function publishedText({ kit, pattern }: KitFolder): string {
  const counts = countsOf(pattern);
  return patternJson(kit, pattern, suppliesOf(kit, pattern, counts), effortOf(counts, kit.rates));
}

/** The published pattern, parsed. */
export function published(folder: KitFolder): Published {
  return JSON.parse(publishedText(folder)) as Published;
}
