import type { Offer } from "../../core/refit/offer.ts";
import type { Refit } from "../../core/refit/refit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { offerFacts, offerText } from "../../words/findings/offers.ts";
import type { PicturedWay } from "./way-pictures.ts";

/** Ways that would help, with what is said above them and what becomes of the one that is taken. */
export interface Ways {
  readonly lead: string;
  readonly offers: readonly Offer[];
  readonly units: UnitSystem;
  readonly take: (refit: Refit) => void;
  /** Draws what becomes of each. */
  readonly draw: (ways: readonly PicturedWay[]) => void;
}

/** What the fit panel answers, below its fields. */
export class FitAnswer {
  /** What stands below every answer until the reader does something. */
  standing: readonly string[] = [];
  #place: HTMLElement;
  #pictured: PicturedWay[] = [];

  constructor(place: HTMLElement) {
    this.#place = place;
  }

  /** A sentence, with more to look at where there is more, and ways out where there are some. */
  say([words, ...more]: readonly [string, ...string[]], ways?: Ways, wrong = false): void {
    const below = [...more, ...this.standing];
    this.#place.replaceChildren(...[words, ...below].map(paragraph), ...(ways ? this.#list(ways) : []));
    this.#place.classList.toggle("wrong", wrong);
    this.#place.classList.toggle("look", !wrong && below.length > 0);
    ways?.draw(this.#pictured);
  }

  /** One sentence more below the answer that stands, once. */
  add(words: string): void {
    const last = this.#place.lastElementChild;
    if (last?.textContent !== words) this.#place.append(paragraph(words));
    this.#showEnd();
  }

  /** Puts a sentence in the place of one that was added; where it stands already, that one goes. */
  replace(words: string, by: string): void {
    const lines = [...this.#place.querySelectorAll("p")];
    const stands = lines.some(({ textContent }) => textContent === by);
    for (const line of lines.filter(({ textContent }) => textContent === words))
      if (stands) line.remove();
      else line.textContent = by;
    this.#showEnd();
  }

  /** On a low screen the answer is lower than its words. */
  #showEnd(): void {
    this.#place.scrollTop = this.#place.scrollHeight;
  }

  #list({ lead, offers, units, take }: Ways): HTMLElement[] {
    const list = document.createElement("ul");
    this.#pictured = [];
    for (const offer of offers) {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = offerText(offer, units);
      button.addEventListener("click", () => {
        this.#place.focus();
        take(offer.refit);
      });
      const item = document.createElement("li");
      const image = document.createElement("img");
      image.alt = "";
      this.#pictured.push({ image, refit: offer.refit });
      item.append(image, button, " ", offerFacts(offer, units));
      list.append(item);
    }
    return [paragraph(lead), list];
  }
}

function paragraph(text: string): HTMLElement {
  const sentence = document.createElement("p");
  sentence.textContent = text;
  return sentence;
}
