import { closingOf } from "../../core/pattern/corner-pattern.ts";
import * as say from "../../words/messages.ts";
import type { KitViewBase } from "../views/kit-view.ts";
import { type Html, html, type Markup } from "./markup.ts";

type Rounded = Pick<KitViewBase, "kit" | "pattern">;

/** The view from all sides: a button, and what its script puts in place when it is asked for. */
export function roundPart(view: Rounded): Html {
  return html`<button type="button" class="button" data-round-open aria-expanded="false" aria-controls="round-stage" hidden>${say.kitRound()}</button>
<noscript><p>${say.kitRoundScript()}</p></noscript>
<p class="round-status" data-round-status role="status"></p>
<div id="round-stage" class="round-stage" data-round-stage></div>
<template data-round-template>
<div class="round-panel">
<p data-round-text></p>
<div class="round-frame">
<canvas class="round-canvas" tabindex="0" role="application" aria-roledescription="${say.kitRoundRole()}" aria-label="${say.kitRoundAlt({ title: view.kit.title })}" aria-describedby="round-help round-orbit"></canvas>
</div>
<p id="round-orbit" class="round-orbit" data-round-orbit aria-live="polite"></p>
<p id="round-help" class="note">${say.kitRoundHelp()}</p>
<div class="round-controls">
${places()}
<fieldset><legend>${say.kitRoundOpening()}</legend>
<label class="round-slider">${say.kitRoundAngle()} <input type="range" step="1" data-round-opening></label>
<p class="round-shape" data-round-shape aria-live="polite"></p>
<button type="button" data-round-own>${say.kitRoundOwn()}</button>
</fieldset>
<fieldset><legend>${say.kitRoundShow()}</legend>
${shown(view)}
<label><input type="checkbox" data-round-levels> ${say.kitRoundShowLevels()}</label>
<ol class="round-legend" data-round-legend hidden></ol>
</fieldset>
</div>
</div>
</template>`;
}

function places(): Html {
  const from = [
    ["front", say.kitRoundFront()],
    ["left", say.kitRoundLeft()],
    ["right", say.kitRoundRight()],
    ["above", say.kitRoundAbove()],
    ["behind", say.kitRoundBehind()],
  ].map(([place, name]) => html`<button type="button" data-round-place="${place}">${name}</button> `);
  return html`<fieldset><legend>${say.kitRoundFrom()}</legend>
${from}<button type="button" data-round-zoom="in">${say.kitRoundNearer()}</button> <button type="button" data-round-zoom="out">${say.kitRoundFurther()}</button>
</fieldset>`;
}

function shown({ pattern }: Rounded): Markup {
  const { pocket, window } = closingOf(pattern);
  return [
    pocket && html`<label><input type="checkbox" data-round-light> ${say.kitRoundShowLight()}</label>`,
    window &&
      html`<label><input type="checkbox" data-round-window checked> ${say.kitRoundShowWindow()}</label>
<label><input type="checkbox" data-round-motifs checked> ${say.kitRoundShowMotifs()}</label>
<label class="round-slider">${say.kitRoundShowDoor()} <input type="range" min="0" max="150" step="5" value="0" data-round-door></label>`,
  ];
}
