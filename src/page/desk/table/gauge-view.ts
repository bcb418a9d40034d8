import { heightOf } from "../../../core/fit/shape.ts";
import { BOUNDS } from "../../../core/kit/bounds.ts";
import { rulerStep } from "../../../core/units/ruler.ts";
import { uprightRuler } from "../../../output/drawing/desk/ruler.ts";
import { formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { Handle } from "./handle.ts";
import { Layers } from "./layers.ts";
import { lengthAt } from "./length-at.ts";
import type { Hands, Shown } from "./shown.ts";

/** Breadth of the drawn ruler against its length. */
const BREADTH = 22;

/** The gauge beside the sheet: where the picture begins on the leaf, and how tall it is. */
export class GaugeView {
  readonly #layers = new Layers(["ruler"]);
  readonly #top: Handle;
  readonly #foot: Handle;
  #shown: Shown | undefined;

  constructor(place: HTMLElement, hands: Hands) {
    const extent = (): number => this.#shown?.kit.book.leafHeight ?? 1;
    const rest = hands.rest;
    const moves = (key: string) => (mm: number) => hands.change([lengthAt(["fit", key], mm)], key);
    this.#top = new Handle("head", "gauge-top", { extent, rest, moved: moves("head") });
    this.#foot = new Handle("height", "gauge-foot", { extent, rest, moved: moves("height") });
    place.append(this.#layers.svg, this.#top.element, this.#foot.element);
  }

  show(shown: Shown): void {
    this.#shown = shown;
    const { kit, pattern } = shown;
    const { leafHeight } = kit.book;
    const { head, height } = pattern.fit;
    this.#layers.frame({ left: 0, top: 0, width: BREADTH, height: leafHeight });
    this.#layers.draw("ruler", uprightRuler({ units: kit.units, length: leafHeight, breadth: BREADTH }));
    const step = rulerStep(kit.units, "plain");
    const form = { axis: "down", step, grows: true } as const;
    const text = (mm: number): string => formatSize(mm, kit.units);
    const most = Math.min(BOUNDS.head.most, leafHeight - height);
    this.#top.show(
      { ...form, label: say.deskKitGaugeTop(), least: 0, most: Math.max(0, most), text },
      head,
      head / leafHeight,
    );
    const solved = heightOf(kit.fit.shape) === undefined;
    const { least } = BOUNDS.pictureHeight;
    this.#foot.show(
      {
        ...form,
        label: say.deskKitGaugeFoot(),
        least: solved ? height : least,
        most: solved ? height : Math.max(least, leafHeight - head),
        text: (mm) => (solved ? say.deskKitGaugeSolved({ height: text(mm) }) : text(mm)),
      },
      height,
      (head + height) / leafHeight,
    );
    this.#foot.element.ariaDisabled = solved ? "true" : null;
  }
}
