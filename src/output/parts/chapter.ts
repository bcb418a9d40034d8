import type { AnyKitView } from "../views/any-kit-view.ts";
import { kitPart } from "./any-kit-parts.ts";
import type { Chapter } from "./gists.ts";
import { type Html, html } from "./markup.ts";

/**
 * A part of a kit's page that stands closed under its heading and what is in it. Its id is inside, so that a link to it opens
 * it, with scripts or without.
 */
export function chapter(view: AnyKitView, id: string, heading: string, name: Chapter): Html {
  const gist: `${Chapter}-gist` = `${name}-gist`;
  return html`<details class="chapter"><summary><h2>${heading}</h2> <span class="gist" data-part="${gist}">${kitPart(view, gist)}</span></summary>
<div id="${id}" class="inside" data-part="${name}">${kitPart(view, name)}</div></details>
`;
}
