import { type Html, html, raw } from "../markup.ts";

/** A figure on the desk that is typed, stepped or chosen. */
export interface FieldShown {
  /** Unique on the page. */
  readonly name: string;
  readonly label: string;
  readonly value: string;
  /** What is chosen from; undefined where a figure is typed. */
  readonly options?: readonly { readonly value: string; readonly label: string }[] | undefined;
  /** The keys that a phone shows. */
  readonly keys?: "numeric" | "decimal" | "text";
  /** It follows from others, and cannot be changed. */
  readonly fixed?: boolean;
}

/** Letters of a choice that has room in a narrow field. */
const SHORT = 9;

/** A field with its label; what is wrong with it is told below it. */
export function deskField(field: FieldShown): Html {
  const isWide = field.options?.some(({ label }) => label.length > SHORT) ?? false;
  return html`<div class="field${isWide && " wide"}"><label for="desk-${field.name}">${field.label}</label>${control(field)}<p class="fault" id="desk-${field.name}-fault" hidden></p></div>`;
}

function control({ name, value, options, keys = "text", fixed = false }: FieldShown): Html {
  const asked = html`id="desk-${name}" data-field="${name}" aria-describedby="desk-${name}-fault"${fixed && raw(" disabled")}`;
  if (!options)
    return html`<input ${asked} value="${value}" inputmode="${keys}" autocomplete="off" spellcheck="false">`;
  const choices = options.map(
    (one) => html`<option value="${one.value}"${one.value === value && raw(" selected")}>${one.label}</option>`,
  );
  return html`<select ${asked}>${choices}</select>`;
}
