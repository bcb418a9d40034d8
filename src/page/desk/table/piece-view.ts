import { closingOf } from "../../../core/pattern/corner-pattern.ts";
import { cornerFront } from "../../../output/drawing/corner/corner-front.ts";
import { frontPicture } from "../../../output/drawing/front/picture.ts";
import * as say from "../../../words/messages.ts";
import type { AnyShown, Shown } from "./shown.ts";

/** While a handle is dragged, the front is drawn so often at most, ms. */
const OFTEN = 120;

/** So long it leaves the page to what is looked at first, light and window among it, ms. */
const LATER = 80;

/** On a slow machine it takes no more than this share of the time: the sheet comes first. */
const SHARE = 1 / 6;

/** The finished book from the front, by day or with its lamp lit. It is drawn after everything else, and only the newest state. */
export class PieceView {
  readonly #place: HTMLElement;
  readonly #switch: HTMLElement;
  #shown: AnyShown | undefined;
  #isLit = false;
  #waits = false;
  #drawnAt = Number.NEGATIVE_INFINITY;
  /** How long drawing took last, ms. */
  #took = 0;
  #markup = "";

  constructor(place: HTMLElement, lit: HTMLElement) {
    this.#place = place;
    this.#switch = lit;
    const box = lit.querySelector("input")!;
    box.addEventListener("change", () => {
      this.#isLit = box.checked;
      this.#later();
    });
  }

  show(shown: AnyShown): void {
    this.#take(shown);
    this.#later();
  }

  /** Shows the same kit with its light and window, which are only seen while it is lit. */
  showWhole(shown: Shown): void {
    this.#take(shown);
    if (this.#isLit) this.#later();
  }

  #take(shown: AnyShown): void {
    this.#shown = shown;
    const { pocket, window } = closingOf(shown.pattern);
    this.#switch.hidden = !pocket && !window;
  }

  #later(): void {
    if (this.#waits) return;
    this.#waits = true;
    const pause = Math.max(OFTEN, this.#took / SHARE);
    setTimeout(
      () => {
        this.#waits = false;
        const began = performance.now();
        this.#draw();
        this.#drawnAt = performance.now();
        this.#took = this.#drawnAt - began;
      },
      Math.max(LATER, this.#drawnAt + pause - performance.now()),
    );
  }

  #draw(): void {
    if (!this.#shown) return;
    const { kit, pattern } = this.#shown;
    const isLit = this.#isLit && !this.#switch.hidden;
    this.#place.classList.toggle("dark-room", isLit);
    const options = { slug: kit.slug, title: kit.title, mood: isLit ? "lit" : "day" } as const;
    const markup = pattern.corner ? cornerFront(pattern, options) : frontPicture(pattern, options);
    if (markup === this.#markup) return;
    this.#markup = markup;
    this.#place.innerHTML = markup;
    const svg = this.#place.querySelector("svg")!;
    svg.removeAttribute("width");
    svg.removeAttribute("height");
    svg.setAttribute("aria-label", say.deskKitPieceAlt());
  }
}
