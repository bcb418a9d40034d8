import * as say from "../../words/messages.ts";
import { type Html, html, type Markup } from "./markup.ts";

/** Sheets of a packet that are printed on one side, to be cut out. */
export interface CutOutSheets {
  readonly gauge: number;
  /** Whether the gauge is one for corners. */
  readonly corners: boolean;
  readonly strips: number;
  readonly templates: number;
}

/** What to print of a packet, before its pages are laid out. */
export function printPlan(sheets: CutOutSheets): Html {
  return html`<li>${say.packetPlanReadingUncounted()}</li>${cutOut(sheets)}`;
}

/** The same with the pages of each part and all sheets of paper; `pages` counts the packet's pages before the gauge. */
export function countedPlan(cut: CutOutSheets, pages: number): Html {
  let first = 1;
  const next = (count: number): Html => {
    first += count;
    return html` ${say.packetPlanAt({ count, first: first - count, last: first - 1 })}`;
  };
  const sheets = Math.ceil(pages / 2);
  const all = sheets + cut.gauge + cut.strips + cut.templates;
  return html`<li>${say.packetPlanReading({ pages, sheets })}${next(pages)}</li>${cutOut(cut, next)}
<li>${say.packetPlanAll({ sheets: all })}</li>`;
}

/** `place` says which pages the next so many are. */
function cutOut({ gauge, corners, strips, templates }: CutOutSheets, place?: (count: number) => Markup): Html {
  const gaugeLine = corners ? say.cornerPacketPlanGauge : say.packetPlanGauge;
  return html`
${gauge > 0 && html`<li>${gaugeLine({ sheets: gauge })}${place?.(gauge)}</li>`}
${strips > 0 && html`<li>${say.packetPlanStrips({ sheets: strips })}${place?.(strips)}</li>`}
${templates > 0 && html`<li>${say.packetPlanTemplates({ sheets: templates })}${place?.(templates)}</li>`}`;
}
