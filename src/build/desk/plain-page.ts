import { type Html, html } from "../../output/parts/markup.ts";
import { language } from "../../words/language.ts";

/** A page of a few sentences without scripts or styles, for where there is nothing else to show. `head` goes into its head. */
export function plainPage(title: string, sentences: readonly string[], head: Html = html``): string {
  const page = html`<html lang="${language()}">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><meta name="color-scheme" content="light dark"><title>${title}</title>${head}</head>
<body><main><h1>${title}</h1>${sentences.map((one) => html`<p>${one}</p>`)}</main></body></html>`;
  return `<!doctype html>${String(page)}`;
}
