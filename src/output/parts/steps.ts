import type { StepId } from "../../core/steps/work-step.ts";
import { rowText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { stepPartName } from "../../words/step-parts.ts";
import { toolName } from "../../words/tools.ts";
import type { Figure } from "../drawing/figure.ts";
import type { KitViewBase } from "../views/kit-view.ts";
import type { Step } from "../views/step.ts";
import { type Html, html, type Markup, raw } from "./markup.ts";

/** Markup of a step's drawing. */
type DrawnStep = (step: StepId, figure: Figure) => string;

const whole: DrawnStep = (_, { svg }) => svg;

/** The work, step by step. `drawn` writes a step's drawing. */
export function stepsPart(
  { steps, legend, cautions }: Pick<KitViewBase, "steps" | "legend" | "cautions">,
  drawn: DrawnStep = whole,
): Html {
  return html`<div class="work"><div class="legend drawn"><p>${say.stepLegend()}</p>${raw(legend.svg)}</div>
<ol class="steps">${steps.map((step, i) => stepItem(step, i + 1, cautions, drawn))}</ol></div>`;
}

/** A step with its number and the cautions that belong to it, in short; they are looked up among `cautions`. */
export function stepItem(
  step: Step,
  number: number,
  cautions: KitViewBase["cautions"],
  drawn: DrawnStep = whole,
): Html {
  const { title, time, drying, text, figure } = step;
  const care = step.cautions
    .flatMap((id) => cautions.filter((caution) => caution.id === id))
    .map((caution) => html`<p class="care"><b>${caution.title}.</b> ${caution.short}</p>`);
  return html`
<li id="step-${number}"><div class="step${figure && " with-figure"}"><div><h3>${title}${
    time !== "" && html` <span class="time">${say.stepTime({ time })}</span>`
  }${
    drying !== "" && html` <span class="time">${drying}</span>`
  }</h3><p>${text}</p>${needs(step)}${care}</div>${figure && html`<div class="drawn">${raw(drawn(step.id, figure))}</div>`}</div></li>`;
}

/** Parts and tools of a step. */
function needs({ parts, tools }: Step): Markup {
  if (parts.length + tools.length === 0) return false;
  const named = parts.length > 0 && html`<b>${say.stepParts()}</b> ${rowText(parts.map(stepPartName))}`;
  const used = tools.length > 0 && html`<b>${say.stepTools()}</b> ${rowText(tools.map(toolName))}`;
  return html`<p class="needs">${named}${named && used && " · "}${used}</p>`;
}
