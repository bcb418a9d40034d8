import type { OutlineName } from "../../core/beginning/answers.ts";
import { outlineNumbers } from "../../core/beginning/answers.ts";
import type { Icon } from "../../core/beginning/brought.ts";
import { drawOutline, outlineShape } from "../../input/outlines/draw-outline.ts";
import { outlineFields } from "../../input/outlines/schema.ts";
import { shortRings } from "../../output/drawing/short-path.ts";
import {
  fileOrigin,
  iconChoices,
  iconOrigin,
  originChoices,
  outlineOrigin,
  wordOrigin,
} from "../../output/parts/bring/origin.ts";
import { html } from "../../output/parts/markup.ts";
import { type BringHost, isRefused } from "./bring-host.ts";
import type { Bringing, Origin } from "./bringing.ts";
import { fill } from "./fill.ts";

/** While she types, what she typed last is looked up after so long, ms. */
const PAUSE = 150;

/** Where the picture comes from: a file, a word, an outline or an icon. */
export class OriginPane {
  readonly #place: HTMLElement;
  readonly #host: BringHost;
  readonly #change: (make: (state: Bringing) => Bringing) => void;
  #icons: readonly Icon[] = [];
  #searched = "";
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(place: HTMLElement, host: BringHost, change: (make: (state: Bringing) => Bringing) => void) {
    this.#place = place;
    this.#host = host;
    this.#change = change;
    place.innerHTML = String(html`<div data-origins>${originChoices("file")}</div><div data-origin-own></div>`);
    place.addEventListener("change", ({ target }) => this.#choose(target as HTMLInputElement));
    place.addEventListener("input", ({ target }) => this.#type(target as HTMLInputElement));
  }

  show(state: Bringing): void {
    const chosen = this.#place.querySelector<HTMLInputElement>(`[data-origin][value="${state.origin}"]`)!;
    chosen.checked = true;
    const own = this.#place.querySelector("[data-origin-own]")!;
    const { origin, brought } = state;
    if (origin === "file") fill(own, `file ${brought?.name ?? ""}`, () => fileOrigin(brought?.name));
    if (origin === "word") fill(own, "word", () => wordOrigin(state.word, this.#fonts(), state.font));
    if (origin === "outline") fill(own, "outline", () => outlineOrigin(state.outline, outlinePath));
    if (origin === "icon" && fill(own, "icon", () => iconOrigin(this.#searched))) this.#showIcons(state.icon);
  }

  #fonts(): { readonly value: string; readonly label: string }[] {
    return this.#host.fonts().map((name) => ({ value: name, label: name }));
  }

  #choose({ dataset, value }: HTMLInputElement): void {
    if (dataset["origin"] !== undefined) this.#change((state) => ({ ...state, origin: value as Origin }));
    if (dataset["outline"] !== undefined) this.#change((state) => ({ ...state, outline: value as OutlineName }));
    if (dataset["icon"] !== undefined) this.#change((state) => ({ ...state, icon: value }));
    if (dataset["font"] !== undefined) this.#change((state) => ({ ...state, font: value }));
  }

  #type({ dataset, value }: HTMLInputElement): void {
    if (dataset["word"] !== undefined) this.#change((state) => ({ ...state, word: value }));
    if (dataset["iconSearch"] === undefined) return;
    this.#searched = value;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.#search(value), PAUSE);
  }

  async #search(word: string): Promise<void> {
    const found =
      word.trim() === "" ? { icons: [] } : await this.#host.get<{ icons: Icon[] }>("/api/new/icons", { word });
    if (word !== this.#searched || isRefused(found)) return;
    this.#icons = found.icons;
    this.#change((state) => {
      this.#showIcons(state.icon);
      return state;
    });
  }

  #showIcons(chosen: string | undefined): void {
    const place = this.#place.querySelector("[data-icons]");
    if (place) place.innerHTML = String(iconChoices(this.#icons, chosen));
  }
}

/** An outline in a box of 100 by 100. */
function outlinePath(name: OutlineName): string {
  const fields = { [name]: outlineFields[name].parse(outlineNumbers(name)) };
  const { width, height } = outlineShape(name, fields, { width: 100, height: 100 });
  const scale = 100 / Math.max(width, height);
  const size = { width: width * scale, height: height * scale };
  const [x, y] = [(100 - size.width) / 2, (100 - size.height) / 2];
  const { shapes } = drawOutline(name, fields, { size, level: 1, at: [] });
  return shortRings(shapes.flatMap(({ rings }) => rings.map((ring) => ring.map(([u, v]) => [u + x, v + y] as const))));
}
