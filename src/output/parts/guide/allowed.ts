import type { Allowed, Measure, NumberBounds } from "../../../core/guide/reference.ts";
import * as say from "../../../words/messages.ts";
import { type Html, html, type Markup } from "../markup.ts";

/** The forms that a value may have, one to a line. `keys` is the address of the table with the keys that it holds. */
export function allowedForms(allowed: readonly Allowed[], keys: string | undefined): Html {
  return html`${allowed.map((one) => html`<span class="form">${formOf(one, keys)}</span> `)}`;
}

function formOf(allowed: Allowed, keys: string | undefined): Markup {
  switch (allowed.kind) {
    case "length":
      return say.guideLength({ least: String(allowed.least), most: String(allowed.most) });
    case "number":
      return numberText(allowed);
    case "words":
      return codes(allowed.words);
    case "text":
      return allowed.most === undefined ? say.guideText() : say.guideTextMost({ most: allowed.most });
    case "list":
      return html`${listText(allowed)}, ${say.guideEach()} ${side(allowed.of, keys)}`;
    case "named":
      return allowed.names.length === 0
        ? html`${say.guideOwnNames()}, ${say.guideEach()} ${side(allowed.of, keys)}`
        : html`${say.guideNames()} ${codes(allowed.names)}; ${say.guideEach()} ${side(allowed.of, keys)}`;
    case "keys":
      return html`<a href="${keys!}">${say.guideKeys()}</a>`;
    default:
      return SIMPLE[allowed.kind]();
  }
}

const SIMPLE = {
  day: say.guideDay,
  address: say.guideAddress,
  flag: say.guideFlag,
} as const;

const MEASURES: Readonly<Record<Exclude<Measure, "mm">, () => string>> = {
  degrees: say.guideDegrees,
  seconds: say.guideSeconds,
  minutes: say.guideMinutes,
};

function numberText({ whole, measure, least, most, above }: Extract<Allowed, { kind: "number" }>): string {
  const number =
    measure === undefined || measure === "mm" ? say.guideNumber({ whole: whole ? "yes" : "no" }) : MEASURES[measure]();
  return bounded(number, { least, most, above });
}

/** Figures stand as they are typed in a file. */
function bounded(number: string, { least, most, above }: NumberBounds): string {
  if (above !== undefined && most !== undefined)
    return say.guideNumberAboveMost({ number, above: String(above), most: String(most) });
  if (above !== undefined) return say.guideNumberAbove({ number, above: String(above) });
  if (least !== undefined && most !== undefined)
    return say.guideNumberBetween({ number, least: String(least), most: String(most) });
  return least === undefined ? number : say.guideNumberFrom({ number, least: String(least) });
}

function listText({ least, most }: Extract<Allowed, { kind: "list" }>): string {
  if (most === undefined) return say.guideList();
  if (least === most) return say.guideListExactly({ most });
  return least > 1 ? say.guideListBetween({ least, most }) : say.guideListMost({ most });
}

/** Several forms of one thing, side by side. */
function side(allowed: readonly Allowed[], keys: string | undefined): Html {
  return html`${allowed.map((one, i) => html`${i > 0 && "; "}${formOf(one, keys)}`)}`;
}

function codes(words: readonly string[]): Html {
  return html`${words.map((word, i) => html`${i > 0 && ", "}<code>${word}</code>`)}`;
}
