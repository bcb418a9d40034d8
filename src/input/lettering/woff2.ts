import { brotliDecompressSync } from "node:zlib";
import { FontFault, type FontTable, MOST_BYTES, MOST_TABLES } from "./font-table.ts";

/** Names of tables by their numbers in the directory. Source: WOFF 2.0, "Known Table Tags". */
const TAGS =
  "cmap head hhea hmtx maxp name OS/2 post cvt  fpgm glyf loca prep CFF  VORG EBDT EBLC gasp hdmx kern LTSH PCLT VDMX vhea " +
  "vmtx BASE GDEF GPOS GSUB EBSC JSTF MATH CBDT CBLC COLR CPAL SVG  sbix acnt avar bdat bloc bsln cvar fdsc feat fmtx fvar " +
  "gvar hsty just lcar mort morx opbd prop trak Zapf Silf Glat Gloc Feat Sill";

/** An entry of the directory: how long the table is as it is stored. */
interface Entry {
  readonly tag: string;
  readonly length: number;
  readonly transformed: boolean;
}

/**
 * The tables of a WOFF2 file, but outlines in the form that it stores them in. Source: WOFF 2.0, "Table directory format" and
 * "Transformed hmtx table format". @throws FontFault
 */
export function woff2Tables(file: Buffer): FontTable[] {
  const count = file.readUInt16BE(12);
  if (count > MOST_TABLES) throw new FontFault("too many tables");
  const reader = new ByteReader(file, 48);
  const entries = Array.from({ length: count }, () => readEntry(reader));
  const stored = entries.reduce((sum, { length }) => sum + length, 0);
  if (stored > MOST_BYTES) throw new FontFault("too large");
  const packed = file.subarray(reader.at, reader.at + file.readUInt32BE(20));
  const all = brotliDecompressSync(packed, { maxOutputLength: Math.max(1, stored) });
  let at = 0;
  const tables = entries.map(({ tag, length, transformed }) => {
    at += length;
    return { tag, transformed, bytes: all.subarray(at - length, at) };
  });
  const metrics = tables.find(({ tag }) => tag === "hhea")?.bytes.readUInt16BE(34) ?? 0;
  return tables
    .filter(({ tag, transformed }) => !transformed || tag === "hmtx")
    .map(({ tag, transformed, bytes }) => ({ tag, bytes: transformed ? wholeMetrics(bytes, metrics) : bytes }));
}

function readEntry(reader: ByteReader): Entry {
  const flags = reader.byte();
  const number = flags & 0x3f;
  const tag = number === 0x3f ? reader.text(4) : TAGS.slice(5 * number, 5 * number + 4).padEnd(4);
  const original = reader.base128();
  const version = flags >> 6;
  // Outlines are stored as they are under the version 3, all else under 0.
  const transformed = tag === "glyf" || tag === "loca" ? version !== 3 : version !== 0;
  return { tag, transformed, length: transformed ? reader.base128() : original };
}

/** Widths with bearings of 0, which setting letters asks nothing of. */
function wholeMetrics(stored: Buffer, count: number): Buffer {
  const whole = Buffer.alloc(4 * count);
  for (let i = 0; i < count; i += 1) whole.writeUInt16BE(stored.readUInt16BE(1 + 2 * i), 4 * i);
  return whole;
}

class ByteReader {
  readonly #bytes: Buffer;
  at: number;

  constructor(bytes: Buffer, at: number) {
    this.#bytes = bytes;
    this.at = at;
  }

  byte(): number {
    this.at += 1;
    return this.#bytes.readUInt8(this.at - 1);
  }

  text(length: number): string {
    this.at += length;
    return this.#bytes.toString("latin1", this.at - length, this.at);
  }

  /** Source: WOFF 2.0, "UIntBase128 Data Type". */
  base128(): number {
    let value = 0;
    for (let i = 0; i < 5; i += 1) {
      const byte = this.byte();
      value = value * 128 + (byte & 0x7f);
      if ((byte & 0x80) === 0) return value;
    }
    throw new FontFault("a number of its directory is too long");
  }
}
