import type { LeafNumber } from "../../../core/book/leaf-number.ts";
import { numberLeaves } from "../../../core/book/numbering.ts";
import { rulerStep } from "../../../core/units/ruler.ts";
import { acrossLeaf, leafArea, leafDrawing } from "../../../output/drawing/desk/leaf.ts";
import { levelRuler } from "../../../output/drawing/desk/ruler.ts";
import { leafAndPage } from "../../../words/leaves.ts";
import { formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { depthBounds, depthEdit } from "./depth-edit.ts";
import { Handle } from "./handle.ts";
import { Layers } from "./layers.ts";
import type { Hands, Shown } from "./shown.ts";

/** Breadth of the ruler above the leaf, a share of its height. */
const BREADTH = 0.035;

/** The leaf beside the sheet: its strips, and a line for each depth that is moved under the ruler. */
export class LeafView {
  readonly #place: HTMLElement;
  readonly #told: HTMLElement;
  readonly #hands: Hands;
  readonly #layers = new Layers(["leaf", "ruler"], say.deskKitLeafAlt());
  #handles: Handle[] = [];
  #shown: Shown | undefined;

  constructor(place: HTMLElement, told: HTMLElement, hands: Hands) {
    this.#place = place;
    this.#told = told;
    this.#hands = hands;
    place.append(this.#layers.svg);
  }

  show(shown: Shown, leaf: LeafNumber): void {
    this.#shown = shown;
    const { kit, pattern } = shown;
    const { book } = kit;
    const folded = pattern.leaves.find((one) => one.leaf === leaf);
    const at = leafAndPage(folded ?? { leaf, name: numberLeaves(book).nameOf(leaf) });
    this.#told.textContent = folded
      ? say.deskKitLeafTold({ at, cuts: folded.cuts.length })
      : `${at}. ${say.deskKitLeafUnfolded()}`;
    this.#layers.frame(leafArea(kit));
    this.#layers.draw("leaf", leafDrawing(kit, pattern, leaf));
    const zero = book.direction === "ltr" ? "right" : "left";
    const breadth = BREADTH * book.leafHeight;
    this.#layers.draw("ruler", levelRuler({ units: kit.units, length: book.leafWidth, breadth }, zero));
    this.#showDepths(shown);
  }

  #showDepths(shown: Shown): void {
    const { kit } = shown;
    if (this.#handles.length !== kit.levels.length) this.#makeHandles(kit.levels.length);
    const { units, book, levels } = kit;
    const step = rulerStep(units, "fine");
    for (const [i, handle] of this.#handles.entries()) {
      const { name, depth } = levels[i]!;
      handle.show(
        {
          label: say.deskKitDepth({ level: name }),
          axis: "across",
          ...depthBounds(shown, i, step),
          step,
          grows: book.direction === "rtl",
          text: (mm) => `${name} ${formatSize(mm, units)}`,
        },
        depth,
        acrossLeaf(book, depth) / book.leafWidth,
      );
    }
  }

  #makeHandles(count: number): void {
    for (const { element } of this.#handles) element.remove();
    this.#handles = Array.from({ length: count }, (_, i) => {
      const handle = new Handle(`depth${i}`, "depth-handle", {
        extent: () => this.#shown!.kit.book.leafWidth,
        moved: (mm) => this.#hands.change([depthEdit(this.#shown!, i, mm)], `depth${i}`),
        rest: this.#hands.rest,
      });
      const number = document.createElement("b");
      number.textContent = String(i + 1);
      handle.element.append(number);
      return handle;
    });
    this.#place.append(...this.#handles.map(({ element }) => element));
  }
}
