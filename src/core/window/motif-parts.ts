import { fileNames } from "../file-name.ts";
import type { Area } from "../geometry/area.ts";
import { boxOf } from "../geometry/box.ts";
import { simplify } from "../geometry/simplify.ts";
import { lastPer } from "../kept-with.ts";
import { inMm, type MotifPart, type MotifWish } from "./motif.ts";
import { type Extent, extentOf, type MotifGround, seatMotifs } from "./motif-seats.ts";
import { CHORD_ERROR } from "./window-shapes.ts";

/** One that covers the light is this many times as wide and as high as it, where the hole has room; others are this share of the hole's width. */
const COVER = 1.35;
const SMALL = 0.24;

/** Without sizes of their own, motifs fill no more of the hole than this share of its width and height. */
const MOST = 0.85;

/** The motifs of a window in the order in which the kit states them, each sized and set. */
export function motifParts(wishes: readonly MotifWish[], ground: MotifGround): MotifPart[] {
  const names = fileNames(
    wishes.map(({ name }) => name),
    "other",
  );
  const sizes = wishes.map((wish) => sizeOf(wish, ground));
  const seats = seatMotifs(wishes, sizes, ground);
  return wishes.map((wish, i) => ({
    id: `motif-${names[i]!}`,
    kind: wish.coversLight ? "largest-motif" : "motif",
    motif: wish.name,
    material: "card",
    ...(wish.card ? { card: wish.card } : {}),
    count: 1,
    frame: "own",
    outlines: cutOf(wish.area, sizes[i]!),
    scores: [],
    marks: [],
    seat: seats[i]!,
    spacers: wish.spacers,
  }));
}

function sizeOf({ area, width, height, coversLight }: MotifWish, { frame, hole, light }: MotifGround): Extent {
  const own = extentOf(boxOf(area));
  const of = extentOf(frame);
  const wide = width && inMm(width, of.width);
  const high = height && inMm(height, of.height);
  if (wide !== undefined || high !== undefined) {
    return {
      width: wide ?? (own.width / own.height) * high!,
      height: high ?? (own.height / own.width) * wide!,
    };
  }
  const room = extentOf(hole);
  const covered = coversLight && light && extentOf(light);
  const wished = covered
    ? Math.max((COVER * covered.width) / own.width, (COVER * covered.height) / own.height)
    : (SMALL * room.width) / own.width;
  const scale = Math.min(wished, (MOST * room.width) / own.width, (MOST * room.height) / own.height);
  return { width: own.width * scale, height: own.height * scale };
}

const lastCut = lastPer<Area, Area>(1);

/** A motif's outlines at a size, cut once for as long as it stays: most keep theirs whatever the book is. */
function cutOf(area: Area, { width, height }: Extent): Area {
  return lastCut(area, `${width} ${height}`, () => simplify(scaled(area, { width, height }), CHORD_ERROR));
}

function scaled(area: Area, { width, height }: Extent): Area {
  const box = boxOf(area);
  const own = extentOf(box);
  return area.map((ring) =>
    ring.map(([x, y]) => [((x - box.left) / own.width) * width, ((y - box.top) / own.height) * height] as const),
  );
}
