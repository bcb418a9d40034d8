import type { KitView } from "../views/kit-view.ts";
import { type Chapter, GIST_PARTS } from "./gists.ts";
import { KIT_PARTS } from "./kit-parts.ts";
import { type Html, html } from "./markup.ts";

/**
 * A part of a kit's page that stands closed under its heading and what is in it. Its id is inside, so that a link to it opens
 * it, with scripts or without.
 */
export function chapter(view: KitView, id: string, heading: string, name: Chapter): Html {
  const gist: `${Chapter}-gist` = `${name}-gist`;
  return html`<details class="chapter"><summary><h2>${heading}</h2> <span class="gist" data-part="${gist}">${GIST_PARTS[gist](view)}</span></summary>
<div id="${id}" class="inside" data-part="${name}">${KIT_PARTS[name](view)}</div></details>
`;
}
