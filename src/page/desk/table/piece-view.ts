import { frontPicture } from "../../../output/drawing/front/picture.ts";
import * as say from "../../../words/messages.ts";
import type { Shown } from "./shown.ts";

/** While a handle is dragged, the front is drawn so often at most, ms. */
const OFTEN = 120;

/** The finished book from the front, by day or with its lamp lit. It is drawn after everything else, and only the newest state. */
export class PieceView {
  readonly #place: HTMLElement;
  readonly #switch: HTMLElement;
  #shown: Shown | undefined;
  #isLit = false;
  #waits = false;
  #drawnAt = Number.NEGATIVE_INFINITY;

  constructor(place: HTMLElement, lit: HTMLElement) {
    this.#place = place;
    this.#switch = lit;
    const box = lit.querySelector("input")!;
    box.addEventListener("change", () => {
      this.#isLit = box.checked;
      this.#later();
    });
  }

  show(shown: Shown): void {
    this.#shown = shown;
    this.#switch.hidden = !shown.pattern.pocket && !shown.pattern.window;
    this.#later();
  }

  #later(): void {
    if (this.#waits) return;
    this.#waits = true;
    const rest = Math.max(0, this.#drawnAt + OFTEN - performance.now());
    requestAnimationFrame(() =>
      setTimeout(() => {
        this.#waits = false;
        this.#draw();
        this.#drawnAt = performance.now();
      }, rest),
    );
  }

  #draw(): void {
    if (!this.#shown) return;
    const { kit, pattern } = this.#shown;
    const isLit = this.#isLit && !this.#switch.hidden;
    this.#place.classList.toggle("dark-room", isLit);
    this.#place.innerHTML = frontPicture(pattern, { slug: kit.slug, title: kit.title, mood: isLit ? "lit" : "day" });
    const svg = this.#place.querySelector("svg")!;
    svg.removeAttribute("width");
    svg.removeAttribute("height");
    svg.setAttribute("aria-label", say.deskKitPieceAlt());
  }
}
