import type { FigureArea } from "../../../output/drawing/figure.ts";
import { num } from "../../../output/drawing/svg-text.ts";

const SVG = "http://www.w3.org/2000/svg";

/** A drawing in layers, each of which is written anew only where it changed. */
export class Layers<Name extends string> {
  readonly svg = document.createElementNS(SVG, "svg");
  readonly #layers: ReadonlyMap<Name, { readonly element: SVGGElement; drawn: string }>;

  /** Names from the lowest layer to the uppermost; `label` undefined for what is told in other words. */
  constructor(names: readonly Name[], label?: string) {
    this.svg.setAttribute("preserveAspectRatio", "none");
    this.#layers = new Map(
      names.map((name) => {
        const element = document.createElementNS(SVG, "g");
        element.dataset.layer = name;
        this.svg.append(element);
        return [name, { element, drawn: "" }];
      }),
    );
    this.say(label);
  }

  /** What the drawing shows, for who cannot see it. */
  say(label: string | undefined): void {
    if (label === undefined) this.svg.ariaHidden = "true";
    else {
      this.svg.setAttribute("role", "img");
      this.svg.setAttribute("aria-label", label);
    }
  }

  /** The part of the plane that is shown. */
  frame({ left, top, width, height }: FigureArea): void {
    this.svg.setAttribute("viewBox", [left, top, width, height].map((value) => num(value)).join(" "));
  }

  draw(name: Name, drawn: string): void {
    const layer = this.#layers.get(name)!;
    if (layer.drawn === drawn) return;
    layer.drawn = drawn;
    layer.element.innerHTML = drawn;
  }
}
