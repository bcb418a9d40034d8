import { type LeftOver, leftOver, type SeatWork } from "../../core/class/left-over.ts";
import { hoursText } from "../../words/hours.ts";
import * as say from "../../words/messages.ts";
import { percentText } from "../../words/numbers.ts";
import { keepNotes, keptNotes, type SeatNote } from "./room-store.ts";

/** The list of seats, as the page's other parts use it. */
export interface RoomSeats {
  /** Tells which session is shown: the sum below the list is of those who are here in it. */
  readonly show: (session: number) => void;
}

/** Binds the list of seats: what is ticked and written is kept at once, and fills the slips that go home. */
export function bindSeats(room: HTMLElement): RoomSeats {
  const slug = room.dataset["room"]!;
  const rows = [...room.querySelectorAll<HTMLTableRowElement>("[data-seat]")].map((row) => new SeatRow(room, row));
  let session = 0;
  const render = (): void => {
    for (const row of rows) row.render();
    sum(room, rows, session);
  };
  const keep = (): void => {
    const kept = keepNotes(slug, Object.fromEntries(rows.map((row) => [row.number, row.note])));
    room.querySelector<HTMLElement>("[data-not-kept]")!.hidden = kept;
    render();
  };
  const notes = keptNotes(slug);
  for (const row of rows) row.write(notes[row.number]);
  room.querySelector("[data-seats]")!.addEventListener("input", keep);
  const clear = room.querySelector<HTMLButtonElement>("[data-clear]")!;
  clear.hidden = false;
  clear.addEventListener("click", () => {
    if (!window.confirm(say.roomClearSure())) return;
    for (const row of rows) row.write(undefined);
    keep();
  });
  window.addEventListener("storage", () => {
    const changed = keptNotes(slug);
    for (const row of rows) row.write(changed[row.number]);
    render();
  });
  render();
  return {
    show: (shown) => {
      session = shown;
      render();
    },
  };
}

/** A seat's row, and its slip. */
class SeatRow {
  readonly number: string;
  readonly #work: SeatWork | undefined;
  readonly #row: HTMLElement;
  readonly #slip: HTMLElement | null;
  /** The line to write on, as the page came with it. */
  readonly #blank: string;

  constructor(room: HTMLElement, row: HTMLElement) {
    this.number = row.dataset["seat"]!;
    const { work } = row.dataset;
    this.#work = work === undefined ? undefined : (JSON.parse(work) as SeatWork);
    this.#row = row;
    this.#slip = room.querySelector(`[data-slip="${this.number}"]`);
    this.#blank = this.#slip?.querySelector("[data-done]")?.innerHTML ?? "";
    for (const input of row.querySelectorAll("input")) input.disabled = false;
  }

  get note(): SeatNote {
    const field = this.#field("page");
    const page = field?.validity.valid ? Number(field.value) : 0;
    return {
      here: this.#heres().flatMap(({ checked }, i) => (checked ? [i] : [])),
      page: Number.isInteger(page) && page > 0 ? page : undefined,
      finished: this.#field("finished")?.checked === true,
    };
  }

  /** How much is done and left; undefined for a seat without a pattern. */
  get left(): LeftOver | undefined {
    return this.#work && leftOver(this.#work, this.note);
  }

  /** The whole work, as if nothing were done. */
  get whole(): LeftOver | undefined {
    return this.#work && leftOver(this.#work, { page: undefined, finished: false });
  }

  write(note: SeatNote | undefined): void {
    for (const [i, box] of this.#heres().entries()) box.checked = note?.here.includes(i) === true;
    const [page, finished] = [this.#field("page"), this.#field("finished")];
    if (page) page.value = note?.page === undefined ? "" : String(note.page);
    if (finished) finished.checked = note?.finished === true;
  }

  render(): void {
    const { left, note } = this;
    if (!left) return;
    const known = note.finished || note.page !== undefined;
    const rest = restText(left);
    this.#row.querySelector("[data-rest]")!.textContent = rest;
    if (!this.#slip) return;
    const [done, remains] = ["[data-done]", "[data-rest]"].map((part) => this.#slip!.querySelector(part)!);
    if (note.page === undefined) done!.innerHTML = this.#blank;
    else done!.textContent = String(note.page);
    if (known) remains!.textContent = rest;
    else remains!.innerHTML = this.#blank;
  }

  #heres(): HTMLInputElement[] {
    return [...this.#row.querySelectorAll<HTMLInputElement>('[name^="here-"]')];
  }

  #field(name: string): HTMLInputElement | null {
    return this.#row.querySelector(`[name="${name}"]`);
  }
}

function restText({ leaves, from, minutes }: LeftOver): string {
  if (minutes === 0) return say.roomRestNone();
  const time = hoursText(minutes);
  return from === undefined ? say.roomRest({ leaves, time }) : say.roomRestFrom({ leaves, page: from, time });
}

function sum(room: HTMLElement, rows: readonly SeatRow[], session: number): void {
  const lefts = rows.flatMap(({ left }) => left ?? []);
  const total = (of: readonly LeftOver[]): number => of.reduce((sum, { minutes }) => sum + minutes, 0);
  const share = 1 - total(lefts) / Math.max(1, total(rows.flatMap(({ whole }) => whole ?? [])));
  room.querySelector("[data-sum]")!.textContent = say.roomSum({
    here: rows.filter(({ note }) => note.here.includes(session)).length,
    finished: rows.filter(({ note }) => note.finished).length,
    percent: percentText(share),
  });
}
