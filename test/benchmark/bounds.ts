/** Bounds that tests hold and documents name; nothing else that is measured stands in a document. */

/** Most bytes of script that a page loads by itself, or at once for a reader's book, after gzip -9. */
export const MOST_SCRIPT = 80_000;

/** Most bytes that pages load by themselves which fetch what fits them to a reader's book only for her. */
export const MOST_AT_FIRST = 6_000;

/** One frame of a screen that shows 60 a second, ms. */
export const FRAME = 16;

/** What a reader still feels as at once, ms. */
export const AT_ONCE = 100;
