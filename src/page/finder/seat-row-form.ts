import { ROW_COLUMNS, type RowOf, seatRow } from "../../core/class/seat-row.ts";
import { ASKED } from "../../core/finder/book-figures.ts";
import type { Refit } from "../../core/refit/refit.ts";
import type { RowFacts } from "../../output/parts/class/seat-row.ts";
import * as say from "../../words/messages.ts";
import { offerFile } from "../shared/offer-file.ts";
import { drawRowCode } from "./row-code.ts";
import { rowTime } from "./row-time.ts";

/** What the form asks for, each under its name in the page's address. */
const CHOICES = ["seat", "kit", "way", "pace"] as const;

/** The form of a class's page that makes a seat's row of the book in the finder above it. */
export class SeatRowForm {
  readonly #form: HTMLFormElement;
  readonly #facts: RowFacts;
  /** Undefined while the finder has no whole book. */
  #book: Refit | undefined;

  /** `changed` is called where the reader chooses something. */
  constructor(form: HTMLFormElement, changed: () => void) {
    this.#form = form;
    this.#facts = JSON.parse(form.dataset["seatRow"]!) as RowFacts;
    this.#choose(new URLSearchParams(location.search));
    form.addEventListener("input", () => {
      this.#write();
      changed();
    });
    form.addEventListener("submit", (event) => event.preventDefault());
    this.#at("copy").addEventListener("click", () => this.#copy());
    this.#at("save").addEventListener("click", () => this.#save());
    form.hidden = false;
  }

  /** Takes a new book; `sound` says whether all that is written for it can be used. */
  show(book: Refit, sound: boolean): void {
    const whole = sound && ASKED.every((key) => book[key] !== undefined);
    // What the finder shows first of a choice is what it says, whether it was chosen or not.
    this.#book = whole ? { direction: "ltr", ...book } : undefined;
    this.#write();
  }

  /** What is chosen, as the page's address holds it; empty where it is what the page begins with. */
  address(): string {
    const chosen = CHOICES.filter((name) => this.#select(name).selectedIndex > 0);
    return chosen.map((name) => `${name}=${this.#select(name).value}`).join("&");
  }

  /** What an address asks for; a choice that the form does not have is passed over. */
  #choose(address: URLSearchParams): void {
    for (const name of CHOICES) {
      const select = this.#select(name);
      const at = [...select.options].findIndex(({ value }) => value === address.get(name));
      if (at >= 0) select.selectedIndex = at;
    }
  }

  async #write(): Promise<void> {
    const book = this.#book;
    const text = book ? seatRow(this.#row(), book) : "";
    this.#line().value = text;
    for (const name of ["copy", "save"] as const) this.#at(name).hidden = book === undefined;
    this.#tell(this.#missing());
    this.#at("time").textContent = "";
    await drawRowCode(this.#at("code"), text);
    const time = book ? await rowTime(this.#row(), book, this.#facts, this.#form.dataset["site"]!) : "";
    if (this.#line().value === text) this.#at("time").textContent = time;
  }

  #missing(): string {
    if (!this.#book) return say.classRowMissing();
    const { pageOneLeaf, lastPage } = this.#book;
    return pageOneLeaf === undefined || lastPage === undefined ? say.classRowPages() : "";
  }

  /** Some browsers, and pages from the disk, do not let a page copy. */
  async #copy(): Promise<void> {
    const line = this.#line();
    line.select();
    const copied = await navigator.clipboard?.writeText(line.value).then(
      () => true,
      () => false,
    );
    this.#tell(copied ? say.classRowCopied() : say.classRowSelected());
  }

  #save(): void {
    const text = `${ROW_COLUMNS.join(",")}\n${this.#line().value}\n`;
    offerFile(this.#at("save") as HTMLAnchorElement, text, `seat-${this.#row().seat}.csv`);
  }

  #row(): RowOf {
    const [seat, kit, way, pace] = CHOICES.map((name) => this.#select(name).value);
    return {
      seat: Number(seat),
      kit: kit!,
      pace: pace === "" ? undefined : Number(pace),
      foldStyle: way === "corner" ? way : undefined,
    };
  }

  #tell(text: string): void {
    this.#at("told").textContent = text;
  }

  #line(): HTMLInputElement {
    return this.#form.elements.namedItem("line") as HTMLInputElement;
  }

  #select(name: (typeof CHOICES)[number]): HTMLSelectElement {
    return this.#form.elements.namedItem(name) as HTMLSelectElement;
  }

  #at(name: "copy" | "save" | "told" | "time" | "code"): HTMLElement {
    return this.#form.querySelector<HTMLElement>(`[data-row-${name}]`)!;
  }
}
