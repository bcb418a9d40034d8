import { type Desk, deskAddress } from "../../core/bench/desk.ts";
import type { Progress } from "../../core/bench/progress.ts";
import { editionOf } from "../../core/piece/edition.ts";
import { beginPiece, type Hand, noteOn, type Piece, workOn } from "../../core/piece/piece.ts";
import { summaryOf } from "../../core/piece/summary.ts";
import { standingOf } from "../../core/piece/versions.ts";
import { deviceName, freshId } from "../pieces/device.ts";
import { keepEdition } from "../pieces/editions.ts";
import type { PieceStore } from "../pieces/piece-store.ts";
import type { KitData } from "../shared/kit-data.ts";
import type { OtherMarks } from "./newer-kit.ts";

/** What the bench needs of a device to keep a piece on it. */
interface Keeping {
  readonly store: PieceStore;
  /** The kit that the piece's pattern is made from. */
  readonly data: KitData;
  /** The number that a new piece gets. */
  readonly number: number;
  /** Whether the address asks for a new piece, so that a reload begins it again. */
  readonly asNew: boolean;
}

/** The piece on the bench. A new one is kept once something is done on it. */
export class BenchPiece {
  #piece: Piece | undefined;
  readonly #keeping: Keeping;
  readonly #edition: string;

  constructor(piece: Piece | undefined, keeping: Keeping) {
    this.#piece = piece;
    this.#keeping = keeping;
    this.#edition = editionOf(keeping.data.kit);
  }

  /** Keeps what lies on the desk; says whether it could. It is on its way before this gives back: the page may be left then. */
  keep(desk: Desk): Promise<boolean> {
    if (!this.#piece && !isBegun(desk.progress)) return Promise.resolve(true);
    const { store, data } = this.#keeping;
    const before = this.#piece;
    this.#piece = before ? workOn(before, this.#done(desk), hand()) : this.#begun(desk);
    const kept = store.keep(this.#piece);
    if (!before) void navigator.storage?.persist?.().catch(() => false);
    if (before?.edition !== this.#edition) void keepEdition(store, data);
    return kept;
  }

  /** Keeps what its maker writes about it; one that was not kept yet is begun by it. Says whether it could. */
  write(desk: Desk, change: Partial<Pick<Piece, "name" | "notes">>): Promise<boolean> {
    const { store, data } = this.#keeping;
    if (!this.#piece) void keepEdition(store, data);
    this.#piece = noteOn(this.#piece ?? this.#begun(desk), change, hand());
    return store.keep(this.#piece);
  }

  /** The piece for a file of it. */
  now(desk: Desk): Piece {
    return this.#piece ?? this.#begun(desk);
  }

  /** Goes on with the pattern that the piece has, and asks no more about this state of the kit. */
  async decline(edition: string): Promise<void> {
    await this.#keepChanged({ declined: edition });
  }

  /** Takes the kit's newer pattern in place of the one that the piece was begun with. */
  async changeOver({ edition, after }: Pick<OtherMarks, "edition" | "after">): Promise<void> {
    await this.#keepChanged({ edition, progress: after });
  }

  /** The address parameters of the page: the piece, and the figures that bring its book back. */
  search(desk: Desk): string {
    const name = this.#piece ? this.#piece.id : this.#keeping.asNew ? "new" : undefined;
    const figures = deskAddress(desk);
    const parts = [...(name === undefined ? [] : [`piece=${name}`]), ...(figures === "" ? [] : [figures])];
    return parts.length === 0 ? "" : `?${parts.join("&")}`;
  }

  /** Another page goes on with this piece: tells its progress. */
  follow(changed: (progress: Progress) => void): void {
    const { store } = this.#keeping;
    const look = async (id: string | undefined): Promise<void> => {
      const there = id !== undefined && id === this.#piece?.id ? await store.find(id) : undefined;
      if (!there || !this.#piece || standingOf(there.versions, this.#piece.versions) !== "ahead") return;
      this.#piece = there;
      changed(there.progress);
    };
    store.follow(look);
    // A page that rested hears nothing meanwhile.
    document.addEventListener("visibilitychange", () => look(this.#piece?.id));
  }

  async #keepChanged(change: Partial<Piece>): Promise<void> {
    if (!this.#piece) return;
    this.#piece = { ...noteOn(this.#piece, {}, hand()), ...change };
    await this.#keeping.store.keep(this.#piece);
  }

  #begun(desk: Desk): Piece {
    const { number } = this.#keeping;
    return beginPiece({ id: freshId(), kit: desk.kit.slug, number, ...this.#done(desk) }, hand());
  }

  #done(desk: Desk): Pick<Piece, "title" | "address" | "progress" | "edition" | "summary"> {
    const { progress } = desk;
    const { title } = desk.kit;
    return { title, address: deskAddress(desk), progress, edition: this.#edition, summary: summaryOf(desk) };
  }
}

function hand(): Hand {
  return { device: deviceName(), now: new Date().toISOString() };
}

/** Whether there is anything to keep: a look at the leaves alone is no work. */
function isBegun({ ticks, passed, measured, lost, clock }: Progress): boolean {
  return ticks.length + passed.length > 0 || measured !== undefined || (lost.length > 0 && clock.worked > 0);
}
