import type { Failure } from "../../core/findings/failure.ts";
import * as say from "../messages.ts";
import { type FailureMessages, figuresOf, type Telling } from "./failure-figures.ts";

/** What a reader is to look at again where no other picture would help; undefined where one may. */
export function readAgain(failure: Failure, telling: Telling): string | undefined {
  return AGAIN[failure.kind]?.(figuresOf(failure, telling) as never);
}

const AGAIN: Partial<FailureMessages> = {
  "pages-need-more-leaves": say.failPagesNeedMoreLeavesDoReader,
  "no-page": say.failNoPageDoReader,
  "plates-after-last-page": say.failPlatesAfterLastPageDoReader,
  "levels-out-of-order": say.failLevelsOutOfOrderDoReader,
  "lost-leaf-outside": say.failLostLeafOutsideDoReader,
  "too-few-remain": say.failTooFewRemainDoReader,
  "outline-hidden": say.failOutlineHiddenDoReader,
};
