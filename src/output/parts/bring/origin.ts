import { OUTLINES, type OutlineName } from "../../../core/beginning/answers.ts";
import type { Icon } from "../../../core/beginning/brought.ts";
import * as say from "../../../words/messages.ts";
import { type Html, html } from "../markup.ts";
import { choices, select } from "./controls.ts";

export type OriginKind = "file" | "word" | "outline" | "icon";

/** From where a picture may come. */
export function originChoices(chosen: OriginKind): Html {
  return choices(
    "origin",
    say.deskNewOrigin(),
    [
      { value: "file", label: say.deskNewOriginFile() },
      { value: "word", label: say.deskNewOriginWord() },
      { value: "outline", label: say.deskNewOriginOutline() },
      { value: "icon", label: say.deskNewOriginIcon() },
    ],
    { chosen, look: "in-rows" },
  );
}

/** The file that was brought, and another one instead. */
export function fileOrigin(name: string | undefined): Html {
  if (name === undefined) return html``;
  return html`<p class="bring-file-name">${name}</p><p><label class="bring-button" for="bring-file">${say.deskNewChooseOther()}</label></p>`;
}

export function wordOrigin(
  word: string,
  fonts: readonly { readonly value: string; readonly label: string }[],
  font: string,
): Html {
  const usual = { value: "", label: say.deskNewFontUsual() };
  return html`<div class="field"><label for="bring-word">${say.deskNewWord()}</label><textarea id="bring-word" data-word rows="2" maxlength="240" spellcheck="false">${word}</textarea></div>
${select("font", say.deskNewFont(), [usual, ...fonts], font)}`;
}

/** All outlines, each drawn by its path in a box of 100 by 100. */
export function outlineOrigin(chosen: OutlineName, pathOf: (name: OutlineName) => string): Html {
  const options = OUTLINES.map((value) => ({
    value,
    label: say.newOutlineName({ outline: value }),
    picture: small(pathOf(value), 100),
  }));
  return choices("outline", say.deskNewOutline(), options, { chosen, look: "in-pictures" });
}

export function iconOrigin(searched: string): Html {
  return html`<div class="field"><label for="bring-icon-search">${say.deskNewIconSearch()}</label><input id="bring-icon-search" data-icon-search value="${searched}" maxlength="40" autocomplete="off" spellcheck="false"></div>
<div data-icons></div><p class="hint">${say.deskNewIconFrom()}</p>`;
}

export function iconChoices(icons: readonly Icon[], chosen: string | undefined): Html {
  if (icons.length === 0) return html`<p class="hint">${say.deskNewIconNone()}</p>`;
  const options = icons.map(({ name, path }) => ({
    value: name,
    label: name.replaceAll("-", " "),
    picture: small(path, 256),
  }));
  return choices("icon", say.deskNewIcon(), options, { chosen, look: "in-pictures" });
}

function small(path: string, side: number): Html {
  return html`<svg viewBox="0 0 ${side} ${side}" aria-hidden="true"><path fill-rule="evenodd" d="${path}"/></svg>`;
}
