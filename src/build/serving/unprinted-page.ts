import { html } from "../../output/parts/markup.ts";
import { language } from "../../words/language.ts";
import * as say from "../../words/messages.ts";

/** Where the style of the page stands; nothing of a site has such a name. */
export const UNPRINTED_ADDRESS = "/.serving/unprinted.css";

export const UNPRINTED_STYLE = `
:root { color-scheme: light dark; font: 1.0625rem/1.5 system-ui, sans-serif; }
body { margin: 0 auto; padding: 3rem 1.25rem; max-width: 42rem; }
h1 { font-size: 1.5rem; line-height: 1.25; }
pre { padding: 1rem; border-inline-start: 0.25rem solid; white-space: pre-wrap; overflow-wrap: anywhere; font: inherit; }
`;

/** What is answered where a PDF could not be printed: why, and what to do. */
export function unprintedPage(why: string): string {
  const page = html`<html lang="${language()}">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${say.servingUnprinted()}</title>
<link rel="stylesheet" href="${UNPRINTED_ADDRESS}"></head>
<body><h1>${say.servingUnprinted()}</h1><pre>${why}</pre><p>${say.servingUnprintedRemedy()}</p></body></html>`;
  return `<!doctype html>${String(page)}`;
}
