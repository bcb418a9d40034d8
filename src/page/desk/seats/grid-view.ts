import { markWords, type SeatMark, type SeatsRow, seatsGrid } from "../../../output/parts/desk/seats.ts";

/** What the grid asks for. */
interface GridHands {
  /** A text for a cell, kept. */
  readonly keep: (row: number, column: number, text: string) => void;
  /** A text that is being written into a cell; undefined where it was left as it was. */
  readonly write: (row: number, column: number, text: string | undefined) => void;
  readonly paste: (row: number, column: number, text: string) => void;
  /** Another row is in use. */
  readonly turn: (row: number) => void;
}

/**
 * A grid of cells, used with the keyboard as the ARIA practices for grids have it: one cell takes the focus, arrow keys go to
 * others, Enter, F2 or a letter begins to write, Enter and Tab keep, Escape leaves it as it was.
 */
export class GridView {
  readonly #place: HTMLElement;
  readonly #hands: GridHands;
  #row = 0;
  #column = 0;
  #rows = 0;
  #columns = 0;
  #drawn = "";
  #field: HTMLInputElement | undefined;

  constructor(place: HTMLElement, hands: GridHands) {
    this.#place = place;
    this.#hands = hands;
    place.addEventListener("keydown", (event) => this.#key(event));
    place.addEventListener("focusin", ({ target }) => this.#stand(target));
    place.addEventListener("dblclick", ({ target }) => this.#begin(cellOf(target)));
    place.addEventListener("click", ({ target }) => cellOf(target)?.focus());
    place.addEventListener("paste", (event) => this.#paste(event));
    place.addEventListener("copy", (event) => this.#copy(event));
  }

  /** The row of the cell in use. */
  get row(): number {
    return this.#row;
  }

  /** Whether a text is being written that is not kept yet. */
  get isWriting(): boolean {
    return this.#field !== undefined;
  }

  show(title: string, columns: readonly string[], rows: readonly SeatsRow[]): void {
    const cells = JSON.stringify([title, columns, rows.map(({ texts, wrong }) => [texts, wrong])]);
    if (this.#field) return;
    if (cells === this.#drawn) {
      // Verdicts come one after the other: cells stay, so that no press on one is lost.
      for (const [r, { mark }] of rows.entries()) this.mark(r, mark);
      return;
    }
    const hadFocus = this.#place.contains(document.activeElement);
    this.#drawn = cells;
    this.#rows = rows.length;
    this.#columns = columns.length;
    this.#place.innerHTML = String(seatsGrid(title, columns, rows));
    this.#row = Math.min(this.#row, Math.max(0, rows.length - 1));
    this.#column = Math.min(this.#column, Math.max(0, columns.length - 1));
    const cell = this.#cell();
    if (cell) cell.tabIndex = 0;
    if (hadFocus) cell?.focus();
  }

  /** How a row comes out. */
  mark(row: number, mark: SeatMark): void {
    const cell = this.#cell(row, 0)?.closest("tr")?.querySelector("[data-mark]");
    if (!cell || cell.classList.contains(mark)) return;
    cell.className = `mark ${mark}`;
    cell.textContent = markWords(mark);
  }

  /** Puts the focus into a cell. */
  go(row: number, column: number): void {
    this.#row = Math.min(this.#rows - 1, Math.max(0, row));
    this.#column = Math.min(this.#columns - 1, Math.max(0, column));
    this.#cell()?.focus();
  }

  #cell(row = this.#row, column = this.#column): HTMLElement | null {
    return this.#place.querySelector(`[data-row="${row}"][data-column="${column}"]`);
  }

  /** The cell with the focus is the one that the Tab key comes back to. */
  #stand(target: EventTarget | null): void {
    const cell = cellOf(target);
    if (!cell) return;
    for (const other of this.#place.querySelectorAll<HTMLElement>('[role="gridcell"][tabindex="0"]'))
      other.tabIndex = -1;
    cell.tabIndex = 0;
    const row = Number(cell.dataset["row"]);
    this.#column = Number(cell.dataset["column"]);
    this.#row = row;
    this.#hands.turn(row);
  }

  #key(event: KeyboardEvent): void {
    if (this.#field) {
      this.#fieldKey(event);
      return;
    }
    if (event.altKey || !cellOf(event.target)) return;
    const isFar = event.ctrlKey || event.metaKey;
    const to = placeFor(event.key, isFar, {
      row: this.#row,
      column: this.#column,
      rows: this.#rows,
      columns: this.#columns,
    });
    if (to) this.go(to.row, to.column);
    else if (isFar) return;
    else if (event.key === "Enter" || event.key === "F2") this.#begin(this.#cell());
    else if (event.key === "Delete" || event.key === "Backspace") this.#hands.keep(this.#row, this.#column, "");
    else if (event.key.length === 1) this.#begin(this.#cell(), "");
    else return;
    // A letter that begins to write is the first that is written.
    if (event.key.length > 1) event.preventDefault();
  }

  #fieldKey(event: KeyboardEvent): void {
    const { key, shiftKey } = event;
    if (key === "Enter") this.#end(true, [this.#row + (shiftKey ? -1 : 1), this.#column]);
    else if (key === "Escape") this.#end(false, [this.#row, this.#column]);
    else if (key === "Tab") this.#end(true, [this.#row, this.#column + (shiftKey ? -1 : 1)]);
    else return;
    event.preventDefault();
    event.stopPropagation();
  }

  #begin(cell: HTMLElement | null, text = cell?.textContent ?? ""): void {
    if (!cell || this.#field) return;
    const field = document.createElement("input");
    field.value = text;
    field.autocomplete = "off";
    field.setAttribute("aria-label", this.#headOf(Number(cell.dataset["column"])));
    field.dataset["was"] = cell.textContent;
    cell.replaceChildren(field);
    this.#field = field;
    field.focus();
    if (text !== "") field.select();
    field.addEventListener("input", () => this.#hands.write(this.#row, this.#column, field.value));
    field.addEventListener("blur", () => this.#end(true));
  }

  /** Ends writing: the text is kept, or the cell is as it was; then the focus goes to another cell. */
  #end(isKept: boolean, to?: readonly [row: number, column: number]): void {
    const field = this.#field;
    if (!field) return;
    this.#field = undefined;
    const [row, column] = [this.#row, this.#column];
    const cell = field.parentElement!;
    const was = field.dataset["was"]!;
    const isNew = isKept && field.value.trim() !== was;
    cell.textContent = isNew ? field.value : was;
    this.#drawn = "";
    if (isNew) this.#hands.keep(row, column, field.value);
    else this.#hands.write(row, column, undefined);
    if (to) this.go(...to);
  }

  #paste(event: ClipboardEvent): void {
    if (this.#field || !cellOf(event.target)) return;
    event.preventDefault();
    this.#hands.paste(this.#row, this.#column, event.clipboardData?.getData("text/plain") ?? "");
  }

  #copy(event: ClipboardEvent): void {
    const cell = this.#field ? null : cellOf(event.target);
    if (!cell || !event.clipboardData || String(getSelection()) !== "") return;
    event.preventDefault();
    event.clipboardData.setData("text/plain", cell.textContent ?? "");
  }

  #headOf(column: number): string {
    // Beside the seat stands how it comes out.
    return this.#place.querySelectorAll("thead th")[column === 0 ? 0 : column + 1]?.textContent ?? "";
  }
}

function cellOf(target: EventTarget | null): HTMLElement | null {
  return target instanceof Element ? target.closest<HTMLElement>("[data-row]") : null;
}

interface Standing {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** So many rows a page is. */
const PAGE = 10;

/** Where a key goes from a cell; undefined where it goes nowhere. */
function placeFor(
  key: string,
  isFar: boolean,
  { row, column, rows, columns }: Standing,
): { readonly row: number; readonly column: number } | undefined {
  switch (key) {
    case "ArrowUp":
      return { row: isFar ? 0 : row - 1, column };
    case "ArrowDown":
      return { row: isFar ? rows - 1 : row + 1, column };
    case "ArrowLeft":
      return { row, column: isFar ? 0 : column - 1 };
    case "ArrowRight":
      return { row, column: isFar ? columns - 1 : column + 1 };
    case "Home":
      return { row: isFar ? 0 : row, column: 0 };
    case "End":
      return { row: isFar ? rows - 1 : row, column: columns - 1 };
    case "PageUp":
      return { row: row - PAGE, column };
    case "PageDown":
      return { row: row + PAGE, column };
    default:
      return undefined;
  }
}
