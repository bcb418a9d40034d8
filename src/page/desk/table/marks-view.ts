import type { LeafNumber } from "../../../core/book/leaf-number.ts";
import type { Difference } from "../../../core/makeability/differences.ts";
import { pictureLeaves } from "../../../core/pattern/pattern.ts";
import { differenceMarks } from "../../../output/drawing/desk/marks.ts";
import { type MarkKind, marks } from "../../../output/parts/desk/marks.ts";
import { leafAndPage } from "../../../words/leaves.ts";
import * as say from "../../../words/messages.ts";
import { nearestLeaf } from "./nearest-leaf.ts";
import type { SheetView } from "./sheet-view.ts";
import type { Shown } from "./shown.ts";

/** In which order the key tells the marks. */
const KINDS: readonly MarkKind[] = ["hidden", "out-of-reach", "slivers", "narrow"];

/** Where it will look different: marks on the sheet, a key to them, and one after the other to look at. */
export class MarksView {
  readonly #place: HTMLElement;
  readonly #sheet: SheetView;
  readonly #turn: (leaf: LeafNumber) => void;
  #shown: Shown | undefined;
  #differences: readonly Difference[] = [];
  #number = 0;

  /** `turn` brings a leaf to the table. */
  constructor(place: HTMLElement, sheet: SheetView, turn: (leaf: LeafNumber) => void) {
    this.#place = place;
    this.#sheet = sheet;
    this.#turn = turn;
    place.addEventListener("click", ({ target }) => {
      const by = (target as HTMLElement).closest<HTMLElement>("[data-mark]")?.dataset.mark;
      if (by !== undefined) this.#step(Number(by));
    });
  }

  show(shown: Shown, differences: readonly Difference[]): void {
    this.#shown = shown;
    this.#differences = differences;
    this.#number = Math.min(this.#number, differences.length);
    this.#write();
  }

  #step(by: number): void {
    const of = this.#differences.length;
    this.#number = this.#number + by < 1 ? of : this.#number + by > of ? 1 : this.#number + by;
    const looked = this.#differences[this.#number - 1];
    if (looked) this.#turn(this.#leafOf(looked).leaf);
    this.#write();
    this.#place.querySelector<HTMLElement>(`[data-mark="${by}"]`)?.focus();
  }

  #write(): void {
    const { place } = this.#shown!;
    const looked = this.#differences[this.#number - 1];
    const present = new Set(this.#differences.map(({ kind }) => markOf(kind)));
    this.#sheet.mark(differenceMarks(this.#differences, place.height), looked?.box);
    const markup = marks({
      kinds: KINDS.filter((kind) => present.has(kind)),
      of: this.#differences.length,
      number: this.#number,
      told: looked && this.#told(looked),
    });
    if (this.#place.innerHTML !== String(markup)) this.#place.innerHTML = String(markup);
  }

  #told(one: Difference): string {
    const { levels } = this.#shown!.kit;
    const name = (level: number): string => levels[level - 1]!.name;
    const told = { level: name(one.level), at: leafAndPage(this.#leafOf(one)) };
    switch (one.kind) {
      case "slivers":
        return say.deskKitMarkSlivers({ ...told, strips: one.strips, into: name(one.into) });
      case "hidden":
        return say.deskKitMarkHidden(told);
      case "unreached":
        return say.deskKitMarkUnreached(told);
      case "narrow":
        return one.leaves === 0 ? say.deskKitMarkUnseen(told) : say.deskKitMarkNarrow(told);
    }
  }

  /** The picture leaf that stands nearest to the middle of a place. */
  #leafOf({ box }: Difference): ReturnType<typeof pictureLeaves>[number] {
    const near = nearestLeaf(this.#shown!, (box.left + box.right) / 2);
    return pictureLeaves(this.#shown!.pattern)[near]!;
  }
}

function markOf(kind: Difference["kind"]): MarkKind {
  return kind === "unreached" ? "out-of-reach" : kind;
}
