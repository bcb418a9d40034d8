import * as say from "../../../words/messages.ts";
import { type Html, html } from "../markup.ts";

/** A message as it is told, with its place. */
interface Told {
  readonly sentence: string;
  readonly file: string;
  readonly line: number | undefined;
}

/** A file that was changed outside the desk while something is not written here. */
export interface ForeignNews {
  /** Whether both change different keys, so that both can be had. */
  readonly canMerge: boolean;
}

/** That a text cannot be read: each message, with a button that opens its place. */
export function brokenNews(messages: readonly Told[]): Html {
  const items = messages.map(
    ({ sentence, file, line }, i) =>
      html`<li>${sentence} <button type="button" data-news-do="open" data-message="${i}">${say.deskKitOpenAt({ place: line === undefined ? file : `${file}:${line}` })}</button></li>`,
  );
  return html`<section class="news" role="alert"><h2>${say.deskKitBrokenTitle()}</h2><p>${say.deskKitBrokenLede()}</p><ul>${items}</ul></section>`;
}

/** That a file is another one meanwhile, and what can be done. */
export function foreignNews({ canMerge }: ForeignNews): Html {
  return html`<section class="news ask" role="alert"><h2>${say.deskKitForeignTitle()}</h2><p>${say.deskKitForeignLede()}</p>${!canMerge && html`<p>${say.deskKitForeignMeet()}</p>`}
<p class="buttons">${canMerge && html`<button type="button" class="go" data-news-do="merge">${say.deskKitMerge()}</button>`}<button type="button" data-news-do="keep">${say.deskKitKeepMine()}</button><button type="button" data-news-do="take">${say.deskKitTakeTheirs()}</button></p></section>`;
}

/** That a kit is folded by corners and cannot be laid out; its file can be opened. */
export function cornerNews(file: string): Html {
  return html`<section class="news ask"><h2>${say.deskKitCornerTitle()}</h2><p>${say.deskKitCornerLede()}</p><p class="buttons"><button type="button" data-news-do="file">${say.deskKitOpenAt({ place: file })}</button></p></section>`;
}
