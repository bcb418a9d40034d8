import type { Box, Size } from "../../core/geometry/box.ts";

/** As a share of the picture's side: so far something may reach over its edge before it is told. */
const OVER = 0.01;

/** Whether a box reaches out of a picture, whose corner is at 0,0, by more than a hair's breadth. */
export function reachesOver({ left, top, right, bottom }: Box, { width, height }: Size): boolean {
  const [across, down] = [OVER * width, OVER * height];
  return left < -across || top < -down || right > width + across || bottom > height + down;
}
