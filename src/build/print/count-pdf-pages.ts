import { inflateSync } from "node:zlib";

/** Packed objects, as `write-pdf.ts` writes them. */
const PACKED = /\/Type \/ObjStm [^>]*\/Length (\d+)>>\nstream\n/g;

/** Pages of a finished PDF. @throws Error where it has none, or was written otherwise */
export function countPdfPages(pdf: Buffer): number {
  let pages = 0;
  for (const { 0: head, 1: length, index } of pdf.toString("latin1").matchAll(PACKED)) {
    const from = index + head.length;
    pages += pagesIn(inflateSync(pdf.subarray(from, from + Number(length))));
  }
  if (pages === 0) throw new Error("a PDF without packed pages");
  return pages;
}

/** Pages among objects that are not packed: each is a dictionary that says so (ISO 32000 7.7.3.3 Table 31). */
export function pagesIn(objects: Uint8Array): number {
  return (
    Buffer.from(objects.buffer, objects.byteOffset, objects.byteLength)
      .toString("latin1")
      .match(/\/Type \/Page\b/g)?.length ?? 0
  );
}
