import type { Book, Plate } from "../book/book.ts";
import { lastPageOf } from "../book/last-page.ts";
import type { LeafNumber } from "../book/leaf-number.ts";
import { heightOf, type Shape, withHeight, withLeaves, withOpening } from "../fit/shape.ts";
import type { Kit } from "../kit/kit.ts";
import type { FoldStyle } from "../spans/fold-style.ts";
import { toRadians } from "../units/angle.ts";
import type { UnitSystem } from "../units/length.ts";

/**
 * What a reader may change of a kit to match her own book. Lengths mm; what is undefined stays as the
 * kit has it. Everything else (picture, levels' names, gauge) is the author's.
 */
export interface Refit {
  readonly leafHeight?: number;
  readonly leafWidth?: number;
  readonly blockThickness?: number;
  readonly leaves?: number;
  readonly pageOneLeaf?: LeafNumber;
  readonly lastPage?: number;
  readonly plates?: readonly Plate[];
  readonly direction?: "ltr" | "rtl";
  readonly borderLeaves?: readonly [number, number];
  readonly pictureLeaves?: number;
  readonly head?: number;
  readonly height?: number;
  /** Taken only where the kit states its opening; where it is solved, the picture's shape decides it. */
  readonly openingDegrees?: number;
  readonly depths?: readonly number[];
  readonly units?: UnitSystem;
  readonly markStep?: number;
  readonly foldStyle?: FoldStyle;
  readonly lightDiameter?: number;
  readonly lightHeight?: number;
  readonly flapBulk?: number;
  readonly lostLeaves?: readonly LeafNumber[];
}

/** The figures of a book that hold for every kit, in the order in which they are asked for. */
export const OF_A_BOOK = [
  "leafHeight",
  "leafWidth",
  "blockThickness",
  "leaves",
  "pageOneLeaf",
  "lastPage",
  "plates",
  "direction",
] as const satisfies readonly (keyof Refit)[];

/** The kit matched to a reader's book: the same kit with her figures in place of the author's. */
export function refitKit(kit: Kit, refit: Refit): Kit {
  const depths = refit.depths;
  const levels = kit.levels.map((level, i) => {
    const depth = depths?.[i];
    return depth === undefined || Math.abs(depth - level.depth) < 1e-6
      ? level
      : { ...level, depth, line: lineAt(kit, depth) };
  });
  const light = kit.light && {
    ...kit.light,
    diameter: refit.lightDiameter ?? kit.light.diameter,
    height: refit.lightHeight ?? kit.light.height,
  };
  return withoutKnife({
    ...kit,
    units: refit.units ?? kit.units,
    levels,
    gaugeLines:
      depths && !kit.levels.some((level) => level.line === undefined) && isOwnGauge(kit)
        ? levels.map((level) => level.depth)
        : kit.gaugeLines,
    book: refitBook(kit.book, refit),
    light,
    fit: {
      ...kit.fit,
      borderLeaves: refit.borderLeaves ?? kit.fit.borderLeaves,
      head: refit.head ?? (refit.leafHeight === undefined ? kit.fit.head : fittingHead(kit, refit)),
      shape: shapeOf(kit, refit),
      markStep: refit.markStep ?? kit.fit.markStep,
      foldStyle: refit.foldStyle ?? kit.fit.foldStyle,
      flapBulk: refit.flapBulk ?? kit.fit.flapBulk,
      lostLeaves: refit.lostLeaves ?? kit.fit.lostLeaves,
    },
  });
}

/** A kit that is folded by corners has nothing that is cut: it goes without its light and its window, and says so. */
function withoutKnife(kit: Kit): Kit {
  const { fit, light, insert } = kit;
  if (fit.foldStyle !== "corner" || !(light || insert)) return kit;
  const dropped = [...(light ? ["light" as const] : []), ...(insert ? ["window" as const] : [])];
  const corner = { ...fit.corner, dropped };
  return { ...kit, light: undefined, cells: undefined, insert: undefined, motifs: [], fit: { ...fit, corner } };
}

function shapeOf(kit: Kit, { height, openingDegrees, pictureLeaves }: Refit): Shape {
  const shape = pictureLeaves === undefined ? kit.fit.shape : withLeaves(kit.fit.shape, pictureLeaves);
  const opened = openingDegrees === undefined ? shape : withOpening(shape, toRadians(openingDegrees));
  return height === undefined ? opened : withHeight(opened, height);
}

/** The author's head where the picture still lies on the leaf; otherwise the picture is centred. */
function fittingHead(kit: Kit, refit: Refit): number | undefined {
  const height = refit.height ?? heightOf(kit.fit.shape);
  if (kit.fit.head === undefined || height === undefined) return kit.fit.head;
  return kit.fit.head + height <= refit.leafHeight! ? kit.fit.head : undefined;
}

function refitBook(book: Book, refit: Refit): Book {
  const leaves = refit.leaves ?? book.leaves;
  const pageOneLeaf = refit.pageOneLeaf ?? book.pageOneLeaf;
  const counted = refit.leaves !== undefined || refit.pageOneLeaf !== undefined;
  const plates = refit.plates ?? (counted || refit.lastPage !== undefined ? platesIn(refit, book) : book.plates);
  const renumbered = counted || refit.plates !== undefined;
  const lastPage = refit.lastPage ?? (renumbered ? lastPageOf({ leaves, pageOneLeaf, plates }) : book.lastPage);
  return {
    ...book,
    leafHeight: refit.leafHeight ?? book.leafHeight,
    leafWidth: refit.leafWidth ?? book.leafWidth,
    blockThickness: refit.blockThickness ?? book.blockThickness,
    leaves,
    pageOneLeaf,
    lastPage,
    plates,
    direction: refit.direction ?? book.direction,
  };
}

/** The plates of the kit's own book that another book may have, too: those before its last page. */
function platesIn({ leaves, pageOneLeaf, lastPage }: Refit, book: Book): readonly Plate[] {
  const last =
    lastPage ?? lastPageOf({ ...book, leaves: leaves ?? book.leaves, pageOneLeaf: pageOneLeaf ?? book.pageOneLeaf });
  return book.plates.filter(({ afterPage }) => afterPage <= last);
}

function lineAt(kit: Kit, depth: number): number | undefined {
  const index = kit.gaugeLines.findIndex((line) => Math.abs(line - depth) < 1e-6);
  return index < 0 ? undefined : index + 1;
}

/** Whether the gauge is just the levels' depths. */
function isOwnGauge(kit: Kit): boolean {
  return (
    kit.gaugeLines.length === kit.levels.length && kit.levels.every((level, i) => level.depth === kit.gaugeLines[i])
  );
}
