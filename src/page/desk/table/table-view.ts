import { isCutKit } from "../../../core/kit/cut-kit.ts";
import {
  DESK_ROUTES,
  type DeskMessage,
  type DeskNews,
  type DeskState,
  type PictureAnswer,
  type TextAnswer,
  type WriteAnswer,
} from "../../../input/desk/protocol.ts";
import { deskTable } from "../../../output/parts/desk/table.ts";
import * as say from "../../../words/messages.ts";
import { DeskKit } from "../draft/desk-kit.ts";
import { DifferenceView } from "./difference-view.ts";
import { NewsView } from "./news-view.ts";
import { RibbonView, ribbonKey, type Writing } from "./ribbon-view.ts";
import { TableWork } from "./table-work.ts";
import { Things } from "./things.ts";

/** What the table needs of the desk that it stands on. */
export interface TableDesk {
  readonly server: {
    readonly page: string;
    text(file: string): Promise<TextAnswer>;
    write(asked: { file: string; text: string; mark: string; anyway?: boolean }): Promise<WriteAnswer>;
    open(asked: { file: string; line?: number; column?: number }): Promise<void>;
    post<T>(route: string, body: object): Promise<T>;
  };
  readonly state: () => DeskState;
  readonly listen: (heard: (news: DeskNews) => void) => void;
  readonly tell: (sentence: string) => void;
}

/** Kits that were laid out on this page: what is not written yet is not lost when another view is looked at. */
const laid = new Map<string, { readonly kit: DeskKit; hear: () => void }>();

/** One kit on the desk. While the server still reads the site, it is laid out as soon as it is known. @throws what the server refuses */
export async function tableView(place: HTMLElement, desk: TableDesk, slug: string): Promise<() => boolean> {
  let leave = (): void => {};
  let isOver = false;
  let isOpening = false;
  const open = async (): Promise<void> => {
    const entry = desk.state().kits.find((one) => one.slug === slug);
    if (!entry || isOpening || isOver) return;
    isOpening = true;
    const left = await layOut(place, desk, entry);
    if (isOver) left();
    else leave = left;
  };
  place.replaceChildren(paragraph(desk.state().isBusy ? say.deskKitLoading() : say.deskKitNoKit()));
  desk.listen(({ news }) => {
    if (news === "state") void open();
  });
  await open();
  return () => {
    isOver = true;
    leave();
    return true;
  };
}

/** Lays a kit out; gives back what lets go of the table. @throws what the server refuses */
async function layOut(
  place: HTMLElement,
  desk: TableDesk,
  { slug, file, title }: DeskState["kits"][number],
): Promise<() => void> {
  const found = await desk.server.text(file);
  if ("messages" in found) {
    place.replaceChildren(...found.messages.map(({ sentence }) => paragraph(sentence)));
    return () => {};
  }
  const known = laid.get(slug);
  const held = known ?? {
    kit: new DeskKit(
      slug,
      found,
      (text) => desk.server.post<PictureAnswer>(DESK_ROUTES.picture, { slug, text }),
      () => laid.get(slug)?.hear(),
    ),
    hear: () => {},
  };
  laid.set(slug, held);
  if (known && found.mark !== held.kit.draft.disk.mark) held.kit.meet(found);
  const table = new TableView(place, desk, held.kit, title);
  held.hear = () => table.show();
  desk.listen((news) => void table.hear(news));
  table.show();
  return () => {
    held.hear = () => {};
    table.dispose();
  };
}

addEventListener("beforeunload", (event) => {
  if ([...laid.values()].some(({ kit }) => kit.draft.isChanged)) event.preventDefault();
});

function paragraph(text: string): HTMLElement {
  const made = document.createElement("p");
  made.className = "wrap";
  made.textContent = text;
  return made;
}

class TableView {
  readonly #desk: TableDesk;
  readonly #kit: DeskKit;
  readonly #table: HTMLElement;
  readonly #title: string;
  readonly #ribbon: RibbonView;
  readonly #news: NewsView;
  readonly #difference: DifferenceView;
  readonly #things: Things;
  readonly #work: TableWork;
  readonly #ends = new AbortController();
  #isBusy = true;
  #isWriting = false;
  #isWritten = false;
  /** What the server found wrong with a text that was to be written. */
  #refused: readonly DeskMessage[] = [];

  constructor(place: HTMLElement, desk: TableDesk, kit: DeskKit, title: string) {
    this.#desk = desk;
    this.#kit = kit;
    this.#title = title;
    place.innerHTML = String(deskTable(title));
    const table = place.querySelector<HTMLElement>("[data-table]")!;
    this.#table = table;
    this.#things = new Things(table, {
      change: (edits, name) => kit.change(edits, name),
      rest: () => kit.rest(),
    });
    this.#ribbon = new RibbonView(table, {
      undo: () => kit.undo(),
      redo: () => kit.redo(),
      look: () => this.#look(),
      draft: (isDraft) => kit.change([{ at: ["draft"], value: isDraft ? true : undefined }]),
    });
    this.#news = new NewsView(table.querySelector<HTMLElement>("[data-news]")!, {
      open: ({ file, line, column }) => void this.#tried(() => this.#open(file, line, column)),
      keep: () => kit.decide("keep"),
      take: () => kit.decide("take"),
      merge: () => kit.decide("merge"),
    });
    this.#difference = new DifferenceView(table, () => void this.#tried(() => this.#write()));
    this.#work = new TableWork(
      this.#things,
      (isStale) => table.classList.toggle("stale", isStale),
      (isBusy) => {
        this.#isBusy = isBusy;
        this.#tellBusy();
      },
    );
    document.addEventListener("keydown", (event) => this.#key(event), this.#ends);
  }

  /** Shows what the kit is now. */
  show(): void {
    const { draft, stated, messages } = this.#kit;
    if (draft.isChanged) this.#isWritten = false;
    const data = stated?.text.data;
    this.#ribbon.show({
      title: data?.title ?? this.#title,
      isDraft: data?.draft ?? false,
      changes: draft.changes,
      writing: this.#writing(),
      canUndo: draft.canUndo,
      canRedo: draft.canRedo,
    });
    const meeting = draft.meeting;
    const isCorner = stated !== undefined && !isCutKit(stated.kit);
    this.#news.show({
      broken: messages.length > 0 ? messages : this.#refused,
      foreign: meeting && { canMerge: meeting.canMerge },
      corner: isCorner ? draft.file : undefined,
    });
    this.#table.classList.toggle("folded-only", isCorner);
    if (!stated && messages.length > 0) this.#isBusy = false;
    else if (stated) {
      this.#work.lay(stated, this.#kit.shapes, this.#desk.state().shelf);
      this.#table.classList.add("laid");
    }
    this.#tellBusy();
  }

  /** Says whether more is to come: drawings from the server, or what workers find. */
  #tellBusy(): void {
    this.#table.ariaBusy = String(this.#isBusy || this.#kit.isDrawing);
  }

  async hear(news: DeskNews): Promise<void> {
    const { file, disk } = this.#kit.draft;
    if (news.news === "printing" || news.news === "failure") return;
    if (news.news === "text" && (news.file !== file || news.page === this.#desk.server.page)) return;
    await this.#tried(async () => {
      if (news.news === "state") this.#kit.filesChanged();
      const found = await this.#desk.server.text(file);
      if ("messages" in found) this.#desk.tell(found.messages[0]?.sentence ?? "");
      else if (found.mark !== disk.mark) this.#kit.meet(found);
    });
  }

  dispose(): void {
    this.#ends.abort();
    this.#work.dispose();
    this.#things.dispose();
  }

  #writing(): Writing {
    if (this.#isWriting) return "writing";
    if (this.#kit.draft.isChanged) return "changed";
    return this.#isWritten ? "written" : "same";
  }

  #key(event: KeyboardEvent): void {
    const asked = ribbonKey(event);
    if (!asked) return;
    event.preventDefault();
    if (asked === "look") this.#look();
    else this.#kit[asked]();
  }

  #look(): void {
    const { draft, messages } = this.#kit;
    if (draft.isChanged && !draft.meeting) this.#difference.open(draft.file, draft.difference(), messages.length > 0);
  }

  async #write(): Promise<void> {
    const asked = this.#kit.draft.toWrite();
    this.#isWriting = true;
    this.show();
    try {
      const answer = await this.#desk.server.write({ ...asked, anyway: this.#kit.messages.length > 0 });
      this.#isWriting = false;
      this.#refused = answer.written || !("messages" in answer) ? [] : answer.messages;
      if (answer.written) {
        this.#isWritten = true;
        this.#kit.written(asked.text, answer.mark);
      } else if ("found" in answer) this.#kit.meet(answer.found);
    } finally {
      this.#isWriting = false;
      this.show();
    }
  }

  async #open(file: string, line: number | undefined, column: number | undefined): Promise<void> {
    await this.#desk.server.open({
      file,
      ...(line === undefined ? {} : { line }),
      ...(column === undefined ? {} : { column }),
    });
    this.#desk.tell(say.deskKitOpened());
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
}
