/** Bounds that tests hold and documents name; nothing else that is measured stands in a document. */

/** Most bytes of script that a page loads by itself, or at once for a reader's book, after gzip -9. */
export const MOST_SCRIPT = 80_000;

/** Most bytes that pages load by themselves which fetch what fits them to a reader's book only for her. */
export const MOST_AT_FIRST = 6_000;

/** One frame of a screen that shows 60 a second, ms. */
export const FRAME = 16;

/** What a reader still feels as at once, ms. */
export const AT_ONCE = 100;

/** Most bytes on the line for a first visit of the catalogue, with its pictures. */
export const MOST_CATALOGUE = 150_000;

/** Most bytes on the line for a first visit of any page, before something is opened. */
export const MOST_VISIT = 400_000;

/** Most bytes that a device keeps at a first visit. */
export const MOST_KEPT = 1_000_000;

/** Most bytes of the finder's index for one kit. */
export const MOST_OUTLINE = 1_000;
