import type { Failure } from "../../core/findings/failure.ts";
import * as say from "../messages.ts";
import { type FailureMessages, sayFailure, type Telling } from "./failure-figures.ts";

/** What is wrong, in whole sentences, for a reader or a teacher. */
export function whyText(failure: Failure, telling: Telling): string {
  return sayFailure(WHY, failure, telling);
}

const WHY: FailureMessages = {
  "pages-need-more-leaves": say.failPagesNeedMoreLeavesWhy,
  "no-page": say.failNoPageWhy,
  "plates-after-last-page": say.failPlatesAfterLastPageWhy,
  "too-few-leaves": say.failTooFewLeavesWhy,
  "levels-out-of-order": say.failLevelsOutOfOrderWhy,
  "flap-in-gutter": say.failFlapInGutterWhy,
  "needs-knife": say.failNeedsKnifeWhy,
  "background-shown": say.failBackgroundShownWhy,
  "no-room-for-corners": say.failNoRoomForCornersWhy,
  "nothing-to-show": say.failNothingToShowWhy,
  "opening-too-wide": say.failOpeningTooWideWhy,
  "picture-off-leaf": say.failPictureOffLeafWhy,
  "picture-too-narrow": say.failPictureTooNarrowWhy,
  "picture-too-wide": say.failPictureTooWideWhy,
  "leaves-show-too-little": say.failLeavesShowTooLittleWhy,
  "lost-leaf-outside": say.failLostLeafOutsideWhy,
  "too-few-remain": say.failTooFewRemainWhy,
  "picture-flat": say.failPictureFlatWhy,
  "no-room-for-light": say.failNoRoomForLightWhy,
  "light-near-window": say.failLightNearWindowWhy,
  "outline-hidden": say.failOutlineHiddenWhy,
  "hole-breaks": say.failHoleBreaksWhy,
  "no-hinge": say.failNoHingeWhy,
  "glazing-too-small": say.failGlazingTooSmallWhy,
};
