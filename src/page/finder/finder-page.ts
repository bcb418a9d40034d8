import { bookFigures } from "../../core/finder/book-figures.ts";
import { listKits } from "../../core/finder/kit-list.ts";
import { fromQueryAddress, NO_QUERY, type Query, toQueryAddress } from "../../core/finder/query.ts";
import type { Refit } from "../../core/refit/refit.ts";
import { finderSummary, leftOutOf, missingFigures } from "../../words/finder.ts";
import { language } from "../../words/language.ts";
import * as say from "../../words/messages.ts";
import { measureBook } from "../measure/measure-book.ts";
import { keepBook, keptBook } from "../shared/kept-book.ts";
import { LoadError } from "../shared/load-script.ts";
import { hasWrongField } from "../shared/marked-control.ts";
import { FinderAnswers } from "./finder-answers.ts";
import { arrangeCards, type Card, readCards, writeCard } from "./finder-cards.ts";
import { readForm, unitsOf, writeBook, writeForm } from "./finder-form.ts";
import { sayResult } from "./finder-result.ts";
import { SeatRowForm } from "./seat-row-form.ts";

/** The kits follow this long after the last key, ms. */
const REST = 300;

/** Binds the finder of the catalogue. */
export function bindFinder(finder: HTMLDetailsElement): void {
  const form = finder.querySelector<HTMLFormElement>("[data-finder-form]");
  const list = document.querySelector(".cards");
  if (!form || !list) return;
  const page = new FinderPage(form, list);
  const press = (name: string, act: () => void): void => {
    document.querySelector(`[data-finder-${name}]`)?.addEventListener("click", act);
  };
  form.addEventListener("input", (event) => page.follow((event.target as HTMLInputElement).name));
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("reset", (event) => {
    event.preventDefault();
    page.show(NO_QUERY);
  });
  form.querySelector("[data-measure]")?.addEventListener("click", () => page.measure());
  press("kept", () => page.useKept());
  press("keep", () => page.keep());
  press("wishes", () => page.forgetWishes());
  press("all", () => page.forgetAll());
  press("more", () => page.askAll());
  finder.hidden = false;
  const asked = fromQueryAddress(new URLSearchParams(location.search));
  const leftOut = leftOutOf(asked);
  finder.open ||= toQueryAddress(asked.query) !== "" || leftOut.length > 0;
  page.show(asked.query, leftOut);
}

class FinderPage {
  #form: HTMLFormElement;
  #list: Element;
  #cards: readonly Card[];
  #query: Query = NO_QUERY;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #answers: FinderAnswers;
  /** Counts the questions, so that an answer to an older one is dropped. */
  #run = 0;
  /** What is told beside the kits until the reader does something: what was left out of what was shown last, or that the book was kept. */
  #besides: readonly string[] = [];

  /** The last book whose page numbers were stated. */
  #counted: Refit | undefined;

  /** A class's page makes a row of the book. */
  #row: SeatRowForm | undefined;

  constructor(form: HTMLFormElement, list: Element) {
    this.#form = form;
    this.#list = list;
    this.#cards = readCards(list);
    this.#answers = new FinderAnswers(this.#cards);
    const row = document.querySelector<HTMLFormElement>("[data-seat-row]");
    if (row) this.#row = new SeatRowForm(row, () => this.#remember());
  }

  /** Follows what stands in the form. */
  follow(name: string): void {
    if (name === "units") writeBook(this.#form, this.#query.book);
    this.#query = readForm(this.#form, { ...this.#query, book: this.#counted ?? this.#query.book });
    this.#count();
    this.#besides = [];
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#answer(), REST);
  }

  /** Puts a query into the form and answers it; tells what had to be left out. */
  show(query: Query, leftOut: readonly string[] = []): void {
    clearTimeout(this.#timer);
    this.#query = query;
    this.#counted = undefined;
    this.#count();
    this.#besides = leftOut;
    writeForm(this.#form, query);
    this.#answer();
  }

  /** Page numbers hang on the count of leaves: they are back as soon as it is again what they were counted with. */
  #count(): void {
    const { book } = this.#query;
    if (book.pageOneLeaf !== undefined || book.lastPage !== undefined) this.#counted = book;
  }

  /** Asks for the book, one measurement after the other. */
  async measure(): Promise<void> {
    try {
      const book = await measureBook(
        this.#form,
        (this.#list as HTMLElement).dataset["site"] ?? "",
        unitsOf(this.#form),
      );
      if (book) this.show({ ...this.#query, book: { ...this.#query.book, ...book } });
    } catch (error) {
      if (!(error instanceof LoadError)) throw error;
      sayResult(say.loadMeasure());
    }
  }

  useKept(): void {
    const kept = keptBook();
    this.show(
      { ...this.#query, book: bookFigures(kept?.refit ?? {}) },
      leftOutOf({ ignored: kept?.ignored ?? [], noWishes: [] }),
    );
  }

  keep(): void {
    // An answer that is still on its way tells it, too.
    this.#besides = [keepBook(this.#query.book) ? say.finderSaved() : say.finderNotSaved()];
    sayResult(...this.#besides);
    this.#buttons();
  }

  forgetWishes(): void {
    this.show({ ...NO_QUERY, book: this.#query.book });
    this.#form.closest("details")?.querySelector("summary")?.focus();
  }

  forgetAll(): void {
    this.show(NO_QUERY);
    this.#form.closest("details")?.querySelector("summary")?.focus();
  }

  /** Works out the kits, too, that were not asked at first. */
  askAll(): void {
    this.#answers.askAll();
    this.#answer();
    this.#form.closest("details")?.querySelector("summary")?.focus();
  }

  async #answer(): Promise<void> {
    this.#run += 1;
    this.#remember();
    this.#buttons();
    this.#row?.show(this.#query.book, !hasWrongField(this.#form));
    const run = this.#run;
    const asking = {
      query: this.#query,
      units: unitsOf(this.#form),
      working: () => sayResult(say.finderWorking({ count: this.#cards.length })),
      isOver: () => run !== this.#run,
    };
    if (await this.#answers.ask(asking)) this.#arrange();
  }

  #arrange(): void {
    const { verdicts, near } = this.#answers;
    const shown = listKits({ kits: this.#cards, verdicts, near, query: this.#query }, language());
    const missing = missingFigures(this.#query.book);
    const wrong = hasWrongField(this.#form);
    for (const card of this.#cards) writeCard(card, this.#query, verdicts, wrong || missing !== "");
    arrangeCards(this.#list, this.#cards, shown);
    const empty = document.querySelector<HTMLElement>("[data-finder-empty]");
    if (empty) empty.hidden = shown.length > 0;
    const waiting = shown.filter(({ slug }) => !verdicts.has(slug)).length;
    const more = document.querySelector<HTMLElement>("[data-finder-more]")!;
    more.hidden = Object.keys(this.#query.book).length === 0 || waiting === 0;
    more.querySelector("button")!.textContent = say.finderMore({ count: waiting });
    const asks = toQueryAddress(this.#query) !== "";
    sayResult(
      wrong ? say.finderWrongField() : "",
      asks ? finderSummary(shown, this.#cards.length, verdicts) : "",
      missing,
      ...this.#besides,
    );
  }

  /** The address says what is asked, so that it can be shared and comes back with the back button. */
  #remember(): void {
    const address = [toQueryAddress(this.#query), this.#row?.address()].filter(Boolean).join("&");
    history.replaceState(null, "", `${location.pathname}${address ? `?${address}` : ""}${location.hash}`);
  }

  #buttons(): void {
    const stated = Object.keys(this.#query.book).length > 0;
    this.#form.querySelector<HTMLElement>("[data-finder-keep]")!.hidden = !stated;
    this.#form.querySelector<HTMLElement>("[data-finder-kept]")!.hidden = keptBook() === undefined;
    document.querySelector<HTMLElement>("[data-finder-wishes]")!.hidden = !stated;
  }
}
