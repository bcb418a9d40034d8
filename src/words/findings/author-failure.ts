import type { Failure } from "../../core/findings/failure.ts";
import * as say from "../messages.ts";
import { type FailureMessages, sayFailure, type Telling } from "./failure-figures.ts";

/** A failure for a kit's author: the field of the front matter it is about, what it gives, what is allowed, what to do. */
export interface AuthorFailure {
  readonly path: readonly (string | number)[];
  readonly given: string;
  readonly allowed: string;
  readonly remedy: string;
}

export function authorFailure(failure: Failure, telling: Telling): AuthorFailure {
  return {
    path: fieldOf(failure),
    given: sayFailure(GIVEN, failure, telling),
    allowed: sayFailure(ALLOWED, failure, telling),
    remedy: sayFailure(REMEDY, failure, telling),
  };
}

/** Where the front matter says what cannot be made. */
function fieldOf(failure: Failure): readonly (string | number)[] {
  switch (failure.kind) {
    case "pages-need-more-leaves":
      return ["book", "lastPage"];
    case "no-page":
      return ["book", failure.plates === 0 ? "pageOneLeaf" : "plates"];
    case "plates-after-last-page":
      return ["book", "plates", failure.entry - 1, "afterPage"];
    case "too-few-leaves":
      return ["fit", failure.most < 2 ? "borderLeaves" : "pictureLeaves"];
    case "levels-out-of-order":
    case "flap-in-gutter":
      return ["levels", failure.level - 1];
    case "needs-knife":
      return { light: ["light"], window: ["insert"], bench: ["fit", "foldStyle"] }[failure.part];
    case "background-shown":
      return ["fit", "foldStyle"];
    case "no-room-for-corners":
      return ["fit", "gutterClearance"];
    case "nothing-to-show":
      return ["picture", "levels"];
    case "opening-too-wide":
      return ["fit", "opening"];
    case "picture-off-leaf":
      return ["fit", failure.heightSolved ? "head" : "height"];
    case "picture-too-narrow":
    case "picture-too-wide":
      return ["fit", "height"];
    case "leaves-show-too-little":
      return ["fit", "pictureLeaves"];
    case "lost-leaf-outside":
    case "too-few-remain":
      return ["fit", "lostLeaves"];
    case "picture-flat":
      return ["picture", "levels"];
    case "no-room-for-light":
      return ["light"];
    case "light-near-window":
      return ["light", "setback"];
    case "outline-hidden":
      return ["insert", "outline"];
    case "no-hinge":
      return ["insert", "hinge"];
    case "hole-breaks":
    case "glazing-too-small":
      return ["insert", "lip"];
  }
}

const GIVEN: FailureMessages = {
  "pages-need-more-leaves": say.failPagesNeedMoreLeavesGiven,
  "no-page": say.failNoPageGiven,
  "plates-after-last-page": say.failPlatesAfterLastPageGiven,
  "too-few-leaves": say.failTooFewLeavesGiven,
  "levels-out-of-order": say.failLevelsOutOfOrderGiven,
  "flap-in-gutter": say.failFlapInGutterGiven,
  "needs-knife": say.failNeedsKnifeGiven,
  "background-shown": say.failBackgroundShownGiven,
  "no-room-for-corners": say.failNoRoomForCornersGiven,
  "nothing-to-show": say.failNothingToShowGiven,
  "opening-too-wide": say.failOpeningTooWideGiven,
  "picture-off-leaf": say.failPictureOffLeafGiven,
  "picture-too-narrow": say.failPictureTooNarrowGiven,
  "picture-too-wide": say.failPictureTooWideGiven,
  "leaves-show-too-little": say.failLeavesShowTooLittleGiven,
  "lost-leaf-outside": say.failLostLeafOutsideGiven,
  "too-few-remain": say.failTooFewRemainGiven,
  "picture-flat": say.failPictureFlatGiven,
  "no-room-for-light": say.failNoRoomForLightGiven,
  "light-near-window": say.failLightNearWindowGiven,
  "outline-hidden": say.failOutlineHiddenGiven,
  "hole-breaks": say.failHoleBreaksGiven,
  "no-hinge": say.failNoHingeGiven,
  "glazing-too-small": say.failGlazingTooSmallGiven,
};

const ALLOWED: FailureMessages = {
  "pages-need-more-leaves": say.failPagesNeedMoreLeavesAllowed,
  "no-page": say.failNoPageAllowed,
  "plates-after-last-page": say.failPlatesAfterLastPageAllowed,
  "too-few-leaves": say.failTooFewLeavesAllowed,
  "levels-out-of-order": say.failLevelsOutOfOrderAllowed,
  "flap-in-gutter": say.failFlapInGutterAllowed,
  "needs-knife": say.failNeedsKnifeAllowed,
  "background-shown": say.failBackgroundShownAllowed,
  "no-room-for-corners": say.failNoRoomForCornersAllowed,
  "nothing-to-show": say.failNothingToShowAllowed,
  "opening-too-wide": say.failOpeningTooWideAllowed,
  "picture-off-leaf": say.failPictureOffLeafAllowed,
  "picture-too-narrow": say.failPictureTooNarrowAllowed,
  "picture-too-wide": say.failPictureTooWideAllowed,
  "leaves-show-too-little": say.failLeavesShowTooLittleAllowed,
  "lost-leaf-outside": say.failLostLeafOutsideAllowed,
  "too-few-remain": say.failTooFewRemainAllowed,
  "picture-flat": say.failPictureFlatAllowed,
  "no-room-for-light": say.failNoRoomForLightAllowed,
  "light-near-window": say.failLightNearWindowAllowed,
  "outline-hidden": say.failOutlineHiddenAllowed,
  "hole-breaks": say.failHoleBreaksAllowed,
  "no-hinge": say.failNoHingeAllowed,
  "glazing-too-small": say.failGlazingTooSmallAllowed,
};

const REMEDY: FailureMessages = {
  "pages-need-more-leaves": say.failPagesNeedMoreLeavesDoAuthor,
  "no-page": say.failNoPageDoAuthor,
  "plates-after-last-page": say.failPlatesAfterLastPageDoAuthor,
  "too-few-leaves": say.failTooFewLeavesDoAuthor,
  "levels-out-of-order": say.failLevelsOutOfOrderDoAuthor,
  "flap-in-gutter": say.failFlapInGutterDoAuthor,
  "needs-knife": say.failNeedsKnifeDoAuthor,
  "background-shown": say.failBackgroundShownDoAuthor,
  "no-room-for-corners": say.failNoRoomForCornersDoAuthor,
  "nothing-to-show": say.failNothingToShowDoAuthor,
  "opening-too-wide": say.failOpeningTooWideDoAuthor,
  "picture-off-leaf": say.failPictureOffLeafDoAuthor,
  "picture-too-narrow": say.failPictureTooNarrowDoAuthor,
  "picture-too-wide": say.failPictureTooWideDoAuthor,
  "leaves-show-too-little": say.failLeavesShowTooLittleDoAuthor,
  "lost-leaf-outside": say.failLostLeafOutsideDoAuthor,
  "too-few-remain": say.failTooFewRemainDoAuthor,
  "picture-flat": say.failPictureFlatDoAuthor,
  "no-room-for-light": say.failNoRoomForLightDoAuthor,
  "light-near-window": say.failLightNearWindowDoAuthor,
  "outline-hidden": say.failOutlineHiddenDoAuthor,
  "hole-breaks": say.failHoleBreaksDoAuthor,
  "no-hinge": say.failNoHingeDoAuthor,
  "glazing-too-small": say.failGlazingTooSmallDoAuthor,
};
