import { tidy } from "../../../core/units/length.ts";
import { rulerStep } from "../../../core/units/ruler.ts";
import type { BookWindow } from "../../../core/window/window.ts";
import { type DoorShown, doorDrawing } from "../../../output/drawing/desk/door.ts";
import { formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { placeEdits, seatOf } from "./door-fields.ts";
import { COARSE } from "./handle.ts";
import { Layers } from "./layers.ts";
import type { Hands, Shown } from "./shown.ts";

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The closed window: each motif is a handle that is dragged, or moved with the arrow keys. */
export class DoorView {
  readonly #place: HTMLElement;
  readonly #hands: Hands;
  readonly #chosen: (motif: number) => void;
  readonly #layers = new Layers(["door"], say.deskKitDoorAlt());
  #handles: HTMLButtonElement[] = [];
  #shown: Shown | undefined;
  #door: DoorShown | undefined;
  #window: BookWindow | undefined;

  /** `chosen` is told which motif has the hand on it. */
  constructor(place: HTMLElement, hands: Hands, chosen: (motif: number) => void) {
    this.#place = place;
    this.#hands = hands;
    this.#chosen = chosen;
    place.append(this.#layers.svg);
  }

  show(shown: Shown, motif: number | undefined): void {
    this.#shown = shown;
    const { pattern, kit } = shown;
    this.#place.hidden = !kit.insert;
    const before = this.#window;
    this.#window = pattern.window;
    if (!pattern.window) return;
    if (before === pattern.window && this.#door) {
      this.#showHandles(shown, this.#door, motif);
      return;
    }
    const door = doorDrawing(pattern, pattern.window);
    this.#door = door;
    this.#layers.frame(door.area);
    this.#layers.draw("door", door.drawn);
    this.#place.style.aspectRatio = `${door.area.width} / ${door.area.height}`;
    this.#showHandles(shown, door, motif);
  }

  #showHandles({ kit, pattern }: Shown, { area, motifs }: DoorShown, chosen: number | undefined): void {
    while (this.#handles.length > motifs.length) this.#handles.pop()!.remove();
    while (this.#handles.length < motifs.length) this.#makeHandle(this.#handles.length);
    for (const [i, box] of motifs.entries()) {
      const handle = this.#handles[i]!;
      handle.style.left = `${(100 * (box.left - area.left)) / area.width}%`;
      handle.style.top = `${(100 * (box.top - area.top)) / area.height}%`;
      handle.style.width = `${(100 * (box.right - box.left)) / area.width}%`;
      handle.style.height = `${(100 * (box.bottom - box.top)) / area.height}%`;
      const { across, down } = seatOf(pattern.window!, pattern.window!.motifs[i]!);
      const text = (mm: number): string => formatSize(mm, kit.units);
      const name = say.deskKitMotifMove({ name: kit.motifs[i]?.name ?? "" });
      handle.setAttribute("aria-label", `${name}. ${say.deskKitMotifAt({ across: text(across), down: text(down) })}`);
      handle.ariaPressed = String(i === chosen);
    }
  }

  #makeHandle(motif: number): void {
    const handle = document.createElement("button");
    handle.type = "button";
    handle.className = "motif-handle";
    handle.dataset.motif = String(motif);
    handle.addEventListener("focus", () => this.#chosen(motif));
    handle.addEventListener("keydown", (event) => this.#key(event, motif));
    handle.addEventListener("blur", () => this.#hands.rest());
    handle.addEventListener("pointerdown", (event) => this.#grip(event, handle, motif));
    this.#handles.push(handle);
    this.#place.append(handle);
  }

  #key(event: KeyboardEvent, motif: number): void {
    const way = ARROWS[event.key];
    if (!way || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const by = rulerStep(this.#shown!.kit.units, "fine") * (event.shiftKey ? COARSE : 1);
    const { across, down } = this.#seat(motif);
    this.#put(motif, across + way[0] * by, down + way[1] * by);
  }

  #grip(start: PointerEvent, handle: HTMLButtonElement, motif: number): void {
    if (start.button !== 0 || !this.#door) return;
    const perMm = this.#place.getBoundingClientRect().width / this.#door.area.width;
    const begun = this.#seat(motif);
    const move = ({ clientX, clientY }: PointerEvent): void =>
      this.#put(
        motif,
        begun.across + (clientX - start.clientX) / perMm,
        begun.down + (clientY - start.clientY) / perMm,
      );
    start.preventDefault();
    handle.focus();
    handle.setPointerCapture(start.pointerId);
    handle.addEventListener("pointermove", move);
    handle.addEventListener(
      "lostpointercapture",
      () => {
        handle.removeEventListener("pointermove", move);
        this.#hands.rest();
      },
      { once: true },
    );
  }

  #seat(motif: number): { readonly across: number; readonly down: number } {
    const { window } = this.#shown!.pattern;
    return seatOf(window!, window!.motifs[motif]!);
  }

  #put(motif: number, across: number, down: number): void {
    const before = this.#seat(motif);
    const edits = placeEdits(this.#shown!, motif, across, down);
    const moved = Math.hypot(tidy(across) - before.across, tidy(down) - before.down);
    if (moved > 1e-3) this.#hands.change(edits, `motif${motif}`);
  }
}
