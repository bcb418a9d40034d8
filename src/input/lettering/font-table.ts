import { MB } from "../files/site-file.ts";

/** A table of a font: four letters, and its bytes. */
export interface FontTable {
  readonly tag: string;
  readonly bytes: Uint8Array;
}

/** All tables of a font together, unpacked. */
export const MOST_BYTES = 64 * MB;

/** More tables than any font has. */
export const MOST_TABLES = 200;

/** A font that cannot be read. */
export class FontFault extends Error {}
