import * as say from "../../words/messages.ts";
import { type Html, html, type Markup } from "./markup.ts";

/** Sheets of a packet that are printed on one side, to be cut out. */
export interface CutOutSheets {
  readonly gauge: number;
  readonly strips: number;
  readonly templates: number;
}

/** What to print of a packet, on how many sheets. `pages` counts its pages from the cover to the gauge, once they are laid out. */
export function printPlan({ gauge, strips, templates }: CutOutSheets, pages?: number): Html {
  let next = pages === undefined ? undefined : pages + 1;
  const place = (count: number): Markup => {
    if (next === undefined) return false;
    const first = next;
    next += count;
    return html` ${say.packetPlanAt({ count, first, last: next - 1 })}`;
  };
  const sheets = pages === undefined ? 0 : Math.ceil(pages / 2);
  return html`<li>${
    pages === undefined
      ? say.packetPlanReadingUncounted()
      : html`${say.packetPlanReading({ pages, sheets })} ${say.packetPlanAt({ count: pages, first: 1, last: pages })}`
  }</li>
<li>${say.packetPlanGauge({ sheets: gauge })}${place(gauge)}</li>
${strips > 0 && html`<li>${say.packetPlanStrips({ sheets: strips })}${place(strips)}</li>`}
${templates > 0 && html`<li>${say.packetPlanTemplates({ sheets: templates })}${place(templates)}</li>`}
${pages !== undefined && html`<li>${say.packetPlanAll({ sheets: sheets + gauge + strips + templates })}</li>`}`;
}
