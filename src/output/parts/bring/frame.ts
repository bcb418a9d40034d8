import * as say from "../../../words/messages.ts";
import { type Html, html } from "../markup.ts";

/** Megabytes that a picture may have. */
export interface BringLimits {
  readonly most: number;
  /** How the names of files end that may be chosen, and their kinds. */
  readonly accept: string;
}

/** The table on which a picture becomes a kit; each thing is filled by its own part. */
export function bringFrame({ most, accept }: BringLimits): Html {
  return html`<div class="table bring">
<header class="ribbon"><a class="ribbon-back" href="/" data-way>${say.deskNewBack()}</a><h1>${say.deskNewTitle()}</h1>
<p class="ribbon-told" role="status" data-told></p>
<p class="ribbon-buttons"><button type="button" class="go" data-make disabled>${say.deskNewMake()}</button></p></header>
<div class="news" role="alert" data-hurdles hidden></div>
<div class="bring-things">
<div class="bring-side">
<section class="thing paper" aria-labelledby="bring-picture"><h2 class="tag" id="bring-picture">${say.deskNewPicture()}</h2><div data-origin></div></section>
<section class="thing paper" aria-labelledby="bring-steering" data-steering-thing hidden><h2 class="tag" id="bring-steering" data-steering-name></h2><div data-steering></div></section>
</div>
<section class="bring-mat" aria-labelledby="bring-brought" data-mat>
<input type="file" class="sr" id="bring-file" accept="${accept}" data-file><label class="bring-drop" for="bring-file" data-drop><span class="bring-drop-name">${say.deskNewDrop()}</span><span class="bring-choose">${say.deskNewChoose()}</span><span class="bring-kinds">${say.deskNewKinds({ most })}</span></label>
<div class="bring-pane" data-brought-pane hidden><h2 class="tag" id="bring-brought">${say.deskNewBrought()}</h2><div class="bring-seen" data-seen></div><div data-crop-foot></div></div>
<div class="bring-pane" data-becomes-pane hidden><h2 class="tag" id="bring-becomes">${say.deskNewBecomes()}</h2><div class="bring-map" data-map></div><div data-map-foot></div></div>
</section>
<div class="bring-side">
<section class="thing piece" aria-labelledby="bring-piece"><h2 class="tag" id="bring-piece">${say.deskNewPiece()}</h2><div class="piece-view" data-piece><p class="hint">${say.deskNewPieceNone()}</p></div></section>
<section class="thing slip" aria-labelledby="bring-slip" data-slip-thing hidden><h2 class="tag" id="bring-slip">${say.deskNewSlip()}</h2><div data-slip></div></section>
</div>
<div class="bring-papers">
<section class="thing paper" aria-labelledby="bring-names"><h2 class="tag" id="bring-names">${say.deskNewNames()}</h2><div data-names></div></section>
<section class="thing paper" aria-labelledby="bring-book"><h2 class="tag" id="bring-book">${say.deskNewBook()}</h2><div data-book></div></section>
<section class="thing paper" aria-labelledby="bring-lamp"><h2 class="tag" id="bring-lamp">${say.deskNewLamp()}</h2><div data-lamp></div></section>
</div>
</div>
</div>`;
}
