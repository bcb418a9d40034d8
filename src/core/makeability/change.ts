import { thinOut } from "../geometry/simplify.ts";
import type { Kit } from "../kit/kit.ts";
import type { LevelMap } from "../picture/level-map.ts";
import type { OfferedChange } from "../refit/offer.ts";
import { type Refit, refitKit } from "../refit/refit.ts";

/** What an author may change so that a picture is easier to make. Lengths mm; levels by number as the kit has them. */
export type AuthorChange =
  | Extract<OfferedChange, { readonly kind: "height" | "opening" | "borders" | "depths" }>
  | {
      /** Fewer levels: what is at `level` is folded with `into`, its neighbour, at that one's depth. */
      readonly kind: "merge-levels";
      readonly level: number;
      readonly into: number;
    }
  | {
      /** Smoother outlines that stray by so much at most, on the book. */
      readonly kind: "simplify";
      readonly tolerance: number;
    };

/** A changed kit, and which of its levels a level of the kit became. */
export interface ChangedKit {
  readonly change: AuthorChange;
  readonly kit: Kit;
  readonly levelOf: (level: number) => number;
}

/** A kit with figures of its own changed. */
export function withFigures(kit: Kit, change: AuthorChange, refit: Refit): ChangedKit {
  return { change, kit: refitKit(kit, refit), levelOf: (level) => level };
}

/** A kit without one of its levels, which must not be its light's or its window's. */
export function withMergedLevels(kit: Kit, level: number, into: number): ChangedKit {
  const levelOf = (one: number): number => {
    const moved = one === level ? into : one;
    return moved > level ? moved - 1 : moved;
  };
  const background = kit.levels[level - 1]!.background;
  const levels = kit.levels
    .map((one, k) => (k + 1 === into && background ? { ...one, background } : one))
    .filter((_, k) => k + 1 !== level);
  const shapes = kit.picture.shapes.map((shape) => ({ ...shape, level: levelOf(shape.level) }));
  return {
    change: { kind: "merge-levels", level, into },
    kit: {
      ...kit,
      levels,
      picture: { ...kit.picture, background: levelOf(kit.picture.background), shapes },
      light: kit.light && { ...kit.light, level: levelOf(kit.light.level) },
      insert: kit.insert && { ...kit.insert, outline: levelOf(kit.insert.outline) },
    },
    levelOf,
  };
}

/** A kit whose outlines have fewer points; `scale` is mm on the book for a unit of the picture. */
export function withSimplified(kit: Kit, tolerance: number, scale: number): ChangedKit {
  const { picture } = kit;
  const shapes = picture.shapes.map((shape) => ({ ...shape, rings: thinOut(shape.rings, tolerance / scale) }));
  const simple: LevelMap = { ...picture, shapes };
  return { change: { kind: "simplify", tolerance }, kit: { ...kit, picture: simple }, levelOf: (level) => level };
}
