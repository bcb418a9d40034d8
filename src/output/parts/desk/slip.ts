import * as say from "../../../words/messages.ts";
import { type Html, html } from "../markup.ts";

/** How a kit comes out; `unfit` cannot be made. */
export type Verdict = "fits" | "check" | "poor" | "unfit";

/** What the slip carries. */
export interface SlipShown {
  readonly verdict: Verdict;
  /** What is found, the gravest first, in sentences. */
  readonly findings: readonly string[];
  /** What would help against the first of them; undefined while it is worked out. */
  readonly ways: readonly SlipWay[] | undefined;
  readonly figures: readonly (readonly [label: string, value: string])[];
}

/** A way out: one that can be taken here is a button, numbered from 0. */
export interface SlipWay {
  readonly text: string;
  readonly taken: number | undefined;
}

const VERDICTS: Readonly<Record<Verdict, () => string>> = {
  fits: say.deskKitVerdictFits,
  check: say.deskKitVerdictCheck,
  poor: say.deskKitVerdictPoor,
  unfit: say.deskKitVerdictUnfit,
};

/** The slip of paper with the numbers that matter: how it comes out, why, what helps, and the figures. */
export function slip({ verdict, findings, ways, figures }: SlipShown): Html {
  const [first, ...more] = findings;
  return html`<p class="verdict ${verdict}" role="status">${VERDICTS[verdict]()}</p>
<dl class="slip-figures">${figures.map(([label, value]) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`)}</dl>
${first !== undefined && html`<p class="finding">${first}</p>${waysOut(ways)}`}
${more.length > 0 && html`<details class="more-found"><summary>${say.deskKitMoreFindings({ count: more.length })}</summary><ul>${more.map((one) => html`<li>${one}</li>`)}</ul></details>`}`;
}

function waysOut(ways: SlipShown["ways"]): Html {
  if (ways === undefined) return html`<p class="hint">${say.deskKitWorking()}</p>`;
  if (ways.length === 0) return html``;
  const items = ways.map(
    ({ text, taken }) =>
      html`<li>${taken === undefined ? text : html`<button type="button" class="way" data-way="${taken}">${text}</button>`}</li>`,
  );
  return html`<h3>${say.deskKitWays()}</h3><ul class="ways">${items}</ul>`;
}
