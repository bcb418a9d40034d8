/** Bounds against pictures that would take more memory or time than a kit is worth. */

/** Pixels of a picture or a photo as it is stored: an interlaced one of so many takes half a gigabyte to decode. */
export const MOST_PIXELS = 100_000_000;
/** The longer side that a larger picture is reduced to, pixels: at 120 mm on the book a pixel is 0.05 mm. */
export const WORKING_SIDE = 2400;
/** Milliseconds that decoding may take; the largest that may come take a few seconds. */
export const MOST_TIME = 120_000;
/** Sides of pixels along the outlines of one level: so long is the outline of a fern that fills the picture. */
export const MOST_SIDES = 1_000_000;
/** Parts and holes of one level, after small ones were left out. */
export const MOST_PARTS = 5000;

/** How a raster picture may be traced, and which of its tones may stand in front. */
export const TRACES = ["silhouette", "tones", "depth", "colours"] as const;
export const NEARS = ["dark", "light"] as const;

/** Bounds of the keys of a raster picture. */
export const TOLERANCE = { kind: "length", least: 0.02, most: 5 } as const;
export const LEAST = { kind: "length", least: 0, most: 50 } as const;
export const LIMIT = { kind: "count", least: 0, most: 254 } as const;
