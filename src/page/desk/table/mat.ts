import { leafArea } from "../../../output/drawing/desk/leaf.ts";
import { sheetArea } from "../../../output/drawing/desk/sheet.ts";
import type { Shown } from "./shown.ts";

/** Pixels of the gauge, and of what lies between the things on the mat. */
const GAUGE = 52;
const APART = 24;

/** A mat that is narrower than this has one thing below the other. */
const NARROW = 560;

/** What the screen keeps free for the ribbon, what stands round the drawings, and the papers below, pixels. */
const KEPT = 430;

/** Heights of the drawings, pixels. */
const LEAST = 380;
const MOST = 900;

/** Lays sheet and leaf on the mat under one gauge: a millimetre is as long on both. */
export class Mat {
  readonly #element: HTMLElement;
  #shown: Shown | undefined;

  constructor(element: HTMLElement) {
    this.#element = element;
    new ResizeObserver(() => this.#fit()).observe(element);
    addEventListener("resize", () => this.#fit());
  }

  show(shown: Shown): void {
    this.#shown = shown;
    this.#fit();
  }

  #fit(): void {
    if (!this.#shown) return;
    const { kit, place } = this.#shown;
    const sheet = sheetArea(kit, place);
    const leaf = leafArea(kit);
    const inner = getComputedStyle(this.#element);
    const room = this.#element.clientWidth - Number.parseFloat(inner.paddingLeft) - Number.parseFloat(inner.paddingRight);
    const narrow = room < NARROW;
    const tall = Math.min(MOST, Math.max(LEAST, innerHeight - KEPT));
    const perMm = narrow
      ? Math.min((room - GAUGE) / sheet.width, room / leaf.width)
      : Math.min(tall / sheet.height, (room - GAUGE - APART) / (sheet.width + leaf.width));
    const pixels = (mm: number): string => `${Math.floor(mm * perMm)}px`;
    this.#element.classList.toggle("narrow", narrow);
    this.#element.style.setProperty("--sheet", pixels(sheet.width));
    this.#element.style.setProperty("--leaf", pixels(leaf.width));
    this.#element.style.setProperty("--tall", pixels(sheet.height));
  }
}
