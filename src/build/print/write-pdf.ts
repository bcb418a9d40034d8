import { promisify } from "node:util";
import { deflate } from "node:zlib";
import type { PdfFile } from "./pdf-file.ts";

/** So many objects stand packed in one stream: a reader unpacks all of them for one. */
const PACKED = 100;

/** Bytes of an entry of the table: its kind, its place, its rank in a packed stream. */
const ENTRY = [1, 4, 2] as const;

const HEAD = Buffer.from("%PDF-1.7\n%\u00e2\u00e3\u00cf\u00d3\n", "latin1");

/** Writes a PDF with all objects but streams packed, and a packed table of them (ISO 32000 7.5.7 and 7.5.8). */
export async function writePdf({ objects, root, info }: PdfFile): Promise<Uint8Array> {
  const entries = new Map<number, readonly [kind: number, place: number, rank: number]>();
  const pieces: Buffer[] = [HEAD];
  let length = HEAD.length;
  const add = (number: number, body: readonly Buffer[]): void => {
    entries.set(number, [1, length, 0]);
    const whole = [Buffer.from(`${number} 0 obj\n`), ...body, Buffer.from("\nendobj\n")];
    for (const piece of whole) length += piece.length;
    pieces.push(...whole);
  };
  for (const [number, body] of objects) if (typeof body !== "string") add(number, [body]);
  let next = Math.max(...objects.keys()) + 1;
  const texts = [...objects].filter((entry): entry is [number, string] => typeof entry[1] === "string");
  for (let from = 0; from < texts.length; from += PACKED) {
    const some = texts.slice(from, from + PACKED);
    for (const [rank, [number]] of some.entries()) entries.set(number, [2, next, rank]);
    add(next, await packObjects(some));
    next += 1;
  }
  const start = length;
  entries.set(next, [1, start, 0]);
  const table = Buffer.alloc((next + 1) * (ENTRY[0] + ENTRY[1] + ENTRY[2]));
  let at = 0;
  for (let number = 0; number <= next; number += 1)
    for (const [i, value] of (entries.get(number) ?? [0, 0, 0]).entries()) at = table.writeUIntBE(value, at, ENTRY[i]!);
  const keys = `/Type /XRef /Size ${next + 1} /W [${ENTRY.join(" ")}] /Root ${root} 0 R /Info ${info} 0 R`;
  add(next, await stream(keys, table));
  pieces.push(Buffer.from(`startxref\n${start}\n%%EOF\n`));
  return Buffer.concat(pieces);
}

function packObjects(objects: readonly (readonly [number: number, text: string])[]): Promise<Buffer[]> {
  let offset = 0;
  const places = objects.map(([number, text]) => {
    const place = `${number} ${offset}`;
    offset += text.length + 1;
    return place;
  });
  const head = `${places.join(" ")}\n`;
  const all = Buffer.from(`${head}${objects.map(([, text]) => text).join("\n")}`, "latin1");
  return stream(`/Type /ObjStm /N ${objects.length} /First ${head.length}`, all);
}

async function stream(keys: string, bytes: Buffer): Promise<Buffer[]> {
  const packed = await promisify(deflate)(bytes, { level: 9 });
  const head = `<<${keys} /Filter /FlateDecode /Length ${packed.length}>>\nstream\n`;
  return [Buffer.from(head), packed, Buffer.from("\nendstream")];
}
