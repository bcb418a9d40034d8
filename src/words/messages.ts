// Made by `npm run words` from content/words/en: change the messages there.
import type { Word } from "./message.ts";
import { say } from "./speak.ts";

/** {title}: work along */
export const benchTitle = (args: { readonly title: Word }): string => say("bench-title", args);
/** This view follows your work leaf by leaf and needs JavaScript. {table} has every leaf with its marks, cuts and folds. — $table is the link below. */
export const benchNoScript = (args: { readonly table: Word }): string => say("bench-no-script", args);
/** The pattern table */
export const benchNoScriptTable = (): string => say("bench-no-script-table");
/** This kit does not fit the book in this address: {given}; {allowed}. — $why is a whole sentence of its own. */
export const benchMisfit = (args: { readonly given: Word; readonly allowed: Word }): string => say("bench-misfit", args);
/** The kit’s page has the pattern table and the fit panel */
export const benchTableLink = (): string => say("bench-table-link");
/** Back to the kit’s page: — Read aloud before the kit's title, which is the link. */
export const benchHome = (): string => say("bench-home");
/** Keep the screen on — A switch that keeps the device from dimming its screen. */
export const benchAwake = (): string => say("bench-awake");
/** Screen set by device — In place of the switch where the browser cannot do it. */
export const benchAwakeNone = (): string => say("bench-awake-none");
/** Menu */
export const benchMenu = (): string => say("bench-menu");
/** {place} of {count} leaf|{count} leaves to fold */
export const benchPlace = (args: { readonly place: Word; readonly count: number }): string => say("bench-place", args);
/** {count} done */
export const benchDoneCount = (args: { readonly count: Word }): string => say("bench-done-count", args);
/** {worked} worked · estimated {left} left — Working time so far, and what is left. */
export const benchTimeEstimated = (args: { readonly worked: Word; readonly left: Word }): string => say("bench-time-estimated", args);
/** {worked} worked · about {left} left */
export const benchTimeOwnPace = (args: { readonly worked: Word; readonly left: Word }): string => say("bench-time-own-pace", args);
/** {worked} worked · none left */
export const benchTimeNoneLeft = (args: { readonly worked: Word }): string => say("bench-time-none-left", args);
/** {minutes} min */
export const benchMinutes = (args: { readonly minutes: Word }): string => say("bench-minutes", args);
/** {hours} h {minutes} min — $minutes has two digits. */
export const benchHoursMinutes = (args: { readonly hours: Word; readonly minutes: Word }): string => say("bench-hours-minutes", args);
/** The leaf on the bench */
export const benchStage = (): string => say("bench-stage");
/** Book page */
export const benchBookPage = (): string => say("bench-book-page");
/** Leaf */
export const benchLeafLabel = (): string => say("bench-leaf-label");
/** Pattern page */
export const benchPatternPage = (): string => say("bench-pattern-page");
/** leaf {leaf} — In place of the page number, large, on a leaf that has none. */
export const benchBigLeaf = (args: { readonly leaf: Word }): string => say("bench-big-leaf", args);
/** Done */
export const benchDone = (): string => say("bench-done");
/** Folds, head to tail */
export const benchFolds = (): string => say("bench-folds");
/** Border leaf {number} of {count} before the picture|after the picture */
export const benchBorder = (args: { readonly number: Word; readonly count: Word; readonly side: Word }): string => say("bench-border", args);
/** {name}, {place} — A level that the leaf needs, after its number: its name, and the line of the gauge that it is folded at. */
export const benchLevel = (args: { readonly name: Word; readonly place: Word }): string => say("bench-level", args);
/** line {line}, {depth} */
export const benchLine = (args: { readonly line: Word; readonly depth: Word }): string => say("bench-line", args);
/** No marks: fold the whole leaf at level {level} ({place}). */
export const benchNoteWhole = (args: { readonly level: Word; readonly place: Word }): string => say("bench-note-whole", args);
/** First fold the whole leaf at {name} ({place}). Cuts start at that folded edge. */
export const benchNoteStepped = (args: { readonly name: Word; readonly place: Word }): string => say("bench-note-stepped", args);
/** Notch for the light: mark it from {from} to {to}, {depth} deep from the unfolded fore-edge. Cut it after folding. */
export const benchNoteNotch = (args: { readonly from: Word; readonly to: Word; readonly depth: Word }): string => say("bench-note-notch", args);
/** Glue later: {stretches}. — $stretches is a list like “12–34 mm and 50–60 mm”. */
export const benchNoteTacks = (args: { readonly stretches: Word }): string => say("bench-note-tacks", args);
/** {from}–{to} */
export const benchStretch = (args: { readonly from: Word; readonly to: Word }): string => say("bench-stretch", args);
/** front leaf {index} of {count} (leaf {leaf})|end leaf {index} of {count} (leaf {leaf})|plate {index} of {count} after p. {page} (leaf {leaf})|p. {page} (leaf {leaf}) — How a leaf is named in a sentence: by its printed page, or by which unnumbered leaf it is. */
export const benchLeaf = (args: { readonly kind: Word; readonly index: Word; readonly count: Word; readonly leaf: Word; readonly page: Word }): string => say("bench-leaf", args);
/** Leaf {leaf}, front leaf {index} of {count}.|Leaf {leaf}, end leaf {index} of {count}.|Leaf {leaf}, plate {index} of {count} after page {page}.|Leaf {leaf}, page {page}. — The same as the beginning of what is spoken. */
export const benchSpokenLeaf = (args: { readonly kind: Word; readonly leaf: Word; readonly index: Word; readonly count: Word; readonly page: Word }): string => say("bench-spoken-leaf", args);
/** Pattern page {page}. */
export const benchSpokenPatternPage = (args: { readonly page: Word }): string => say("bench-spoken-pattern-page", args);
/** {border}. */
export const benchSpokenBorder = (args: { readonly border: Word }): string => say("bench-spoken-border", args);
/** {count} mark|{count} marks in inches|millimetres from the head: {marks}. */
export const benchSpokenMarks = (args: { readonly count: number; readonly units: Word; readonly marks: Word }): string => say("bench-spoken-marks", args);
/** {at}, cut {cut} */
export const benchSpokenMark = (args: { readonly at: Word; readonly cut: Word }): string => say("bench-spoken-mark", args);
/** Folds from head to tail: {folds}. */
export const benchSpokenFolds = (args: { readonly folds: Word }): string => say("bench-spoken-folds", args);
/** Left out before it: {leaves}. */
export const benchSpokenLeftOut = (args: { readonly leaves: Word }): string => say("bench-spoken-left-out", args);
/** Ticked. */
export const benchSpokenTicked = (): string => say("bench-spoken-ticked");
/** Not ticked. */
export const benchSpokenNotTicked = (): string => say("bench-spoken-not-ticked");
/** Fore-edge of the leaf. {leaf} */
export const benchEdge = (args: { readonly leaf: Word }): string => say("bench-edge", args);
/** head */
export const benchEdgeHead = (): string => say("bench-edge-head");
/** tail */
export const benchEdgeTail = (): string => say("bench-edge-tail");
/** {units} from the head ›cut — Above the marks; the sign stands before the depth of each cut. */
export const benchEdgeMarks = (args: { readonly units: Word }): string => say("bench-edge-marks", args);
/** Back */
export const benchBack = (): string => say("bench-back");
/** Next */
export const benchNext = (): string => say("bench-next");
/** Go on */
export const benchGoOn = (): string => say("bench-go-on");
/** All done */
export const benchAllDone = (): string => say("bench-all-done");
/** Go to a page or leaf */
export const benchOpenJump = (): string => say("bench-open-jump");
/** I skipped, tore or miscut this leaf */
export const benchLose = (): string => say("bench-lose");
/** Cancel */
export const benchCancel = (): string => say("bench-cancel");
/** Close */
export const benchClose = (): string => say("bench-close");
/** Checkpoint: is this page {page}|{leaf}, with no mark|with its first mark at {mark}? */
export const benchCheck = (args: { readonly kind: Word; readonly page: Word; readonly leaf: Word; readonly marks: Word; readonly mark: Word }): string => say("bench-check", args);
/** Yes, that’s right */
export const benchCheckYes = (): string => say("bench-check-yes");
/** No, something is off */
export const benchCheckNo = (): string => say("bench-check-no");
/** Which page is in front of you? */
export const benchCheckReason = (): string => say("bench-check-reason");
/** Batch {number} of {count}: {packing} of packing under the working side. */
export const benchBatch = (args: { readonly number: Word; readonly count: Word; readonly packing: Word }): string => say("bench-batch", args);
/** Batch {number} of {count}: {packing} of packing ({pieces} piece|{pieces} pieces of {size}) under the working side. */
export const benchBatchPieces = (args: { readonly number: Word; readonly count: Word; readonly packing: Word; readonly pieces: number; readonly size: Word }): string => say("bench-batch-pieces", args);
/** {count} leaf|{count} leaves, to {last}. */
export const benchBatchLeaves = (args: { readonly count: number; readonly last: Word }): string => say("bench-batch-leaves", args);
/** Packed, begin */
export const benchBatchBegin = (): string => say("bench-batch-begin");
/** Batch {number} is folded. */
export const benchMeasureGate = (args: { readonly number: Word }): string => say("bench-measure-gate", args);
/** Press its one leaf at the flap and measure it: that tells how far your book will close.|Press its {count} leaves together at the flaps and measure them: that tells how far your book will close. */
export const benchMeasureWhy = (args: { readonly count: number }): string => say("bench-measure-why", args);
/** Measure */
export const benchMeasureNow = (): string => say("bench-measure-now");
/** Not now */
export const benchMeasureLater = (): string => say("bench-measure-later");
/** Left out before this: {leaf}. */
export const benchLeftOutBefore = (args: { readonly leaf: Word }): string => say("bench-left-out-before", args);
/** Put it back in */
export const benchPutBack = (): string => say("bench-put-back");
/** Not ticked before this: {leaves}. — $leaves is a list of one to three leaves. */
export const benchNotTicked = (args: { readonly leaves: Word }): string => say("bench-not-ticked", args);
/** Not ticked before this: {count} leaves, starting with {first}. */
export const benchNotTickedMany = (args: { readonly count: Word; readonly first: Word }): string => say("bench-not-ticked-many", args);
/** Go there */
export const benchGoThere = (): string => say("bench-go-there");
/** They are folded */
export const benchAreFolded = (): string => say("bench-are-folded");
/** The one leaf is folded.|All {count} leaves are folded. */
export const benchEnd = (args: { readonly count: number }): string => say("bench-end", args);
/** Now glue the tacks, and then open the book to a hold width of {width}. */
export const benchEndNext = (args: { readonly width: Word }): string => say("bench-end-next", args);
/** Your flaps push it open to about {width}. */
export const benchEndWider = (args: { readonly width: Word }): string => say("bench-end-wider", args);
/** It is measured at the head, from the folded edge of the first picture leaf to that of the last. */
export const benchHoldWidthMeaning = (): string => say("bench-hold-width-meaning");
/** See {steps}. — $steps is the link below. */
export const benchEndSteps = (args: { readonly steps: Word }): string => say("bench-end-steps", args);
/** the kit’s steps */
export const benchEndStepsLink = (): string => say("bench-end-steps-link");
/** This kit has changed since you began: compare the next leaves with those you have folded. */
export const benchKitChanged = (): string => say("bench-kit-changed");
/** This browser cannot save your progress: save it as a file before you leave. */
export const benchNotSaved = (): string => say("bench-not-saved");
/** The progress saved in this browser cannot be read, so this starts again. {why} — $why is a sentence of progress.ftl. */
export const benchKeptBroken = (args: { readonly why: Word }): string => say("bench-kept-broken", args);
/** Number */
export const benchJumpNumber = (): string => say("bench-jump-number");
/** Go to book page */
export const benchJumpPage = (): string => say("bench-jump-page");
/** Go to leaf */
export const benchJumpLeaf = (): string => say("bench-jump-leaf");
/** Write a whole number. */
export const benchJumpNotWhole = (): string => say("bench-jump-not-whole");
/** Page {page} is not in this book: pages run from 1 to {last}. */
export const benchJumpNoPage = (args: { readonly page: Word; readonly last: Word }): string => say("bench-jump-no-page", args);
/** Leaf {leaf} is not in this book: it has {leaves} leaf|{leaves} leaves. */
export const benchJumpNoLeaf = (args: { readonly leaf: Word; readonly leaves: number }): string => say("bench-jump-no-leaf", args);
/** Page {page} is on leaf {leaf}. */
export const benchJumpPageOnLeaf = (args: { readonly page: Word; readonly leaf: Word }): string => say("bench-jump-page-on-leaf", args);
/** Leaf {leaf} is left out. */
export const benchJumpLeftOut = (args: { readonly leaf: Word }): string => say("bench-jump-left-out", args);
/** Leaf {leaf} stays unfolded: folded leaves run from {first} to {last}. */
export const benchJumpUnfolded = (args: { readonly leaf: Word; readonly first: Word; readonly last: Word }): string => say("bench-jump-unfolded", args);
/** Leave this leaf out? */
export const benchLeaveOutThis = (): string => say("bench-leave-out-this");
/** Leave {leaf} out? */
export const benchLeaveOut = (args: { readonly leaf: Word }): string => say("bench-leave-out", args);
/** Put {leaf} back in? */
export const benchPutLeafBack = (args: { readonly leaf: Word }): string => say("bench-put-leaf-back", args);
/** Leave it out */
export const benchLeaveOutDo = (): string => say("bench-leave-out-do");
/** The rest of the picture is spread over the remaining leaves, so nothing is lost. */
export const benchSpread = (): string => say("bench-spread");
/** The rest of the picture is spread again, with this leaf. */
export const benchSpreadBack = (): string => say("bench-spread-back");
/** No other leaf changes. */
export const benchNoLeafChanges = (): string => say("bench-no-leaf-changes");
/** {count} leaf changes: {first}. All before it keep their marks and ticks.|{count} leaves change, starting with {first}. All before it keep their marks and ticks. */
export const benchLeavesChange = (args: { readonly count: number; readonly first: Word }): string => say("bench-leaves-change", args);
/** {count} of them is ticked and would lose its tick.|{count} of them are ticked and would lose their ticks. Already cut them? Choose Cancel; one missing leaf hardly shows. */
export const benchTicksGo = (args: { readonly count: number }): string => say("bench-ticks-go", args);
/** Fold leaf {leaf} whole, deep enough to vanish behind its neighbours, or cut it away near the gutter. */
export const benchFoldAway = (args: { readonly leaf: Word }): string => say("bench-fold-away", args);
/** Left out: {leaf}. {count} leaf has new marks.|Left out: {leaf}. {count} leaves have new marks. */
export const benchLeftOutNow = (args: { readonly count: number; readonly leaf: Word }): string => say("bench-left-out-now", args);
/** Back in: {leaf}. */
export const benchBackInNow = (args: { readonly leaf: Word }): string => say("bench-back-in-now", args);
/** This leaf cannot be left out: {given}; {allowed}. {remedy}. */
export const benchCannotLeaveOut = (args: { readonly given: Word; readonly allowed: Word; readonly remedy: Word }): string => say("bench-cannot-leave-out", args);
/** The picture cannot close over it: {given}; {allowed}. */
export const benchCannotClose = (args: { readonly given: Word; readonly allowed: Word }): string => say("bench-cannot-close", args);
/** Before */
export const benchBefore = (): string => say("bench-before");
/** After */
export const benchAfter = (): string => say("bench-after");
/** The front before */
export const benchFrontBefore = (): string => say("bench-front-before");
/** The front after */
export const benchFrontAfter = (): string => say("bench-front-after");
/** Measure the first batch */
export const benchMeasureTitle = (): string => say("bench-measure-title");
/** Press the folded leaves together where the flaps lie, and measure how thick they are. The kit can only estimate how much a springy fold adds; your own batch tells. */
export const benchMeasureLead = (): string => say("bench-measure-lead");
/** Folded leaves */
export const benchMeasureLeaves = (): string => say("bench-measure-leaves");
/** Thickness */
export const benchMeasureThickness = (): string => say("bench-measure-thickness");
/** Save */
export const benchMeasureSave = (): string => say("bench-measure-save");
/** Allowed: 2 to {most} leaf.|Allowed: 2 to {most} leaves. */
export const benchMeasureCountAllowed = (args: { readonly most: number }): string => say("bench-measure-count-allowed", args);
/** Allowed: a length like 3/8 or 9.5 mm.|Allowed: a length like 9.5 or 3/8 in. */
export const benchMeasureLengthAllowed = (args: { readonly units: Word }): string => say("bench-measure-length-allowed", args);
/** Allowed: {least} to {most}. {count} leaves of this book are {least} before they are folded. — $count is at least 2. */
export const benchMeasureThicknessAllowed = (args: { readonly least: Word; readonly most: Word; readonly count: Word }): string => say("bench-measure-thickness-allowed", args);
/** Each flap is as bulky as {bulk} leaves. */
export const benchFlapBulk = (args: { readonly bulk: Word }): string => say("bench-flap-bulk", args);
/** Folded, the book rests at about {rest}°. The picture needs {opening}°, a hold width of {width}. */
export const benchRests = (args: { readonly rest: Word; readonly opening: Word; readonly width: Word }): string => say("bench-rests", args);
/** Your book closes far enough for it. */
export const benchHolds = (): string => say("bench-holds");
/** Your flaps push it wider, to about {width}. To hold it at the picture’s opening, press the folds harder and tie the book while it settles. */
export const benchPushes = (args: { readonly width: Word }): string => say("bench-pushes", args);
/** Lengths in */
export const benchUnits = (): string => say("bench-units");
/** millimetres */
export const benchMillimetres = (): string => say("bench-millimetres");
/** inches */
export const benchInches = (): string => say("bench-inches");
/** Leaves left out */
export const benchLeftOutTitle = (): string => say("bench-left-out-title");
/** none */
export const benchLeftOutNone = (): string => say("bench-left-out-none");
/** Put back in */
export const benchPutBackShort = (): string => say("bench-put-back-short");
/** Put {leaf} back in — Read aloud for the button above. */
export const benchPutBackLeaf = (args: { readonly leaf: Word }): string => say("bench-put-back-leaf", args);
/** Progress */
export const benchProgressTitle = (): string => say("bench-progress-title");
/** It is saved in this browser, for this kit in this book. A file takes it to another device. */
export const benchProgressLead = (): string => say("bench-progress-lead");
/** Save as a file */
export const benchSaveFile = (): string => say("bench-save-file");
/** Open a saved file */
export const benchOpenFile = (): string => say("bench-open-file");
/** Start again */
export const benchStartAgain = (): string => say("bench-start-again");
/** Clear {count} tick and start this book again?|Clear all {count} ticks and start this book again? */
export const benchStartAgainSure = (args: { readonly count: number }): string => say("bench-start-again-sure", args);
/** {file} is opened: {count} leaf ticked.|{file} is opened: {count} leaves ticked. */
export const benchFileOpened = (args: { readonly count: number; readonly file: Word }): string => say("bench-file-opened", args);
/** {file} cannot be opened. {why} — $why is a sentence of progress.ftl. */
export const benchFileRefused = (args: { readonly file: Word; readonly why: Word }): string => say("bench-file-refused", args);
/** {file} cannot be opened. The leaves that it leaves out do not fit this book: {given}; {allowed}. */
export const benchFileMisfit = (args: { readonly file: Word; readonly given: Word; readonly allowed: Word }): string => say("bench-file-misfit", args);
/** {link} and open the file there. — Follows where a file belongs to this kit on another book; $link is the link below. */
export const benchFileElsewhere = (args: { readonly link: Word }): string => say("bench-file-elsewhere", args);
/** Go to that book */
export const benchFileElsewhereLink = (): string => say("bench-file-elsewhere-link");
/** Keys */
export const benchKeysTitle = (): string => say("bench-keys-title");
/** Space or Enter: done, or yes. Arrows: next and back. Backspace: back. A swipe moves too. */
export const benchKeys = (): string => say("bench-keys");
/** Find a kit for my book */
export const finderSummaryKits = (): string => say("finder-summary-kits");
/** My book’s measurements */
export const finderSummaryClass = (): string => say("finder-summary-class");
/** Measure the book on your shelf. Each kit of this class|Each kit below is worked out for it. Those that fit come first, and their pages open for your book. */
export const finderLead = (args: { readonly page: Word }): string => say("finder-lead", args);
/** My book */
export const finderBook = (): string => say("finder-book");
/** Numbers without a unit are */
export const finderUnits = (): string => say("finder-units");
/** millimetres */
export const finderMillimetres = (): string => say("finder-millimetres");
/** inches */
export const finderInches = (): string => say("finder-inches");
/** Use my saved book */
export const finderUseSaved = (): string => say("finder-use-saved");
/** Remember this book */
export const finderRemember = (): string => say("finder-remember");
/** The work */
export const finderWork = (): string => say("finder-work");
/** Hours, at most */
export const finderHours = (): string => say("finder-hours");
/** An estimate for the whole piece, such as 6 or 2.5. */
export const finderHoursHelp = (): string => say("finder-hours-help");
/** a number of hours, 0.25 to 999 */
export const finderHoursAllowed = (): string => say("finder-hours-allowed");
/** Levels */
export const finderLevels = (): string => say("finder-levels");
/** any number */
export const finderLevelsAny = (): string => say("finder-levels-any");
/** Light */
export const finderLight = (): string => say("finder-light");
/** with or without */
export const finderLightAny = (): string => say("finder-light-any");
/** with a light */
export const finderLightWith = (): string => say("finder-light-with");
/** without a light */
export const finderLightWithout = (): string => say("finder-light-without");
/** Fit */
export const finderFit = (): string => say("finder-fit");
/** all kits */
export const finderFitAny = (): string => say("finder-fit-any");
/** fits, also with a change */
export const finderFitChange = (): string => say("finder-fit-change");
/** fits as it is */
export const finderFitOwn = (): string => say("finder-fit-own");
/** Applies once you enter a measurement. */
export const finderFitHelp = (): string => say("finder-fit-help");
/** Order */
export const finderOrder = (): string => say("finder-order");
/** best first */
export const finderOrderBest = (): string => say("finder-order-best");
/** title */
export const finderOrderTitle = (): string => say("finder-order-title");
/** hours */
export const finderOrderHours = (): string => say("finder-order-hours");
/** fit */
export const finderOrderFit = (): string => say("finder-order-fit");
/** Start again */
export const finderStartAgain = (): string => say("finder-start-again");
/** No kit matches these choices. */
export const finderEmpty = (): string => say("finder-empty");
/** Clear the choices, keep my book */
export const finderClearChoices = (): string => say("finder-clear-choices");
/** Show all kits */
export const finderShowAll = (): string => say("finder-show-all");
/** This book is saved in this browser. Every kit offers it. */
export const finderSaved = (): string => say("finder-saved");
/** This browser cannot save your book. */
export const finderNotSaved = (): string => say("finder-not-saved");
/** Working out {count} kit for your book …|Working out {count} kits for your book … */
export const finderWorking = (args: { readonly count: number }): string => say("finder-working", args);
/** The marked field cannot be read and is left out. */
export const finderWrongField = (): string => say("finder-wrong-field");
/** {count} kit|{count} kits */
export const finderAllKits = (args: { readonly count: number }): string => say("finder-all-kits", args);
/** {shown} of {count} kit|{shown} of {count} kits — $shown of $count kits. */
export const finderSomeKits = (args: { readonly count: number; readonly shown: Word }): string => say("finder-some-kits", args);
/** {kits}. */
export const finderKits = (args: { readonly kits: Word }): string => say("finder-kits", args);
/** {kits}: {verdicts}. — $verdicts is a list of the four phrases that follow. */
export const finderKitsVerdicts = (args: { readonly kits: Word; readonly verdicts: Word }): string => say("finder-kits-verdicts", args);
/** {count} fits your book as it is|{count} fit your book as they are */
export const finderCountOwn = (args: { readonly count: number }): string => say("finder-count-own", args);
/** {count} fits with a change|{count} fit with a change */
export const finderCountChange = (args: { readonly count: number }): string => say("finder-count-change", args);
/** {count} does not fit|{count} do not fit */
export const finderCountNo = (args: { readonly count: number }): string => say("finder-count-no", args);
/** {count} could not be checked|{count} could not be checked */
export const finderCountUnknown = (args: { readonly count: number }): string => say("finder-count-unknown", args);
/** For {figures}, each kit’s own book stands in until you enter yours. — $figures is a list of the four names that follow. */
export const finderMissing = (args: { readonly figures: Word }): string => say("finder-missing", args);
/** leaf height */
export const finderLeafHeight = (): string => say("finder-leaf-height");
/** leaf width */
export const finderLeafWidth = (): string => say("finder-leaf-width");
/** thickness */
export const finderThickness = (): string => say("finder-thickness");
/** leaves */
export const finderLeaves = (): string => say("finder-leaves");
/** Fits so far */
export const finderFitsSoFar = (): string => say("finder-fits-so-far");
/** Fits as it is */
export const finderFitsOwn = (): string => say("finder-fits-own");
/** Fits with a change */
export const finderFitsChange = (): string => say("finder-fits-change");
/** Does not fit */
export const finderFitsNot = (): string => say("finder-fits-not");
/** Not checked */
export const finderNotChecked = (): string => say("finder-not-checked");
/** About {hours} in your book. */
export const finderTime = (args: { readonly hours: Word }): string => say("finder-time", args);
/** It could not be worked out. */
export const finderFailed = (): string => say("finder-failed");
/** It fits. This page is now worked out for your book. */
export const fitPanelFits = (): string => say("fit-panel-fits");
/** This page shows the kit’s own book. */
export const fitPanelOwn = (): string => say("fit-panel-own");
/** The picture now begins {head} from the head, so that it fits on your leaf. */
export const fitPanelMoved = (args: { readonly head: Word }): string => say("fit-panel-moved", args);
/** The marked field is not a measurement. The kit’s own figure is used until you correct it. */
export const fitPanelWrongField = (): string => say("fit-panel-wrong-field");
/** It does not fit this book: {given}; {allowed}. What would help: {remedy}. */
export const fitPanelMisfit = (args: { readonly given: Word; readonly allowed: Word; readonly remedy: Word }): string => say("fit-panel-misfit", args);
/** This book is saved in this browser. Other kits offer it. */
export const fitPanelSaved = (): string => say("fit-panel-saved");
/** This browser cannot save your book. Bookmark this page instead. */
export const fitPanelNotSaved = (): string => say("fit-panel-not-saved");
/** The page still shows the kit’s own book. */
export const fitPanelStillOwn = (): string => say("fit-panel-still-own");
/** This kit has no such file for your book. */
export const fitPanelNoFile = (): string => say("fit-panel-no-file");
/** Allowed: {allowed}. — Below a field whose text cannot be taken. */
export const fitPanelAllowed = (args: { readonly allowed: Word }): string => say("fit-panel-allowed", args);
/** The kit’s data could not be loaded. */
export const loadKitData = (): string => say("load-kit-data");
/** What makes the files could not be loaded. */
export const loadFileMaker = (): string => say("load-file-maker");
/** The view could not be fetched. The front picture above shows the same book. Press again to try once more. */
export const loadRound = (): string => say("load-round");
/** On this device: works offline. */
export const offlineKit = (): string => say("offline-kit");
/** On this device with its packet: works offline. */
export const offlineKitAndPacket = (): string => say("offline-kit-and-packet");
/** Save the packet on this device */
export const offlineKeepPacket = (): string => say("offline-keep-packet");
/** Saving the packet … */
export const offlineKeeping = (): string => say("offline-keeping");
/** on this device — On a kit's card in the catalogue. */
export const offlineTag = (): string => say("offline-tag");
/** Not all of it could be saved on this device. {why} — $why is one of the sentences that follow. */
export const offlineNotAll = (args: { readonly why: Word }): string => say("offline-not-all", args);
/** {path} is not there. */
export const offlineAbsent = (args: { readonly path: Word }): string => say("offline-absent", args);
/** {path} is of another version. */
export const offlineOtherVersion = (args: { readonly path: Word }): string => say("offline-other-version", args);
/** This version has no kit “{kit}”. */
export const offlineNoKit = (args: { readonly kit: Word }): string => say("offline-no-kit", args);
/** There is no room left. */
export const offlineFull = (): string => say("offline-full");
/** The site could not be reached. */
export const offlineUnreachable = (): string => say("offline-unreachable");
/** A newer version is ready. */
export const offlineNewer = (): string => say("offline-newer");
/** Reload */
export const offlineReload = (): string => say("offline-reload");
/** Later */
export const offlineLater = (): string => say("offline-later");
/** It is not JSON: it may be cut short, or another kind of file. */
export const progressNotJson = (): string => say("progress-not-json");
/** It is not a progress file of this version: its schema is {given}, not {expected}. */
export const progressOtherSchema = (args: { readonly given: Word; readonly expected: Word }): string => say("progress-other-schema", args);
/** It belongs to the kit “{kit}”, and this is “{wanted}”. */
export const progressOtherKit = (args: { readonly kit: Word; readonly wanted: Word }): string => say("progress-other-kit", args);
/** It belongs to this kit on another book or fit. */
export const progressOtherFit = (): string => say("progress-other-fit");
/** {place} has leaf {leaf} twice. */
export const progressTwice = (args: { readonly place: Word; readonly leaf: Word }): string => say("progress-twice", args);
/** {place} is {given}, but must be an object|a list|text|a whole number from 1 to 5000|a number above 0|a number of 0 or more. — $place is where it stands in the file, like ticks[0]. */
export const progressWrongValue = (args: { readonly place: Word; readonly given: Word; readonly allowed: Word }): string => say("progress-wrong-value", args);
/** missing — In place of a value that is not there. */
export const progressMissing = (): string => say("progress-missing");
/** The file — The place of the file itself. */
export const progressWholeFile = (): string => say("progress-whole-file");
/** Fetching the view … */
export const roundFetching = (): string => say("round-fetching");
/** Close the view */
export const roundClose = (): string => say("round-close");
/** This browser cannot draw in three dimensions: WebGL is missing or off. The front picture above shows the same book. */
export const roundNotDrawn = (): string => say("round-not-drawn");
/** Seen from the front|behind|{turn}° to the left|{turn}° to the right|, {tilt}° above|, {tilt}° below|, at {near}%. */
export const roundSeen = (args: { readonly around: Word; readonly turn: Word; readonly height: Word; readonly tilt: Word; readonly zoom: Word; readonly near: Word }): string => say("round-seen", args);
/** Opening {opening}°, the kit’s own|. */
export const roundOpening = (args: { readonly opening: Word; readonly whose: Word }): string => say("round-opening", args);
/** The picture is {width} wide along its front|The picture is {width} wide, its true shape.|, {share}% wider than true: a circle becomes a wide oval.|, {share}% narrower than true: a circle becomes a tall oval. */
export const roundWidth = (args: { readonly measured: Word; readonly width: Word; readonly shape: Word; readonly share: Word }): string => say("round-width", args);
/** The folded leaves hold this book open to about {angle}° or more. */
export const roundResting = (args: { readonly angle: Word }): string => say("round-resting", args);
/** The window is cut for the kit’s own opening and does not fit here.|and is left out here. */
export const roundWindow = (args: { readonly shown: Word }): string => say("round-window", args);
/** closed|open {angle}° */
export const roundDoor = (args: { readonly state: Word; readonly angle: Word }): string => say("round-door", args);
/** {level} {name} — In the legend of colours: the level's number and name. */
export const roundLevel = (args: { readonly level: Word; readonly name: Word }): string => say("round-level", args);
/** mm */
export const unitMm = (): string => say("unit-mm");
/** in */
export const unitIn = (): string => say("unit-in");
/** m */
export const unitM = (): string => say("unit-m");
/** ft */
export const unitFt = (): string => say("unit-ft");
/** {angle}° */
export const unitDegree = (args: { readonly angle: Word }): string => say("unit-degree", args);
/** {share}% */
export const unitPercent = (args: { readonly share: Word }): string => say("unit-percent", args);
