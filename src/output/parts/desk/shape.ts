import * as say from "../../../words/messages.ts";
import { type Html, html, raw } from "../markup.ts";

/** The choice of a shape and of its level. */
export interface ShapeChoice {
  /** In the order of the picture, by number from 0. */
  readonly shapes: readonly { readonly name: string; readonly level: string }[];
  readonly chosen: number | undefined;
  /** Names of the levels, and which the chosen shape has. */
  readonly levels: readonly string[];
  readonly level: number | undefined;
  /** Whether it can be given another level here. */
  readonly isFree: boolean;
}

/** A list to choose a shape from, and the levels that it may have. */
export function shapeChoice({ shapes, chosen, levels, level, isFree }: ShapeChoice): Html {
  if (shapes.length === 0) return html``;
  const options = shapes.map(
    (shape, i) =>
      html`<option value="${i}"${i === chosen && raw(" selected")}>${say.deskKitShapeOption(shape)}</option>`,
  );
  return html`<div class="field"><label for="desk-shape">${say.deskKitShapeChoose()}</label><select id="desk-shape" data-shape-choice><option value=""${chosen === undefined && raw(" selected")}>${say.deskKitShapeNone()}</option>${options}</select></div>
${chosen === undefined ? html`<p class="hint">${say.deskKitSheetPress()}</p>` : levelChoice(levels, level, isFree)}`;
}

function levelChoice(levels: readonly string[], level: number | undefined, isFree: boolean): Html {
  if (!isFree) return html`<p class="hint">${say.deskKitShapeFixed()}</p>`;
  const choices = levels.map(
    (name, i) =>
      html`<label class="level-choice"><input type="radio" name="shape-level" value="${name}"${i + 1 === level && raw(" checked")}><b>${i + 1}</b> ${name}</label>`,
  );
  return html`<fieldset class="level-choices"><legend>${say.deskKitShapeLevel()}</legend>${choices}</fieldset>`;
}
