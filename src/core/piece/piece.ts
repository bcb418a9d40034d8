import type { Progress } from "../bench/progress.ts";
import type { LeafNumber } from "../book/leaf-number.ts";
import { countChange, type Versions } from "./versions.ts";

/** What may be written of a piece, in letters. */
export const PIECE_LENGTHS = { name: 60, notes: 2000, title: 300, address: 2000 } as const;

/** Pieces that one file may hold. */
export const MOST_PIECES = 500;

/** Where the work on a piece is, for lists that do not compute its pattern. */
export interface PieceSummary {
  /** Folded leaves that are ticked, of all. `of` is undefined until the bench has laid the piece out. */
  readonly done: number;
  readonly of?: number | undefined;
  /** Share of the estimated work that is done, a whole number; 100 only where all is. */
  readonly percent?: number | undefined;
  /** The leaf on the bench; undefined where other work lies there. */
  readonly leaf?: LeafNumber | undefined;
  /** Its printed page; undefined where it has none. */
  readonly page?: number | undefined;
}

/** One book that is being made from one kit, as a device keeps it. */
export interface Piece {
  readonly id: string;
  /** The kit's slug, and its title when the piece was worked on last. */
  readonly kit: string;
  readonly title: string;
  /** 1, 2 … for this kit on this device. */
  readonly number: number;
  /** The maker's own word; empty where she gave none. */
  readonly name: string;
  /** Address parameters that bring the piece's book and fit back; empty for the kit's own book. */
  readonly address: string;
  readonly progress: Progress;
  readonly notes: string;
  /** When it was begun and last worked on, ISO instants. */
  readonly begun: string;
  readonly last: string;
  /** Which state of the kit its pattern is made from (`editionOf`); empty where that is not known. */
  readonly edition: string;
  /** A later state of the kit that its maker decided not to change over to. */
  readonly declined?: string | undefined;
  readonly versions: Versions;
  readonly summary: PieceSummary;
}

/** What a change of a piece was done with: by which device, and when (an ISO instant). */
export interface Hand {
  readonly device: string;
  readonly now: string;
}

/** A piece before anything is done on it. */
export function beginPiece(
  start: Pick<Piece, "id" | "kit" | "title" | "number" | "address" | "progress" | "edition" | "summary">,
  { device, now }: Hand,
): Piece {
  return { ...start, name: "", notes: "", begun: now, last: now, versions: countChange({}, device) };
}

/** The piece after work on it. */
export function workOn(
  piece: Piece,
  done: Pick<Piece, "address" | "progress" | "summary"> & Partial<Pick<Piece, "title" | "edition">>,
  { device, now }: Hand,
): Piece {
  return { ...piece, ...done, last: now, versions: countChange(piece.versions, device) };
}

/** The piece with its maker's word for it, notes, or her decision on a later state of the kit. */
export function noteOn(
  piece: Piece,
  change: Partial<Pick<Piece, "name" | "notes" | "declined">>,
  { device }: Pick<Hand, "device">,
): Piece {
  const name = (change.name ?? piece.name).trim().slice(0, PIECE_LENGTHS.name);
  const notes = (change.notes ?? piece.notes).slice(0, PIECE_LENGTHS.notes);
  return { ...piece, ...change, name, notes, versions: countChange(piece.versions, device) };
}

/** The number of the next piece of a kit. */
export function nextNumber(pieces: readonly Pick<Piece, "kit" | "number">[], kit: string): number {
  return 1 + Math.max(0, ...pieces.filter((piece) => piece.kit === kit).map(({ number }) => number));
}

/** Pieces with the one that was worked on last first. */
export function latestFirst<T extends Pick<Piece, "last" | "id">>(pieces: readonly T[]): T[] {
  return pieces.toSorted((a, b) => (a.last < b.last ? 1 : a.last > b.last ? -1 : a.id < b.id ? -1 : 1));
}
