import { type Html, html, type Markup } from "./markup.ts";

/** Sheets of a packet that a phone's screen shows closed. They stand open where no script closes them, and on paper always. */
export function bundle(name: string, sheets: Markup): Html {
  return html`<details class="bundle" data-bundle open><summary>${name}</summary>
${sheets}</details>`;
}
