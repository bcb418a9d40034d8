import type { Reason } from "../../core/refit/quality.ts";
import { formatSize } from "../lengths.ts";
import * as say from "../messages.ts";
import { doubtText } from "./doubts.ts";
import type { Telling } from "./failure-figures.ts";

/** Why a fit is no good one, in sentences. */
export function reasonText(reason: Reason, telling: Telling): string {
  if (reason.kind !== "narrow-margins") return doubtText(reason, telling);
  return say.reasonNarrowMargins({
    head: formatSize(reason.head, telling.units),
    tail: formatSize(reason.tail, telling.units),
  });
}
