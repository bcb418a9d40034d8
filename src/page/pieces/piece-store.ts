import type { ProgressFailure } from "../../core/bench/progress-failure.ts";
import type { Piece } from "../../core/piece/piece.ts";
import { readPiece, writePiece } from "../../input/piece/piece-file.ts";
import { openBase, type PieceBase } from "./piece-base.ts";
import { PieceNews } from "./piece-news.ts";

/** A piece that is kept here and cannot be read. */
export interface BrokenPiece {
  readonly id: string;
  /** Undefined where not even that can be read. */
  readonly kit: string | undefined;
  readonly failure: ProgressFailure;
}

/** All pieces of this device. Without storage they are there as long as the page. */
export class PieceStore {
  readonly #base: PieceBase | undefined;
  readonly #memory = new Map<string, Piece>();
  readonly #news = new PieceNews();

  private constructor(base: PieceBase | undefined) {
    this.#base = base;
  }

  static async open(): Promise<PieceStore> {
    return new PieceStore(await openBase());
  }

  get base(): PieceBase | undefined {
    return this.#base;
  }

  async all(): Promise<{ readonly pieces: readonly Piece[]; readonly broken: readonly BrokenPiece[] }> {
    const records = (await this.#base?.getAll("pieces").catch(() => [])) ?? [];
    const read = records.map((record) => ({ record: record as { id: string; kit?: unknown }, ...readPiece(record) }));
    const kept = read.flatMap((one) => ("piece" in one ? one.piece : []));
    return {
      pieces: [...kept.filter(({ id }) => !this.#memory.has(id)), ...this.#memory.values()],
      broken: read.flatMap((one) =>
        "failure" in one
          ? {
              id: one.record.id,
              kit: typeof one.record.kit === "string" ? one.record.kit : undefined,
              failure: one.failure,
            }
          : [],
      ),
    };
  }

  async find(id: string): Promise<Piece | undefined> {
    return (await this.all()).pieces.find((piece) => piece.id === id);
  }

  /** Keeps a piece; says whether it could. It is on its way before this gives back, so that a page may close after it. */
  async keep(piece: Piece): Promise<boolean> {
    if (!this.#base) {
      this.#memory.set(piece.id, piece);
      return false;
    }
    try {
      const work = this.#base.transaction("pieces", "readwrite");
      void work.store.put(writePiece(piece)).catch(() => undefined);
      work.commit();
      await work.done;
      this.#memory.delete(piece.id);
      this.#news.tell(piece.id);
      return true;
    } catch {
      this.#memory.set(piece.id, piece);
      return false;
    }
  }

  async remove(id: string): Promise<void> {
    this.#memory.delete(id);
    await this.#base?.delete("pieces", id);
    this.#news.tell(id);
  }

  /** Another page kept or removed a piece. */
  follow(changed: (id: string) => void): void {
    this.#news.follow(changed);
  }
}
