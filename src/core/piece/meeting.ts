import { type Hand, nextNumber, type Piece } from "./piece.ts";
import { countChange, mergedVersions, standingOf } from "./versions.ts";

/** What a piece from a file is to those of a device. `here` is the same piece as the device has it. */
export type Meeting =
  | { readonly kind: "unknown"; readonly file: Piece }
  | { readonly kind: "same" | "newer" | "older" | "apart"; readonly file: Piece; readonly here: Piece };

/** Whether a file's piece can be taken without losing anything: `older` and `apart` would undo what was done here since. */
export function meet(pieces: readonly Piece[], file: Piece): Meeting {
  const here = pieces.find((piece) => piece.id === file.id);
  if (!here) return { kind: "unknown", file };
  const kinds = { same: "same", ahead: "newer", behind: "older", apart: "apart" } as const;
  return { kind: kinds[standingOf(file.versions, here.versions)], file, here };
}

/** The file's piece as one that the device does not have yet; its number is the file's where that is free. */
export function takeUnknown(pieces: readonly Piece[], file: Piece): Piece {
  const taken = pieces.some((piece) => piece.kit === file.kit && piece.number === file.number);
  return taken ? { ...file, number: nextNumber(pieces, file.kit) } : file;
}

/** The file's piece in place of the one here; the next file of either device knows both. */
export function takeFile({ file, here }: Both, { device }: Pick<Hand, "device">): Piece {
  return { ...file, number: here.number, versions: countChange(mergedVersions(here.versions, file.versions), device) };
}

/** The piece as it is here, so that the next file of it is newer than the one that was left. */
export function keepHere({ file, here }: Both, { device }: Pick<Hand, "device">): Piece {
  return { ...here, versions: countChange(mergedVersions(here.versions, file.versions), device) };
}

/** The file's piece as another one beside that here. */
export function takeBeside(
  pieces: readonly Piece[],
  file: Piece,
  { id, device }: Pick<Hand, "device"> & { readonly id: string },
): Piece {
  return { ...file, id, number: nextNumber(pieces, file.kit), versions: countChange({}, device) };
}

type Both = Pick<Extract<Meeting, { here: Piece }>, "file" | "here">;
