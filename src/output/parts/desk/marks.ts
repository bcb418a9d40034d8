import * as say from "../../../words/messages.ts";
import { markSwatch } from "../../drawing/front/trouble-marks.ts";
import { type Html, html, raw } from "../markup.ts";

/** Where it will look different: how many places of each kind, and the one that is looked at. */
export interface MarksShown {
  readonly kinds: readonly MarkKind[];
  readonly of: number;
  /** From 1; 0 where none is looked at. */
  readonly number: number;
  /** What is told of it. */
  readonly told: string | undefined;
}

export type MarkKind = "slivers" | "hidden" | "out-of-reach" | "narrow";

const KEYS: Readonly<Record<MarkKind, () => string>> = {
  slivers: say.deskKitKeySlivers,
  hidden: say.deskKitKeyHidden,
  "out-of-reach": say.deskKitKeyOutOfReach,
  narrow: say.deskKitKeyNarrow,
};

/** The key to the marks on the sheet, and the way from one to the next. */
export function marks({ kinds, of, number, told }: MarksShown): Html {
  if (of === 0) return html`<p class="marks-told">${say.deskKitMarksNone()}</p>`;
  const keys = kinds.map((kind) => html`<li>${raw(markSwatch(kind))} ${KEYS[kind]()}</li>`);
  return html`<div class="marks-head"><h3 id="desk-marks">${say.deskKitMarks()}</h3><ul class="marks-key">${keys}</ul></div>
<div class="marks-step" role="group" aria-labelledby="desk-marks"><button type="button" data-mark="-1">${say.deskKitMarksBefore()}</button><button type="button" data-mark="1">${say.deskKitMarksNext()}</button><p aria-live="polite">${number > 0 && html`<b>${say.deskKitMarksStep({ number, of })}</b> ${told}`}</p></div>`;
}
