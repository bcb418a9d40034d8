/**
 * Bounds against drawings made to exhaust the reader, such as `use` of `use` of `use`. Exports of drawing programs stay far
 * below: one of 20,000 elements has a fifth of all but the points, which many small curves may bring to near their bound.
 */

/** Elements in the file, and elements shown, those of a `use` each time. */
export const MOST_ELEMENTS = 100_000;
/** Elements within each other, those of a `use` among them. */
export const MOST_LEVELS = 200;
/** Points of all outlines; each side of a symbol that clips them counts them again. */
export const MOST_POINTS = 5_000_000;
/** All outlines together, across and down, in widths and heights of the picture: every leaf meets that many of them. */
export const MOST_LENGTH = 20_000;
/** Prefixes of namespaces: the XML reader copies all of them for each element that declares one. */
export const MOST_PREFIXES = 100;
/** Letters of a document type. */
export const MOST_DOCTYPE = 20_000;
/** Declarations of styles, written, and tried on elements. */
export const MOST_DECLARATIONS = 1_000_000;
/** Times that a rule of a style sheet is tried on an element that its name, class or id may mean. */
export const MOST_TRIES = 2_000_000;
/** Notes that are told. */
export const MOST_NOTES = 20;
/** Faults that are told at once. */
export const MOST_FAULTS = 50;
/** Pairs of edges that stand beside each other in everything that is cut by clip paths and masks. */
export const MOST_CUTS = 4_000_000;
/** Points of clip paths and masks, counted for each shape that they cut. */
export const MOST_LOOKS = 50_000_000;
/** Entities of a document type, letters of one of them, and letters that all of them add to the file. */
export const MOST_ENTITIES = { count: 200, letters: 1000, added: 1_000_000 } as const;
/** Dashes of one stroke. */
export const MOST_DASHES = 50_000;
/** Letters of a value that variables of CSS make. */
export const MOST_VALUE = 1000;
