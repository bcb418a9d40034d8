import type { Refit } from "../../core/refit/refit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { QUESTIONS, type Question } from "../../output/parts/measuring.ts";
import * as say from "../../words/messages.ts";
import { CheckScreen } from "./check-screen.ts";
import { MeasureForm } from "./measure-form.ts";

const TITLES: Readonly<Record<Question, () => string>> = {
  pages: say.measurePages,
  leafHeight: say.measureHeight,
  leafWidth: say.measureWidth,
  blockThickness: say.measureThickness,
};

/** The dialog's screens, one after the other: each question, and after the pages what tells whether they were counted rightly. */
export class MeasureDialog {
  /** The figures that were stated; undefined until all screens were passed. */
  result: Refit | undefined;
  #dialog: HTMLDialogElement;
  #form: MeasureForm;
  #check: CheckScreen;
  #at: Question | "check" = "pages";

  constructor(dialog: HTMLDialogElement, units: UnitSystem) {
    this.#dialog = dialog;
    const form = dialog.querySelector("form")!;
    this.#form = new MeasureForm(form, units);
    this.#check = new CheckScreen(this.#form, () => this.#show("leafHeight"));
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.#next();
    });
    this.#form.part("back").addEventListener("click", () => this.#back());
    this.#form.part("cancel").addEventListener("click", () => dialog.close());
  }

  start(): void {
    this.#show("pages");
  }

  #next(): void {
    if (this.#at === "check") {
      this.#check.next();
      return;
    }
    const wrong = this.#form.read(this.#at);
    if (wrong) wrong.focus();
    else this.#goOn(this.#at);
  }

  #goOn(from: Question): void {
    const counted = from === "pages" ? this.#form.counted() : undefined;
    const next = counted && this.#check.begin(counted) ? "check" : QUESTIONS[QUESTIONS.indexOf(from) + 1];
    if (next) {
      this.#show(next);
      return;
    }
    this.result = this.#form.book();
    this.#dialog.close();
  }

  #back(): void {
    const before = this.#at === "check" ? "pages" : QUESTIONS[QUESTIONS.indexOf(this.#at) - 1];
    if (before) this.#show(before);
  }

  #show(screen: Question | "check"): void {
    this.#at = screen;
    for (const one of this.#form.screens()) one.hidden = one.dataset["measureScreen"] !== screen;
    const question = screen === "check" ? "pages" : screen;
    const step = QUESTIONS.indexOf(question) + 1;
    this.#form.part("step").textContent = say.measureStep({ step, count: QUESTIONS.length });
    const title = this.#form.part("title");
    title.textContent = screen === "check" ? say.measureCheck() : TITLES[question]();
    this.#form.part("back").hidden = screen === "pages";
    const next = this.#form.part("next");
    next.textContent = step === QUESTIONS.length ? say.measureDone() : say.measureNext();
    next.hidden = screen === "check";
    if (screen !== "check") this.#form.tell(this.#form.toldAt(screen));
    this.#dialog.scrollTop = 0;
    focusFor(title, this.#form.firstInput(screen));
  }
}

/** Where fingers type, the keys would cover the picture before it was seen. */
function focusFor(title: HTMLElement, input: HTMLElement | null): void {
  (input && matchMedia("(pointer: fine)").matches ? input : title).focus();
}
