import * as say from "../../../words/messages.ts";
import { type Html, html, type Markup } from "../markup.ts";

/** The things on the table, by what they are called on it. */
export type Thing = "sheet" | "leaf" | "piece" | "slip" | "opening" | "book" | "lamp" | "door";

const NAMES: Readonly<Record<Thing, () => string>> = {
  sheet: say.deskKitSheet,
  leaf: say.deskKitLeaf,
  piece: say.deskKitPiece,
  slip: say.deskKitSlip,
  opening: say.deskKitOpening,
  book: say.deskKitBook,
  lamp: say.deskKitLamp,
  door: say.deskKitDoor,
};

/** One kit on the desk, before its script has laid anything out: the ribbon, the mat with sheet and leaf, and the papers round it. */
export function deskTable(title: string): Html {
  return html`<div class="table" data-table>
${ribbon(title, draftBox())}
<div class="table-news" data-news></div>
<div class="table-things">
<div class="mat" data-mat>
${thing("sheet", sheet())}
${thing("leaf", leaf())}
<div class="marks" data-marks></div>
</div>
<div class="beside">
${thing("piece", piece())}
${thing("slip", html`<div data-slip><p>${say.deskKitWorking()}</p></div>`)}
</div>
<div class="table-papers">
${thing("opening", slot("opening"))}
${thing("book", slot("book"))}
${thing("lamp", slot("lamp"))}
${thing("door", html`<div class="door-view" data-door-view></div>${slot("door")}<div class="fields motif" data-fields="motif"></div>`)}
</div>
</div>
<p class="table-keys">${say.deskKitKeys()}</p>
${differenceDialog()}
</div>`;
}

function thing(name: Thing, content: Markup): Html {
  return html`<section class="thing ${name}" aria-labelledby="thing-${name}"><h2 class="tag" id="thing-${name}">${NAMES[name]()}</h2>
${content}</section>`;
}

function slot(name: Thing): Html {
  return html`<div class="fields" data-fields="${name}"></div>`;
}

function draftBox(): Html {
  return html`<label class="ribbon-draft"><input type="checkbox" data-draft> ${say.deskKitDraft()}</label>
`;
}

/** The ribbon across a table: the way back, what lies there, and the buttons; `more` stands before what it tells. */
export function ribbon(title: string, more: Html = html``): Html {
  return html`<header class="ribbon">
<a class="ribbon-back" href="/" data-way>${say.deskKitBack()}</a>
<h1 dir="auto" data-title>${title}</h1>
${more}<p class="ribbon-told" role="status" data-told></p>
<div class="ribbon-buttons">
<button type="button" data-undo disabled aria-keyshortcuts="Control+Z">${say.deskKitUndo()}</button>
<button type="button" data-redo disabled aria-keyshortcuts="Control+Y Control+Shift+Z">${say.deskKitRedo()}</button>
<button type="button" class="go" data-write disabled aria-haspopup="dialog" aria-keyshortcuts="Control+S">${say.deskKitLookAndWrite()}</button>
</div>
</header>`;
}

function sheet(): Html {
  const shows = [
    ["both", say.deskKitShowBoth()],
    ["seen", say.deskKitShowSeen()],
    ["drawn", say.deskKitShowDrawn()],
  ].map(
    ([value, name], i) =>
      html`<label><input type="radio" name="sheet-show" value="${value}"${i === 0 && html` checked`}> ${name}</label>`,
  );
  return html`<fieldset class="tools" data-show><legend class="sr">${say.deskKitSheetShow()}</legend>${shows}</fieldset>
<div class="ruled">
<div class="gauge" data-gauge></div>
<div class="drawn" data-sheet></div>
</div>
<div class="below shape" data-shape></div>`;
}

function leaf(): Html {
  return html`<p class="tools leaf-told" data-leaf-told></p>
<div class="drawn" data-leaf></div>
<div class="below fields depths" data-fields="depths"></div>`;
}

function piece(): Html {
  return html`<div class="tools">
<fieldset data-piece-view><legend class="sr">${say.deskKitPiece()}</legend>
<label><input type="radio" name="piece-view" value="front" checked> ${say.deskKitFront()}</label>
<label><input type="radio" name="piece-view" value="round"> ${say.deskKitRound()}</label></fieldset>
<label class="lit-switch" data-lit-switch hidden><input type="checkbox" data-lit> ${say.deskKitLampOn()}</label>
</div>
<div class="piece-view" data-piece></div>
<div class="piece-round" data-round hidden></div>`;
}

/** The dialog that shows what will be written. */
export function differenceDialog(): Html {
  return html`<dialog class="difference" data-difference aria-labelledby="difference-title">
<h2 id="difference-title">${say.deskKitDifference()}</h2>
<p data-difference-lede></p>
<div class="difference-lines" data-difference-lines tabindex="0" role="region" aria-labelledby="difference-title"></div>
<p class="buttons"><button type="button" class="go" data-write-now>${say.deskKitWrite()}</button>
<button type="button" data-not-yet>${say.deskKitNotYet()}</button></p>
</dialog>`;
}
