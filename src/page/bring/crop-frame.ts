import type { CropBox } from "../../core/beginning/picture-wish.ts";
import * as say from "../../words/messages.ts";

/** Of a side: the least that may be taken, and by how much keys move an edge. */
const LEAST = 0.03;
const [STEP, COARSE] = [0.005, 0.05];

/** A hand that presses moves by no more than so many pixels. */
const STILL = 3;

type Edge = "left" | "top" | "right" | "bottom";

/** Edges as shares of the canvas, 0…1. */
type Edges = Readonly<Record<Edge, number>>;

const WHOLE: Edges = { left: 0, top: 0, right: 1, bottom: 1 };

const NAMES: Readonly<Record<Edge, () => string>> = {
  left: say.deskNewCropLeft,
  top: say.deskNewCropTop,
  right: say.deskNewCropRight,
  bottom: say.deskNewCropBottom,
};

/** The frame round the part of a picture that is taken: each edge is a slider, and the whole of it is moved by its middle. */
export class CropFrame {
  readonly #frame: HTMLElement;
  readonly #leftOut: HTMLElement;
  readonly #handles: ReadonlyMap<Edge, HTMLElement>;
  readonly #canvas: { readonly width: number; readonly height: number };
  readonly #cropped: (crop: CropBox) => void;
  #edges: Edges = WHOLE;
  #isDragged = false;

  /** Puts a frame over `place`, which shows the whole canvas. */
  constructor(
    place: HTMLElement,
    canvas: { readonly width: number; readonly height: number },
    cropped: (crop: CropBox) => void,
  ) {
    this.#canvas = canvas;
    this.#cropped = cropped;
    this.#frame = document.createElement("div");
    this.#frame.className = "crop-frame";
    this.#handles = new Map((Object.keys(NAMES) as Edge[]).map((edge) => [edge, this.#handle(edge)]));
    this.#leftOut = document.createElement("div");
    this.#leftOut.className = "crop-left-out";
    place.append(this.#leftOut, this.#frame);
    this.#drag(this.#frame, (edges, across, down) => {
      const [x, y] = [clamp(across, -edges.left, 1 - edges.right), clamp(down, -edges.top, 1 - edges.bottom)];
      return { left: edges.left + x, right: edges.right + x, top: edges.top + y, bottom: edges.bottom + y };
    });
    this.show(undefined);
  }

  /** Whether the last press on the frame dragged it, and so was no press on what lies under it. */
  get wasDragged(): boolean {
    return this.#isDragged;
  }

  show(crop: CropBox | undefined): void {
    const { width, height } = this.#canvas;
    this.#edges = crop
      ? {
          left: crop.x / width,
          top: crop.y / height,
          right: (crop.x + crop.width) / width,
          bottom: (crop.y + crop.height) / height,
        }
      : WHOLE;
    this.#frame.classList.toggle("movable", crop !== undefined);
    const percent = (share: number): string => `${100 * share}%`;
    const { left, top, right, bottom } = this.#edges;
    Object.assign(this.#frame.style, {
      left: percent(left),
      top: percent(top),
      width: percent(right - left),
      height: percent(bottom - top),
    });
    for (const [edge, handle] of this.#handles) {
      this.#leftOut.style.setProperty(`--${edge}`, percent(this.#edges[edge]));
      const share = Math.round(100 * this.#edges[edge]);
      handle.setAttribute("aria-valuenow", String(share));
      handle.setAttribute("aria-valuetext", say.deskNewCropAt({ share }));
    }
  }

  #handle(edge: Edge): HTMLElement {
    const handle = document.createElement("div");
    handle.className = `crop-handle crop-${edge}`;
    handle.tabIndex = 0;
    const isUpright = edge === "top" || edge === "bottom";
    const facts = { role: "slider", "aria-label": NAMES[edge](), "aria-valuemin": "0", "aria-valuemax": "100" };
    for (const [name, value] of Object.entries(facts)) handle.setAttribute(name, value);
    handle.setAttribute("aria-orientation", isUpright ? "vertical" : "horizontal");
    handle.addEventListener("keydown", (event) => this.#press(edge, event));
    this.#frame.append(handle);
    this.#drag(handle, (edges, across, down) => moved(edges, edge, edges[edge] + (isUpright ? down : across)));
    return handle;
  }

  #press(edge: Edge, event: KeyboardEvent): void {
    const sense = { ArrowLeft: -1, ArrowUp: -1, ArrowRight: 1, ArrowDown: 1 }[event.key];
    const to = event.key === "Home" ? 0 : event.key === "End" ? 1 : undefined;
    if (sense === undefined && to === undefined) return;
    event.preventDefault();
    const step = event.shiftKey ? COARSE : STEP;
    this.#take(moved(this.#edges, edge, to ?? this.#edges[edge] + sense! * step));
  }

  /** Drags what `grip` holds; `pulled` says where the edges go, by how much it was pulled in shares of the canvas. */
  #drag(grip: HTMLElement, pulled: (from: Edges, across: number, down: number) => Edges): void {
    grip.addEventListener("pointerdown", (event) => {
      this.#isDragged = false;
      // All of a picture lies still, so that a page scrolls under a finger.
      if (event.button !== 0 || (grip === this.#frame && this.#edges === WHOLE)) return;
      event.preventDefault();
      event.stopPropagation();
      grip.focus({ preventScroll: true });
      grip.setPointerCapture(event.pointerId);
      const from = this.#edges;
      const { width, height } = this.#frame.parentElement!.getBoundingClientRect();
      const move = ({ clientX, clientY }: PointerEvent): void => {
        const [across, down] = [clientX - event.clientX, clientY - event.clientY];
        this.#isDragged ||= Math.hypot(across, down) > STILL;
        if (this.#isDragged) this.#take(pulled(from, across / width, down / height));
      };
      const end = (): void => {
        grip.removeEventListener("pointermove", move);
        grip.removeEventListener("pointerup", end);
        grip.removeEventListener("pointercancel", end);
      };
      grip.addEventListener("pointermove", move);
      grip.addEventListener("pointerup", end);
      grip.addEventListener("pointercancel", end);
    });
  }

  #take({ left, top, right, bottom }: Edges): void {
    const { width, height } = this.#canvas;
    const [x, y] = [snapped(left * width, width), snapped(top * height, height)];
    const crop = { x, y, width: snapped(right * width, width) - x, height: snapped(bottom * height, height) - y };
    this.show(crop);
    this.#cropped({ ...crop, width: snapped(crop.width, width), height: snapped(crop.height, height) });
  }
}

function moved(edges: Edges, edge: Edge, to: number): Edges {
  const { left, top, right, bottom } = edges;
  const bounds: Readonly<Record<Edge, readonly [number, number]>> = {
    left: [0, right - LEAST],
    right: [left + LEAST, 1],
    top: [0, bottom - LEAST],
    bottom: [top + LEAST, 1],
  };
  return { ...edges, [edge]: clamp(to, ...bounds[edge]) };
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}

/** Whole pixels of a photograph; of a small canvas as fine as a thousandth of it. */
function snapped(value: number, side: number): number {
  const decimals = side > 400 ? 0 : side > 40 ? 1 : 3;
  return Number(value.toFixed(decimals));
}
