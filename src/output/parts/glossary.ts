import { glossary } from "../../words/glossary.ts";
import * as say from "../../words/messages.ts";
import { type Html, html } from "./markup.ts";

/** The main part of the glossary's page: one term each, with an anchor that pages link to. */
export function glossaryPage(): Html {
  return html`<main id="main" class="wrap"><section class="intro"><h1>${say.glossaryTitle()}</h1><p class="lede">${say.glossaryLede()}</p></section>
<dl class="glossary">${glossary().map(
    ({ id, name, meaning }) => html`<div id="${id}"><dt><dfn>${name}</dfn></dt><dd>${meaning}</dd></div>`,
  )}</dl></main>`;
}
