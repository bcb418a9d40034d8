import { bookFigures } from "../../core/finder/book-figures.ts";
import { listKits } from "../../core/finder/kit-list.ts";
import { fromQueryAddress, NO_QUERY, type Query, toQueryAddress } from "../../core/finder/query.ts";
import { finderSummary, leftOutOf, missingFigures } from "../../words/finder.ts";
import { language } from "../../words/language.ts";
import * as say from "../../words/messages.ts";
import { keepBook, keptBook } from "../shared/kept-book.ts";
import { hasWrongField } from "../shared/marked-control.ts";
import { arrangeCards, type Card, type Judged, readCards, writeCard } from "./finder-cards.ts";
import { readForm, unitsOf, writeBook, writeForm } from "./finder-form.ts";
import { sayResult } from "./finder-result.ts";
import { verdictOf } from "./finder-verdict.ts";
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
  press("kept", () => page.useKept());
  press("keep", () => page.keep());
  press("wishes", () => page.forgetWishes());
  press("all", () => page.forgetAll());
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
  /** Verdicts for the book and units under `#judged`. */
  #verdicts = new Map<string, Judged>();
  #judged = "";
  /** Counts the questions, so that an answer to an older one is dropped. */
  #run = 0;
  /** What was left out of what was shown last; told until the reader does something. */
  #leftOut: readonly string[] = [];

  /** A class's page makes a row of the book. */
  #row: SeatRowForm | undefined;

  constructor(form: HTMLFormElement, list: Element) {
    this.#form = form;
    this.#list = list;
    this.#cards = readCards(list);
    const row = document.querySelector<HTMLFormElement>("[data-seat-row]");
    if (row) this.#row = new SeatRowForm(row, () => this.#remember());
  }

  /** Follows what stands in the form. */
  follow(name: string): void {
    if (name === "units") writeBook(this.#form, this.#query.book);
    this.#query = readForm(this.#form, this.#query);
    this.#leftOut = [];
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#answer(), REST);
  }

  /** Puts a query into the form and answers it; tells what had to be left out. */
  show(query: Query, leftOut: readonly string[] = []): void {
    clearTimeout(this.#timer);
    this.#query = query;
    this.#leftOut = leftOut;
    writeForm(this.#form, query);
    this.#answer();
  }

  useKept(): void {
    const kept = keptBook();
    this.show(
      { ...this.#query, book: bookFigures(kept?.refit ?? {}) },
      leftOutOf({ ignored: kept?.ignored ?? [], noWishes: [] }),
    );
  }

  keep(): void {
    sayResult(keepBook(this.#query.book) ? say.finderSaved() : say.finderNotSaved());
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

  async #answer(): Promise<void> {
    this.#run += 1;
    this.#remember();
    this.#buttons();
    this.#row?.show(this.#query.book, !hasWrongField(this.#form));
    if (await this.#judgeAll(this.#run)) this.#arrange();
  }

  /** Judges every kit for the book, one after another so that the page stays alive; false when a newer question came. */
  async #judgeAll(run: number): Promise<boolean> {
    const { book } = this.#query;
    const units = unitsOf(this.#form);
    const wanted = JSON.stringify([book, units]);
    if (wanted === this.#judged) return true;
    const verdicts = new Map<string, Judged>();
    if (Object.keys(book).length > 0) {
      sayResult(say.finderWorking({ count: this.#cards.length }));
      for (const card of this.#cards) {
        verdicts.set(card.slug, await verdictOf(card, book, units));
        if (run !== this.#run) return false;
      }
    }
    this.#judged = wanted;
    this.#verdicts = verdicts;
    return true;
  }

  #arrange(): void {
    const shown = listKits(this.#cards, this.#verdicts, this.#query, language());
    const missing = missingFigures(this.#query.book);
    const wrong = hasWrongField(this.#form);
    for (const card of this.#cards) writeCard(card, this.#query.book, this.#verdicts, wrong || missing !== "");
    arrangeCards(this.#list, this.#cards, shown);
    const empty = document.querySelector<HTMLElement>("[data-finder-empty]");
    if (empty) empty.hidden = shown.length > 0;
    const asks = toQueryAddress(this.#query) !== "";
    sayResult(
      wrong ? say.finderWrongField() : "",
      asks ? finderSummary(shown, this.#cards.length, this.#verdicts) : "",
      missing,
      ...this.#leftOut,
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
