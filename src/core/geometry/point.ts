/** A point in the plane, in the unit of the figure it belongs to. */
export type Point = readonly [x: number, y: number];

/** A closed outline: the last point joins the first, which is not repeated. */
export type Ring = readonly Point[];

/** `nonzero` or `evenodd`, as SVG 2 (painting, "Winding rule") defines them. */
export type FillRule = "nonzero" | "evenodd";
