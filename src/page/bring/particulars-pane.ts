import { type BookAnswer, USUAL_BOOK } from "../../core/beginning/answers.ts";
import { BOUNDS } from "../../core/kit/bounds.ts";
import type { Field } from "../../core/refit/field.ts";
import { bookFields } from "../../core/refit/fields.ts";
import { readField } from "../../core/refit/read-field.ts";
import type { Refit } from "../../core/refit/refit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { readLength } from "../../core/units/written-length.ts";
import { isAddressName } from "../../input/files/address-name.ts";
import type { TypedField } from "../../output/parts/bring/controls.ts";
import { bookPart, lampPart, namesPart } from "../../output/parts/bring/particulars.ts";
import { faultText, fieldLabel } from "../../words/fields.ts";
import { formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { askBook } from "../measure/ask-book.ts";
import { type Bringing, proposedTitle, slugShown, USUAL_LIGHT } from "./bringing.ts";
import { fill, partOf, setField } from "./fill.ts";

const BOOK = ["leafHeight", "leafWidth", "blockThickness", "leaves"] as const;

type BookName = (typeof BOOK)[number];

const LIGHT = { "light-diameter": "diameter", "light-height": "height" } as const;

/** The kit's names, its book and its light. */
export class ParticularsPane {
  readonly #names: HTMLElement;
  readonly #book: HTMLElement;
  readonly #lamp: HTMLElement;
  readonly #change: (make: (state: Bringing) => Bringing) => void;
  readonly #taken: () => readonly string[];

  constructor(
    table: HTMLElement,
    change: (make: (state: Bringing) => Bringing) => void,
    taken: () => readonly string[],
  ) {
    this.#change = change;
    this.#taken = taken;
    [this.#names, this.#book, this.#lamp] = [partOf(table, "names"), partOf(table, "book"), partOf(table, "lamp")];
    this.#names.addEventListener("input", ({ target }) => this.#name(target as HTMLInputElement));
    this.#book.addEventListener("input", ({ target }) => this.#typeBook(target as HTMLInputElement));
    this.#book.addEventListener("submit", (event) => event.preventDefault());
    this.#book.addEventListener("click", ({ target }) => void this.#press(target as HTMLElement));
    this.#lamp.addEventListener("input", ({ target }) => this.#light(target as HTMLInputElement));
  }

  show(state: Bringing): void {
    const { book, units, light } = state;
    const slug = slugShown(state, this.#taken());
    const title = state.title ?? proposedTitle(state);
    fill(this.#names, "names", () => namesPart(title, slug, state.draft));
    setField(this.#input(this.#names, "title"), title);
    setField(this.#input(this.#names, "slug"), slug);
    const wrong = slugFault(slug, this.#taken());
    mark(this.#input(this.#names, "slug"), wrong, wrong ?? say.deskNewSlugBelow({ folder: `content/kits/${slug}` }));
    fill(this.#book, units, () =>
      bookPart(
        BOOK.map((name) => typedField(name, book, units)),
        units,
      ),
    );
    for (const name of BOOK) {
      const input = this.#input(this.#book, name);
      if (!input.hasAttribute("aria-invalid")) setField(input, typedField(name, book, units).value);
    }
    fill(this.#lamp, `${units} ${light !== undefined}`, () => lampPart(light, units));
  }

  /** The first field that cannot be taken. */
  wrong(): HTMLElement | null {
    const places = [this.#names, this.#book, this.#lamp];
    return places.map((place) => place.querySelector<HTMLElement>('[aria-invalid="true"]')).find((one) => one) ?? null;
  }

  #input(place: HTMLElement, name: string): HTMLInputElement {
    return place.querySelector<HTMLInputElement>(`#bring-${name}`)!;
  }

  #name({ id, value, checked, dataset }: HTMLInputElement): void {
    if (id === "bring-title") this.#change((state) => ({ ...state, title: value.trim() === "" ? undefined : value }));
    if (id === "bring-slug")
      this.#change((state) => ({ ...state, slug: value.trim() === "" ? undefined : value.trim() }));
    if (dataset["draft"] !== undefined) this.#change((state) => ({ ...state, draft: checked }));
  }

  #typeBook(input: HTMLInputElement): void {
    if (input.dataset["units"] !== undefined) {
      this.#change((state) => ({ ...state, units: input.value as UnitSystem }));
      return;
    }
    const name = BOOK.find((one) => input.id === `bring-${one}`);
    if (!name) return;
    this.#change((state) => {
      const read = readField(fieldNamed(name), input.value, { units: state.units, levels: [] });
      mark(input, "fault" in read ? say.fitPanelAllowed({ allowed: faultText(read.fault, state.units) }) : undefined);
      return "fault" in read ? state : { ...state, book: bookWith(state.book, read.refit) };
    });
  }

  async #press(target: HTMLElement): Promise<void> {
    if (target.closest("[data-usual-book]")) this.#setBook(USUAL_BOOK);
    const measure = target.closest<HTMLElement>("[data-measure]");
    if (!measure) return;
    const { value } = this.#book.querySelector<HTMLInputElement>("[data-units]:checked")!;
    const asked = await askBook(value as UnitSystem, this.#book.querySelector("form")!);
    measure.focus();
    if (asked) this.#change((state) => ({ ...state, book: bookWith(state.book, asked) }));
    this.#unmark();
  }

  #setBook(book: BookAnswer): void {
    this.#unmark();
    this.#change((state) => ({ ...state, book }));
  }

  #unmark(): void {
    for (const name of BOOK) mark(this.#input(this.#book, name), undefined);
  }

  #light(input: HTMLInputElement): void {
    if (input.dataset["lit"] !== undefined) {
      this.#change((state) => ({ ...state, light: input.checked ? USUAL_LIGHT : undefined }));
      return;
    }
    const side = LIGHT[input.id.replace("bring-", "") as keyof typeof LIGHT];
    if (!side) return;
    this.#change((state) => {
      const { least, most } = side === "diameter" ? BOUNDS.lightDiameter : BOUNDS.lightHeight;
      const mm = readLength(input.value, state.units);
      const isSound = mm !== undefined && mm >= least && mm <= most;
      const allowed = faultText({ kind: "length-outside", least, most }, state.units);
      mark(input, isSound ? undefined : say.fitPanelAllowed({ allowed }));
      return isSound ? { ...state, light: { ...(state.light ?? USUAL_LIGHT), [side]: mm } } : state;
    });
  }
}

/** What is wrong with a folder's name. */
export function slugFault(slug: string, taken: readonly string[]): string | undefined {
  if (!isAddressName(slug)) return say.deskNewSlugLetters();
  return taken.includes(slug) ? say.deskNewSlugTaken() : undefined;
}

/** Marks a field that cannot be taken, and says why; `help` stands there otherwise. */
function mark(input: HTMLInputElement, fault: string | undefined, help = fault ?? ""): void {
  if (fault === undefined) input.removeAttribute("aria-invalid");
  else input.setAttribute("aria-invalid", "true");
  const below = document.getElementById(input.getAttribute("aria-describedby") ?? "");
  if (below && below.textContent !== help) below.textContent = help;
}

function fieldNamed(name: BookName): Field {
  return bookFields().find((field) => field.name === name)!;
}

function typedField(name: BookName, book: BookAnswer, units: UnitSystem): TypedField {
  const isCount = name === "leaves";
  const value = isCount ? String(book.leaves) : formatSize(book[name], units).replace("\u00a0", " ");
  return { name, label: fieldLabel(fieldNamed(name), { levels: [] }), value, keys: isCount ? "numeric" : "text" };
}

/** A book with what was read of it; of pages only what was stated together with its leaves. */
function bookWith(
  book: BookAnswer,
  { leafHeight, leafWidth, blockThickness, leaves, lastPage, pageOneLeaf }: Refit,
): BookAnswer {
  const pages = leaves === undefined ? {} : { lastPage, pageOneLeaf };
  const stated = Object.entries({ leafHeight, leafWidth, blockThickness, leaves }).filter(
    ([, one]) => one !== undefined,
  );
  return { ...book, ...pages, ...Object.fromEntries(stated) };
}
