import type { Reference, ReferenceGroup, ReferenceKey, ReferenceName, Usual } from "../../../core/guide/reference.ts";
import * as say from "../../../words/messages.ts";
import { type Html, html, type Markup } from "../markup.ts";
import { allowedForms } from "./allowed.ts";

/** Of the headings over groups of keys: 2 where no section's heading stands above them. */
export type HeadingLevel = 2 | 3;

/** A file's keys as tables: one for the keys at its top, then one for each key that holds keys. */
export function referencePart(name: ReferenceName, reference: Reference, level: HeadingLevel): Html {
  return html`${reference.map((group) => groupPart(name, group, level))}`;
}

/** The anchor of a group of keys: of `book.plates[]` in a kit, `kit-book-plates`. */
export function groupId(name: ReferenceName, path: string): string {
  return [name, ...path.replaceAll("[]", "").split(".").filter(Boolean)].join("-");
}

function groupPart(name: ReferenceName, { path, about, keys }: ReferenceGroup, level: HeadingLevel): Html {
  const heading =
    path !== "" &&
    html`${level === 2 ? html`<h2><code>${path}</code></h2>` : html`<h3><code>${path}</code></h3>`}
<p>${about}</p>
`;
  const columns = [say.guideKey(), say.guideMeaning(), say.guideAllowed(), say.guideUsual()];
  return html`<div class="key-group" id="${groupId(name, path)}">${heading}<table class="reference">
<thead><tr>${columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
<tbody>${keys.map((key) => keyRow(name, key))}</tbody>
</table></div>
`;
}

function keyRow(name: ReferenceName, { path, about, allowed, usual, group }: ReferenceKey): Html {
  const forms = allowedForms(allowed, group === undefined ? undefined : `#${groupId(name, group)}`);
  return html`<tr><th scope="row"><code>${path}</code></th><td>${about}</td><td data-label="${say.guideAllowed()}">${forms}</td><td data-label="${say.guideUsual()}">${usualText(usual)}</td></tr>
`;
}

function usualText(usual: Usual): Markup {
  switch (usual.kind) {
    case "required":
      return html`<strong>${say.guideRequired()}</strong>`;
    case "none":
      return say.guideNone();
    case "typed":
      return html`<code>${usual.text}</code>`;
    case "said":
      return usual.text;
  }
}
