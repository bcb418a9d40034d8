import type { Point } from "../../core/geometry/point.ts";

/** One piece of a path, in absolute user units; each starts where the one before ended. */
export type PathSegment =
  | { readonly kind: "move"; readonly to: Point }
  | { readonly kind: "line"; readonly to: Point }
  /** A Bézier curve: one control point makes it quadratic, two make it cubic. */
  | { readonly kind: "curve"; readonly controls: readonly Point[]; readonly to: Point }
  | {
      readonly kind: "arc";
      /** Half-axes, ≥ 0; with either 0 the arc is a straight line. */
      readonly radii: Point;
      /** Angle from the x-axis to the first half-axis, radians. */
      readonly turn: number;
      readonly large: boolean;
      readonly clockwise: boolean;
      readonly to: Point;
    }
  | { readonly kind: "close" };
