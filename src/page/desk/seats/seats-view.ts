import type { Verdict } from "../../../core/finder/verdict.ts";
import { told } from "../../../input/desk/desk-message.ts";
import type { DeskNews, DeskState, WriteAnswer } from "../../../input/desk/protocol.ts";
import { delimitedText } from "../../../input/tables/edit-delimited.ts";
import { deskSeats, seatsWait, seatTold, workbookNews } from "../../../output/parts/desk/seats.ts";
import { listText } from "../../../words/lists.ts";
import * as say from "../../../words/messages.ts";
import { offerFile } from "../../shared/offer-file.ts";
import type { Draft } from "../draft/draft.ts";
import { DifferenceView } from "../table/difference-view.ts";
import { NewsView } from "../table/news-view.ts";
import { ribbonKey } from "../table/ribbon-view.ts";
import { DeskClass, gridRows } from "./desk-class.ts";
import { GridView } from "./grid-view.ts";
import { SeatJudge } from "./judge-seats.ts";
import { type ClassServer, type KitsThere, type LoadedClass, loadClass, loadKit } from "./load-class.ts";
import { offerCells } from "./offer-cells.ts";
import { pastedCells } from "./paste.ts";
import { type GridRow, shownColumns } from "./seat-grid.ts";
import { markOf, offersOf, seatWords } from "./seat-words.ts";

/** What the view needs of the desk that it stands on. */
export interface SeatsDesk {
  readonly server: ClassServer & {
    readonly page: string;
    write(asked: { file: string; text: string; mark: string; anyway?: boolean }): Promise<WriteAnswer>;
    open(asked: { file: string; line?: number; column?: number }): Promise<void>;
  };
  readonly state: () => DeskState;
  readonly listen: (heard: (news: DeskNews) => void) => void;
  readonly tell: (sentence: string) => void;
}

/** Classes that were laid out on this page: what is not written yet is not lost when another view is looked at. */
const laid = new Map<string, { readonly loaded: LoadedClass; readonly model: DeskClass; hear: () => void }>();

/** A class on the desk. @throws what the server refuses */
export async function seatsView(place: HTMLElement, desk: SeatsDesk, slug: string): Promise<() => boolean> {
  const { kits, classes } = desk.state();
  const entry = classes.find((one) => one.slug === slug);
  const known = laid.get(slug);
  const kept = known?.model.isChanged ? known : undefined;
  if (entry && !kept) {
    place.innerHTML = String(deskSeats(entry.title, seatsWait()));
    place.querySelector("[data-told]")!.textContent = say.deskKitToldSame();
  }
  const loaded = entry && (kept?.loaded ?? (await loadClass(entry, { kits, classes }, desk.server, tellWait(place))));
  if (!entry || !loaded) {
    const line = document.createElement("p");
    line.textContent = entry?.messages[0]?.sentence ?? say.deskClassNoClass();
    place.replaceChildren(line);
    return () => true;
  }
  const held = kept ?? {
    loaded,
    model: new DeskClass(loaded, loaded, () => laid.get(slug)?.hear()),
    hear: () => {},
  };
  laid.set(slug, held);
  const view = new SeatsView(place, desk, { ...held, title: entry.title });
  held.hear = () => view.show();
  desk.listen((news) => void view.hear(news));
  view.show();
  view.begin();
  return () => {
    held.hear = () => {};
    view.dispose();
    return true;
  };
}

/** Says in the place of the grid which kit is waited for. */
function tellWait(place: HTMLElement): (far: KitsThere) => void {
  return (far) => {
    place.querySelector("[data-wait]")!.textContent = say.deskClassWaiting({ ...far, there: far.there + 1 });
  };
}

addEventListener("beforeunload", (event) => {
  if ([...laid.values()].some(({ model }) => model.isChanged)) event.preventDefault();
});

/** While a text is written, its verdict comes when no letter has come for so long, ms. */
const REST = 120;

class SeatsView {
  readonly #desk: SeatsDesk;
  readonly #model: DeskClass;
  readonly #title: string;
  readonly #kitFiles: LoadedClass["kitFiles"];
  /** Whether its table is a workbook, which is not written. */
  readonly #isWorkbook: boolean;
  readonly #table: HTMLElement;
  readonly #grid: GridView;
  readonly #news: NewsView;
  readonly #difference: DifferenceView;
  readonly #judge = new SeatJudge(() => this.#showSeats());
  readonly #ends = new AbortController();
  #columns: readonly string[] = [];
  /** The row in which a text is being written, as it would be. */
  #preview: GridRow | undefined;
  #waits: ReturnType<typeof setTimeout> | undefined;
  #isWriting = false;
  #isWritten = false;

  constructor(
    place: HTMLElement,
    desk: SeatsDesk,
    of: { readonly model: DeskClass; readonly loaded: LoadedClass; readonly title: string },
  ) {
    const { model, loaded, title } = of;
    this.#desk = desk;
    this.#model = model;
    this.#title = title;
    this.#kitFiles = loaded.kitFiles;
    this.#isWorkbook = loaded.workbook !== undefined;
    place.innerHTML = String(deskSeats(title));
    this.#table = place.querySelector<HTMLElement>("[data-table]")!;
    this.#grid = new GridView(this.#find("grid"), {
      keep: (row, column, text) => this.#keep(row, column, text),
      write: (row, column, text) => this.#write(row, column, text),
      paste: (row, column, text) => this.#paste(row, column, text),
      turn: () => this.#showSeat(),
    });
    this.#news = new NewsView(this.#find("news"), {
      open: ({ file, line, column }) =>
        void this.#tried(() =>
          desk.server.open({
            file,
            ...(line === undefined ? {} : { line }),
            ...(column === undefined ? {} : { column }),
          }),
        ),
      keep: () => this.#decide("keep"),
      take: () => this.#decide("take"),
      merge: () => this.#decide("merge"),
    });
    this.#difference = new DifferenceView(this.#table, () => void this.#tried(() => this.#writeAll()));
    this.#find("undo").addEventListener("click", () => model.undo());
    this.#find("redo").addEventListener("click", () => model.redo());
    this.#find("write").addEventListener("click", () => this.#look());
    this.#find("add").addEventListener("click", () => this.#add());
    this.#find("all").addEventListener("change", () => this.show());
    this.#find("seat").addEventListener("click", ({ target }) => this.#offer(target));
    document.addEventListener("keydown", (event) => this.#key(event), this.#ends);
    this.#tellAway(loaded);
  }

  begin(): void {
    this.#showSeat();
  }

  show(): void {
    const { drafts, isChanged, canUndo, canRedo } = this.#model;
    if (isChanged) this.#isWritten = false;
    this.#preview = undefined;
    (this.#find("undo") as HTMLButtonElement).disabled = !canUndo;
    (this.#find("redo") as HTMLButtonElement).disabled = !canRedo;
    (this.#find("write") as HTMLButtonElement).disabled = this.#toWrite().length === 0 || this.#isWriting;
    this.#say(this.#ribbonWords(drafts));
    const meeting = drafts.find((draft) => draft.meeting)?.meeting;
    this.#news.show({
      broken: told(this.#model.grid.messages),
      foreign: meeting && { canMerge: meeting.canMerge },
    });
    const units = this.#model.grid.data?.units ?? "mm";
    this.#find("units").textContent = say.deskClassUnits({ units });
    this.#columns = shownColumns(this.#model.grid, (this.#find("all") as HTMLInputElement).checked);
    this.#showSeats();
  }

  async hear(news: DeskNews): Promise<void> {
    if (news.news !== "text" || news.page === this.#desk.server.page) return;
    const draft = this.#model.drafts.find(({ file }) => file === news.file);
    const slug = [...this.#kitFiles].find(([, file]) => file === news.file)?.[0];
    await this.#tried(async () => {
      if (slug !== undefined) await this.#reload(slug, news.file);
      if (!draft) return;
      const found = await this.#desk.server.text(draft.file);
      if (!("text" in found)) this.#desk.tell(found.messages[0]?.sentence ?? "");
      else if (found.mark !== draft.disk.mark) this.#model.meet(draft, found);
    });
  }

  dispose(): void {
    this.#ends.abort();
    clearTimeout(this.#waits);
    this.#judge.end();
  }

  async #reload(slug: string, file: string): Promise<void> {
    const kits = this.#model.grid.kits.filter((kit) => kit.slug !== slug);
    const loaded = await loadKit(slug, file, this.#desk.server);
    this.#judge.forget();
    this.#model.takeKits([...kits, ...loaded]);
  }

  #ribbonWords(drafts: readonly Draft[]): string {
    if (this.#isWriting) return say.deskKitToldWriting();
    const changes = drafts.reduce((sum, draft) => sum + draft.changes, 0);
    if (changes > 0) return say.deskKitToldChanged({ changes });
    return this.#isWritten ? say.deskKitToldWritten() : say.deskKitToldSame();
  }

  /** Rows and what is told of the seat in use; the rows stay as they are while a text is written. */
  #showSeats(): void {
    const { rows } = this.#model.grid;
    const shown = rows.map((row) => {
      const texts = this.#columns.map((column) => row.cells[column] ?? "");
      const wrong = this.#columns.flatMap((column, c) => (row.wrong[column] ? [c] : []));
      return { texts, wrong, mark: markOf(row, this.#verdict(row)) };
    });
    this.#grid.show(this.#title, this.#columns, shown);
    this.#showSeat();
  }

  #showSeat(): void {
    const row = this.#preview ?? this.#model.grid.rows[this.#grid.row];
    const place = this.#find("seat");
    if (!row) {
      place.textContent = say.deskClassNone();
      return;
    }
    const words = seatWords(row, this.#verdict(row));
    const markup = String(seatTold(words));
    if (place.dataset["shown"] === markup) return;
    place.dataset["shown"] = markup;
    place.innerHTML = markup;
    if (this.#preview) this.#grid.mark(this.#grid.row, words.mark);
  }

  #verdict({ seat }: GridRow): Verdict | undefined {
    return seat && this.#judge.verdict(seat.kit, seat.refit);
  }

  #keep(row: number, column: number, text: string): void {
    clearTimeout(this.#waits);
    this.#model.set([{ row, column: this.#columns[column]!, text }]);
  }

  /** A text is being written, or was left. */
  #write(row: number, column: number, text: string | undefined): void {
    clearTimeout(this.#waits);
    if (text === undefined) {
      this.show();
      return;
    }
    this.#waits = setTimeout(() => {
      this.#preview = this.#model.preview({ row, column: this.#columns[column]!, text });
      this.#showSeat();
    }, REST);
  }

  #paste(row: number, column: number, text: string): void {
    const { grid, freeSeat } = this.#model;
    const cells = pastedCells(text, { row, column }, { grid, columns: this.#columns, freeSeat });
    if (cells) this.#model.set(cells);
    this.#desk.tell(cells ? say.deskClassPasted({ cells: cells.length }) : say.deskClassNotPasted());
  }

  #add(): void {
    const { freeSeat } = this.#model;
    this.#model.set([{ row: { newSeat: freeSeat }, column: "seat", text: String(freeSeat) }]);
    this.#grid.go(
      this.#model.grid.rows.findIndex(({ number }) => number === freeSeat),
      1,
    );
  }

  #offer(target: EventTarget | null): void {
    const button = target instanceof Element ? target.closest<HTMLElement>("[data-offer]") : null;
    const at = this.#grid.row;
    const row = this.#model.grid.rows[at];
    if (!button || !row) return;
    const offer = offersOf(this.#verdict(row))[Number(button.dataset["offer"])];
    const { units = "mm" } = this.#model.grid.data ?? {};
    if (offer) this.#model.set(offerCells(at, row, offer.refit, units));
    this.#grid.go(at, 0);
  }

  #decide(what: "keep" | "take" | "merge"): void {
    const draft = this.#model.drafts.find((one) => one.meeting);
    if (draft) this.#model.decide(draft, what);
  }

  #key(event: KeyboardEvent): void {
    const asked = this.#grid.isWriting ? undefined : ribbonKey(event);
    if (!asked) return;
    event.preventDefault();
    if (asked === "look") this.#look();
    else this.#model[asked]();
  }

  #look(): void {
    const changed = this.#toWrite();
    if (changed.length === 0 || changed.some((draft) => draft.meeting)) return;
    const files = listText(changed.map(({ file }) => file));
    this.#difference.open(
      files,
      changed.flatMap((draft) => draft.difference()),
      this.#isBroken(),
    );
  }

  /** Drafts that differ from their files, and can be written. */
  #toWrite(): readonly Draft[] {
    const { drafts, table } = this.#model;
    return drafts.filter((draft) => draft.isChanged && !(this.#isWorkbook && draft === table));
  }

  #isBroken(): boolean {
    const { rows, messages } = this.#model.grid;
    return messages.length > 0 || rows.some(({ wrong }) => Object.keys(wrong).length > 0);
  }

  async #writeAll(): Promise<void> {
    this.#isWriting = true;
    this.show();
    try {
      for (const draft of this.#toWrite()) await this.#writeOne(draft);
    } finally {
      this.#isWriting = false;
      this.show();
    }
  }

  async #writeOne(draft: Draft): Promise<void> {
    const asked = draft.toWrite();
    const answer = await this.#desk.server.write({ ...asked, anyway: this.#isBroken() });
    if (answer.written) {
      this.#isWritten = true;
      this.#model.written(draft, asked.text, answer.mark);
    } else if ("found" in answer) this.#model.meet(draft, answer.found);
    else this.#desk.tell(answer.messages[0]?.sentence ?? "");
  }

  /** What cannot be had: a table that is a workbook, and kits that cannot be worked out. */
  #tellAway({ workbook, away }: LoadedClass): void {
    if (away.length > 0) this.#desk.tell(say.deskClassKitAway({ kit: listText(away) }));
    if (workbook === undefined) return;
    const csv = workbook.replace(/\.\w+$/, ".csv");
    this.#find("news").insertAdjacentHTML("beforebegin", String(workbookNews(workbook, csv)));
    const link = this.#table.querySelector<HTMLAnchorElement>("[data-csv]")!;
    link.addEventListener("click", () => offerFile(link, delimitedText(gridRows(this.#model.grid)), csv));
  }

  #say(words: string): void {
    const place = this.#find("told");
    if (place.textContent !== words) place.textContent = words;
  }

  /** Tells what the server refused; a fault of the program goes on as one. */
  async #tried(work: () => Promise<void>): Promise<void> {
    try {
      await work();
    } catch (error) {
      if (!(error instanceof Error && "status" in error)) throw error;
      this.#desk.tell(error.message);
    }
  }

  #find(name: string): HTMLElement {
    return this.#table.querySelector<HTMLElement>(`[data-${name}]`)!;
  }
}
