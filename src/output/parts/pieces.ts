import type { Kit } from "../../core/kit/kit.ts";
import * as say from "../../words/messages.ts";
import type { LinkTo } from "./cards.ts";
import { type Html, html } from "./markup.ts";

/** The page of all pieces, below the site. */
export const PIECES = "/pieces/index.html";

/** The page of everything that is under way on a device: a skeleton that its script fills. */
export function piecesPage(kits: readonly Pick<Kit, "slug" | "title">[], link: LinkTo): Html {
  const titles = JSON.stringify(Object.fromEntries(kits.map(({ slug, title }) => [slug, title])));
  const site = link("/index.html").replace("index.html", "");
  return html`<main id="main" class="wrap pieces" data-pieces="${site}" data-kits="${titles}">
<section class="intro">
<h1>${say.piecesTitle()}</h1>
<div class="lede"><p>${say.piecesLead()}</p></div>
<noscript><p>${say.piecesNoScript()}</p></noscript>
</section>
<p class="pieces-note" data-pieces-note hidden></p>
<div class="pieces-empty" data-pieces-empty hidden><p>${say.piecesEmpty()}</p><p><a class="button" href="${link("/index.html")}">${say.piecesToKits()}</a></p></div>
<ul class="piece-list" data-pieces-list></ul>
<div class="piece-files" data-pieces-files hidden>
<a class="button plain-button" href="#" data-pieces-all hidden>${say.piecesSaveAll()}</a>
<label class="button plain-button">${say.piecesOpen()} <input type="file" accept=".json,application/json" data-pieces-import></label>
<p role="status" data-pieces-answer></p>
</div>
${meetingDialog()}
</main>`;
}

/** Asks what becomes of a piece that file and device both have. */
function meetingDialog(): Html {
  return html`<dialog data-meeting aria-labelledby="meeting-title">
<h2 id="meeting-title" data-meeting-title>${say.piecesMeet()}</h2>
<p data-meeting-why></p>
<ul><li data-meeting-here></li><li data-meeting-file></li></ul>
<form method="dialog" class="piece-actions"><button type="submit" value="here">${say.piecesKeepHere()}</button> <button type="submit" value="file">${say.piecesTakeFile()}</button> <button type="submit" value="both">${say.piecesKeepBoth()}</button></form>
</dialog>`;
}

/** The link to all pieces at the top of a page; `address` is the page's as the page links to it. */
export function piecesLink(address: string): Html {
  return html`<a class="top-link" href="${address}">${say.piecesTitle()}</a>`;
}
