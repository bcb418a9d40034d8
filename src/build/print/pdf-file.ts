/** An object of a PDF: its text, each byte a letter; of a stream, its bytes as they are. */
export type PdfObject = string | Buffer;

/** A PDF as its objects by their numbers; ISO 32000. */
export interface PdfFile {
  readonly objects: Map<number, PdfObject>;
  /** The numbers of the catalog and of what tells about the file. */
  readonly root: number;
  readonly info: number;
}

/** Reads a PDF with a plain table of its objects (ISO 32000 7.5.4), as browsers write it; undefined where it is written otherwise. */
export function readPdf(bytes: Uint8Array): PdfFile | undefined {
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = file.lastIndexOf("startxref");
  const start = Number(/\d+/.exec(file.toString("latin1", end, end + 30))?.[0]);
  const [table, trailer] = file.toString("latin1", start, end).split("trailer");
  if (!table?.startsWith("xref") || trailer === undefined || /\/(Prev|Encrypt)\b/.test(trailer)) return undefined;
  const places = placesOf(table);
  const ends = places.slice(1).map(({ offset }) => offset);
  const objects = places.map(({ number, offset }, i) => [number, objectAt(file, offset, ends[i] ?? start)] as const);
  const [root, info] = ["Root", "Info"].map((name) => Number(new RegExp(`/${name} (\\d+) 0 R`).exec(trailer)?.[1]));
  if (!root || !info) return undefined;
  return { objects: new Map(objects.toSorted(([one], [other]) => one - other)), root, info };
}

/** Where objects begin, in the order of the file. */
function placesOf(table: string): { readonly number: number; readonly offset: number }[] {
  const places: { number: number; offset: number }[] = [];
  let number = 0;
  for (const [, offset, , use] of table.matchAll(/(\d+) (\d+)( [nf])?/g)) {
    if (use === undefined) {
      number = Number(offset);
      continue;
    }
    if (use === " n") places.push({ number, offset: Number(offset) });
    number += 1;
  }
  return places.toSorted((a, b) => a.offset - b.offset);
}

/** What stands between `obj` and `endobj`. */
function objectAt(file: Buffer, offset: number, end: number): PdfObject {
  const from = file.indexOf("obj", offset) + "obj".length;
  const body = file.subarray(from, file.lastIndexOf("endobj", end));
  const last = body.toString("latin1", body.length - 20).trimEnd();
  return last.endsWith("endstream") ? body : body.toString("latin1").trim();
}
