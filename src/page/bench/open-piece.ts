import { type Desk, openDesk } from "../../core/bench/desk.ts";
import { fitOf } from "../../core/bench/fit-key.ts";
import type { Failure } from "../../core/findings/failure.ts";
import { isFailure } from "../../core/findings/outcome.ts";
import { choosePiece, type PieceChosen } from "../../core/piece/choose-piece.ts";
import { latestFirst, nextNumber, type Piece } from "../../core/piece/piece.ts";
import { type AddressRead, fromAddress, toAddress } from "../../core/refit/address.ts";
import { type Refit, refitKit } from "../../core/refit/refit.ts";
import { ignoredText } from "../../words/fields.ts";
import * as say from "../../words/messages.ts";
import { progressFailure } from "../../words/progress.ts";
import { PieceStore } from "../pieces/piece-store.ts";
import { takeEarlier } from "../pieces/take-earlier.ts";
import type { KitData } from "../shared/kit-data.ts";
import { BenchPiece } from "./bench-piece.ts";
import { keptUnits } from "./bench-store.ts";
import { needWay } from "./need-corners.ts";
import { type NewerKit, patternFor } from "./newer-kit.ts";

/** What the bench opens with. */
export interface OpenedPiece {
  readonly desk: Desk;
  readonly piece: BenchPiece;
  readonly chosen: PieceChosen;
  /** The book that the address states, as an address has it. */
  readonly asked: string;
  /** Other pieces of this kit, the last one first. */
  readonly others: readonly Piece[];
  /** What stands above the leaves. */
  readonly told: readonly string[];
  /** The kit was changed since the piece was begun. */
  readonly newer: NewerKit | undefined;
}

/** Opens the piece that an address means, on its own book and with the pattern that it was begun with; or says why the kit does not fit. */
export async function openPiece(data: KitData, address: URLSearchParams): Promise<OpenedPiece | AsMisfit> {
  const { slug, title } = data.kit;
  const left = await takeEarlier("../../../", { [slug]: title });
  const store = await PieceStore.open();
  const { pieces, broken } = await store.all();
  const asked = fromAddress(address, data.kit);
  const id = address.get("piece") ?? undefined;
  const chosen = choosePiece(pieces, { id, kit: slug, fit: askedFit(asked.refit) });
  const piece = "piece" in chosen ? chosen.piece : undefined;
  const read = piece ? fromAddress(new URLSearchParams(piece.address), data.kit) : asked;
  const refit = withUnits(read.refit, asked.refit);
  const unreadable = [...left, ...broken].filter(({ kit }) => kit === slug);
  const told = [
    ...unreadable.map(({ failure }) => say.benchKeptBroken({ why: progressFailure(failure) })),
    ...read.ignored.map((one) => ignoredText(one, data.kit)),
  ];
  const open = async (kit: KitData["kit"]) => {
    const way = await needWay(refitKit(kit, refit));
    return openDesk(kit, refit, { units: refit.units ?? keptUnits() ?? kit.units, way }, piece?.progress);
  };
  const pattern = await patternFor({ store, data, piece, open });
  if (isFailure(pattern.desk)) return { failure: pattern.desk.failure, told };
  const keeping = { store, data: pattern.data, number: nextNumber(pieces, slug) };
  return {
    desk: pattern.desk.value,
    piece: new BenchPiece(piece, { ...keeping, asNew: chosen.kind === "new" && id !== undefined }),
    chosen,
    asked: toAddress(asked.refit),
    others: latestFirst(pieces.filter((one) => one.kit === slug && one !== piece)),
    told,
    newer: pattern.newer,
  };
}

/** Why there is no desk, and what of the address is left out. */
export interface AsMisfit {
  readonly failure: Failure;
  readonly told: readonly string[];
}

/** Undefined where an address states no figure of a book or a fit. */
function askedFit({ units, ...refit }: Refit): string | undefined {
  return Object.keys(refit).length === 0 ? undefined : fitOf(refit);
}

/** A piece's book in the units that the address asks for. */
function withUnits(refit: AddressRead["refit"], { units }: Refit): Refit {
  return units === undefined ? refit : { ...refit, units };
}
