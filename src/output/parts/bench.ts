import * as say from "../../words/messages.ts";
import { benchDialogs } from "./bench-dialogs.ts";
import { type Html, html, rich } from "./markup.ts";

/** The body of the page that goes along with the work on a kit: a skeleton that its script fills leaf by leaf. */
export function benchPart({ title }: { readonly title: string }): Html {
  const heading = say.benchTitle({ title });
  return html`<noscript><div class="plain"><h1>${heading}</h1><p>${withoutScript()}</p></div></noscript>
<div class="plain" data-wait aria-live="polite"></div>
<div class="bench" data-bench hidden>
${head(title)}
<main id="main" data-main>
<h1 class="sr">${heading}</h1>
<div class="front-symbol" data-front-symbol></div>
<div class="count"><p class="places"><strong data-count></strong> · <span data-ticked></span></p><p class="time" data-time></p><p class="stop" data-stop></p><div class="drying" data-drying></div><p class="dry" role="status" data-dry></p><div class="ribbon" data-ribbon></div></div>
<div class="piece" data-piece hidden></div>
${stage()}
</main>
<footer class="bar">
<button type="button" class="move" data-back><span aria-hidden="true">‹</span> <span data-back-words>${say.benchBack()}</span></button>
<button type="button" class="go" data-go><span data-go-words>${say.benchDone()}</span></button>
<button type="button" class="move" data-next>${say.benchNext()} <span aria-hidden="true">›</span></button>
</footer>
<div class="sr" aria-live="polite" data-say></div>
${benchDialogs()}
</div>`;
}

function withoutScript(): Html {
  return rich(say.benchNoScript, { table: html`<a href="../index.html#pattern">${say.benchNoScriptTable()}</a>` });
}

function head(title: string): Html {
  return html`<header class="top">
<a class="home" href="../index.html" data-home><span aria-hidden="true">‹</span> <span class="sr">${say.benchHome()}</span> <span class="home-title">${title}</span></a>
<button type="button" class="awake" role="switch" aria-checked="false" data-awake><span class="lamp" aria-hidden="true"></span><span data-awake-words>${say.benchAwake()}</span></button>
<button type="button" class="menu-button" data-open-menu>${say.benchMenu()}</button>
</header>`;
}

function stage(): Html {
  return html`<section class="stage" data-stage aria-label="${say.benchStage()}">
<div class="facts">
<h2 class="big"><span class="big-kind" data-big-kind>${say.benchBookPage()}</span> <span class="big-figure" data-big></span></h2>
<div class="beside"><dl><div><dt>${say.benchLeafLabel()}</dt><dd data-leaf></dd></div><div data-pattern-place><dt>${say.benchPatternPage()}</dt><dd data-pattern-page></dd></div></dl>
<label class="tick"><input type="checkbox" data-done> <span>${say.benchDone()}</span></label></div>
<p class="border" data-border></p>
</div>
<div class="asides"><div class="gate" data-gate hidden></div><div class="notices" data-notices></div></div>
<div class="edge" data-edge></div>
<div class="ruler" data-ruler hidden>
<p class="ruler-words" data-ruler-words></p>
<button type="button" class="quiet" data-mark-before><span aria-hidden="true">‹</span><span class="sr">${say.benchRulerBefore()}</span></button>
<div class="ruler-strip" data-ruler-strip></div>
<button type="button" class="quiet" data-mark-next><span aria-hidden="true">›</span><span class="sr">${say.benchRulerNext()}</span></button>
<p class="ruler-note">${say.benchRulerNote()}</p>
</div>
<div class="step" data-step></div>
<div class="work">
<div class="fold-row" data-fold-row><h3>${say.benchFolds()}</h3><ol class="folds" data-folds></ol></div>
<ul class="levels" data-levels></ul>
<ul class="work-notes" data-work-notes></ul>
<div class="front-now" data-front-now></div>
<p class="more"><button type="button" class="quiet" data-voice-again hidden>${say.benchVoiceAgain()}</button> <button type="button" class="quiet" data-open-jump>${say.benchOpenJump()}</button> <button type="button" class="quiet" data-lose>${say.benchLose()}</button></p>
</div>
</section>`;
}
