import type { Kit } from "../../../src/core/kit/kit.ts";
import { fitAny } from "../../../src/core/pattern/fit-any.ts";
import type { PatternedKit } from "../../../src/core/pattern/patterned-kit.ts";
import { cornerCounts } from "../../../src/core/plan/corner-effort.ts";
import { countsOf, effortOf } from "../../../src/core/plan/effort.ts";
import { suppliesOf } from "../../../src/core/supplies/supplies.ts";
import { cornerJson, patternJson } from "../../../src/output/data/pattern-json.ts";
import type { Published } from "../../oracle/compare.ts";

/** The text of the published pattern.json of a kit, made in this process. */
export function publishedText({ kit, pattern, findings }: PatternedKit): string {
  const counts = countsOf(pattern);
  return patternJson(kit, pattern, findings, suppliesOf(kit, pattern, counts), effortOf(counts, kit.rates));
}

/** The text of the published pattern.json of a kit that is folded by corners, without supplies. */
export function publishedCorners(kit: Kit): string {
  const result = fitAny(kit);
  if (!result.fits || !result.pattern.corner) throw new Error("is not folded by corners");
  const { pattern, findings } = result;
  return cornerJson(kit, pattern, findings, [], effortOf(cornerCounts(pattern), kit.rates));
}

/** The published pattern, parsed. */
export function published(folder: PatternedKit): Published {
  return JSON.parse(publishedText(folder)) as Published;
}
