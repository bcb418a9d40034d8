import type { Desk } from "../../core/bench/desk.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import { frontNow } from "../../output/drawing/bench/front-now.ts";
import { frontSymbol } from "../../output/drawing/front/here.ts";
import { part } from "./bench-dom.ts";

/** Draws the front in small as it fills; the picture itself only where it changed. Gives what draws it. */
export function frontOf(root: HTMLElement): (desk: Desk) => void {
  let drawn: Pattern | undefined;
  return ({ plan, progress }) => {
    if (drawn !== plan.pattern) part(root, "front-symbol").innerHTML = frontSymbol(plan.pattern);
    drawn = plan.pattern;
    part(root, "front-now").innerHTML = frontNow(plan, progress);
  };
}
