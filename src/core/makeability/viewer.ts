import type { Place } from "../fan/fan.ts";

/**
 * From where the opened book is looked at: `far` is straight from the front with parallel rays, a number is an eye so many
 * mm in front of the foremost tips. The eye goes up and down with what it looks at, so heights are seen as they are.
 */
export type Viewer = "far" | number;

/** Where a place is seen: an x that is the same for all places on one ray of the viewer. `front` is the z of the foremost tips. */
export function seenAt(viewer: Viewer, front: number, { x, z }: Place): number {
  if (viewer === "far") return x;
  const eye = front + viewer;
  return (x * viewer) / (eye - z);
}
