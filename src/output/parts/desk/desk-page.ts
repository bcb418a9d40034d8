import { language } from "../../../words/language.ts";
import * as say from "../../../words/messages.ts";
import { html } from "../markup.ts";

/** The one page of the desk: what is seen there, its script puts into `main`. */
export function deskPage(site: string): string {
  const page = html`<html lang="${language()}" class="desk">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><meta name="color-scheme" content="light dark">
<title>${say.deskPageTitle({ site })}</title>
<link rel="stylesheet" href="/assets/desk.css"><link rel="icon" href="data:,">
<script type="module" src="/assets/desk-entry.js"></script></head>
<body><a class="skip" href="#main">${say.siteSkip()}</a>
<header class="desk-top"><a class="brand" href="/" data-way><span class="brand-mark" aria-hidden="true"></span>${site === "" ? say.deskName() : site}</a><p>${say.deskName()}</p><p class="desk-line" role="status" data-line></p></header>
<main id="main" tabindex="-1"><p>${say.deskOpening()}</p></main>
<noscript><p>${say.deskNoScript()}</p></noscript></body></html>`;
  return `<!doctype html>${String(page)}`;
}
