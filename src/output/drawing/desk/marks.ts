import type { Difference } from "../../../core/makeability/differences.ts";
import { areaMark, markPatterns, placeMark } from "../front/trouble-marks.ts";
import { tag } from "../svg-text.ts";

/** A pen's width on the sheet, a share of the picture's height. */
const PEN = 1 / 300;

/** Most places that are marked, the largest. */
const MARKED = 200;

/** Where it will look different, each kind with its own pattern, for a picture so tall on the sheet. Lengths mm. */
export function differenceMarks(differences: readonly Difference[], height: number): string {
  const pen = PEN * height;
  const drawn = differences.slice(0, MARKED).map((one) => {
    switch (one.kind) {
      case "hidden":
        return areaMark("hidden", one.boxes);
      case "unreached":
        return areaMark("out-of-reach", one.boxes);
      default:
        return placeMark(one.kind, one.box, pen);
    }
  });
  return tag("defs", {}, markPatterns(pen)) + drawn.join("");
}
