import type { Failure } from "../../core/findings/failure.ts";
import * as say from "../messages.ts";
import type { Telling } from "./failure-figures.ts";
import { whyText } from "./failure-why.ts";
import { readerRemedy } from "./reader-remedy.ts";

/** Why a leaf cannot be left out at the bench, or the book not be closed without it. */
export function refusalText(failure: Failure, telling: Telling): string {
  const why = whyText(failure, telling);
  const ofLostLeaves = failure.kind === "lost-leaf-outside" || failure.kind === "too-few-remain";
  return ofLostLeaves
    ? say.benchCannotLeaveOut({ why, remedy: readerRemedy(failure, telling) })
    : say.benchCannotClose({ why });
}
