import type { Shape } from "../../core/fit/shape.ts";
import { toRadians } from "../../core/units/angle.ts";
import type { FrontMatter } from "./schema.ts";

/** Which of leaves, height and opening a checked front matter leaves to be solved; an opening that is not stated is solved. */
export function resolveShape({ pictureLeaves, height, opening }: FrontMatter["fit"]): Shape {
  const stated = typeof opening === "number" ? toRadians(opening) : undefined;
  if (stated === undefined) {
    return { solve: "opening", pictureLeaves: pictureLeaves as "fill" | number, height: height as number };
  }
  if (pictureLeaves === "solve") return { solve: "pictureLeaves", height: height as number, opening: stated };
  if (height === "solve") return { solve: "height", pictureLeaves, opening: stated };
  return { solve: "nothing", pictureLeaves, height, opening: stated };
}
