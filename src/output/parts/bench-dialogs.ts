import * as say from "../../words/messages.ts";
import { type Html, html, raw } from "./markup.ts";

/** The dialogs of the bench: going to a page or leaf, leaving a leaf out, measuring the first batch, the menu. */
export function benchDialogs(): Html {
  return html`${jumpDialog()}
${recoveryDialog()}
${measureDialog()}
${menuDialog()}`;
}

function jumpDialog(): Html {
  return html`<dialog data-jump aria-labelledby="jump-title">
<form data-jump-form novalidate>
<h2 id="jump-title">${say.benchOpenJump()}</h2>
<p class="reason" data-jump-reason></p>
<label class="field">${say.benchJumpNumber()} <input inputmode="numeric" autocomplete="off" data-jump-number aria-describedby="jump-answer"></label>
<p class="answer" id="jump-answer" role="status" data-jump-answer></p>
<p class="buttons"><button type="submit" class="strong" value="page">${say.benchJumpPage()}</button> <button type="submit" value="leaf">${say.benchJumpLeaf()}</button> <button type="button" data-close>${say.benchCancel()}</button></p>
</form>
</dialog>`;
}

function recoveryDialog(): Html {
  return html`<dialog class="wide" data-recovery aria-labelledby="recovery-title">
<h2 id="recovery-title" data-recovery-title>${say.benchLeaveOutThis()}</h2>
<p data-recovery-words></p>
<div class="pictures" data-recovery-pictures><figure><img src="../front.svg" loading="lazy" alt="${say.benchFrontBefore()}" data-picture-before><figcaption>${say.benchBefore()}</figcaption></figure><figure><img src="../front.svg" loading="lazy" alt="${say.benchFrontAfter()}" data-picture-after><figcaption>${say.benchAfter()}</figcaption></figure></div>
<p class="buttons"><button type="button" class="strong" data-recovery-do>${say.benchLeaveOutDo()}</button> <button type="button" data-close>${say.benchCancel()}</button></p>
</dialog>`;
}

function measureDialog(): Html {
  return html`<dialog data-measure aria-labelledby="measure-title">
<form data-measure-form novalidate>
<h2 id="measure-title">${say.benchMeasureTitle()}</h2>
<p data-measure-lead>${say.benchMeasureLead()}</p>
<div class="fields"><label class="field">${say.benchMeasureLeaves()} <input inputmode="numeric" autocomplete="off" data-measure-leaves></label>
<label class="field">${say.benchMeasureThickness()} <input autocomplete="off" data-measure-thickness aria-describedby="measure-result"></label></div>
<p class="answer" id="measure-result" role="status" data-measure-result></p>
<p class="buttons"><button type="submit" class="strong">${say.benchMeasureSave()}</button> <button type="button" data-close>${say.benchCancel()}</button></p>
</form>
</dialog>`;
}

/** A switch of the menu. */
function tick(name: string, words: string): Html {
  return html`<label class="tick"><input type="checkbox" ${raw(`data-${name}`)}> <span>${words}</span></label>`;
}

function menuDialog(): Html {
  return html`<dialog data-menu aria-labelledby="menu-title">
<h2 id="menu-title">${say.benchMenu()}</h2>
<label class="field">${say.benchUnits()} <select data-units><option value="mm">${say.benchMillimetres()}</option><option value="in">${say.benchInches()}</option></select></label>
<p class="buttons"><button type="button" data-menu-measure>${say.benchMeasureTitle()}</button></p>
<h3>${say.benchStopTitle()}</h3>
<p class="fields"><label class="field">${say.benchStopAt()} <input type="time" data-stop-at aria-describedby="stop-answer"></label> <button type="button" data-stop-clear>${say.benchStopClear()}</button></p>
<p class="answer" id="stop-answer" role="status" data-stop-answer></p>
<p>${tick("tone", say.benchTone())}</p>
<h3>${say.benchHandsTitle()}</h3>
<label class="field">${say.benchRulerFinest()} <select data-ruler-step></select></label>
<div data-voice-place hidden>${tick("voice", say.benchVoice())}<p class="note">${say.benchVoiceKeys()}</p></div>
<p>${tick("tap", say.benchTap())}</p>
<div>${tick("pedal", say.benchPedal())}<p class="note">${say.benchPedalLead()}</p></div>
<h3>${say.benchLeftOutTitle()}</h3>
<ul class="lost-list" data-lost-list></ul>
<h3>${say.benchProgressTitle()}</h3>
<p>${say.benchProgressLead()}</p>
<p class="buttons"><a class="as-button" href="#" data-export>${say.benchSaveFile()}</a> <a class="as-button" href="../../../pieces/index.html">${say.pieceAll()}</a> <button type="button" data-anew>${say.benchStartAgain()}</button></p>
<h3>${say.benchKeysTitle()}</h3>
<p>${say.benchKeys()}</p>
<p class="buttons"><button type="button" class="strong" data-close>${say.benchClose()}</button></p>
</dialog>`;
}
