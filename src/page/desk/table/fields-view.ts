import type { Edit } from "../../../input/desk/edit.ts";
import { deskField } from "../../../output/parts/desk/field.ts";
import type { Markup } from "../../../output/parts/markup.ts";
import { html } from "../../../output/parts/markup.ts";
import * as say from "../../../words/messages.ts";
import {
  type FieldsOf,
  type FigureField,
  figureText,
  isChosen,
  readFigure,
  shownField,
  steppedFigure,
} from "./figure-field.ts";
import type { AnyShown, Hands, Shown } from "./shown.ts";

/** What stands beside the fields of a part: words and buttons, and what these change. */
export interface Around {
  readonly above?: Markup;
  readonly below?: Markup;
  /** By what its button does. */
  readonly hands?: Readonly<Record<string, () => readonly Edit[]>>;
  /** Sets a motif of this name. */
  readonly set?: (motif: string) => readonly Edit[];
}

/** The fields of one part of the kit. They stay in place while only figures change, so that who types is not disturbed. */
export class FieldsView<Of extends AnyShown = Shown> {
  readonly #place: HTMLElement;
  readonly #of: FieldsOf<Of>;
  readonly #aroundOf: (shown: Of) => Around;
  readonly #hands: Hands;
  #around: Around = {};
  #fields: readonly FigureField[] = [];
  #shown: Of | undefined;
  #markup = "";

  constructor(place: HTMLElement, of: FieldsOf<Of>, hands: Hands, around: (shown: Of) => Around = () => ({})) {
    this.#place = place;
    this.#of = of;
    this.#aroundOf = around;
    this.#hands = hands;
    place.addEventListener("change", ({ target }) => this.#changed(target as HTMLElement));
    place.addEventListener("keydown", (event) => this.#key(event));
    place.addEventListener("click", ({ target }) => this.#pressed(target as HTMLElement));
    place.addEventListener("focusout", () => hands.rest());
  }

  show(shown: Of): void {
    this.#shown = shown;
    this.#fields = this.#of(shown);
    this.#around = this.#aroundOf(shown);
    const { above, below } = this.#around;
    const form = this.#fields.map((field) => [
      field.name,
      field.label,
      "fixed" in field && field.fixed,
      isChosen(field) && field.options,
    ]);
    const markup = JSON.stringify([String(above ?? ""), String(below ?? ""), form, shown.kit.units]);
    if (markup === this.#markup) this.#fill(shown);
    else this.#write(shown, above, below);
    this.#markup = markup;
  }

  #write({ kit }: Of, above: Markup, below: Markup): void {
    const focused = (document.activeElement as HTMLElement | null)?.dataset.field;
    this.#place.innerHTML = String(
      html`${above}${this.#fields.map((field) => deskField(shownField(field, kit.units)))}${below}`,
    );
    for (const field of this.#fields) this.#spin(field);
    if (focused) this.#control(focused)?.focus();
  }

  #fill({ kit }: Of): void {
    for (const field of this.#fields) {
      const control = this.#control(field.name)!;
      const value = isChosen(field) ? field.chosen : figureText(field, kit.units);
      if (control.ariaInvalid === "true" && control === document.activeElement) continue;
      if (control.value !== value) control.value = value;
      // What stands there now is taken: undo is the table's, not the field's.
      if (control instanceof HTMLInputElement) control.defaultValue = value;
      this.#spin(field);
      this.#tell(field.name, undefined);
    }
  }

  /** A figure is stepped with the arrow keys, and says so. */
  #spin(field: FigureField): void {
    if (isChosen(field)) return;
    const control = this.#control(field.name)!;
    control.setAttribute("role", "spinbutton");
    control.ariaValueNow = String(field.figure);
    control.ariaValueMin = String(field.bounds.least);
    control.ariaValueMax = String(field.bounds.most);
    control.ariaValueText = control.value;
  }

  #pressed(target: HTMLElement): void {
    const does = target.closest<HTMLElement>("[data-do]")?.dataset.do;
    const edits = does === undefined ? undefined : this.#around.hands?.[does]?.();
    if (edits) this.#hands.change(edits);
  }

  #changed(control: HTMLElement): void {
    if (control.dataset.addMotif !== undefined) {
      const { value } = control as HTMLSelectElement;
      if (value !== "" && this.#around.set) this.#hands.change(this.#around.set(value));
      return;
    }
    const field = this.#fieldOf(control);
    if (!field || !this.#shown) return;
    const { value } = control as HTMLInputElement | HTMLSelectElement;
    if (isChosen(field)) {
      this.#hands.change(field.edits(value));
      return;
    }
    const { units } = this.#shown.kit;
    if (value === figureText(field, units)) return;
    const read = readFigure(field, value, units);
    this.#tell(field.name, "allowed" in read ? read.allowed : undefined);
    if ("value" in read) this.#hands.change(field.edits(read.value));
  }

  #key(event: KeyboardEvent): void {
    const field = this.#fieldOf(event.target as HTMLElement);
    if (!field || !this.#shown || isChosen(field) || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === "Enter") {
      this.#changed(event.target as HTMLElement);
      return;
    }
    if (event.key !== "ArrowUp" && event.key !== "ArrowDown") return;
    event.preventDefault();
    const value = steppedFigure(field, event.key === "ArrowUp" ? 1 : -1, event.shiftKey, this.#shown.kit.units);
    if (value !== field.figure) this.#hands.change(field.edits(value), field.name);
  }

  #tell(name: string, allowed: string | undefined): void {
    const control = this.#control(name)!;
    control.ariaInvalid = allowed === undefined ? null : "true";
    const told = this.#place.querySelector<HTMLElement>(`#desk-${name}-fault`)!;
    told.hidden = allowed === undefined;
    told.textContent = allowed === undefined ? "" : say.fitPanelAllowed({ allowed });
  }

  #fieldOf({ dataset }: HTMLElement): FigureField | undefined {
    return this.#fields.find(({ name }) => name === dataset.field);
  }

  #control(name: string): HTMLInputElement | HTMLSelectElement | null {
    return this.#place.querySelector(`[data-field="${name}"]`);
  }
}
