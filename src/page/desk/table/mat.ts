import { leafArea } from "../../../output/drawing/desk/leaf.ts";
import { sheetArea } from "../../../output/drawing/desk/sheet.ts";
import type { Shown } from "./shown.ts";

/** Pixels of the gauge, and of what lies between the things on the mat. */
const GAUGE = 52;
const APART = 24;

/** A mat that is narrower than this has one thing below the other. */
const NARROW = 560;

/** What the screen keeps free for the ribbon, what stands round the drawings, and the papers below, pixels. */
const KEPT = 390;

/** Heights of the drawings, pixels. */
const LEAST = 380;
const MOST = 900;

/** Lays sheet and leaf on the mat under one gauge: a millimetre is as long on both. */
export class Mat {
  readonly #element: HTMLElement;
  readonly #resized = (): void => this.#measure();
  #shown: Shown | undefined;
  /** Pixels inside the mat; measured when it is resized alone, as asking for it has the whole page laid out. */
  #room = 0;
  #sizes = "";

  constructor(element: HTMLElement) {
    this.#element = element;
    new ResizeObserver(this.#resized).observe(element);
    addEventListener("resize", this.#resized);
  }

  dispose(): void {
    removeEventListener("resize", this.#resized);
  }

  show(shown: Shown): void {
    this.#shown = shown;
    if (this.#room === 0) this.#measure();
    this.#fit();
  }

  #measure(): void {
    const { paddingLeft, paddingRight } = getComputedStyle(this.#element);
    this.#room = this.#element.clientWidth - Number.parseFloat(paddingLeft) - Number.parseFloat(paddingRight);
    this.#fit();
  }

  #fit(): void {
    if (!this.#shown || this.#room <= 0) return;
    const { kit, place } = this.#shown;
    const sheet = sheetArea(kit, place);
    const leaf = leafArea(kit);
    const narrow = this.#room < NARROW;
    const tall = Math.min(MOST, Math.max(LEAST, innerHeight - KEPT));
    const perMm = narrow
      ? Math.min((this.#room - GAUGE) / sheet.width, this.#room / leaf.width)
      : Math.min(tall / sheet.height, (this.#room - GAUGE - APART) / (sheet.width + leaf.width));
    const sizes = [sheet.width, leaf.width, sheet.height].map((mm) => `${Math.floor(mm * perMm)}px`);
    if (this.#sizes === sizes.join()) return;
    this.#sizes = sizes.join();
    this.#element.classList.toggle("narrow", narrow);
    for (const [i, name] of ["--sheet", "--leaf", "--tall"].entries()) this.#element.style.setProperty(name, sizes[i]!);
  }
}
