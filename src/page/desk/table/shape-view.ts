import type { DeskShape } from "../../../input/desk/protocol.ts";
import { shapeChoice } from "../../../output/parts/desk/shape.ts";
import { hasOwnLevel, levelEdits, shapeAt } from "./shape-levels.ts";
import type { Hands, Shown } from "./shown.ts";

/** Which shape is chosen, on the sheet or from a list, and its level. */
export class ShapeView {
  readonly #place: HTMLElement;
  readonly #hands: Hands;
  readonly #mark: (shape: DeskShape | undefined) => void;
  #shapes: readonly DeskShape[] = [];
  #chosen: number | undefined;
  #shown: Shown | undefined;
  #markup = "";

  /** `mark` shows the chosen shape on the sheet. */
  constructor(place: HTMLElement, hands: Hands, mark: (shape: DeskShape | undefined) => void) {
    this.#place = place;
    this.#hands = hands;
    this.#mark = mark;
    place.addEventListener("change", ({ target }) => {
      const { dataset, value, name } = target as HTMLInputElement | HTMLSelectElement;
      if (dataset.shapeChoice !== undefined) this.#choose(value === "" ? undefined : Number(value));
      else if (name === "shape-level") this.#level(value);
    });
  }

  show(shown: Shown, shapes: readonly DeskShape[]): void {
    this.#shown = shown;
    this.#shapes = shapes;
    if (this.#chosen !== undefined && this.#chosen >= shapes.length) this.#chosen = undefined;
    this.#write();
    this.#mark(this.#shape());
  }

  /** Chooses the uppermost shape at a place of the picture, in its units. */
  pick(x: number, y: number): void {
    const shape = shapeAt(this.#shapes, x, y);
    this.#choose(shape && this.#shapes.indexOf(shape));
  }

  #choose(chosen: number | undefined): void {
    this.#chosen = chosen;
    this.#write();
    this.#mark(this.#shape());
  }

  #level(level: string): void {
    const shape = this.#shape();
    if (shape && this.#shown) this.#hands.change(levelEdits(this.#shown.stated, this.#shapes, shape, level));
  }

  #shape(): DeskShape | undefined {
    return this.#chosen === undefined ? undefined : this.#shapes[this.#chosen];
  }

  #write(): void {
    if (!this.#shown) return;
    const { kit, stated } = this.#shown;
    const names = kit.levels.map(({ name }) => name);
    const shape = this.#shape();
    const markup = String(
      shapeChoice({
        shapes: this.#shapes.map((one) => ({ name: calledOf(one), level: names[(one.level ?? 0) - 1] ?? "–" })),
        chosen: this.#chosen,
        levels: names,
        level: shape?.level,
        isFree: shape !== undefined && hasOwnLevel(stated, shape),
      }),
    );
    if (markup === this.#markup) return;
    this.#markup = markup;
    const focused = document.activeElement as HTMLInputElement | HTMLSelectElement | null;
    const inside = focused && this.#place.contains(focused) ? focused : undefined;
    const back = inside && (inside.id === "desk-shape" ? "#desk-shape" : `input[value="${CSS.escape(inside.value)}"]`);
    this.#place.innerHTML = markup;
    if (back) this.#place.querySelector<HTMLElement>(back)?.focus();
  }
}

/** What a shape is called in a list: what picks it, where that is an id or a name. */
function calledOf({ selectors: [first], name }: DeskShape): string {
  return typeof first === "string" ? first.replace(/^#/, "") : name;
}
