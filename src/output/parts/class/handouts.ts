import { handoutGist } from "../../../words/handout-gists.ts";
import * as say from "../../../words/messages.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import type { Handout } from "../../views/class/handout-views.ts";
import { longClass } from "../long-text.ts";
import { type Html, html } from "../markup.ts";

/** With more steps than these, a handout is set smaller. */
const FEW_STEPS = 10;

/** A title of more usual letters is set smaller. */
const LONG_TITLE = 60;

/** A sheet for each kit: its steps in sentences that hold for every book. */
export function handouts(view: ClassView): Html {
  return html`${view.handouts.map((one) => handout(one, view))}`;
}

function handout({ name, view: { kit, steps, cautions } }: Handout, { plan }: ClassView): Html {
  const many = steps.length > FEW_STEPS && " many";
  return html`<section class="flow handout${many}" data-flow>
<p class="over">${say.teacherHandout({ class: plan.title })}</p>
<h2${longClass(name, LONG_TITLE)}>${say.teacherSteps({ kit: name })}</h2>
<ol class="handout-steps">${steps.map(
    ({ id, title, ready }) =>
      html`<li><b>${say.teacherHandoutTitle({ title })}</b> ${ready && plan.ready.includes(ready) ? say.teacherDone() : handoutGist(id, kit)}</li>`,
  )}</ol>
<div class="handout-care">${cautions.map(
    ({ title, short }) => html`<p><b>${say.teacherHandoutTitle({ title })}</b> ${short}</p>`,
  )}</div>
<p class="handout-foot">${say.teacherHandoutFoot()}</p>
</section>
`;
}
