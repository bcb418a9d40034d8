import { leafNumber } from "../../core/book/leaf-number.ts";
import { leavesNeeded } from "../../core/book/numbering.ts";
import type { Counted } from "../../core/book/page-check.ts";
import { BOUNDS } from "../../core/kit/bounds.ts";
import { bookFields } from "../../core/refit/fields.ts";
import { readField } from "../../core/refit/read-field.ts";
import type { Refit } from "../../core/refit/refit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { readNumber } from "../../core/units/written-number.ts";
import type { Question } from "../../output/parts/measuring.ts";
import { faultText } from "../../words/fields.ts";
import * as say from "../../words/messages.ts";
import { markControl } from "../shared/marked-control.ts";

/** The fields of each question that are figures of a book. */
const ASKED: Readonly<Record<Question, readonly string[]>> = {
  pages: ["lastPage", "pageOneLeaf"],
  leafHeight: ["leafHeight"],
  leafWidth: ["leafWidth"],
  blockThickness: ["blockThickness"],
};

/** What stands in the dialog, and what of it is known. */
export class MeasureForm {
  #form: HTMLFormElement;
  #units: UnitSystem;
  #book: Refit = {};
  #behind = 0;

  constructor(form: HTMLFormElement, units: UnitSystem) {
    this.#form = form;
    this.#units = units;
    for (const radio of form.querySelectorAll<HTMLInputElement>("[data-measure-units]"))
      radio.addEventListener("change", () => this.#measureIn(radio.value as UnitSystem));
    this.#measureIn(units);
  }

  /** An element of the dialog. @throws Error where there is none */
  part(name: string): HTMLElement {
    const found = this.#form.querySelector<HTMLElement>(`[data-measure-${name}]`);
    if (!found) throw new Error(`the dialog has no part "${name}"`);
    return found;
  }

  screens(): HTMLElement[] {
    return [...this.#form.querySelectorAll<HTMLElement>("[data-measure-screen]")];
  }

  input(name: string): HTMLInputElement {
    return this.#form.elements.namedItem(name) as HTMLInputElement;
  }

  firstInput(screen: Question | "check"): HTMLInputElement | null {
    return this.#form.querySelector(`[data-measure-screen="${screen}"] input:not([type="radio"])`);
  }

  tell(words: string): void {
    this.part("told").textContent = words;
  }

  /** Takes the texts of a question; the first that cannot be taken is marked and given back. */
  read(question: Question): HTMLInputElement | undefined {
    const wrong = ASKED[question].filter((name) => !this.take(name));
    if (question === "pages" && !this.#takeBehind()) wrong.push("behind");
    if (wrong.length > 0) this.tell(say.measureUnread());
    return wrong[0] === undefined ? undefined : this.input(wrong[0]);
  }

  /** Takes one figure of the book; an empty field states none. Whether its text could be taken. */
  take(name: string): boolean {
    const input = this.input(name);
    const field = bookFields().find((one) => one.name === name)!;
    const { [field.key]: _, ...others } = this.#book;
    const read =
      input.value.trim() === "" ? { refit: {} } : readField(field, input.value, { units: this.#units, levels: [] });
    markControl(input, "fault" in read ? faultText(read.fault, this.#units) : undefined);
    if ("refit" in read) this.#book = { ...others, ...read.refit };
    return "refit" in read;
  }

  /** A whole number in a field that is no figure of a book; undefined where there is none, and the field is marked. */
  count(name: string, least: number, most: number): number | undefined {
    const value = readNumber(this.input(name).value);
    const sound = Number.isInteger(value) && value >= least && value <= most;
    markControl(this.input(name), sound ? undefined : say.fitAllowedCount({ least, most }));
    return sound ? value : undefined;
  }

  /** What is counted of the pages, once the last one is known. */
  counted(): Counted | undefined {
    const { lastPage, pageOneLeaf = leafNumber(1), plates = [] } = this.#book;
    return lastPage === undefined ? undefined : { lastPage, pageOneLeaf, plates };
  }

  /** The book with the leaves that its pages make. */
  book(): Refit {
    const counted = this.counted();
    if (!counted) return this.#book;
    return { ...this.#book, ...counted, leaves: leavesNeeded(counted) + this.#behind };
  }

  /** What follows from the pages, told where the next question begins. */
  toldAt(question: Question): string {
    const { leaves } = this.book();
    return question === "pages" || leaves === undefined ? "" : say.measureLeaves({ leaves });
  }

  #takeBehind(): boolean {
    const { least, most } = { least: 0, most: BOUNDS.leaves.most };
    const empty = this.input("behind").value.trim() === "";
    if (empty) markControl(this.input("behind"), undefined);
    const behind = empty ? 0 : this.count("behind", least, most);
    this.#behind = behind ?? this.#behind;
    return behind !== undefined;
  }

  /** A ruler in inches needs keys for fractions. */
  #measureIn(units: UnitSystem): void {
    this.#units = units;
    for (const radio of this.#form.querySelectorAll<HTMLInputElement>("[data-measure-units]"))
      radio.checked = radio.value === units;
    for (const name of [...ASKED.leafHeight, ...ASKED.leafWidth, ...ASKED.blockThickness])
      this.input(name).inputMode = units === "mm" ? "decimal" : "text";
  }
}
