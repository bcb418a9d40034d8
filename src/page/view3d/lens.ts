import type { PerspectiveCamera } from "three";
import { toRadians } from "../../core/units/angle.ts";
import type { RoundData } from "../../output/data/round-data.ts";
import type { Orbit } from "./orbit.ts";

/** Vertical field of view, degrees: a long lens, so that the view from the front is near the front picture. */
export const FIELD_OF_VIEW = 22;

/** Space left round the book, mm. */
const MARGIN = 20;

/** Sets the camera so far off that the whole book shows at distance 1, also when it is opened (radians) wider than the kit wants. */
export function placeCamera(camera: PerspectiveCamera, orbit: Orbit, data: RoundData, opening: number): void {
  const { leafHeight, leafWidth, square, blockThickness } = data.book;
  const widest = Math.min(Math.PI, Math.max(opening, data.fit.opening));
  const across = blockThickness / 2 + (leafWidth + square) * Math.sin(widest / 2) + MARGIN;
  const up = leafHeight / 2 + square + MARGIN;
  const lens = Math.tan(toRadians(FIELD_OF_VIEW) / 2);
  const reach = leafWidth / 2 + Math.max(up / lens, across / (lens * camera.aspect));
  const distance = reach * orbit.distance;
  const depth = 1.2 * Math.hypot(leafWidth, leafHeight, across);
  camera.near = Math.max(5, distance - depth);
  camera.far = distance + 3 * depth;
  camera.updateProjectionMatrix();
  camera.position.set(0, distance * Math.sin(orbit.tilt), distance * Math.cos(orbit.tilt));
  camera.lookAt(0, 0, 0);
}
