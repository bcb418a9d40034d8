import { inflateSync } from "node:zlib";
import { FontFault, type FontTable, MOST_BYTES, MOST_TABLES } from "./font-table.ts";
import { woff2Tables } from "./woff2.ts";

/**
 * A font as OpenType lays it out, from a file of that kind, a WOFF or a WOFF2 file; of WOFF2 without outlines, which it stores
 * in a form of its own. Sources: OpenType 1.9, "Organization of an OpenType Font"; WOFF 1.0; WOFF 2.0.
 * @throws FontFault, or an error of the unpacking
 */
export function sfntOf(file: Buffer): Uint8Array {
  const kind = file.toString("latin1", 0, 4);
  if (kind === "wOFF") return sfntFrom(file.readUInt32BE(4), woffTables(file));
  return kind === "wOF2" ? sfntFrom(file.readUInt32BE(4), woff2Tables(file)) : file;
}

/** The tables of a WOFF file: each packed by itself where that made it smaller. */
function woffTables(file: Buffer): FontTable[] {
  const count = file.readUInt16BE(12);
  if (count > MOST_TABLES) throw new FontFault("too many tables");
  let room = MOST_BYTES;
  return Array.from({ length: count }, (_, i): FontTable => {
    const entry = 44 + 20 * i;
    const [from, packed, length] = [4, 8, 12].map((place) => file.readUInt32BE(entry + place)) as [
      number,
      number,
      number,
    ];
    const bytes = file.subarray(from, from + packed);
    room -= length;
    if (bytes.length < packed || room < 0) throw new FontFault("a table is cut short or too large");
    const unpacked = packed < length ? inflateSync(bytes, { maxOutputLength: Math.max(1, length) }) : bytes;
    return { tag: file.toString("latin1", entry, entry + 4), bytes: unpacked };
  });
}

/** Tables in one file; each begins at a multiple of four. Checksums are left out, as nobody reads them. */
export function sfntFrom(flavour: number, tables: readonly FontTable[]): Uint8Array {
  const sorted = tables.toSorted((a, b) => (a.tag < b.tag ? -1 : 1));
  const directory = 12 + 16 * sorted.length;
  const size = sorted.reduce((sum, { bytes }) => sum + padded(bytes.length), directory);
  const file = Buffer.alloc(size);
  file.writeUInt32BE(flavour, 0);
  file.writeUInt16BE(sorted.length, 4);
  let at = directory;
  for (const [i, { tag, bytes }] of sorted.entries()) {
    const entry = 12 + 16 * i;
    file.write(tag, entry, "latin1");
    file.writeUInt32BE(at, entry + 8);
    file.writeUInt32BE(bytes.length, entry + 12);
    file.set(bytes, at);
    at += padded(bytes.length);
  }
  return file;
}

function padded(length: number): number {
  return Math.ceil(length / 4) * 4;
}
