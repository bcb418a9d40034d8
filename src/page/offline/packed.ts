/** Says of what is kept that it is packed. */
const PACKED = "x-packed";

/** What packs well: pages, styles, scripts, drawings, data. Pictures, letters and PDFs are packed already. */
const LOOSE = /^text\/|javascript|json|xml|svg/;

/** A file as it is kept: packed where that makes it smaller, a fifth of its bytes. */
export function packed(bytes: ArrayBuffer, type: string): Response {
  if (!LOOSE.test(type)) return new Response(bytes, { headers: { "content-type": type } });
  const body = new Blob([bytes]).stream().pipeThrough(new CompressionStream("gzip"));
  return new Response(body, { headers: { "content-type": type, [PACKED]: "gzip" } });
}

/** What is kept, as the host gave it. */
export function unpacked(kept: Response): Response {
  if (!kept.body || kept.headers.get(PACKED) === null) return kept;
  const body = kept.body.pipeThrough(new DecompressionStream("gzip"));
  return new Response(body, { headers: { "content-type": kept.headers.get("content-type") ?? "" } });
}
