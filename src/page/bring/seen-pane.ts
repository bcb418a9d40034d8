import type { CropBox } from "../../core/beginning/picture-wish.ts";
import { cropFoot, drawingSeen, photographSeen } from "../../output/parts/bring/seen.ts";
import type { Bringing } from "./bringing.ts";
import { CropFrame } from "./crop-frame.ts";
import { fill, partOf } from "./fill.ts";

/** The picture as it was brought, with the frame round what is taken of it. */
export class SeenPane {
  readonly #pane: HTMLElement;
  readonly #seen: HTMLElement;
  readonly #foot: HTMLElement;
  readonly #change: (make: (state: Bringing) => Bringing) => void;
  #frame: CropFrame | undefined;

  /** `found` hears of the mark of a shape that was pressed on. */
  constructor(
    table: HTMLElement,
    change: (make: (state: Bringing) => Bringing) => void,
    found: (mark: number) => void,
  ) {
    this.#pane = partOf(table, "brought-pane");
    this.#seen = partOf(table, "seen");
    this.#foot = partOf(table, "crop-foot");
    this.#change = change;
    this.#seen.addEventListener("click", ({ clientX, clientY }) => {
      if (this.#frame?.wasDragged) return;
      const shape = document
        .elementsFromPoint(clientX, clientY)
        .find((one) => one.matches("[data-seen] path[data-of]"));
      const mark = shape?.getAttribute("data-of");
      if (mark) found(Number(mark));
    });
    this.#foot.addEventListener("click", ({ target }) => {
      const crop = (target as Element).closest<HTMLElement>("[data-crop]")?.dataset["crop"];
      if (crop !== undefined) change((state) => ({ ...state, crop: crop as "canvas" | "drawing" }));
    });
  }

  show(state: Bringing): void {
    const { origin, brought, crop, sorting } = state;
    this.#pane.hidden = origin !== "file" || brought === undefined;
    if (this.#pane.hidden || !brought) return;
    const { seen, upload } = brought;
    const isNew = fill(this.#seen, `${upload} ${sorting}`, () =>
      seen.kind === "photograph"
        ? photographSeen(upload)
        : drawingSeen(seen, sorting === undefined ? [] : seen.sortings[sorting]!.markOf),
    );
    if (isNew) {
      this.#seen.style.setProperty("--aspect", String(seen.width / seen.height));
      this.#frame = new CropFrame(this.#seen, seen, (cropped) => this.#crop(cropped));
    }
    fill(this.#foot, "foot", cropFoot);
    this.#frame?.show(typeof crop === "object" ? crop : undefined);
    for (const button of this.#foot.querySelectorAll<HTMLElement>("[data-crop]"))
      button.setAttribute("aria-pressed", String(button.dataset["crop"] === crop));
  }

  #crop(crop: CropBox): void {
    this.#change((state) => ({ ...state, crop }));
  }
}
