import { lastPageOf } from "../../core/book/last-page.ts";
import type { Shape } from "../../core/fit/shape.ts";
import { openingBounds } from "../../core/kit/bounds.ts";
import { toRadians } from "../../core/units/angle.ts";
import { listText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { problem } from "../files/problem.ts";
import type { FrontMatter } from "./schema.ts";

/** One of picture leaves, height and opening follows from the others; an opening beyond flat needs a piece to walk round. @throws ProblemError */
export function checkFit({ fit }: FrontMatter): void {
  const solved = (["pictureLeaves", "height", "opening"] as const).filter((key) => fit[key] === "solve");
  const [first, second] = solved;
  if (second !== undefined) {
    throw problem(["fit", second], {
      given: say.frontSolved({ fields: listText(solved), count: solved.length }),
      allowed: say.frontOneSolved(),
      remedy: say.frontState({ fields: listText(solved.slice(1)) }),
    });
  }
  const { least, most } = openingBounds(fit.view);
  const bounds = { least: String(least), most: String(most) };
  if (fit.opening === undefined && first !== undefined) {
    throw problem(["fit", "opening"], {
      given: say.frontNoOpening({ field: first }),
      allowed: say.frontOpeningDegrees(bounds),
      remedy: say.frontStateOpening(),
    });
  }
  if (typeof fit.opening === "number" && fit.opening > most) {
    throw problem(["fit", "opening"], {
      given: say.checkGiven({ value: String(fit.opening) }),
      allowed: say.frontOpeningBeyondFlat(bounds),
      remedy: say.frontLowerOpening(),
    });
  }
}

/** The free one of picture leaves, height and opening with what is stated of the others: at most one is "solve". */
export function shapeOf({ pictureLeaves, height, opening = "solve" }: FrontMatter["fit"]): Shape {
  if (pictureLeaves === "solve")
    return { solve: "pictureLeaves", height: stated(height), opening: toRadians(stated(opening)) };
  if (opening === "solve") return { solve: "opening", pictureLeaves, height: stated(height) };
  if (height === "solve") return { solve: "height", pictureLeaves, opening: toRadians(opening) };
  return { solve: "nothing", pictureLeaves, height, opening: toRadians(opening) };
}

/** @throws Error where two are solved: `checkFit` comes first */
function stated(value: "solve" | number): number {
  if (value === "solve") throw new Error("two of a fit's three quantities are solved");
  return value;
}

/** The last printed page: as stated, or else what follows from leaves and plates. */
export function statedLastPage(book: FrontMatter["book"]): number {
  return book.lastPage ?? lastPageOf(book);
}
