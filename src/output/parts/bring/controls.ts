import { type Html, html, raw } from "../markup.ts";

/** One of several, of which one is chosen. */
export interface Option {
  readonly value: string;
  readonly label: string;
  /** What is seen of it beside its label. */
  readonly picture?: Html;
}

/** Radio buttons under one name. */
export function choices(
  name: string,
  legend: string,
  options: readonly Option[],
  { chosen, look = "" }: { readonly chosen: string | undefined; readonly look?: string },
): Html {
  const items = options.map(
    ({ value, label, picture }) =>
      html`<label><input type="radio" id="bring-${name}-${value}" name="bring-${name}" value="${value}" data-${raw(name)}${value === chosen && raw(" checked")}>${picture}<span>${label}</span></label>
`,
  );
  return html`<fieldset class="bring-choices ${look}"><legend>${legend}</legend>${items}</fieldset>`;
}

/** A figure that is pushed along a bar. */
export interface Range {
  readonly name: string;
  readonly label: string;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly value: number;
  /** The figure with its unit. */
  readonly said: string;
}

export function range({ name, label, least, most, step, value, said }: Range): Html {
  return html`<div class="bring-range"><label for="bring-${name}">${label}</label><output for="bring-${name}" data-said="${name}">${said}</output><input type="range" id="bring-${name}" data-range="${name}" min="${least}" max="${most}" step="${step}" value="${value}" aria-valuetext="${said}"></div>
`;
}

/** A list to choose from, with its label. */
export function select(name: string, label: Html | string, options: readonly Option[], chosen: string): Html {
  const items = options.map(
    ({ value, label: text }) => html`<option value="${value}"${value === chosen && raw(" selected")}>${text}</option>`,
  );
  return html`<div class="field"><label for="bring-${name}">${label}</label><select id="bring-${name}" data-${raw(name)}>${items}</select></div>`;
}

/** A field to type in; what is wrong with it stands below it. */
export interface TypedField {
  readonly name: string;
  readonly label: string;
  readonly value: string;
  readonly keys?: "numeric" | "decimal" | "text";
  readonly most?: number;
  /** Below it while nothing is wrong. */
  readonly help?: string;
}

export function typed({ name, label, value, keys = "text", most = 40, help = "" }: TypedField): Html {
  return html`<div class="field"><label for="bring-${name}">${label}</label><input id="bring-${name}" name="${name}" value="${value}" inputmode="${keys}" maxlength="${most}" autocomplete="off" spellcheck="false" aria-describedby="bring-${name}-help"><p class="bring-help" id="bring-${name}-help">${help}</p></div>`;
}
