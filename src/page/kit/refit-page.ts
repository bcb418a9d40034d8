import type { Kit } from "../../core/kit/kit.ts";
import { graveWarnings } from "../../core/pattern/warnings.ts";
import { fromAddress, toAddress } from "../../core/refit/address.ts";
import type { Offer } from "../../core/refit/offers.ts";
import { type Refit, refitKit } from "../../core/refit/refit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { frontPicture } from "../../output/drawing/front/picture.ts";
import type { KitView } from "../../output/views/kit-view.ts";
import { formatSize } from "../../words/lengths.ts";
import { keepBook, keptBook } from "../shared/kept-book.ts";
import { type KitData, loadKitData } from "../shared/kit-data.ts";
import { showOwnBook } from "../view3d/follow.ts";
import { fitted } from "./fitted.ts";
import { giveFile, isFitted } from "./give-file.ts";
import { hasWrongField, readPanel, touchedBy, writePanel } from "./panel.ts";
import { renderPart } from "./render.ts";

/** What is out of sight, light and window follow this long after the last key, ms; what is in sight follows at once. */
const REST = 200;

/** Parts that light and window change: they wait for the whole computation. */
const SLOW_PARTS = ["window", "supplies", "steps", "cautions"];

/** Binds the fit panel of a kit page. */
export function bindRefit(form: HTMLFormElement): void {
  const page = new RefitPage(form);
  form.hidden = false;
  form.addEventListener("input", (event) => page.follow((event.target as HTMLInputElement).name));
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("reset", (event) => {
    event.preventDefault();
    page.show({});
  });
  form.querySelector("[data-refit-keep]")?.addEventListener("click", () => page.keep());
  form.querySelector("[data-refit-kept]")?.addEventListener("click", () => page.show(keptBook() ?? {}));
  document.querySelector("main")?.addEventListener("click", (event) => page.giveFile(event));
  if (keptBook()) form.querySelector<HTMLElement>("[data-refit-kept]")!.hidden = false;
  const asked = fromAddress(new URLSearchParams(location.search));
  const radios = [...document.querySelectorAll<HTMLInputElement>('.hero input[name="units"]')];
  for (const radio of radios) radio.addEventListener("change", () => page.measureIn(radio.value as UnitSystem));
  // What was kept from another page may differ from the units that this page was built in.
  const other = radios.find((radio) => radio.checked && !radio.defaultChecked);
  if (other) page.measureIn(other.value as UnitSystem, asked);
  else if (Object.keys(asked).length > 0) page.show(asked);
}

class RefitPage {
  #form: HTMLFormElement;
  #refit: Refit = {};
  /** The reader's choice; undefined while it is the kit's own. */
  #units: UnitSystem | undefined;
  #view: KitView | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  /** Paints at once what still waits; undefined where nothing waits. */
  #settle: (() => void) | undefined;
  #pictures: string[] = [];
  /** Fields that the reader has written; the others follow from them. */
  #touched = new Set<string>();

  constructor(form: HTMLFormElement) {
    this.#form = form;
  }

  /** Follows what stands in the panel. */
  async follow(name: string): Promise<void> {
    this.#touched.add(name);
    const data = await this.#data();
    if (data) this.#apply(data, readPanel(this.#form, data, this.#touched));
  }

  /** Puts a refit into the panel and on the page. */
  async show(refit: Refit): Promise<void> {
    const data = await this.#data();
    if (!data) return;
    this.#touched = touchedBy(data, refit);
    writePanel(this.#form, refitKit(data.kit, refit), new Set());
    this.#apply(data, refit);
  }

  /** Shows the page, its panel and its drawings in other units; the book stays. */
  async measureIn(units: UnitSystem, refit: Refit = this.#refit): Promise<void> {
    this.#units = units;
    await this.show(refit);
  }

  keep(): void {
    const kept = keepBook(this.#refit);
    this.#say(
      kept
        ? "This book is kept in this browser. Other kits offer it."
        : "This browser keeps nothing for this page; use the address instead.",
    );
    this.#form.querySelector<HTMLElement>("[data-refit-kept]")!.hidden = !kept;
  }

  /** A link to a file of the kit gives the file for the reader's book. */
  async giveFile(event: Event): Promise<void> {
    const address = (event.target as Element).closest("a[href]")?.getAttribute("href") ?? "";
    if (Object.keys(this.#refit).length === 0 || !isFitted(address)) return;
    event.preventDefault();
    this.#settle?.();
    if (!this.#view) return;
    try {
      await giveFile(address, this.#view);
    } catch (error) {
      this.#say(`${(error as Error).message}.`);
    }
  }

  async #data(): Promise<KitData | undefined> {
    try {
      const data = await loadKitData("kit-data.js");
      return this.#units ? { ...data, kit: { ...data.kit, units: this.#units } } : data;
    } catch (error) {
      this.#say(`${(error as Error).message}. The page still shows the kit's own book.`);
      return undefined;
    }
  }

  #apply(data: KitData, refit: Refit): void {
    clearTimeout(this.#timer);
    this.#refit = refit;
    writePanel(this.#form, refitKit(data.kit, refit), this.#touched);
    this.#paint(data, "in sight");
    this.#settle = () => {
      clearTimeout(this.#timer);
      this.#settle = undefined;
      this.#paint(data, "all");
      performance.mark("fit settled");
    };
    this.#timer = setTimeout(this.#settle, REST);
    const address = toAddress(refit).toString();
    history.replaceState(null, "", `${location.pathname}${address ? `?${address}` : ""}${location.hash}`);
  }

  #paint(data: KitData, reach: "in sight" | "all"): void {
    const start = performance.now();
    const result = fitted(data, this.#refit, reach === "in sight");
    const filled = "view" in result ? fill(this.#parts(data, reach), result.view) : [];
    performance.measure(`fit ${reach}`, { start });
    if ("problem" in result) {
      this.#view = undefined;
      this.#explain(result.problem, result.offers);
      return;
    }
    this.#view = result.view;
    for (const { part, text } of filled) part.innerHTML = text;
    if (reach === "all") this.#draw(result.view);
    this.#links();
    const changed = Object.keys(this.#refit).length > 0;
    this.#form.querySelector<HTMLElement>("[data-refit-keep]")!.hidden = !changed;
    if (hasWrongField(this.#form))
      this.#say(
        "The marked field cannot be read: the kit's own figure stands in for it, so this is not yet your book.",
      );
    else if (changed) this.#say("It fits. The page shows the kit on your book.", ...notices(data.kit, result.view));
    else this.#say("The page shows the kit's own book.");
  }

  /** Parts of the page to fill again: at the key those in sight, but none that light or window change. */
  #parts(data: KitData, reach: "in sight" | "all"): HTMLElement[] {
    const parts = [...document.querySelectorAll<HTMLElement>("[data-part]")];
    if (reach === "all") return parts;
    const waits = data.kit.insert || data.kit.light ? SLOW_PARTS : [];
    return parts.filter((part) => isInSight(part) && !waits.includes(part.dataset["part"]!));
  }

  #draw(view: KitView): void {
    showOwnBook(view);
    for (const address of this.#pictures) URL.revokeObjectURL(address);
    this.#pictures = [];
    for (const mood of ["day", "lit"] as const) {
      const image = document.querySelector<HTMLImageElement>(`.hero-picture .${mood}`);
      if (!image) continue;
      const svg = frontPicture(view.pattern, { slug: view.slug, title: view.kit.title, mood });
      const address = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
      this.#pictures.push(address);
      image.src = address;
    }
  }

  /** The built packets are for the kit's own book; for another the packet page lays itself out anew. */
  #links(): void {
    const address = toAddress(this.#refit).toString();
    const own = document.querySelector<HTMLElement>("[data-own-packets]");
    const mine = document.querySelector<HTMLElement>("[data-my-packet]");
    if (!own || !mine) return;
    own.hidden = address !== "";
    mine.hidden = address === "";
    for (const link of document.querySelectorAll<HTMLAnchorElement>("a[data-to]")) {
      link.href = `${link.dataset.to}${address ? `?${address}` : ""}`;
    }
  }

  #explain(
    problem: { readonly given: string; readonly allowed: string; readonly remedy: string },
    offers: readonly Offer[],
  ): void {
    const state = this.#form.querySelector<HTMLElement>("[data-refit-state]")!;
    const sentence = document.createElement("p");
    sentence.textContent = `It does not fit this book: ${problem.given}; ${problem.allowed}. What would help: ${problem.remedy}.`;
    const buttons = offers.map((offer) => {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = offer.words;
      button.addEventListener("click", () => this.show(offer.refit));
      return button;
    });
    state.replaceChildren(sentence, ...buttons);
    state.classList.add("wrong");
  }

  #say(words: string, ...more: readonly string[]): void {
    const state = this.#form.querySelector<HTMLElement>("[data-refit-state]")!;
    const sentences = [words, ...more].map((text) => {
      const sentence = document.createElement("p");
      sentence.textContent = text;
      return sentence;
    });
    state.replaceChildren(...sentences);
    state.classList.remove("wrong");
    state.classList.toggle("look", more.length > 0);
  }
}

/** What a maker should know of her own book before she begins, beside that it fits. */
function notices(own: Kit, { kit, pattern }: KitView): string[] {
  const { head, height } = pattern.fit;
  const moved = own.fit.head !== undefined && Math.abs(head - own.fit.head) > 1e-6;
  return [
    ...graveWarnings(kit, pattern),
    ...(moved
      ? [
          `The picture now begins ${formatSize(head, kit.units)} from the head, so that its ${formatSize(height, kit.units)} lie on your leaf.`,
        ]
      : []),
  ];
}

function fill(parts: readonly HTMLElement[], view: KitView): { readonly part: HTMLElement; readonly text: string }[] {
  return parts.map((part) => ({ part, text: renderPart(part.dataset["part"]!, view) }));
}

function isInSight(element: Element): boolean {
  const box = element.getBoundingClientRect();
  return box.bottom > 0 && box.top < innerHeight;
}
