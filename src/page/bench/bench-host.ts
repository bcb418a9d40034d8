import type { Desk } from "../../core/bench/desk.ts";
import type { Progress } from "../../core/bench/progress.ts";
import type { LeafNumber } from "../../core/book/leaf-number.ts";
import type { Failure } from "../../core/findings/failure.ts";
import type { BenchPiece } from "./bench-piece.ts";

/** What the parts of the bench page see of it. */
export interface BenchHost {
  readonly desk: Desk;
  readonly piece: BenchPiece;
  /** Changes progress, keeps it and shows it. `spoken` is said before the leaf. */
  move(change: (progress: Progress) => Progress, spoken?: string): void;
  /** Shows and speaks an answer to what the maker just did, until she goes on. */
  tell(words: string): void;
  /** Opens the desk anew: other units, or other progress; why not, where the kit does not fit with it. */
  reopen(change: { readonly units?: Desk["units"]; readonly progress?: Progress | undefined }): Failure | undefined;
  openMeasure(): void;
  /** Asks for a page or leaf; `reason` stands above the question. */
  openJump(reason?: string): void;
  /** Asks before a leaf is left out, or taken back in. */
  openRecovery(leaf: LeafNumber): void;
}
