import type { Desk } from "../../core/bench/desk.ts";
import type { Progress } from "../../core/bench/progress.ts";
import { isFailure, type Outcome } from "../../core/findings/outcome.ts";
import type { Kit } from "../../core/kit/kit.ts";
import { changeOver, type PatternChange, patternChange } from "../../core/piece/change-over.ts";
import { editionOf } from "../../core/piece/edition.ts";
import type { Piece } from "../../core/piece/piece.ts";
import { refitKit } from "../../core/refit/refit.ts";
import { keepEdition, keptEdition } from "../pieces/editions.ts";
import type { PieceStore } from "../pieces/piece-store.ts";
import type { KitData } from "../shared/kit-data.ts";

/** What a kit's later state would mean for a piece that was begun before it. */
export type NewerKit =
  /** The same marks: the piece goes on with the later state. */
  { readonly kind: "same" } | { readonly kind: "misfit" | "declined" } | OtherMarks;

/** Its marks are others: the maker chooses. */
export interface OtherMarks {
  readonly kind: "other-marks";
  readonly edition: string;
  readonly change: PatternChange;
  /** The piece's progress on the later pattern. */
  readonly after: Progress;
}

/** Which state of the kit a piece is opened with. */
interface Pattern {
  readonly data: KitData;
  readonly desk: Outcome<Desk>;
  readonly newer: NewerKit | undefined;
}

interface Opening {
  readonly store: PieceStore;
  readonly data: KitData;
  readonly piece: Piece | undefined;
  readonly open: (kit: Kit) => Promise<Outcome<Desk>>;
}

/** The pattern that a piece was begun with, as far as this device keeps it; else the kit's own now. */
export async function patternFor({ store, data, piece, open }: Opening): Promise<Pattern> {
  const now = { data, desk: await open(data.kit), newer: undefined };
  const edition = editionOf(data.kit);
  if (!piece || piece.edition === "" || piece.edition === edition) return now;
  const kept = await keptEdition(store, piece.edition);
  if (!kept) return now;
  const desk = await open(kept.kit);
  if (isFailure(desk)) return now;
  const before = { data: kept, desk };
  if (isFailure(now.desk)) return { ...before, newer: { kind: "misfit" } };
  const change = patternChange(desk.value.plan.pattern, now.desk.value.plan.pattern, piece.progress);
  const revision = now.desk.value.plan.way.revision(refitKit(data.kit, now.desk.value.refit));
  if (isFailure(revision)) return { ...before, newer: { kind: "misfit" } };
  const after = changeOver(piece.progress, change, revision.value);
  if (change.leaves.length > 0 || change.depths) {
    if (piece.declined === edition) return { ...before, newer: { kind: "declined" } };
    return { ...before, newer: { kind: "other-marks", edition, change, after } };
  }
  await keepEdition(store, data);
  return { ...now, newer: { kind: "same" } };
}
