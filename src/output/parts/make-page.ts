import { stagesOf } from "../../core/steps/stages.ts";
import * as say from "../../words/messages.ts";
import { stageTitle } from "../../words/stages.ts";
import { unitName } from "../../words/units.ts";
import type { AnyKitView } from "../views/any-kit-view.ts";
import { makeBook, suppliesToTick } from "./make-parts.ts";
import { type Html, html, raw, rich } from "./markup.ts";
import { stepItem } from "./steps.ts";
import { carePart } from "./takes.ts";

/**
 * The main part of the page on which a piece is made: stages that open one after another. As it is built it is for the kit's
 * own book, in words; its script makes it the maker's piece and draws the steps of a stage that is opened.
 */
export function makePage(view: AnyKitView): Html {
  const { kit } = view;
  return html`<main id="main" class="wrap make" data-make>
<p class="over"><a href="../index.html" data-home>‹ ${say.makeBack({ title: kit.title })}</a></p>
<h1>${say.makeTitle({ title: kit.title })}</h1>
<p class="lede"><span data-name></span> <span data-book>${makeBook(kit.book, kit.units)}</span></p>
<noscript><p class="panel warn">${withoutScript()}</p></noscript>
<div class="panel warn" data-wait role="status" hidden></div>
<div data-piece hidden></div>
${units(view)}
${now()}
<section id="care"><h2>${say.kitCare()}</h2>
${carePart(view)}
<p><a href="../index.html#cautions">${say.kitCareAll()}</a></p></section>
<div class="chapters">
<details class="chapter" data-supplies><summary><h2>${say.makeSupplies()}</h2> <span class="gist" data-at-hand>${say.makeSuppliesCount({ count: view.supplies.length })}</span></summary>
<div class="inside" data-supply-list>${suppliesToTick(view.supplies, [])}</div></details>
${stages(view)}</div>
</main>`;
}

function withoutScript(): Html {
  return rich(say.makeNoScript, {
    steps: html`<a href="../index.html#steps">${say.makeNoScriptSteps()}</a>`,
    table: html`<a href="../index.html#pattern">${say.makeNoScriptTable()}</a>`,
  });
}

function units({ kit }: AnyKitView): Html {
  const choices = (["mm", "in"] as const).map(
    (one) =>
      html`<label><input type="radio" name="units" id="units-${one}" value="${one}"${kit.units === one && raw(" checked")}> ${unitName(one)}</label>
`,
  );
  return html`<fieldset class="units"><legend>${say.kitUnits()}</legend>
${choices}</fieldset>`;
}

/** Where the piece is, for the script to fill; it stays in sight. */
function now(): Html {
  return html`<section class="make-now" data-now aria-label="${say.makeHere()}" hidden>
<p><strong data-stage-name></strong> <span data-told></span></p>
<progress max="100" value="0" data-percent aria-label="${say.makeShare()}"></progress>
<a class="button" href="../bench/index.html" data-go>${say.makeBegin()}</a>
</section>
<div class="make-notes" data-notes-field hidden><label for="notes">${say.makeNotes()}</label>
<textarea id="notes" rows="2" data-notes aria-describedby="notes-help"></textarea>
<p class="note" id="notes-help">${say.makeNotesHelp()}</p></div>`;
}

function stages({ work, steps, cautions }: AnyKitView): Html[] {
  let number = 1;
  return stagesOf(work).map((stage, i) => {
    const own = steps.filter(({ id }) => stage.steps.some((step) => step.id === id));
    const first = number;
    number += own.length;
    return html`<details class="chapter stage" data-stage="${stage.id}"${i === 0 && raw(" open")}><summary><h2>${stageTitle(stage)}</h2> <span class="gist" data-state>${say.makeStageSteps({ count: own.length })}</span></summary>
<div class="inside"><div data-batches></div><ol class="steps" start="${first}">${own.map((step, at) => stepItem({ ...step, figure: undefined }, first + at, cautions))}</ol></div></details>
`;
  });
}
