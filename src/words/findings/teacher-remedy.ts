import type { Failure } from "../../core/findings/failure.ts";
import * as say from "../messages.ts";
import { type FailureMessages, sayFailure, type Telling } from "./failure-figures.ts";

/** What would help, for a teacher: the cell of the seats' table that she can change. */
export function teacherRemedy(failure: Failure, telling: Telling): string {
  return sayFailure(REMEDY, failure, telling);
}

const REMEDY: FailureMessages = {
  "pages-need-more-leaves": say.failPagesNeedMoreLeavesDoTeacher,
  "no-page": say.failNoPageDoTeacher,
  "plates-after-last-page": say.failPlatesAfterLastPageDoTeacher,
  "too-few-leaves": say.failTooFewLeavesDoTeacher,
  "levels-out-of-order": say.failLevelsOutOfOrderDoTeacher,
  "flap-in-gutter": say.failFlapInGutterDoTeacher,
  "needs-knife": say.failNeedsKnifeDoTeacher,
  "background-shown": say.failBackgroundShownDoTeacher,
  "no-room-for-corners": say.failNoRoomForCornersDoTeacher,
  "nothing-to-show": say.failNothingToShowDoTeacher,
  "opening-too-wide": say.failOpeningTooWideDoTeacher,
  "picture-off-leaf": say.failPictureOffLeafDoTeacher,
  "picture-too-narrow": say.failPictureTooNarrowDoTeacher,
  "picture-too-wide": say.failPictureTooWideDoTeacher,
  "leaves-show-too-little": say.failLeavesShowTooLittleDoTeacher,
  "lost-leaf-outside": say.failLostLeafOutsideDoTeacher,
  "too-few-remain": say.failTooFewRemainDoTeacher,
  "picture-flat": say.failPictureFlatDoTeacher,
  "no-room-for-light": say.failNoRoomForLightDoTeacher,
  "light-near-window": say.failLightNearWindowDoTeacher,
  "outline-hidden": say.failOutlineHiddenDoTeacher,
  "hole-breaks": say.failHoleBreaksDoTeacher,
  "no-hinge": say.failNoHingeDoTeacher,
  "glazing-too-small": say.failGlazingTooSmallDoTeacher,
};
