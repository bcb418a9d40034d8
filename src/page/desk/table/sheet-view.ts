import type { LeafNumber } from "../../../core/book/leaf-number.ts";
import { pictureLeaves } from "../../../core/pattern/pattern.ts";
import { rulerStep } from "../../../core/units/ruler.ts";
import { lampOnSheet } from "../../../output/drawing/desk/lamp.ts";
import {
  filledLayer,
  inPicture,
  leafLines,
  leafMark,
  lookedAtMark,
  pickedMark,
  seenLayer,
  sheetArea,
  tracedLayer,
} from "../../../output/drawing/desk/sheet.ts";
import type { FigureArea } from "../../../output/drawing/figure.ts";
import { leafAndPage } from "../../../words/leaves.ts";
import { formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { Handle } from "./handle.ts";
import { floorEdit } from "./lamp-fields.ts";
import { Layers } from "./layers.ts";
import { middleOf, nearestLeaf } from "./nearest-leaf.ts";
import type { Hands, Shown } from "./shown.ts";

/** What lies on the sheet. */
export type OnSheet = "both" | "seen" | "drawn";

/** The sheet: the picture on the book's front with the lines of its leaves; what is drawn over what will be seen. */
export class SheetView {
  readonly #layers = new Layers(["seen", "filled", "lines", "marks", "traced", "lamp", "picked", "leaf", "looked"]);
  readonly #leafHandle: Handle;
  readonly #lampHandle: Handle;
  #shown: Shown | undefined;
  #area: FigureArea = { left: 0, top: 0, width: 1, height: 1 };
  #on: OnSheet = "both";

  /** `pick` is told a place on the picture, in its units, `turn` a leaf. */
  constructor(
    place: HTMLElement,
    hands: Hands,
    { pick, turn }: { readonly pick: (x: number, y: number) => void; readonly turn: (leaf: LeafNumber) => void },
  ) {
    this.#leafHandle = new Handle("leaf", "leaf-handle", {
      extent: () => this.#shown!.pattern.leaves.length,
      moved: (number) => turn(this.#leafAt(number)),
      rest: () => {},
      at: (share) => this.#numberAt(share),
    });
    this.#lampHandle = new Handle("floor", "lamp-handle", {
      extent: () => this.#area.height,
      moved: (mm) => hands.change([floorEdit(mm)], "floor"),
      rest: hands.rest,
    });
    place.append(this.#layers.svg, this.#leafHandle.element, this.#lampHandle.element);
    this.#layers.svg.addEventListener("click", (event) => {
      if (!this.#shown) return;
      const box = this.#layers.svg.getBoundingClientRect();
      const across = (event.clientX - box.left) / box.width;
      turn(this.#leafAt(this.#numberAt(across)));
      const { left, top, width, height } = this.#area;
      const at = [left + across * width, top + ((event.clientY - box.top) / box.height) * height] as const;
      const [x, y] = inPicture(at, this.#shown.kit, this.#shown.place);
      pick(x, y);
    });
  }

  show(shown: Shown): void {
    this.#shown = shown;
    const { kit, pattern, place } = shown;
    this.#area = sheetArea(kit, place);
    this.#layers.frame(this.#area);
    this.#layers.say(say.deskKitSheetAlt({ leaves: pictureLeaves(pattern).length }));
    this.#layers.draw("lines", leafLines(pattern, place, this.#area));
    this.#lay();
    this.#showLamp(shown);
  }

  /** Shows the same kit with its light. */
  showWhole(shown: Shown): void {
    this.#shown = shown;
    this.#showLamp(shown);
  }

  /** Chooses what lies on the sheet. */
  lay(on: OnSheet): void {
    this.#on = on;
    if (this.#shown) this.#lay();
  }

  #lay(): void {
    const { kit, pattern, place } = this.#shown!;
    this.#layers.draw("seen", this.#on === "drawn" ? "" : seenLayer(pattern, place, this.#area));
    this.#layers.draw("filled", this.#on === "drawn" ? filledLayer(kit, place, this.#area) : "");
    this.#layers.draw("traced", this.#on === "seen" ? "" : tracedLayer(kit, place));
  }

  /** Marks where it will look different, as they are drawn, and the one that is looked at. */
  mark(drawn: string, looked?: Parameters<typeof lookedAtMark>[0]): void {
    this.#layers.draw("marks", drawn);
    this.#layers.draw("looked", looked && this.#shown ? lookedAtMark(looked, this.#shown.place.height) : "");
  }

  /** Shows which leaf lies beside the sheet. */
  turn(leaf: LeafNumber): void {
    const { pattern, place, kit } = this.#shown!;
    const leaves = pictureLeaves(pattern);
    const number = leaves.findIndex((one) => one.leaf === leaf);
    if (number < 0) return;
    this.#layers.draw("leaf", leafMark(leaf, place, this.#area));
    this.#leafHandle.show(
      {
        label: say.deskKitLeafSlider(),
        axis: "across",
        least: 1,
        most: leaves.length,
        step: 1,
        grows: kit.book.direction === "ltr",
        text: (one) => leafAndPage(leaves[one - 1]!),
      },
      number + 1,
      (middleOf(place, leaf) - this.#area.left) / this.#area.width,
    );
  }

  /** Shows which shape is chosen, by its outlines. */
  pick(rings: Parameters<typeof pickedMark>[0] | undefined): void {
    if (!this.#shown) return;
    this.#layers.draw("picked", rings ? pickedMark(rings, this.#shown.kit, this.#shown.place) : "");
  }

  #showLamp({ kit, pattern }: Shown): void {
    const { pocket } = pattern;
    this.#lampHandle.element.hidden = !pocket;
    this.#layers.draw("lamp", pocket ? lampOnSheet(pocket) : "");
    if (!pocket) return;
    const step = rulerStep(kit.units, "plain");
    this.#lampHandle.show(
      {
        label: say.deskKitLampFloor(),
        axis: "down",
        least: 0,
        most: kit.book.leafHeight,
        step,
        grows: true,
        text: (mm) => formatSize(mm, kit.units),
      },
      pocket.floor,
      (pocket.floor - this.#area.top) / this.#area.height,
    );
    this.#lampHandle.element.style.left = `${(100 * (pocket.centre.x - this.#area.left)) / this.#area.width}%`;
  }

  /** The picture leaf of a number from 1. */
  #leafAt(number: number): LeafNumber {
    const leaves = pictureLeaves(this.#shown!.pattern);
    return leaves[Math.min(leaves.length, Math.max(1, number)) - 1]!.leaf;
  }

  /** Which picture leaf, from 1, has its column at a share of the sheet's width. */
  #numberAt(share: number): number {
    return nearestLeaf(this.#shown!, this.#area.left + share * this.#area.width) + 1;
  }
}
