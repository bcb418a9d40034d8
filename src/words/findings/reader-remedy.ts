import type { Failure } from "../../core/findings/failure.ts";
import * as say from "../messages.ts";
import { type FailureMessages, sayFailure, type Telling } from "./failure-figures.ts";

/** What would help, for a reader: what she can change on the page or at her shelf. */
export function readerRemedy(failure: Failure, telling: Telling): string {
  return sayFailure(REMEDY, failure, telling);
}

const REMEDY: FailureMessages = {
  "pages-need-more-leaves": say.failPagesNeedMoreLeavesDoReader,
  "no-page": say.failNoPageDoReader,
  "plates-after-last-page": say.failPlatesAfterLastPageDoReader,
  "too-few-leaves": say.failTooFewLeavesDoReader,
  "levels-out-of-order": say.failLevelsOutOfOrderDoReader,
  "flap-in-gutter": say.failFlapInGutterDoReader,
  "needs-knife": say.failNeedsKnifeDoReader,
  "background-shown": say.failBackgroundShownDoReader,
  "no-room-for-corners": say.failNoRoomForCornersDoReader,
  "nothing-to-show": say.failNothingToShowDoReader,
  "opening-too-wide": say.failOpeningTooWideDoReader,
  "picture-off-leaf": say.failPictureOffLeafDoReader,
  "picture-too-narrow": say.failPictureTooNarrowDoReader,
  "picture-too-wide": say.failPictureTooWideDoReader,
  "leaves-show-too-little": say.failLeavesShowTooLittleDoReader,
  "lost-leaf-outside": say.failLostLeafOutsideDoReader,
  "too-few-remain": say.failTooFewRemainDoReader,
  "picture-flat": say.failPictureFlatDoReader,
  "no-room-for-light": say.failNoRoomForLightDoReader,
  "light-near-window": say.failLightNearWindowDoReader,
  "outline-hidden": say.failOutlineHiddenDoReader,
  "hole-breaks": say.failHoleBreaksDoReader,
  "no-hinge": say.failNoHingeDoReader,
  "glazing-too-small": say.failGlazingTooSmallDoReader,
};
