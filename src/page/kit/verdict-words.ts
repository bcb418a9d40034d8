import type { Kit } from "../../core/kit/kit.ts";
import { marginsOf } from "../../core/refit/margins.ts";
import type { Judgement } from "../../core/refit/quality.ts";
import type { KitViewBase } from "../../output/views/kit-view.ts";
import { reasonText } from "../../words/findings/reasons.ts";
import { formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";

const VERDICTS = { fits: say.fitPanelFits, check: say.fitPanelCheck, poor: say.fitPanelPoor } as const;

/** How a kit comes out in the reader's book, why, and in figures; `own` is the kit in its author's book. */
export function verdictWords(
  own: Kit,
  { kit, pattern, figures }: KitViewBase,
  { kind, reasons }: Judgement,
): [string, ...string[]] {
  const { fit, book } = pattern;
  const size = (mm: number): string => formatSize(mm, kit.units);
  const { head, tail } = marginsOf(fit, book.leafHeight);
  const pitch = fit.width / Math.max(1, pattern.leaves.filter(({ patternPage }) => patternPage !== null).length - 1);
  const moved = own.fit.head !== undefined && Math.abs(head - own.fit.head) > 1e-6;
  return [
    VERDICTS[kind](),
    ...reasons.map((reason) => reasonText(reason, kit)),
    say.fitPanelFigures({ head: size(head), tail: size(tail), pitch: size(pitch), hours: figures.hours }),
    ...(moved ? [say.fitPanelMoved({ head: size(head) })] : []),
  ];
}
