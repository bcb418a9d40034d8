import { OF_A_BOOK } from "../../../core/refit/refit.ts";
import { cellValue, keyOfColumn, pathOfColumn } from "../../../input/class/seat-cells.ts";
import { type Edit, editText } from "../../../input/desk/edit.ts";
import { frontValue } from "../../../input/desk/front-value.ts";
import type { DeskText } from "../../../input/desk/protocol.ts";
import { isYamlMap, valueIn, withValue, type YamlValue } from "../../../input/desk/yaml-value.ts";
import type { FieldPath } from "../../../input/files/problem.ts";
import { type CellEdit, editDelimited } from "../../../input/tables/edit-delimited.ts";
import { Draft } from "../draft/draft.ts";
import { type ClassTexts, type GridRow, readGrid, type SeatGrid, shownColumns } from "./seat-grid.ts";

/** A text for a cell of a seat: one that is there, by its place in the grid, or a new one by its number. */
export interface CellChange {
  readonly row: number | { readonly newSeat: number };
  readonly column: string;
  readonly text: string;
}

/**
 * A class on the desk: drafts of its index.md and of its table, the grid that both make, and one undo for both. A cell is
 * written where its seat states it: into the table, or into the front matter.
 */
export class DeskClass {
  readonly matter: Draft;
  readonly table: Draft | undefined;
  #with: Pick<ClassTexts, "taken" | "kits">;
  readonly #changed: () => void;
  /** What was done, each as the steps that it took in the drafts; those behind `#done` can be done again. */
  #deeds: (readonly Taken[])[] = [];
  #done = 0;
  #grid: SeatGrid;

  constructor(
    texts: { readonly matter: DeskText; readonly table: DeskText | undefined },
    { taken, kits }: Pick<ClassTexts, "taken" | "kits">,
    changed: () => void,
  ) {
    this.matter = new Draft(texts.matter);
    this.table = texts.table && new Draft(texts.table);
    this.#with = { taken, kits };
    this.#changed = changed;
    this.#grid = this.#read();
  }

  get grid(): SeatGrid {
    return this.#grid;
  }

  get drafts(): readonly Draft[] {
    return this.table ? [this.matter, this.table] : [this.matter];
  }

  get isChanged(): boolean {
    return this.drafts.some((draft) => draft.isChanged);
  }

  get canUndo(): boolean {
    return this.#done > 0;
  }

  get canRedo(): boolean {
    return this.#done < this.#deeds.length;
  }

  /** Puts texts into cells, all of them as one thing that can be undone. */
  set(changes: readonly CellChange[]): void {
    const before = this.drafts.map(({ steps }) => steps);
    const { edits, cells } = this.#places(changes.filter((one) => one.text.trim() !== this.#textAt(one)));
    for (const draft of this.drafts) draft.rest();
    if (edits.length > 0) this.matter.change(edits);
    if (this.table && cells.length > 0) this.table.replace(editDelimited(this.table.file, this.table.text, cells));
    const taken = this.drafts.flatMap((draft, i): Taken[] => {
      const steps = draft.steps - before[i]!;
      return steps > 0 ? [{ draft, steps }] : [];
    });
    if (taken.length === 0) return;
    this.#deeds = [...this.#deeds.slice(0, this.#done), taken];
    this.#done = this.#deeds.length;
    this.#show();
  }

  /** The row of a cell as it would be with another text in it; nothing is changed. */
  preview(change: CellChange & { readonly row: number }): GridRow | undefined {
    const { edits, cells } = this.#places([change]);
    const { matter, table } = this;
    const grid = readGrid({
      file: matter.file,
      text: editText(matter.text, edits) ?? matter.text,
      table: table && { file: table.file, text: editDelimited(table.file, table.text, cells) },
      ...this.#with,
    });
    const { number } = this.#grid.rows[change.row] ?? {};
    return change.column === "seat" ? grid.rows[change.row] : grid.rows.find((row) => row.number === number);
  }

  undo(): void {
    if (!this.canUndo) return;
    this.#done -= 1;
    for (const { draft, steps } of this.#deeds[this.#done]!) for (let i = 0; i < steps; i += 1) draft.undo();
    this.#show();
  }

  redo(): void {
    if (!this.canRedo) return;
    for (const { draft, steps } of this.#deeds[this.#done]!) for (let i = 0; i < steps; i += 1) draft.redo();
    this.#done += 1;
    this.#show();
  }

  written(draft: Draft, text: string, mark: string): void {
    draft.written(text, mark);
    this.#changed();
  }

  /** A file is another one now. */
  meet(draft: Draft, found: DeskText): void {
    const before = draft.text;
    draft.meet(found);
    if (draft.text !== before) this.#forget();
    this.#show();
  }

  decide(draft: Draft, what: "keep" | "take" | "merge"): void {
    draft.decide(what);
    if (what !== "keep") this.#forget();
    this.#show();
  }

  /** Kits of the site are others now. */
  takeKits(kits: ClassTexts["kits"]): void {
    this.#with = { ...this.#with, kits };
    this.#show();
  }

  /** The lowest number that no seat has. */
  get freeSeat(): number {
    const taken = new Set(this.#grid.rows.map(({ number }) => number));
    let free = 1;
    while (taken.has(free)) free += 1;
    return free;
  }

  /** What was undone or done before belongs to another text. */
  #forget(): void {
    this.#deeds = [];
    this.#done = 0;
  }

  #show(): void {
    this.#grid = this.#read();
    this.#changed();
  }

  #read(): SeatGrid {
    const { matter, table } = this;
    return readGrid({
      file: matter.file,
      text: matter.text,
      table: table && { file: table.file, text: table.text },
      ...this.#with,
    });
  }

  #textAt({ row, column }: CellChange): string {
    return typeof row === "number" ? (this.#grid.rows[row]?.cells[column] ?? "") : "";
  }

  /** Where changes are written. */
  #places(changes: readonly CellChange[]): { readonly edits: Edit[]; readonly cells: CellEdit[] } {
    const edits: Edit[] = [];
    const cells: CellEdit[] = [];
    const columns = [...(this.#grid.columns ?? [])];
    const news = Map.groupBy(changes, ({ row }) => keyOf(row, this.#grid));
    let [tableRows, seats] = [this.#grid.tableRows, this.#grid.matterSeats];
    for (const own of news.values()) {
      const row = typeof own[0]!.row === "number" ? this.#grid.rows[own[0]!.row]! : undefined;
      const number = row?.number ?? (typeof own[0]!.row === "number" ? undefined : own[0]!.row.newSeat);
      const isNew = row === undefined || (row.inTable === undefined && row.inMatter === undefined);
      const all = isNew && !own.some(({ column }) => column === "seat") ? [seatCell(own[0]!.row, number), ...own] : own;
      if (isNew && !this.#isTabled(all)) {
        edits.push({ at: ["seats", seats], value: this.#newSeat(all) });
        seats += 1;
        continue;
      }
      const place = row?.inTable ?? tableRows;
      if (isNew) tableRows += 1;
      for (const change of all) {
        if (!isNew && this.#isInMatter(row, change.column)) edits.push(...this.#matterEdits(row, change));
        else cells.push(...tableCells(columns, place, change));
      }
    }
    return { edits, cells };
  }

  /** Whether the table takes a new seat with these cells. */
  #isTabled(changes: readonly CellChange[]): boolean {
    const isRows = this.#grid.columns === undefined;
    return this.table !== undefined && !(isRows && changes.some(({ column }) => !LINE_COLUMNS.includes(column)));
  }

  #isInMatter({ inTable, inMatter, own }: GridRow, column: string): boolean {
    if (inTable === undefined) return true;
    const isBeyond = this.#grid.columns === undefined && !LINE_COLUMNS.includes(column);
    return inMatter !== undefined && (own.includes(keyOfColumn(column)) || isBeyond);
  }

  /** The changes of a seat of the front matter. What would be left empty goes with its last field. */
  #matterEdits({ inMatter, cells }: GridRow, { column, text }: CellChange): Edit[] {
    const at: FieldPath = ["seats", inMatter!];
    const value = cellValue(column, text, this.#grid.kits) as YamlValue | undefined;
    if (column === "seat" && value === undefined) return [];
    const [key, name, place] = pathOfColumn(column);
    if (place !== undefined) return [{ at: [...at, key!, name!], value: this.#borders(cells, column, value) }];
    const seat = valueIn(frontValue(this.matter.text), at);
    const whole = key === undefined ? undefined : valueIn(seat, [key]);
    const isLast = value === undefined && isYamlMap(whole) && Object.keys(whole).every((one) => one === name);
    return [{ at: [...at, ...(isLast ? [key!] : pathOfColumn(column))], value }];
  }

  /** Both borders, as the front matter has them in one list: one alone takes the kit's own beside it. */
  #borders(cells: GridRow["cells"], column: string, value: YamlValue | undefined): YamlValue | undefined {
    const other = column === "borderBefore" ? "borderAfter" : "borderBefore";
    if (value === undefined) return undefined;
    const beside = (cellValue(other, cells[other] ?? "", []) as YamlValue | undefined) ?? value;
    return column === "borderBefore" ? [value, beside] : [beside, value];
  }

  #newSeat(changes: readonly CellChange[]): YamlValue {
    let seat: YamlValue = {};
    for (const { column, text } of changes) {
      const value = cellValue(column, text, this.#grid.kits) as YamlValue | undefined;
      const [key, name, place] = pathOfColumn(column);
      const cells = Object.fromEntries(changes.map((one) => [one.column, one.text]));
      const put = place === undefined ? value : this.#borders(cells, column, value);
      if (put !== undefined) seat = withValue(seat, name === undefined ? [key!] : [key!, name], put)!;
    }
    return seat;
  }
}

/** Steps of a draft that belong together with those of another one. */
interface Taken {
  readonly draft: Draft;
  readonly steps: number;
}

/** What rows without a head can hold. */
const LINE_COLUMNS: readonly string[] = ["seat", "kit", ...OF_A_BOOK, "pace"];

function keyOf(row: CellChange["row"], { rows }: SeatGrid): string {
  return typeof row === "number" ? `row ${row}` : `seat ${rows.length} ${row.newSeat}`;
}

function seatCell(row: CellChange["row"], number: number | undefined): CellChange {
  return { row, column: "seat", text: String(number ?? "") };
}

/** The cells of a change in the table; a column that it has not yet is put behind the others. */
function tableCells(columns: string[], row: number, { column, text }: CellChange): CellEdit[] {
  const known = (columns.length > 0 ? columns : LINE_COLUMNS).indexOf(column);
  if (known >= 0) return [{ row, column: known, text }];
  columns.push(column);
  return [
    { row: 0, column: columns.length - 1, text: column },
    { row, column: columns.length - 1, text },
  ];
}

/** All cells of a grid as rows of texts below their head: for another table. */
export function gridRows(grid: SeatGrid): string[][] {
  const columns = shownColumns(grid, false);
  return [columns, ...grid.rows.map(({ cells }) => columns.map((column) => cells[column] ?? ""))];
}
