import { roundTo } from "../../../core/units/length.ts";

/** Keys that follow each other within this time are one change, ms. */
const REST = 700;

/** Steps of a large move, as many fine ones. */
export const COARSE = 10;

/** How a figure is moved: its bounds and steps in its own measure, and what a place on the drawing means. */
export interface HandleForm {
  readonly label: string;
  readonly axis: "across" | "down";
  readonly least: number;
  readonly most: number;
  /** Of an arrow key; one with Shift moves it by `COARSE` steps. */
  readonly step: number;
  /** The figure in words with its unit. */
  readonly text: (value: number) => string;
  /** Whether the figure grows to the right or downward; otherwise the other way. */
  readonly grows: boolean;
}

/** What a handle is told and tells. */
interface HandleHands {
  /** Length of the drawing along the axis, in the figure's measure. */
  readonly extent: () => number;
  readonly moved: (value: number) => void;
  readonly rest: () => void;
  /** What a share of the drawing means, where the figure does not run evenly along it. */
  readonly at?: (share: number) => number;
}

/** A handle on a drawing: a slider that is dragged, or moved with the arrow keys. It says its figure while it is held or has the focus. */
export class Handle {
  readonly element = document.createElement("div");
  readonly #said = document.createElement("span");
  readonly #hands: HandleHands;
  #resting: ReturnType<typeof setTimeout> | undefined;
  #form: HandleForm | undefined;
  #value = 0;

  /** `name` is what the page's own code finds it by. */
  constructor(name: string, classes: string, hands: HandleHands) {
    this.#hands = hands;
    this.element.className = `handle ${classes}`;
    this.element.tabIndex = 0;
    this.element.setAttribute("role", "slider");
    this.element.dataset.handle = name;
    this.#said.className = "handle-said";
    this.#said.ariaHidden = "true";
    this.element.append(this.#said);
    this.element.addEventListener("keydown", (event) => this.#key(event));
    this.element.addEventListener("keyup", () => this.#restSoon());
    this.element.addEventListener("blur", () => this.#hands.rest());
    this.element.addEventListener("pointerdown", (event) => this.#grip(event));
  }

  /** Shows a figure at a place, a share of the drawing along the axis. */
  show(form: HandleForm, value: number, share: number): void {
    this.#form = form;
    this.#value = value;
    const { element } = this;
    element.style[form.axis === "down" ? "top" : "left"] = `${100 * share}%`;
    element.setAttribute("aria-label", form.label);
    element.setAttribute("aria-orientation", form.axis === "down" ? "vertical" : "horizontal");
    element.setAttribute("aria-valuemin", plain(form.least));
    element.setAttribute("aria-valuemax", plain(form.most));
    element.setAttribute("aria-valuenow", plain(value));
    const said = form.text(value);
    element.setAttribute("aria-valuetext", said);
    this.#said.textContent = said;
  }

  #key(event: KeyboardEvent): void {
    if (event.altKey || event.ctrlKey || event.metaKey || !this.#form) return;
    const to = moveByKey(event, this.#form, this.#value);
    if (to === undefined) return;
    event.preventDefault();
    clearTimeout(this.#resting);
    this.#move(to);
  }

  #restSoon(): void {
    clearTimeout(this.#resting);
    this.#resting = setTimeout(this.#hands.rest, REST);
  }

  #grip(start: PointerEvent): void {
    if (start.button !== 0 || !this.#form) return;
    const { element } = this;
    const { axis, grows } = this.#form;
    const box = element.parentElement!.getBoundingClientRect();
    const pixels = axis === "down" ? box.height : box.width;
    const begun = this.#value;
    const at = (event: PointerEvent): number => (axis === "down" ? event.clientY : event.clientX);
    const move = (event: PointerEvent): void => {
      if (this.#hands.at) {
        this.#move(this.#hands.at((at(event) - (axis === "down" ? box.top : box.left)) / pixels));
        return;
      }
      const gone = ((at(event) - at(start)) / pixels) * this.#hands.extent();
      this.#move(begun + (grows ? gone : -gone));
    };
    const done = (): void => {
      element.removeEventListener("pointermove", move);
      element.classList.remove("held");
      this.#hands.rest();
    };
    start.preventDefault();
    element.focus();
    element.setPointerCapture(start.pointerId);
    element.classList.add("held");
    element.addEventListener("pointermove", move);
    element.addEventListener("lostpointercapture", done, { once: true });
  }

  #move(to: number): void {
    const { least, most, step } = this.#form!;
    const value = Math.min(most, Math.max(least, roundTo(to, step)));
    if (Math.abs(value - this.#value) < 1e-6) return;
    this.#hands.moved(value);
  }
}

/** Where a key moves a figure: arrows along the drawing go where they point, others make it greater or smaller. */
function moveByKey({ key, shiftKey }: KeyboardEvent, form: HandleForm, value: number): number | undefined {
  const { step, least, most, axis, grows } = form;
  const coarse = COARSE * step;
  const by = shiftKey ? coarse : step;
  const along = grows ? by : -by;
  switch (key) {
    case "ArrowRight":
      return value + (axis === "across" ? along : by);
    case "ArrowLeft":
      return value - (axis === "across" ? along : by);
    case "ArrowDown":
      return value + (axis === "down" ? along : -by);
    case "ArrowUp":
      return value - (axis === "down" ? along : -by);
    case "PageUp":
      return value + coarse;
    case "PageDown":
      return value - coarse;
    case "Home":
      return least;
    case "End":
      return most;
    default:
      return undefined;
  }
}

function plain(value: number): string {
  return String(Number(value.toFixed(3)));
}
