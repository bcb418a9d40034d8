import type { Offer } from "../../core/refit/offers.ts";
import type { Refit } from "../../core/refit/refit.ts";
import * as say from "../../words/messages.ts";

/** What the fit panel answers, below its fields. */
export class FitAnswer {
  #place: HTMLElement;

  constructor(place: HTMLElement) {
    this.#place = place;
  }

  /** A sentence, with more to look at where there is more. */
  say(words: string, ...more: readonly string[]): void {
    this.#place.replaceChildren(...[words, ...more].map(paragraph));
    this.#place.classList.remove("wrong");
    this.#place.classList.toggle("look", more.length > 0);
  }

  /** Why the kit does not fit, with a button for each change that would help. */
  explain(
    problem: { readonly given: string; readonly allowed: string; readonly remedy: string },
    offers: readonly Offer[],
    take: (refit: Refit) => void,
  ): void {
    const { given, allowed, remedy } = problem;
    const buttons = offers.map((offer) => {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = offer.words;
      button.addEventListener("click", () => take(offer.refit));
      return button;
    });
    this.#place.replaceChildren(paragraph(say.fitPanelMisfit({ given, allowed, remedy })), ...buttons);
    this.#place.classList.add("wrong");
  }
}

function paragraph(text: string): HTMLElement {
  const sentence = document.createElement("p");
  sentence.textContent = text;
  return sentence;
}
