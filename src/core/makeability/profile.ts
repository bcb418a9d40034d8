import type { Book } from "../book/book.ts";
import type { LeafFold } from "../corner/leaf-fold.ts";
import type { Level } from "../kit/kit.ts";
import type { Span } from "../spans/span.ts";

/** A stretch of a folded leaf's outer edge, mm from the head, and how far out it reaches at both ends, mm from the gutter: even in between. */
export interface ProfileStretch {
  readonly from: number;
  readonly to: number;
  readonly radiusFrom: number;
  readonly radiusTo: number;
  /** Whether it shows the picture; such a stretch is upright. */
  readonly isShown: boolean;
}

type Size = Pick<Book, "leafHeight" | "leafWidth">;

/** A leaf that is not folded. */
export function unfoldedProfile({ leafHeight, leafWidth }: Size): ProfileStretch[] {
  return [{ from: 0, to: leafHeight, radiusFrom: leafWidth, radiusTo: leafWidth, isShown: false }];
}

/** A leaf that is folded by corners, or that shows nothing. */
export function cornerProfile(fold: LeafFold, { leafHeight, leafWidth }: Size): ProfileStretch[] {
  if (fold.kind === "straight") {
    const radius = leafWidth - fold.depth;
    return [{ from: 0, to: leafHeight, radiusFrom: radius, radiusTo: radius, isShown: false }];
  }
  const { from, to } = fold.kind === "corners" ? fold.shown : { from: fold.at, to: fold.at };
  const [head, tail] = ["head", "tail"].map(
    (corner) => leafWidth - (fold.creases.find((crease) => crease.corner === corner)?.to.depth ?? 0),
  ) as [number, number];
  const profile = [
    { from: 0, to: from, radiusFrom: head, radiusTo: leafWidth, isShown: false },
    { from, to, radiusFrom: leafWidth, radiusTo: leafWidth, isShown: true },
    { from: to, to: leafHeight, radiusFrom: leafWidth, radiusTo: tail, isShown: false },
  ];
  return profile.filter((stretch) => stretch.to > stretch.from);
}

/** A leaf that is cut; `shown` are the levels that count as the picture, by number. */
export function cutProfile(
  spans: readonly Span[],
  levels: readonly Level[],
  { leafWidth }: Size,
  shown: readonly number[],
): ProfileStretch[] {
  return spans.map(({ from, to, level }) => {
    const radius = leafWidth - levels[level - 1]!.depth;
    return { from, to, radiusFrom: radius, radiusTo: radius, isShown: shown.includes(level) };
  });
}
