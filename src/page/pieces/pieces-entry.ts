import { latestFirst, noteOn, type Piece } from "../../core/piece/piece.ts";
import { serialisePieces } from "../../input/piece/piece-file.ts";
import * as say from "../../words/messages.ts";
import { progressFailure } from "../../words/progress.ts";
import { offerFile } from "../shared/offer-file.ts";
import { deviceName } from "./device.ts";
import { dropEditions } from "./editions.ts";
import { importPieces } from "./import-pieces.ts";
import { type PieceHost, pieceItem } from "./piece-item.ts";
import { PieceStore } from "./piece-store.ts";
import { takeOver } from "./take-over.ts";

/** Script of the page of all pieces. */
const main = document.querySelector<HTMLElement>("[data-pieces]");
if (main) open(main);

async function open(root: HTMLElement): Promise<void> {
  const store = await PieceStore.open();
  await takeOver(store, JSON.parse(root.dataset["kits"]!));
  const page = new PiecesPage(root, store);
  await page.show();
  store.follow(() => page.show());
  addEventListener("pageshow", ({ persisted }) => persisted && page.show());
}

class PiecesPage implements PieceHost {
  readonly site: string;
  readonly titles: Readonly<Record<string, string>>;
  readonly #root: HTMLElement;
  readonly #store: PieceStore;
  #pieces: readonly Piece[] = [];
  /** Ends when all that was noted is kept. */
  #noting: Promise<unknown> = Promise.resolve();

  constructor(root: HTMLElement, store: PieceStore) {
    this.#root = root;
    this.#store = store;
    this.site = root.dataset["pieces"]!;
    this.titles = JSON.parse(root.dataset["kits"]!) as Record<string, string>;
    const all = this.#part<HTMLAnchorElement>("all");
    all.addEventListener("click", () => offerFile(all, serialisePieces(this.#pieces), "pieces.json"));
    const field = this.#part<HTMLInputElement>("import");
    field.addEventListener("change", async () => {
      const file = field.files?.[0];
      if (!file) return;
      const told = await importPieces(store, file, this.titles);
      field.value = "";
      await this.show();
      this.#part("answer").textContent = told;
    });
  }

  /** Shows what the device keeps, but not over what is being written. */
  async show(): Promise<void> {
    const { pieces, broken } = await this.#store.all();
    this.#pieces = latestFirst(pieces);
    const list = this.#part("list");
    if (list.querySelector("input:focus, textarea:focus")) return;
    const open = new Set([...list.querySelectorAll("li:has(details[open])")].map((one) => idOf(one)));
    list.replaceChildren(...this.#pieces.map((piece) => pieceItem(piece, this)));
    for (const item of list.children) if (open.has(idOf(item))) item.querySelector("details")!.open = true;
    const note = this.#part("note");
    const why = broken[0] && progressFailure(broken[0].failure);
    note.textContent = [
      ...(this.#store.base ? [] : [say.piecesNotKept()]),
      ...(why === undefined ? [] : [say.piecesBroken({ count: broken.length, why })]),
    ].join(" ");
    note.hidden = note.textContent === "";
    this.#part("empty").hidden = pieces.length > 0;
    this.#part("all").hidden = pieces.length === 0;
    this.#part("files").hidden = false;
  }

  /** One after the other, so that none is written over by one that began before it was kept. */
  note(id: string, change: Partial<Pick<Piece, "name" | "notes">>): Promise<Piece | undefined> {
    const noted = this.#noting.then(() => this.#note(id, change));
    this.#noting = noted.catch(() => undefined);
    return noted;
  }

  /** On the piece as it is kept by now: another page may have gone on with it. */
  async #note(id: string, change: Partial<Pick<Piece, "name" | "notes">>): Promise<Piece | undefined> {
    const before = await this.#store.find(id);
    if (!before) return undefined;
    const piece = noteOn(before, change, { device: deviceName() });
    const kept = await this.#store.keep(piece);
    this.#pieces = this.#pieces.map((one) => (one.id === id ? piece : one));
    this.#part("answer").textContent = kept ? "" : say.piecesNotSaved();
    return piece;
  }

  now(piece: Piece): Piece {
    return this.#pieces.find(({ id }) => id === piece.id) ?? piece;
  }

  async remove({ id }: Piece): Promise<void> {
    await this.#store.remove(id);
    await dropEditions(this.#store, (await this.#store.all()).pieces);
    await this.show();
  }

  #part<T extends HTMLElement>(name: string): T {
    return this.#root.querySelector<T>(`[data-pieces-${name}]`)!;
  }
}

function idOf(item: Element): string {
  return (item as HTMLElement).dataset["id"] ?? "";
}
