import type { Desk } from "../../core/bench/desk.ts";
import type { AnyPattern } from "../../core/pattern/corner-pattern.ts";
import { frontNow } from "../../output/drawing/bench/front-now.ts";
import { frontSymbol, type SmallFront } from "../../output/drawing/front/here.ts";
import { part } from "./bench-dom.ts";
import { faceOf } from "./face-of.ts";

/** Draws the front in small as it fills; the picture itself only where it changed. Gives what draws it. */
export function frontOf(root: HTMLElement): (desk: Desk) => void {
  let drawn: { readonly pattern: AnyPattern; readonly front: SmallFront } | undefined;
  return ({ plan, progress }) => {
    const { pattern } = plan;
    if (drawn?.pattern !== pattern) {
      drawn = { pattern, front: faceOf(plan).front(pattern) };
      part(root, "front-symbol").innerHTML = frontSymbol(drawn.front);
    }
    part(root, "front-now").innerHTML = frontNow(drawn.front, plan, progress);
  };
}
