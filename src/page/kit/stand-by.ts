import type { Refit } from "../../core/refit/refit.ts";
import * as say from "../../words/messages.ts";
import { measureBook } from "../measure/measure-book.ts";
import { keptAddress } from "../shared/kept-address.ts";
import { LoadError, loadScript } from "../shared/load-script.ts";
import type { bindRefit } from "./refit-page.ts";

declare global {
  interface Window {
    leaflightRefit?: typeof bindRefit;
  }
}

/**
 * Lets a kit's page fetch what fits it to a reader's book, which is large, when she first turns to the panel or to the units, or
 * comes with a book; what she does meanwhile is done once it is there.
 */
export function standBy(panel: HTMLFormElement): void {
  const radios = [...document.querySelectorAll<HTMLInputElement>('.hero input[name="units"]')];
  panel.hidden = false;
  if (keptAddress() !== "") panel.querySelector<HTMLElement>("[data-refit-kept]")!.hidden = false;
  panel.addEventListener("submit", (event) => event.preventDefault());
  const waiting = new Waiting(panel);
  for (const kind of ["focusin", "pointerdown"]) panel.addEventListener(kind, () => waiting.wake());
  for (const kind of ["input", "click"]) panel.addEventListener(kind, (event) => waiting.take(event));
  document.querySelector("main")?.addEventListener("click", (event) => waiting.takeFile(event));
  document.documentElement.classList.add("makes-files");
  panel.querySelector("[data-measure]")?.addEventListener("click", () => askBook(panel, waiting));
  for (const radio of radios) radio.addEventListener("change", () => waiting.wake());
  // What was kept from another page may differ from the units that this page was built in.
  if (location.search.length > 1 || radios.some((radio) => radio.checked && !radio.defaultChecked)) waiting.wake();
}

/** Asks for the reader's book, one measurement after the other, while what works it out is fetched. */
async function askBook(panel: HTMLFormElement, waiting: Waiting): Promise<void> {
  const inches = document.querySelector<HTMLInputElement>('.hero input[name="units"][value="in"]')?.checked;
  try {
    const book = await measureBook(panel, "../../", inches ? "in" : "mm");
    if (!book) return;
    await waiting.wake();
    waiting.show(book);
  } catch (error) {
    if (!(error instanceof LoadError)) throw error;
    panel.querySelector("[data-refit-state]")!.textContent = say.loadMeasure();
  }
}

/** A panel whose script is not there yet. */
class Waiting {
  #panel: HTMLFormElement;
  #fetching: Promise<void> | undefined;
  /** Shows figures of a book, once the script is there. */
  #show: ((book: Refit) => void) | undefined;
  /** What was done meanwhile: the last of each kind on each control. */
  #done = new Map<EventTarget, string>();

  constructor(panel: HTMLFormElement) {
    this.#panel = panel;
  }

  take(event: Event): void {
    if (this.#show || !event.target) return;
    const isAct = event.target instanceof HTMLButtonElement && event.target.dataset["measure"] === undefined;
    if (event.type === "input" || isAct) this.#done.set(event.target, event.type);
    this.wake();
  }

  /** A file that no build wrote is made by the script that is waited for. */
  takeFile(event: Event): void {
    const link = (event.target as Element).closest("a[data-made]");
    if (this.#show || !link) return;
    event.preventDefault();
    this.#done.set(link, "click");
    this.wake();
  }

  show(book: Refit): void {
    this.#show?.(book);
  }

  async wake(): Promise<void> {
    try {
      this.#fetching ??= loadScript("../../assets/scripts/refit.js", "refit");
      await this.#fetching;
      this.#bind();
    } catch (error) {
      if (!(error instanceof LoadError)) throw error;
      this.#fetching = undefined;
      this.#panel.querySelector("[data-refit-state]")!.textContent = say.loadRefit();
    }
  }

  #bind(): void {
    if (this.#show || !window.leaflightRefit) return;
    this.#show = window.leaflightRefit(this.#panel);
    for (const [control, kind] of this.#done) control.dispatchEvent(new Event(kind, { bubbles: true }));
  }
}
