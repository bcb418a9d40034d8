import type { Failure } from "../../core/findings/failure.ts";
import type { Offer } from "../../core/refit/offer.ts";
import type { Refit } from "../../core/refit/refit.ts";
import type { Telling } from "../../words/findings/failure-figures.ts";
import { whyText } from "../../words/findings/failure-why.ts";
import { offerText } from "../../words/findings/offers.ts";
import { readerRemedy } from "../../words/findings/reader-remedy.ts";
import * as say from "../../words/messages.ts";

/** What the fit panel answers, below its fields. */
export class FitAnswer {
  /** What stands below every answer until the reader does something. */
  standing: readonly string[] = [];
  #place: HTMLElement;

  constructor(place: HTMLElement) {
    this.#place = place;
  }

  /** A sentence, with more to look at where there is more. */
  say(words: string, ...more: readonly string[]): void {
    const below = [...more, ...this.standing];
    this.#place.replaceChildren(...[words, ...below].map(paragraph));
    this.#place.classList.remove("wrong");
    this.#place.classList.toggle("look", below.length > 0);
  }

  /** Why the kit does not fit, with a button for each change that would help. */
  explain(failure: Failure, telling: Telling, offers: readonly Offer[], take: (refit: Refit) => void): void {
    const buttons = offers.map((offer) => {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = offerText(offer, telling.units);
      button.addEventListener("click", () => take(offer.refit));
      return button;
    });
    const why = say.fitPanelMisfit({ why: whyText(failure, telling) });
    const all = [why, readerRemedy(failure, telling), ...this.standing];
    this.#place.replaceChildren(...all.map(paragraph), ...buttons);
    this.#place.classList.add("wrong");
  }
}

function paragraph(text: string): HTMLElement {
  const sentence = document.createElement("p");
  sentence.textContent = text;
  return sentence;
}
