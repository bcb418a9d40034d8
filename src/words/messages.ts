// Made by `npm run words` from content/words/en: change the messages there.
import type { Word } from "./message.ts";
import { say } from "./speak.ts";

/** {at}: fold the corner above it|{at}: fold the corner below it — A line for each crease, in the order of the hands; $at is the mark, such as 52 mm. */
export const benchCornerFold = (args: { readonly corner: Word; readonly at: Word }): string => say("bench-corner-fold", args);
/** {at}: fold the corner above it, from the mark to {end} on the head edge|{at}: fold the corner below it, from the mark to {end} on the tail edge — The same for a crease that is steeper than 45°; $end is a distance from the fore-edge. */
export const benchCornerFoldTo = (args: { readonly corner: Word; readonly at: Word; readonly end: Word }): string => say("bench-corner-fold-to", args);
/** The picture meets this leaf {of} times. It shows strip {which}, counted from the head; its neighbours show the others. — $which counts from the head. */
export const benchCornerTurn = (args: { readonly of: Word; readonly which: Word }): string => say("bench-corner-turn", args);
/** No marks: fold the whole leaf over the folding card, {depth} from the fore-edge. */
export const benchCornerWhole = (args: { readonly depth: Word }): string => say("bench-corner-whole", args);
/** Both corners go to one mark. */
export const benchCornerMiddle = (): string => say("bench-corner-middle");
/** Only one corner is folded: the picture reaches the head|tail. */
export const benchCornerOne = (args: { readonly edge: Word }): string => say("bench-corner-one", args);
/** The picture fills the whole fore-edge: nothing is folded on this leaf. */
export const benchCornerNone = (): string => say("bench-corner-none");
/** {units} from the head — Above the marks in the drawing. */
export const benchCornerMarks = (args: { readonly units: Word }): string => say("bench-corner-marks", args);
/** Mark {at}: fold the corner above it.|Mark {at}: fold the corner below it. */
export const benchCornerHeardFold = (args: { readonly corner: Word; readonly at: Word }): string => say("bench-corner-heard-fold", args);
/** Mark {at}: fold the corner above it, to {end} on the head edge.|Mark {at}: fold the corner below it, to {end} on the tail edge. */
export const benchCornerHeardFoldTo = (args: { readonly corner: Word; readonly at: Word; readonly end: Word }): string => say("bench-corner-heard-fold-to", args);
/** No marks. Fold the whole leaf over the folding card. */
export const benchCornerHeardWhole = (): string => say("bench-corner-heard-whole");
/** I skipped, tore or spoilt this leaf */
export const benchCornerLose = (): string => say("bench-corner-lose");
/** A corner that lies at a wrong mark needs none of this: unfold it, smooth it, and fold it again. */
export const benchCornerUnfold = (): string => say("bench-corner-unfold");
/** {count} of them is ticked and would lose its tick: its corners are folded anew.|{count} of them are ticked and would lose their ticks: their corners are folded anew. */
export const benchCornerTicksGo = (args: { readonly count: number }): string => say("bench-corner-ticks-go", args);
/** Fold leaf {leaf} whole, deep enough to vanish behind its neighbours. */
export const benchCornerFoldAway = (args: { readonly leaf: Word }): string => say("bench-corner-fold-away", args);
/** Press the first picture leaf|{leaves} picture leaves together {at} from the head and {depth} from the fore-edge, and measure how thick they are there. — $at and $depth say where most of them have a flap. */
export const benchCornerMeasureLead = (args: { readonly leaves: number; readonly at: Word; readonly depth: Word }): string => say("bench-corner-measure-lead", args);
/** One of them has a flap there, and the kit counts with that.|{flaps} of them have a flap there, and the kit counts with that. */
export const benchCornerMeasureFlaps = (args: { readonly flaps: number }): string => say("bench-corner-measure-flaps", args);
/** Mark {mark} of {count}: {at}, on a line|between {below} and {above}. — $at is a height such as 56.5 mm; on a line of her ruler, or between two. */
export const benchRulerMark = (args: { readonly mark: Word; readonly count: Word; readonly at: Word; readonly where: Word; readonly below: Word; readonly above: Word }): string => say("bench-ruler-mark", args);
/** Enlarged, not at true size: find the line on your own ruler. */
export const benchRulerNote = (): string => say("bench-ruler-note");
/** Mark before */
export const benchRulerBefore = (): string => say("bench-ruler-before");
/** Next mark */
export const benchRulerNext = (): string => say("bench-ruler-next");
/** Finest lines of your ruler — In the menu: how far the finest lines of her ruler are apart. */
export const benchRulerFinest = (): string => say("bench-ruler-finest");
/** Do not show a ruler */
export const benchRulerOff = (): string => say("bench-ruler-off");
/** Read each leaf aloud */
export const benchVoice = (): string => say("bench-voice");
/** Say again */
export const benchVoiceAgain = (): string => say("bench-voice-again");
/** R says it again, M tells the next mark. — Told in the menu; R and M are keys. */
export const benchVoiceKeys = (): string => say("bench-voice-keys");
/** Page {page}. */
export const benchHeardPage = (args: { readonly page: Word }): string => say("bench-heard-page", args);
/** Border leaf. */
export const benchHeardBorder = (): string => say("bench-heard-border");
/** One mark|{count} marks from the head, in inches|millimetres. */
export const benchHeardMarks = (args: { readonly count: number; readonly units: Word }): string => say("bench-heard-marks", args);
/** {at}, cut {cut}. */
export const benchHeardCut = (args: { readonly at: Word; readonly cut: Word }): string => say("bench-heard-cut", args);
/** Fold back and tuck behind, head to tail: {folds}. */
export const benchHeardFolds = (args: { readonly folds: Word }): string => say("bench-heard-folds", args);
/** No marks. Fold the whole leaf back at level {level}, {name}. */
export const benchHeardWhole = (args: { readonly level: Word; readonly name: Word }): string => say("bench-heard-whole", args);
/** Notch for the light: from {from} to {to}, {depth} deep. */
export const benchHeardNotch = (args: { readonly from: Word; readonly to: Word; readonly depth: Word }): string => say("bench-heard-notch", args);
/** Mark {mark} of {count}: {at}, cut {cut}. */
export const benchHeardMark = (args: { readonly mark: Word; readonly count: Word; readonly at: Word; readonly cut: Word }): string => say("bench-heard-mark", args);
/** Above it fold back at level {above}, below it at level {below}. — What lies above and below a mark; the numbers are levels. */
export const benchHeardBeside = (args: { readonly above: Word; readonly below: Word }): string => say("bench-heard-beside", args);
/** {whole} and {fraction} — An inch length: $whole inches and a fraction such as “13 sixteenths”. */
export const benchHeardInches = (args: { readonly whole: Word; readonly fraction: Word }): string => say("bench-heard-inches", args);
/** one half|one quarter|{parts} quarters|one eighth|{parts} eighths|one sixteenth|{parts} sixteenths|one thirty-second|{parts} thirty-seconds */
export const benchHeardFraction = (args: { readonly divisor: number; readonly parts: number }): string => say("bench-heard-fraction", args);
/** With busy hands */
export const benchHandsTitle = (): string => say("bench-hands-title");
/** A tap anywhere goes on */
export const benchTap = (): string => say("bench-tap");
/** Undo */
export const benchTapUndo = (): string => say("bench-tap-undo");
/** Arrow keys tick, too */
export const benchPedal = (): string => say("bench-pedal");
/** For a pedal that sends arrows. One that sends page keys needs nothing. */
export const benchPedalLead = (): string => say("bench-pedal-lead");
/** {worked} ({sitting} this time) — In place of the working time where it is not the first evening; $sitting is the part of it since the last long break. */
export const benchTimesSitting = (args: { readonly worked: Word; readonly sitting: Word }): string => say("bench-times-sitting", args);
/** Stop at {time}: about {leaf}, {count} leaf|{count} leaves from here, at your pace|by the estimate. — $leaf is a leaf in words, such as “p. 151 (leaf 87)”. */
export const benchStopLeaf = (args: { readonly time: Word; readonly leaf: Word; readonly count: number; readonly by: Word }): string => say("bench-stop-leaf", args);
/** Stop at {time}: too soon for another leaf. */
export const benchStopNoLeaf = (args: { readonly time: Word }): string => say("bench-stop-no-leaf", args);
/** Stop at {time}: all may be done by then. */
export const benchStopEnd = (args: { readonly time: Word }): string => say("bench-stop-end", args);
/** You wanted to stop at {time}. */
export const benchStopPast = (args: { readonly time: Word }): string => say("bench-stop-past", args);
/** {step}: dry at about {time}, in {left}. — $step is a step in words, $time a time of day such as 14:35 or Monday 08:20, $left a time such as 22 min. */
export const benchDrying = (args: { readonly step: Word; readonly time: Word; readonly left: Word }): string => say("bench-drying", args);
/** Dry at about {time}. — Spoken as something begins to dry. */
export const benchDriesSpoken = (args: { readonly time: Word }): string => say("bench-dries-spoken", args);
/** Dry now: {steps}. — $steps is a list of steps in words. */
export const benchDry = (args: { readonly steps: Word }): string => say("bench-dry", args);
/** This evening */
export const benchStopTitle = (): string => say("bench-stop-title");
/** Stop at */
export const benchStopAt = (): string => say("bench-stop-at");
/** No set time */
export const benchStopClear = (): string => say("bench-stop-clear");
/** The bench tells how far you come by then. */
export const benchStopLead = (): string => say("bench-stop-lead");
/** A quiet tone when glue is dry or it is time to stop */
export const benchTone = (): string => say("bench-tone");
/** {title}: work along */
export const benchTitle = (args: { readonly title: Word }): string => say("bench-title", args);
/** This view follows your work leaf by leaf and needs JavaScript. {table} has every leaf with its marks, cuts and folds. — $table is the link below. */
export const benchNoScript = (args: { readonly table: Word }): string => say("bench-no-script", args);
/** The pattern table */
export const benchNoScriptTable = (): string => say("bench-no-script-table");
/** This kit does not fit the book in this address. {why} — $why is a whole sentence of its own. */
export const benchMisfit = (args: { readonly why: Word }): string => say("bench-misfit", args);
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
/** Step {place} of {count} beside the leaves — In place of the line above where a step lies on the bench, such as making the gauge. */
export const benchStepPlace = (args: { readonly place: Word; readonly count: Word }): string => say("bench-step-place", args);
/** {worked} worked · estimated {left} left, {first} for a first piece — Working time so far, and what is left (unknown: only steps without an estimate); $first is the same for a maker who has made none before. */
export const benchTimeEstimated = (args: { readonly worked: Word; readonly left: Word; readonly first: Word }): string => say("bench-time-estimated", args);
/** {worked} worked · about {left} left */
export const benchTimeOwnPace = (args: { readonly worked: Word; readonly left: Word }): string => say("bench-time-own-pace", args);
/** {worked} worked */
export const benchTimeUnknown = (args: { readonly worked: Word }): string => say("bench-time-unknown", args);
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
/** Tack at the end of the batch: {stretches}. — $stretches is a list like “12–34 mm and 50–60 mm”. */
export const benchNoteTacks = (args: { readonly stretches: Word }): string => say("bench-note-tacks", args);
/** {from}–{to} */
export const benchStretch = (args: { readonly from: Word; readonly to: Word }): string => say("bench-stretch", args);
/** {step} ({of}) — A step in a sentence, with what it is done to: a line, or a batch. */
export const benchStepOf = (args: { readonly step: Word; readonly of: Word }): string => say("bench-step-of", args);
/** See this step on the kit’s page — What a step of one batch belongs to. */
export const benchStepPage = (): string => say("bench-step-page");
/** Batch {number} of {count} */
export const benchOfBatch = (args: { readonly number: Word; readonly count: Word }): string => say("bench-of-batch", args);
/** Notch for the light */
export const benchNotch = (): string => say("bench-notch");
/** Tack loose flaps */
export const benchTack = (): string => say("bench-tack");
/** {from}–{to}, {depth} deep */
export const benchNotchPlace = (args: { readonly from: Word; readonly to: Word; readonly depth: Word }): string => say("bench-notch-place", args);
/** Level {number}: {level} — $level is like “wall, line 3, 26 mm”. */
export const benchScoreLevel = (args: { readonly number: Word; readonly level: Word }): string => say("bench-score-level", args);
/** On one leaf: {first}.|On {count} leaves, from {first} to {last}. — A line is pressed on these leaves; $first and $last are leaves in words. */
export const benchScoreRun = (args: { readonly count: number; readonly first: Word; readonly last: Word }): string => say("bench-score-run", args);
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
/** The front in small: {done} of {count} leaves are folded. You are at {percent}% of its width from the left. — What the drawing shows, for those who do not see it: folded leaves are strong, all others pale, a line stands at this leaf. */
export const benchFrontNow = (args: { readonly done: Word; readonly count: Word; readonly percent: Word }): string => say("bench-front-now", args);
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
/** Press its one leaf at the flap and measure it: that shows how far your book will close.|Press its {count} leaves together at the flaps and measure them: that shows how far your book will close. */
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
/** Not done before this: {steps}. — $steps is a list of one to three steps. */
export const benchNotDone = (args: { readonly steps: Word }): string => say("bench-not-done", args);
/** Not done before this: {count} steps, starting with {first}. */
export const benchNotDoneMany = (args: { readonly count: Word; readonly first: Word }): string => say("bench-not-done-many", args);
/** They are done */
export const benchAreDone = (): string => say("bench-are-done");
/** The one leaf is folded.|All {count} leaves are folded. */
export const benchEnd = (args: { readonly count: number }): string => say("bench-end", args);
/** All other work is done, too. */
export const benchEndRest = (): string => say("bench-end-rest");
/** Your flaps push it wider, to about {width}. — Where the book is opened to its hold width; $width is wider than that. */
export const benchWider = (args: { readonly width: Word }): string => say("bench-wider", args);
/** It is measured at the head, from the folded edge of the first picture leaf to that of the last. */
export const benchHoldWidthMeaning = (): string => say("bench-hold-width-meaning");
/** This kit has changed since you began: compare the next leaves with those you have folded. */
export const benchKitChanged = (): string => say("bench-kit-changed");
/** This browser cannot save your progress: save it as a file before you leave. */
export const benchNotSaved = (): string => say("bench-not-saved");
/** The progress saved in this browser cannot be read, so you are starting again. {why} — $why is a sentence of progress.ftl. */
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
/** This leaf cannot be left out. {why} {remedy} */
export const benchCannotLeaveOut = (args: { readonly why: Word; readonly remedy: Word }): string => say("bench-cannot-leave-out", args);
/** The picture cannot close over it. {why} */
export const benchCannotClose = (args: { readonly why: Word }): string => say("bench-cannot-close", args);
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
/** Press the folded leaves together where the flaps lie, and measure how thick they are. The kit can only estimate how much a springy fold adds; your own batch shows it. */
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
/** This piece is saved in this browser. A file takes it to another device. Open such a file under “My pieces”. */
export const benchProgressLead = (): string => say("bench-progress-lead");
/** Save as a file */
export const benchSaveFile = (): string => say("bench-save-file");
/** Start again */
export const benchStartAgain = (): string => say("bench-start-again");
/** Clear the tick of {count} leaf and of all other work, and start this piece again?|Clear the ticks of {count} leaves and of all other work, and start this piece again? */
export const benchStartAgainSure = (args: { readonly count: number }): string => say("bench-start-again-sure", args);
/** Keys */
export const benchKeysTitle = (): string => say("bench-keys-title");
/** Space, Enter or Page Down: done, or yes. Arrows: next and back. Backspace or Page Up: back. A swipe moves too. */
export const benchKeys = (): string => say("bench-keys");
/** {class}: {session} — An entry of a calendar: the class and one of its sessions. */
export const calendarSession = (args: { readonly class: Word; readonly session: Word }): string => say("calendar-session", args);
/** A class on {date}, {place}. — Summary of a class in the feed; $date is the day of its first session. */
export const feedClass = (args: { readonly date: Word; readonly place: Word }): string => say("feed-class", args);
/** Put the dates into your calendar — A link to a file that calendars open. */
export const classCalendar = (): string => say("class-calendar");
/** the folder of another class, that takes nothing over from this one: {classes} — $classes: names of folders. */
export const frontAClass = (args: { readonly classes: Word }): string => say("front-a-class", args);
/** the class’s day, {date}, or one before it — $date as it stands in the file: 2027-01-14. */
export const frontAnnouncedBefore = (args: { readonly date: Word }): string => say("front-announced-before", args);
/** state the day on which you make the class known */
export const frontCorrectAnnounced = (): string => say("front-correct-announced");
/** Kits */
export const catalogueKits = (): string => say("catalogue-kits");
/** Classes */
export const catalogueClasses = (): string => say("catalogue-classes");
/** Past classes — Those that are over. */
export const cataloguePast = (): string => say("catalogue-past");
/** {count} level|{count} levels — On a kit's card. */
export const catalogueLevels = (args: { readonly count: number }): string => say("catalogue-levels", args);
/** {count} leaf|{count} leaves */
export const catalogueLeaves = (args: { readonly count: number }): string => say("catalogue-leaves", args);
/** without a knife — On the card of a kit whose leaves are folded by their corners. */
export const catalogueKnifeFree = (): string => say("catalogue-knife-free");
/** about {hours} */
export const catalogueHours = (args: { readonly hours: Word }): string => say("catalogue-hours", args);
/** {date} · {place} — A class's day and place. */
export const catalogueClass = (args: { readonly date: Word; readonly place: Word }): string => say("catalogue-class", args);
/** There is no kit yet. Make a folder under {folder} with {file} and a picture; the {guide} says what goes into it. — Told to the site's author; $folder and $file are names of files, $guide is a link. */
export const catalogueEmpty = (args: { readonly folder: Word; readonly file: Word; readonly guide: Word }): string => say("catalogue-empty", args);
/** guide — The link in the message above. */
export const catalogueGuide = (): string => say("catalogue-guide");
/** {place}  {field}: {given}; allowed: {allowed}; do: {remedy} — $place: file, line and column. $field: the field as it stands in the file. $given, $allowed and $remedy: messages of these files. */
export const checkMessage = (args: { readonly place: Word; readonly field: Word; readonly given: Word; readonly allowed: Word; readonly remedy: Word }): string => say("check-message", args);
/** front matter */
export const checkFieldFrontMatter = (): string => say("check-field-front-matter");
/** settings */
export const checkFieldSettings = (): string => say("check-field-settings");
/** cautions */
export const checkFieldCautions = (): string => say("check-field-cautions");
/** books table */
export const checkFieldBooks = (): string => say("check-field-books");
/** picture */
export const checkFieldPicture = (): string => say("check-field-picture");
/** motif */
export const checkFieldMotif = (): string => say("check-field-motif");
/** class folder|kit folder */
export const checkFieldFolder = (args: { readonly kind: Word }): string => say("check-field-folder", args);
/** environment — In place of a file. */
export const checkEnvironment = (): string => say("check-environment");
/** not given */
export const checkNotGiven = (): string => say("check-not-given");
/** given {value} — $value as it stands in the file. */
export const checkGiven = (args: { readonly value: Word }): string => say("check-given", args);
/** given {count} characters: {value} — $value: how the text begins. */
export const checkGivenLong = (args: { readonly count: Word; readonly value: Word }): string => say("check-given-long", args);
/** given {value}, which is {length} mm, outside {least} to {most} mm — Lengths as they are typed. */
export const checkGivenOutside = (args: { readonly value: Word; readonly length: Word; readonly least: Word; readonly most: Word }): string => say("check-given-outside", args);
/** given {value}, which has the unit "{unit}" */
export const checkGivenUnit = (args: { readonly value: Word; readonly unit: Word }): string => say("check-given-unit", args);
/** given {value}, which has a comma: use a point|has no unit|is not a finite number|divides by zero|is more than the address of a folder|is as long as the session|is not a length */
export const checkGivenFault = (args: { readonly value: Word; readonly fault: Word }): string => say("check-given-fault", args);
/** unknown key "{key}" */
export const checkUnknownKey = (args: { readonly key: Word }): string => say("check-unknown-key", args);
/** {names} and {more} more — A long list of names, cut: a, b, c and 12 more */
export const checkMoreNames = (args: { readonly names: Word; readonly more: Word }): string => say("check-more-names", args);
/** add {field} */
export const checkAddField = (args: { readonly field: Word }): string => say("check-add-field", args);
/** add entry {number} of {list} — A list that has too few entries: add entry 2 of fit.borderLeaves */
export const checkAddEntry = (args: { readonly number: Word; readonly list: Word }): string => say("check-add-entry", args);
/** correct this value */
export const checkCorrectValue = (): string => say("check-correct-value");
/** the page’s text — What an author wrote below the front matter of a page. */
export const checkFieldPageText = (): string => say("check-field-page-text");
/** shorten it */
export const checkShorten = (): string => say("check-shorten");
/** remove it, or use one of the keys that are allowed */
export const checkRemoveKey = (): string => say("check-remove-key");
/** write "{key}" */
export const checkWriteKey = (args: { readonly key: Word }): string => say("check-write-key", args);
/** folder|page "{name}" */
export const checkAddressName = (args: { readonly kind: Word; readonly name: Word }): string => say("check-address-name", args);
/** small letters, digits and single hyphens, at most {most} of them */
export const checkAddressNames = (args: { readonly most: Word }): string => say("check-address-names", args);
/** rename the folder */
export const checkRenameFolder = (): string => say("check-rename-folder");
/** no index.md in the folder */
export const checkNoIndex = (): string => say("check-no-index");
/** a class folder holds index.md, and a books table where one is named|a kit folder holds index.md and its picture */
export const checkFolderHolds = (args: { readonly kind: Word }): string => say("check-folder-holds", args);
/** add index.md or remove the folder */
export const checkAddIndex = (): string => say("check-add-index");
/** no front matter */
export const checkNoFrontMatter = (): string => say("check-no-front-matter");
/** a block of YAML between two lines of --- */
export const checkFrontMatterBlock = (): string => say("check-front-matter-block");
/** start the file with ---, its fields, and --- again */
export const checkStartFrontMatter = (): string => say("check-start-front-matter");
/** well-formed YAML */
export const checkWellFormedYaml = (): string => say("check-well-formed-yaml");
/** correct the YAML here */
export const checkCorrectYaml = (): string => say("check-correct-yaml");
/** {fault} (is this line indented like its neighbours? a text with a colon needs quotes: title: "Fish: a first piece") — $fault: the words of the YAML reader, in English. */
export const checkYamlNested = (args: { readonly fault: Word }): string => say("check-yaml-nested", args);
/** {fault} (# starts a comment: write ids in quotes, ["#eye"]) */
export const checkYamlHash = (args: { readonly fault: Word }): string => say("check-yaml-hash", args);
/** an alias without an anchor before it: {alias} */
export const checkYamlAlias = (args: { readonly alias: Word }): string => say("check-yaml-alias", args);
/** an alias inside the very thing that it stands for: {alias} */
export const checkYamlCircle = (args: { readonly alias: Word }): string => say("check-yaml-circle", args);
/** aliases beyond all use: more than {aliases} of them, or of {entries} entries when they are unfolded */
export const checkYamlFlood = (args: { readonly aliases: Word; readonly entries: Word }): string => say("check-yaml-flood", args);
/** more than {most} lists and fields within each other */
export const checkYamlDepth = (args: { readonly most: Word }): string => say("check-yaml-depth", args);
/** more than {most} words and signs */
export const checkYamlLong = (args: { readonly most: Word }): string => say("check-yaml-long", args);
/** a second YAML document */
export const checkYamlDocuments = (): string => say("check-yaml-documents");
/** a second key "{key}" */
export const checkYamlKeyTwice = (args: { readonly key: Word }): string => say("check-yaml-key-twice", args);
/** the tag {tag}, and tags have no meaning here */
export const checkYamlTag = (args: { readonly tag: Word }): string => say("check-yaml-tag", args);
/** correct the variable, or leave it out to use url in {file} */
export const checkCorrectVariable = (args: { readonly file: Word }): string => say("check-correct-variable", args);
/** given "{language}", which has no words here — Languages that the project has words in: en, nl */
export const checkLanguageWithoutWords = (args: { readonly language: Word }): string => say("check-language-without-words", args);
/** one of these, also with a region: {languages} */
export const checkLanguagesWithWords = (args: { readonly languages: Word }): string => say("check-languages-with-words", args);
/** choose one of them, or add a folder of words */
export const checkLanguageRemedy = (): string => say("check-language-remedy");
/** warning  {name}: {warning} — $name: the kit’s or class’s folder. $warning: a whole message. */
export const checkWarning = (args: { readonly name: Word; readonly warning: Word }): string => say("check-warning", args);
/** warning: {warning} — Under the line of its kit. */
export const checkWarningInside = (args: { readonly warning: Word }): string => say("check-warning-inside", args);
/** note: {note} — $note: a whole message about a picture: how it was taken. */
export const checkNoteInside = (args: { readonly note: Word }): string => say("check-note-inside", args);
/** {kit}: leaves {first} to {last}, {width} × {height}, opening {opening}, hold width {hold}, {hours} */
export const checkKit = (args: { readonly kit: Word; readonly first: Word; readonly last: Word; readonly width: Word; readonly height: Word; readonly opening: Word; readonly hold: Word; readonly hours: Word }): string => say("check-kit", args);
/** … and {count} message|{count} messages more, once these are mended. — After the first of very many messages. */
export const checkMore = (args: { readonly count: number }): string => say("check-more", args);
/** Leaflight itself failed: {fault}. This is no fault of yours; please report it with {file}. — The program itself failed. $fault: what it says, in English. $file: where the details stand. */
export const checkProgramFault = (args: { readonly fault: Word; readonly file: Word }): string => say("check-program-fault", args);
/** Leaflight itself failed: {fault}. This is no fault of yours; please report it. */
export const checkProgramFaultUnwritten = (args: { readonly fault: Word }): string => say("check-program-fault-unwritten", args);
/** {folder}: a draft, left out of the site; npm run check -- {kit} checks it */
export const checkDraft = (args: { readonly folder: Word; readonly kit: Word }): string => say("check-draft", args);
/** {folder}: left out, as it holds no index.md yet */
export const checkNoKitYet = (args: { readonly folder: Word }): string => say("check-no-kit-yet", args);
/** These are the kits that were asked for, and no classes; npm run build makes the whole site. */
export const checkPartOfSite = (): string => say("check-part-of-site");
/** Packets were not printed, and links to them lead nowhere: try this site, but do not publish it. */
export const checkWithoutPackets = (): string => say("check-without-packets");
/** There is no option “{option}”. Allowed are names of folders, {known}. — $option: as it was given. $known: the options there are. */
export const askedOption = (args: { readonly option: Word; readonly known: Word }): string => say("asked-option", args);
/** No kit has the folder {folder}. There are: {kits}. — $folder: of the kit that was asked for. $kits: the folders there are. $meant: the one of a similar name. */
export const askedKit = (args: { readonly folder: Word; readonly kits: Word }): string => say("asked-kit", args);
/** No kit has the folder {folder}. Did you mean {meant}? */
export const askedKitMeant = (args: { readonly folder: Word; readonly meant: Word }): string => say("asked-kit-meant", args);
/** No kit has the folder {folder}; there are none yet. Begin one with npm run new. */
export const askedNoKits = (args: { readonly folder: Word }): string => say("asked-no-kits", args);
/** note  {note} */
export const checkNote = (args: { readonly note: Word }): string => say("check-note", args);
/** Nothing was built; {output} is as it was. */
export const checkNothingBuilt = (args: { readonly output: Word }): string => say("check-nothing-built", args);
/** Left out until this is corrected: */
export const checkLeftOut = (): string => say("check-left-out");
/** {kits} kit|{kits} kits in {output}: open {page} */
export const checkKitCount = (args: { readonly kits: number; readonly output: Word; readonly page: Word }): string => say("check-kit-count", args);
/** {kits} kit|{kits} kits and {classes} class|{classes} classes in {output}: open {page} */
export const checkKitsAndClasses = (args: { readonly kits: number; readonly classes: number; readonly output: Word; readonly page: Word }): string => say("check-kits-and-classes", args);
/** {folder} is for those who hold the classes: do not publish it. — $folder: the folder of what is not published. */
export const checkPrivate = (args: { readonly folder: Word }): string => say("check-private", args);
/** No url in {file} or {variable}: left out site map, feed, canonical addresses, link previews and the page for missing addresses. */
export const checkNoAddress = (args: { readonly file: Word; readonly variable: Word }): string => say("check-no-address", args);
/** {folder}: left alone, as nothing here names it|them: {names} — Files in a folder that nothing names; $names is a list, or its beginning. */
export const checkStrays = (args: { readonly folder: Word; readonly count: number; readonly names: Word }): string => say("check-strays", args);
/** {names} and {more} more */
export const checkStraysMore = (args: { readonly names: Word; readonly more: Word }): string => say("check-strays-more", args);
/** In place of the seat’s row in the table:|Below “seats:” in the class’s file: — Before a line to paste. */
export const teacherEntry = (args: { readonly into: Word }): string => say("teacher-entry", args);
/** Enter one of these lines, in place of what stands there of this seat, and build again. */
export const teacherEntryNote = (): string => say("teacher-entry-note");
/** Running order */
export const eveningOrder = (): string => say("evening-order");
/** Time */
export const eveningTime = (): string => say("evening-time");
/** What */
export const eveningWhat = (): string => say("evening-what");
/** Settle in: seats, books, cautions */
export const eveningSettle = (): string => say("evening-settle");
/** Work at the books */
export const eveningWork = (): string => say("evening-work");
/** Work on */
export const eveningWorkOn = (): string => say("evening-work-on");
/** Pause */
export const eveningPause = (): string => say("evening-pause");
/** Free for seats that are late */
export const eveningCatchUp = (): string => say("evening-catch-up");
/** Count tools, tidy, lay wet things flat */
export const eveningTidy = (): string => say("evening-tidy");
/** {minute} min — Where no time of day is stated: minutes since the session began. */
export const eveningMinute = (args: { readonly minute: Word }): string => say("evening-minute", args);
/** At the pause: {target}. — $target is where the seat should be: "12 of 140 leaves, up to leaf 22". */
export const eveningAtPause = (args: { readonly target: Word }): string => say("evening-at-pause", args);
/** Glue the frame in “{from}” and hang the door in “{to}”. It dries for {dries}. — $from and $to are names of sessions. $dries is a time: "12 h". */
export const eveningGlueAndHang = (args: { readonly from: Word; readonly to: Word; readonly dries: Word }): string => say("evening-glue-and-hang", args);
/** Glue the frame and hang the door in “{from}”. It dries for {dries}. */
export const eveningGlueAndHangOnce = (args: { readonly from: Word; readonly dries: Word }): string => say("evening-glue-and-hang-once", args);
/** Glue the frame in “{from}” and hang the door at home. It dries for {dries}. */
export const eveningHangAtHome = (args: { readonly from: Word; readonly dries: Word }): string => say("evening-hang-at-home", args);
/** Glue the frame and hang the door at home. It dries for {dries}. */
export const eveningGlueAtHome = (args: { readonly dries: Word }): string => say("evening-glue-at-home", args);
/** {plan} This is for {seats}. — $plan is one of the sentences above, $seats names seats: "seats 2 and 8". */
export const eveningDrying = (args: { readonly plan: Word; readonly seats: Word }): string => say("evening-drying", args);
/** Tools to share */
export const eveningTools = (): string => say("evening-tools");
/** There are {tools}. Seats take turns: who comes first has them first. — $tools is a list of tools with how many there are. */
export const eveningShared = (args: { readonly tools: Word }): string => say("evening-shared", args);
/** By this estimate, nobody waits. */
export const eveningNoWaits = (): string => say("evening-no-waits");
/** By this estimate, some wait: {waits}. The times above count it. — $waits is a list: "seat 3: 12 min". */
export const eveningWaits = (args: { readonly waits: Word }): string => say("evening-waits", args);
/** seat {seat}: {minutes} */
export const eveningWait = (args: { readonly seat: Word; readonly minutes: Word }): string => say("evening-wait", args);
/** {count} × {tool} */
export const eveningSharedTool = (args: { readonly count: Word; readonly tool: Word }): string => say("evening-shared-tool", args);
/** glue gun|glue guns */
export const eveningGlueGun = (args: { readonly count: number }): string => say("evening-glue-gun", args);
/** Who sits beside whom */
export const eveningPairs = (): string => say("evening-pairs");
/** A quick seat beside a slow one can lend a hand. Times are estimates. */
export const eveningPairsNote = (): string => say("evening-pairs-note");
/** Seat {helper} beside seat {helped}: done about {ahead} before it. — $ahead is a time: "1 h 30 min". */
export const eveningPair = (args: { readonly helper: Word; readonly helped: Word; readonly ahead: Word }): string => say("evening-pair", args);
/** Seat {helper} beside seat {helped}: done about {ahead} before it, in “{session}” at {time}. — $session is the name of a session, $time a time of day or "35 min". */
export const eveningPairFrom = (args: { readonly helper: Word; readonly helped: Word; readonly ahead: Word; readonly session: Word; readonly time: Word }): string => say("evening-pair-from", args);
/** Print plan */
export const papersPlan = (): string => say("papers-plan");
/** In this order. Pages are counted from the files. */
export const papersPlanLede = (): string => say("papers-plan-lede");
/** Pages are counted when the site is built with its PDFs. Build the site to see them. */
export const papersPlanUncounted = (): string => say("papers-plan-uncounted");
/** File */
export const papersFileHead = (): string => say("papers-file-head");
/** How often */
export const papersCopiesHead = (): string => say("papers-copies-head");
/** Pages */
export const papersPagesHead = (): string => say("papers-pages-head");
/** Sheets */
export const papersSheetsHead = (): string => say("papers-sheets-head");
/** Cost */
export const papersCostHead = (): string => say("papers-cost-head");
/** measuring card; cut each sheet in two — What each file is. */
export const papersMeasuringCard = (): string => say("papers-measuring-card");
/** your packet, with handouts and seat cards */
export const papersTeacher = (): string => say("papers-teacher");
/** what seats read and work by, each seat from a front side */
export const papersToRead = (): string => say("papers-to-read");
/** gauges, strips and templates of all seats; its card is not in the shopping list */
export const papersToCutOut = (): string => say("papers-to-cut-out");
/** {copies} × */
export const papersTimes = (args: { readonly copies: Word }): string => say("papers-times", args);
/** one sheet of card|{sheets} sheets of card|one sheet of paper|{sheets} sheets of paper, both sides|one side — $sheets of paper or card. */
export const papersSheets = (args: { readonly stock: Word; readonly sheets: number; readonly sides: Word }): string => say("papers-sheets", args);
/** Together */
export const papersAll = (): string => say("papers-all");
/** {paper} sheets of paper, {card} of card */
export const papersAllSheets = (args: { readonly paper: Word; readonly card: Word }): string => say("papers-all-sheets", args);
/** State your price for a printed side as prices: page, and the cost stands here. */
export const papersNoPrice = (): string => say("papers-no-price");
/** Print at 100% (“actual size”). Check the 100 mm bar on the first sheet before you print the rest. */
export const papersScale = (): string => say("papers-scale");
/** Do you cut by hand? {file} has the cut sheets at true size. Print its sheets on your card, or lay them over acetate. — $file is the name of a file. */
export const papersByHand = (args: { readonly file: Word }): string => say("papers-by-hand", args);
/** What lies in each bag */
export const papersBags = (): string => say("papers-bags");
/** Parts, and the cut sheets that they come from */
export const papersBagsPartHead = (): string => say("papers-bags-part-head");
/** {part} ({sheets}) — $sheets are names of sheets. */
export const papersBagPart = (args: { readonly part: Word; readonly sheets: Word }): string => say("papers-bag-part", args);
/** {count} × {part} ({sheets}) */
export const papersBagPartMany = (args: { readonly count: Word; readonly part: Word; readonly sheets: Word }): string => say("papers-bag-part-many", args);
/** no sheet is large enough */
export const papersBagNoSheet = (): string => say("papers-bag-no-sheet");
/** The gauge is in the bag of seat {seat} and goes round. */
export const papersBagGaugeWith = (args: { readonly seat: Word }): string => say("papers-bag-gauge-with", args);
/** One gauge serves {seats}: their lines are the same. Cut more of it where they press lines at the same time. — $seats: "seats 1, 3 and 4". */
export const papersGaugeRound = (args: { readonly seats: Word }): string => say("papers-gauge-round", args);
/** The cut card for a gauge is plain: glue a printed gauge onto it, or prick its dots through. Gauges printed on card need none. — Of the card for gauges among the cut parts. */
export const papersGaugeCard = (): string => say("papers-gauge-card");
/** one pack of {size}|{count} packs of {size} — How many packs of how many. */
export const shoppingPacks = (args: { readonly count: number; readonly size: Word }): string => say("shopping-packs", args);
/** {plan}: what to print how often, in order, with sheets and cost. {read}. — $plan and $read are links. */
export const privatePlan = (args: { readonly plan: Word; readonly read: Word }): string => say("private-plan", args);
/** The same in two: {read}, {cut}. — $read and $cut are links: class-to-read and class-to-cut-out. */
export const classPartedPackets = (args: { readonly read: Word; readonly cut: Word }): string => say("class-parted-packets", args);
/** what seats read, for both sides */
export const classToRead = (): string => say("class-to-read");
/** what is cut out, for card */
export const classToCutOut = (): string => say("class-to-cut-out");
/** Cut sheets at true size, for a knife */
export const classCutSheetsPdf = (): string => say("class-cut-sheets-pdf");
/** You bring — Heads of two lists in a seat's packet. */
export const seatBrings = (): string => say("seat-brings");
/** There in the class */
export const seatSupplied = (): string => say("seat-supplied");
/** your book, with its score lines pressed|your window’s parts, cut out — What the teacher has made before the class. */
export const seatReady = (args: { readonly stage: Word }): string => say("seat-ready", args);
/** Seat {seat} · {class} — Over the title of a seat's packet. */
export const packetSeatOver = (args: { readonly seat: Word; readonly class: Word }): string => say("packet-seat-over", args);
/** Fitted to this book: {book}. — $book is a book in a line: "178 × 110 mm, 96 leaves, 9.5 mm thick". */
export const packetSeatBook = (args: { readonly book: Word }): string => say("packet-seat-book", args);
/** at this seat’s pace, without what is ready; a guide — Beside the time of the work. */
export const packetTimeInClass = (): string => say("packet-time-in-class");
/** There for you — On the class's page: a head, and a list of things. */
export const classSupplied = (): string => say("class-supplied");
/** In the class you find {things}. */
export const classSuppliedList = (args: { readonly things: Word }): string => say("class-supplied-list", args);
/** Mark from the head. Cut each mark square to the edge with short sharp scissors, one or two leaves at a time.|Cut each mark square to the edge with the knife, a mat under the leaf, in several light strokes. Fold each strip at its line, tuck it behind, tick the row. */
export const handoutFold = (args: { readonly tool: Word }): string => say("handout-fold", args);
/** Fold the whole leaf at the front line. Mark from the head. Cut square in from the folded edge with short sharp scissors.|Cut square in from the folded edge with the knife, a mat under the leaf. Fold deeper strips again at their own lines, tuck them behind, tick the row. */
export const handoutFoldStepped = (args: { readonly tool: Word }): string => say("handout-fold-stepped", args);
/** {kit}, without a knife — Above the steps of a kit whose leaves are folded by corners. $kit is its title. */
export const handoutFolded = (args: { readonly kit: Word }): string => say("handout-folded", args);
/** At the end of each batch, stick down each flap that is listed as a tack. Use a pin-head of glue, with a slip of baking paper behind it.| with a glue dot. */
export const handoutTack = (args: { readonly tack: Word }): string => say("handout-tack", args);
/** Class */
export const classOver = (): string => say("class-over");
/** {date}, {place} — The day and the place of a class. */
export const classWhen = (args: { readonly date: Word; readonly place: Word }): string => say("class-when", args);
/** On this page */
export const classContents = (): string => say("class-contents");
/** What to bring */
export const classBring = (): string => say("class-bring");
/** Does my book fit? */
export const classFits = (): string => say("class-fits");
/** Schedule */
export const classSchedule = (): string => say("class-schedule");
/** Seats */
export const classSeats = (): string => say("class-seats");
/** Cautions */
export const classCautions = (): string => say("class-cautions");
/** A book nobody will miss */
export const classBringBook = (): string => say("class-bring-book");
/** Its pages are numbered and its leaves are not shiny. Measure it as the card says, and try it below. */
export const classBringBookNote = (): string => say("class-bring-book-note");
/** Its measurements */
export const classBringMeasurements = (): string => say("class-bring-measurements");
/** Write them on the {card} ({pdf}). — $card and $pdf are links. */
export const classBringMeasurementsNote = (args: { readonly card: Word; readonly pdf: Word }): string => say("class-bring-measurements-note", args);
/** measuring card */
export const classMeasuringCard = (): string => say("class-measuring-card");
/** PDF to print */
export const classMeasuringCardPdf = (): string => say("class-measuring-card-pdf");
/** Tell your teacher */
export const classRow = (): string => say("class-row");
/** With JavaScript, this page writes your book as a row for the teacher’s table. Without it, hand in the measuring card. */
export const classRowNoscript = (): string => say("class-row-noscript");
/** When your book is measured, give this row to your teacher, who puts it into the table of books. The page sends nothing. */
export const classRowLead = (): string => say("class-row-lead");
/** Row for the table of books */
export const classRowLine = (): string => say("class-row-line");
/** Its columns: {columns}. Lengths are in millimetres. — $columns: names of columns, as they stand in the table. */
export const classRowColumns = (args: { readonly columns: Word }): string => say("class-row-columns", args);
/** How you make the leaves */
export const classRowWay = (): string => say("class-row-way");
/** As the kit is made */
export const classRowWayKit = (): string => say("class-row-way-kit");
/** Without a knife */
export const classRowWayCorner = (): string => say("class-row-way-corner");
/** How fast you work */
export const classRowPace = (): string => say("class-row-pace");
/** As the class plans */
export const classRowPaceClass = (): string => say("class-row-pace-class");
/** Practised ({times} ×)|Slower ({times} ×)|Much slower ({times} ×) — $times: how many times the kit's estimate. */
export const classRowPaceOwn = (args: { readonly kind: Word; readonly times: Word }): string => say("class-row-pace-own", args);
/** About {hours} of work at this pace: it will be finished here. — How long the work takes in the class, with what the teacher has ready. */
export const classRowFinished = (args: { readonly hours: Word }): string => say("class-row-finished", args);
/** About {hours} of work at this pace: about {rest} is left to finish at home. */
export const classRowUnfinished = (args: { readonly hours: Word; readonly rest: Word }): string => say("class-row-unfinished", args);
/** {kit} does not fit this book as it is. See above what would help; your teacher decides with you. */
export const classRowMisfit = (args: { readonly kit: Word }): string => say("class-row-misfit", args);
/** Add the leaf of page 1 and the last page, so that page numbers are right. */
export const classRowPages = (): string => say("class-row-pages");
/** Your teacher’s phone reads the row from this code. */
export const classRowCode = (): string => say("class-row-code");
/** The row as a code for a phone */
export const classRowCodeAlt = (): string => say("class-row-code-alt");
/** Copy the row */
export const classRowCopy = (): string => say("class-row-copy");
/** Save it as a file */
export const classRowSave = (): string => say("class-row-save");
/** Enter the height, width, thickness and leaves of your book above, and correct what is marked. Then the row stands here. */
export const classRowMissing = (): string => say("class-row-missing");
/** The row is copied. */
export const classRowCopied = (): string => say("class-row-copied");
/** The row is selected: copy it as you copy other text. */
export const classRowSelected = (): string => say("class-row-selected");
/** With JavaScript, this page tells you at once whether a book fits. Without it, compare your book with what each kit’s page asks for. */
export const classNoscript = (): string => say("class-noscript");
/** Session — Heads of the table of sessions. */
export const classSession = (): string => say("class-session");
/** When */
export const classSessionWhen = (): string => say("class-session-when");
/** Length */
export const classSessionLength = (): string => say("class-session-length");
/** At the book */
export const classSessionWork = (): string => say("class-session-work");
/** {date}, {clock} */
export const classSessionTime = (args: { readonly date: Word; readonly clock: Word }): string => say("class-session-time", args);
/** {session}, {date} */
export const classSessionDay = (args: { readonly session: Word; readonly date: Word }): string => say("class-session-day", args);
/** Where each seat should be at the end of each session */
export const classReaches = (): string => say("class-reaches");
/** Seat */
export const classSeatHead = (): string => say("class-seat-head");
/** Work */
export const classWorkHead = (): string => say("class-work-head");
/** Each seat’s page says where it should be when a session ends. It is a guide: nobody has to keep up with it. */
export const classScheduleNote = (): string => say("class-schedule-note");
/** without a knife — Beside a seat that folds corners instead of cutting. */
export const classSeatFolded = (): string => say("class-seat-folded");
/** Pattern */
export const classSeatPattern = (): string => say("class-seat-pattern");
/** Work along */
export const classSeatBench = (): string => say("class-seat-bench");
/** Packet */
export const classSeatPacket = (): string => say("class-seat-packet");
/** One seat is waiting for a book.|{seats} seats are waiting for a book.|{books} of {seats} seats have their book.|This class is over. Patterns and packets stay here, so that every piece can be finished.|This class is over.|Every seat has its book. — How far a class is. $books is how many of its $seats have a book. */
export const classState = (args: { readonly state: Word; readonly seats: number; readonly books: Word }): string => say("class-state", args);
/** Book to come — Of a seat without a book. */
export const classBookToCome = (): string => say("class-book-to-come");
/** Pattern to come — Of a seat whose packet is not there yet. */
export const classSeatToCome = (): string => say("class-seat-to-come");
/** Seats have numbers only. Nothing about anyone is kept here. */
export const classSeatsNote = (): string => say("class-seats-note");
/** Teacher’s packet */
export const classTeacherPacket = (): string => say("class-teacher-packet");
/** All seats’ packets, to print */
export const classAllPackets = (): string => say("class-all-packets");
/** Read it here */
export const classTeacherRead = (): string => say("class-teacher-read");
/** Cut files for the whole class: {files} (SVG in mm; DXF and 72 dpi beside them). — $files is a list of links. */
export const classCutFiles = (args: { readonly files: Word }): string => say("class-cut-files", args);
/** For teachers */
export const privateTitle = (): string => say("private-title");
/** These papers are yours alone. They stand in the folder private; leave it out when you publish the site. */
export const privateLede = (): string => say("private-lede");
/** {packet}: roster, shopping list, costs, preparation, cut sheets, schedule, supervision list, handouts and seat cards. {read}. — $packet and $read are links. */
export const privateTeacher = (args: { readonly packet: Word; readonly read: Word }): string => say("private-teacher", args);
/** {height} × {width} */
export const classBookSides = (args: { readonly height: Word; readonly width: Word }): string => say("class-book-sides", args);
/** one leaf|{leaves} leaves */
export const classBookLeaves = (args: { readonly leaves: number }): string => say("class-book-leaves", args);
/** {thickness} thick */
export const classBookThick = (args: { readonly thickness: Word }): string => say("class-book-thick", args);
/** reads right to left */
export const classBookRightToLeft = (): string => say("class-book-right-to-left");
/** one plate|{plates} plates */
export const classBookPlates = (args: { readonly plates: number }): string => say("class-book-plates", args);
/** Seat {seat} */
export const seatNumber = (args: { readonly seat: Word }): string => say("seat-number", args);
/** seat {numbers}|seats {numbers} — $numbers is a list of seats' numbers; $count says how many they are. */
export const seatNumbers = (args: { readonly count: number; readonly numbers: Word }): string => say("seat-numbers", args);
/** Seat {seat}: {class} */
export const seatTitle = (args: { readonly seat: Word; readonly class: Word }): string => say("seat-title", args);
/** {kit}, in this book: {book}. — $book is the book in a line: "178 × 110 mm, 96 leaves, 9.5 mm thick". */
export const seatLede = (args: { readonly kit: Word; readonly book: Word }): string => say("seat-lede", args);
/** The book for this seat is still to come. */
export const seatAwaiting = (): string => say("seat-awaiting");
/** Choose a book, measure it as the {card} says, and try it on the page of {class}. — $class is a link, the class’s title; $card is one, class-measuring-card. */
export const seatAwaitingHelp = (args: { readonly card: Word; readonly class: Word }): string => say("seat-awaiting-help", args);
/** This seat works without a knife: its leaves are folded by their corners. */
export const seatFolded = (): string => say("seat-folded");
/** {kit} as it comes out in this book, seen from the front */
export const seatFrontAlt = (args: { readonly kit: Word }): string => say("seat-front-alt", args);
/** Hold width */
export const seatHoldWidth = (): string => say("seat-hold-width");
/** between the folded edges of the first and last picture leaf, at the head */
export const seatHoldWidthNote = (): string => say("seat-hold-width-note");
/** Opening */
export const seatOpening = (): string => say("seat-opening");
/** angle of the opened book, first leaf to last */
export const seatOpeningNote = (): string => say("seat-opening-note");
/** Folded leaves */
export const seatLeaves = (): string => say("seat-leaves");
/** one cut|{cuts} cuts, one fold|{folds} folds */
export const seatLeavesNote = (args: { readonly cuts: number; readonly folds: number }): string => say("seat-leaves-note", args);
/** no cut, one fold|{folds} folds — The same of a seat without a knife. */
export const seatLeavesFolded = (args: { readonly folds: number }): string => say("seat-leaves-folded", args);
/** Work */
export const seatWork = (): string => say("seat-work");
/** {difficulty}; a guide, at this seat’s pace — $difficulty is easy, moderate or demanding. */
export const seatWorkNote = (args: { readonly difficulty: Word }): string => say("seat-work-note", args);
/** Work along, leaf by leaf */
export const seatBench = (): string => say("seat-bench");
/** Packet to print ({paper}) */
export const seatPacket = (args: { readonly paper: Word }): string => say("seat-packet", args);
/** Pattern page for this book */
export const seatPattern = (): string => say("seat-pattern");
/** Pattern as CSV */
export const seatCsv = (): string => say("seat-csv");
/** Before you begin */
export const seatDoubts = (): string => say("seat-doubts");
/** Cut files for the window */
export const seatCutFiles = (): string => say("seat-cut-files");
/** This picture does not fit this book yet */
export const seatMisfit = (): string => say("seat-misfit");
/** What would help */
export const seatHelp = (): string => say("seat-help");
/** Choose {kit} instead: it fits as it is. — $kit is another kit of the class. */
export const seatOtherFits = (args: { readonly kit: Word }): string => say("seat-other-fits", args);
/** Choose {kit} instead. {offer}. — $offer is one change that makes the other kit fit: "Make the picture 105 mm tall". */
export const seatOtherChange = (args: { readonly kit: Word; readonly offer: Word }): string => say("seat-other-change", args);
/** Take the book “{book}” from the crate: it fits as it is. — $book is what the teacher calls a substitute book. */
export const seatSpare = (args: { readonly book: Word }): string => say("seat-spare", args);
/** At the end of each session */
export const seatReaches = (): string => say("seat-reaches");
/** Code for seat {seat}: {url} — A code that a phone reads. */
export const seatCode = (args: { readonly seat: Word; readonly url: Word }): string => say("seat-code", args);
/** finished */
export const reachFinished = (): string => say("reach-finished");
/** pressing score lines */
export const reachScores = (): string => say("reach-scores");
/** score lines pressed */
export const reachScored = (): string => say("reach-scored");
/** all {all} leaves folded, working on the window */
export const reachWindow = (args: { readonly all: Word }): string => say("reach-window", args);
/** {leaves} of {all} leaves, up to {leaf} — $leaf is the last folded leaf: "leaf 48, p. 87". */
export const reachLeaf = (args: { readonly leaves: Word; readonly all: Word; readonly leaf: Word }): string => say("reach-leaf", args);
/** {from} to {to} — When a session begins and ends: "18:30 to 21:00". */
export const clockFromTo = (args: { readonly from: Word; readonly to: Word }): string => say("clock-from-to", args);
/** corner gauge */
export const stepPartCornerGauge = (): string => say("step-part-corner-gauge");
/** folding card */
export const stepPartFoldingCard = (): string => say("step-part-folding-card");
/** Make the corner gauge */
export const stepCornerGauge = (): string => say("step-corner-gauge");
/** Print the packet’s sheet with the corner gauge on card, and cut it out with scissors.|Print the packet’s sheet with the corner gauge on card, and cut out both pieces with scissors. The folding card is {depth} wide, the distance of a whole leaf’s fold from the fore-edge. Keep the gauge’s slanted side straight: every crease follows it. — $depth is empty where there is no card. */
export const stepCornerGaugeText = (args: { readonly with: Word; readonly depth: Word }): string => say("step-corner-gauge-text", args);
/** Print the corner gauge on card, and cut it out with scissors.|Print the corner gauge and the folding card on card, and cut them out with scissors. */
export const stepCornerGaugeGist = (args: { readonly with: Word }): string => say("step-corner-gauge-gist", args);
/** Fold the picture, batch by batch */
export const stepCorners = (): string => say("step-corners");
/** Work on at most {batch} leaves at a time. Mark the fore-edge at both figures of the row, or from the leaf’s strip. Lay the corner gauge’s straight side along the fore-edge, its point at the upper mark. Fold the corner above toward you over the slanted side, slip the gauge out, and press. Turn the gauge over and fold the corner below at the lower mark in the same way. What stands between the marks is the picture. Tick the row. At each checkpoint, compare the page number and the first mark before you turn the leaf. */
export const stepCornersText = (args: { readonly batch: Word }): string => say("step-corners-text", args);
/** A leaf whose row gives one mark has both corners folded to it.|A leaf without marks is folded whole over the folding card. */
export const stepCornersEmpty = (args: { readonly empty: Word }): string => say("step-corners-empty", args);
/** Where a row has a second figure after an arrow, the gutter is near. Mark that distance from the fore-edge on the head or tail edge. Fold along a ruler from mark to mark. */
export const stepCornersTurned = (): string => say("step-corners-turned");
/** Mark the fore-edge twice, fold the corner above and the corner below along the gauge, press, tick the row. */
export const stepCornersGist = (): string => say("step-corners-gist");
/** Fold {count} whole leaf|{count} whole leaves before the picture. Lay the folding card along the fore-edge, fold the leaf toward you over its inner edge, press, and pull the card out. The fold is {depth} from the fore-edge. */
export const stepBorderCardBefore = (args: { readonly count: number; readonly depth: Word }): string => say("step-border-card-before", args);
/** When the last batch is done, fold {count} whole leaf|{count} whole leaves after the picture over the folding card, {depth} from the fore-edge. */
export const stepBorderCardAfter = (args: { readonly count: number; readonly depth: Word }): string => say("step-border-card-after", args);
/** Mark {count} leaf|{count} leaves before the picture {middle} from the head, and fold both corners to the mark along the gauge. */
export const stepBorderMiddleBefore = (args: { readonly count: number; readonly middle: Word }): string => say("step-border-middle-before", args);
/** When the last batch is done, mark {count} leaf|{count} leaves after the picture {middle} from the head. Fold both corners to the mark along the gauge. */
export const stepBorderMiddleAfter = (args: { readonly count: number; readonly middle: Word }): string => say("step-border-middle-after", args);
/** On each leaf before the picture, mark the middle of the fore-edge, and fold both corners to it along the gauge.|Fold the whole leaves before the picture over the folding card. — The two steps in a sentence that holds for every book. */
export const stepBorderCornerBeforeGist = (args: { readonly empty: Word }): string => say("step-border-corner-before-gist", args);
/** Last of all leaves, fold both corners of those after the picture to the middle of the fore-edge.|Last of all leaves, fold the whole ones after the picture over the folding card. */
export const stepBorderCornerAfterGist = (args: { readonly empty: Word }): string => say("step-border-corner-after-gist", args);
/** {sheet}, 250–300 g/m², for the corner gauge and the strip that props the book */
export const whyCardCorners = (args: { readonly sheet: Word }): string => say("why-card-corners", args);
/** to cut out what is of card; no leaf is cut */
export const whyScissorsCard = (): string => say("why-scissors-card");
/** One row per leaf. {marks} are measured from the head edge in {units}. The corner above the upper mark and the corner below the lower mark are folded over, each along a slant of 45°. */
export const cornerTableText = (args: { readonly marks: Word; readonly units: Word }): string => say("corner-table-text", args);
/** Marks */
export const cornerTableMarks = (): string => say("corner-table-marks");
/** An arrow and a second figure mean a steeper crease: it ends that far from the fore-edge on the head or tail edge. */
export const cornerTableTurned = (): string => say("corner-table-turned");
/** “1 of {of}” means that the picture meets this leaf twice|{of} times. The leaf shows the first strip, counted from the head; its neighbours show the others. — $of is how often the picture meets a leaf at most. */
export const cornerTableTurns = (args: { readonly of: number }): string => say("corner-table-turns", args);
/** Upper mark */
export const cornerTableUpper = (): string => say("corner-table-upper");
/** Lower mark */
export const cornerTableLower = (): string => say("corner-table-lower");
/** Shows */
export const cornerTableTurn = (): string => say("corner-table-turn");
/** fold whole over the card */
export const cornerTableWhole = (): string => say("corner-table-whole");
/** both corners to {at} */
export const cornerTableMiddle = (args: { readonly at: Word }): string => say("corner-table-middle", args);
/** none — Where the picture reaches the head or the tail, no corner is folded. */
export const cornerTableNone = (): string => say("corner-table-none");
/** {which} of {of} — The strip that a leaf shows, counted from the head, where the picture meets the leaf several times. */
export const cornerTurn = (args: { readonly which: Word; readonly of: Word }): string => say("corner-turn", args);
/** → {end} — A mark, and where a crease ends that is steeper than 45°. */
export const cornerCreaseEnd = (args: { readonly end: Word }): string => say("corner-crease-end", args);
/** Marks from the head in {units}. Fold the corner above the upper mark and the corner below the lower one along the gauge. Shaded rows are checkpoints: compare page number and first mark. */
export const cornerPacketText = (args: { readonly units: Word }): string => say("corner-packet-text", args);
/** Check: {leaves} leaf|{leaves} leaves, {folds} fold|{folds} folds; {sofar} of {all} folds so far. */
export const cornerPacketCheck = (args: { readonly leaves: number; readonly folds: number; readonly sofar: Word; readonly all: Word }): string => say("corner-packet-check", args);
/** One strip of the picture is|{count} strips of the picture are too short to fold and left out; the black marks show where that detail goes. */
export const cornerPacketMergedText = (args: { readonly count: number }): string => say("corner-packet-merged-text", args);
/** {leaves} leaf|{leaves} leaves, {marks} mark|{marks} marks, no cuts */
export const cornerChapterPattern = (args: { readonly leaves: number; readonly marks: number }): string => say("corner-chapter-pattern", args);
/** leaves to find, {batches} batch|leaves to find, {batches} batches */
export const cornerChapterPrepare = (args: { readonly batches: number }): string => say("corner-chapter-prepare", args);
/** Too short to fold, so they were left out or joined to the next strip. */
export const cornerMergedText = (): string => say("corner-merged-text");
/** leaf {leaf}: {place} */
export const cornerMergedStrip = (args: { readonly leaf: Word; readonly place: Word }): string => say("corner-merged-strip", args);
/** Folds */
export const figureFolds = (): string => say("figure-folds");
/** at {marks} mark|at {marks} marks; no cuts, no glue */
export const figureFoldsNote = (args: { readonly marks: number }): string => say("figure-folds-note", args);
/** fore-edge to gutter; folded corners reach {reach} inward */
export const cornerFigureWidthNote = (args: { readonly reach: Word }): string => say("corner-figure-width-note", args);
/** one outline, folded without a knife */
export const cornerFigureLevelsNote = (): string => say("corner-figure-levels-note");
/** width × height on the unfolded fore-edges */
export const cornerFigurePictureNote = (): string => say("corner-figure-picture-note");
/** between the first and last picture leaf as folded, at the head edge */
export const cornerFigureHoldNote = (): string => say("corner-figure-hold-note");
/** From the front the folded corners match {folded} of the drawn outline; cut leaves would match {cut}. — How much of the outline is seen from the front; $cut is the same kit's figure where leaves are cut. */
export const cornerSeen = (args: { readonly folded: Word; readonly cut: Word }): string => say("corner-seen", args);
/** From the front the folded corners match {folded} of the drawn outline. */
export const cornerSeenAlone = (args: { readonly folded: Word }): string => say("corner-seen-alone", args);
/** Nothing is cut and nothing is glued: there is nothing to tack. */
export const cornerTacksNone = (): string => say("corner-tacks-none");
/** Light and window need a knife. Folded by corners, this kit goes without them. */
export const cornerWindowNone = (): string => say("corner-window-none");
/** none: both need a knife */
export const cornerChapterWindow = (): string => say("corner-chapter-window");
/** Border leaves: fold both corners of each to its middle|Border leaves: fold each one whole over the folding card */
export const cornerPreparationBorders = (args: { readonly empty: Word }): string => say("corner-preparation-borders", args);
/** Batches */
export const cornerPreparationBatches = (): string => say("corner-preparation-batches");
/** Corner gauge, true scale */
export const cornerPacketGauge = (): string => say("corner-packet-gauge");
/** Corner gauge at true scale, and the card that whole leaves are folded over */
export const cornerPacketGaugeAlt = (): string => say("corner-packet-gauge-alt");
/** Corner gauge: one sheet|{sheets} sheets, printed on one side, best on card. */
export const cornerPacketPlanGauge = (args: { readonly sheets: number }): string => say("corner-packet-plan-gauge", args);
/** Print on card. Cut along the full outlines with scissors; the slanted side must be straight. */
export const drawCornerGaugeMake = (): string => say("draw-corner-gauge-make");
/** Straight side along the fore-edge, point at the mark: fold the corner over the slanted side. */
export const drawCornerGaugeUse = (): string => say("draw-corner-gauge-use");
/** Turn it over for the corner below the lower mark. */
export const drawCornerGaugeTurn = (): string => say("draw-corner-gauge-turn");
/** Corner gauge, 45° */
export const drawCornerGaugeName = (): string => say("draw-corner-gauge-name");
/** along the fore-edge */
export const drawCornerGaugeFlush = (): string => say("draw-corner-gauge-flush");
/** at the mark */
export const drawCornerGaugePoint = (): string => say("draw-corner-gauge-point");
/** Folding card, {depth} wide */
export const drawCornerCardName = (args: { readonly depth: Word }): string => say("draw-corner-card-name", args);
/** one long edge along the fore-edge, fold over the other */
export const drawCornerCardUse = (): string => say("draw-corner-card-use");
/** Top: leaf, book page, (pattern page). White is what stays; fold the corner above and the corner below. */
export const drawCornerStripKey = (): string => say("draw-corner-strip-key");
/** Mark the fore-edge twice */
export const drawCornerMark = (): string => say("draw-corner-mark");
/** Fold the corner above */
export const drawCornerAbove = (): string => say("draw-corner-above");
/** Turn the gauge, fold below */
export const drawCornerBelow = (): string => say("draw-corner-below");
/** What stays is the picture */
export const drawCornerDone = (): string => say("draw-corner-done");
/** gauge */
export const drawCornerGaugeShort = (): string => say("draw-corner-gauge-short");
/** The page before you, head up. The corners are folded toward you, onto this page. */
export const drawCornerFoot = (): string => say("draw-corner-foot");
/** Folding a leaf by its corners in four steps. 1: mark the fore-edge {from} and {to} from the head. 2: lay the gauge’s straight side along the fore-edge, its point at the upper mark, and fold the corner above over the slanted side. 3: turn the gauge over, its point at the lower mark, and fold the corner below. 4: between the marks the fore-edge stays unfolded. */
export const drawCornerSteps = (args: { readonly from: Word; readonly to: Word }): string => say("draw-corner-steps", args);
/** One leaf whole: {title}. Marks on the fore-edge, from the head in {units}: {marks}. Between them the fore-edge stays; the corners outside are folded over. */
export const drawCornerLeaf = (args: { readonly title: Word; readonly units: Word; readonly marks: Word }): string => say("draw-corner-leaf", args);
/** A crease ends {end} from the fore-edge. */
export const drawCornerLeafTurned = (args: { readonly end: Word }): string => say("draw-corner-leaf-turned", args);
/** crease */
export const drawCornerCrease = (): string => say("draw-corner-crease");
/** stays */
export const drawCornerStays = (): string => say("draw-corner-stays");
/** {title}: the opened book seen from the front, {leaves} leaf|{leaves} leaves folded by their corners */
export const drawFrontCorners = (args: { readonly title: Word; readonly leaves: number }): string => say("draw-front-corners", args);
/** {title}: {part}, {count} of {material}, seen from the front — $part is a part's name, $material what it is cut from. */
export const cutPartTitle = (args: { readonly title: Word; readonly part: Word; readonly count: Word; readonly material: Word }): string => say("cut-part-title", args);
/** {title}: {material}, {size} sheet {number}: {parts} — $size is a sheet's size, $number which sheet of it, $parts the parts on it. */
export const cutSheetTitle = (args: { readonly title: Word; readonly material: Word; readonly size: Word; readonly number: Word; readonly parts: Word }): string => say("cut-sheet-title", args);
/** Leaflight kit {slug}, revision {revision}; wrap|flat panel, lip {lip} mm, hinge left|right; layers: {layers} ({width} x {height} mm) — $revision is a short code. $layers are the names of the file's layers; the last one holds a rectangle to measure, which is $width by $height mm. */
export const cutAbout = (args: { readonly slug: Word; readonly revision: Word; readonly panel: Word; readonly lip: Word; readonly hinge: Word; readonly layers: Word; readonly width: Word; readonly height: Word }): string => say("cut-about", args);
/** There is no class of this name. */
export const deskClassNoClass = (): string => say("desk-class-no-class");
/** Seats of {title} — For those who hear the page. $title: of the class. */
export const deskClassGrid = (args: { readonly title: Word }): string => say("desk-class-grid", args);
/** The seats */
export const deskClassSeats = (): string => say("desk-class-seats");
/** How it comes out */
export const deskClassVerdict = (): string => say("desk-class-verdict");
/** Seat|Kit|Leaf height|Leaf width|Thickness|Leaves|Leaf of page 1|Last page|Plates|Opens|Picture height|From the head|Opening|Picture leaves|Border before|Border after|Folds|Depths|Light, width|Light, height|Pace|{column} — Heads of columns, short. */
export const deskClassColumn = (args: { readonly column: Word }): string => say("desk-class-column", args);
/** Show all columns */
export const deskClassAllColumns = (): string => say("desk-class-all-columns");
/** Add a seat */
export const deskClassAddSeat = (): string => say("desk-class-add-seat");
/** Arrow keys go from cell to cell. Type to write, Enter to keep, Escape to leave it as it was. Paste rows from a spreadsheet anywhere. */
export const deskClassKeys = (): string => say("desk-class-keys");
/** A bare number is in millimetres; write inches as 8 1/4 in.|A bare number is in millimetres. — Where lengths are written. $units: the class’s own. */
export const deskClassUnits = (args: { readonly units: Word }): string => say("desk-class-units", args);
/** Fits well — How a seat comes out, in a word or two in its row. */
export const deskClassFits = (): string => say("desk-class-fits");
/** Check first */
export const deskClassCheck = (): string => say("desk-class-check");
/** Poor */
export const deskClassPoor = (): string => say("desk-class-poor");
/** With a change */
export const deskClassChange = (): string => say("desk-class-change");
/** Does not fit */
export const deskClassNo = (): string => say("desk-class-no");
/** No book yet */
export const deskClassAwaiting = (): string => say("desk-class-awaiting");
/** To mend */
export const deskClassWrong = (): string => say("desk-class-wrong");
/** … */
export const deskClassWorking = (): string => say("desk-class-working");
/** Seat {seat} — Above what is told of the seat that the cell in use belongs to. $kit: its title. */
export const deskClassSeat = (args: { readonly seat: Word }): string => say("desk-class-seat", args);
/** Seat {seat}: {kit} */
export const deskClassSeatKit = (args: { readonly seat: Word; readonly kit: Word }): string => say("desk-class-seat-kit", args);
/** A row without a seat’s number */
export const deskClassSeatUnnumbered = (): string => say("desk-class-seat-unnumbered");
/** The seats are being fetched … — In the place of the grid, until it is there. */
export const deskClassOpening = (): string => say("desk-class-opening");
/** Drawing the kits that the seats are judged by: {kit}, {there} of {of} … — $kit: title of the kit that is drawn now, the one of this number; $of: how many kits the class has. */
export const deskClassWaiting = (args: { readonly kit: Word; readonly there: Word; readonly of: Word }): string => say("desk-class-waiting", args);
/** There is no seat yet. Add one, or paste rows from a spreadsheet. */
export const deskClassNone = (): string => say("desk-class-none");
/** The book carries the kit well. */
export const deskClassToldFits = (): string => say("desk-class-told-fits");
/** The book carries the kit, but look at this first. */
export const deskClassToldCheck = (): string => say("desk-class-told-check");
/** The kit comes out poorly in this book. */
export const deskClassToldPoor = (): string => say("desk-class-told-poor");
/** As it is, the book does not carry the kit. One of these changes helps. */
export const deskClassToldChange = (): string => say("desk-class-told-change");
/** The book does not carry the kit. */
export const deskClassToldNo = (): string => say("desk-class-told-no");
/** Write the figures of its book when it is there. */
export const deskClassToldAwaiting = (): string => say("desk-class-told-awaiting");
/** It takes about {hours}. — $hours: a text. */
export const deskClassTakes = (args: { readonly hours: Word }): string => say("desk-class-takes", args);
/** {column}: {given}. Allowed: {allowed}. To do: {remedy}. — Something wrong in a cell. $given, $allowed and $remedy are phrases. */
export const deskClassCell = (args: { readonly column: Word; readonly given: Word; readonly allowed: Word; readonly remedy: Word }): string => say("desk-class-cell", args);
/** One cell was pasted.|{cells} cells were pasted. */
export const deskClassPasted = (args: { readonly cells: number }): string => say("desk-class-pasted", args);
/** What was pasted is no table. Copy rows of a spreadsheet, and try again. */
export const deskClassNotPasted = (): string => say("desk-class-not-pasted");
/** {file} is a workbook, which the desk cannot write. — A class’s table that is no text. $file: its name. */
export const deskClassWorkbook = (args: { readonly file: Word }): string => say("desk-class-workbook", args);
/** Take its rows as {csv}, put that beside it, and name it in “books”. */
export const deskClassWorkbookDo = (args: { readonly csv: Word }): string => say("desk-class-workbook-do", args);
/** Take the rows as CSV */
export const deskClassTakeCsv = (): string => say("desk-class-take-csv");
/** The kit {kit} cannot be worked out at present, so its seats are not judged. — A kit of the class that cannot be read. */
export const deskClassKitAway = (args: { readonly kit: Word }): string => say("desk-class-kit-away", args);
/** All kits and classes */
export const deskKitBack = (): string => say("desk-kit-back");
/** Draft — A switch. On: the kit is not published. */
export const deskKitDraft = (): string => say("desk-kit-draft");
/** Undo */
export const deskKitUndo = (): string => say("desk-kit-undo");
/** Redo */
export const deskKitRedo = (): string => say("desk-kit-redo");
/** Look and write — Opens the difference; nothing is written yet. */
export const deskKitLookAndWrite = (): string => say("desk-kit-look-and-write");
/** Nothing to write */
export const deskKitToldSame = (): string => say("desk-kit-told-same");
/** One change, not written yet|{changes} changes, not written yet */
export const deskKitToldChanged = (args: { readonly changes: number }): string => say("desk-kit-told-changed", args);
/** Written. Undo goes back behind it. */
export const deskKitToldWritten = (): string => say("desk-kit-told-written");
/** Writing … */
export const deskKitToldWriting = (): string => say("desk-kit-told-writing");
/** What will be written */
export const deskKitDifference = (): string => say("desk-kit-difference");
/** In {file}, lines with a minus go and lines with a plus come. — $file: a path. */
export const deskKitDifferenceIn = (args: { readonly file: Word }): string => say("desk-kit-difference-in", args);
/** Write it */
export const deskKitWrite = (): string => say("desk-kit-write");
/** Not yet */
export const deskKitNotYet = (): string => say("desk-kit-not-yet");
/** Write it all the same — Of a text that cannot be read; in place of “Write it”. */
export const deskKitWriteAnyway = (): string => say("desk-kit-write-anyway");
/** The site cannot be made of this text, but it can be written. */
export const deskKitWriteBroken = (): string => say("desk-kit-write-broken");
/** This text cannot be read */
export const deskKitBrokenTitle = (): string => say("desk-kit-broken-title");
/** Everything on the table is the last state that could be read. */
export const deskKitBrokenLede = (): string => say("desk-kit-broken-lede");
/** Open {place} — Opens the file in the author’s editor. */
export const deskKitOpenAt = (args: { readonly place: Word }): string => say("desk-kit-open-at", args);
/** Your editor was asked to open it. */
export const deskKitOpened = (): string => say("desk-kit-opened");
/** The file was changed outside the desk */
export const deskKitForeignTitle = (): string => say("desk-kit-foreign-title");
/** Your changes here are not lost, and neither are those. */
export const deskKitForeignLede = (): string => say("desk-kit-foreign-lede");
/** Both change the same keys, so only one of them can stay. */
export const deskKitForeignMeet = (): string => say("desk-kit-foreign-meet");
/** Keep mine */
export const deskKitKeepMine = (): string => say("desk-kit-keep-mine");
/** Take theirs */
export const deskKitTakeTheirs = (): string => say("desk-kit-take-theirs");
/** Put both together */
export const deskKitMerge = (): string => say("desk-kit-merge");
/** The kit is being laid out … — While the site is still being read. */
export const deskKitLoading = (): string => say("desk-kit-loading");
/** There is no kit of this name. */
export const deskKitNoKit = (): string => say("desk-kit-no-kit");
/** This kit is folded by corners — A kit that is made without a knife: nothing of it is laid out. */
export const deskKitCornerTitle = (): string => say("desk-kit-corner-title");
/** Its figures are changed here. Which shapes are joined stands in its file. */
export const deskKitCornerLede = (): string => say("desk-kit-corner-lede");
/** Empty leaves — How leaves are folded that show nothing of the picture. */
export const deskKitCornerEmpty = (): string => say("desk-kit-corner-empty");
/** straight, at the ground’s depth|straight, fore-edge to gutter|both corners to the middle */
export const deskKitCornerEmptyFold = (args: { readonly fold: Word }): string => say("desk-kit-corner-empty-fold", args);
/** The sheet */
export const deskKitSheet = (): string => say("desk-kit-sheet");
/** What lies on the sheet */
export const deskKitSheetShow = (): string => say("desk-kit-sheet-show");
/** Both */
export const deskKitShowBoth = (): string => say("desk-kit-show-both");
/** What will be seen */
export const deskKitShowSeen = (): string => say("desk-kit-show-seen");
/** What is drawn */
export const deskKitShowDrawn = (): string => say("desk-kit-show-drawn");
/** The picture on the front of the book, {leaves} leaves wide. What differs is listed below it. — The picture for readers of the screen. */
export const deskKitSheetAlt = (args: { readonly leaves: Word }): string => say("desk-kit-sheet-alt", args);
/** Press on a shape to choose it, and the leaf below it. */
export const deskKitSheetPress = (): string => say("desk-kit-sheet-press");
/** Leaf on the table */
export const deskKitLeafSlider = (): string => say("desk-kit-leaf-slider");
/** {at}, no cut|one cut|{cuts} cuts — $at: as in “leaf 13, p. 17”. $cuts: how many. */
export const deskKitLeafTold = (args: { readonly at: Word; readonly cuts: number }): string => say("desk-kit-leaf-told", args);
/** Where it will look different */
export const deskKitMarks = (): string => say("desk-kit-marks");
/** It will look as it is drawn. */
export const deskKitMarksNone = (): string => say("desk-kit-marks-none");
/** {number} of {of} */
export const deskKitMarksStep = (args: { readonly number: Word; readonly of: Word }): string => say("desk-kit-marks-step", args);
/** Before */
export const deskKitMarksBefore = (): string => say("desk-kit-marks-before");
/** Next */
export const deskKitMarksNext = (): string => say("desk-kit-marks-next");
/** merged strips */
export const deskKitKeySlivers = (): string => say("desk-kit-key-slivers");
/** hidden by a side */
export const deskKitKeyHidden = (): string => say("desk-kit-key-hidden");
/** out of reach */
export const deskKitKeyOutOfReach = (): string => say("desk-kit-key-out-of-reach");
/** lost or thin details */
export const deskKitKeyNarrow = (): string => say("desk-kit-key-narrow");
/** One strip of “{level}” is merged with “{into}”, {at}.|{strips} strips of “{level}” are merged with “{into}”, from {at}. — $at: as in “leaf 13, p. 17”. */
export const deskKitMarkSlivers = (args: { readonly strips: number; readonly level: Word; readonly into: Word; readonly at: Word }): string => say("desk-kit-mark-slivers", args);
/** Part of “{level}” hides behind a prouder leaf, {at}. */
export const deskKitMarkHidden = (args: { readonly level: Word; readonly at: Word }): string => say("desk-kit-mark-hidden", args);
/** “{level}” does not reach this far out, {at}. */
export const deskKitMarkUnreached = (args: { readonly level: Word; readonly at: Word }): string => say("desk-kit-mark-unreached", args);
/** A part of “{level}” is shown by one leaf only, {at}. */
export const deskKitMarkNarrow = (args: { readonly level: Word; readonly at: Word }): string => say("desk-kit-mark-narrow", args);
/** A part of “{level}” falls between the leaves, {at}. */
export const deskKitMarkUnseen = (args: { readonly level: Word; readonly at: Word }): string => say("desk-kit-mark-unseen", args);
/** The shape */
export const deskKitShapes = (): string => say("desk-kit-shapes");
/** Shape */
export const deskKitShapeChoose = (): string => say("desk-kit-shape-choose");
/** {name} · {level} — $name: as in “<path> #wave”. $level: a level’s name. */
export const deskKitShapeOption = (args: { readonly name: Word; readonly level: Word }): string => say("desk-kit-shape-option", args);
/** No shape is chosen. */
export const deskKitShapeNone = (): string => say("desk-kit-shape-none");
/** Its level */
export const deskKitShapeLevel = (): string => say("desk-kit-shape-level");
/** This shape’s level is stated for its whole layer; change it in the file. — A shape that stands in no file, such as a word, has its level in the picture’s own keys. */
export const deskKitShapeFixed = (): string => say("desk-kit-shape-fixed");
/** It changes together with everything in its group. */
export const deskKitShapeOfWhole = (): string => say("desk-kit-shape-of-whole");
/** The leaf */
export const deskKitLeaf = (): string => say("desk-kit-leaf");
/** One leaf from its side: how far each strip is folded, and where it is cut. */
export const deskKitLeafAlt = (): string => say("desk-kit-leaf-alt");
/** This leaf stays as it is. */
export const deskKitLeafUnfolded = (): string => say("desk-kit-leaf-unfolded");
/** Depth of {level} — $level: its name; read to whoever moves the line. */
export const deskKitDepth = (args: { readonly level: Word }): string => say("desk-kit-depth", args);
/** Depths */
export const deskKitDepths = (): string => say("desk-kit-depths");
/** The gauge */
export const deskKitGauge = (): string => say("desk-kit-gauge");
/** Head edge to the picture */
export const deskKitGaugeTop = (): string => say("desk-kit-gauge-top");
/** Picture’s height */
export const deskKitGaugeFoot = (): string => say("desk-kit-gauge-foot");
/** {height}, worked out */
export const deskKitGaugeSolved = (args: { readonly height: Word }): string => say("desk-kit-gauge-solved", args);
/** The piece */
export const deskKitPiece = (): string => say("desk-kit-piece");
/** The finished book from the front. */
export const deskKitPieceAlt = (): string => say("desk-kit-piece-alt");
/** Front */
export const deskKitFront = (): string => say("desk-kit-front");
/** In the round */
export const deskKitRound = (): string => say("desk-kit-round");
/** Lamp lit */
export const deskKitLampOn = (): string => say("desk-kit-lamp-on");
/** The view is being fetched … */
export const deskKitRoundLoading = (): string => say("desk-kit-round-loading");
/** The slip */
export const deskKitSlip = (): string => say("desk-kit-slip");
/** Cuts */
export const deskKitCuts = (): string => say("desk-kit-cuts");
/** Time */
export const deskKitTime = (): string => say("desk-kit-time");
/** Merged strips */
export const deskKitMerged = (): string => say("desk-kit-merged");
/** Hold width */
export const deskKitHold = (): string => say("desk-kit-hold");
/** Opening */
export const deskKitAngle = (): string => say("desk-kit-angle");
/** Picture leaves */
export const deskKitLeaves = (): string => say("desk-kit-leaves");
/** Being worked out … */
export const deskKitWorking = (): string => say("desk-kit-working");
/** It will come out well */
export const deskKitVerdictFits = (): string => say("desk-kit-verdict-fits");
/** Look at this first */
export const deskKitVerdictCheck = (): string => say("desk-kit-verdict-check");
/** It will come out poorly */
export const deskKitVerdictPoor = (): string => say("desk-kit-verdict-poor");
/** It cannot be made so */
export const deskKitVerdictUnfit = (): string => say("desk-kit-verdict-unfit");
/** What helps */
export const deskKitWays = (): string => say("desk-kit-ways");
/** No change that was tried helps enough. */
export const deskKitNoWay = (): string => say("desk-kit-no-way");
/** One thing more|{count} things more */
export const deskKitMoreFindings = (args: { readonly count: number }): string => say("desk-kit-more-findings", args);
/** The opening */
export const deskKitOpening = (): string => say("desk-kit-opening");
/** Worked out from the rest */
export const deskKitSolve = (): string => say("desk-kit-solve");
/** how far it opens */
export const deskKitSolveOpening = (): string => say("desk-kit-solve-opening");
/** the picture’s height */
export const deskKitSolveHeight = (): string => say("desk-kit-solve-height");
/** the picture leaves */
export const deskKitSolveLeaves = (): string => say("desk-kit-solve-leaves");
/** nothing: stretch it */
export const deskKitSolveNothing = (): string => say("desk-kit-solve-nothing");
/** Border leaves before */
export const deskKitBorderBefore = (): string => say("desk-kit-border-before");
/** Border leaves after */
export const deskKitBorderAfter = (): string => say("desk-kit-border-after");
/** Picture leaves */
export const deskKitPictureLeaves = (): string => say("desk-kit-picture-leaves");
/** all between */
export const deskKitFill = (): string => say("desk-kit-fill");
/** Least strip */
export const deskKitLeastTab = (): string => say("desk-kit-least-tab");
/** Centre it on the leaf */
export const deskKitCentre = (): string => say("desk-kit-centre");
/** The book */
export const deskKitBook = (): string => say("desk-kit-book");
/** The lamp */
export const deskKitLamp = (): string => say("desk-kit-lamp");
/** No light stands in this book. */
export const deskKitLampNone = (): string => say("desk-kit-lamp-none");
/** Put a light in */
export const deskKitLampAdd = (): string => say("desk-kit-lamp-add");
/** Take the light out */
export const deskKitLampOut = (): string => say("desk-kit-lamp-out");
/** Stands in */
export const deskKitLampIn = (): string => say("desk-kit-lamp-in");
/** Width */
export const deskKitLampDiameter = (): string => say("desk-kit-lamp-diameter");
/** Height */
export const deskKitLampHeight = (): string => say("desk-kit-lamp-height");
/** Behind the front */
export const deskKitLampSetback = (): string => say("desk-kit-lamp-setback");
/** Free all round */
export const deskKitLampClearance = (): string => say("desk-kit-lamp-clearance");
/** Floor, from the head */
export const deskKitLampFloor = (): string => say("desk-kit-lamp-floor");
/** Lowest that is wide enough */
export const deskKitLampAuto = (): string => say("desk-kit-lamp-auto");
/** The door */
export const deskKitDoor = (): string => say("desk-kit-door");
/** No window closes this book. */
export const deskKitDoorNone = (): string => say("desk-kit-door-none");
/** Hang a window */
export const deskKitDoorAdd = (): string => say("desk-kit-door-add");
/** Take the window away */
export const deskKitDoorOut = (): string => say("desk-kit-door-out");
/** The closed window from the front. */
export const deskKitDoorAlt = (): string => say("desk-kit-door-alt");
/** Cut along */
export const deskKitDoorOutline = (): string => say("desk-kit-door-outline");
/** Glue lip */
export const deskKitDoorLip = (): string => say("desk-kit-door-lip");
/** Hinge */
export const deskKitDoorHinge = (): string => say("desk-kit-door-hinge");
/** left */
export const deskKitDoorLeft = (): string => say("desk-kit-door-left");
/** right */
export const deskKitDoorRight = (): string => say("desk-kit-door-right");
/** Panel */
export const deskKitDoorPanel = (): string => say("desk-kit-door-panel");
/** bent round */
export const deskKitDoorWrap = (): string => say("desk-kit-door-wrap");
/** flat */
export const deskKitDoorFlat = (): string => say("desk-kit-door-flat");
/** Add a motif */
export const deskKitMotifAdd = (): string => say("desk-kit-motif-add");
/** Choose one */
export const deskKitMotifChoose = (): string => say("desk-kit-motif-choose");
/** There are no motifs in content/motifs. */
export const deskKitMotifShelfEmpty = (): string => say("desk-kit-motif-shelf-empty");
/** Motif */
export const deskKitMotif = (): string => say("desk-kit-motif");
/** From the left */
export const deskKitMotifAcross = (): string => say("desk-kit-motif-across");
/** From above */
export const deskKitMotifDown = (): string => say("desk-kit-motif-down");
/** Width */
export const deskKitMotifWidth = (): string => say("desk-kit-motif-width");
/** Take it out */
export const deskKitMotifOut = (): string => say("desk-kit-motif-out");
/** Covers the light */
export const deskKitMotifCovers = (): string => say("desk-kit-motif-covers");
/** {name}: move it with the arrow keys — For who moves it by keys: $name is the motif’s. */
export const deskKitMotifMove = (args: { readonly name: Word }): string => say("desk-kit-motif-move", args);
/** {across} from the left, {down} from above */
export const deskKitMotifAt = (args: { readonly across: Word; readonly down: Word }): string => say("desk-kit-motif-at", args);
/** Arrow keys move a handle by the finest step, with Shift by a large one. — Keys of all handles. */
export const deskKitKeys = (): string => say("desk-kit-keys");
/** Bring a picture */
export const deskNewTitle = (): string => say("desk-new-title");
/** All kits and classes */
export const deskNewBack = (): string => say("desk-new-back");
/** Make the kit — Makes the kit’s folder; nothing is written before. */
export const deskNewMake = (): string => say("desk-new-make");
/** Nothing is written yet */
export const deskNewToldNothing = (): string => say("desk-new-told-nothing");
/** Being drawn … */
export const deskNewToldLooking = (): string => say("desk-new-told-looking");
/** Being made … */
export const deskNewToldMaking = (): string => say("desk-new-told-making");
/** {folder} can be made — $folder: below the project. */
export const deskNewToldReady = (args: { readonly folder: Word }): string => say("desk-new-told-ready", args);
/** Something is in the way */
export const deskNewToldHurdles = (): string => say("desk-new-told-hurdles");
/** The picture you brought is not made into a kit yet. Leave it? */
export const deskNewLeave = (): string => say("desk-new-leave");
/** This is in the way */
export const deskNewHurdles = (): string => say("desk-new-hurdles");
/** {place}: {given} — $place: a file with its line, or a key. $given: what is wrong with it. */
export const deskNewHurdle = (args: { readonly place: Word; readonly given: Word }): string => say("desk-new-hurdle", args);
/** Allowed: {allowed}. What to do: {remedy}. — $allowed: what would be allowed, as a phrase. $remedy: what to do, as a phrase. */
export const deskNewHurdleWay = (args: { readonly allowed: Word; readonly remedy: Word }): string => say("desk-new-hurdle-way", args);
/** This was not done: {why} */
export const deskNewFailed = (args: { readonly why: Word }): string => say("desk-new-failed", args);
/** The picture */
export const deskNewPicture = (): string => say("desk-new-picture");
/** Where it comes from */
export const deskNewOrigin = (): string => say("desk-new-origin");
/** A file of mine */
export const deskNewOriginFile = (): string => say("desk-new-origin-file");
/** A word */
export const deskNewOriginWord = (): string => say("desk-new-origin-word");
/** An outline */
export const deskNewOriginOutline = (): string => say("desk-new-origin-outline");
/** An icon */
export const deskNewOriginIcon = (): string => say("desk-new-origin-icon");
/** Choose a file */
export const deskNewChoose = (): string => say("desk-new-choose");
/** Choose another file */
export const deskNewChooseOther = (): string => say("desk-new-choose-other");
/** Drop a picture here — What the place says that pictures are dropped on. */
export const deskNewDrop = (): string => say("desk-new-drop");
/** SVG, PNG, JPEG, WebP or AVIF, at most {most} MB — $most: MB. */
export const deskNewKinds = (args: { readonly most: Word }): string => say("desk-new-kinds", args);
/** Your picture is being looked at … */
export const deskNewReading = (): string => say("desk-new-reading");
/** {file} is larger than the {most} MB that a picture may have. */
export const deskNewTooLarge = (args: { readonly file: Word; readonly most: Word }): string => say("desk-new-too-large", args);
/** One picture makes a kit; the first of these was taken. */
export const deskNewOneFile = (): string => say("desk-new-one-file");
/** Word, in one line or several */
export const deskNewWord = (): string => say("desk-new-word");
/** Font */
export const deskNewFont = (): string => say("desk-new-font");
/** the usual one */
export const deskNewFontUsual = (): string => say("desk-new-font-usual");
/** Outline */
export const deskNewOutline = (): string => say("desk-new-outline");
/** What it shows, in English */
export const deskNewIconSearch = (): string => say("desk-new-icon-search");
/** Icon */
export const deskNewIcon = (): string => say("desk-new-icon");
/** Type a word, such as boat. */
export const deskNewIconNone = (): string => say("desk-new-icon-none");
/** Icons of the open set Phosphor Icons (MIT) — Where the icons are from. */
export const deskNewIconFrom = (): string => say("desk-new-icon-from");
/** What stands out */
export const deskNewParting = (): string => say("desk-new-parting");
/** How it becomes levels */
export const deskNewTrace = (): string => say("desk-new-trace");
/** One shape before the rest */
export const deskNewTraceSilhouette = (): string => say("desk-new-trace-silhouette");
/** By how dark it is */
export const deskNewTraceTones = (): string => say("desk-new-trace-tones");
/** A depth picture: light is near */
export const deskNewTraceDepth = (): string => say("desk-new-trace-depth");
/** By its colours */
export const deskNewTraceColours = (): string => say("desk-new-trace-colours");
/** Levels, with the ground */
export const deskNewLevels = (): string => say("desk-new-levels");
/** Which side stands out */
export const deskNewNear = (): string => say("desk-new-near");
/** the dark */
export const deskNewNearDark = (): string => say("desk-new-near-dark");
/** the light */
export const deskNewNearLight = (): string => say("desk-new-near-light");
/** Part of this picture is transparent, so the rest is the shape. */
export const deskNewCutOut = (): string => say("desk-new-cut-out");
/** How much of the picture is how light, from black to white — The picture’s lightness as bars, for readers of the screen. */
export const deskNewHistogram = (): string => say("desk-new-histogram");
/** Limit between dark and light */
export const deskNewLimit = (): string => say("desk-new-limit");
/** Limit {number} of {count}, from dark to light — $number: from the dark side. $count: how many limits there are. */
export const deskNewLimitNumber = (args: { readonly number: Word; readonly count: Word }): string => say("desk-new-limit-number", args);
/** As the program finds them */
export const deskNewLimitsFound = (): string => say("desk-new-limits-found");
/** Smoothing */
export const deskNewTolerance = (): string => say("desk-new-tolerance");
/** Leave out what is smaller than */
export const deskNewLeast = (): string => say("desk-new-least");
/** {millimetres} mm — A length that no ruler shows. */
export const deskNewMillimetres = (args: { readonly millimetres: Word }): string => say("desk-new-millimetres", args);
/** {inches} in */
export const deskNewInches = (args: { readonly inches: Word }): string => say("desk-new-inches", args);
/** Colour {number} */
export const deskNewColour = (args: { readonly number: Word }): string => say("desk-new-colour", args);
/** What is which level */
export const deskNewSorting = (): string => say("desk-new-sorting");
/** Shapes told apart by */
export const deskNewSortedBy = (): string => say("desk-new-sorted-by");
/** names: {names} */
export const deskNewSortedNames = (args: { readonly names: Word }): string => say("desk-new-sorted-names", args);
/** colours */
export const deskNewSortedColours = (): string => say("desk-new-sorted-colours");
/** nothing: all one level */
export const deskNewSortedNot = (): string => say("desk-new-sorted-not");
/** Levels */
export const deskNewMarks = (): string => say("desk-new-marks");
/** {name}, {share} — $name: a layer, an object or a colour. $share: its share of the picture, as “12%”. */
export const deskNewMark = (args: { readonly name: Word; readonly share: Word }): string => say("desk-new-mark", args);
/** 1, front */
export const deskNewLevelFront = (): string => say("desk-new-level-front");
/** ground */
export const deskNewLevelGround = (): string => say("desk-new-level-ground");
/** Press on a shape to find it in the list. */
export const deskNewPress = (): string => say("desk-new-press");
/** How it stands */
export const deskNewRelief = (): string => say("desk-new-relief");
/** before its ground */
export const deskNewReliefRaised = (): string => say("desk-new-relief-raised");
/** sunk into it */
export const deskNewReliefHollow = (): string => say("desk-new-relief-hollow");
/** What you brought */
export const deskNewBrought = (): string => say("desk-new-brought");
/** What becomes of it */
export const deskNewBecomes = (): string => say("desk-new-becomes");
/** The picture in {count} levels, from the front to the ground */
export const deskNewBecomesAlt = (args: { readonly count: Word }): string => say("desk-new-becomes-alt", args);
/** The part that is taken */
export const deskNewCrop = (): string => say("desk-new-crop");
/** Left edge */
export const deskNewCropLeft = (): string => say("desk-new-crop-left");
/** Right edge */
export const deskNewCropRight = (): string => say("desk-new-crop-right");
/** Upper edge */
export const deskNewCropTop = (): string => say("desk-new-crop-top");
/** Lower edge */
export const deskNewCropBottom = (): string => say("desk-new-crop-bottom");
/** {share}% from the start — The value of an edge, for readers of the screen. $share: of the picture’s width or height, from its left or upper edge. */
export const deskNewCropAt = (args: { readonly share: Word }): string => say("desk-new-crop-at", args);
/** Take all of it */
export const deskNewCropAll = (): string => say("desk-new-crop-all");
/** Take what is drawn */
export const deskNewCropUsual = (): string => say("desk-new-crop-usual");
/** Drag an edge, or move it with the arrow keys. */
export const deskNewCropKeys = (): string => say("desk-new-crop-keys");
/** Noted */
export const deskNewNotes = (): string => say("desk-new-notes");
/** The piece */
export const deskNewPiece = (): string => say("desk-new-piece");
/** The folded book shows here once there is a picture. */
export const deskNewPieceNone = (): string => say("desk-new-piece-none");
/** The slip */
export const deskNewSlip = (): string => say("desk-new-slip");
/** Height */
export const deskNewHeight = (): string => say("desk-new-height");
/** Opening */
export const deskNewOpening = (): string => say("desk-new-opening");
/** Cuts */
export const deskNewCuts = (): string => say("desk-new-cuts");
/** Time */
export const deskNewTime = (): string => say("desk-new-time");
/** Levels */
export const deskNewLevelsCount = (): string => say("desk-new-levels-count");
/** The light has no room in this picture and would be left out. */
export const deskNewUnlit = (): string => say("desk-new-unlit");
/** {file} could not be read. Choose it once more. — The browser could not read it; it may have been moved or removed meanwhile. */
export const deskNewUnread = (args: { readonly file: Word }): string => say("desk-new-unread", args);
/** The name */
export const deskNewNames = (): string => say("desk-new-names");
/** Title */
export const deskNewKitTitle = (): string => say("desk-new-kit-title");
/** Folder */
export const deskNewSlug = (): string => say("desk-new-slug");
/** It stands in {folder}. */
export const deskNewSlugBelow = (args: { readonly folder: Word }): string => say("desk-new-slug-below", args);
/** There is a folder of this name already. */
export const deskNewSlugTaken = (): string => say("desk-new-slug-taken");
/** Small letters, digits and single hyphens only, such as evening-boat. */
export const deskNewSlugLetters = (): string => say("desk-new-slug-letters");
/** Draft: not published yet */
export const deskNewDraft = (): string => say("desk-new-draft");
/** The book */
export const deskNewBook = (): string => say("desk-new-book");
/** A usual paperback */
export const deskNewBookUsual = (): string => say("desk-new-book-usual");
/** Measure a book */
export const deskNewBookMeasure = (): string => say("desk-new-book-measure");
/** The lamp */
export const deskNewLamp = (): string => say("desk-new-lamp");
/** A battery light stands inside */
export const deskNewLampIn = (): string => say("desk-new-lamp-in");
/** Its width */
export const deskNewLampDiameter = (): string => say("desk-new-lamp-diameter");
/** Its height */
export const deskNewLampHeight = (): string => say("desk-new-lamp-height");
/** No light. One can be put in later. */
export const deskNewLampNone = (): string => say("desk-new-lamp-none");
/** The desk is at {address} — On the terminal. $address: where a browser of this machine opens it. */
export const deskOpened = (args: { readonly address: Word }): string => say("desk-opened", args);
/** The design desk */
export const deskName = (): string => say("desk-name");
/** The desk of {site} — $site: the title of the site. */
export const deskPageTitle = (args: { readonly site: Word }): string => say("desk-page-title", args);
/** The desk is being laid … */
export const deskOpening = (): string => say("desk-opening");
/** The desk needs JavaScript. Allow it for this address, and load the page again. */
export const deskNoScript = (): string => say("desk-no-script");
/** The desk is locked */
export const deskClosedTitle = (): string => say("desk-closed-title");
/** Open the desk with the address that npm start told on the terminal: its key lets in this browser alone. */
export const deskUnopened = (): string => say("desk-unopened");
/** The desk answers to 127.0.0.1, localhost and [::1] alone. */
export const deskOtherHost = (): string => say("desk-other-host");
/** The desk only answers its own pages. */
export const deskOtherOrigin = (): string => say("desk-other-origin");
/** The desk does not take this way of asking. */
export const deskOtherMethod = (): string => say("desk-other-method");
/** The desk only takes what its own pages send. */
export const deskOtherType = (): string => say("desk-other-type");
/** What was sent is not what the desk takes. Load the page again, as the program may have changed. */
export const deskOtherForm = (): string => say("desk-other-form");
/** That is more than the desk takes at once. */
export const deskTooMuch = (): string => say("desk-too-much");
/** There is nothing at this address of the desk. */
export const deskNotFound = (): string => say("desk-not-found");
/** The desk only has kits, classes, their seats’ tables and the site’s settings. */
export const deskNotOfDesk = (): string => say("desk-not-of-desk");
/** Nothing was written, as the file is a link now: put the file itself there.|the file is read-only: let it be written, and try again.|permission is missing: give yourself permission to write in its folder, and try again.|the disk is full: make room on it, and try again.|the disk cannot be written ({code}): check it, and try again. — $code: the system’s name of the fault. */
export const deskUnwritable = (args: { readonly why: Word; readonly code: Word }): string => say("desk-unwritable", args);
/** the ports {first} to {last} are all taken. State another one: npm start -- --desk-port 9000 — $first, $last: numbers of ports. */
export const deskNoPort = (args: { readonly first: Word; readonly last: Word }): string => say("desk-no-port", args);
/** No editor was found. State yours in the variable VISUAL or EDITOR, and start again. */
export const deskNoEditor = (): string => say("desk-no-editor");
/** The editor did not open: {why} — $why: what the system says, in English. */
export const deskEditorFailed = (args: { readonly why: Word }): string => say("desk-editor-failed", args);
/** On the desk */
export const deskListTitle = (): string => say("desk-list-title");
/** One kit|{kits} kits|, one class|, {classes} classes|, one to mend|, {broken} to mend|, one to look at|, {look} to look at — What stands in the line above the list. $broken, $look: how many cannot be made, or need a look. */
export const deskSum = (args: { readonly kits: number; readonly classes: number; readonly broken: number; readonly look: number }): string => say("desk-sum", args);
/** {known} of {all} are worked out; the others follow — While kits are still being worked out. */
export const deskSumWaiting = (args: { readonly known: Word; readonly all: Word }): string => say("desk-sum-waiting", args);
/** Begin a kit */
export const deskNewKit = (): string => say("desk-new-kit");
/** See the site */
export const deskSeeSite = (): string => say("desk-see-site");
/** What all pages share is not as it should be */
export const deskSharedWrong = (): string => say("desk-shared-wrong");
/** Kits */
export const deskKits = (): string => say("desk-kits");
/** Classes */
export const deskClasses = (): string => say("desk-classes");
/** There is no kit yet. Begin one from a picture, a word or an outline. */
export const deskNoKits = (): string => say("desk-no-kits");
/** The kits are being looked through … */
export const deskLooking = (): string => say("desk-looking");
/** Find a title */
export const deskFind = (): string => say("desk-find");
/** To mend — States of a kit or a class, each in a word or two on a small seal. */
export const deskStateBroken = (): string => say("desk-state-broken");
/** Needs a look */
export const deskStateLook = (): string => say("desk-state-look");
/** Not worked out yet */
export const deskStateWaiting = (): string => say("desk-state-waiting");
/** Fine */
export const deskStateFine = (): string => say("desk-state-fine");
/** Draft */
export const deskDraft = (): string => say("desk-draft");
/** Lay it on the table — Leads to where a kit is changed by looking, and to the seats of a class. */
export const deskLayKit = (): string => say("desk-lay-kit");
/** Lay out its seats */
export const deskLayClass = (): string => say("desk-lay-class");
/** See its page — The kit’s page of the served site. */
export const deskSeePage = (): string => say("desk-see-page");
/** Open its file */
export const deskOpenFile = (): string => say("desk-open-file");
/** Open {file} at line {line} — In the file’s editor, at a line. */
export const deskOpenAtLine = (args: { readonly file: Word; readonly line: Word }): string => say("desk-open-at-line", args);
/** Open {file} */
export const deskOpenAt = (args: { readonly file: Word }): string => say("desk-open-at", args);
/** One thing to look at|{count} things to look at */
export const deskLookAt = (args: { readonly count: number }): string => say("desk-look-at", args);
/** One remark|{count} remarks — Of a kit or a class that is fine all the same. */
export const deskNoted = (args: { readonly count: number }): string => say("desk-noted", args);
/** One more|{count} more */
export const deskMoreMessages = (args: { readonly count: number }): string => say("desk-more-messages", args);
/** given {given}. — Parts of a message, below each other, after the name of a field in bold. $given, $allowed and $remedy are phrases. */
export const deskGiven = (args: { readonly given: Word }): string => say("desk-given", args);
/** Allowed: {allowed}. */
export const deskAllowed = (args: { readonly allowed: Word }): string => say("desk-allowed", args);
/** To do: {remedy}. */
export const deskRemedy = (args: { readonly remedy: Word }): string => say("desk-remedy", args);
/** {file} opens in your editor. — The editor was asked to open a file. */
export const deskOpeningFile = (args: { readonly file: Word }): string => say("desk-opening-file", args);
/** Print its PDFs */
export const deskPrint = (): string => say("desk-print");
/** Printing {title} — For those who hear the page. $title: of the kit. */
export const deskPrinting = (args: { readonly title: Word }): string => say("desk-printing", args);
/** The press is being made ready … */
export const deskPrintBegins = (): string => say("desk-print-begins");
/** {done} of {of} printed */
export const deskPrintFar = (args: { readonly done: Word; readonly of: Word }): string => say("desk-print-far", args);
/** {done} of {of} printed, about {left} s left — $left: about how many seconds. */
export const deskPrintFarLeft = (args: { readonly done: Word; readonly of: Word; readonly left: Word }): string => say("desk-print-far-left", args);
/** All PDFs are printed. */
export const deskPrinted = (): string => say("desk-printed");
/** The PDFs could not be printed: */
export const deskPrintFailed = (): string => say("desk-print-failed");
/** The desk’s server does not answer. Start it again with npm start. */
export const deskGone = (): string => say("desk-gone");
/** This is not as it should be. */
export const servedWrong = (): string => say("served-wrong");
/** The page below is the last state that could be made. — Follows the sentence before. */
export const servedLastGood = (): string => say("served-last-good");
/** Until it is mended, this page is without it. */
export const servedNothing = (): string => say("served-nothing");
/** Look at it on the desk */
export const servedToDesk = (): string => say("served-to-desk");
/** Only here, while the site is being made: — Stands in a strip below a page, before what only npm start offers there. */
export const servedHere = (): string => say("served-here");
/** Open it on the desk */
export const servedOnDesk = (): string => say("served-on-desk");
/** All PDFs are printed: the links of this page open them at once. */
export const servedPrinted = (): string => say("served-printed");
/** npm start does not answer. Start it again. */
export const servedAway = (): string => say("served-away");
/** This site answers to 127.0.0.1, localhost and [::1] alone. Started with npm start -- --network, it answers to other machines, too. — What a program is told that asks for the site by another name of this computer. Names of computers and what is typed stay as they are. */
export const servedOtherHost = (): string => say("served-other-host");
/** This site answers to an address of this machine, or to its own name, alone. npm start says the address. */
export const servedOtherName = (): string => say("served-other-name");
/** Not all kits are here yet — While kits are still worked out after the start, above the catalogue. */
export const servedWaitingTitle = (): string => say("served-waiting-title");
/** {known} of {all} kits are worked out so far. The others follow, and a page that is gone to comes first. */
export const servedWaiting = (args: { readonly known: Word; readonly all: Word }): string => say("served-waiting", args);
/** One kit that follows|{count} kits that follow */
export const servedWaitingList = (args: { readonly count: number }): string => say("served-waiting-list", args);
/** head */
export const drawHead = (): string => say("draw-head");
/** tail */
export const drawTail = (): string => say("draw-tail");
/** gutter */
export const drawGutter = (): string => say("draw-gutter");
/** fore-edge */
export const drawForeEdge = (): string => say("draw-fore-edge");
/** folded edge — The edge that a leaf gets when it is folded whole at the front level's line. */
export const drawFoldedEdge = (): string => say("draw-folded-edge");
/** head edge */
export const drawHeadEdge = (): string => say("draw-head-edge");
/** spine */
export const drawSpine = (): string => say("draw-spine");
/** flap */
export const drawFlap = (): string => say("draw-flap");
/** glue */
export const drawGlue = (): string => say("draw-glue");
/** light */
export const drawLight = (): string => say("draw-light");
/** dot of glue */
export const drawDotOfGlue = (): string => say("draw-dot-of-glue");
/** this leaf */
export const drawThisLeaf = (): string => say("draw-this-leaf");
/** next leaf */
export const drawNextLeaf = (): string => say("draw-next-leaf");
/** from the front */
export const drawFromFront = (): string => say("draw-from-front");
/** from the head */
export const drawFromHead = (): string => say("draw-from-head");
/** you look from here */
export const drawLookFromHere = (): string => say("draw-look-from-here");
/** hold width {width} */
export const drawHoldWidth = (args: { readonly width: Word }): string => say("draw-hold-width", args);
/** cut {depth} */
export const drawCut = (args: { readonly depth: Word }): string => say("draw-cut", args);
/** cut */
export const drawLineCut = (): string => say("draw-line-cut");
/** score */
export const drawLineScore = (): string => say("draw-line-score");
/** position */
export const drawLinePosition = (): string => say("draw-line-position");
/** What the lines mean. Heavy: a cut. Thin: an edge. Dashed: a score line. Dash-dot: a position only. Grey band: a folded edge. Thin with ticks: a dimension. Narrow strip: a leaf seen edge-on. Arrow: move this way. White number on black: the order of the work. Filled dot: glue. */
export const drawLegend = (): string => say("draw-legend");
/** cut */
export const drawLegendCut = (): string => say("draw-legend-cut");
/** edge */
export const drawLegendEdge = (): string => say("draw-legend-edge");
/** score line */
export const drawLegendScore = (): string => say("draw-legend-score");
/** position only */
export const drawLegendPosition = (): string => say("draw-legend-position");
/** dimension */
export const drawLegendDimension = (): string => say("draw-legend-dimension");
/** folded edge */
export const drawLegendFolded = (): string => say("draw-legend-folded");
/** leaf edge-on */
export const drawLegendLeaf = (): string => say("draw-legend-leaf");
/** move this way */
export const drawLegendMove = (): string => say("draw-legend-move");
/** order of work — Stands beside a white number on a black disc. */
export const drawLegendTurn = (): string => say("draw-legend-turn");
/** {length} across: {least} to {most} is good */
export const drawBarAcross = (args: { readonly length: Word; readonly least: Word; readonly most: Word }): string => say("draw-bar-across", args);
/** {length} upright: {least} to {most} is good */
export const drawBarUpright = (args: { readonly length: Word; readonly least: Word; readonly most: Word }): string => say("draw-bar-upright", args);
/** 1 print at “actual size” or 100% */
export const drawBarPrint = (): string => say("draw-bar-print");
/** 2 measure both bars with your ruler */
export const drawBarMeasure = (): string => say("draw-bar-measure");
/** 3 outside the band, change the scale */
export const drawBarChange = (): string => say("draw-bar-change");
/** 4 print all true-scale sheets alike */
export const drawBarAlike = (): string => say("draw-bar-alike");
/** this edge flush with the fore-edge */
export const drawGaugeFlush = (): string => say("draw-gauge-flush");
/** Print on card, or prick holes and corners through to card. Cut along the full outlines. */
export const drawGaugeMake = (): string => say("draw-gauge-make");
/** The gauge: prick dots through the holes of a dashed line, and join them along a ruler. */
export const drawGaugePricked = (): string => say("draw-gauge-pricked");
/** Or the strips: lay one long edge flush with the fore-edge, and score along the other. */
export const drawGaugeStrips = (): string => say("draw-gauge-strips");
/** {number} {level} — A level by its number in the pattern table and its name. */
export const drawGaugeLevel = (args: { readonly number: Word; readonly level: Word }): string => say("draw-gauge-level", args);
/** line {line} · {depth} — Beside a line, and on its strip: the levels folded at it, the line's number, its distance from the fore-edge. */
export const drawGaugeLine = (args: { readonly line: Word; readonly depth: Word }): string => say("draw-gauge-line", args);
/** {levels} · line {line} · {depth} */
export const drawGaugeUsedLine = (args: { readonly levels: Word; readonly line: Word; readonly depth: Word }): string => say("draw-gauge-used-line", args);
/** {levels} · {depth} */
export const drawGaugeOwnLine = (args: { readonly levels: Word; readonly depth: Word }): string => say("draw-gauge-own-line", args);
/** Cut apart, fold the tab over the head edge, copy the marks. */
export const drawStripFirst = (): string => say("draw-strip-first");
/** Lay the top line on your own mark at {from} from the head. */
export const drawStripNext = (args: { readonly from: Word }): string => say("draw-strip-next", args);
/** Top: leaf, book page, (pattern page). Fields: level. › cut depth from the folded edge|fore-edge. */
export const drawStripKey = (args: { readonly style: Word }): string => say("draw-strip-key", args);
/** no p. — On a leaf without a printed page number, where "p. 137" stands on others. */
export const drawStripNoPage = (): string => say("draw-strip-no-page");
/** notch, {depth} deep */
export const drawStripNotch = (args: { readonly depth: Word }): string => say("draw-strip-notch", args);
/** sheet {number} of {of} */
export const drawTemplateSheet = (args: { readonly number: Word; readonly of: Word }): string => say("draw-template-sheet", args);
/** {part}, sheet {number} of {of} */
export const drawTemplateTile = (args: { readonly part: Word; readonly number: Word; readonly of: Word }): string => say("draw-template-tile", args);
/** {letter} — The letter by which a part is found on its sheet. */
export const drawTemplateLetter = (args: { readonly letter: Word }): string => say("draw-template-letter", args);
/** {letter} {part}: {count} of {material}, either face|face toward you */
export const drawTemplateKey = (args: { readonly letter: Word; readonly part: Word; readonly count: Word; readonly material: Word; readonly face: Word }): string => say("draw-template-key", args);
/** {letter} {part}: {count} of {material}, either face|face toward you; position: {marks} — $marks are what the position lines on the part mean. */
export const drawTemplateKeyMarks = (args: { readonly letter: Word; readonly part: Word; readonly count: Word; readonly material: Word; readonly face: Word; readonly marks: Word }): string => say("draw-template-key-marks", args);
/** Cut on full lines only. Arrowheads: grain. */
export const drawTemplateCutOnly = (): string => say("draw-template-cut-only");
/** match {number} — Two sheets that belong side by side carry the same number at their match lines. */
export const drawTemplateMatch = (args: { readonly number: Word }): string => say("draw-template-match", args);
/** Black: this sheet. Lay the sheets so that match lines with the same number lie on each other, and tape them. */
export const drawTemplateMap = (): string => say("draw-template-map");
/** {part}: {use} — A part and what it is for. */
export const drawPart = (args: { readonly part: Word; readonly use: Word }): string => say("draw-part", args);
/** The window from the book outward: {frame}, then {glazing}, then {door}. */
export const drawLayers = (args: { readonly frame: Word; readonly glazing: Word; readonly door: Word }): string => say("draw-layers", args);
/** book */
export const drawLayersBook = (): string => say("draw-layers-book");
/** you */
export const drawLayersYou = (): string => say("draw-layers-you");
/** The pocket from above, {height} from the head. One leaf is|{notches} leaves are cut back so that the light, {diameter} wide, stands {setback} behind the front with {clearance} free all round. Every third leaf is drawn. */
export const drawPocketPlan = (args: { readonly height: Word; readonly notches: number; readonly diameter: Word; readonly setback: Word; readonly clearance: Word }): string => say("draw-pocket-plan", args);
/** Ø {diameter} */
export const drawPocketDiameter = (args: { readonly diameter: Word }): string => say("draw-pocket-diameter", args);
/** The pocket from the front. Its floor is {floor} from the head edge. The light is {height} tall, and the notches begin {clearance} above it. */
export const drawPocketElevation = (args: { readonly floor: Word; readonly height: Word; readonly clearance: Word }): string => say("draw-pocket-elevation", args);
/** {title}: the finished book, lit from inside|the opened book, seen from the front, with one level|{levels} levels and one folded leaf|{leaves} folded leaves */
export const drawFront = (args: { readonly title: Word; readonly mood: Word; readonly levels: number; readonly leaves: number }): string => say("draw-front", args);
/** Measuring the book. Leaf height, head to tail: {height}. Leaf width, fore-edge to gutter: {width}. Thickness of all {leaves} leaves, pressed together without the boards: {thickness}. {leaves} leaves are {pages} pages. */
export const drawMeasure = (args: { readonly height: Word; readonly width: Word; readonly leaves: Word; readonly thickness: Word; readonly pages: Word }): string => say("draw-measure", args);
/** leaf height {height} */
export const drawMeasureHeight = (args: { readonly height: Word }): string => say("draw-measure-height", args);
/** leaf width {width} */
export const drawMeasureWidth = (args: { readonly width: Word }): string => say("draw-measure-width", args);
/** thickness {thickness} */
export const drawMeasureThickness = (args: { readonly thickness: Word }): string => say("draw-measure-thickness", args);
/** {leaves} leaves */
export const drawMeasureLeaves = (args: { readonly leaves: Word }): string => say("draw-measure-leaves", args);
/** = {pages} pages */
export const drawMeasurePages = (args: { readonly pages: Word }): string => say("draw-measure-pages", args);
/** one leaf */
export const drawMeasureOneLeaf = (): string => say("draw-measure-one-leaf");
/** pressed, without boards */
export const drawMeasurePressed = (): string => say("draw-measure-pressed");
/** One leaf is two pages. Pattern page 1 is leaf {leaf} of the book. Its front, the recto, is {front}; its back, the verso, is {back}. Pattern pages count fronts only: 1, 3, 5 and so on. — $front and $back are printed pages ("p. 17") or "no number". */
export const drawPages = (args: { readonly leaf: Word; readonly front: Word; readonly back: Word }): string => say("draw-pages", args);
/** One leaf is two pages. Pattern page 1 is leaf {leaf} of the book, {name}. Neither of its pages has a printed number. Pattern pages count fronts only: 1, 3, 5 and so on. — $name is a leaf without a page number: "plate 1 of 4 after p. 192". */
export const drawPagesUnnumbered = (args: { readonly leaf: Word; readonly name: Word }): string => say("draw-pages-unnumbered", args);
/** its front, recto */
export const drawPagesFront = (): string => say("draw-pages-front");
/** turned: its back, verso */
export const drawPagesBack = (): string => say("draw-pages-back");
/** no number */
export const drawPagesNoNumber = (): string => say("draw-pages-no-number");
/** pattern page {page} */
export const drawPagesPattern = (args: { readonly page: Word }): string => say("draw-pages-pattern", args);
/** one sheet: leaf {leaf} = {front} and {back} */
export const drawPagesSheet = (args: { readonly leaf: Word; readonly front: Word; readonly back: Word }): string => say("draw-pages-sheet", args);
/** one sheet: leaf {leaf} = two pages without numbers */
export const drawPagesSheetUnnumbered = (args: { readonly leaf: Word }): string => say("draw-pages-sheet-unnumbered", args);
/** Pattern page 1 is leaf {leaf}, page 3 the next leaf. */
export const drawPagesFirst = (args: { readonly leaf: Word }): string => say("draw-pages-first", args);
/** Scoring. Above: the gauge lies on the page, its edge flush with the fore-edge. Its lines, measured from the fore-edge: {lines}. Press along a line with a bone folder. Below: the open book from the tail. The working side is lower, so packing goes under it and the gauge lies level, for example {packing} at leaf {leaf}. Thickness is exaggerated. — $lines is a list of the gauge's lines. */
export const drawScoring = (args: { readonly lines: Word; readonly packing: Word; readonly leaf: Word }): string => say("draw-scoring", args);
/** line {line} at {depth} */
export const drawScoringLine = (args: { readonly line: Word; readonly depth: Word }): string => say("draw-scoring-line", args);
/** line {line} at {depth} for {levels} */
export const drawScoringUsedLine = (args: { readonly line: Word; readonly depth: Word; readonly levels: Word }): string => say("draw-scoring-used-line", args);
/** {depth} for {levels} */
export const drawScoringOwnLine = (args: { readonly depth: Word; readonly levels: Word }): string => say("draw-scoring-own-line", args);
/** {depth} {level} */
export const drawScoringLevel = (args: { readonly depth: Word; readonly level: Word }): string => say("draw-scoring-level", args);
/** gauge */
export const drawScoringGauge = (): string => say("draw-scoring-gauge");
/** flush with the fore-edge */
export const drawScoringFlush = (): string => say("draw-scoring-flush");
/** bone folder */
export const drawScoringBoneFolder = (): string => say("draw-scoring-bone-folder");
/** turned leaves */
export const drawScoringTurned = (): string => say("draw-scoring-turned");
/** packing {packing} before leaf {leaf} */
export const drawScoringPacking = (args: { readonly packing: Word; readonly leaf: Word }): string => say("draw-scoring-packing", args);
/** gauge lies level */
export const drawScoringLevelGauge = (): string => say("draw-scoring-level-gauge");
/** seen from the tail */
export const drawScoringFromTail = (): string => say("draw-scoring-from-tail");
/** Score both lines — A step's number and what is done. */
export const drawFoldScore = (): string => say("draw-fold-score");
/** Mark and cut */
export const drawFoldCut = (): string => say("draw-fold-cut");
/** Fold each strip back */
export const drawFoldEach = (): string => say("draw-fold-each");
/** Tuck behind the leaf */
export const drawFoldTuck = (): string => say("draw-fold-tuck");
/** Fold it all at {depth} */
export const drawFoldWhole = (args: { readonly depth: Word }): string => say("draw-fold-whole", args);
/** Fold again and tuck */
export const drawFoldAgain = (): string => say("draw-fold-again");
/** mat under this leaf */
export const drawFoldMat = (): string => say("draw-fold-mat");
/** Upper: the page before you. Lower: the same leaf edge-on, seen from the head; thickness exaggerated. */
export const drawFoldFoot = (): string => say("draw-fold-foot");
/** The single fold in four steps, for two neighbouring strips at levels {upper} and {lower}. 1: score the lines at {nearer} and {deeper} from the fore-edge. 2: mark, and cut from the fore-edge {deeper} inward, on a mat. 3: fold each strip back at its own line, the upper one at {upperDepth}, the lower one at {lowerDepth}. 4: tuck the flaps between this leaf and the next. */
export const drawFoldSingle = (args: { readonly upper: Word; readonly lower: Word; readonly nearer: Word; readonly deeper: Word; readonly upperDepth: Word; readonly lowerDepth: Word }): string => say("draw-fold-single", args);
/** The stepped fold in four steps, for two neighbouring strips at levels {upper} and {lower}. 1: score the lines at {front} and {deeper} from the fore-edge. 2: fold the whole leaf back at {front}. 3: mark, and cut from the folded edge {cut} inward, through both layers, on a mat. 4: fold the deeper strip back again at its line and tuck it between this leaf and the next. The other stays at the folded edge. */
export const drawFoldStepped = (args: { readonly upper: Word; readonly lower: Word; readonly front: Word; readonly deeper: Word; readonly cut: Word }): string => say("draw-fold-stepped", args);
/** mark {mark} from the head */
export const drawCutMark = (args: { readonly mark: Word }): string => say("draw-cut-mark", args);
/** cut = {depth} − {front} = {cut} — $depth and $front are numbers without a unit. */
export const drawCutRuleStepped = (args: { readonly depth: Word; readonly front: Word; readonly cut: Word }): string => say("draw-cut-rule-stepped", args);
/** cut = the deeper of {upper} and {lower}: {cut} */
export const drawCutRuleSingle = (args: { readonly upper: Word; readonly lower: Word; readonly cut: Word }): string => say("draw-cut-rule-single", args);
/** How deep to cut, on leaf {leaf} at the mark {mark} from the head. Above the mark the leaf is at level {upper}, {upperDepth} from the fore-edge; below it at level {lower}, {lowerDepth}. The cut reaches the deeper of the two. The leaf is already folded at {front}, so the cut starts at the folded edge and is {cut} long. */
export const drawCutDepthStepped = (args: { readonly leaf: Word; readonly mark: Word; readonly upper: Word; readonly upperDepth: Word; readonly lower: Word; readonly lowerDepth: Word; readonly front: Word; readonly cut: Word }): string => say("draw-cut-depth-stepped", args);
/** How deep to cut, on leaf {leaf} at the mark {mark} from the head. Above the mark the leaf is at level {upper}, {upperDepth} from the fore-edge; below it at level {lower}, {lowerDepth}. The cut reaches the deeper of the two. It starts at the fore-edge and is {cut} long. */
export const drawCutDepthSingle = (args: { readonly leaf: Word; readonly mark: Word; readonly upper: Word; readonly upperDepth: Word; readonly lower: Word; readonly lowerDepth: Word; readonly cut: Word }): string => say("draw-cut-depth-single", args);
/** Leaf {leaf}, p. {page}, pattern page {patternPage} */
export const drawLeafTitle = (args: { readonly leaf: Word; readonly page: Word; readonly patternPage: Word }): string => say("draw-leaf-title", args);
/** Leaf {leaf}, {name}, pattern page {patternPage} — $name is a leaf without a page number: "plate 1 of 4 after p. 192". */
export const drawLeafTitleUnnumbered = (args: { readonly leaf: Word; readonly name: Word; readonly patternPage: Word }): string => say("draw-leaf-title-unnumbered", args);
/** mark › cut */
export const drawLeafMarkCut = (): string => say("draw-leaf-mark-cut");
/** fold at level */
export const drawLeafFold = (): string => say("draw-leaf-fold");
/** notch for the light: {from} to {to} */
export const drawLeafNotch = (args: { readonly from: Word; readonly to: Word }): string => say("draw-leaf-notch", args);
/** {depth} deep from the unfolded fore-edge */
export const drawLeafNotchDepth = (args: { readonly depth: Word }): string => say("draw-leaf-notch-depth", args);
/** One leaf whole: {title}. Heights from the head in {units}. Strips: {spans}. Marks and cuts from the folded edge|fore-edge: {cuts}. — $title is the leaf with its pages; $units the symbol of the heights' unit; $spans (the strips) and $cuts are lists. */
export const drawLeaf = (args: { readonly title: Word; readonly units: Word; readonly spans: Word; readonly style: Word; readonly cuts: Word }): string => say("draw-leaf", args);
/** One leaf whole: {title}. Heights from the head in {units}. Strips: {spans}. There are no marks. */
export const drawLeafPlain = (args: { readonly title: Word; readonly units: Word; readonly spans: Word }): string => say("draw-leaf-plain", args);
/** {from} to {to} at level {level} */
export const drawLeafSpan = (args: { readonly from: Word; readonly to: Word; readonly level: Word }): string => say("draw-leaf-span", args);
/** {at} cut {depth} */
export const drawLeafCut = (args: { readonly at: Word; readonly depth: Word }): string => say("draw-leaf-cut", args);
/** A notch for the light goes from {from} to {to}, {depth} deep from the unfolded fore-edge. */
export const drawLeafWithNotch = (args: { readonly from: Word; readonly to: Word; readonly depth: Word }): string => say("draw-leaf-with-notch", args);
/** Two leaves edge-on, seen from the head. Leaf {leaf} is folded at {depth}. Its flap lies behind it, and the next leaf, folded at the same depth, holds it. */
export const drawTucking = (args: { readonly leaf: Word; readonly depth: Word }): string => say("draw-tucking", args);
/** Every flap of this kit is held like this: there is nothing to glue. */
export const drawTuckingAllHeld = (): string => say("draw-tucking-all-held");
/** Leaf {leaf} is folded at {depth}. The next leaf is deeper, folded at {next}, so {loose} of the flap is loose: put a dot of glue between flap and leaf. */
export const drawTuckingDeeper = (args: { readonly leaf: Word; readonly depth: Word; readonly next: Word; readonly loose: Word }): string => say("draw-tucking-deeper", args);
/** Leaf {leaf} is folded at {depth}. There is no next leaf behind it: put a dot of glue between flap and leaf. */
export const drawTuckingLast = (args: { readonly leaf: Word; readonly depth: Word }): string => say("draw-tucking-last", args);
/** Held by the next leaf */
export const drawTuckingHeldTitle = (): string => say("draw-tucking-held-title");
/** Loose, as the next leaf is deeper: glue it */
export const drawTuckingDeeperTitle = (): string => say("draw-tucking-deeper-title");
/** Loose, as no leaf follows: glue it */
export const drawTuckingLastTitle = (): string => say("draw-tucking-last-title");
/** {width} loose */
export const drawTuckingLoose = (args: { readonly width: Word }): string => say("draw-tucking-loose", args);
/** seen edge-on from the head, thickness exaggerated */
export const drawTuckingFoot = (): string => say("draw-tucking-foot");
/** The opened book from above. The hold width is {width}, straight across between the folded edges of the first picture leaf, leaf {first}, and the last, leaf {last}. The boards’ edges are then {boards} apart. */
export const drawHold = (args: { readonly width: Word; readonly first: Word; readonly last: Word; readonly boards: Word }): string => say("draw-hold", args);
/** boards {width} */
export const drawHoldBoards = (args: { readonly width: Word }): string => say("draw-hold-boards", args);
/** The holder in place, seen from the front. The strip of card sits on the head edge. One slot is over the first picture leaf, leaf {first}; the other, {width} away, is over the last, leaf {last}. It stays there until all glue is dry. */
export const drawHolder = (args: { readonly first: Word; readonly width: Word; readonly last: Word }): string => say("draw-holder", args);
/** slot over leaf {leaf} */
export const drawHolderSlot = (args: { readonly leaf: Word }): string => say("draw-holder-slot", args);
/** The hinge at the left|right, edge-on from the head, the viewer below. The flap, {flap} wide, is folded back under the door along the score line. It is glued to the face of the base frame, which is glued on the book’s front tips. The glazing is glued behind the door. First closed, then open: only the door moves. Thickness is exaggerated. */
export const drawHinge = (args: { readonly side: Word; readonly flap: Word }): string => say("draw-hinge", args);
/** closed */
export const drawHingeClosed = (): string => say("draw-hinge-closed");
/** open */
export const drawHingeOpen = (): string => say("draw-hinge-open");
/** front tips */
export const drawHingeTips = (): string => say("draw-hinge-tips");
/** flap {width} */
export const drawHingeFlap = (args: { readonly width: Word }): string => say("draw-hinge-flap", args);
/** only the door moves */
export const drawHingeMoves = (): string => say("draw-hinge-moves");
/** flap stays */
export const drawHingeStays = (): string => say("draw-hinge-stays");
/** Closing the door. From the front: a card tab, glued behind the base frame, stands out beyond the edge opposite the hinge. The button is glued on the door. A loop of {string} of string goes through the tab’s hole and round the button. Below, the same from the head: front tips of the book, tab, base frame, door with button. Thickness is exaggerated. */
export const drawClosing = (args: { readonly string: Word }): string => say("draw-closing", args);
/** string {string} */
export const drawClosingString = (args: { readonly string: Word }): string => say("draw-closing-string", args);
/** button */
export const drawClosingButton = (): string => say("draw-closing-button");
/** tab */
export const drawClosingTab = (): string => say("draw-closing-tab");
/** tab, glued behind the base frame */
export const drawClosingTabGlued = (): string => say("draw-closing-tab-glued");
/** {about} A length of {least} to {most} mm: {help}. — help: field-length-help */
export const fieldLength = (args: { readonly about: Word; readonly least: Word; readonly most: Word; readonly help: Word }): string => say("field-length", args);
/** a number in mm, or text with a unit: 12, "12 mm", "1.2 cm", "0.5 in", "1 1/2 in" */
export const fieldLengthHelp = (): string => say("field-length-help");
/** {about} Left out: {usual}. */
export const fieldLeftOut = (args: { readonly about: Word; readonly usual: Word }): string => say("field-left-out", args);
/** {about} Up to {most} of them. */
export const fieldListMost = (args: { readonly about: Word; readonly most: Word }): string => say("field-list-most", args);
/** {about} {least} to {most} of them. */
export const fieldListBetween = (args: { readonly about: Word; readonly least: Word; readonly most: Word }): string => say("field-list-between", args);
/** {about} A whole number, {least} to {most}. */
export const fieldCount = (args: { readonly about: Word; readonly least: Word; readonly most: Word }): string => say("field-count", args);
/** {about} A number, {least} to {most}. */
export const fieldNumber = (args: { readonly about: Word; readonly least: Word; readonly most: Word }): string => say("field-number", args);
/** {about} A number above 0, up to {most}. */
export const fieldAmount = (args: { readonly about: Word; readonly most: Word }): string => say("field-amount", args);
/** {about} A number, 0 to {most}, with a point: 0.35. */
export const fieldCost = (args: { readonly about: Word; readonly most: Word }): string => say("field-cost", args);
/** {about} Text of up to {most} characters. */
export const fieldText = (args: { readonly about: Word; readonly most: Word }): string => say("field-text", args);
/** {about} One of: {values}. */
export const fieldChoice = (args: { readonly about: Word; readonly values: Word }): string => say("field-choice", args);
/** {about} Seconds, {least} to {most}. */
export const fieldSeconds = (args: { readonly about: Word; readonly least: Word; readonly most: Word }): string => say("field-seconds", args);
/** {about} Minutes, {least} to {most}. */
export const fieldMinutes = (args: { readonly about: Word; readonly least: Word; readonly most: Word }): string => say("field-minutes", args);
/** {about} A day of the calendar as YYYY-MM-DD: 2027-01-14. */
export const fieldDate = (args: { readonly about: Word }): string => say("field-date", args);
/** {about} https://… or http://… */
export const fieldAddress = (args: { readonly about: Word }): string => say("field-address", args);
/** {about} A number, 0.2 to 5; 1 is the kit’s own estimate. */
export const fieldPace = (args: { readonly about: Word }): string => say("field-pace", args);
/** Front matter of content/kits/<slug>/index.md. */
export const fieldKit = (): string => say("field-kit");
/** The kit’s name. */
export const fieldKitTitle = (): string => say("field-kit-title");
/** One line for the catalogue. */
export const fieldKitSummary = (): string => say("field-kit-summary");
/** Whether it is a draft: left out of the site, but shown by npm start. */
export const fieldKitDraft = (): string => say("field-kit-draft");
/** Units of page and packet. */
export const fieldUnits = (): string => say("field-units");
/** Share added to tape and string for waste. */
export const fieldKitWaste = (): string => say("field-kit-waste");
/** Currency of the prices. */
export const fieldCurrency = (): string => say("field-currency");
/** Where the picture is, and which of its shapes lie at which level. */
export const fieldPicture = (): string => say("field-picture");
/** The SVG picture beside index.md, as a path inside the kit folder. */
export const fieldPictureFile = (): string => say("field-picture-file");
/** Which shapes belong to which level: a level’s name, and under it what picks them. */
export const fieldPictureLevels = (): string => say("field-picture-levels");
/** by names: levels that are called like something in the picture */
export const fieldPictureLevelsUsual = (): string => say("field-picture-levels-usual");
/** canvas; drawing where it fills less than 60% of the canvas */
export const fieldPictureCropUsual = (): string => say("field-picture-crop-usual");
/** The levels, front (nearest the viewer) to back. */
export const fieldLevels = (): string => say("field-levels");
/** A level of the picture: its name, and either depth or line. */
export const fieldLevel = (): string => say("field-level");
/** The level’s name, used on page and packet. */
export const fieldLevelName = (): string => say("field-level-name");
/** Distance of the fold from the fore-edge. */
export const fieldLevelDepth = (): string => say("field-level-depth");
/** line says it */
export const fieldLevelDepthUsual = (): string => say("field-level-depth-usual");
/** Number of a gauge line, 1 for the first of gauge.lines. */
export const fieldLevelLine = (): string => say("field-level-line");
/** depth says it */
export const fieldLevelLineUsual = (): string => say("field-level-line-usual");
/** true on the level that shows where no shape is: exactly one of them. */
export const fieldLevelBackground = (): string => say("field-level-background");
/** false */
export const fieldLevelBackgroundUsual = (): string => say("field-level-background-usual");
/** The scoring gauge: its lines, and the packing pieces that support the working side. */
export const fieldGauge = (): string => say("field-gauge");
/** the levels’ own depths */
export const fieldGaugeUsual = (): string => say("field-gauge-usual");
/** Distances of the gauge’s lines from the fore-edge, line 1 first, increasing. */
export const fieldGaugeLines = (): string => say("field-gauge-lines");
/** Distance of a gauge line from the fore-edge. */
export const fieldGaugeLine = (): string => say("field-gauge-line");
/** Thickness of one of your own packing pieces, for the support table. */
export const fieldGaugeTile = (): string => say("field-gauge-tile");
/** Published versions, newest first; the first is the current one. Each is an entry of the feed. */
export const fieldVersions = (): string => say("field-versions");
/** A version that was published: version, date, note. */
export const fieldVersion = (): string => say("field-version");
/** The version’s name, in quotes so that 1.10 stays 1.10: "1.1" */
export const fieldVersionName = (): string => say("field-version-name");
/** The day it was published: year-month-day, 2026-10-03 */
export const fieldVersionDate = (): string => say("field-version-date");
/** What changed. */
export const fieldVersionNote = (): string => say("field-version-note");
/** Licence of the kit itself: what others may do with it. */
export const fieldLicence = (): string => say("field-licence");
/** Name of the licence, as people know it. */
export const fieldLicenceName = (): string => say("field-licence-name");
/** Where the licence can be read. */
export const fieldLicenceUrl = (): string => say("field-licence-url");
/** Links of your own. */
export const fieldLinks = (): string => say("field-links");
/** A link of your own: label and url. */
export const fieldLink = (): string => say("field-link");
/** The words of the link. */
export const fieldLinkLabel = (): string => say("field-link-label");
/** What it opens. */
export const fieldLinkUrl = (): string => say("field-link-url");
/** Whose picture it is and under which licence; shown on page and packet. */
export const fieldCredit = (): string => say("field-credit");
/** What the picture is taken from. */
export const fieldCreditWork = (): string => say("field-credit-work");
/** Licence of that work. */
export const fieldCreditLicence = (): string => say("field-credit-licence");
/** Where it comes from. */
export const fieldCreditSource = (): string => say("field-credit-source");
/** Address of the source: https://… */
export const fieldCreditUrl = (): string => say("field-credit-url");
/** Photos shown with the kit. */
export const fieldPhotos = (): string => say("field-photos");
/** A photo of the finished piece or of the work. */
export const fieldPhoto = (): string => say("field-photo");
/** A JPEG, PNG, WebP or AVIF photo, as a path inside the kit folder. */
export const fieldPhotoFile = (): string => say("field-photo-file");
/** What the photo shows, for people who cannot see it. */
export const fieldPhotoAlt = (): string => say("field-photo-alt");
/** The closed book’s measurements. */
export const fieldBook = (): string => say("field-book");
/** Head to tail of a leaf. */
export const fieldBookLeafHeight = (): string => say("field-book-leaf-height");
/** Fore-edge to gutter, as far as the leaf can be used. */
export const fieldBookLeafWidth = (): string => say("field-book-leaf-width");
/** All leaves pressed together, without the boards. */
export const fieldBookBlockThickness = (): string => say("field-book-block-thickness");
/** Leaves of the book (a leaf is two pages). */
export const fieldBookLeaves = (): string => say("field-book-leaves");
/** The leaf whose front carries printed page 1, counted from 1. */
export const fieldBookPageOneLeaf = (): string => say("field-book-page-one-leaf");
/** The last printed page number. */
export const fieldBookLastPage = (): string => say("field-book-last-page");
/** the leaves are numbered to the end */
export const fieldBookLastPageUsual = (): string => say("field-book-last-page-usual");
/** Unnumbered leaves between the pages; [] where there are none. */
export const fieldBookPlates = (): string => say("field-book-plates");
/** Reading direction. */
export const fieldBookDirection = (): string => say("field-book-direction");
/** How far a board stands beyond the leaves; 0 for a paperback. */
export const fieldBookSquare = (): string => say("field-book-square");
/** Thickness of one board, or of a paperback’s cover. */
export const fieldBookBoardThickness = (): string => say("field-book-board-thickness");
/** Unnumbered leaves bound in after a printed page. */
export const fieldPlate = (): string => say("field-plate");
/** Printed page that the plates follow. */
export const fieldPlateAfterPage = (): string => say("field-plate-after-page");
/** How many unnumbered leaves. */
export const fieldPlateLeaves = (): string => say("field-plate-leaves");
/** How the picture is matched to the book. At most one of pictureLeaves, height and opening is solve. */
export const fieldFit = (): string => say("field-fit");
/** Whole leaves before and after the picture, folded at the background’s depth: [12, 12]. The picture begins right after the first. */
export const fieldFitBorderLeaves = (): string => say("field-fit-border-leaves");
/** Whole leaves before the picture. */
export const fieldBorderBefore = (): string => say("field-border-before");
/** Whole leaves after the picture. */
export const fieldBorderAfter = (): string => say("field-border-after");
/** Leaves that carry the picture: fill, solve, or a whole number from 2. */
export const fieldFitPictureLeaves = (): string => say("field-fit-picture-leaves");
/** Leaves that carry the picture. fill: all between the borders; solve: as many as the shape needs. */
export const fieldFitPictureLeavesAbout = (): string => say("field-fit-picture-leaves-about");
/** fill: all between the borders; solve: as many as the shape needs. */
export const fieldFitPictureLeavesWord = (): string => say("field-fit-picture-leaves-word");
/** Picture leaves. */
export const fieldFitPictureLeavesCount = (): string => say("field-fit-picture-leaves-count");
/** Head edge to the picture’s top, on the front level. */
export const fieldFitHead = (): string => say("field-fit-head");
/** centred */
export const fieldFitHeadUsual = (): string => say("field-fit-head-usual");
/** Height of the picture on the front: solve, or {help}. */
export const fieldFitHeight = (args: { readonly help: Word }): string => say("field-fit-height", args);
/** Height of the picture on the front. */
export const fieldFitHeightLength = (): string => say("field-fit-height-length");
/** Opening of the book in degrees, 5 to 180 (to 360 with view: along), or solve. */
export const fieldFitOpening = (): string => say("field-fit-opening");
/** solve — The word as it is typed. */
export const fieldFitOpeningUsual = (): string => say("field-fit-opening-usual");
/** front: true shape as seen from the front; along: for pieces seen while walking round. */
export const fieldFitView = (): string => say("field-fit-view");
/** How the spine lies in the opened book. */
export const fieldFitSpine = (): string => say("field-fit-spine");
/** Marks are rounded to this step (0.5, 1, 1/32 in, 1/16 in). */
export const fieldFitMarkStep = (): string => say("field-fit-mark-step");
/** {mm} mm; 1/{parts} in where the kit’s units are in — $mm as it is typed, $parts the parts of an inch. */
export const fieldFitMarkStepUsual = (args: { readonly mm: Word; readonly parts: Word }): string => say("field-fit-mark-step-usual", args);
/** Strips shorter than this are merged with a neighbour. */
export const fieldFitLeastTab = (): string => say("field-fit-least-tab");
/** single: each strip is folded once; stepped: the whole leaf at the front line first; corner: no cuts, the corners beside one strip are folded over. */
export const fieldFitFoldStyle = (): string => say("field-fit-fold-style");
/** With foldStyle: corner, what the leaves show and how the others are folded. No knife is needed, so light and insert are left out. */
export const fieldFitCorner = (): string => say("field-fit-corner");
/** Levels that are joined to the front one, as one outline; the background is none of them. */
export const fieldFitCornerLevels = (): string => say("field-fit-corner-levels");
/** The name of a level. */
export const fieldFitCornerLevel = (): string => say("field-fit-corner-level");
/** How leaves are folded that show nothing, borders too. line: straight at the background’s depth, which is quick to fold and frames the picture evenly; half: the fore-edge laid to the gutter, without a line; middle: both corners to the middle, which leaves a row of points at the front. */
export const fieldFitCornerEmpty = (): string => say("field-fit-corner-empty");
/** What leaves are cut with: a knife on a mat, or short sharp scissors through one or two leaves. */
export const fieldFitCutWith = (): string => say("field-fit-cut-with");
/** What holds a loose flap: glue, a pin-head of it that dries; dots, a glue dot that holds at once. */
export const fieldFitTackWith = (): string => say("field-fit-tack-with");
/** Paper to leave between a flap and the gutter. */
export const fieldFitGutterClearance = (): string => say("field-fit-gutter-clearance");
/** How many leaf thicknesses a springy flap counts as. */
export const fieldFitFlapBulk = (): string => say("field-fit-flap-bulk");
/** Most leaves worked before a pause. */
export const fieldFitBatch = (): string => say("field-fit-batch");
/** Leaves that were skipped or torn: the picture closes up over the leaves after each one. [87]. */
export const fieldFitLostLeaves = (): string => say("field-fit-lost-leaves");
/** A leaf of the book. */
export const fieldFitLostLeaf = (): string => say("field-fit-lost-leaf");
/** A battery LED light that stands inside the book: an upright cylinder. */
export const fieldLight = (): string => say("field-light");
/** Level in whose region the light stands. */
export const fieldLightIn = (): string => say("field-light-in");
/** the deepest level */
export const fieldLightInUsual = (): string => say("field-light-in-usual");
/** Diameter of the light, measured at its widest. */
export const fieldLightDiameter = (): string => say("field-light-diameter");
/** Height of the light with its tip. */
export const fieldLightHeight = (): string => say("field-light-height");
/** Clear space all round. */
export const fieldLightClearance = (): string => say("field-light-clearance");
/** How far the light stands behind the front. */
export const fieldLightSetback = (): string => say("field-light-setback");
/** Floor of the pocket, measured from the head: auto, or {help}. */
export const fieldLightFloor = (args: { readonly help: Word }): string => say("field-light-floor", args);
/** Height of the floor it stands on, from the head. */
export const fieldLightFloorLength = (): string => say("field-light-floor-length");
/** The cells it takes, for the supplies: CR2032, 2 × AAA … */
export const fieldLightCells = (): string => say("field-light-cells");
/** The window that closes the hole: base frame, glazing, door. */
export const fieldInsert = (): string => say("field-insert");
/** Level whose outline the window’s frame follows. Its greatest hole is the window’s hole; without one it is the outline itself. */
export const fieldInsertOutline = (): string => say("field-insert-outline");
/** How far the frame reaches beyond the outline, and into the hole. */
export const fieldInsertLip = (): string => say("field-insert-lip");
/** Side of the door’s hinge. */
export const fieldInsertHinge = (): string => say("field-insert-hinge");
/** wrap: parts are unrolled along the front, for card that bends; flat: as seen from the front. */
export const fieldInsertPanel = (): string => say("field-insert-panel");
/** {about} a4, letter, 12x12, or { name, width, height }. — { "{" } and { "}" } write braces. */
export const fieldSheets = (args: { readonly about: Word }): string => say("field-sheets", args);
/** Sheets that parts are laid on; supplies are counted with the first that takes all parts. */
export const fieldSheetsAbout = (): string => say("field-sheets-about");
/** every sheet that has a name, first A4, or US Letter in inches */
export const fieldSheetsUsual = (): string => say("field-sheets-usual");
/** A sheet of your own size. */
export const fieldSheet = (): string => say("field-sheet");
/** The sheet’s name. */
export const fieldSheetName = (): string => say("field-sheet-name");
/** Width of the sheet. */
export const fieldSheetWidth = (): string => say("field-sheet-width");
/** Height of the sheet. */
export const fieldSheetHeight = (): string => say("field-sheet-height");
/** {about} Keys: {keys}. */
export const fieldPrices = (args: { readonly about: Word; readonly keys: Word }): string => say("field-prices", args);
/** Your price for one of each; for tape and string by the metre, or in a kit in inches by the foot. */
export const fieldPricesAbout = (): string => say("field-prices-about");
/** A price for one of it. */
export const fieldPrice = (): string => say("field-price");
/** Your own working times, for a practised hand; the hours of the kit follow from them. */
export const fieldRates = (): string => say("field-rates");
/** Turning to a leaf and reading its row. */
export const fieldRateLeaf = (): string => say("field-rate-leaf");
/** Pressing one score line. */
export const fieldRateScore = (): string => say("field-rate-score");
/** Making one mark. */
export const fieldRateMark = (): string => say("field-rate-mark");
/** Making one cut. */
export const fieldRateCut = (): string => say("field-rate-cut");
/** {knife} with a knife, {scissors} with scissors */
export const fieldRateCutUsual = (args: { readonly knife: Word; readonly scissors: Word }): string => say("field-rate-cut-usual", args);
/** Folding and tucking one strip. */
export const fieldRateFold = (): string => say("field-rate-fold");
/** Checking at a checkpoint. */
export const fieldRateCheck = (): string => say("field-rate-check");
/** Gluing one tack. */
export const fieldRateTack = (): string => say("field-rate-tack");
/** Cutting one notch of the light’s pocket. */
export const fieldRateNotch = (): string => say("field-rate-notch");
/** Cutting out and fitting one part of the window. */
export const fieldRatePart = (): string => say("field-rate-part");
/** How many times as long a first piece takes. */
export const fieldRateFirst = (): string => say("field-rate-first");
/** How long glued things lie still, in minutes. */
export const fieldDrying = (): string => say("field-drying");
/** Glue on paper and card. */
export const fieldDryingGlue = (): string => say("field-drying-glue");
/** The base frame on the book; 720 is overnight. */
export const fieldDryingFrame = (): string => say("field-drying-frame");
/** Supplies of the kit’s own; one named like a computed supply replaces its quantity and price. */
export const fieldSupplies = (): string => say("field-supplies");
/** A supply of the kit’s own, beside the computed ones. */
export const fieldSupply = (): string => say("field-supply");
/** What it is. */
export const fieldSupplyItem = (): string => say("field-supply-item");
/** How much. */
export const fieldSupplyQuantity = (): string => say("field-supply-quantity");
/** Of what: pieces, sheets, mm … */
export const fieldSupplyUnit = (): string => say("field-supply-unit");
/** Your price for all of it. */
export const fieldSupplyPrice = (): string => say("field-supply-price");
/** Front matter of content/classes/<slug>/index.md. */
export const fieldClass = (): string => say("field-class");
/** The class’s name. */
export const fieldClassTitle = (): string => say("field-class-title");
/** One line for the list of classes. */
export const fieldClassSummary = (): string => say("field-class-summary");
/** Day of the class, or of its first session. */
export const fieldClassDate = (): string => say("field-class-date");
/** Where it is held. */
export const fieldClassPlace = (): string => say("field-class-place");
/** Paper that the packets are printed on. */
export const fieldClassPaper = (): string => say("field-class-paper");
/** Folder name of another class. What is not stated here is taken over from there, but for days, state, seats and their table. */
export const fieldClassFrom = (): string => say("field-class-from");
/** nothing is taken over */
export const fieldClassFromUsual = (): string => say("field-class-from-usual");
/** Day on which the class is made known: from then on it stands in the feed. */
export const fieldClassAnnounced = (): string => say("field-class-announced");
/** it is not in the feed */
export const fieldClassAnnouncedUsual = (): string => say("field-class-announced-usual");
/** Folder names of the kits that the class offers; seats take the first unless they say: [harbour-moon]. */
export const fieldClassKits = (): string => say("field-class-kits");
/** A kit’s folder name. */
export const fieldClassKit = (): string => say("field-class-kit");
/** A table of the seats’ books beside index.md: CSV, XLSX or ODS. */
export const fieldClassBooks = (): string => say("field-class-books");
/** How many seats there are, numbered from 1. A seat that is not listed has its book still to come. */
export const fieldClassPlaces = (): string => say("field-class-places");
/** the seats that are listed */
export const fieldClassPlacesUsual = (): string => say("field-class-places-usual");
/** What became of the class: held (patterns and packets stay on its page) or closed (only the page stays). */
export const fieldClassState = (): string => say("field-class-state");
/** it is still to be held */
export const fieldClassStateUsual = (): string => say("field-class-state-usual");
/** The seats, each with a number and a book. */
export const fieldClassSeats = (): string => say("field-class-seats");
/** The sessions in order, each with its minutes. */
export const fieldClassSessions = (): string => say("field-class-sessions");
/** How many times the kits’ estimate this group takes. */
export const fieldClassPace = (): string => say("field-class-pace");
/** Share added to tape and string for waste. */
export const fieldClassWaste = (): string => say("field-class-waste");
/** What the teacher has ready: scores (all lines pressed), parts (window parts cut out): [parts]. */
export const fieldReady = (): string => say("field-ready");
/** A stage that the teacher does before the class. */
export const fieldReadyStage = (): string => say("field-ready-stage");
/** Share of a window part’s time that is left when it is cut out already. */
export const fieldFittingShare = (): string => say("field-fitting-share");
/** What is in stock: [{ item: card, quantity: 4 }]. */
export const fieldStock = (): string => say("field-stock");
/** Something that is in stock and need not be bought. */
export const fieldStockEntry = (): string => say("field-stock-entry");
/** A supply as the shopping list names it. */
export const fieldStockItem = (): string => say("field-stock-item");
/** How much is in stock, in the list’s unit. */
export const fieldStockQuantity = (): string => say("field-stock-quantity");
/** A crate of substitute books. A seat whose book does not fit is told which of them would. */
export const fieldSpares = (): string => say("field-spares");
/** A substitute book. */
export const fieldSpare = (): string => say("field-spare");
/** What you call it: what is written on its spine, or a number that you put on it. */
export const fieldSpareLabel = (): string => say("field-spare-label");
/** How much of a packet the seats are given: the table in short with what is cut out, the whole packet, or the whole one without its strips. */
export const fieldClassPacket = (): string => say("field-class-packet");
/** What students bring beside their book. What begins as a name in the list of supplies does is marked in their packets, and is not on the shopping list. */
export const fieldBring = (): string => say("field-bring");
/** Something to bring. */
export const fieldBringItem = (): string => say("field-bring-item");
/** An evening or a morning of the class. */
export const fieldSession = (): string => say("field-session");
/** What the session is called. */
export const fieldSessionTitle = (): string => say("field-session-title");
/** Day of the session. */
export const fieldSessionDate = (): string => say("field-session-date");
/** the first session is on the class’s day */
export const fieldSessionDateUsual = (): string => say("field-session-date-usual");
/** When it starts: "18:30", in quotes. */
export const fieldSessionStarts = (): string => say("field-session-starts");
/** How long the session is. */
export const fieldSessionMinutes = (): string => say("field-session-minutes");
/** Of these, not spent on the work: welcome, cautions, clearing away. */
export const fieldSessionAside = (): string => say("field-session-aside");
/** Of these, at the end, planned for nobody, so that late seats catch up. */
export const fieldSessionBuffer = (): string => say("field-session-buffer");
/** {prices} page is for one printed side. */
export const fieldClassPrices = (args: { readonly prices: Word }): string => say("field-class-prices", args);
/** How many are sold together, such as blades: 10. Whole packs are bought. Keys: {keys}. */
export const fieldPacks = (args: { readonly keys: Word }): string => say("field-packs", args);
/** How many are in one pack. */
export const fieldPack = (): string => say("field-pack");
/** Prices of sheets by size, in place of card and acetate in prices. */
export const fieldSheetPrices = (): string => say("field-sheet-prices");
/** What a sheet of one size costs. */
export const fieldSheetPrice = (): string => say("field-sheet-price");
/** One of the class’s sheets, as sheets names it. */
export const fieldSheetPriceSheet = (): string => say("field-sheet-price-sheet");
/** A price for one sheet of this size. */
export const fieldSheetPriceEach = (): string => say("field-sheet-price-each");
/** Tools of which there are fewer than seats, such as mat: 4. Seats take turns at them. Keys: {keys}. */
export const fieldTools = (args: { readonly keys: Word }): string => say("field-tools", args);
/** How many of it there are. */
export const fieldTool = (): string => say("field-tool");
/** A seat: its number, and its book here or in the books table. */
export const fieldSeat = (): string => say("field-seat");
/** The seat’s number; never a name. */
export const fieldSeatNumber = (): string => say("field-seat-number");
/** The kit of this seat. */
export const fieldSeatKit = (): string => say("field-seat-kit");
/** the class’s first kit */
export const fieldSeatKitUsual = (): string => say("field-seat-kit-usual");
/** This seat’s own pace instead of the group’s. */
export const fieldSeatPace = (): string => say("field-seat-pace");
/** the group’s pace */
export const fieldSeatPaceUsual = (): string => say("field-seat-pace-usual");
/** The book of this seat, measured as in a kit. */
export const fieldSeatBook = (): string => say("field-seat-book");
/** it stands in the books table */
export const fieldSeatBookUsual = (): string => say("field-seat-book-usual");
/** as the kit has it */
export const fieldAsTheKit = (): string => say("field-as-the-kit");
/** Unnumbered leaves: after which page, and how many: 192:4; 240:2 — A cell of the books table. */
export const fieldColumnPlates = (): string => say("field-column-plates");
/** no plates */
export const fieldColumnPlatesUsual = (): string => say("field-column-plates-usual");
/** Depths of all levels, front to back: 16; 24; 36 */
export const fieldColumnDepths = (): string => say("field-column-depths");
/** How the kit is matched to this seat’s book; what is left out stays as the kit has it. */
export const fieldSeatFit = (): string => say("field-seat-fit");
/** Picture height on this seat’s book. */
export const fieldSeatHeight = (): string => say("field-seat-height");
/** Head edge to the picture’s top. */
export const fieldSeatHead = (): string => say("field-seat-head");
/** How far this seat’s book is opened, in degrees, where the kit states that. */
export const fieldSeatOpening = (): string => say("field-seat-opening");
/** How many leaves show the picture. */
export const fieldSeatPictureLeaves = (): string => say("field-seat-picture-leaves");
/** Whole leaves before and after the picture: [8, 8]. */
export const fieldSeatBorderLeaves = (): string => say("field-seat-border-leaves");
/** How its leaves are made: single or stepped as in the kit, or corner, folded by their corners without a knife. */
export const fieldSeatFoldStyle = (): string => say("field-seat-fold-style");
/** Depth of a level. */
export const fieldSeatDepth = (): string => say("field-seat-depth");
/** Depths of all levels, front to back: [16, 24, 36]. */
export const fieldSeatDepths = (): string => say("field-seat-depths");
/** This seat’s own light, where it is not the kit’s. */
export const fieldSeatLight = (): string => say("field-seat-light");
/** Diameter of this seat’s light. */
export const fieldSeatLightDiameter = (): string => say("field-seat-light-diameter");
/** Height of this seat’s light. */
export const fieldSeatLightHeight = (): string => say("field-seat-light-height");
/** Settings of the site. */
export const fieldSite = (): string => say("field-site");
/** The site’s name. */
export const fieldSiteTitle = (): string => say("field-site-title");
/** One line about the site. */
export const fieldSiteSummary = (): string => say("field-site-summary");
/** Pictures worked into books, one leaf at a time. — What stands there where the author states no summary. */
export const fieldSiteSummaryUsual = (): string => say("field-site-summary-usual");
/** Address of the site’s folder, without parameters: https://host/folder/ */
export const fieldSiteUrl = (): string => say("field-site-url");
/** The address that the feed’s ids are made from, kept when the site moves: its first url. */
export const fieldSiteFeedId = (): string => say("field-site-feed-id");
/** url */
export const fieldSiteFeedIdUsual = (): string => say("field-site-feed-id-usual");
/** Language of the pages: the name of a folder of content/words, or one of it with a region: en, en-GB, en-US … */
export const fieldSiteLanguage = (): string => say("field-site-language");
/** Fonts for scripts beside Latin, Greek and Cyrillic, asked in this order. */
export const fieldFonts = (): string => say("field-fonts");
/** A font for pages and packets: file, name, licence. */
export const fieldFont = (): string => say("field-font");
/** A font file in content/fonts: WOFF2, WOFF, TTF or OTF. */
export const fieldFontFile = (): string => say("field-font-file");
/** What the font is called. Files of one name are its weights. */
export const fieldFontName = (): string => say("field-font-name");
/** the name inside the file */
export const fieldFontNameUsual = (): string => say("field-font-name-usual");
/** Licence of the font, where you state it. */
export const fieldFontLicence = (): string => say("field-font-licence");
/** Who makes the kits: name, kind, url. */
export const fieldAuthor = (): string => say("field-author");
/** Who makes the kits. */
export const fieldAuthorName = (): string => say("field-author-name");
/** A person, or an organisation such as a library or a workshop. */
export const fieldAuthorKind = (): string => say("field-author-kind");
/** The author’s own address: https://… */
export const fieldAuthorUrl = (): string => say("field-author-url");
/** A list of cautions, each with id, title, when, short and text. */
export const fieldCautions = (): string => say("field-cautions");
/** A caution: id, title, when, short, text. */
export const fieldCaution = (): string => say("field-caution");
/** A short name of its own, in small letters. */
export const fieldCautionId = (): string => say("field-caution-id");
/** What it is about, in a word or two. */
export const fieldCautionTitle = (): string => say("field-caution-title");
/** Which kits show it: always, cuts (a knife is used), glue (tacks or a window), light. */
export const fieldCautionWhen = (): string => say("field-caution-when");
/** What stands beside a step that needs it. */
export const fieldCautionShort = (): string => say("field-caution-short");
/** What stands in the list of cautions. */
export const fieldCautionText = (): string => say("field-caution-text");
/** The page’s heading. */
export const fieldGuideTitle = (): string => say("field-guide-title");
/** One line about the page. */
export const fieldGuideSummary = (): string => say("field-guide-summary");
/** Where the page stands among the others, counted from the first. */
export const fieldGuideOrder = (): string => say("field-guide-order");
/** chapter: read in order; reference: looked up. */
export const fieldGuideKind = (): string => say("field-guide-kind");
/** The catalogue’s name in tabs and search results. */
export const fieldCatalogueTitle = (): string => say("field-catalogue-title");
/** “Kits” */
export const fieldCatalogueTitleUsual = (): string => say("field-catalogue-title-usual");
/** The heading above all kits. */
export const fieldCatalogueHeading = (): string => say("field-catalogue-heading");
/** the title */
export const fieldCatalogueHeadingUsual = (): string => say("field-catalogue-heading-usual");
/** One line about the catalogue. */
export const fieldCatalogueSummary = (): string => say("field-catalogue-summary");
/** the site’s summary */
export const fieldCatalogueSummaryUsual = (): string => say("field-catalogue-summary-usual");
/** Left over from earlier versions; it changes nothing. */
export const fieldCatalogueLayout = (): string => say("field-catalogue-layout");
/** Picture */
export const figurePicture = (): string => say("figure-picture");
/** width × height on the front level */
export const figurePictureNote = (): string => say("figure-picture-note");
/** {width} × {height} {unit} — $unit is mm or in. */
export const figureSides = (args: { readonly width: Word; readonly height: Word; readonly unit: Word }): string => say("figure-sides", args);
/** Levels */
export const figureLevels = (): string => say("figure-levels");
/** from front to back */
export const figureLevelsNote = (): string => say("figure-levels-note");
/** Picture leaves */
export const figurePictureLeaves = (): string => say("figure-picture-leaves");
/** no border leaves|and {count} border leaf|and {count} border leaves */
export const figurePictureLeavesNote = (args: { readonly count: number }): string => say("figure-picture-leaves-note", args);
/** Cuts */
export const figureCuts = (): string => say("figure-cuts");
/** {folds} fold|{folds} folds, {scores} score line|{scores} score lines */
export const figureCutsNote = (args: { readonly folds: number; readonly scores: number }): string => say("figure-cuts-note", args);
/** Hold width */
export const figureHoldWidth = (): string => say("figure-hold-width");
/** between the folded edges of the first and last picture leaf, at the head */
export const figureHoldWidthNote = (): string => say("figure-hold-width-note");
/** Time */
export const figureTime = (): string => say("figure-time");
/** a guide, for a practised hand; a first piece takes about {first} — $first is a length of time. */
export const figureTimeNote = (args: { readonly first: Word }): string => say("figure-time-note", args);
/** a guide, for a practised hand; a first piece takes about {first}; plus {all} for glue to dry|, {each} after each of {times} batches — $all is how long glued things lie still beside the work, $each how long after each of so many batches. */
export const figureTimeNoteDrying = (args: { readonly first: Word; readonly all: Word; readonly times: number; readonly each: Word }): string => say("figure-time-note-drying", args);
/** Leaves */
export const figureLeaves = (): string => say("figure-leaves");
/** {before} border + {picture} picture + {after} border; the first {needed} are used */
export const figureLeavesNote = (args: { readonly before: Word; readonly picture: Word; readonly after: Word; readonly needed: Word }): string => say("figure-leaves-note", args);
/** Leaf height */
export const figureHeight = (): string => say("figure-height");
/** at least {height} */
export const figureHeightLeast = (args: { readonly height: Word }): string => say("figure-height-least", args);
/** head to tail; this book: {height} */
export const figureHeightNote = (args: { readonly height: Word }): string => say("figure-height-note", args);
/** Leaf width */
export const figureWidth = (): string => say("figure-width");
/** fore-edge to gutter; flaps need {width} of it */
export const figureWidthNote = (args: { readonly width: Word }): string => say("figure-width-note", args);
/** Thickness */
export const figureThickness = (): string => say("figure-thickness");
/** all leaves pressed together, without boards or cover */
export const figureThicknessNote = (): string => say("figure-thickness-note");
/** easy — How much work a kit is. */
export const difficultyEasy = (): string => say("difficulty-easy");
/** moderate */
export const difficultyModerate = (): string => say("difficulty-moderate");
/** demanding */
export const difficultyDemanding = (): string => say("difficulty-demanding");
/** picture|picture|motif|photo|folder|file */
export const fileField = (args: { readonly kind: Word }): string => say("file-field", args);
/** the file is not there */
export const fileMissing = (): string => say("file-missing");
/** a link that leads nowhere */
export const fileLinkNowhere = (): string => say("file-link-nowhere");
/** a link that leads out of {home} — $home: a folder: content/kits/moon */
export const fileLinkOutside = (args: { readonly home: Word }): string => say("file-link-outside", args);
/** a folder|a pipe|a socket|a device */
export const fileNotAFile = (args: { readonly is: Word }): string => say("file-not-a-file", args);
/** no folder */
export const fileNotAFolder = (): string => say("file-not-a-folder");
/** a file that this account may not read */
export const fileForbidden = (): string => say("file-forbidden");
/** the system cannot read it ({code}) — $code: the system’s own name of the fault: EIO */
export const fileUnreadable = (args: { readonly code: Word }): string => say("file-unreadable", args);
/** {size} MB */
export const fileTooLarge = (args: { readonly size: Word }): string => say("file-too-large", args);
/** an empty file */
export const fileEmpty = (): string => say("file-empty");
/** an AVIF photo|a GIF image|a file compressed with gzip|a HEIC photo|a JPEG photo|a document of an office program|a PDF document|a PNG image|a PostScript file|an SVG drawing|a TIFF image|a WebP photo|a ZIP archive|a file of another kind */
export const fileOtherContent = (args: { readonly is: Word }): string => say("file-other-content", args);
/** UTF-8 with a wrong byte|no text, but binary data|text that seems to be {seems} */
export const fileEncoding = (args: { readonly seems: Word }): string => say("file-encoding", args);
/** {what}, as the byte {byte} shows — $byte: 0xE9. It follows file-encoding. */
export const fileEncodingByte = (args: { readonly what: Word; readonly byte: Word }): string => say("file-encoding-byte", args);
/** the control character {code} — $code: U+0007 */
export const fileControl = (args: { readonly code: Word }): string => say("file-control", args);
/** a photo of at most {most} MB: {kinds}|a picture of at most {most} MB: {kinds}|an SVG picture in UTF-8 of at most {most} MB|an SVG picture in UTF-8 of at most {most} MB|a table of at most {most} MB: CSV in UTF-8 or UTF-16, XLSX or ODS|a font file of at most {most} MB|a text file in UTF-8 of at most {most} MB */
export const fileAllowed = (args: { readonly kind: Word; readonly most: Word; readonly kinds: Word }): string => say("file-allowed", args);
/** a folder that this account may read */
export const fileAllowedFolder = (): string => say("file-allowed-folder");
/** what is in {home} itself */
export const fileAllowedInside = (args: { readonly home: Word }): string => say("file-allowed-inside", args);
/** letters, signs, tabs and line ends */
export const fileAllowedCharacters = (): string => say("file-allowed-characters");
/** correct the name, or add the file */
export const fileDoAdd = (): string => say("file-do-add");
/** put what it leads to in place of the link */
export const fileDoLink = (): string => say("file-do-link");
/** remove it, and put the file in its place */
export const fileDoReplace = (): string => say("file-do-replace");
/** put the folder in its place */
export const fileDoFolder = (): string => say("file-do-folder");
/** give yourself the permission to read it */
export const fileDoPermission = (): string => say("file-do-permission");
/** copy the file anew, or look after the disk */
export const fileDoSystem = (): string => say("file-do-system");
/** save it smaller, as pages show photos at most 1600 pixels wide|save it smaller: 2400 pixels on the longer side are enough|simplify the drawing, and leave images out of it|simplify the drawing, and leave images out of it|take the font of one language or script, which is smaller|shorten it, or see whether it is the right file */
export const fileDoSmaller = (args: { readonly kind: Word }): string => say("file-do-smaller", args);
/** export the photo again|export the picture again|export the drawing again as plain SVG|export the drawing again as plain SVG|copy the font file again|write it, or remove the file */
export const fileDoWrite = (args: { readonly kind: Word }): string => say("file-do-write", args);
/** unpack it, and name the file that was in it */
export const fileDoUnpack = (): string => say("file-do-unpack");
/** save it as JPEG or PNG|save it as PNG or JPEG|export the drawing as plain SVG from your drawing program|export the drawing as plain SVG from your drawing program|export the table as CSV from your spreadsheet|save it as plain text */
export const fileDoExport = (args: { readonly kind: Word }): string => say("file-do-export", args);
/** save it as UTF-8 in your editor */
export const fileDoUtf8 = (): string => say("file-do-utf8");
/** remove this character */
export const fileDoCharacter = (): string => say("file-do-character");
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
/** Knife */
export const finderKnife = (): string => say("finder-knife");
/** with or without */
export const finderKnifeAny = (): string => say("finder-knife-any");
/** can be made without */
export const finderKnifeWithout = (): string => say("finder-knife-without");
/** made without */
export const finderKnifeMade = (): string => say("finder-knife-made");
/** Without a knife, leaves are folded by their corners; light and window are left out. */
export const finderKnifeHelp = (): string => say("finder-knife-help");
/** Folded without a knife: about {hours}. — On a card while no book is stated. $hours: a text. */
export const finderFolded = (args: { readonly hours: Word }): string => say("finder-folded", args);
/** Fit */
export const finderFit = (): string => say("finder-fit");
/** all kits */
export const finderFitAny = (): string => say("finder-fit-any");
/** fits as it is or with a change */
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
/** {kits}: {verdicts}. — $verdicts is a list of the phrases that follow. */
export const finderKitsVerdicts = (args: { readonly kits: Word; readonly verdicts: Word }): string => say("finder-kits-verdicts", args);
/** {count} fits your book as it is|{count} fit your book as they are */
export const finderCountOwn = (args: { readonly count: number }): string => say("finder-count-own", args);
/** {count} fits, but has something to check first|{count} fit, but have something to check first */
export const finderCountCheck = (args: { readonly count: number }): string => say("finder-count-check", args);
/** {count} fits with a change|{count} fit with a change */
export const finderCountChange = (args: { readonly count: number }): string => say("finder-count-change", args);
/** {count} would come out poorly|{count} would come out poorly */
export const finderCountPoor = (args: { readonly count: number }): string => say("finder-count-poor", args);
/** {count} does not fit|{count} do not fit */
export const finderCountNo = (args: { readonly count: number }): string => say("finder-count-no", args);
/** {count} could not be checked|{count} could not be checked */
export const finderCountUnknown = (args: { readonly count: number }): string => say("finder-count-unknown", args);
/** {count} was not worked out yet|{count} were not worked out yet */
export const finderCountWaiting = (args: { readonly count: number }): string => say("finder-count-waiting", args);
/** Work out {count} more kit|Work out {count} more kits — Below the answer, where many kits are left. */
export const finderMore = (args: { readonly count: number }): string => say("finder-more", args);
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
/** Fits, but check first */
export const finderFitsCheck = (): string => say("finder-fits-check");
/** Can be made, but poorly */
export const finderFitsPoor = (): string => say("finder-fits-poor");
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
/** Page {lastPage}, with page 1 on leaf {pageOneLeaf}, needs {needed} leaves. This book has {leaves}. A leaf is two pages. */
export const failPagesNeedMoreLeavesWhy = (args: { readonly lastPage: Word; readonly pageOneLeaf: Word; readonly needed: Word; readonly leaves: Word }): string => say("fail-pages-need-more-leaves-why", args);
/** page {lastPage} of a book of {leaves} leaves whose page 1 is on leaf {pageOneLeaf} */
export const failPagesNeedMoreLeavesGiven = (args: { readonly lastPage: Word; readonly leaves: Word; readonly pageOneLeaf: Word }): string => say("fail-pages-need-more-leaves-given", args);
/** {needed} leaves would be needed (a leaf is two pages) */
export const failPagesNeedMoreLeavesAllowed = (args: { readonly needed: Word }): string => say("fail-pages-need-more-leaves-allowed", args);
/** count the leaves again, or correct lastPage, pageOneLeaf or plates */
export const failPagesNeedMoreLeavesDoAuthor = (): string => say("fail-pages-need-more-leaves-do-author");
/** Count the leaves again, or correct the last page, the leaf with page 1, or the plates. */
export const failPagesNeedMoreLeavesDoReader = (): string => say("fail-pages-need-more-leaves-do-reader");
/** Count this seat’s leaves again, or correct its cell lastPage, pageOneLeaf or plates. */
export const failPagesNeedMoreLeavesDoTeacher = (): string => say("fail-pages-need-more-leaves-do-teacher");
/** Page 1 cannot be on leaf {pageOneLeaf}. This book has {leaves} leaves.|Page 1 on leaf {pageOneLeaf} and {plates} plates leave no leaf for a page. This book has {leaves} leaves. */
export const failNoPageWhy = (args: { readonly plates: number; readonly pageOneLeaf: Word; readonly leaves: Word }): string => say("fail-no-page-why", args);
/** page 1 on leaf {pageOneLeaf}, and {plates} unnumbered leaf|{plates} unnumbered leaves between the pages */
export const failNoPageGiven = (args: { readonly pageOneLeaf: Word; readonly plates: number }): string => say("fail-no-page-given", args);
/** at least one of the book’s {leaves} leaves with a page */
export const failNoPageAllowed = (args: { readonly leaves: Word }): string => say("fail-no-page-allowed", args);
/** count again from the first leaf; plates are counted in leaves, not pages */
export const failNoPageDoAuthor = (): string => say("fail-no-page-do-author");
/** Count again from the first leaf. Plates are counted in leaves, not pages. */
export const failNoPageDoReader = (): string => say("fail-no-page-do-reader");
/** Correct this seat’s cells pageOneLeaf and plates. Plates are counted in leaves, not pages. */
export const failNoPageDoTeacher = (): string => say("fail-no-page-do-teacher");
/** Plates cannot come after page {afterPage}. The last page is {lastPage}. */
export const failPlatesAfterLastPageWhy = (args: { readonly afterPage: Word; readonly lastPage: Word }): string => say("fail-plates-after-last-page-why", args);
/** plates after page {afterPage} */
export const failPlatesAfterLastPageGiven = (args: { readonly afterPage: Word }): string => say("fail-plates-after-last-page-given", args);
/** a printed page, 1 to {lastPage} */
export const failPlatesAfterLastPageAllowed = (args: { readonly lastPage: Word }): string => say("fail-plates-after-last-page-allowed", args);
/** leaves after the last page need no entry: they are unnumbered end leaves */
export const failPlatesAfterLastPageDoAuthor = (): string => say("fail-plates-after-last-page-do-author");
/** Correct the last page or the plates. Leaves after the last page need no entry. */
export const failPlatesAfterLastPageDoReader = (): string => say("fail-plates-after-last-page-do-reader");
/** Correct this seat’s cell lastPage or plates. Leaves after the last page need no entry. */
export const failPlatesAfterLastPageDoTeacher = (): string => say("fail-plates-after-last-page-do-teacher");
/** {before} border leaves, {picture} picture leaves and {after} border leaves make {sum}. This book has {leaves}. */
export const failTooFewLeavesWhy = (args: { readonly before: Word; readonly picture: Word; readonly after: Word; readonly sum: Word; readonly leaves: Word }): string => say("fail-too-few-leaves-why", args);
/** {before} border leaves + {picture} picture leaves + {after} border leaves = {sum} */
export const failTooFewLeavesGiven = (args: { readonly before: Word; readonly picture: Word; readonly after: Word; readonly sum: Word }): string => say("fail-too-few-leaves-given", args);
/** the book has {leaves} leaves */
export const failTooFewLeavesAllowed = (args: { readonly leaves: Word }): string => say("fail-too-few-leaves-allowed", args);
/** use narrower borders or a thicker book|use at most {most} picture leaves, narrower borders or a thicker book */
export const failTooFewLeavesDoAuthor = (args: { readonly room: Word; readonly most: Word }): string => say("fail-too-few-leaves-do-author", args);
/** Fold fewer border leaves, or choose a book with more leaves. */
export const failTooFewLeavesDoReader = (): string => say("fail-too-few-leaves-do-reader");
/** Lower this seat’s borderBefore and borderAfter, or give it a thicker book. */
export const failTooFewLeavesDoTeacher = (): string => say("fail-too-few-leaves-do-teacher");
/** The level “{level}” is {depth} deep. It must lie deeper than “{ahead}” at {before}. */
export const failLevelsOutOfOrderWhy = (args: { readonly level: Word; readonly depth: Word; readonly ahead: Word; readonly before: Word }): string => say("fail-levels-out-of-order-why", args);
/** "{level}" at {depth} after "{ahead}" at {before} */
export const failLevelsOutOfOrderGiven = (args: { readonly level: Word; readonly depth: Word; readonly ahead: Word; readonly before: Word }): string => say("fail-levels-out-of-order-given", args);
/** depths that increase from level to level */
export const failLevelsOutOfOrderAllowed = (): string => say("fail-levels-out-of-order-allowed");
/** put the levels in order, or deepen this one */
export const failLevelsOutOfOrderDoAuthor = (): string => say("fail-levels-out-of-order-do-author");
/** Make “{level}” deeper than {before}, or “{ahead}” shallower. */
export const failLevelsOutOfOrderDoReader = (args: { readonly level: Word; readonly before: Word; readonly ahead: Word }): string => say("fail-levels-out-of-order-do-reader", args);
/** Raise or lower this seat’s depths until each is more than the one before. */
export const failLevelsOutOfOrderDoTeacher = (): string => say("fail-levels-out-of-order-do-teacher");
/** The level “{level}” is {depth} deep, so its flap reaches {reach} inward. The leaf is {leafWidth} wide, and {clearance} must stay free at the gutter. */
export const failFlapInGutterWhy = (args: { readonly level: Word; readonly depth: Word; readonly reach: Word; readonly leafWidth: Word; readonly clearance: Word }): string => say("fail-flap-in-gutter-why", args);
/** level "{level}" is {depth} deep, its flap reaches {reach} inward */
export const failFlapInGutterGiven = (args: { readonly level: Word; readonly depth: Word; readonly reach: Word }): string => say("fail-flap-in-gutter-given", args);
/** leaf width {leafWidth} less {clearance} clearance at the gutter */
export const failFlapInGutterAllowed = (args: { readonly leafWidth: Word; readonly clearance: Word }): string => say("fail-flap-in-gutter-allowed", args);
/** choose a wider book, or lower fit.gutterClearance|the deepest fold possible is {deepest} (stepped folds|single folds) — $room: none where no fold at all has room. */
export const failFlapInGutterDoAuthor = (args: { readonly room: Word; readonly deepest: Word; readonly style: Word }): string => say("fail-flap-in-gutter-do-author", args);
/** Choose a wider book.|The deepest fold possible is {deepest}. Make the levels shallower, or choose a wider book. */
export const failFlapInGutterDoReader = (args: { readonly room: Word; readonly deepest: Word }): string => say("fail-flap-in-gutter-do-reader", args);
/** Give this seat a wider book.|The deepest fold possible is {deepest}: lower this seat’s depths, or give it a wider book. */
export const failFlapInGutterDoTeacher = (args: { readonly room: Word; readonly deepest: Word }): string => say("fail-flap-in-gutter-do-teacher", args);
/** The room for a light is cut, and nothing is cut where corners are folded.|A window closes an opening that is cut, and nothing is cut where corners are folded. */
export const failNeedsKnifeWhy = (args: { readonly part: Word }): string => say("fail-needs-knife-why", args);
/** a light, in a kit with foldStyle: corner|an insert, in a kit with foldStyle: corner */
export const failNeedsKnifeGiven = (args: { readonly part: Word }): string => say("fail-needs-knife-given", args);
/** nothing that is cut: no light and no insert */
export const failNeedsKnifeAllowed = (): string => say("fail-needs-knife-allowed");
/** take light out, or set foldStyle to single or stepped|take insert out, or set foldStyle to single or stepped */
export const failNeedsKnifeDoAuthor = (args: { readonly part: Word }): string => say("fail-needs-knife-do-author", args);
/** Choose single or stepped folds. */
export const failNeedsKnifeDoReader = (): string => say("fail-needs-knife-do-reader");
/** Set this seat’s foldStyle to single or stepped. */
export const failNeedsKnifeDoTeacher = (): string => say("fail-needs-knife-do-teacher");
/** The level “{level}” is the background, so there is no outline for folded corners to show. */
export const failBackgroundShownWhy = (args: { readonly level: Word }): string => say("fail-background-shown-why", args);
/** "{level}" as the background and as a level that folded corners show */
export const failBackgroundShownGiven = (args: { readonly level: Word }): string => say("fail-background-shown-given", args);
/** shown levels that stand out from the background */
export const failBackgroundShownAllowed = (): string => say("fail-background-shown-allowed");
/** make a deeper level the background, or set foldStyle to single or stepped */
export const failBackgroundShownDoAuthor = (): string => say("fail-background-shown-do-author");
/** Choose single or stepped folds. */
export const failBackgroundShownDoReader = (): string => say("fail-background-shown-do-reader");
/** Set this seat’s foldStyle to single or stepped. */
export const failBackgroundShownDoTeacher = (): string => say("fail-background-shown-do-teacher");
/** The leaf is {leafWidth} wide, and {clearance} must stay free at the gutter. A folded corner needs {least}. */
export const failNoRoomForCornersWhy = (args: { readonly leafWidth: Word; readonly clearance: Word; readonly least: Word }): string => say("fail-no-room-for-corners-why", args);
/** leaf width {leafWidth} less {clearance} clearance at the gutter */
export const failNoRoomForCornersGiven = (args: { readonly leafWidth: Word; readonly clearance: Word }): string => say("fail-no-room-for-corners-given", args);
/** at least {least} for a folded corner */
export const failNoRoomForCornersAllowed = (args: { readonly least: Word }): string => say("fail-no-room-for-corners-allowed", args);
/** lower fit.gutterClearance, or choose a wider book */
export const failNoRoomForCornersDoAuthor = (): string => say("fail-no-room-for-corners-do-author");
/** Choose a book with wider leaves. */
export const failNoRoomForCornersDoReader = (): string => say("fail-no-room-for-corners-do-reader");
/** Give this seat a book with wider leaves. */
export const failNoRoomForCornersDoTeacher = (): string => say("fail-no-room-for-corners-do-teacher");
/** At {height} tall, every strip that folded corners would show is shorter than {leastTab}. */
export const failNothingToShowWhy = (args: { readonly height: Word; readonly leastTab: Word }): string => say("fail-nothing-to-show-why", args);
/** the picture, of which no leaf would show a strip */
export const failNothingToShowGiven = (): string => say("fail-nothing-to-show-given");
/** shapes of the shown levels that are at least {leastTab} tall on the leaves */
export const failNothingToShowAllowed = (args: { readonly leastTab: Word }): string => say("fail-nothing-to-show-allowed", args);
/** see that they lie inside the viewBox and are not covered, raise the height, or join levels with fit.corner.levels */
export const failNothingToShowDoAuthor = (): string => say("fail-nothing-to-show-do-author");
/** Make the picture taller. */
export const failNothingToShowDoReader = (): string => say("fail-nothing-to-show-do-reader");
/** Raise this seat’s height. */
export const failNothingToShowDoTeacher = (): string => say("fail-nothing-to-show-do-teacher");
/** The book cannot be opened to {opening} for this picture; {widest} is the widest. */
export const failOpeningTooWideWhy = (args: { readonly opening: Word; readonly widest: Word }): string => say("fail-opening-too-wide-why", args);
/** an opening of {opening} */
export const failOpeningTooWideGiven = (args: { readonly opening: Word }): string => say("fail-opening-too-wide-given", args);
/** at most {widest} */
export const failOpeningTooWideAllowed = (args: { readonly widest: Word }): string => say("fail-opening-too-wide-allowed", args);
/** open the book to {widest} or less */
export const failOpeningTooWideDoAuthor = (args: { readonly widest: Word }): string => say("fail-opening-too-wide-do-author", args);
/** Open the book to {widest} or less. */
export const failOpeningTooWideDoReader = (args: { readonly widest: Word }): string => say("fail-opening-too-wide-do-reader", args);
/** Choose another kit for this seat: its opening belongs to the kit. */
export const failOpeningTooWideDoTeacher = (): string => say("fail-opening-too-wide-do-teacher");
/** The picture would end {end} from the head. The leaf is {leafHeight} tall. */
export const failPictureOffLeafWhy = (args: { readonly end: Word; readonly leafHeight: Word }): string => say("fail-picture-off-leaf-why", args);
/** head {head} + height {height} (solved)| */
export const failPictureOffLeafGiven = (args: { readonly head: Word; readonly height: Word; readonly solved: Word }): string => say("fail-picture-off-leaf-given", args);
/** the leaf is {leafHeight} tall */
export const failPictureOffLeafAllowed = (args: { readonly leafHeight: Word }): string => say("fail-picture-off-leaf-allowed", args);
/** lower the head, or choose a taller book|lower the opening or use fewer picture leaves until the height is at most {room}, or choose a taller book|lower the height to at most {room} or the head|, or choose a taller book — $place: none where no picture has room below the head. */
export const failPictureOffLeafDoAuthor = (args: { readonly place: Word; readonly room: Word; readonly stated: Word }): string => say("fail-picture-off-leaf-do-author", args);
/** Choose a taller book.|Make the picture at most {room} tall, or choose a taller book. */
export const failPictureOffLeafDoReader = (args: { readonly place: Word; readonly room: Word }): string => say("fail-picture-off-leaf-do-reader", args);
/** Lower this seat’s head, or give it a taller book.|Set this seat’s height to at most {room}, or give it a taller book. */
export const failPictureOffLeafDoTeacher = (args: { readonly place: Word; readonly room: Word }): string => say("fail-picture-off-leaf-do-teacher", args);
/** A picture {height} tall is {width} wide. Even closed, {leaves} picture leaves of this book are {least} thick. */
export const failPictureTooNarrowWhy = (args: { readonly height: Word; readonly width: Word; readonly leaves: Word; readonly least: Word }): string => say("fail-picture-too-narrow-why", args);
/** a picture {height} tall is {width} wide */
export const failPictureTooNarrowGiven = (args: { readonly height: Word; readonly width: Word }): string => say("fail-picture-too-narrow-given", args);
/** even closed, {leaves} picture leaves of this book are {least} thick */
export const failPictureTooNarrowAllowed = (args: { readonly leaves: Word; readonly least: Word }): string => say("fail-picture-too-narrow-allowed", args);
/** use fewer picture leaves|raise the height to at least {leastHeight} or use fewer picture leaves — $room: none where the leaf has no room for the least height. */
export const failPictureTooNarrowDoAuthor = (args: { readonly room: Word; readonly leastHeight: Word }): string => say("fail-picture-too-narrow-do-author", args);
/** Fold more leaves as borders.|Make the picture at least {leastHeight} tall, or fold more leaves as borders. */
export const failPictureTooNarrowDoReader = (args: { readonly room: Word; readonly leastHeight: Word }): string => say("fail-picture-too-narrow-do-reader", args);
/** Raise this seat’s borderBefore and borderAfter.|Set this seat’s height to at least {leastHeight}, or raise its borderBefore and borderAfter. */
export const failPictureTooNarrowDoTeacher = (args: { readonly room: Word; readonly leastHeight: Word }): string => say("fail-picture-too-narrow-do-teacher", args);
/** A picture {height} tall is {width} wide. Opened to {widest}, {leaves} picture leaves of this book fill only {most}. */
export const failPictureTooWideWhy = (args: { readonly height: Word; readonly width: Word; readonly widest: Word; readonly leaves: Word; readonly most: Word }): string => say("fail-picture-too-wide-why", args);
/** a picture {height} tall is {width} wide */
export const failPictureTooWideGiven = (args: { readonly height: Word; readonly width: Word }): string => say("fail-picture-too-wide-given", args);
/** at {widest} this book can show at most {most} with {leaves} picture leaves */
export const failPictureTooWideAllowed = (args: { readonly widest: Word; readonly most: Word; readonly leaves: Word }): string => say("fail-picture-too-wide-allowed", args);
/** use {enough} picture leaves (smaller borders)|choose a book with more or wider leaves|lower the height to {mostHeight}, or use {enough} picture leaves (smaller borders)|lower the height to {mostHeight}, or choose a book with more or wider leaves — $help: leaves where more picture leaves would do, and with -only where no lower height would. */
export const failPictureTooWideDoAuthor = (args: { readonly help: Word; readonly enough: Word; readonly mostHeight: Word }): string => say("fail-picture-too-wide-do-author", args);
/** Make the picture {mostHeight} tall, or fold fewer border leaves, so that {enough} leaves carry it.|Make the picture {mostHeight} tall, or choose a book with more or wider leaves.|Choose a book with more or wider leaves. */
export const failPictureTooWideDoReader = (args: { readonly help: Word; readonly mostHeight: Word; readonly enough: Word }): string => say("fail-picture-too-wide-do-reader", args);
/** Set this seat’s height to {mostHeight}, or lower its borderBefore and borderAfter, so that {enough} leaves carry the picture.|Set this seat’s height to {mostHeight}, or give it a book with more or wider leaves.|Give this seat a book with more or wider leaves. */
export const failPictureTooWideDoTeacher = (args: { readonly help: Word; readonly mostHeight: Word; readonly enough: Word }): string => say("fail-picture-too-wide-do-teacher", args);
/** A picture {height} tall is {width} wide. At {opening}, the {leaves} leaves between the borders fill only {most}. */
export const failLeavesShowTooLittleWhy = (args: { readonly height: Word; readonly width: Word; readonly opening: Word; readonly leaves: Word; readonly most: Word }): string => say("fail-leaves-show-too-little-why", args);
/** a picture {height} tall and {width} wide at {opening} */
export const failLeavesShowTooLittleGiven = (args: { readonly height: Word; readonly width: Word; readonly opening: Word }): string => say("fail-leaves-show-too-little-given", args);
/** the {leaves} leaves between the borders fill only {most} */
export const failLeavesShowTooLittleAllowed = (args: { readonly leaves: Word; readonly most: Word }): string => say("fail-leaves-show-too-little-allowed", args);
/** open the book to {openingNeeded}, or choose a book with more leaves|choose a book with more leaves|open the book to {openingNeeded}, or lower the height to {mostHeight}, or choose a book with more leaves|lower the height to {mostHeight}, or choose a book with more leaves */
export const failLeavesShowTooLittleDoAuthor = (args: { readonly help: Word; readonly openingNeeded: Word; readonly mostHeight: Word }): string => say("fail-leaves-show-too-little-do-author", args);
/** Open the book to {openingNeeded}, make the picture {mostHeight} tall, or choose a book with more leaves.|Make the picture {mostHeight} tall, or choose a book with more leaves.|Choose a book with more leaves. */
export const failLeavesShowTooLittleDoReader = (args: { readonly help: Word; readonly openingNeeded: Word; readonly mostHeight: Word }): string => say("fail-leaves-show-too-little-do-reader", args);
/** Set this seat’s height to {mostHeight}, or give it a book with more leaves.|Set this seat’s height to {mostHeight}, or give it a book with more leaves.|Give this seat a book with more leaves. */
export const failLeavesShowTooLittleDoTeacher = (args: { readonly help: Word; readonly mostHeight: Word }): string => say("fail-leaves-show-too-little-do-teacher", args);
/** At {height} tall, all strips are shorter than {leastTab}, too short to fold. No leaf would be cut. */
export const failPictureFlatWhy = (args: { readonly height: Word; readonly leastTab: Word }): string => say("fail-picture-flat-why", args);
/** the picture, which gives no leaf a cut */
export const failPictureFlatGiven = (): string => say("fail-picture-flat-given");
/** a picture with at least two levels that the leaves show */
export const failPictureFlatAllowed = (): string => say("fail-picture-flat-allowed");
/** see that shapes lie inside the viewBox, do not cover all of each other, and are higher than leastTab */
export const failPictureFlatDoAuthor = (): string => say("fail-picture-flat-do-author");
/** Make the picture taller. */
export const failPictureFlatDoReader = (): string => say("fail-picture-flat-do-reader");
/** Raise this seat’s height. */
export const failPictureFlatDoTeacher = (): string => say("fail-picture-flat-do-teacher");
/** Leaf {leaf} carries no picture: the picture leaves run from {first} to {last}. */
export const failLostLeafOutsideWhy = (args: { readonly leaf: Word; readonly first: Word; readonly last: Word }): string => say("fail-lost-leaf-outside-why", args);
/** leaf {leaf} */
export const failLostLeafOutsideGiven = (args: { readonly leaf: Word }): string => say("fail-lost-leaf-outside-given", args);
/** picture leaves are {first} to {last} */
export const failLostLeafOutsideAllowed = (args: { readonly first: Word; readonly last: Word }): string => say("fail-lost-leaf-outside-allowed", args);
/** a border leaf changes nothing in the picture: take it off the list */
export const failLostLeafOutsideDoAuthor = (): string => say("fail-lost-leaf-outside-do-author");
/** A border leaf that is left out changes nothing in the picture. Go on with the next one. */
export const failLostLeafOutsideDoReader = (): string => say("fail-lost-leaf-outside-do-reader");
/** A border leaf that is left out changes nothing in the picture. */
export const failLostLeafOutsideDoTeacher = (): string => say("fail-lost-leaf-outside-do-teacher");
/** {lost} of {leaves} picture leaves are left out, and two must remain. */
export const failTooFewRemainWhy = (args: { readonly lost: Word; readonly leaves: Word }): string => say("fail-too-few-remain-why", args);
/** {lost} of {leaves} picture leaves */
export const failTooFewRemainGiven = (args: { readonly lost: Word; readonly leaves: Word }): string => say("fail-too-few-remain-given", args);
/** two picture leaves remain */
export const failTooFewRemainAllowed = (): string => say("fail-too-few-remain-allowed");
/** start again with another book */
export const failTooFewRemainDoAuthor = (): string => say("fail-too-few-remain-do-author");
/** Start again with another book. */
export const failTooFewRemainDoReader = (): string => say("fail-too-few-remain-do-reader");
/** Start again with another book. */
export const failTooFewRemainDoTeacher = (): string => say("fail-too-few-remain-do-teacher");
/** A light {diameter} wide and {height} tall with {clearance} of free space does not fit: {obstacle}. */
export const failNoRoomForLightWhy = (args: { readonly diameter: Word; readonly height: Word; readonly clearance: Word; readonly obstacle: Word }): string => say("fail-no-room-for-light-why", args);
/** a light {diameter} wide and {height} tall with {clearance} clearance: {obstacle} */
export const failNoRoomForLightGiven = (args: { readonly diameter: Word; readonly height: Word; readonly clearance: Word; readonly obstacle: Word }): string => say("fail-no-room-for-light-given", args);
/** the largest that can stand here: one {height} tall may be {mostDiameter} wide, or one {diameter} wide may be {mostHeight} tall|the largest that can stand here: one {height} tall may be {mostDiameter} wide|the largest that can stand here: one {diameter} wide may be {mostHeight} tall|no light of this width or height can stand in "{level}" — $choice says which of the two largest lights there are: both, only a width, only a height, or none. */
export const failNoRoomForLightAllowed = (args: { readonly choice: Word; readonly height: Word; readonly mostDiameter: Word; readonly diameter: Word; readonly mostHeight: Word; readonly level: Word }): string => say("fail-no-room-for-light-allowed", args);
/** choose another region for light.in, a larger picture or a wider book|choose a smaller light, a larger picture or a wider region */
export const failNoRoomForLightDoAuthor = (args: { readonly choice: Word }): string => say("fail-no-room-for-light-do-author", args);
/** Here, a light {height} tall may be up to {mostDiameter} wide, or one {diameter} wide up to {mostHeight} tall. Or make the picture larger.|Here, a light {height} tall may be up to {mostDiameter} wide. Or make the picture larger.|Here, a light {diameter} wide may be up to {mostHeight} tall. Or make the picture larger.|No light of this width or height has room here. Make the picture larger, or choose a wider book. */
export const failNoRoomForLightDoReader = (args: { readonly choice: Word; readonly height: Word; readonly mostDiameter: Word; readonly diameter: Word; readonly mostHeight: Word }): string => say("fail-no-room-for-light-do-reader", args);
/** Give this seat a light up to {mostDiameter} wide (light: diameter), or up to {mostHeight} tall (light: height), or raise its height.|Give this seat a light up to {mostDiameter} wide (light: diameter), or raise its height.|Give this seat a light up to {mostHeight} tall (light: height), or raise its height.|Raise this seat’s height, or give it a wider book. */
export const failNoRoomForLightDoTeacher = (args: { readonly choice: Word; readonly mostDiameter: Word; readonly mostHeight: Word }): string => say("fail-no-room-for-light-do-teacher", args);
/** “{level}” is nowhere {need} wide over {height} of height */
export const obstacleNowhereWide = (args: { readonly level: Word; readonly need: Word; readonly height: Word }): string => say("obstacle-nowhere-wide", args);
/** “{level}” is not there at {floor} from the head */
export const obstacleLevelAbsent = (args: { readonly level: Word; readonly floor: Word }): string => say("obstacle-level-absent", args);
/** it would reach {by} above the head */
export const obstacleAboveHead = (args: { readonly by: Word }): string => say("obstacle-above-head", args);
/** leaf {leaf} would keep {remaining} of paper at the gutter, and {least} is needed */
export const obstacleLittlePaper = (args: { readonly leaf: Word; readonly remaining: Word; readonly least: Word }): string => say("obstacle-little-paper", args);
/** The light would stand only {free} behind the closed window. It needs {clearance}. */
export const failLightNearWindowWhy = (args: { readonly free: Word; readonly clearance: Word }): string => say("fail-light-near-window-why", args);
/** the light would stand {free} behind the closed door|window */
export const failLightNearWindowGiven = (args: { readonly free: Word; readonly panel: Word }): string => say("fail-light-near-window-given", args);
/** at least its clearance, {clearance} */
export const failLightNearWindowAllowed = (args: { readonly clearance: Word }): string => say("fail-light-near-window-allowed", args);
/** use a narrower light|raise the setback by {more} — $room: none where a setback as large as that cannot be stated. */
export const failLightNearWindowDoAuthor = (args: { readonly room: Word; readonly more: Word }): string => say("fail-light-near-window-do-author", args);
/** Use a narrower light. */
export const failLightNearWindowDoReader = (): string => say("fail-light-near-window-do-reader");
/** Give this seat a narrower light (light: diameter). */
export const failLightNearWindowDoTeacher = (): string => say("fail-light-near-window-do-teacher");
/** The level “{level}”, which the window follows, cannot be seen in the picture. */
export const failOutlineHiddenWhy = (args: { readonly level: Word }): string => say("fail-outline-hidden-why", args);
/** "{level}" cannot be seen in the picture */
export const failOutlineHiddenGiven = (args: { readonly level: Word }): string => say("fail-outline-hidden-given", args);
/** a level that shows as one region */
export const failOutlineHiddenAllowed = (): string => say("fail-outline-hidden-allowed");
/** name another level */
export const failOutlineHiddenDoAuthor = (): string => say("fail-outline-hidden-do-author");
/** This is a fault of the kit. Its author can name another level. */
export const failOutlineHiddenDoReader = (): string => say("fail-outline-hidden-do-reader");
/** This is a fault of the kit. Its author can name another level. */
export const failOutlineHiddenDoTeacher = (): string => say("fail-outline-hidden-do-teacher");
/** With a lip of {lip}, the window’s hole closes up.|With a lip of {lip}, the window’s hole falls into pieces. */
export const failHoleBreaksWhy = (args: { readonly fate: Word; readonly lip: Word }): string => say("fail-hole-breaks-why", args);
/** a lip of {lip} closes the hole up|breaks the hole into pieces */
export const failHoleBreaksGiven = (args: { readonly lip: Word; readonly fate: Word }): string => say("fail-hole-breaks-given", args);
/** a lip of at most {most} for "{level}"|"{level}" takes a lip of at most {most}, and {least} is the least that holds */
export const failHoleBreaksAllowed = (args: { readonly holds: Word; readonly most: Word; readonly level: Word; readonly least: Word }): string => say("fail-hole-breaks-allowed", args);
/** make the lip smaller or the hole’s narrow places wider|make the hole’s narrow places wider or choose another outline */
export const failHoleBreaksDoAuthor = (args: { readonly holds: Word }): string => say("fail-hole-breaks-do-author", args);
/** Make the picture larger, so that the hole’s narrow places grow wider. */
export const failHoleBreaksDoReader = (): string => say("fail-hole-breaks-do-reader");
/** Raise this seat’s height, so that the hole’s narrow places grow wider. */
export const failHoleBreaksDoTeacher = (): string => say("fail-hole-breaks-do-teacher");
/** The window’s left side has no straight stretch of {shortest} for a hinge.|The window’s right side has no straight stretch of {shortest} for a hinge. */
export const failNoHingeWhy = (args: { readonly side: Word; readonly shortest: Word }): string => say("fail-no-hinge-why", args);
/** no straight stretch of {shortest} at the left of "{level}" with card for a flap behind it|no straight stretch of {shortest} at the right of "{level}" with card for a flap behind it */
export const failNoHingeGiven = (args: { readonly side: Word; readonly shortest: Word; readonly level: Word }): string => say("fail-no-hinge-given", args);
/** a side where at most {bulge} of the outline bulges beyond a straight hinge */
export const failNoHingeAllowed = (args: { readonly bulge: Word }): string => say("fail-no-hinge-allowed", args);
/** hinge the other side, widen the lip or choose another outline */
export const failNoHingeDoAuthor = (): string => say("fail-no-hinge-do-author");
/** Make the picture larger, so that the hinge has room. */
export const failNoHingeDoReader = (): string => say("fail-no-hinge-do-reader");
/** Raise this seat’s height, so that the hinge has room. */
export const failNoHingeDoTeacher = (): string => say("fail-no-hinge-do-teacher");
/** With a lip of {lip}, the glazing would not reach {overlap} past the hole all round. */
export const failGlazingTooSmallWhy = (args: { readonly lip: Word; readonly overlap: Word }): string => say("fail-glazing-too-small-why", args);
/** with a lip of {lip} the glazing would not reach {overlap} past the hole all round */
export const failGlazingTooSmallGiven = (args: { readonly lip: Word; readonly overlap: Word }): string => say("fail-glazing-too-small-given", args);
/** an outline wider than its hole by twice that */
export const failGlazingTooSmallAllowed = (): string => say("fail-glazing-too-small-allowed");
/** choose another outline or lip */
export const failGlazingTooSmallDoAuthor = (): string => say("fail-glazing-too-small-do-author");
/** Make the picture larger, so that the frame grows wider. */
export const failGlazingTooSmallDoReader = (): string => say("fail-glazing-too-small-do-reader");
/** Raise this seat’s height, so that the frame grows wider. */
export const failGlazingTooSmallDoTeacher = (): string => say("fail-glazing-too-small-do-teacher");
/** Check the book: one leaf would be {caliper} thick, and {least} to {most} is usual. Pages may have been counted as leaves: {leaves} pages are {half} leaves. */
export const doubtCaliperThin = (args: { readonly caliper: Word; readonly least: Word; readonly most: Word; readonly leaves: Word; readonly half: Word }): string => say("doubt-caliper-thin", args);
/** Check the book: one leaf would be {caliper} thick, and {least} to {most} is usual. Measure the leaves pressed, without the boards, and count every leaf. */
export const doubtCaliperThick = (args: { readonly caliper: Word; readonly least: Word; readonly most: Word }): string => say("doubt-caliper-thick", args);
/** Check the book: {unnumbered} leaves after page {lastPage} would carry no number. If {leaves} is the number of pages, the book has {half} leaves. */
export const doubtUnnumberedLeaves = (args: { readonly unnumbered: Word; readonly lastPage: Word; readonly leaves: Word; readonly half: Word }): string => say("doubt-unnumbered-leaves", args);
/** The folded flaps will push the book open to about {resting}. The picture has its true shape at {opening}. Press the folds well, and tie the book while it settles. Shallower folds, fewer folded leaves or a taller picture would help. */
export const doubtSpringsOpen = (args: { readonly resting: Word; readonly opening: Word }): string => say("doubt-springs-open", args);
/** The folded flaps will push the book open all the way round. The picture has its true shape at {opening}. Shallower folds, fewer folded leaves or a taller picture would help. */
export const doubtSpringsOpenRound = (args: { readonly opening: Word }): string => say("doubt-springs-open-round", args);
/** Only {leaves} leaves carry the picture. Each step is {column} wide, so curves look jagged and small details disappear. A book with more leaves, or a smaller picture, would help. */
export const doubtCoarse = (args: { readonly leaves: Word; readonly column: Word }): string => say("doubt-coarse", args);
/** The picture comes out {percent} wider than drawn. */
export const doubtWiderThanDrawn = (args: { readonly percent: Word }): string => say("doubt-wider-than-drawn", args);
/** The picture comes out {percent} narrower than drawn. */
export const doubtNarrowerThanDrawn = (args: { readonly percent: Word }): string => say("doubt-narrower-than-drawn", args);
/** Let one of height, opening and pictureLeaves be "solve" to keep its shape. */
export const doubtOutOfShapeDoAuthor = (): string => say("doubt-out-of-shape-do-author");
/** Where the light stands, “{level}” is only {width} wide at its narrowest, and the light needs {need}. Paper beside the level is cut away too. */
export const doubtNarrowFloor = (args: { readonly level: Word; readonly width: Word; readonly need: Word }): string => say("doubt-narrow-floor", args);
/** A floor that is not stated (floor: auto) is put where the level is wide enough. */
export const doubtNarrowFloorDoAuthor = (): string => say("doubt-narrow-floor-do-author");
/** The light is {diameter} wide and the window’s hole {width} × {height}: the light is too wide to go in. Use a narrower light, or a larger hole. */
export const doubtLightWiderThanHole = (args: { readonly diameter: Word; readonly width: Word; readonly height: Word }): string => say("doubt-light-wider-than-hole", args);
/** The last {missing} of “{level}” at the side will look too deep, or vanish: its folds cannot reach so far out. */
export const doubtLevelOutOfReach = (args: { readonly missing: Word; readonly level: Word }): string => say("doubt-level-out-of-reach", args);
/** One strip was shorter than {leastTab}, too short to fold, and was merged with the next.|{spans} strips on one leaf|{leaves} leaves were shorter than {leastTab}, too short to fold, and were merged with the next. */
export const doubtMergedSpans = (args: { readonly spans: number; readonly leastTab: Word; readonly leaves: number }): string => say("doubt-merged-spans", args);
/** Light and window need a knife, so they are left out.|A light needs a knife, so it is left out.|A window needs a knife, so it is left out. */
export const doubtLeftWithoutKnife = (args: { readonly part: Word }): string => say("doubt-left-without-knife", args);
/** “{level}” */
export const doubtLevelName = (args: { readonly level: Word }): string => say("doubt-level-name", args);
/** Folded corners show one outline, and {levels} is no part of it.|Folded corners show one outline, and {levels} are no part of it. — $levels is a list of names. */
export const doubtLevelsLeftOut = (args: { readonly count: number; readonly levels: Word }): string => say("doubt-levels-left-out", args);
/** To join a level to the outline, name it in fit.corner.levels. */
export const doubtLevelsLeftOutDoAuthor = (): string => say("doubt-levels-left-out-do-author");
/** On {leaves} of {of} leaves the outline is in several pieces, so it looks striped from the front. An outline that most leaves meet once comes out better. */
export const doubtStriped = (args: { readonly leaves: Word; readonly of: Word }): string => say("doubt-striped", args);
/** On one leaf the picture has up to {most} strips, and a leaf can show only one.|On {leaves} leaves the picture has up to {most} strips, and a leaf can show only one. Neighbouring leaves take turns, so each strip is on at least one leaf in {every}. */
export const doubtTurns = (args: { readonly leaves: number; readonly most: Word; readonly every: Word }): string => say("doubt-turns", args);
/** One part of the picture is so narrow that no leaf has a turn for it. A wider picture or a book with more leaves would help.|{parts} parts of the picture are so narrow that no leaf has a turn for them. A wider picture or a book with more leaves would help. */
export const doubtUnseenParts = (args: { readonly parts: number }): string => say("doubt-unseen-parts", args);
/** On one leaf a corner is longer than the {reach} that it may reach inward. It is folded along a steeper crease, so its edge does not lie level.|On {leaves} leaves a corner is longer than the {reach} that it may reach inward. It is folded along a steeper crease, so its edge does not lie level. */
export const doubtSteepCreases = (args: { readonly leaves: number; readonly reach: Word }): string => say("doubt-steep-creases", args);
/** One leaf stays unfolded after the last border leaf, so the picture sits off-centre. Fold {before} leaves before and {after} after to centre it.|{unfolded} leaves stay unfolded after the last border leaf, so the picture sits off-centre. Fold {before} leaves before and {after} after to centre it. */
export const doubtOffCentre = (args: { readonly unfolded: number; readonly before: Word; readonly after: Word }): string => say("doubt-off-centre", args);
/** In the front matter: borderLeaves: [{before}, {after}]. */
export const doubtOffCentreDoAuthor = (args: { readonly before: Word; readonly after: Word }): string => say("doubt-off-centre-do-author", args);
/** Little paper stays free: {head} at the head and {tail} at the tail. A lower picture would help. */
export const reasonNarrowMargins = (args: { readonly head: Word; readonly tail: Word }): string => say("reason-narrow-margins", args);
/** Make the picture {height} tall */
export const offerHeight = (args: { readonly height: Word }): string => say("offer-height", args);
/** Open the book to {opening} */
export const offerOpening = (args: { readonly opening: Word }): string => say("offer-opening", args);
/** Fold {before} border leaves before and {after} after */
export const offerBorders = (args: { readonly before: Word; readonly after: Word }): string => say("offer-borders", args);
/** Let {leaves} leaves carry the picture */
export const offerPictureLeaves = (args: { readonly leaves: Word }): string => say("offer-picture-leaves", args);
/** Make the levels shallower: {depths} */
export const offerDepths = (args: { readonly depths: Word }): string => say("offer-depths", args);
/** Use stepped folds|Fold corners only, without a knife|Use single folds */
export const offerFolds = (args: { readonly style: Word }): string => say("offer-folds", args);
/** Use a light {diameter} wide */
export const offerLightWidth = (args: { readonly diameter: Word }): string => say("offer-light-width", args);
/** Use a light {height} tall */
export const offerLightHeight = (args: { readonly height: Word }): string => say("offer-light-height", args);
/** Choose a book with at least {leaves} leaves of this paper ({thickness} thick) */
export const offerBookLeast = (args: { readonly leaves: Word; readonly thickness: Word }): string => say("offer-book-least", args);
/** Choose a book with at most {leaves} leaves of this paper ({thickness} thick) */
export const offerBookMost = (args: { readonly leaves: Word; readonly thickness: Word }): string => say("offer-book-most", args);
/** {first}; also: {more} — Two changes that go together: $first is a whole offer from above, $more the second one with a small letter. */
export const offerBoth = (args: { readonly first: Word; readonly more: Word }): string => say("offer-both", args);
/** {offer}. The flaps will then push this book open beyond flat */
export const offerSpringsOpen = (args: { readonly offer: Word }): string => say("offer-springs-open", args);
/** Leaf height */
export const fitFieldLeafHeight = (): string => say("fit-field-leaf-height");
/** Lay the ruler along the fore-edge: head to tail of one leaf, not of the boards. */
export const fitHelpLeafHeight = (): string => say("fit-help-leaf-height");
/** Leaf width */
export const fitFieldLeafWidth = (): string => say("fit-field-leaf-width");
/** From the fore-edge to where the leaf disappears in the gutter. */
export const fitHelpLeafWidth = (): string => say("fit-help-leaf-width");
/** Thickness */
export const fitFieldBlockThickness = (): string => say("fit-field-block-thickness");
/** All leaves pressed under a board, without the book’s own boards or cover, measured at the fore-edge. */
export const fitHelpBlockThickness = (): string => say("fit-help-block-thickness");
/** Leaves */
export const fitFieldLeaves = (): string => say("fit-field-leaves");
/** Sheets, not pages: half the page count. Or count 50 leaves and compare thicknesses. */
export const fitHelpLeaves = (): string => say("fit-help-leaves");
/** Leaf with page 1 */
export const fitFieldPageOneLeaf = (): string => say("fit-field-page-one-leaf");
/** Count leaves from the front until the one whose front is page 1. */
export const fitHelpPageOneLeaf = (): string => say("fit-help-page-one-leaf");
/** Last page */
export const fitFieldLastPage = (): string => say("fit-field-last-page");
/** The last printed page number. */
export const fitHelpLastPage = (): string => say("fit-help-last-page");
/** Plates */
export const fitFieldPlates = (): string => say("fit-field-plates");
/** Unnumbered leaves between the pages, as page × leaves: 192 × 4, 300 × 2. Leave it empty where there are none. */
export const fitHelpPlates = (): string => say("fit-help-plates");
/** Reading direction */
export const fitFieldDirection = (): string => say("fit-field-direction");
/** Which way the pages turn. */
export const fitHelpDirection = (): string => say("fit-help-direction");
/** Border leaves */
export const fitFieldBorderLeaves = (): string => say("fit-field-border-leaves");
/** Whole leaves before and after the picture: 12, 12. */
export const fitHelpBorderLeaves = (): string => say("fit-help-border-leaves");
/** Picture height */
export const fitFieldHeight = (): string => say("fit-field-height");
/** How tall the picture should be. */
export const fitHelpHeight = (): string => say("fit-help-height");
/** Opening */
export const fitFieldOpening = (): string => say("fit-field-opening");
/** Degrees between the first and the last leaf of the opened book. */
export const fitHelpOpening = (): string => say("fit-help-opening");
/** Depth of {level} — $level is the name of a level, in the kit author's words. */
export const fitFieldDepth = (args: { readonly level: Word }): string => say("fit-field-depth", args);
/** From the fore-edge to your gauge’s line. */
export const fitHelpDepth = (): string => say("fit-help-depth");
/** Folds */
export const fitFieldFoldStyle = (): string => say("fit-field-fold-style");
/** Single: fold each strip once. Stepped: fold the whole leaf at the front line first. Corners: cut nothing, fold the corners beside one strip. */
export const fitHelpFoldStyle = (): string => say("fit-help-fold-style");
/** Mark step */
export const fitFieldMarkStep = (): string => say("fit-field-mark-step");
/** The finest step on your ruler: 0.5 mm, 1 mm, 1/32 in, 1/16 in. */
export const fitHelpMarkStep = (): string => say("fit-help-mark-step");
/** Light width */
export const fitFieldLightDiameter = (): string => say("fit-field-light-diameter");
/** Your LED light at its widest. */
export const fitHelpLightDiameter = (): string => say("fit-help-light-diameter");
/** Light height */
export const fitFieldLightHeight = (): string => say("fit-field-light-height");
/** With its tip. */
export const fitHelpLightHeight = (): string => say("fit-help-light-height");
/** Head edge to the picture — Figures that only an address carries. */
export const fitFieldHead = (): string => say("fit-field-head");
/** Units */
export const fitFieldUnits = (): string => say("fit-field-units");
/** Flap bulk */
export const fitFieldFlapBulk = (): string => say("fit-field-flap-bulk");
/** Leaves left out */
export const fitFieldLostLeaves = (): string => say("fit-field-lost-leaves");
/** left to right */
export const fitOptionLtr = (): string => say("fit-option-ltr");
/** right to left */
export const fitOptionRtl = (): string => say("fit-option-rtl");
/** single */
export const fitOptionSingle = (): string => say("fit-option-single");
/** stepped */
export const fitOptionStepped = (): string => say("fit-option-stepped");
/** corners, without a knife */
export const fitOptionCorner = (): string => say("fit-option-corner");
/** a length like 216, 21.6 cm or 8 1/2 in */
export const fitAllowedLengthMm = (): string => say("fit-allowed-length-mm");
/** a length like 8 1/2, 8.5 in or 216 mm */
export const fitAllowedLengthIn = (): string => say("fit-allowed-length-in");
/** {least} to {most} */
export const fitAllowedLengthBetween = (args: { readonly least: Word; readonly most: Word }): string => say("fit-allowed-length-between", args);
/** a whole number, {least} to {most} */
export const fitAllowedCount = (args: { readonly least: Word; readonly most: Word }): string => say("fit-allowed-count", args);
/** degrees, {least} to {most} */
export const fitAllowedDegrees = (args: { readonly least: Word; readonly most: Word }): string => say("fit-allowed-degrees", args);
/** a number, {least} to {most} */
export const fitAllowedNumber = (args: { readonly least: Word; readonly most: Word }): string => say("fit-allowed-number", args);
/** page × leaves, separated by commas: 192 × 4, 300 × 2; pages up to {page}, leaves up to {leaves} */
export const fitAllowedPlates = (args: { readonly page: Word; readonly leaves: Word }): string => say("fit-allowed-plates", args);
/** two whole numbers up to {most}: 12, 12 */
export const fitAllowedBorders = (args: { readonly most: Word }): string => say("fit-allowed-borders", args);
/** {count} lengths, one for each level */
export const fitAllowedDepths = (args: { readonly count: Word }): string => say("fit-allowed-depths", args);
/** numbers of leaves up to {most}, each once: 12_40 */
export const fitAllowedLeaves = (args: { readonly most: Word }): string => say("fit-allowed-leaves", args);
/** {figure}: “{given}” cannot be used and is ignored. Allowed: {allowed}. — Of a figure in the page's address, or of a book that this browser saved. $given is what stands there. */
export const fitIgnored = (args: { readonly figure: Word; readonly given: Word; readonly allowed: Word }): string => say("fit-ignored", args);
/** It fits well. This page is now worked out for your book. */
export const fitPanelFits = (): string => say("fit-panel-fits");
/** It can be made, but check this first. This page is now worked out for your book. */
export const fitPanelCheck = (): string => say("fit-panel-check");
/** It can be made, but it will come out poorly. This page is now worked out for your book. */
export const fitPanelPoor = (): string => say("fit-panel-poor");
/** {head} stay free at the head and {tail} at the tail. Each leaf shows {pitch} of the picture. The work takes about {hours}. — How it comes out: paper that stays free, and how wide a part of the picture each leaf shows. */
export const fitPanelFigures = (args: { readonly head: Word; readonly tail: Word; readonly pitch: Word; readonly hours: Word }): string => say("fit-panel-figures", args);
/** This would make it fit:|Each of these would make it fit: — Above buttons, each a change. */
export const fitPanelWays = (args: { readonly count: number }): string => say("fit-panel-ways", args);
/** This would come out better:|Each of these would come out better: */
export const fitPanelBetter = (args: { readonly count: number }): string => say("fit-panel-better", args);
/** It would come out poorly. About {hours}, with {head} free at the head and {tail} at the tail.|About {hours}, with {head} free at the head and {tail} at the tail. — Beside each button. */
export const fitPanelWay = (args: { readonly quality: Word; readonly hours: Word; readonly head: Word; readonly tail: Word }): string => say("fit-panel-way", args);
/** No change that this page can try would help. Choose another kit for this book, or another book. */
export const fitPanelNoWay = (): string => say("fit-panel-no-way");
/** This page shows the kit’s own book. */
export const fitPanelOwn = (): string => say("fit-panel-own");
/** The picture now begins {head} from the head, so that it fits on your leaf. */
export const fitPanelMoved = (args: { readonly head: Word }): string => say("fit-panel-moved", args);
/** The marked field is not a measurement that can be used. Correct it to go on. */
export const fitPanelWrongField = (): string => say("fit-panel-wrong-field");
/** Files are made once the book fits. */
export const fitPanelFilesWait = (): string => say("fit-panel-files-wait");
/** It does not fit this book. {why} */
export const fitPanelMisfit = (args: { readonly why: Word }): string => say("fit-panel-misfit", args);
/** Comparing the folded corners with the drawing … — While folded corners are compared with the drawing. */
export const fitPanelMatching = (): string => say("fit-panel-matching");
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
/** The part of this page that makes files could not be loaded. */
export const loadFileMaker = (): string => say("load-file-maker");
/** The picture could not be drawn for your book: a part of this page could not be loaded. */
export const loadFrontPicture = (): string => say("load-front-picture");
/** The part of this page that asks step by step could not be loaded. Fill in the fields instead. */
export const loadMeasure = (): string => say("load-measure");
/** The part of this page that fits the kit to your book could not be loaded. Change a figure to try again. */
export const loadRefit = (): string => say("load-refit");
/** The part of this page that fits the packet to your book could not be loaded. Load the page again when you are online. */
export const loadPacket = (): string => say("load-packet");
/** Why this cannot be done could not be loaded. Try again when you are online. */
export const loadReasons = (): string => say("load-reasons");
/** The view could not be loaded. The front picture above shows the same book. Press again to try once more. */
export const loadRound = (): string => say("load-round");
/** “{file}”, which is not there — $file: path of a font file. */
export const fontMissing = (args: { readonly file: Word }): string => say("font-missing", args);
/** “{file}”, which is no font of one face */
export const fontNoFont = (args: { readonly file: Word }): string => say("font-no-font", args);
/** a font in content/fonts (WOFF2, WOFF, TTF or OTF, up to {most} MB); there are: {files} — $files: what lies in the folder. $most: in megabytes. */
export const fontFiles = (args: { readonly most: Word; readonly files: Word }): string => say("font-files", args);
/** a font in content/fonts: WOFF2, WOFF, TTF or OTF, up to {most} MB */
export const fontFolder = (args: { readonly most: Word }): string => say("font-folder", args);
/** put the font there, or correct the name */
export const fontDoAdd = (): string => say("font-do-add");
/** {letters}| and {more} other character| and {more} other characters, which no font of the site has — $letters: some of them. $more: how many others there are. */
export const fontUncovered = (args: { readonly letters: Word; readonly more: number }): string => say("font-uncovered", args);
/** “{letter}” ({code}) — A character and its number in Unicode: “月” (U+6708) */
export const fontLetter = (args: { readonly letter: Word; readonly code: Word }): string => say("font-letter", args);
/** letters of Latin, Greek and Cyrillic scripts, and what the fonts in the site’s settings have */
export const fontCovered = (): string => say("font-covered");
/** put a font that has it|them into content/fonts and name it under fonts in content/site.yaml, or write it otherwise */
export const fontDoName = (args: { readonly count: number }): string => say("font-do-name", args);
/** {place}  {field}: on the gauge its letters would be {height} mm high, which is hard to read; shorten it — A level’s name on the gauge. $height: of its letters in mm, without the unit. */
export const fontSmall = (args: { readonly place: Word; readonly field: Word; readonly height: Word }): string => say("font-small", args);
/** {place}  {field}: {given}; readers see it in a font of their own, or as a box. To be sure: {remedy} — A text that only pages show. $place: file, line and column. */
export const fontWarning = (args: { readonly place: Word; readonly field: Word; readonly given: Word; readonly remedy: Word }): string => say("font-warning", args);
/** given "{value}" */
export const frontGivenText = (args: { readonly value: Word }): string => say("front-given-text", args);
/** correct the name */
export const frontCorrectName = (): string => say("front-correct-name");
/** pieces — Usual unit of a supply of the kit’s own, after its quantity: 3 pieces */
export const frontPieces = (): string => say("front-pieces");
/** {fields} are both|all "solve" — $fields: two or three of them, as a list */
export const frontSolved = (args: { readonly fields: Word; readonly count: number }): string => say("front-solved", args);
/** one of pictureLeaves, height and opening can be solved, from the other two */
export const frontOneSolved = (): string => say("front-one-solved");
/** state {fields} */
export const frontState = (args: { readonly fields: Word }): string => say("front-state", args);
/** not given, while {field} is "solve" */
export const frontNoOpening = (args: { readonly field: Word }): string => say("front-no-opening", args);
/** degrees, {least} to {most} */
export const frontOpeningDegrees = (args: { readonly least: Word; readonly most: Word }): string => say("front-opening-degrees", args);
/** state the opening, or let opening be the one that is solved */
export const frontStateOpening = (): string => say("front-state-opening");
/** {least} to {most} degrees with view: front */
export const frontOpeningBeyondFlat = (args: { readonly least: Word; readonly most: Word }): string => say("front-opening-beyond-flat", args);
/** lower it, or use view: along for a piece seen while walking round */
export const frontLowerOpening = (): string => say("front-lower-opening");
/** {line} mm after {before} mm */
export const frontLinesOutOfOrder = (args: { readonly line: Word; readonly before: Word }): string => say("front-lines-out-of-order", args);
/** lines further and further from the fore-edge */
export const frontLinesOutward = (): string => say("front-lines-outward");
/** put the lines in order */
export const frontOrderLines = (): string => say("front-order-lines");
/** a second level "{level}" */
export const frontLevelTwice = (args: { readonly level: Word }): string => say("front-level-twice", args);
/** a name of its own for each level, also without its capitals */
export const frontLevelNames = (): string => say("front-level-names");
/** rename one of them */
export const frontRename = (): string => say("front-rename");
/** {count} level with background: true|{count} levels with background: true */
export const frontBackgrounds = (args: { readonly count: number }): string => say("front-backgrounds", args);
/** exactly one, the level that shows where no shape is */
export const frontOneBackground = (): string => say("front-one-background");
/** add background: true to one level */
export const frontAddBackground = (): string => say("front-add-background");
/** leave it on one level only */
export const frontRemoveBackground = (): string => say("front-remove-background");
/** neither depth nor line */
export const frontNoDepth = (): string => say("front-no-depth");
/** both depth and line */
export const frontDepthAndLine = (): string => say("front-depth-and-line");
/** one of them: depth (a length) or line (a number of gauge.lines) */
export const frontDepthOrLine = (): string => say("front-depth-or-line");
/** add depth or line */
export const frontAddDepth = (): string => say("front-add-depth");
/** remove one */
export const frontRemoveOne = (): string => say("front-remove-one");
/** 1 to {lines}, the lines of gauge.lines */
export const frontGaugeLines = (args: { readonly lines: Word }): string => say("front-gauge-lines", args);
/** a line of gauge.lines, and there are none */
export const frontNoGaugeLines = (): string => say("front-no-gauge-lines");
/** correct the number or add the line to gauge.lines */
export const frontAddGaugeLine = (): string => say("front-add-gauge-line");
/** a level: {levels} — $levels: names of levels */
export const frontALevel = (args: { readonly levels: Word }): string => say("front-a-level", args);
/** "{level}", which is the background */
export const frontBackgroundJoined = (args: { readonly level: Word }): string => say("front-background-joined", args);
/** take it off the list */
export const frontTakeLevelOff = (): string => say("front-take-level-off");
/** a second sheet "{sheet}" */
export const frontSheetTwice = (args: { readonly sheet: Word }): string => say("front-sheet-twice", args);
/** each sheet once, under a name of its own */
export const frontSheetNames = (): string => say("front-sheet-names");
/** a sheet of this class: {sheets} — $sheets: names of sheets. */
export const frontSheetOfClass = (args: { readonly sheets: Word }): string => say("front-sheet-of-class", args);
/** {date} below {above} */
export const frontVersionOrder = (args: { readonly date: Word; readonly above: Word }): string => say("front-version-order", args);
/** newest first: each date the same as the one above it or earlier */
export const frontNewestFirst = (): string => say("front-newest-first");
/** put the versions in order or correct the date */
export const frontOrderVersions = (): string => say("front-order-versions");
/** a second version "{version}" */
export const frontVersionTwice = (args: { readonly version: Word }): string => say("front-version-twice", args);
/** a name of its own for each version */
export const frontVersionNames = (): string => say("front-version-names");
/** "{file}" is not there */
export const frontFileMissing = (args: { readonly file: Word }): string => say("front-file-missing", args);
/** "{file}" is outside its folder */
export const frontFileOutside = (args: { readonly file: Word }): string => say("front-file-outside", args);
/** "{file}": {what} — $what: a message about the file: a folder */
export const frontFileIs = (args: { readonly file: Word; readonly what: Word }): string => say("front-file-is", args);
/** a file beside index.md */
export const frontFileInside = (): string => say("front-file-inside");
/** a file beside index.md (there are {files}) */
export const frontFileAmong = (args: { readonly files: Word }): string => say("front-file-among", args);
/** correct the name or add the file */
export const frontAddFile = (): string => say("front-add-file");
/** copy the photo beside index.md|copy the font beside index.md|copy the picture beside index.md */
export const frontCopyFile = (args: { readonly kind: Word }): string => say("front-copy-file", args);
/** "{file}" is not an SVG file */
export const frontNoSvg = (args: { readonly file: Word }): string => say("front-no-svg", args);
/** an SVG picture (.svg), or a photograph or scan (.png, .jpg, .webp, .avif) */
export const frontAnSvg = (): string => say("front-an-svg");
/** draw the levels as filled shapes and save them as SVG */
export const frontDrawSvg = (): string => say("front-draw-svg");
/** "{file}" is not a photo */
export const frontNoPhoto = (args: { readonly file: Word }): string => say("front-no-photo", args);
/** save it as one of these */
export const frontSavePhoto = (): string => say("front-save-photo");
/** "{file}" cannot be read as a photo: {fault} — $fault: the words of the program that reads photos, in English. */
export const frontPhotoUnreadable = (args: { readonly file: Word; readonly fault: Word }): string => say("front-photo-unreadable", args);
/** "{file}" has {megapixels} megapixels */
export const frontPhotoPixels = (args: { readonly file: Word; readonly megapixels: Word }): string => say("front-photo-pixels", args);
/** a photo of at most {most} megapixels */
export const frontPhotoMostPixels = (args: { readonly most: Word }): string => say("front-photo-most-pixels", args);
/** a whole photo: {kinds} */
export const frontPhotoKinds = (args: { readonly kinds: Word }): string => say("front-photo-kinds", args);
/** open it in a photo program and save it again */
export const frontSavePhotoAgain = (): string => say("front-save-photo-again");
/** shapes, strokes, groups and more, as the guide’s page on pictures lists them */
export const frontPictureShapes = (): string => say("front-picture-shapes");
/** change this element in your drawing program and save again */
export const frontChangeElement = (): string => say("front-change-element");
/** {place}: {note} — A note on a picture, with its place: content/kits/moon/moon.svg:7 */
export const frontPictureNote = (args: { readonly place: Word; readonly note: Word }): string => say("front-picture-note", args);
/** shapes for a level "{level}" */
export const frontShapesOfNoLevel = (args: { readonly level: Word }): string => say("front-shapes-of-no-level", args);
/** the levels: {levels} */
export const frontTheLevels = (args: { readonly levels: Word }): string => say("front-the-levels", args);
/** correct the name or add the level */
export const frontAddLevel = (): string => say("front-add-level");
/** "{id}" */
export const frontId = (args: { readonly id: Word }): string => say("front-id", args);
/** an id of the picture: {ids} */
export const frontPictureIds = (args: { readonly ids: Word }): string => say("front-picture-ids", args);
/** an id of the picture, and it has none */
export const frontPictureNoIds = (): string => say("front-picture-no-ids");
/** correct the id, or give the shape this id in the SVG */
export const frontGiveId = (): string => say("front-give-id");
/** "{id}" a second time */
export const frontIdTwice = (args: { readonly id: Word }): string => say("front-id-twice", args);
/** each id belongs to one level */
export const frontIdOnce = (): string => say("front-id-once");
/** remove one of the two */
export const frontRemoveId = (): string => say("front-remove-id");
/** a shape of no level: <{element}> without an id */
export const frontShapeUnnamed = (args: { readonly element: Word }): string => say("front-shape-unnamed", args);
/** a shape of no level: <{element}> under {ids} — $ids: its own and its groups’ ids: #gull, #birds */
export const frontShapeNoLevel = (args: { readonly element: Word; readonly ids: Word }): string => say("front-shape-no-level", args);
/** every painted shape belongs to a level, by its own id, name, class or colour, or by a group’s */
export const frontShapesBelong = (): string => say("front-shapes-belong");
/** level "{level}" has no painted shape */
export const frontLevelEmpty = (args: { readonly level: Word }): string => say("front-level-empty", args);
/** nothing of level “{level}” shows: it lies behind {shapes} — $shapes: elements that lie over it, as a list. */
export const frontLevelCovered = (args: { readonly level: Word; readonly shapes: Word }): string => say("front-level-covered", args);
/** nothing of level “{level}” shows: its shapes lie outside the picture’s frame */
export const frontLevelOutside = (args: { readonly level: Word }): string => say("front-level-outside", args);
/** put its shapes after them in the file, as later ones lie on top */
export const frontPutAfter = (): string => say("front-put-after");
/** move them in, or state a picture.crop that holds them */
export const frontMoveIn = (): string => say("front-move-in");
/** enlarge its shapes */
export const frontEnlarge = (): string => say("front-enlarge");
/** nothing of level “{level}” shows: its shapes are too small */
export const frontLevelTiny = (args: { readonly level: Word }): string => say("front-level-tiny", args);
/** level “{level}” reaches out of the picture’s frame with {shape}: what lies there is not shown */
export const frontLevelOver = (args: { readonly level: Word; readonly shape: Word }): string => say("front-level-over", args);
/** level “{level}” comes out on no leaf of this book: its strips are too short, or its folds cannot reach there. Make its shapes larger, or use a taller picture or more leaves — On no leaf of the kit’s own book. */
export const frontLevelLost = (args: { readonly level: Word }): string => say("front-level-lost", args);
/** every level but the background shows at least one shape */
export const frontLevelsPainted = (): string => say("front-levels-painted");
/** check that these shapes are painted and visible */
export const frontCheckShapes = (): string => say("front-check-shapes");
/** list its shapes under picture.levels.{level} */
export const frontListShapes = (args: { readonly level: Word }): string => say("front-list-shapes", args);
/** outlines that a window can be cut from */
export const frontCuttable = (): string => say("front-cuttable");
/** outlines that cross or crowd each other in too many places */
export const frontCrowded = (): string => say("front-crowded");
/** simplify the drawing: fewer points, and shapes that are united where they overlap */
export const frontSimplify = (): string => say("front-simplify");
/** outlines far too large or too small for their viewBox */
export const frontOutOfScale = (): string => say("front-out-of-scale");
/** scale the drawing to a viewBox of some hundred units, and remove what lies far outside it */
export const frontScale = (): string => say("front-scale");
/** a level whose shapes take turns with those of others too often */
export const frontInterleaved = (): string => say("front-interleaved");
/** put the shapes of this level next to each other in the file */
export const frontGroupLevel = (): string => say("front-group-level");
/** no filled shape|{pieces} pieces that do not touch */
export const frontMotifPieces = (args: { readonly pieces: number }): string => say("front-motif-pieces", args);
/** one connected silhouette, filled */
export const frontMotifOne = (): string => say("front-motif-one");
/** draw a filled shape, or remove the file|join the pieces in your drawing program */
export const frontJoinMotif = (args: { readonly pieces: number }): string => say("front-join-motif", args);
/** a second caution "{id}" */
export const frontCautionTwice = (args: { readonly id: Word }): string => say("front-caution-twice", args);
/** an id of its own for each caution */
export const frontCautionIds = (): string => say("front-caution-ids");
/** none with "when: {when}" */
export const frontCautionMissing = (args: { readonly when: Word }): string => say("front-caution-missing", args);
/** at least one for each of {all} */
export const frontCautionOccasions = (args: { readonly all: Word }): string => say("front-caution-occasions", args);
/** write one, or take it over from the English file */
export const frontCautionWrite = (): string => say("front-caution-write");
/** {date} or later, as the sessions follow each other */
export const frontSessionBefore = (args: { readonly date: Word }): string => say("front-session-before", args);
/** correct the day, or put the sessions in order */
export const frontOrderSessions = (): string => say("front-order-sessions");
/** The session */
export const frontTheSession = (): string => say("front-the-session");
/** Session {number} */
export const frontSession = (args: { readonly number: Word }): string => say("front-session", args);
/** a table beside index.md: CSV, XLSX or ODS */
export const frontTableBeside = (): string => say("front-table-beside");
/** a table beside index.md (there is {files}) */
export const frontTableAmong = (args: { readonly files: Word }): string => say("front-table-among", args);
/** a kit: {kits} */
export const frontAKit = (args: { readonly kits: Word }): string => say("front-a-kit", args);
/** a kit of the class: {kits} */
export const frontClassKit = (args: { readonly kits: Word }): string => say("front-class-kit", args);
/** the kit "{kit}" cannot be built — The kit itself has something wrong that is told of before. */
export const frontKitBroken = (args: { readonly kit: Word }): string => say("front-kit-broken", args);
/** correct the kit first */
export const frontKitCorrectFirst = (): string => say("front-kit-correct-first");
/** the kit "{kit}" is a draft, or holds no index.md yet */
export const frontKitDraft = (args: { readonly kit: Word }): string => say("front-kit-draft", args);
/** take draft out of its front matter when it is ready, or name another kit */
export const frontKitPublish = (): string => say("front-kit-publish");
/** seat {seat} has a book here and in {table} */
export const frontTwoBooks = (args: { readonly seat: Word; readonly table: Word }): string => say("front-two-books", args);
/** one book per seat */
export const frontOneBook = (): string => say("front-one-book");
/** remove one of them */
export const frontRemoveBook = (): string => say("front-remove-book");
/** no seat */
export const frontNoSeat = (): string => say("front-no-seat");
/** at least one seat: here, in a books table, or as a number of places */
export const frontSomeSeat = (): string => say("front-some-seat");
/** add places: 12 for twelve seats whose books are still to come, or seats with their books */
export const frontAddSeats = (): string => say("front-add-seats");
/** seat {seat} stands here a second time */
export const frontSeatTwice = (args: { readonly seat: Word }): string => say("front-seat-twice", args);
/** each number once */
export const frontSeatOnce = (): string => say("front-seat-once");
/** give every seat a number of its own */
export const frontNumberSeats = (): string => say("front-number-seats");
/** seats’ numbers, and nothing about persons: a class’s pages are public — Of a key or column for names, addresses and the like. */
export const frontNoPersons = (): string => say("front-no-persons");
/** remove it, and keep a list of who sits where on paper */
export const frontRemovePersons = (): string => say("front-remove-persons");
/** {count} depth|{count} depths */
export const frontDepths = (args: { readonly count: number }): string => say("front-depths", args);
/** {count}, one for each level of {kit}: {levels} */
export const frontDepthsOfKit = (args: { readonly count: Word; readonly kit: Word; readonly levels: Word }): string => say("front-depths-of-kit", args);
/** state one for each level, front to back */
export const frontStateDepths = (): string => say("front-state-depths");
/** {column} in cell {cell} — What a message is about: a column, or the table’s head row, and a cell as spreadsheets name it: C4. */
export const frontCellField = (args: { readonly column: Word; readonly cell: Word }): string => say("front-cell-field", args);
/** no table that can be read */
export const frontSheetBroken = (): string => say("front-sheet-broken");
/** a CSV table, or a workbook (XLSX or ODS) without a password, its table on the first sheet */
export const frontSheetForms = (): string => say("front-sheet-forms");
/** an empty file */
export const frontTableEmpty = (): string => say("front-table-empty");
/** a head row with the columns {columns} */
export const frontTableHead = (args: { readonly columns: Word }): string => say("front-table-head", args);
/** unknown column "{column}" */
export const frontColumnUnknown = (args: { readonly column: Word }): string => say("front-column-unknown", args);
/** these columns, in any order: {columns} */
export const frontColumns = (args: { readonly columns: Word }): string => say("front-columns", args);
/** no column "seat" */
export const frontColumnMissing = (): string => say("front-column-missing");
/** two columns "{column}" */
export const frontColumnTwice = (args: { readonly column: Word }): string => say("front-column-twice", args);
/** each column once */
export const frontColumnOnce = (): string => say("front-column-once");
/** "{cell}" is beyond the last column */
export const frontCellBeyond = (args: { readonly cell: Word }): string => say("front-cell-beyond", args);
/** {count} cell, as in the head row; put a text with a comma in quotes|{count} cells, as in the head row; put a text with a comma in quotes */
export const frontCells = (args: { readonly count: number }): string => say("front-cells", args);
/** {given} without {missing} — $given and $missing: names of columns */
export const frontBorderAlone = (args: { readonly given: Word; readonly missing: Word }): string => say("front-border-alone", args);
/** borderBefore and borderAfter, or neither of them */
export const frontBothBorders = (): string => say("front-both-borders");
/** cells separated by commas; put a text with a comma or a quote in quotes */
export const frontCellsApart = (): string => say("front-cells-apart");
/** plates: "{cell}" */
export const frontPlatesCell = (args: { readonly cell: Word }): string => say("front-plates-cell", args);
/** page:leaves, 192:4; 300:2 for four leaves after page 192 and two after page 300 */
export const frontPlatesForm = (): string => say("front-plates-form");
/** correct the table here */
export const frontCorrectTable = (): string => say("front-correct-table");
/** correct this cell */
export const frontCorrectCell = (): string => say("front-correct-cell");
/** picture in the text — Both name what a message is about. */
export const storyPicture = (): string => say("story-picture");
/** link in the text */
export const storyLink = (): string => say("story-link");
/** a picture from elsewhere: {address} */
export const storyPictureElsewhere = (args: { readonly address: Word }): string => say("story-picture-elsewhere", args);
/** save it in this folder and name that file; pages fetch nothing from other sites */
export const storySavePicture = (): string => say("story-save-picture");
/** an address without spaces, or one in angle brackets: [words](<a file.jpg>) */
export const storyBrackets = (): string => say("story-brackets");
/** put angle brackets around the address */
export const storyPutBrackets = (): string => say("story-put-brackets");
/** given {address}, which leads to no page of this site */
export const storyNowhere = (args: { readonly address: Word }): string => say("story-nowhere", args);
/** an address on the web, or a page of this site, as in /kits/harbour-moon/ or ../harbour-moon/ */
export const storyPages = (): string => say("story-pages");
/** correct the link */
export const storyCorrectLink = (): string => say("story-correct-link");
/** {places} places, and a seat {seat} */
export const frontSeatBeyond = (args: { readonly places: Word; readonly seat: Word }): string => say("front-seat-beyond", args);
/** seats from 1 to {places} */
export const frontSeatPlaces = (args: { readonly places: Word }): string => say("front-seat-places", args);
/** correct the seat’s number where it stands, or state places: {seat} */
export const frontSeatPlacesDo = (args: { readonly seat: Word }): string => say("front-seat-places-do", args);
/** Glossary */
export const glossaryTitle = (): string => say("glossary-title");
/** The words that kits, packets and the bench use, one meaning each. */
export const glossarySummary = (): string => say("glossary-summary");
/** The trade’s words and ours, one meaning each. They are linked where a section first uses them. */
export const glossaryLede = (): string => say("glossary-lede");
/** {term}, in the glossary — $term is the term that a link leads to. */
export const glossaryLink = (args: { readonly term: Word }): string => say("glossary-link", args);
/** leaf */
export const termLeaf = (): string => say("term-leaf");
/** leaf|leaves */
export const termLeafForms = (): string => say("term-leaf-forms");
/** One sheet of paper in the book. It has two pages, a front (recto) and a back (verso), so 200 leaves are 400 pages. */
export const termLeafMeaning = (): string => say("term-leaf-meaning");
/** page */
export const termPage = (): string => say("term-page");
/** book page|printed page|page number */
export const termPageForms = (): string => say("term-page-forms");
/** One side of a leaf. A page number is what is printed on it; look for the number on the front of the leaf. */
export const termPageMeaning = (): string => say("term-page-meaning");
/** pattern page */
export const termPatternPage = (): string => say("term-pattern-page");
/** pattern page|pattern pages */
export const termPatternPageForms = (): string => say("term-pattern-page-forms");
/** The picture’s own page number: 1, 3, 5 … for its first, second and third leaf, whatever the book prints there. */
export const termPatternPageMeaning = (): string => say("term-pattern-page-meaning");
/** picture leaf */
export const termPictureLeaf = (): string => say("term-picture-leaf");
/** picture leaf|picture leaves */
export const termPictureLeafForms = (): string => say("term-picture-leaf-forms");
/** A leaf that carries one upright line of the picture. */
export const termPictureLeafMeaning = (): string => say("term-picture-leaf-meaning");
/** border leaf */
export const termBorderLeaf = (): string => say("term-border-leaf");
/** border leaf|border leaves */
export const termBorderLeafForms = (): string => say("term-border-leaf-forms");
/** A leaf before or after the picture. It is folded whole at the background’s line. */
export const termBorderLeafMeaning = (): string => say("term-border-leaf-meaning");
/** plate */
export const termPlate = (): string => say("term-plate");
/** plate|plates */
export const termPlateForms = (): string => say("term-plate-forms");
/** A leaf without a page number, bound in between numbered ones. */
export const termPlateMeaning = (): string => say("term-plate-meaning");
/** head */
export const termHead = (): string => say("term-head");
/** head edge|head */
export const termHeadForms = (): string => say("term-head-forms");
/** The top edge of a leaf. All marks are measured from it. */
export const termHeadMeaning = (): string => say("term-head-meaning");
/** tail */
export const termTail = (): string => say("term-tail");
/** tail */
export const termTailForms = (): string => say("term-tail-forms");
/** The bottom edge of a leaf. */
export const termTailMeaning = (): string => say("term-tail-meaning");
/** fore-edge */
export const termForeEdge = (): string => say("term-fore-edge");
/** fore-edge */
export const termForeEdgeForms = (): string => say("term-fore-edge-forms");
/** The edge of a leaf that opens. Depths are measured from it inward. */
export const termForeEdgeMeaning = (): string => say("term-fore-edge-meaning");
/** gutter */
export const termGutter = (): string => say("term-gutter");
/** gutter */
export const termGutterForms = (): string => say("term-gutter-forms");
/** The inner edge of a leaf, where it joins the others. */
export const termGutterMeaning = (): string => say("term-gutter-meaning");
/** boards */
export const termBoards = (): string => say("term-boards");
/** boards */
export const termBoardsForms = (): string => say("term-boards-forms");
/** The two stiff covers of the book. A paperback has soft ones instead. */
export const termBoardsMeaning = (): string => say("term-boards-meaning");
/** caliper */
export const termCaliper = (): string => say("term-caliper");
/** caliper */
export const termCaliperForms = (): string => say("term-caliper-forms");
/** The thickness of one leaf: the thickness of all leaves, pressed, divided by their number. */
export const termCaliperMeaning = (): string => say("term-caliper-meaning");
/** level */
export const termLevel = (): string => say("term-level");
/** levels */
export const termLevelForms = (): string => say("term-level-forms");
/** A depth of the picture. Level 1 stands proudest, nearest to you; the others lie further back. */
export const termLevelMeaning = (): string => say("term-level-meaning");
/** background */
export const termBackground = (): string => say("term-background");
/** background */
export const termBackgroundForms = (): string => say("term-background-forms");
/** The level that shows where the picture has no shape. */
export const termBackgroundMeaning = (): string => say("term-background-meaning");
/** scoring gauge */
export const termGauge = (): string => say("term-gauge");
/** scoring gauge|gauge */
export const termGaugeForms = (): string => say("term-gauge-forms");
/** A card with numbered lines at the levels’ distances from the fore-edge. Laid on a leaf, it shows where to press. */
export const termGaugeMeaning = (): string => say("term-gauge-meaning");
/** score line */
export const termScoreLine = (): string => say("term-score-line");
/** score line|score lines */
export const termScoreLineForms = (): string => say("term-score-line-forms");
/** A crease pressed with a blunt tool, parallel to the fore-edge, so that a fold falls exactly there. */
export const termScoreLineMeaning = (): string => say("term-score-line-meaning");
/** mark */
export const termMark = (): string => say("term-mark");
/** marks */
export const termMarkForms = (): string => say("term-mark-forms");
/** A pencil point on a leaf, measured from the head, where a cut begins. */
export const termMarkMeaning = (): string => say("term-mark-meaning");
/** cut */
export const termCut = (): string => say("term-cut");
/** cuts */
export const termCutForms = (): string => say("term-cut-forms");
/** A slit from the fore-edge inward, square to it, that frees neighbouring strips from each other. */
export const termCutMeaning = (): string => say("term-cut-meaning");
/** strip */
export const termStrip = (): string => say("term-strip");
/** strip|strips */
export const termStripForms = (): string => say("term-strip-forms");
/** A stretch of one leaf at one level, between two cuts. It is folded as one flap. */
export const termStripMeaning = (): string => say("term-strip-meaning");
/** marking strip */
export const termMarkingStrip = (): string => say("term-marking-strip");
/** marking strip|marking strips */
export const termMarkingStripForms = (): string => say("term-marking-strip-forms");
/** A strip of paper from the packet that carries the marks of one leaf, to be copied from its edge. */
export const termMarkingStripMeaning = (): string => say("term-marking-strip-meaning");
/** flap */
export const termFlap = (): string => say("term-flap");
/** flap|flaps */
export const termFlapForms = (): string => say("term-flap-forms");
/** A strip once it is folded back and tucked behind. */
export const termFlapMeaning = (): string => say("term-flap-meaning");
/** stepped folds */
export const termSteppedFolds = (): string => say("term-stepped-folds");
/** stepped folds|stepped */
export const termSteppedFoldsForms = (): string => say("term-stepped-folds-forms");
/** The whole leaf is folded at the front level’s line first; deeper strips are then folded back once more. */
export const termSteppedFoldsMeaning = (): string => say("term-stepped-folds-meaning");
/** single folds */
export const termSingleFolds = (): string => say("term-single-folds");
/** single folds */
export const termSingleFoldsForms = (): string => say("term-single-folds-forms");
/** Each strip is folded once, from flat, at its own level’s line. */
export const termSingleFoldsMeaning = (): string => say("term-single-folds-meaning");
/** crease */
export const termCrease = (): string => say("term-crease");
/** crease|creases */
export const termCreaseForms = (): string => say("term-crease-forms");
/** Where a corner of a leaf is folded over: a straight line from a mark on the fore-edge to the head or tail edge. */
export const termCreaseMeaning = (): string => say("term-crease-meaning");
/** corner gauge */
export const termCornerGauge = (): string => say("term-corner-gauge");
/** corner gauge|corner gauges */
export const termCornerGaugeForms = (): string => say("term-corner-gauge-forms");
/** A card with a slanted side at 45°, over which the corners of leaves are folded where nothing is cut. */
export const termCornerGaugeMeaning = (): string => say("term-corner-gauge-meaning");
/** folding card */
export const termFoldingCard = (): string => say("term-folding-card");
/** folding card|folding cards */
export const termFoldingCardForms = (): string => say("term-folding-card-forms");
/** A strip of card over which whole leaves are folded in a kit without a knife. */
export const termFoldingCardMeaning = (): string => say("term-folding-card-meaning");
/** taking turns */
export const termTurns = (): string => say("term-turns");
/** takes turns|take turns */
export const termTurnsForms = (): string => say("term-turns-forms");
/** Where a leaf meets the picture more than once, it shows one piece of it, and its neighbours show the others. */
export const termTurnsMeaning = (): string => say("term-turns-meaning");
/** merged */
export const termMerged = (): string => say("term-merged");
/** merged */
export const termMergedForms = (): string => say("term-merged-forms");
/** A strip too short to fold is merged: it is folded together with the strip next to it. */
export const termMergedMeaning = (): string => say("term-merged-meaning");
/** tack */
export const termTack = (): string => say("term-tack");
/** tack|tacks */
export const termTackForms = (): string => say("term-tack-forms");
/** A dot of glue under a flap that the next leaf does not hold. */
export const termTackMeaning = (): string => say("term-tack-meaning");
/** loose */
export const termLoose = (): string => say("term-loose");
/** loose */
export const termLooseForms = (): string => say("term-loose-forms");
/** A flap is loose where no next leaf covers it. */
export const termLooseMeaning = (): string => say("term-loose-meaning");
/** batch */
export const termBatch = (): string => say("term-batch");
/** batch|batches */
export const termBatchForms = (): string => say("term-batch-forms");
/** As many leaves as are worked before a pause, usually 15 to 20. */
export const termBatchMeaning = (): string => say("term-batch-meaning");
/** checkpoint */
export const termCheckpoint = (): string => say("term-checkpoint");
/** checkpoint|checkpoints */
export const termCheckpointForms = (): string => say("term-checkpoint-forms");
/** Every tenth picture leaf: compare its page number and its first mark before you go on. */
export const termCheckpointMeaning = (): string => say("term-checkpoint-meaning");
/** packing */
export const termPacking = (): string => say("term-packing");
/** packing */
export const termPackingForms = (): string => say("term-packing-forms");
/** Card or packing pieces under the lower side of the book, so that the gauge lies level. */
export const termPackingMeaning = (): string => say("term-packing-meaning");
/** opening */
export const termOpening = (): string => say("term-opening");
/** opening */
export const termOpeningForms = (): string => say("term-opening-forms");
/** The angle between the first and the last leaf of the opened book. */
export const termOpeningMeaning = (): string => say("term-opening-meaning");
/** hold width */
export const termHoldWidth = (): string => say("term-hold-width");
/** hold width */
export const termHoldWidthForms = (): string => say("term-hold-width-forms");
/** How far apart the first and the last picture leaf stand, measured straight between their folded edges at the head. There the picture has its true shape. */
export const termHoldWidthMeaning = (): string => say("term-hold-width-meaning");
/** holder */
export const termHolder = (): string => say("term-holder");
/** holder */
export const termHolderForms = (): string => say("term-holder-forms");
/** A strip of card with two slots that keeps the book at its hold width while glue dries. */
export const termHolderMeaning = (): string => say("term-holder-meaning");
/** pocket */
export const termPocket = (): string => say("term-pocket");
/** pocket */
export const termPocketForms = (): string => say("term-pocket-forms");
/** The room cut into the leaves for the light. */
export const termPocketMeaning = (): string => say("term-pocket-meaning");
/** notch */
export const termNotch = (): string => say("term-notch");
/** notch|notches */
export const termNotchForms = (): string => say("term-notch-forms");
/** A piece cut out of one leaf, from the fore-edge inward, so that the light has room. */
export const termNotchMeaning = (): string => say("term-notch-meaning");
/** window */
export const termWindow = (): string => say("term-window");
/** window */
export const termWindowForms = (): string => say("term-window-forms");
/** What closes the front: base frame, glazing and a door on a hinge. */
export const termWindowMeaning = (): string => say("term-window-meaning");
/** base frame */
export const termBaseFrame = (): string => say("term-base-frame");
/** base frame */
export const termBaseFrameForms = (): string => say("term-base-frame-forms");
/** The card frame that is glued to the front tips of the leaves. The door hangs on it. */
export const termBaseFrameMeaning = (): string => say("term-base-frame-meaning");
/** glazing */
export const termGlazing = (): string => say("term-glazing");
/** glazing */
export const termGlazingForms = (): string => say("term-glazing-forms");
/** Clear acetate behind the door’s hole. */
export const termGlazingMeaning = (): string => say("term-glazing-meaning");
/** hole */
export const termHole = (): string => say("term-hole");
/** hole */
export const termHoleForms = (): string => say("term-hole-forms");
/** What you look through in the window’s frame and door. */
export const termHoleMeaning = (): string => say("term-hole-meaning");
/** motif */
export const termMotif = (): string => say("term-motif");
/** motif|motifs */
export const termMotifForms = (): string => say("term-motif-forms");
/** A silhouette of card that decorates the window; one may cover the light. */
export const termMotifMeaning = (): string => say("term-motif-meaning");
/** packet */
export const termPacket = (): string => say("term-packet");
/** packet */
export const termPacketForms = (): string => say("term-packet-forms");
/** The printed kit: table, gauge, strips and templates at true scale. */
export const termPacketMeaning = (): string => say("term-packet-meaning");
/** Guide */
export const guideTitle = (): string => say("guide-title");
/** How to measure a book, make a kit, work along, hold a class, print and publish. */
export const guideSummary = (): string => say("guide-summary");
/** From a book on the shelf to a finished picture: read the chapters in order, or look up what you need. */
export const guideLede = (): string => say("guide-lede");
/** Chapters */
export const guideChapters = (): string => say("guide-chapters");
/** Reference */
export const guideReference = (): string => say("guide-reference");
/** Pages of the guide — The list of the guide's pages, beside each of them. */
export const guidePages = (): string => say("guide-pages");
/** On this page — The list of a page's sections. */
export const guideOnThisPage = (): string => say("guide-on-this-page");
/** Before and after — Links to the pages before and after this one. */
export const guideNeighbours = (): string => say("guide-neighbours");
/** Before: {title} */
export const guidePrevious = (args: { readonly title: Word }): string => say("guide-previous", args);
/** Next: {title} */
export const guideNext = (args: { readonly title: Word }): string => say("guide-next", args);
/** Guide — Link at the top of every page. */
export const guideLink = (): string => say("guide-link");
/** Drawn for the book of {kit}. — Under a drawing; $kit is the title of a kit of the site. */
export const guideFigure = (args: { readonly kit: Word }): string => say("guide-figure", args);
/** Key */
export const guideKey = (): string => say("guide-key");
/** Meaning */
export const guideMeaning = (): string => say("guide-meaning");
/** Allowed */
export const guideAllowed = (): string => say("guide-allowed");
/** Left out */
export const guideUsual = (): string => say("guide-usual");
/** required */
export const guideRequired = (): string => say("guide-required");
/** none */
export const guideNone = (): string => say("guide-none");
/** length, {least} to {most} mm */
export const guideLength = (args: { readonly least: Word; readonly most: Word }): string => say("guide-length", args);
/** whole number|number */
export const guideNumber = (args: { readonly whole: Word }): string => say("guide-number", args);
/** {number}, {least} to {most} — $number is the message above, with the measure where there is one. */
export const guideNumberBetween = (args: { readonly number: Word; readonly least: Word; readonly most: Word }): string => say("guide-number-between", args);
/** {number}, {least} or more */
export const guideNumberFrom = (args: { readonly number: Word; readonly least: Word }): string => say("guide-number-from", args);
/** {number} above {above} */
export const guideNumberAbove = (args: { readonly number: Word; readonly above: Word }): string => say("guide-number-above", args);
/** {number} above {above}, up to {most} */
export const guideNumberAboveMost = (args: { readonly number: Word; readonly above: Word; readonly most: Word }): string => say("guide-number-above-most", args);
/** degrees */
export const guideDegrees = (): string => say("guide-degrees");
/** seconds */
export const guideSeconds = (): string => say("guide-seconds");
/** minutes */
export const guideMinutes = (): string => say("guide-minutes");
/** text */
export const guideText = (): string => say("guide-text");
/** text, up to {most} characters */
export const guideTextMost = (args: { readonly most: Word }): string => say("guide-text-most", args);
/** day as YYYY-MM-DD */
export const guideDay = (): string => say("guide-day");
/** web address */
export const guideAddress = (): string => say("guide-address");
/** true or false */
export const guideFlag = (): string => say("guide-flag");
/** keys of its own — A link to the table of these keys. */
export const guideKeys = (): string => say("guide-keys");
/** list */
export const guideList = (): string => say("guide-list");
/** list of up to {most} */
export const guideListMost = (args: { readonly most: Word }): string => say("guide-list-most", args);
/** list of {least} to {most} */
export const guideListBetween = (args: { readonly least: Word; readonly most: Word }): string => say("guide-list-between", args);
/** list of {most} */
export const guideListExactly = (args: { readonly most: Word }): string => say("guide-list-exactly", args);
/** each: — What each thing of a list is follows. */
export const guideEach = (): string => say("guide-each");
/** any of these names: — Names that a key takes, each with a value: the names follow. */
export const guideNames = (): string => say("guide-names");
/** names of your own */
export const guideOwnNames = (): string => say("guide-own-names");
/** rename the file */
export const guideRename = (): string => say("guide-rename");
/** reference */
export const guideReferenceField = (): string => say("guide-reference-field");
/** figure */
export const guideFigureField = (): string => say("guide-figure-field");
/** one of these names: {names} — $names as they are typed. */
export const guideDirectives = (args: { readonly names: Word }): string => say("guide-directives", args);
/** {hours} h */
export const hoursOnly = (args: { readonly hours: Word }): string => say("hours-only", args);
/** {minutes} min */
export const hoursMinutesOnly = (args: { readonly minutes: Word }): string => say("hours-minutes-only", args);
/** {hours} h {minutes} min */
export const hoursAndMinutes = (args: { readonly hours: Word; readonly minutes: Word }): string => say("hours-and-minutes", args);
/** {count} caution in full|{count} cautions in full */
export const kitChapterCautions = (args: { readonly count: number }): string => say("kit-chapter-cautions", args);
/** {materials} material|{materials} materials, {tools} tool|{tools} tools */
export const kitChapterSupplies = (args: { readonly materials: number; readonly tools: number }): string => say("kit-chapter-supplies", args);
/** leaves to find and to score, {batches} batch|leaves to find and to score, {batches} batches */
export const kitChapterPrepare = (args: { readonly batches: number }): string => say("kit-chapter-prepare", args);
/** the light’s place|{parts} part to cut, with files|{parts} parts to cut, with files */
export const kitChapterWindow = (args: { readonly parts: number }): string => say("kit-chapter-window", args);
/** {steps} step|{steps} steps, about {hours} */
export const kitChapterSteps = (args: { readonly steps: number; readonly hours: Word }): string => say("kit-chapter-steps", args);
/** {leaves} leaf|{leaves} leaves, no cuts|{cuts} cut|{cuts} cuts */
export const kitChapterPattern = (args: { readonly leaves: number; readonly cuts: number }): string => say("kit-chapter-pattern", args);
/** nothing to glue|{count} dot of glue|{count} dots of glue */
export const kitChapterTacks = (args: { readonly count: number }): string => say("kit-chapter-tacks", args);
/** What it takes — What a kit takes, in short. */
export const kitTakes = (): string => say("kit-takes");
/** All supplies, with amounts and prices */
export const kitTakesAll = (): string => say("kit-takes-all");
/** Materials: */
export const kitTakesMaterials = (): string => say("kit-takes-materials");
/** Tools: */
export const kitTakesTools = (): string => say("kit-takes-tools");
/** Before hands begin — Above the cautions in short. */
export const kitCare = (): string => say("kit-care");
/** All cautions */
export const kitCareAll = (): string => say("kit-care-all");
/** Make it, stage by stage — Leads to the page on which a piece is made. */
export const kitMake = (): string => say("kit-make");
/** More to print and to download — Closed below the first links of a kit's page. */
export const kitMoreFiles = (): string => say("kit-more-files");
/** Gauge, strips and templates are printed at true scale from the packet of this kit. — Stands on paper alone, where a kit's page is printed. */
export const kitPrinted = (): string => say("kit-printed");
/** {title}, the opened book seen from the front, drawn from the computed leaves — The title of a kit's page in a link elsewhere is the kit's own. */
export const kitFrontAlt = (args: { readonly title: Word }): string => say("kit-front-alt", args);
/** {title}, the finished book lit from inside in a dark room */
export const kitLitAlt = (args: { readonly title: Word }): string => say("kit-lit-alt", args);
/** Picture */
export const kitMoods = (): string => say("kit-moods");
/** by day, open */
export const kitMoodDay = (): string => say("kit-mood-day");
/** lit, window closed */
export const kitMoodLit = (): string => say("kit-mood-lit");
/** {version}, {day} — $version links to the list of versions. */
export const kitVersionOf = (args: { readonly version: Word; readonly day: Word }): string => say("kit-version-of", args);
/** Version {version} */
export const kitVersion = (args: { readonly version: Word }): string => say("kit-version", args);
/** Units */
export const kitUnits = (): string => say("kit-units");
/** millimetres */
export const kitMillimetres = (): string => say("kit-millimetres");
/** inches */
export const kitInches = (): string => say("kit-inches");
/** {difficulty} · stepped folds|folded corners, no knife|single folds · opening {opening} · reads right to left|reads left to right */
export const kitTagline = (args: { readonly difficulty: Word; readonly folds: Word; readonly opening: Word; readonly direction: Word }): string => say("kit-tagline", args);
/** From the front you see {levels} as drawn. — $levels is a list of: 74% of well. */
export const kitKept = (args: { readonly levels: Word }): string => say("kit-kept", args);
/** {percent} of {level} */
export const kitKeptLevel = (args: { readonly percent: Word; readonly level: Word }): string => say("kit-kept-level", args);
/** Sides of prouder leaves hide parts of deeper levels, mostly away from the middle. */
export const kitKeptHidden = (): string => say("kit-kept-hidden");
/** Far out, deep folds do not reach all the way. */
export const kitKeptUnreached = (): string => say("kit-kept-unreached");
/** Packet, {paper} — Links to what is printed; $paper is the name of a paper. */
export const kitPacketOn = (args: { readonly paper: Word }): string => say("kit-packet-on", args);
/** Packet without strips, {paper} */
export const kitBenchOn = (args: { readonly paper: Word }): string => say("kit-bench-on", args);
/** Large-print table, {paper} */
export const kitLargeOn = (args: { readonly paper: Word }): string => say("kit-large-on", args);
/** Table in short, {paper} */
export const kitCompactOn = (args: { readonly paper: Word }): string => say("kit-compact-on", args);
/** Print my packet */
export const kitMyPacket = (): string => say("kit-my-packet");
/** Large-print table */
export const kitMyLarge = (): string => say("kit-my-large");
/** Picture, figures and links here are those of the last book that fitted. — While the panel holds a figure that cannot be used, or a book that does not fit. */
export const kitHeld = (): string => say("kit-held");
/** Work along, leaf by leaf */
export const kitWorkAlong = (): string => say("kit-work-along");
/** On this page — Headings of the page, in its order; the list of contents uses them, too. */
export const kitContents = (): string => say("kit-contents");
/** See it from all sides */
export const kitRound = (): string => say("kit-round");
/** Does my book fit? */
export const kitBook = (): string => say("kit-book");
/** Cautions */
export const kitCautions = (): string => say("kit-cautions");
/** Supplies and tools */
export const kitSupplies = (): string => say("kit-supplies");
/** Supplies */
export const kitSuppliesShort = (): string => say("kit-supplies-short");
/** Prepare the book */
export const kitPrepare = (): string => say("kit-prepare");
/** Light and window */
export const kitWindow = (): string => say("kit-window");
/** Steps */
export const kitSteps = (): string => say("kit-steps");
/** Pattern table */
export const kitTable = (): string => say("kit-table");
/** Tack list */
export const kitTacks = (): string => say("kit-tacks");
/** Tacks */
export const kitTacksShort = (): string => say("kit-tacks-short");
/** Versions */
export const kitVersions = (): string => say("kit-versions");
/** Photos */
export const kitPhotos = (): string => say("kit-photos");
/** Picture after {work}, {source}, licence {licence}. */
export const kitCredit = (args: { readonly work: Word; readonly source: Word; readonly licence: Word }): string => say("kit-credit", args);
/** Licence of this kit: {licence}. */
export const kitLicence = (args: { readonly licence: Word }): string => say("kit-licence", args);
/** opens {host} — After a link to another site. */
export const kitLinkOpens = (args: { readonly host: Word }): string => say("kit-link-opens", args);
/** Before you choose this fit — Above warnings. */
export const kitWarnings = (): string => say("kit-warnings");
/** The pattern on this page is worked out for one book: this many leaves, this thick, this wide, and tall enough for the picture. For any other book, enter its measurements below and the whole page follows. */
export const kitBookText = (): string => say("kit-book-text");
/** Replace these with your book’s measurements. Everything on this page follows: picture, figures, table, window and files. */
export const kitRefitText = (): string => say("kit-refit-text");
/** My book */
export const kitRefitBook = (): string => say("kit-refit-book");
/** My gauge and folds */
export const kitRefitFold = (): string => say("kit-refit-fold");
/** My light */
export const kitRefitLight = (): string => say("kit-refit-light");
/** The author tells of this kit as it is cut. Your steps below fold it without a knife. — Above what the author tells of a kit that is cut, where a reader folds its corners. */
export const kitStoryOfCut = (): string => say("kit-story-of-cut");
/** Compare with the drawing — Where corners are folded: tells how much of the drawn outline will be seen from the front on the reader's book. */
export const kitRefitMatch = (): string => say("kit-refit-match");
/** Remember this book */
export const kitRefitKeep = (): string => say("kit-refit-keep");
/** Use my saved book */
export const kitRefitKept = (): string => say("kit-refit-kept");
/** Back to the kit’s own book */
export const kitRefitReset = (): string => say("kit-refit-reset");
/** One row per leaf. {marks} are measured from the head edge. The arrow gives the {cut} at that mark, measured from the fore-edge inward. {folds} lists the level of each strip from head to tail. Lengths are in {units}. — Above the table of leaves. The three arguments name what is emphasised; $units is the word for the units of length. */
export const kitTableText = (args: { readonly marks: Word; readonly cut: Word; readonly folds: Word; readonly units: Word }): string => say("kit-table-text", args);
/** One row per leaf. {marks} are measured from the head edge. The arrow gives the {cut} at that mark, measured from the folded edge once the whole leaf is folded at the {level} line. {folds} lists the level of each strip from head to tail. Lengths are in {units}. */
export const kitTableTextStepped = (args: { readonly marks: Word; readonly cut: Word; readonly level: Word; readonly folds: Word; readonly units: Word }): string => say("kit-table-text-stepped", args);
/** Marks */
export const kitTableMarks = (): string => say("kit-table-marks");
/** cut */
export const kitTableCut = (): string => say("kit-table-cut");
/** Folds */
export const kitTableFolds = (): string => say("kit-table-folds");
/** {number} {name}, {depth} (background)| — A level of the list: its number is in bold before it. */
export const kitLevel = (args: { readonly number: Word; readonly name: Word; readonly depth: Word; readonly background: Word }): string => say("kit-level", args);
/** {number} {name}, line {line}, {depth} (background)| */
export const kitLevelLine = (args: { readonly number: Word; readonly name: Word; readonly line: Word; readonly depth: Word; readonly background: Word }): string => say("kit-level-line", args);
/** Pattern table of {title} */
export const kitTableCaption = (args: { readonly title: Word }): string => say("kit-table-caption", args);
/** Leaf */
export const tableLeaf = (): string => say("table-leaf");
/** Pattern page */
export const tablePatternPage = (): string => say("table-pattern-page");
/** Book page */
export const tableBookPage = (): string => say("table-book-page");
/** Marks › cuts */
export const tableMarks = (): string => say("table-marks");
/** Folds */
export const tableFolds = (): string => say("table-folds");
/** border — Stands where a border leaf has no pattern page. */
export const tableBorder = (): string => say("table-border");
/** whole leaf */
export const tableWhole = (): string => say("table-whole");
/** light: notch {notch} */
export const kitTableNotch = (args: { readonly notch: Word }): string => say("kit-table-notch", args);
/** {from} to {to}, {depth} deep */
export const kitTableNotchPlace = (args: { readonly from: Word; readonly to: Word; readonly depth: Word }): string => say("kit-table-notch-place", args);
/** checkpoint: page number and first mark */
export const kitTableCheckpoint = (): string => say("kit-table-checkpoint");
/** {count} merged strip|{count} merged strips */
export const kitMerged = (args: { readonly count: number }): string => say("kit-merged", args);
/** Too short to fold, so each was merged with the neighbour whose depth is nearest. */
export const kitMergedText = (): string => say("kit-merged-text");
/** leaf {leaf}: {place}, level {level} into level {into} */
export const kitMergedStrip = (args: { readonly leaf: Word; readonly place: Word; readonly level: Word; readonly into: Word }): string => say("kit-merged-strip", args);
/** The next leaf does not hold these flaps. Give each one a dot of glue. Measured from the head. */
export const kitTacksText = (): string => say("kit-tacks-text");
/** The next leaf holds every flap of this kit: there is nothing to glue. */
export const kitTacksNone = (): string => say("kit-tacks-none");
/** {leaf}: {place} — A leaf and a stretch of it. */
export const kitTack = (args: { readonly leaf: Word; readonly place: Word }): string => say("kit-tack", args);
/** {count} more loose stretch is too short to need it; the JSON lists it, too.|{count} more loose stretches are too short to need it; the JSON lists them, too. */
export const kitTacksHeld = (args: { readonly count: number }): string => say("kit-tacks-held", args);
/** The whole book as this pattern makes it, on a turntable: {parts}. */
export const kitRoundText = (args: { readonly parts: Word }): string => say("kit-round-text", args);
/** every leaf with its folds, cuts and flaps */
export const kitRoundLeaves = (): string => say("kit-round-leaves");
/** every leaf with its folded corners */
export const kitRoundCorners = (): string => say("kit-round-corners");
/** the light in its pocket */
export const kitRoundLight = (): string => say("kit-round-light");
/** the window and its door */
export const kitRoundWindow = (): string => say("kit-round-window");
/** This view needs JavaScript; the front picture above shows the same book. */
export const kitRoundScript = (): string => say("kit-round-script");
/** turntable */
export const kitRoundRole = (): string => say("kit-round-role");
/** {title}, the whole book in three dimensions */
export const kitRoundAlt = (args: { readonly title: Word }): string => say("kit-round-alt", args);
/** Drag to turn and tilt. Spread two fingers, or hold Ctrl and turn the wheel, to zoom. Keys: arrows turn and tilt, + and − zoom, 0 looks from the front. */
export const kitRoundHelp = (): string => say("kit-round-help");
/** Look from */
export const kitRoundFrom = (): string => say("kit-round-from");
/** Front */
export const kitRoundFront = (): string => say("kit-round-front");
/** Left */
export const kitRoundLeft = (): string => say("kit-round-left");
/** Right */
export const kitRoundRight = (): string => say("kit-round-right");
/** Above */
export const kitRoundAbove = (): string => say("kit-round-above");
/** Behind */
export const kitRoundBehind = (): string => say("kit-round-behind");
/** Nearer */
export const kitRoundNearer = (): string => say("kit-round-nearer");
/** Further */
export const kitRoundFurther = (): string => say("kit-round-further");
/** Opening */
export const kitRoundOpening = (): string => say("kit-round-opening");
/** Angle between first and last leaf */
export const kitRoundAngle = (): string => say("kit-round-angle");
/** Back to the kit’s opening */
export const kitRoundOwn = (): string => say("kit-round-own");
/** Show */
export const kitRoundShow = (): string => say("kit-round-show");
/** Light on */
export const kitRoundShowLight = (): string => say("kit-round-show-light");
/** Window */
export const kitRoundShowWindow = (): string => say("kit-round-show-window");
/** Motifs */
export const kitRoundShowMotifs = (): string => say("kit-round-show-motifs");
/** Door, closed to wide open */
export const kitRoundShowDoor = (): string => say("kit-round-show-door");
/** Colours by level */
export const kitRoundShowLevels = (): string => say("kit-round-show-levels");
/** Room for the light */
export const kitLight = (): string => say("kit-light");
/** Mark each notch together with the leaf’s other marks, from the unfolded fore-edge. Cut it after folding, batch by batch, through body and flap. The pocket’s floor is {floor} from the head edge. At least {paper} of paper stays at the gutter. */
export const kitLightText = (args: { readonly floor: Word; readonly paper: Word }): string => say("kit-light-text", args);
/** This kit’s light is {given} wide. At that height, this book has room for up to {width}. At that width, it has room for a light {height} tall. Measure yours first. */
export const kitLightMost = (args: { readonly given: Word; readonly width: Word; readonly height: Word }): string => say("kit-light-most", args);
/** Share of the widest light that fits */
export const kitLightShare = (): string => say("kit-light-share");
/** Notch table, {count} leaf|Notch table, {count} leaves */
export const kitNotches = (args: { readonly count: number }): string => say("kit-notches", args);
/** {leaf}: {notch} — A leaf and its notch. */
export const kitNotch = (args: { readonly leaf: Word; readonly notch: Word }): string => say("kit-notch", args);
/** {from}–{to}, {depth} {unit} deep */
export const kitNotchPlace = (args: { readonly from: Word; readonly to: Word; readonly depth: Word; readonly unit: Word }): string => say("kit-notch-place", args);
/** The window */
export const kitPanes = (): string => say("kit-panes");
/** The parts are cut as if unrolled along the front, for card that bends round it. */
export const kitPanesWrap = (): string => say("kit-panes-wrap");
/** The parts are cut as seen from the front, for a stiff panel. */
export const kitPanesFlat = (): string => say("kit-panes-flat");
/** {count} of {material}, {size}: {use}. */
export const kitPart = (args: { readonly count: Word; readonly material: Word; readonly size: Word; readonly use: Word }): string => say("kit-part", args);
/** {width} × {height} */
export const kitPartSize = (args: { readonly width: Word; readonly height: Word }): string => say("kit-part-size", args);
/** {format}, {unit} — Kinds of files to cut by; $unit is mm or inch. */
export const kitFileUnit = (args: { readonly format: Word; readonly unit: Word }): string => say("kit-file-unit", args);
/** {format} {unit} */
export const kitFileShortUnit = (args: { readonly format: Word; readonly unit: Word }): string => say("kit-file-short-unit", args);
/** inch */
export const kitFileInch = (): string => say("kit-file-inch");
/** SVG, 72 dpi */
export const kitFile72 = (): string => say("kit-file-72");
/** 72 dpi */
export const kitFileShort72 = (): string => say("kit-file-short-72");
/** All parts laid out on sheets */
export const kitSheets = (): string => say("kit-sheets");
/** too small for {parts} */
export const kitSheetTooSmall = (args: { readonly parts: Word }): string => say("kit-sheet-too-small", args);
/** Layers: {layers}, and {check}, a rectangle of {size} to measure before you cut. The 72 dpi variant is for programs that ignore units. — $layers and $check are names of layers as they stand in the files. */
export const kitFilesText = (args: { readonly layers: Word; readonly check: Word; readonly size: Word }): string => say("kit-files-text", args);
/** The picture beside index.md, as a path inside the kit folder. */
export const pictureFieldFile = (): string => say("picture-field-file");
/** words, an outline or layers are the picture */
export const pictureFieldFileUsual = (): string => say("picture-field-file-usual");
/** Which shapes of the file are taken, for one level. {shapes} — $shapes: how shapes are named. */
export const pictureFieldNames = (args: { readonly shapes: Word }): string => say("picture-field-names", args);
/** all of them */
export const pictureFieldNamesUsual = (): string => say("picture-field-names-usual");
/** The level of it all, by name. */
export const pictureFieldLevel = (): string => say("picture-field-level");
/** levels says it, or the first level */
export const pictureFieldLevelUsual = (): string => say("picture-field-level-usual");
/** Which shapes belong to which level: a level’s name, and the shapes under it. For words: a level for each line. */
export const pictureFieldLevels = (): string => say("picture-field-levels");
/** level says it */
export const pictureFieldLevelsUsual = (): string => say("picture-field-levels-usual");
/** Width of the box. Lengths in the layers are mm at this size; the book’s size follows from the fit. */
export const pictureFieldWidth = (): string => say("picture-field-width");
/** Height of the box. */
export const pictureFieldHeight = (): string => say("picture-field-height");
/** as the picture is drawn; layers need both */
export const pictureFieldSideUsual = (): string => say("picture-field-side-usual");
/** Layers from front to back, each from one source, placed in the box. */
export const layerLayers = (): string => say("layer-layers");
/** A layer: a level, one source (file, text or an outline), and where it stands. */
export const layerLayer = (): string => say("layer-layer");
/** A source that is joined to a layer or cut out of it: file, text or an outline, and where it stands. */
export const layerPiece = (): string => say("layer-piece");
/** What is joined to the layer, placed in the same box. */
export const layerJoin = (): string => say("layer-join");
/** What is cut out of the layer, placed in the same box. */
export const layerCut = (): string => say("layer-cut");
/** The middle of the layer: from the left and from the top of the box: [60, 70] or ["50%", "30%"]. */
export const layerAt = (): string => say("layer-at");
/** the middle of the box */
export const layerAtUsual = (): string => say("layer-at-usual");
/** From the left of the box. */
export const layerAcross = (): string => say("layer-across");
/** From the top of the box. */
export const layerDown = (): string => say("layer-down");
/** How wide the layer is. With one of width and height it keeps its shape; with both it is stretched. */
export const layerWidth = (): string => say("layer-width");
/** How tall the layer is. */
export const layerHeight = (): string => say("layer-height");
/** the other side says it; with neither, it fills the box as far as its shape allows */
export const layerSideUsual = (): string => say("layer-side-usual");
/** Degrees by which the layer is turned clockwise. */
export const layerTurn = (): string => say("layer-turn");
/** true turns left and right around. */
export const layerMirror = (): string => say("layer-mirror");
/** {about} A length in the box: mm from {least} to {most}, text with a unit, or a share such as "50%". — $about: a sentence about the field. */
export const layerSpan = (args: { readonly about: Word; readonly least: Word; readonly most: Word }): string => say("layer-span", args);
/** A ring. */
export const outlineRing = (): string => say("outline-ring");
/** How wide the band is. */
export const outlineRingWidth = (): string => say("outline-ring-width");
/** A full circle; with width and height, an oval. It has no numbers: {}. */
export const outlineOval = (): string => say("outline-oval");
/** An arch: straight sides under a bow. */
export const outlineArch = (): string => say("outline-arch");
/** How far the bow rises above the straight sides. */
export const outlineArchRise = (): string => say("outline-arch-rise");
/** half the width; of a pointed arch, as its sides are equally long */
export const outlineArchRiseUsual = (): string => say("outline-arch-rise-usual");
/** Whether the bow is round or pointed. */
export const outlineArchTop = (): string => say("outline-arch-top");
/** A heart. It has no numbers: {}. */
export const outlineHeart = (): string => say("outline-heart");
/** A star. */
export const outlineStar = (): string => say("outline-star");
/** How many points it has. */
export const outlineStarPoints = (): string => say("outline-star-points");
/** How far the inner corners are from the middle, as a share of the points. */
export const outlineStarInner = (): string => say("outline-star-inner");
/** The moon as it is lit; width and height are those of its full disc. */
export const outlineMoon = (): string => say("outline-moon");
/** The lit share: 0.1 a thin crescent, 0.5 a half moon, 1 a full moon. */
export const outlineMoonLit = (): string => say("outline-moon-lit");
/** The lit side. */
export const outlineMoonSide = (): string => say("outline-moon-side");
/** A rectangle. */
export const outlineRectangle = (): string => say("outline-rectangle");
/** The radius of round corners. */
export const outlineCorner = (): string => say("outline-corner");
/** 0, sharp corners */
export const outlineCornerUsual = (): string => say("outline-corner-usual");
/** Ground along the foot of its box. */
export const outlineGround = (): string => say("outline-ground");
/** How high it stands, in the middle of its waves. */
export const outlineGroundHeight = (): string => say("outline-ground-height");
/** How far its waves rise and fall. */
export const outlineGroundWave = (): string => say("outline-ground-wave");
/** 0, a straight edge */
export const outlineGroundWaveUsual = (): string => say("outline-ground-wave-usual");
/** How many waves it has. */
export const outlineGroundWaves = (): string => say("outline-ground-waves");
/** A border along the edges of its box. */
export const outlineBorder = (): string => say("outline-border");
/** How wide the band is. */
export const outlineBorderWidth = (): string => say("outline-border-width");
/** Words, or a list of lines: up to {lines} lines of {most} letters. */
export const lettersText = (args: { readonly lines: Word; readonly most: Word }): string => say("letters-text", args);
/** A line of words, up to {most} letters. */
export const lettersLine = (args: { readonly most: Word }): string => say("letters-line", args);
/** literata, source-sans-3, a font of the site’s settings by its name, or a font file in the kit folder. */
export const lettersFont = (): string => say("letters-font");
/** literata */
export const lettersFontUsual = (): string => say("letters-font-usual");
/** How bold the letters are; the nearest weight that the font has is taken. */
export const lettersWeight = (): string => say("letters-weight");
/** 600 */
export const lettersWeightUsual = (): string => say("letters-weight-usual");
/** How lines stand to each other. */
export const lettersAlign = (): string => say("letters-align");
/** centre */
export const lettersAlignUsual = (): string => say("letters-align-usual");
/** From line to line, in heights of the letters. */
export const lettersLineHeight = (): string => say("letters-line-height");
/** 1.2 */
export const lettersLineHeightUsual = (): string => say("letters-line-height-usual");
/** Room between letters, in heights of the letters. */
export const lettersSpacing = (): string => say("letters-spacing");
/** 0 */
export const lettersSpacingUsual = (): string => say("letters-spacing-usual");
/** Degrees over which the longest line is bent; below 0 it sags. */
export const lettersArc = (): string => say("letters-arc");
/** 0, straight */
export const lettersArcUsual = (): string => say("letters-arc-usual");
/** given {value}, which is {percent}%, outside {least} to {most}% */
export const checkGivenShare = (args: { readonly value: Word; readonly percent: Word; readonly least: Word; readonly most: Word }): string => say("check-given-share", args);
/** no source: nothing says what to draw — $key: a key as it is typed, such as width. */
export const layerNoSource = (): string => say("layer-no-source");
/** one of {sources} */
export const layerOneSource = (args: { readonly sources: Word }): string => say("layer-one-source", args);
/** add one of them */
export const layerAddSource = (): string => say("layer-add-source");
/** {sources} in one */
export const layerTwoSources = (args: { readonly sources: Word }): string => say("layer-two-sources", args);
/** keep one, and give the others layers of their own */
export const layerSplit = (): string => say("layer-split");
/** "{key}", which belongs to words|a drawing (SVG)|a photograph or a scan|a file|something with levels */
export const layerForeignKey = (args: { readonly key: Word; readonly owner: Word }): string => say("layer-foreign-key", args);
/** {source} takes {keys} */
export const layerForeignAllowed = (args: { readonly source: Word; readonly keys: Word }): string => say("layer-foreign-allowed", args);
/** {source} takes none of these keys */
export const layerForeignNone = (args: { readonly source: Word }): string => say("layer-foreign-none", args);
/** remove it, or move it to where it belongs */
export const layerRemoveKey = (): string => say("layer-remove-key");
/** both level and levels */
export const layerBothLevels = (): string => say("layer-both-levels");
/** level for all, or levels for parts */
export const layerOneOfLevels = (): string => say("layer-one-of-levels");
/** the name of a level: {levels} */
export const layerLevelAllowed = (args: { readonly levels: Word }): string => say("layer-level-allowed", args);
/** add level */
export const layerNameLevel = (): string => say("layer-name-level");
/** a list of levels */
export const layerLevelsList = (): string => say("layer-levels-list");
/** a level’s name with its shapes */
export const layerLevelsMap = (): string => say("layer-levels-map");
/** a level for each of its {lines} line|its {lines} lines */
export const layerLevelsOfLines = (args: { readonly lines: number }): string => say("layer-levels-of-lines", args);
/** name a level for each line */
export const layerLevelsMatch = (): string => say("layer-levels-match");
/** width and height of the box, in mm */
export const layerBoxSides = (): string => say("layer-box-sides");
/** width or height of the box, in mm */
export const layerOutlineSide = (): string => say("layer-outline-side");
/** join, while the layer has several levels */
export const layerJoinLevels = (): string => say("layer-join-levels");
/** join with one level */
export const layerJoinOne = (): string => say("layer-join-one");
/** state level, or move what is joined into a layer */
export const layerJoinRemedy = (): string => say("layer-join-remedy");
/** fewer points: all sources together may have as many as one picture file */
export const layerPoints = (): string => say("layer-points");
/** one photograph or scan more than a kit may trace */
export const layerTracedMore = (): string => say("layer-traced-more");
/** up to {most} photographs and scans in picture and motifs, pieces among them */
export const layerTraced = (args: { readonly most: Word }): string => say("layer-traced", args);
/** trace it once and save the drawing as SVG, or leave some out */
export const layerTraceOnce = (): string => say("layer-trace-once");
/** level "{level}", at which the picture has nothing */
export const layerLevelUndrawn = (args: { readonly level: Word }): string => say("layer-level-undrawn", args);
/** level "{level}", of which nothing shows */
export const layerLevelHidden = (args: { readonly level: Word }): string => say("layer-level-hidden", args);
/** every level but the background shows somewhere */
export const layerLevelsShow = (): string => say("layer-levels-show");
/** give a layer level: {level}, or remove the level */
export const layerDrawLevel = (args: { readonly level: Word }): string => say("layer-draw-level", args);
/** move its layer further up in the list, or move it into the box */
export const layerBringForward = (): string => say("layer-bring-forward");
/** Layer {layer} of the picture shows nowhere: others lie over it, or it lies outside the box. Move it further up in the list, or move it in — $layer: its place in the list, from 1. */
export const layerHidden = (args: { readonly layer: Word }): string => say("layer-hidden", args);
/** Layer {layer} of the picture reaches out of its box: what lies there is not shown */
export const layerOver = (args: { readonly layer: Word }): string => say("layer-over", args);
/** {length} mm */
export const outlineGiven = (args: { readonly length: Word }): string => say("outline-given", args);
/** at most {most} mm on an outline of {width} × {height} mm */
export const outlineMost = (args: { readonly most: Word; readonly width: Word; readonly height: Word }): string => say("outline-most", args);
/** make it smaller, or the outline larger */
export const outlineSmaller = (): string => say("outline-smaller");
/** at least {least} mm for a pointed arch of this width */
export const outlinePointed = (args: { readonly least: Word }): string => say("outline-pointed", args);
/** raise it, or choose top: round */
export const outlineRoundArch = (): string => say("outline-round-arch");
/** "{font}" is no font — $font: what was given as a font. */
export const lettersNoFont = (args: { readonly font: Word }): string => say("letters-no-font", args);
/** {families}, or a font file beside index.md (.ttf, .otf, .woff, .woff2) */
export const lettersFonts = (args: { readonly families: Word }): string => say("letters-fonts", args);
/** correct the name, or put the font file beside index.md */
export const lettersNameFont = (): string => say("letters-name-font");
/** "{font}" cannot be read as a font */
export const lettersBrokenFont = (args: { readonly font: Word }): string => say("letters-broken-font", args);
/** take another font, or save this one again */
export const lettersOtherFont = (): string => say("letters-other-font");
/** no weight, as "{font}" has only its own */
export const lettersOneWeight = (args: { readonly font: Word }): string => say("letters-one-weight", args);
/** remove weight, or name the font file of that weight */
export const lettersNoWeight = (): string => say("letters-no-weight");
/** {letters}| and {more} more, which the font does not have — $letters: letters with their numbers, “月” (U+6708), as a list. */
export const lettersUncovered = (args: { readonly letters: Word; readonly more: number }): string => say("letters-uncovered", args);
/** letters that the font has */
export const lettersCovered = (): string => say("letters-covered");
/** write it otherwise, or name a font that has it|write them otherwise, or name a font that has them */
export const lettersWithFont = (args: { readonly count: number }): string => say("letters-with-font", args);
/** words without a letter that shows */
export const lettersNone = (): string => say("letters-none");
/** at least one letter */
export const lettersSome = (): string => say("letters-some");
/** write words, or remove the layer */
export const lettersAdd = (): string => say("letters-add");
/** letters with more points than letters have */
export const lettersWild = (): string => say("letters-wild");
/** letters of a sound font */
export const lettersTame = (): string => say("letters-tame");
/** lines that lie nearer to the longest one than the middle of its arc */
export const lettersArcRoom = (): string => say("letters-arc-room");
/** bend them less, or let them stand closer */
export const lettersArcLess = (): string => say("letters-arc-less");
/** trace: {trace}, which goes over all levels */
export const layerAllLevels = (args: { readonly trace: Word }): string => say("layer-all-levels", args);
/** silhouette, which lies at one level */
export const layerSilhouetteLevel = (): string => say("layer-silhouette-level");
/** a colour for each level, as { fill: "#c33" } */
export const layerColourLevels = (): string => say("layer-colour-levels");
/** only colours of areas, as { fill: "#c33" } */
export const layerOnlyFill = (): string => say("layer-only-fill");
/** state colours under levels */
export const layerStateColours = (): string => say("layer-state-colours");
/** silhouette, as one shape is asked for */
export const layerPieceTrace = (): string => say("layer-piece-trace");
/** leaf {leaf} */
export const leafNumber = (args: { readonly leaf: Word }): string => say("leaf-number", args);
/** p. {page} — A printed page, short. */
export const leafPage = (args: { readonly page: Word }): string => say("leaf-page", args);
/** front leaf {index} of {of} */
export const leafFront = (args: { readonly index: Word; readonly of: Word }): string => say("leaf-front", args);
/** plate {index} of {of} after p. {page} */
export const leafPlate = (args: { readonly index: Word; readonly of: Word; readonly page: Word }): string => say("leaf-plate", args);
/** end leaf {index} of {of} */
export const leafEnd = (args: { readonly index: Word; readonly of: Word }): string => say("leaf-end", args);
/** leaf {leaf}, p. {page} */
export const leafWithPage = (args: { readonly leaf: Word; readonly page: Word }): string => say("leaf-with-page", args);
/** leaf {leaf} ({name}) — A leaf without a page number; $name is one of front leaf, plate, end leaf. */
export const leafWithName = (args: { readonly leaf: Word; readonly name: Word }): string => say("leaf-with-name", args);
/** leaf {leaf} (not folded) */
export const leafNotFolded = (args: { readonly leaf: Word }): string => say("leaf-not-folded", args);
/** leaves {first} to {last} */
export const leafRun = (args: { readonly first: Word; readonly last: Word }): string => say("leaf-run", args);
/** leaves {first} to {last} ({from} to {to}) — $from and $to are pages, or names of leaves without a page number. */
export const leafRunPages = (args: { readonly first: Word; readonly last: Word; readonly from: Word; readonly to: Word }): string => say("leaf-run-pages", args);
/** Licences */
export const licencesLink = (): string => say("licences-link");
/** Licences of what this site is made of */
export const licencesHeading = (): string => say("licences-heading");
/** The program that made this site is Leaflight. Fonts and parts of scripts come from the packages named here, each under the terms that follow it. */
export const licencesText = (): string => say("licences-text");
/** {name} {version} ({licence}) — Above the text of a package's licence. */
export const licencesPackage = (args: { readonly name: Word; readonly version: Word; readonly licence: Word }): string => say("licences-package", args);
/** The site would hold {name} {version}, whose licence is “{licence}”. Only these licences are allowed: {allowed}. Use another package, or add the licence to src/build/licences/allowed.ts. — Told by a build. */
export const licencesRefused = (args: { readonly name: Word; readonly version: Word; readonly licence: Word; readonly allowed: Word }): string => say("licences-refused", args);
/** The site would hold {name} {version}, which has no file with the text of its licence. Use another version of it, or another package. */
export const licencesNoText = (args: { readonly name: Word; readonly version: Word }): string => say("licences-no-text", args);
/** Make {title} */
export const makeTitle = (args: { readonly title: Word }): string => say("make-title", args);
/** Stage by stage, from the closed book to the finished piece. */
export const makeLede = (): string => say("make-lede");
/** In a book of {leaves} leaves, {height} tall, {width} wide, {thickness} thick. — Whose book the page is for; lengths in the reader's units. */
export const makeBook = (args: { readonly leaves: Word; readonly height: Word; readonly width: Word; readonly thickness: Word }): string => say("make-book", args);
/** Without scripts this page is for the kit’s own book, and nothing is ticked. Drawings of the {steps} are on the kit’s page, and all leaves are in its {table}. */
export const makeNoScript = (args: { readonly steps: Word; readonly table: Word }): string => say("make-no-script", args);
/** steps */
export const makeNoScriptSteps = (): string => say("make-no-script-steps");
/** pattern table */
export const makeNoScriptTable = (): string => say("make-no-script-table");
/** Back to {title} */
export const makeBack = (args: { readonly title: Word }): string => say("make-back", args);
/** {percent} done */
export const makeNow = (args: { readonly percent: Word }): string => say("make-now", args);
/** about {time} to go */
export const makeLeft = (args: { readonly time: Word }): string => say("make-left", args);
/** All is done. */
export const makeFinished = (): string => say("make-finished");
/** Go on at the bench: {place} — $place is a leaf or other work in words. */
export const makeGo = (args: { readonly place: Word }): string => say("make-go", args);
/** Begin at the bench */
export const makeBegin = (): string => say("make-begin");
/** Notes on this piece */
export const makeNotes = (): string => say("make-notes");
/** Kept on this device with the piece. */
export const makeNotesHelp = (): string => say("make-notes-help");
/** This browser keeps nothing, so what you tick here is lost when the page is left. */
export const makeNotKept = (): string => say("make-not-kept");
/** Prepare the book|Fold the leaves|Notch and tack, in each batch|Make the window — A stage of several steps; one of a single step is called by it. */
export const makeStage = (args: { readonly stage: Word }): string => say("make-stage", args);
/** {count} step|{count} steps */
export const makeStageSteps = (args: { readonly count: number }): string => say("make-stage-steps", args);
/** done */
export const makeStageDone = (): string => say("make-stage-done");
/** {done} of {count} */
export const makeStagePart = (args: { readonly done: Word; readonly count: Word }): string => say("make-stage-part", args);
/** you are here */
export const makeStageHere = (): string => say("make-stage-here");
/** Done */
export const makeItemDone = (): string => say("make-item-done");
/** Supplies to lay out */
export const makeSupplies = (): string => say("make-supplies");
/** {done} of {count} at hand */
export const makeSuppliesPart = (args: { readonly done: Word; readonly count: Word }): string => say("make-supplies-part", args);
/** Batches */
export const makeBatches = (): string => say("make-batches");
/** Batch {number}: {first} to {last} */
export const makeBatch = (args: { readonly number: Word; readonly first: Word; readonly last: Word }): string => say("make-batch", args);
/** {done} of {count} folded */
export const makeBatchDone = (args: { readonly done: Word; readonly count: Word }): string => say("make-batch-done", args);
/** Table of batch {number} */
export const makeBatchTable = (args: { readonly number: Word }): string => say("make-batch-table", args);
/** Tick all of batch {number} */
export const makeBatchTick = (args: { readonly number: Word }): string => say("make-batch-tick", args);
/** {count} thing|{count} things */
export const makeSuppliesCount = (args: { readonly count: number }): string => say("make-supplies-count", args);
/** Where the work is */
export const makeHere = (): string => say("make-here");
/** Share of the work that is done */
export const makeShare = (): string => say("make-share");
/** to look at: {trouble} — Under the line of its kit. $trouble: a sentence or two of below; $way: one with what would help. */
export const makeableLine = (args: { readonly trouble: Word }): string => say("makeable-line", args);
/** what helps against {against}: {way} — $against: one of the next eight. */
export const makeableLineHelp = (args: { readonly against: Word; readonly way: Word }): string => say("makeable-line-help", args);
/** hidden parts of “{level}” */
export const makeableAgainstHidden = (args: { readonly level: Word }): string => say("makeable-against-hidden", args);
/** “{level}” out of reach */
export const makeableAgainstOutOfReach = (args: { readonly level: Word }): string => say("makeable-against-out-of-reach", args);
/** merged strips */
export const makeableAgainstSlivers = (): string => say("makeable-against-slivers");
/** narrow parts */
export const makeableAgainstNarrow = (): string => say("makeable-against-narrow");
/** leaves with many cuts */
export const makeableAgainstManyCuts = (): string => say("makeable-against-many-cuts");
/** springing open */
export const makeableAgainstSpringsOpen = (): string => say("makeable-against-springs-open");
/** parts that no leaf shows */
export const makeableAgainstUnseen = (): string => say("makeable-against-unseen");
/** steep creases */
export const makeableAgainstTurned = (): string => say("makeable-against-turned");
/** under {share} — A share too small to write. $share: the least that is written. */
export const makeableUnder = (args: { readonly share: Word }): string => say("makeable-under", args);
/** Seen from the front, sides of prouder leaves hide {percent} of “{level}”. — $percent of a level’s area. */
export const makeableHidden = (args: { readonly percent: Word; readonly level: Word }): string => say("makeable-hidden", args);
/** It is hidden {places}. — $places: where, as in “31 to 42 mm left of the middle”. */
export const makeableHiddenAt = (args: { readonly places: Word }): string => say("makeable-hidden-at", args);
/** {from} to {to} left of the middle */
export const makeableHiddenLeft = (args: { readonly from: Word; readonly to: Word }): string => say("makeable-hidden-left", args);
/** {from} to {to} right of the middle */
export const makeableHiddenRight = (args: { readonly from: Word; readonly to: Word }): string => say("makeable-hidden-right", args);
/** from {left} left to {right} right of the middle — A place that lies on both sides of the middle. */
export const makeableHiddenAcross = (args: { readonly left: Word; readonly right: Word }): string => say("makeable-hidden-across", args);
/** “{level}” goes on {missing} further at the side than its folds reach. */
export const makeableOutOfReach = (args: { readonly level: Word; readonly missing: Word }): string => say("makeable-out-of-reach", args);
/** One strip is too short to fold and is merged.|{strips} strips at one place|{places} places are too short to fold and are merged. “{level}” loses most by it: {percent} of its area. */
export const makeableSlivers = (args: { readonly strips: number; readonly places: number; readonly level: Word; readonly percent: Word }): string => say("makeable-slivers", args);
/** One part of the picture is|{parts} parts of the picture are narrower than two leaves. A leaf’s column is {pitch} wide. */
export const makeableNarrow = (args: { readonly parts: number; readonly pitch: Word }): string => say("makeable-narrow", args);
/** One of them falls between the leaves and is not seen at all.|{parts} of them fall between the leaves and are not seen at all. — Added where some of these parts fall between two leaves. */
export const makeableNarrowUnseen = (args: { readonly parts: number }): string => say("makeable-narrow-unseen", args);
/** One leaf has|{leaves} leaves have more than {comfortable} cuts, up to {most}. Such leaves tear easily. */
export const makeableManyCuts = (args: { readonly leaves: number; readonly comfortable: Word; readonly most: Word }): string => say("makeable-many-cuts", args);
/** The flaps push the book open to {resting}, {by} more than the picture needs. */
export const makeableSpringsOpen = (args: { readonly resting: Word; readonly by: Word }): string => say("makeable-springs-open", args);
/** {offer} ({after} hidden instead of {before}). — $offer: a change, as in “Make the picture 105 mm tall”. What stands in brackets is the trouble with it and without it. */
export const makeableWayHidden = (args: { readonly offer: Word; readonly after: Word; readonly before: Word }): string => say("makeable-way-hidden", args);
/** {offer} ({after} out of reach instead of {before}). */
export const makeableWayOutOfReach = (args: { readonly offer: Word; readonly after: Word; readonly before: Word }): string => say("makeable-way-out-of-reach", args);
/** {offer} ({after} of the picture merged instead of {before}). */
export const makeableWaySlivers = (args: { readonly offer: Word; readonly after: Word; readonly before: Word }): string => say("makeable-way-slivers", args);
/** {offer} ({after} narrow part|{after} narrow parts instead of {before}). — $count: the number of $after, which is the same as written. */
export const makeableWayNarrow = (args: { readonly offer: Word; readonly count: number; readonly after: Word; readonly before: Word }): string => say("makeable-way-narrow", args);
/** {offer} ({after} such leaf|{after} such leaves instead of {before}). */
export const makeableWayManyCuts = (args: { readonly offer: Word; readonly count: number; readonly after: Word; readonly before: Word }): string => say("makeable-way-many-cuts", args);
/** {offer} ({after} strip|{after} strips merged instead of {before}). */
export const makeableWayMerged = (args: { readonly offer: Word; readonly count: number; readonly after: Word; readonly before: Word }): string => say("makeable-way-merged", args);
/** {offer} ({after} such part|{after} such parts instead of {before}). */
export const makeableWayUnseen = (args: { readonly offer: Word; readonly count: number; readonly after: Word; readonly before: Word }): string => say("makeable-way-unseen", args);
/** {offer} ({after} too far open instead of {before}). */
export const makeableWaySpringsOpen = (args: { readonly offer: Word; readonly after: Word; readonly before: Word }): string => say("makeable-way-springs-open", args);
/** Fold “{level}” together with “{into}” */
export const makeableMergeLevels = (args: { readonly level: Word; readonly into: Word }): string => say("makeable-merge-levels", args);
/** Smooth the outlines by up to {tolerance} */
export const makeableSimplify = (args: { readonly tolerance: Word }): string => say("makeable-simplify", args);
/** Too little to be seen: nothing need be changed. — In place of ways out. */
export const makeableSlight = (): string => say("makeable-slight");
/** No change that was tried helps enough without harm elsewhere. */
export const makeableNoWay = (): string => say("makeable-no-way");
/** For the author of {title} */
export const makeableTitle = (args: { readonly title: Word }): string => say("makeable-title", args);
/** What is hard to make or to see in {title}, and what would help. */
export const makeableSummary = (args: { readonly title: Word }): string => say("makeable-summary", args);
/** This page is only there while you work. It is not part of the published site. */
export const makeableLede = (): string => say("makeable-lede");
/** The picture on the book, with what is hard to make or to see. The numbers are those of the list. */
export const makeableDrawing = (): string => say("makeable-drawing");
/** The picture, unrolled along the tips. The numbers are those of the list. */
export const makeableDrawingAlong = (): string => say("makeable-drawing-along");
/** Nothing here is hard to make or to see. — In place of the list. */
export const makeableAllWell = (): string => say("makeable-all-well");
/** What to look at */
export const makeableTroubles = (): string => say("makeable-troubles");
/** What helps, as it was tried */
export const makeableWays = (): string => say("makeable-ways");
/** What each level keeps */
export const makeableLevels = (): string => say("makeable-levels");
/** Seen straight from the front, by area. Paper and flaps are taken as thin as lines. */
export const makeableLevelsNote = (): string => say("makeable-levels-note");
/** A piece that is read while walking round is seen from everywhere, so only its areas are told. */
export const makeableLevelsAlong = (): string => say("makeable-levels-along");
/** Level */
export const makeableColumnLevel = (): string => say("makeable-column-level");
/** Area */
export const makeableColumnArea = (): string => say("makeable-column-area");
/** Seen */
export const makeableColumnKept = (): string => say("makeable-column-kept");
/** Hidden */
export const makeableColumnHidden = (): string => say("makeable-column-hidden");
/** Out of reach */
export const makeableColumnUnreached = (): string => say("makeable-column-unreached");
/** Another level */
export const makeableColumnChanged = (): string => say("makeable-column-changed");
/** Room at the gutter */
export const makeableColumnGutter = (): string => say("makeable-column-gutter");
/** {area} in²|cm² — cm² or in². */
export const makeableArea = (args: { readonly area: Word; readonly unit: Word }): string => say("makeable-area", args);
/** Everything else that was found */
export const makeableFound = (): string => say("makeable-found");
/** Nothing else was found. */
export const makeableFoundNothing = (): string => say("makeable-found-nothing");
/** To the kit’s page */
export const makeableToKit = (): string => say("makeable-to-kit");
/** All kits */
export const makeableToIndex = (): string => say("makeable-to-index");
/** For authors */
export const makeableIndexTitle = (): string => say("makeable-index-title");
/** What is hard to make or to see in each kit. */
export const makeableIndexSummary = (): string => say("makeable-index-summary");
/** nothing to look at|{troubles} thing to look at|{troubles} things to look at */
export const makeableIndexCount = (args: { readonly troubles: number }): string => say("makeable-index-count", args);
/** Another build of {output} is running (process {number} on {host}). Waiting up to {minutes} minute|{minutes} minutes; Ctrl+C stops waiting. If it no longer runs, remove {lock} — $number: of the process. $host: its machine. $lock: a folder. */
export const makingWait = (args: { readonly output: Word; readonly number: Word; readonly host: Word; readonly minutes: number; readonly lock: Word }): string => say("making-wait", args);
/** another build of {output} is running (process {number} on {host}): wait for it or end it. If it no longer runs, remove {lock} */
export const makingBusy = (args: { readonly output: Word; readonly number: Word; readonly host: Word; readonly lock: Word }): string => say("making-busy", args);
/** the site is being served already (process {number} on {host}): stop that first. If it no longer runs, remove {lock} */
export const makingServing = (args: { readonly number: Word; readonly host: Word; readonly lock: Word }): string => say("making-serving", args);
/** {output} is a link to {leads}, which a build would have to replace. Remove the link, and copy {output} there after the build — $leads: where the link leads. */
export const makingLink = (args: { readonly output: Word; readonly leads: Word }): string => say("making-link", args);
/** {output} is a file, and the site needs a folder there. Move the file away and build again */
export const makingNoFolder = (args: { readonly output: Word }): string => say("making-no-folder", args);
/** {target} cannot be replaced (it is in use, or another file system is mounted there|permission is missing|permission is missing, or a file in it is open|it belongs to another file system|{code}). Close what uses it, or move or remove it, and build again — $code: the system’s name of the fault. */
export const makingUnmovable = (args: { readonly target: Word; readonly code: Word }): string => say("making-unmovable", args);
/** {target} could neither be replaced nor put back ({fault}). It is whole in {before}, and the next build puts it back */
export const makingAside = (args: { readonly target: Word; readonly fault: Word; readonly before: Word }): string => say("making-aside", args);
/** warning: {path} cannot be removed. It is|{path} and {count} files in all cannot be removed. They are no part of the site; the next build tries again — $path: the first of them. */
export const makingLeft = (args: { readonly count: number; readonly path: Word }): string => say("making-left", args);
/** {path}: the disk is full. Make room on it and build again */
export const diskFull = (args: { readonly path: Word }): string => say("disk-full", args);
/** {path}: your share of the disk is used up. Make room and build again */
export const diskQuota = (args: { readonly path: Word }): string => say("disk-quota", args);
/** {path}: larger than the system lets a file become. Raise the limit (ulimit -f) and build again */
export const diskFileSize = (args: { readonly path: Word }): string => say("disk-file-size", args);
/** {path}: the file system is read-only. Make it writable, or move the project, and build again */
export const diskReadOnly = (args: { readonly path: Word }): string => say("disk-read-only", args);
/** {path}: permission is missing. Give yourself permission to read and write there, and build again */
export const diskForbidden = (args: { readonly path: Word }): string => say("disk-forbidden", args);
/** {path}: too many files are open. Close other programs or raise the limit (ulimit -n), and build again */
export const diskOpenFiles = (args: { readonly path: Word }): string => say("disk-open-files", args);
/** {path}: the disk cannot be read or written. Check the disk and build again */
export const diskFailing = (args: { readonly path: Word }): string => say("disk-failing", args);
/** {path}: a file stands where a folder is needed. Move the file away and build again */
export const diskNoFolder = (args: { readonly path: Word }): string => say("disk-no-folder", args);
/** warning: a file in {folder} was damaged and is|{count} files in {folder} were damaged and are made anew */
export const keptDamaged = (args: { readonly count: number; readonly folder: Word }): string => say("kept-damaged", args);
/** warning: nothing is kept in {folder} for the next build, as it cannot be used ({fault}) — $fault: what the system calls it. */
export const keptUnusable = (args: { readonly folder: Word; readonly fault: Word }): string => say("kept-unusable", args);
/** Measure my book, step by step */
export const measureStart = (): string => say("measure-start");
/** {step} of {count} — $step of four. */
export const measureStep = (args: { readonly step: Word; readonly count: Word }): string => say("measure-step", args);
/** Back */
export const measureBack = (): string => say("measure-back");
/** Next */
export const measureNext = (): string => say("measure-next");
/** Use these measurements */
export const measureDone = (): string => say("measure-done");
/** Cancel */
export const measureCancel = (): string => say("measure-cancel");
/** Yes */
export const measureYes = (): string => say("measure-yes");
/** No */
export const measureNo = (): string => say("measure-no");
/** The marked field cannot be used. */
export const measureUnread = (): string => say("measure-unread");
/** How many pages does it have? */
export const measurePages = (): string => say("measure-pages");
/** Look for the last page that carries a number. Then count leaves from the front to the one with page 1. */
export const measurePagesLead = (): string => say("measure-pages-lead");
/** Leaves behind the last page */
export const measureBehind = (): string => say("measure-behind");
/** Blank ones, or with advertisements. Leave it empty where there are none. */
export const measureHelpBehind = (): string => say("measure-help-behind");
/** How tall is a leaf? */
export const measureHeight = (): string => say("measure-height");
/** How wide is a leaf? */
export const measureWidth = (): string => say("measure-width");
/** How thick are all leaves? */
export const measureThickness = (): string => say("measure-thickness");
/** Is the count right? */
export const measureCheck = (): string => say("measure-check");
/** Count to leaf {leaf}. Its front should carry page {page}. Does it? */
export const measureCheckLead = (args: { readonly leaf: Word; readonly page: Word }): string => say("measure-check-lead", args);
/** Page on the front of leaf {leaf} */
export const measureCheckPage = (args: { readonly leaf: Word }): string => say("measure-check-page", args);
/** The printed number on the side that you see first as you turn to it. */
export const measureCheckHelp = (): string => say("measure-check-help");
/** The book has {leaves} leaves. — The leaves that follow from the pages. */
export const measureLeaves = (args: { readonly leaves: Word }): string => say("measure-leaves", args);
/** Fronts carry odd numbers. Turn leaf {leaf} back and read its front. */
export const measureCheckBack = (args: { readonly leaf: Word }): string => say("measure-check-back", args);
/** That cannot be, as the book was counted. Go back, and count again. */
export const measureCheckImpossible = (): string => say("measure-check-impossible");
/** Then page 1 is on leaf {leaf}. That is corrected. */
export const measureCheckPageOne = (args: { readonly leaf: Word }): string => say("measure-check-page-one", args);
/** Then {leaves} leaf before it carries no number. Find it, and write the page before it.|Then {leaves} leaves before it carry no number. Find them, and write the pages before them. */
export const measureCheckUnnumbered = (args: { readonly leaves: number }): string => say("measure-check-unnumbered", args);
/** kit’s: {figure} */
export const measureHintKit = (args: { readonly figure: Word }): string => say("measure-hint-kit", args);
/** so far: {figure} */
export const measureHintNow = (args: { readonly figure: Word }): string => say("measure-hint-now", args);
/** each kit’s own */
export const measureHintEach = (): string => say("measure-hint-each");
/** An opened book. On the left the last page that carries a number, on the right the leaf with page 1, and the leaves before it. */
export const measureDrawPages = (): string => say("measure-draw-pages");
/** page 1 */
export const measureDrawPageOne = (): string => say("measure-draw-page-one");
/** last number */
export const measureDrawLast = (): string => say("measure-draw-last");
/** A leaf of the opened book. Its height is measured along the fore-edge, from head to tail. */
export const measureDrawHeight = (): string => say("measure-draw-height");
/** A leaf of the opened book. Its width is measured from the fore-edge to where it disappears in the gutter. */
export const measureDrawWidth = (): string => say("measure-draw-width");
/** All leaves, pressed together, without the boards. Their thickness is measured at the fore-edge. */
export const measureDrawThickness = (): string => say("measure-draw-thickness");
/** measure this */
export const measureDrawThis = (): string => say("measure-draw-this");
/** An opened book. Leaf {leaf} lies on the right, and page {page} stands on its front. */
export const measureDrawCheck = (args: { readonly leaf: Word; readonly page: Word }): string => say("measure-draw-check", args);
/** Card of base frame, door and closure tab. */
export const fieldInsertCard = (): string => say("field-insert-card");
/** Silhouettes of card on the window; a kit that lists none has none. */
export const fieldInsertMotifs = (): string => say("field-insert-motifs");
/** A silhouette of card: from the shelf, a file in the kit’s folder, words or an outline. */
export const fieldMotif = (): string => say("field-motif");
/** Name of a motif on the site’s shelf: lantern for content/motifs/lantern.svg. */
export const fieldMotifShelf = (): string => say("field-motif-shelf");
/** A file beside index.md: of an SVG its shapes are the silhouette, of a photograph or a scan what trace: silhouette finds. */
export const fieldMotifFile = (): string => say("field-motif-file");
/** What people call it. */
export const fieldMotifName = (): string => say("field-motif-name");
/** the name of its file, or what it is */
export const fieldMotifNameUsual = (): string => say("field-motif-name-usual");
/** Where the middle of the motif is on the closed window: from the frame’s left edge, then from its upper edge. — Fields and values stay as they are typed. */
export const fieldMotifAt = (): string => say("field-motif-at");
/** before the light with covers: light; else high on the right, low on the left, high on the left, low on the right */
export const fieldMotifAtUsual = (): string => say("field-motif-at-usual");
/** How far from the frame’s left edge, along the card. */
export const fieldMotifAcross = (): string => say("field-motif-across");
/** How far below the frame’s upper edge. */
export const fieldMotifDown = (): string => say("field-motif-down");
/** Width of the motif on the window, before it is turned and without what is joined. */
export const fieldMotifWidth = (): string => say("field-motif-width");
/** Height of the motif on the window, before it is turned and without what is joined. */
export const fieldMotifHeight = (): string => say("field-motif-height");
/** follows from the other side; without both, the light’s size and some more with covers: light, else a quarter of the hole */
export const fieldMotifSizeUsual = (): string => say("field-motif-size-usual");
/** Foam spacers between the glazing and the motif; 0 lies flat on it. */
export const fieldMotifSpacers = (): string => say("field-motif-spacers");
/** 0 with covers: light, else 1 */
export const fieldMotifSpacersUsual = (): string => say("field-motif-spacers-usual");
/** Card that it is cut from. */
export const fieldMotifCard = (): string => say("field-motif-card");
/** light: it stands before the light. */
export const fieldMotifCovers = (): string => say("field-motif-covers");
/** Degrees that it is turned clockwise, after it is mirrored. */
export const fieldMotifTurn = (): string => say("field-motif-turn");
/** true: left and right change places. */
export const fieldMotifMirror = (): string => say("field-motif-mirror");
/** What is joined to the motif, placed in its box: shares of it, or mm where the motif is sized in mm. */
export const fieldMotifJoin = (): string => say("field-motif-join");
/** What is cut out of the motif, placed in its box in the same way. */
export const fieldMotifCut = (): string => say("field-motif-cut");
/** {about} One of {names}; or a colour as style sheets write it, with what people call it. */
export const fieldCard = (args: { readonly about: Word; readonly names: Word }): string => say("field-card", args);
/** any card that the maker likes */
export const fieldCardUsual = (): string => say("field-card-usual");
/** The colour: teal, rgb(63 107 112), or a code after # … */
export const fieldCardColour = (): string => say("field-card-colour");
/** What people call it, before the word “card”: sea-green. */
export const fieldCardName = (): string => say("field-card-name");
/** {about} {help}; or a share of the frame: 50%. — $help: field-length-help */
export const fieldWindowLength = (args: { readonly about: Word; readonly help: Word }): string => say("field-window-length", args);
/** white|cream|sand|yellow|orange|red|pink|violet|blue|night-blue|teal|green|brown|grey|black — What stands before the word for card. */
export const cardColour = (args: { readonly name: Word }): string => say("card-colour", args);
/** {colour} card — $colour: one of card-colour, or the author's own word. */
export const materialCardOf = (args: { readonly colour: Word }): string => say("material-card-of", args);
/** {count} {colour} — $count sheets of one colour of card, in a list of them: 2 teal, 1 of any colour */
export const sheetsOfColour = (args: { readonly count: Word; readonly colour: Word }): string => say("sheets-of-colour", args);
/** {count} of any colour */
export const sheetsOfAny = (args: { readonly count: Word }): string => say("sheets-of-any", args);
/** {sheet}, 250–300 g/m²: {gauge} for the scoring gauge (one line|{lines} lines) and small pieces; for the window and motifs {colours} — $sheet and $gauge: why-card-window. $colours: such a list. */
export const whyCardColours = (args: { readonly sheet: Word; readonly gauge: Word; readonly lines: number; readonly colours: Word }): string => say("why-card-colours", args);
/** {packed}: {colours} — $packed: shopping-packed or shopping-too-small */
export const shoppingColours = (args: { readonly packed: Word; readonly colours: Word }): string => say("shopping-colours", args);
/** Then set each motif at its number in the figure. Lengths run from the frame’s left edge to its left side, and from the frame’s upper edge to its top. */
export const stepDecorateMeasure = (): string => say("step-decorate-measure");
/** {number}: {motif}, {card}, flat on the glazing|on one spacer|on {spacers} spacers, one on the other; left {left}, top {top}. — $card: material-card or material-card-of. $left and $top are lengths. */
export const stepDecorateMotif = (args: { readonly number: Word; readonly motif: Word; readonly card: Word; readonly spacers: number; readonly left: Word; readonly top: Word }): string => say("step-decorate-motif", args);
/** {number}: {length} — Beside a dimension. */
export const drawMotifDistance = (args: { readonly number: Word; readonly length: Word }): string => say("draw-motif-distance", args);
/** {number} {motif} — In a list of what the figure shows. */
export const drawMotifNumber = (args: { readonly number: Word; readonly motif: Word }): string => say("draw-motif-number", args);
/** The closed window from the front, with its motifs: {motifs}. Lengths run from the frame’s left and upper edge. */
export const drawMotifs = (args: { readonly motifs: Word }): string => say("draw-motifs", args);
/** The closed window in the dark with its light on.|The closed window in the dark with its light on; the motifs stand before it. */
export const drawLitWindow = (args: { readonly motifs: number }): string => say("draw-lit-window", args);
/** nothing that is left to be cut from card */
export const motifNothing = (): string => say("motif-nothing");
/** a silhouette */
export const motifSomething = (): string => say("motif-something");
/** draw a filled shape, or cut less out of it */
export const motifDrawSomething = (): string => say("motif-draw-something");
/** keep one, and give the others motifs of their own or put them under join */
export const motifSplit = (): string => say("motif-split");
/** a motif on the shelf: {names} */
export const motifOnShelf = (args: { readonly names: Word }): string => say("motif-on-shelf", args);
/** a motif on the shelf, which is empty */
export const motifShelfEmpty = (): string => say("motif-shelf-empty");
/** put an SVG into content/motifs, or state a file beside index.md */
export const motifShelfRemedy = (): string => say("motif-shelf-remedy");
/** write {name} */
export const motifWriteName = (args: { readonly name: Word }): string => say("motif-write-name", args);
/** covers the light of a kit that states none */
export const motifNoLight = (): string => say("motif-no-light");
/** covers: light in a kit with a light */
export const motifLightAllowed = (): string => say("motif-light-allowed");
/** remove covers, or state the light */
export const motifLightRemedy = (): string => say("motif-light-remedy");
/** at most {most} motifs without a place of their own */
export const motifSeatsAllowed = (args: { readonly most: Word }): string => say("motif-seats-allowed", args);
/** a colour as style sheets write it: teal, rgb(63 107 112), or a code after # */
export const motifColourAllowed = (): string => say("motif-colour-allowed");
/** correct the colour */
export const motifColourRemedy = (): string => say("motif-colour-remedy");
/** one piece that touches nothing|{pieces} pieces that touch nothing of the motif “{motif}” */
export const motifLoose = (args: { readonly pieces: number; readonly motif: Word }): string => say("motif-loose", args);
/** one connected silhouette, or pieces that each lie on the frame or on a motif with fewer spacers */
export const motifLooseAllowed = (): string => say("motif-loose-allowed");
/** join the pieces, as with a bar or a ring under join, or move the motif so that each has something to be glued to */
export const motifLooseRemedy = (): string => say("motif-loose-remedy");
/** words|ring|oval|arch|heart|star|moon|rectangle|ground|border — What is printed of a motif whose author gave it no name. */
export const motifUsualName = (args: { readonly source: Word }): string => say("motif-usual-name", args);
/** {length} mm, in a motif without a size in mm */
export const motifStrayLength = (args: { readonly length: Word }): string => say("motif-stray-length", args);
/** a share such as 10%; also mm, where width or height of the motif is in mm */
export const motifShares = (): string => say("motif-shares");
/** write a share, or state the motif’s width in mm */
export const motifWriteShare = (): string => say("motif-write-share");
/** turned, with width and height of which one is a share */
export const motifTurnedShares = (): string => say("motif-turned-shares");
/** with turn: one of width and height, or both in mm */
export const motifTurnedSize = (): string => say("motif-turned-size");
/** leave one of them out, or state both in mm */
export const motifSizeInMm = (): string => say("motif-size-in-mm");
/** the motif “{motif}” lies beside the window */
export const motifOff = (args: { readonly motif: Word }): string => say("motif-off", args);
/** a place on the window, which is {width} wide and {height} high */
export const motifOffAllowed = (args: { readonly width: Word; readonly height: Word }): string => say("motif-off-allowed", args);
/** state another place at {field} */
export const motifOffRemedy = (args: { readonly field: Word }): string => say("motif-off-remedy", args);
/** {field}: the motif “{motif}” reaches {by} beyond the frame. Move it or make it smaller. — $field: the motif's place in the front matter. */
export const noteMotifBeyond = (args: { readonly field: Word; readonly motif: Word; readonly by: Word }): string => say("note-motif-beyond", args);
/** {field}: the motifs “{motif}” and “{other}” overlap on the same number of spacers. Move one, or give it another number. */
export const noteMotifsOverlap = (args: { readonly field: Word; readonly motif: Word; readonly other: Word }): string => say("note-motifs-overlap", args);
/** {field}: the motif “{motif}” falls apart where it is narrower than {least}. Make it larger, or its strips broader. */
export const noteMotifNarrow = (args: { readonly field: Word; readonly motif: Word; readonly least: Word }): string => say("note-motif-narrow", args);
/** insert.motifs: nothing covers the light; all of it shows in the window. */
export const noteLightBare = (): string => say("note-light-bare");
/** insert.motifs: {beside} of the light’s silhouette shows beside the motifs, and {through} through openings in them. */
export const noteLightShows = (args: { readonly beside: Word; readonly through: Word }): string => say("note-light-shows", args);
/** npm run new -- FOLDER, with one of --picture FILE, --word WORD, --outline NAME or --icon NAME. All options: {known}. With nothing behind it, it asks. */
export const newHelp = (args: { readonly known: Word }): string => say("new-help", args);
/** There is no option “{option}”. There are: {known}. — $option: as it was given. $known: the options there are. $meant: the one of a similar name. */
export const newOption = (args: { readonly option: Word; readonly known: Word }): string => say("new-option", args);
/** There is no option “{option}”. Did you mean {meant}? */
export const newOptionMeant = (args: { readonly option: Word; readonly meant: Word }): string => say("new-option-meant", args);
/** {option} needs something behind it, such as: npm run new -- moon --outline moon */
export const newOptionEmpty = (args: { readonly option: Word }): string => say("new-option-empty", args);
/** {option} stands alone, with nothing behind it. */
export const newOptionAlone = (args: { readonly option: Word }): string => say("new-option-alone", args);
/** A kit has one folder; given are {folders}. Put a title or text of several words in quotes. */
export const newOneFolder = (args: { readonly folders: Word }): string => say("new-one-folder", args);
/** A new kit has one picture; given are {options}. Leave out all but one. — $options: two or more of --picture, --word, --outline and --icon. */
export const newOnePicture = (args: { readonly options: Word }): string => say("new-one-picture", args);
/** There is no outline {given}. There are: {outlines}. */
export const newOutline = (args: { readonly given: Word; readonly outlines: Word }): string => say("new-outline", args);
/** The book {given} cannot be used. Allowed is height x width x thickness of its leaves, such as 198x126x21 or 7.75x5x0.875in. */
export const newBook = (args: { readonly given: Word }): string => say("new-book", args);
/** A measured book needs its count of leaves, too: --leaves 180. A leaf is one sheet: two pages. */
export const newNoLeaves = (): string => say("new-no-leaves");
/** The leaves {given} cannot be used. Allowed is a whole number from {least} to {most}; a leaf is one sheet: two pages. */
export const newLeaves = (args: { readonly given: Word; readonly least: Word; readonly most: Word }): string => say("new-leaves", args);
/** The light {given} cannot be used. Allowed is diameter x height, such as 22x24 or 0.875x1in. */
export const newLight = (args: { readonly given: Word }): string => say("new-light", args);
/** The units {given} cannot be used. Allowed are mm and in. */
export const newUnits = (args: { readonly given: Word }): string => say("new-units", args);
/** There is something at content/kits/{kit} already. Choose another name: npm run new -- {kit}-two — $kit: the folder’s name. */
export const newExists = (args: { readonly kit: Word }): string => say("new-exists", args);
/** The folder’s name {given} cannot be used. Allowed are small letters, digits and single hyphens, such as evening-boat. */
export const newFolderName = (args: { readonly given: Word }): string => say("new-folder-name", args);
/** There is no file {file} to take as a picture. — $file: as it was given. */
export const newNoFile = (args: { readonly file: Word }): string => say("new-no-file", args);
/** {file} is larger than the {most} MB that a picture may have. — $most: MB. */
export const newFileLarge = (args: { readonly file: Word; readonly most: Word }): string => say("new-file-large", args);
/** {file} is no picture that can be used. Allowed are SVG, PNG, JPEG, WebP and AVIF. */
export const newFileKind = (args: { readonly file: Word }): string => say("new-file-kind", args);
/** --font says how a word is written, so it needs --word, too. */
export const newFontAlone = (): string => say("new-font-alone");
/** There is no font {font}. Allowed are {fonts}, or a font file that ends in .ttf, .otf, .woff or .woff2. — $fonts: names of the fonts that come along. */
export const newNoFont = (args: { readonly font: Word; readonly fonts: Word }): string => say("new-no-font", args);
/** {font} is larger than the {most} MB that a font may have. — $most: MB. */
export const newFontLarge = (args: { readonly font: Word; readonly most: Word }): string => say("new-font-large", args);
/** There is no icon {given}. Near are: {meant}. — $meant: icons of similar names. */
export const newIcon = (args: { readonly given: Word; readonly meant: Word }): string => say("new-icon", args);
/** Say which picture to begin with: --picture moon.svg, --word Harbour, --outline heart or --icon anchor. — Where nobody can be asked. */
export const newNoPicture = (): string => say("new-no-picture");
/** Nothing was made. */
export const newGaveUp = (): string => say("new-gave-up");
/** No height was found at which the picture fits this book. The last try says: {why} */
export const newNoFit = (args: { readonly why: Word }): string => say("new-no-fit", args);
/** No height was found at which the picture fits this book. */
export const newNoFitShort = (): string => say("new-no-fit-short");
/** This picture takes too long or too much memory. Simplify it, or save it smaller, and bring it again. */
export const newTooMuch = (): string => say("new-too-much");
/** {folder} is made: {height} tall, opening {opening}, {hours}. */
export const newMade = (args: { readonly folder: Word; readonly height: Word; readonly opening: Word; readonly hours: Word }): string => say("new-made", args);
/** The light has no room in this picture and was left out; the guide says how to make room. */
export const newLightLeftOut = (): string => say("new-light-left-out");
/** Letters {height} tall are hard to fold. Fewer letters, or two lines with \n between them, stand taller. — $height: of the picture, a word in one line. */
export const newLowWord = (args: { readonly height: Word }): string => say("new-low-word", args);
/** The book is a usual paperback; measure yours and put its figures into {file}. */
export const newUsualBook = (args: { readonly file: Word }): string => say("new-usual-book", args);
/** Look at it: npm start */
export const newNext = (): string => say("new-next");
/** After a change: npm run check -- {kit} */
export const newNextCheck = (args: { readonly kit: Word }): string => say("new-next-check", args);
/** A new kit */
export const newAskIntro = (): string => say("new-ask-intro");
/** What is the picture? */
export const newAskFrom = (): string => say("new-ask-from");
/** A word */
export const newAskFromWord = (): string => say("new-ask-from-word");
/** An outline: heart, star, moon … */
export const newAskFromOutline = (): string => say("new-ask-from-outline");
/** An icon of an open set */
export const newAskFromIcon = (): string => say("new-ask-from-icon");
/** A drawing or photo of mine */
export const newAskFromFile = (): string => say("new-ask-from-file");
/** Which word? */
export const newAskWord = (): string => say("new-ask-word");
/** Which outline? */
export const newAskOutline = (): string => say("new-ask-outline");
/** Which icon? Type what it shows, in English */
export const newAskIcon = (): string => say("new-ask-icon");
/** Where is the file? */
export const newAskFile = (): string => say("new-ask-file");
/** What is the kit called? */
export const newAskTitle = (): string => say("new-ask-title");
/** And its folder? */
export const newAskSlug = (): string => say("new-ask-slug");
/** How large are the leaves? Height x width x thickness of all, pressed */
export const newAskBook = (): string => say("new-ask-book");
/** How many leaves has the book? A leaf is one sheet: two pages */
export const newAskLeaves = (): string => say("new-ask-leaves");
/** Is there a light? Diameter x height, or nothing */
export const newAskLight = (): string => say("new-ask-light");
/** no light */
export const newAskLightNone = (): string => say("new-ask-light-none");
/** heart|star|moon|ring|oval|arch */
export const newOutlineName = (args: { readonly outline: Word }): string => say("new-outline-name", args);
/** A folded book with {title}. */
export const newTextSummary = (args: { readonly title: Word }): string => say("new-text-summary", args);
/** Tell about the piece here, in Markdown. */
export const newTextBody = (): string => say("new-text-body");
/** Measure your own book; the guide says how. */
export const newTextBook = (): string => say("new-text-book");
/** front (nearest the viewer) to back */
export const newTextLevels = (): string => say("new-text-levels");
/** The opening follows, so that the picture keeps its shape. */
export const newTextFit = (): string => say("new-text-fit");
/** Icon “{icon}” of the set Phosphor Icons */
export const newTextIcon = (args: { readonly icon: Word }): string => say("new-text-icon", args);
/** picture */
export const newLevelPicture = (): string => say("new-level-picture");
/** ground */
export const newLevelGround = (): string => say("new-level-ground");
/** tone {number} — A level of a photograph, counted from the front. */
export const newLevelNumber = (args: { readonly number: Word }): string => say("new-level-number", args);
/** red|orange|brown|yellow|green|turquoise|blue|purple|pink|black|grey|white — A level that is told by its colour. */
export const newColour = (args: { readonly colour: Word }): string => say("new-colour", args);
/** {colour} {count} — Another level of a colour, as in “blue 2”. */
export const newColourAgain = (args: { readonly colour: Word; readonly count: Word }): string => say("new-colour-again", args);
/** On this device: works offline, with its bench. */
export const offlineKit = (): string => say("offline-kit");
/** All of this kit is on this device: works offline. */
export const offlineKitAll = (): string => say("offline-kit-all");
/** Keep everything of this kit on this device */
export const offlineKeepAll = (): string => say("offline-keep-all");
/** Saving everything … */
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
/** A newer version is in use. Reload this page to see it. — Another window of the site took the newer version over. */
export const offlineTakenOver = (): string => say("offline-taken-over");
/** A newer version is there, but could not be saved whole. This device stays at the one it has and tries again later. */
export const offlineUpdateFailed = (): string => say("offline-update-failed");
/** Reload */
export const offlineReload = (): string => say("offline-reload");
/** Later */
export const offlineLater = (): string => say("offline-later");
/** Close */
export const offlineClose = (): string => say("offline-close");
/** The site could not be reached. */
export const offlineHostUnreachable = (): string => say("offline-host-unreachable");
/** The site is no longer there: its host answers that it has nothing at this address. */
export const offlineHostGone = (): string => say("offline-host-gone");
/** The site’s host answers with something that is not this site. */
export const offlineHostWrong = (): string => say("offline-host-wrong");
/** What you see is kept on this device: version {version} of {day}. — $version as the kit's author names it, $day such as 3 October 2026. */
export const offlineSeenEdition = (args: { readonly version: Word; readonly day: Word }): string => say("offline-seen-edition", args);
/** What you see is kept on this device. */
export const offlineSeen = (): string => say("offline-seen");
/** The site has a newer version */
export const offlineFileNewerHeading = (): string => say("offline-file-newer-heading");
/** This file belongs to a newer version of the kit than the one on this device. Open the kit, wait until the newer version is ready, and reload. */
export const offlineFileNewer = (): string => say("offline-file-newer");
/** This file is not on this device */
export const offlineFileHeading = (): string => say("offline-file-heading");
/** The site’s host answered with something that is not this file. Try it again later, or in another network. */
export const offlineFileWrong = (): string => say("offline-file-wrong");
/** The kit on this device is version {version} of {day}. */
export const offlineFileOf = (args: { readonly version: Word; readonly day: Word }): string => say("offline-file-of", args);
/** To read and to work by: cautions, supplies, steps, table — Closed on a phone, and opened for printing. */
export const packetBundleRead = (): string => say("packet-bundle-read");
/** To cut out at true scale: {count} sheet|To cut out at true scale: {count} sheets */
export const packetBundleCut = (args: { readonly count: number }): string => say("packet-bundle-cut", args);
/** The table, batch by batch */
export const packetBundleTable = (): string => say("packet-bundle-table");
/** These sheets are for the kit’s own book: {leaves} leaves, {height} tall, {width} wide, {thickness} thick. Only scripts can fit them to another. — Where no script lays the sheets out for a reader's own book. */
export const packetWhose = (args: { readonly leaves: Word; readonly height: Word; readonly width: Word; readonly thickness: Word }): string => say("packet-whose", args);
/** Back to {title} */
export const packetHome = (args: { readonly title: Word }): string => say("packet-home", args);
/** {title}: packet */
export const packetTitle = (args: { readonly title: Word }): string => say("packet-title", args);
/** {title}: packet without strips */
export const packetBenchTitle = (args: { readonly title: Word }): string => say("packet-bench-title", args);
/** {title}: table in short */
export const packetCompactTitle = (args: { readonly title: Word }): string => say("packet-compact-title", args);
/** {title}: large-print table */
export const packetLargeTitle = (args: { readonly title: Word }): string => say("packet-large-title", args);
/** Seat {seat} · {title}: packet */
export const packetSeatTitle = (args: { readonly seat: Word; readonly title: Word }): string => say("packet-seat-title", args);
/** Leaflight packet — Above the kit's name on the cover. */
export const packetOver = (): string => say("packet-over");
/** Leaflight packet · seat {seat} */
export const packetOverSeat = (args: { readonly seat: Word }): string => say("packet-over-seat", args);
/** version {version}, {day} */
export const packetVersion = (args: { readonly version: Word; readonly day: Word }): string => say("packet-version", args);
/** kit licence {licence} */
export const packetLicence = (args: { readonly licence: Word }): string => say("packet-licence", args);
/** picture after {work}, {source}, {licence} */
export const packetCredit = (args: { readonly work: Word; readonly source: Word; readonly licence: Word }): string => say("packet-credit", args);
/** Before you begin */
export const packetWarnings = (): string => say("packet-warnings");
/** Scoring gauge, true scale */
export const packetGauge = (): string => say("packet-gauge");
/** Strips of the gauge, true scale */
export const packetGaugeMore = (): string => say("packet-gauge-more");
/** Scoring gauge at true scale, with a line and a strip for each of the kit’s distances from the fore-edge */
export const packetGaugeAlt = (): string => say("packet-gauge-alt");
/** Test your book first */
export const packetTest = (): string => say("packet-test");
/** A corner of a middle leaf, folded to and fro twice, does not come off. */
export const packetTestCorner = (): string => say("packet-test-corner");
/** A leaf bends more easily along head to tail than across. */
export const packetTestGrain = (): string => say("packet-test-grain");
/** Opened in the middle, in stages, the spine holds every leaf. */
export const packetTestSpine = (): string => say("packet-test-spine");
/** A dot of glue, dried and pulled, takes paper along: it is not coated. */
export const packetTestGlue = (): string => say("packet-test-glue");
/** No mould and no smell of it. Wear a mask where there is dust. */
export const packetTestClean = (): string => say("packet-test-clean");
/** No green cloth of the 19th century, which may hold arsenic. */
export const packetTestCloth = (): string => say("packet-test-cloth");
/** Merged strips */
export const packetMerged = (): string => say("packet-merged");
/** One strip of the picture is|{count} strips of the picture are too short to fold. Each is joined to the neighbour whose depth is nearest; the black marks show where that detail goes. */
export const packetMergedText = (args: { readonly count: number }): string => say("packet-merged-text", args);
/** Marking strips, true scale: {batches}, leaves {first} to {last} */
export const packetStrips = (args: { readonly batches: Word; readonly first: Word; readonly last: Word }): string => say("packet-strips", args);
/** Marking strips, true scale: {batches}, leaves {first} to {last}, part {part} of {parts} */
export const packetStripsPart = (args: { readonly batches: Word; readonly first: Word; readonly last: Word; readonly part: Word; readonly parts: Word }): string => say("packet-strips-part", args);
/** batch {first}|batches {first} to {last} */
export const packetStripsBatches = (args: { readonly count: number; readonly first: Word; readonly last: Word }): string => say("packet-strips-batches", args);
/** Marking strips for leaves {first} to {last} at true scale */
export const packetStripsAlt = (args: { readonly first: Word; readonly last: Word }): string => say("packet-strips-alt", args);
/** Templates, true scale: {parts} */
export const packetTemplates = (args: { readonly parts: Word }): string => say("packet-templates", args);
/** Templates at true scale: {parts} */
export const packetTemplatesAlt = (args: { readonly parts: Word }): string => say("packet-templates-alt", args);
/** {title}: pattern table|{title}: pattern table in short */
export const packetTableAlone = (args: { readonly size: Word; readonly title: Word }): string => say("packet-table-alone", args);
/** Marks from the head in {units}; ›cut from the fore-edge. Levels: {levels}. — Above the table; $levels is a list. */
export const packetTableText = (args: { readonly units: Word; readonly levels: Word }): string => say("packet-table-text", args);
/** Marks from the head in {units}; ›cut from the folded edge (after the whole leaf is folded at the {level} line). Levels: {levels}. */
export const packetTableTextStepped = (args: { readonly units: Word; readonly level: Word; readonly levels: Word }): string => say("packet-table-text-stepped", args);
/** {number} {name} */
export const packetTableLevel = (args: { readonly number: Word; readonly name: Word }): string => say("packet-table-level", args);
/** {number} {name} (line {line}) */
export const packetTableLevelLine = (args: { readonly number: Word; readonly name: Word; readonly line: Word }): string => say("packet-table-level-line", args);
/** A boxed number is the level that a strip is folded to; the marks stand between, from head to tail. Shaded rows are checkpoints: compare page number and first mark. */
export const packetTableReading = (): string => say("packet-table-reading");
/** A notch has its heights from the head and its depth from the unfolded fore-edge. */
export const packetTableNotches = (): string => say("packet-table-notches");
/** Opening border leaves: fold them first|Closing border leaves: fold them last */
export const packetTableBorder = (args: { readonly place: Word }): string => say("packet-table-border", args);
/** Batch {number}: leaves {first} to {last} */
export const packetTableBatch = (args: { readonly number: Word; readonly first: Word; readonly last: Word }): string => say("packet-table-batch", args);
/** Packing under the working side: {packing}.|, one piece.|, {pieces} pieces. — $pieces is 0 where the kit says nothing of packing pieces. */
export const packetTablePacking = (args: { readonly packing: Word; readonly pieces: number }): string => say("packet-table-packing", args);
/** Page */
export const packetTablePage = (): string => say("packet-table-page");
/** Folds and marks, head to tail */
export const packetTableMarks = (): string => say("packet-table-marks");
/** {first}–{last} */
export const packetTableRun = (args: { readonly first: Word; readonly last: Word }): string => say("packet-table-run", args);
/** {from} to {to} */
export const packetTableNamed = (args: { readonly from: Word; readonly to: Word }): string => say("packet-table-named", args);
/** Notch */
export const packetTableNotch = (): string => say("packet-table-notch");
/** Notch {from}–{to} */
export const packetTableNotchAt = (args: { readonly from: Word; readonly to: Word }): string => say("packet-table-notch-at", args);
/** When all are folded: cut the notch.|When all are folded: cut the {count} notches. */
export const packetTableThenNotch = (args: { readonly count: number }): string => say("packet-table-then-notch", args);
/** Then tack {list}. */
export const packetTableThenTack = (args: { readonly list: Word }): string => say("packet-table-then-tack", args);
/** leaf {leaf}: {place} */
export const packetTableTack = (args: { readonly leaf: Word; readonly place: Word }): string => say("packet-table-tack", args);
/** Check: {leaves} leaf|{leaves} leaves, {cuts} cut|{cuts} cuts; {sofar} of {all} cuts so far. */
export const packetTableCheck = (args: { readonly leaves: number; readonly cuts: number; readonly sofar: Word; readonly all: Word }): string => say("packet-table-check", args);
/** Leaf {leaf} ends the pattern. */
export const packetTableLast = (args: { readonly leaf: Word }): string => say("packet-table-last", args);
/** What to print */
export const packetPlan = (): string => say("packet-plan");
/** To read and to work by: {pages} pages, on both sides of one sheet|{sheets} sheets of paper. */
export const packetPlanReading = (args: { readonly pages: Word; readonly sheets: number }): string => say("packet-plan-reading", args);
/** To read and to work by: all pages before the gauge, on both sides of the paper. */
export const packetPlanReadingUncounted = (): string => say("packet-plan-reading-uncounted");
/** Scoring gauge: one sheet|{sheets} sheets, printed on one side, best on card. */
export const packetPlanGauge = (args: { readonly sheets: number }): string => say("packet-plan-gauge", args);
/** Marking strips: one sheet|{sheets} sheets, printed on one side. Leave them out if you mark from the table. */
export const packetPlanStrips = (args: { readonly sheets: number }): string => say("packet-plan-strips", args);
/** Templates of the window: one sheet|{sheets} sheets, printed on one side. */
export const packetPlanTemplates = (args: { readonly sheets: number }): string => say("packet-plan-templates", args);
/** (page {first})|(pages {first} to {last}) — Pages to choose when printing. */
export const packetPlanAt = (args: { readonly count: number; readonly first: Word; readonly last: Word }): string => say("packet-plan-at", args);
/** In all {sheets} sheets of paper. */
export const packetPlanAll = (args: { readonly sheets: Word }): string => say("packet-plan-all", args);
/** Paper — The bar above a packet in the browser. */
export const packetPaper = (): string => say("packet-paper");
/** Print this packet */
export const packetPrint = (): string => say("packet-print");
/** at “actual size” or 100% */
export const packetScale = (): string => say("packet-scale");
/** A4 */
export const paperA4 = (): string => say("paper-a4");
/** US Letter */
export const paperLetter = (): string => say("paper-letter");
/** Letter */
export const paperLetterShort = (): string => say("paper-letter-short");
/** version {version} — At the foot of every printed page, separated by dots. */
export const packetFooterVersion = (args: { readonly version: Word }): string => say("packet-footer-version", args);
/** {leaves} leaves of {height} × {width} */
export const packetFooterBook = (args: { readonly leaves: Word; readonly height: Word; readonly width: Word }): string => say("packet-footer-book", args);
/** page {page} of {pages} */
export const packetPageNumber = (args: { readonly page: Word; readonly pages: Word }): string => say("packet-page-number", args);
/** This kit does not fit the book in this address. {why} Go back to the kit’s page and choose one of its offers. — Told in the browser where the book in the address does not fit. */
export const packetMisfit = (args: { readonly why: Word }): string => say("packet-misfit", args);
/** {note} (and in {more} more line|{more} more lines) — $note: another note. $more counts lines. */
export const pictureNoteAgain = (args: { readonly note: Word; readonly more: number }): string => say("picture-note-again", args);
/** <svg> has no size, so the drawing’s own box is taken: {box} — $box: four numbers: x, y, width and height. */
export const pictureOwnBox = (args: { readonly box: Word }): string => say("picture-own-box", args);
/** a stroke counts as the area that it covers */
export const pictureStrokeArea = (): string => say("picture-stroke-area");
/** the stroke of <text> is left out; its letters count as they are */
export const pictureTextStroke = (): string => say("picture-text-stroke");
/** the filter of <{name}> is left out; the shape counts as it is */
export const pictureFilter = (args: { readonly name: Word }): string => say("picture-filter", args);
/** the markers of <{name}> are left out: draw them as shapes */
export const pictureMarker = (args: { readonly name: Word }): string => say("picture-marker", args);
/** <{name}> is not painted: its clip path or mask leaves nothing of it */
export const pictureCutAway = (args: { readonly name: Word }): string => say("picture-cut-away", args);
/** <{name}> {property} {value} is left out: it points to nothing of its kind */
export const pictureCutMissing = (args: { readonly name: Word; readonly property: Word; readonly value: Word }): string => say("picture-cut-missing", args);
/** <{name}> in a mask counts as all open: masks here are open or closed */
export const pictureMaskSolid = (args: { readonly name: Word }): string => say("picture-mask-solid", args);
/** <{name}> {property} {value} cuts itself: break the cycle */
export const pictureCutCycle = (args: { readonly name: Word; readonly property: Word; readonly value: Word }): string => say("picture-cut-cycle", args);
/** clip paths and masks with more crossings than can be computed: simplify them */
export const pictureManyCuts = (): string => say("picture-many-cuts");
/** {what} has more than {most} dashes: make them longer */
export const pictureManyDashes = (args: { readonly what: Word; readonly most: Word }): string => say("picture-many-dashes", args);
/** entities that make the file much longer: save the drawing as plain SVG */
export const pictureManyEntities = (): string => say("picture-many-entities");
/** not an SVG picture: it has no <svg> element */
export const pictureNoSvg = (): string => say("picture-no-svg");
/** not an SVG picture: its root is <{name}> */
export const pictureOtherRoot = (args: { readonly name: Word }): string => say("picture-other-root", args);
/** not an SVG picture: add xmlns="{namespace}" to <svg> */
export const pictureNoNamespace = (args: { readonly namespace: Word }): string => say("picture-no-namespace", args);
/** not well-formed XML: {fault} — $fault: the words of the XML reader, in English. */
export const pictureNotWellFormed = (args: { readonly fault: Word }): string => say("picture-not-well-formed", args);
/** entity {entity} is not read: write its text in place */
export const pictureEntity = (args: { readonly entity: Word }): string => say("picture-entity", args);
/** <?xml-stylesheet?> is not supported: put the rules in a <style> element */
export const pictureExternalSheet = (): string => say("picture-external-sheet");
/** id {id} is also that of <{name}> in line {line}; where it is named, both count — A note: both elements are meant where the id is named. */
export const pictureIdTwice = (args: { readonly id: Word; readonly name: Word; readonly line: Word }): string => say("picture-id-twice", args);
/** <svg> has no size: add viewBox="0 0 width height" */
export const pictureNoSize = (): string => say("picture-no-size");
/** the picture needs more than {most} points: simplify it */
export const pictureManyPoints = (args: { readonly most: Word }): string => say("picture-many-points", args);
/** more than {most} levels of groups: flatten groups */
export const pictureManyLevels = (args: { readonly most: Word }): string => say("picture-many-levels", args);
/** the picture has more than {most} elements, those shown again among them: simplify it */
export const pictureManyElements = (args: { readonly most: Word }): string => say("picture-many-elements", args);
/** the outlines together are more than {most} times as long as the picture: remove hidden shapes — $most counts widths and heights of the picture. */
export const pictureLongOutlines = (args: { readonly most: Word }): string => say("picture-long-outlines", args);
/** the picture has more styles than can be tried on its elements: simplify them */
export const pictureManyStyles = (): string => say("picture-many-styles");
/** more than {most} namespaces: save the drawing as plain SVG — Prefixes such as xlink in xmlns:xlink. */
export const picturePrefixes = (args: { readonly most: Word }): string => say("picture-prefixes", args);
/** a document type of more than {most} letters: save the drawing as plain SVG */
export const pictureDoctype = (args: { readonly most: Word }): string => say("picture-doctype", args);
/** it says encoding={encoding} of itself and is UTF-8: correct that, or save it anew — $encoding: a name in quotes: "UTF-16" */
export const pictureEncoding = (args: { readonly encoding: Word }): string => say("picture-encoding", args);
/** and {more} note more|{more} notes more — Under twenty notes about a picture. */
export const pictureMoreNotes = (args: { readonly more: number }): string => say("picture-more-notes", args);
/** <{name}> cannot be drawn: no font for it is at hand; turn the text into paths in the program that drew it|no font for it is at hand; turn the text into paths in the program that drew it|turn the text into paths in the program that drew it|turn the text into paths in the program that drew it|remove it here, and make it a picture of its own|remove it|remove it or correct its name */
export const pictureUndrawn = (args: { readonly name: Word }): string => say("picture-undrawn", args);
/** <{name}> is ignored; the picture is taken at rest */
export const pictureAnimation = (args: { readonly name: Word }): string => say("picture-animation", args);
/** <script> is ignored; the picture is taken as written */
export const pictureScript = (): string => say("picture-script");
/** <{name}> is ignored: it is outside the SVG namespace */
export const pictureOtherNamespace = (args: { readonly name: Word }): string => say("picture-other-namespace", args);
/** <{name}> transform-origin is not supported: write rotate(angle x y) */
export const pictureTransformOrigin = (args: { readonly name: Word }): string => say("picture-transform-origin", args);
/** <{name}> is not painted: it lies outside its symbol’s viewBox */
export const pictureOutsideSymbol = (args: { readonly name: Word }): string => say("picture-outside-symbol", args);
/** <{name}> is not painted: it has no area */
export const pictureNoArea = (args: { readonly name: Word }): string => say("picture-no-area", args);
/** <use> has no href: name the id of a shape or group */
export const pictureUseNoHref = (): string => say("picture-use-no-href");
/** <use> href {href} is not in this file: write "#" and an id of it */
export const pictureUseElsewhere = (args: { readonly href: Word }): string => say("picture-use-elsewhere", args);
/** <use> href {href} has no target: no element has this id */
export const pictureUseNoTarget = (args: { readonly href: Word }): string => say("picture-use-no-target", args);
/** <use> href {href} shows itself: break the cycle */
export const pictureUseCycle = (args: { readonly href: Word }): string => say("picture-use-cycle", args);
/** <use> href {href} is a <{name}>: name a shape or group */
export const pictureUseIdle = (args: { readonly href: Word; readonly name: Word }): string => say("picture-use-idle", args);
/** {what} {value} is not a length: write a number, or one with px, mm, cm, in, pt, pc, Q or % */
export const pictureNoLength = (args: { readonly what: Word; readonly value: Word }): string => say("picture-no-length", args);
/** {what} {value} has the unit {unit}: use px, mm, cm, in, pt, pc, Q or % */
export const pictureOtherUnit = (args: { readonly what: Word; readonly value: Word; readonly unit: Word }): string => say("picture-other-unit", args);
/** {what} {value} is too large */
export const pictureTooLarge = (args: { readonly what: Word; readonly value: Word }): string => say("picture-too-large", args);
/** {what} {value} has nothing to be a part of: write a length */
export const picturePartOfNothing = (args: { readonly what: Word; readonly value: Word }): string => say("picture-part-of-nothing", args);
/** {what} {value} is negative: write 0 or more */
export const pictureNegative = (args: { readonly what: Word; readonly value: Word }): string => say("picture-negative", args);
/** {what} {value} must be above 0 */
export const pictureNotAboveZero = (args: { readonly what: Word; readonly value: Word }): string => say("picture-not-above-zero", args);
/** {what} {value} has {found} where a number belongs */
export const pictureNoNumber = (args: { readonly what: Word; readonly value: Word; readonly found: Word }): string => say("picture-no-number", args);
/** {what} {value} ends in a comma */
export const pictureEndsInComma = (args: { readonly what: Word; readonly value: Word }): string => say("picture-ends-in-comma", args);
/** {what} {value} has {count} numbers: every x needs its y */
export const pictureOddPoints = (args: { readonly what: Word; readonly value: Word; readonly count: Word }): string => say("picture-odd-points", args);
/** {what} {value} needs four numbers: x, y, width and height */
export const pictureViewBoxNumbers = (args: { readonly what: Word; readonly value: Word }): string => say("picture-view-box-numbers", args);
/** {what} {value} needs a width and a height above 0 */
export const pictureViewBoxSize = (args: { readonly what: Word; readonly value: Word }): string => say("picture-view-box-size", args);
/** {what} {value} is unknown: write none or, for example, xMidYMid meet */
export const pictureFitting = (args: { readonly what: Word; readonly value: Word }): string => say("picture-fitting", args);
/** {what} {value} is no opacity: write a number from 0 to 1 */
export const pictureNoOpacity = (args: { readonly what: Word; readonly value: Word }): string => say("picture-no-opacity", args);
/** {what} {value} counts as solid */
export const pictureSolid = (args: { readonly what: Word; readonly value: Word }): string => say("picture-solid", args);
/** {what} {value} is no transform: use {names} */
export const pictureNoTransform = (args: { readonly what: Word; readonly value: Word; readonly names: Word }): string => say("picture-no-transform", args);
/** {what} {value} has {found} where a transform such as rotate(30) belongs */
export const pictureTransformRest = (args: { readonly what: Word; readonly value: Word; readonly found: Word }): string => say("picture-transform-rest", args);
/** {what} {value} takes {count} number|{count} numbers */
export const pictureTransformNumber = (args: { readonly what: Word; readonly value: Word; readonly count: number }): string => say("picture-transform-number", args);
/** {what} {value} takes {count} or {more} numbers */
export const pictureTransformNumbers = (args: { readonly what: Word; readonly value: Word; readonly count: Word; readonly more: Word }): string => say("picture-transform-numbers", args);
/** {what} has a curve thousands of times as large as the picture: draw it at the picture’s size */
export const pictureCurveTooLarge = (args: { readonly what: Word }): string => say("picture-curve-too-large", args);
/** {what} has coordinates too large to compute with */
export const pictureCoordinates = (args: { readonly what: Word }): string => say("picture-coordinates", args);
/** {what} needs more than {most} points: simplify it */
export const pictureOutlinePoints = (args: { readonly what: Word; readonly most: Word }): string => say("picture-outline-points", args);
/** {what} has {found} at character {at} where a path command|an arc flag, 0 or 1,|"M"|a number belongs — $at counts characters; $before is what stands before it. */
export const picturePathFault = (args: { readonly what: Word; readonly found: Word; readonly at: Word; readonly expected: Word }): string => say("picture-path-fault", args);
/** {what} has {found} at character {at} where a path command|an arc flag, 0 or 1,|"M"|a number belongs, after {before} */
export const picturePathFaultAfter = (args: { readonly what: Word; readonly found: Word; readonly at: Word; readonly expected: Word; readonly before: Word }): string => say("picture-path-fault-after", args);
/** the end — Found where a path’s text ends too early. */
export const picturePathEnd = (): string => say("picture-path-end");
/** malformed CSS is skipped: {fault} — $fault: the words of the style sheet reader, in English. */
export const pictureCss = (args: { readonly fault: Word }): string => say("picture-css", args);
/** malformed CSS: nested too deeply */
export const pictureCssDepth = (): string => say("picture-css-depth");
/** selector {selector} is too complex: use element names, .class, #id, [attribute], spaces and > */
export const pictureCssSelector = (args: { readonly selector: Word }): string => say("picture-css-selector", args);
/** @import is not supported: write the rules in this <style> */
export const pictureCssImport = (): string => say("picture-css-import");
/** {property} "" has no value: write one or remove {property} */
export const pictureNoValue = (args: { readonly property: Word }): string => say("picture-no-value", args);
/** {property} {value} has no value: state the variable, or write the value itself */
export const pictureCssVariable = (args: { readonly property: Word; readonly value: Word }): string => say("picture-css-variable", args);
/** {property} {value} is unknown: use {values} */
export const pictureUnknownValue = (args: { readonly property: Word; readonly value: Word; readonly values: Word }): string => say("picture-unknown-value", args);
/** <{name}> {property} {value} in CSS is not supported: write it as an attribute */
export const pictureCssGeometry = (args: { readonly name: Word; readonly property: Word; readonly value: Word }): string => say("picture-css-geometry", args);
/** <{name}> {property} {value} is not supported: cut the shape itself */
export const pictureUnsupported = (args: { readonly name: Word; readonly property: Word; readonly value: Word }): string => say("picture-unsupported", args);
/** {kind} {fill} is in another file: bring it into this one — $kind: the property fill or stroke. */
export const pictureFillElsewhere = (args: { readonly kind: Word; readonly fill: Word }): string => say("picture-fill-elsewhere", args);
/** {kind} {fill} points to no gradient or pattern: write a colour */
export const pictureFillNoServer = (args: { readonly kind: Word; readonly fill: Word }): string => say("picture-fill-no-server", args);
/** {kind} {fill} counts as solid */
export const pictureFillSolid = (args: { readonly kind: Word; readonly fill: Word }): string => say("picture-fill-solid", args);
/** Piece {number} — How a piece is named while its maker gave it no word of her own. */
export const pieceNumber = (args: { readonly number: Word }): string => say("piece-number", args);
/** {title}: {piece} — In place of a kit's title where it is followed by one of its pieces. */
export const pieceOfKit = (args: { readonly title: Word; readonly piece: Word }): string => say("piece-of-kit", args);
/** You go on with {piece}, last worked on {day}. — $piece is its name, $day such as 3 October 2026. */
export const pieceLikely = (args: { readonly piece: Word; readonly day: Word }): string => say("piece-likely", args);
/** It is made in the kit’s own book|the book that you measured. — In which book a piece is made, after the line above. */
export const pieceInBook = (args: { readonly book: Word }): string => say("piece-in-book", args);
/** The piece that this address names is not on this device. */
export const pieceAbsent = (): string => say("piece-absent");
/** {piece} is made in another book than this address says: its own book is shown. */
export const pieceOtherBook = (args: { readonly piece: Word }): string => say("piece-other-book", args);
/** Begin a piece in that book */
export const pieceBeginThere = (): string => say("piece-begin-there");
/** Begin another piece */
export const pieceBeginAnother = (): string => say("piece-begin-another");
/** Open {piece} */
export const pieceOpenOther = (args: { readonly piece: Word }): string => say("piece-open-other", args);
/** My pieces */
export const pieceAll = (): string => say("piece-all");
/** This kit has a newer version. Its marks are the same, so you go on with it. */
export const pieceNewerSame = (): string => say("piece-newer-same");
/** This kit has a newer version, with other marks on one leaf: {leaf}.|This kit has a newer version, with other marks on {count} leaves, starting with {leaf}. You go on with the pattern you began with. — $leaf is a leaf in words. */
export const pieceNewerMarks = (args: { readonly count: number; readonly leaf: Word }): string => say("piece-newer-marks", args);
/** Its levels are folded at other depths, so the gauge and the lines are made anew. */
export const pieceNewerDepths = (): string => say("piece-newer-depths");
/** None of the leaves you have folded is among them.|{count} leaf that you have folded is among them, and would lose its tick.|{count} leaves that you have folded are among them, and would lose their ticks. */
export const pieceNewerDone = (args: { readonly count: number }): string => say("piece-newer-done", args);
/** This kit has a newer version that does not fit this book. You go on with the pattern you began with. */
export const pieceNewerMisfit = (): string => say("piece-newer-misfit");
/** You go on with the pattern you began with. The kit’s page and packet show a newer one. */
export const pieceOldPattern = (): string => say("piece-old-pattern");
/** Stay with it */
export const pieceStay = (): string => say("piece-stay");
/** Change over */
export const pieceChangeOver = (): string => say("piece-change-over");
/** Change over to the newer version?|Change over to the newer version, and clear the tick of {count} leaf?|Change over to the newer version, and clear the ticks of {count} leaves? */
export const pieceChangeOverSure = (args: { readonly count: number }): string => say("piece-change-over-sure", args);
/** Your pieces under way */
export const pieceUnderWay = (): string => say("piece-under-way");
/** Continue: page {number}, {percent}%|leaf {number}, {percent}%|{percent}% — The link to a piece's bench: where its maker stopped, and how much of the work is done. */
export const pieceContinue = (args: { readonly place: Word; readonly number: Word; readonly percent: Word }): string => say("piece-continue", args);
/** Continue: {count} leaf folded|{count} leaves folded — The same before the bench has laid a piece of an earlier version out. */
export const pieceContinueCount = (args: { readonly count: number }): string => say("piece-continue-count", args);
/** last worked on {day} */
export const pieceLast = (args: { readonly day: Word }): string => say("piece-last", args);
/** All {count} pieces — Under the last of a few pieces: leads to all of them. */
export const pieceAllCount = (args: { readonly count: Word }): string => say("piece-all-count", args);
/** My pieces */
export const piecesTitle = (): string => say("pieces-title");
/** Everything you have under way on this device, and how to take it to another. */
export const piecesSummary = (): string => say("pieces-summary");
/** Each book that you make is a piece, kept on this device alone. A file takes it to another device, or keeps it safe. */
export const piecesLead = (): string => say("pieces-lead");
/** Your pieces are shown by a script, and scripts are off in this browser. */
export const piecesNoScript = (): string => say("pieces-no-script");
/** Nothing is under way yet. Choose a kit, open “Work along”, and tick the first thing you do: your piece then stands here. */
export const piecesEmpty = (): string => say("pieces-empty");
/** Choose a kit */
export const piecesToKits = (): string => say("pieces-to-kits");
/** This browser keeps nothing for this site. What you do stays only while its page is open: save it as a file. */
export const piecesNotKept = (): string => say("pieces-not-kept");
/** {count} piece that is saved here cannot be read.|{count} pieces that are saved here cannot be read. {why} */
export const piecesBroken = (args: { readonly count: number; readonly why: Word }): string => say("pieces-broken", args);
/** Open a saved file */
export const piecesOpen = (): string => say("pieces-open");
/** Save all as a file */
export const piecesSaveAll = (): string => say("pieces-save-all");
/** Save as a file */
export const piecesSave = (): string => say("pieces-save");
/** Remove */
export const piecesRemove = (): string => say("pieces-remove");
/** Remove {piece} with {count} folded leaf|{count} folded leaves from this device? A file of it is the only way back. */
export const piecesRemoveSure = (args: { readonly piece: Word; readonly count: number }): string => say("pieces-remove-sure", args);
/** Name and notes */
export const piecesEdit = (): string => say("pieces-edit");
/** Name */
export const piecesName = (): string => say("pieces-name");
/** Notes */
export const piecesNotes = (): string => say("pieces-notes");
/** {count} leaf folded|{count} leaves folded */
export const piecesDone = (args: { readonly count: number }): string => say("pieces-done", args);
/** {count} of {of} leaf folded|{of} leaves folded */
export const piecesDoneOf = (args: { readonly count: Word; readonly of: number }): string => say("pieces-done-of", args);
/** finished */
export const piecesFinished = (): string => say("pieces-finished");
/** {percent}% of the work */
export const piecesPercent = (args: { readonly percent: Word }): string => say("pieces-percent", args);
/** begun {day} */
export const piecesBegun = (args: { readonly day: Word }): string => say("pieces-begun", args);
/** last worked on {day} */
export const piecesLast = (args: { readonly day: Word }): string => say("pieces-last", args);
/** All steps and supplies — The page of all stages and supplies of one piece. */
export const piecesOwnPage = (): string => say("pieces-own-page");
/** Its kit’s page — The address of its kit's page with the book of the piece. */
export const piecesKitPage = (): string => say("pieces-kit-page");
/** This kit is no longer in this site. The piece stays here: save it as a file, or open its file where the kit is. */
export const piecesKitGone = (): string => say("pieces-kit-gone");
/** {file}: {what}. — $what is a list of the lines below, $file the file's name. */
export const piecesOpened = (args: { readonly file: Word; readonly what: Word }): string => say("pieces-opened", args);
/** {count} piece added|{count} pieces added */
export const piecesAdded = (args: { readonly count: number }): string => say("pieces-added", args);
/** {count} piece brought up to date|{count} pieces brought up to date */
export const piecesUpdated = (args: { readonly count: number }): string => say("pieces-updated", args);
/** {count} piece left as it was here|{count} pieces left as they were here */
export const piecesLeft = (args: { readonly count: number }): string => say("pieces-left", args);
/** {file} cannot be opened. {why} Choose a file that this site saved. — $why is a sentence of progress.ftl. */
export const piecesRefused = (args: { readonly file: Word; readonly why: Word }): string => say("pieces-refused", args);
/** It is larger than {most} MB. */
export const piecesTooLarge = (args: { readonly most: Word }): string => say("pieces-too-large", args);
/** This browser has no room to save it. */
export const piecesNotSaved = (): string => say("pieces-not-saved");
/** This piece is on this device, too */
export const piecesMeet = (): string => say("pieces-meet");
/** {piece} is on this device, too — The same with the piece's name. */
export const piecesMeetTitle = (args: { readonly piece: Word }): string => say("pieces-meet-title", args);
/** It was worked on here and in the file since they were the same. */
export const piecesMeetApart = (): string => say("pieces-meet-apart");
/** The file is older than what is here. */
export const piecesMeetOlder = (): string => say("pieces-meet-older");
/** Here: {what}. */
export const piecesMeetHere = (args: { readonly what: Word }): string => say("pieces-meet-here", args);
/** In the file: {what}. */
export const piecesMeetFile = (args: { readonly what: Word }): string => say("pieces-meet-file", args);
/** {done}, last worked on {day} — $done is a line such as “57 of 120 leaves folded”. */
export const piecesMeetState = (args: { readonly done: Word; readonly day: Word }): string => say("pieces-meet-state", args);
/** Keep this device’s */
export const piecesKeepHere = (): string => say("pieces-keep-here");
/** Take the file’s */
export const piecesTakeFile = (): string => say("pieces-take-file");
/** Keep both */
export const piecesKeepBoth = (): string => say("pieces-keep-both");
/** Pattern page 1 is {first}; the last picture leaf is {last} (pattern page {page}). A leaf is one sheet of paper; a page number is what is printed on it. — The first two arguments name a leaf with its page. */
export const preparationPlaces = (args: { readonly first: Word; readonly last: Word; readonly page: Word }): string => say("preparation-places", args);
/** Pattern pages and book pages */
export const preparationPages = (): string => say("preparation-pages");
/** Picture leaves */
export const preparationPictureLeaves = (): string => say("preparation-picture-leaves");
/** How the numbers relate */
export const preparationRelation = (): string => say("preparation-relation");
/** book page = pattern page −|+ {offset} */
export const preparationOffset = (args: { readonly sign: Word; readonly offset: Word }): string => say("preparation-offset", args);
/** not numbered: count them */
export const preparationUnnumbered = (): string => say("preparation-unnumbered");
/** Border leaves: fold each one whole at the background line */
export const preparationBorders = (): string => say("preparation-borders");
/** Leaves */
export const preparationLeaves = (): string => say("preparation-leaves");
/** How many */
export const preparationCount = (): string => say("preparation-count");
/** Scoring plan: which line on which leaves */
export const preparationScoring = (): string => say("preparation-scoring");
/** Line */
export const preparationLine = (): string => say("preparation-line");
/** own — Stands for the number of a line where the gauge has none at this depth. */
export const preparationLineFree = (): string => say("preparation-line-free");
/** From fore-edge */
export const preparationDepth = (): string => say("preparation-depth");
/** Level */
export const preparationLevel = (): string => say("preparation-level");
/** {number} {name} — A level: its number and its name. */
export const preparationLevelName = (args: { readonly number: Word; readonly name: Word }): string => say("preparation-level-name", args);
/** Lines that a range does not need are left out. Scoring all of them everywhere does no harm: more strokes, but nothing to look up. */
export const preparationScoringNote = (): string => say("preparation-scoring-note");
/** Batches and support: packing needed under the working side */
export const preparationBatches = (): string => say("preparation-batches");
/** Batch */
export const preparationBatch = (): string => say("preparation-batch");
/** From */
export const preparationFrom = (): string => say("preparation-from");
/** To */
export const preparationTo = (): string => say("preparation-to");
/** Packing */
export const preparationPacking = (): string => say("preparation-packing");
/** Pieces */
export const preparationPieces = (): string => say("preparation-pieces");
/** Packing pieces of {size} */
export const preparationPiecesOf = (args: { readonly size: Word }): string => say("preparation-pieces-of", args);
/** One leaf of this book is {thickness} thick: its caliper (thickness ÷ leaves). */
export const preparationCaliper = (args: { readonly thickness: Word }): string => say("preparation-caliper", args);
/** Printing {count} PDF|Printing {count} PDFs with the browser of LEAFLIGHT_BROWSER,|the installed browser|the downloaded browser|the packaged browser {path} — $browser: how the browser was found. $path: its file. */
export const printStart = (args: { readonly count: number; readonly browser: Word; readonly path: Word }): string => say("print-start", args);
/** {done} of {count}: {title} */
export const printStep = (args: { readonly done: Word; readonly count: Word; readonly title: Word }): string => say("print-step", args);
/** {done} of {count}, {left}: {title} — $left: print-left or print-left-short. */
export const printStepLeft = (args: { readonly done: Word; readonly count: Word; readonly left: Word; readonly title: Word }): string => say("print-step-left", args);
/** {done} of {count} PDFs printed, {left} */
export const printSoFar = (args: { readonly done: Word; readonly count: Word; readonly left: Word }): string => say("print-so-far", args);
/** about {time} left — $time: 3 min, or 1 h 20 min. */
export const printLeft = (args: { readonly time: Word }): string => say("print-left", args);
/** less than a minute left */
export const printLeftShort = (): string => say("print-left-short");
/** Stopped after {done} of {count} PDFs */
export const printStopped = (args: { readonly done: Word; readonly count: Word }): string => say("print-stopped", args);
/** Printed {count} PDF|Printed {count} PDFs */
export const printDone = (args: { readonly count: number }): string => say("print-done", args);
/** {variable} is “{given}”, and allowed is a whole number of browsers that print at once, from 1 to {most}. Correct it, or unset it — $variable: of the environment. $given: what it holds. */
export const printPresses = (args: { readonly variable: Word; readonly given: Word; readonly most: Word }): string => say("print-presses", args);
/** no browser to print with: install Chrome or Chromium, or set LEAFLIGHT_BROWSER to the path of one */
export const printNoBrowser = (): string => say("print-no-browser");
/** LEAFLIGHT_BROWSER names "{path}", and no file is there: correct the path or unset it */
export const printNoSetting = (args: { readonly path: Word }): string => say("print-no-setting", args);
/** the packaged browser cannot be unpacked into {folder} ({fault}). Make that folder writable, or set LEAFLIGHT_BROWSER to the path of a browser — $fault: what the system calls it. */
export const printNotUnpacked = (args: { readonly folder: Word; readonly fault: Word }): string => say("print-not-unpacked", args);
/** The browser prints without its sandbox, as it has none for root. Run the build as another user to have it. */
export const printNoSandboxRoot = (): string => say("print-no-sandbox-root");
/** The browser prints without its sandbox, as this system does not allow it (user namespaces are off). */
export const printNoSandbox = (): string => say("print-no-sandbox");
/** the browser {path} did not start ({how}). Correct or unset LEAFLIGHT_BROWSER, or install Chrome or Chromium — $how: a code, a signal or the system’s name of the fault, and what the browser said last. */
export const printBrowserEnded = (args: { readonly path: Word; readonly how: Word }): string => say("print-browser-ended", args);
/** the browser {path} did not start within {seconds} seconds. End it, or set LEAFLIGHT_BROWSER to the path of another */
export const printBrowserSilent = (args: { readonly path: Word; readonly seconds: Word }): string => say("print-browser-silent", args);
/** the browser {path} ended while it printed, twice ({how}). Build again, or set LEAFLIGHT_BROWSER to the path of another */
export const printBrowserDied = (args: { readonly path: Word; readonly how: Word }): string => say("print-browser-died", args);
/** the browser {path} did not answer within {seconds} seconds while it printed. Build again, or set LEAFLIGHT_BROWSER to the path of another */
export const printBrowserStuck = (args: { readonly path: Word; readonly seconds: Word }): string => say("print-browser-stuck", args);
/** what it answers is no message of a browser */
export const printBrowserStrange = (): string => say("print-browser-strange");
/** {page}: the browser {path} cannot print it ({fault}). Build again, or set LEAFLIGHT_BROWSER to the path of another — $page: the page, as it is called in the site’s address. $fault: the browser’s words, in English. */
export const printFailed = (args: { readonly page: Word; readonly path: Word; readonly fault: Word }): string => say("print-failed", args);
/** {page}: asks for what is no file of this site, and would print without it: {addresses}. Put the file into the site — $addresses: what the page asked for. */
export const printBlocked = (args: { readonly page: Word; readonly addresses: Word }): string => say("print-blocked", args);
/** {page}: would not print at true scale: {boxes}. Shorten what stands there; where nobody wrote it, report this page with its kit or class — $page: the page. $boxes: one or several of the messages below. */
export const printOverflow = (args: { readonly page: Word; readonly boxes: Word }): string => say("print-overflow", args);
/** “{text}” makes the page {size} mm wide, and it has {room} mm — $text: what reaches out. $size and $room: millimetres. */
export const printPageWide = (args: { readonly text: Word; readonly size: Word; readonly room: Word }): string => say("print-page-wide", args);
/** below “{heading}”, “{text}” needs {size} mm of width, and there are {room} mm — $heading: the heading that it stands below. */
export const printBoxWide = (args: { readonly heading: Word; readonly text: Word; readonly size: Word; readonly room: Word }): string => say("print-box-wide", args);
/** below “{heading}”, “{text}” needs {size} mm of height, and there are {room} mm */
export const printBoxHigh = (args: { readonly heading: Word; readonly text: Word; readonly size: Word; readonly room: Word }): string => say("print-box-high", args);
/** {title}: teacher’s packet */
export const printTeacher = (args: { readonly title: Word }): string => say("print-teacher", args);
/** {title}: measuring card */
export const printMeasuringCard = (args: { readonly title: Word }): string => say("print-measuring-card", args);
/** {title}: packets of all seats */
export const printAllSeats = (args: { readonly title: Word }): string => say("print-all-seats", args);
/** {title}: what all seats read */
export const printToRead = (args: { readonly title: Word }): string => say("print-to-read", args);
/** {title}: what all seats cut out of card */
export const printToCutOut = (args: { readonly title: Word }): string => say("print-to-cut-out", args);
/** {title}: print plan */
export const printPlanOfClass = (args: { readonly title: Word }): string => say("print-plan-of-class", args);
/** {title}: cut sheets at true size */
export const printCutSheets = (args: { readonly title: Word }): string => say("print-cut-sheets", args);
/** {title} · {date} · {paper} — At the foot of a class’s page: what it is, the day, the paper. */
export const printClassFooter = (args: { readonly title: Word; readonly date: Word; readonly paper: Word }): string => say("print-class-footer", args);
/** a text that leaves its box on {page} — Of a field: $page is a page of the site, kits/moon/packet */
export const printTextOver = (args: { readonly page: Word }): string => say("print-text-over", args);
/** a text that its box has room for */
export const printTextFits = (): string => say("print-text-fits");
/** It is not JSON: it may be cut short, or another kind of file. */
export const progressNotJson = (): string => say("progress-not-json");
/** It is not a file of pieces or progress of this version: its schema is {given}, not {expected}. */
export const progressOtherSchema = (args: { readonly given: Word; readonly expected: Word }): string => say("progress-other-schema", args);
/** It belongs to the kit “{kit}”, and this is “{wanted}”. */
export const progressOtherKit = (args: { readonly kit: Word; readonly wanted: Word }): string => say("progress-other-kit", args);
/** It belongs to this kit on another book or fit. */
export const progressOtherFit = (): string => say("progress-other-fit");
/** {place} has leaf {leaf} twice. */
export const progressTwice = (args: { readonly place: Word; readonly leaf: Word }): string => say("progress-twice", args);
/** {place} is {given}, but must be an object|a list|text|a whole number from {least} to {most}|a number above 0|a whole number of 0 or more|a whole number from 0 to 100|1 to 64 letters, digits and hyphens|a kit’s name of small letters, digits and hyphens|a date and time like 2026-11-29T20:15:00Z|text of at most {letters} letters|text of at most {letters} letters|figures as in a page’s address, of at most {letters} letters|a number of 0 or more. — $place is where it stands in the file, like ticks[0]. */
export const progressWrongValue = (args: { readonly place: Word; readonly given: Word; readonly allowed: Word; readonly least: Word; readonly most: Word; readonly letters: Word }): string => say("progress-wrong-value", args);
/** missing — In place of a value that is not there. */
export const progressMissing = (): string => say("progress-missing");
/** The file — The place of the file itself. */
export const progressWholeFile = (): string => say("progress-whole-file");
/** {place} is of the kit “{kit}”, but its progress is of “{given}”. — $place is like pieces[2], $kit and $given are kits’ names. */
export const progressMixedKits = (args: { readonly place: Word; readonly kit: Word; readonly given: Word }): string => say("progress-mixed-kits", args);
/** {place} has the id of a piece before it. */
export const progressPieceTwice = (args: { readonly place: Word }): string => say("progress-piece-twice", args);
/** It holds more than {most} pieces. */
export const progressTooMany = (args: { readonly most: Word }): string => say("progress-too-many", args);
/** What of the picture becomes levels. silhouette: one shape; tones: its lightness; depth: how near it is; colours: the colours stated. */
export const fieldRasterTrace = (): string => say("field-raster-trace");
/** colours where levels state some; tones where the kit has three levels or more and no level is stated; else silhouette */
export const fieldRasterTraceUsual = (): string => say("field-raster-trace-usual");
/** Which side of a limit is nearer. */
export const fieldRasterNear = (): string => say("field-raster-near");
/** dark, and light for a depth picture */
export const fieldRasterNearUsual = (): string => say("field-raster-near-usual");
/** Where levels part, as lightness from 0 to 255, rising: [96, 171]. */
export const fieldRasterLimits = (): string => say("field-raster-limits");
/** A lightness, 0 for black and 255 for white. It belongs to the darker side. */
export const fieldRasterLimit = (): string => say("field-raster-limit");
/** found from the picture */
export const fieldRasterLimitsUsual = (): string => say("field-raster-limits-usual");
/** How far a traced outline may stray from the picture, on the book. */
export const fieldRasterTolerance = (): string => say("field-raster-tolerance");
/** What is smaller than a disc of this diameter is left out, holes too, on the book. */
export const fieldRasterLeast = (): string => say("field-raster-least");
/** {mm} mm */
export const fieldRasterMm = (args: { readonly mm: Word }): string => say("field-raster-mm", args);
/** a whole picture: {kinds} — $kinds: endings of names: .jpg, .png */
export const rasterKinds = (args: { readonly kinds: Word }): string => say("raster-kinds", args);
/** save it as PNG or JPEG */
export const rasterSaveAs = (): string => say("raster-save-as");
/** "{file}" cannot be read: {fault} — $fault: the words of the program that reads pictures, in English. */
export const rasterUnreadable = (args: { readonly file: Word; readonly fault: Word }): string => say("raster-unreadable", args);
/** open it in a photo program and save it again */
export const rasterSaveAgain = (): string => say("raster-save-again");
/** "{file}" has {megapixels} megapixels */
export const rasterPixels = (args: { readonly file: Word; readonly megapixels: Word }): string => say("raster-pixels", args);
/** a picture of at most {most} megapixels */
export const rasterMostPixels = (args: { readonly most: Word }): string => say("raster-most-pixels", args);
/** save it smaller: 2400 pixels on the longer side are enough */
export const rasterSaveSmaller = (): string => say("raster-save-smaller");
/** "{file}" is transparent all over */
export const rasterClear = (args: { readonly file: Word }): string => say("raster-clear", args);
/** "{file}" has a single tone|only {tones} tones */
export const rasterFewTones = (args: { readonly file: Word; readonly tones: number }): string => say("raster-few-tones", args);
/** a picture of at least {classes} tones, one for each level */
export const rasterTonesAllowed = (args: { readonly classes: Word }): string => say("raster-tones-allowed", args);
/** take a picture with more contrast, or fewer levels */
export const rasterOtherPicture = (): string => say("raster-other-picture");
/** no shape in "{file}"|no level in "{file}" */
export const rasterNothing = (args: { readonly trace: Word; readonly file: Word }): string => say("raster-nothing", args);
/** something that shows and is larger than a disc of {least} mm on the book — $least: a diameter in mm */
export const rasterSomething = (args: { readonly least: Word }): string => say("raster-something", args);
/** lower least, state other limits, or turn near round */
export const rasterShowMore = (): string => say("raster-show-more");
/** "{file}" with {parts} part|{parts} parts */
export const rasterBusy = (args: { readonly file: Word; readonly parts: number }): string => say("raster-busy", args);
/** at most {most} parts and holes at a level */
export const rasterMostParts = (args: { readonly most: Word }): string => say("raster-most-parts", args);
/** "{file}" with outlines {times} times as long as its edge — $times: lengths of the picture’s edge. */
export const rasterLong = (args: { readonly file: Word; readonly times: Word }): string => say("raster-long", args);
/** outlines at most {most} times as long as its edge */
export const rasterMostLong = (args: { readonly most: Word }): string => say("raster-most-long", args);
/** raise least, or blur the picture before you save it */
export const rasterRaiseLeast = (): string => say("raster-raise-least");
/** {limit} after {before} */
export const rasterLimitAfter = (args: { readonly limit: Word; readonly before: Word }): string => say("raster-limit-after", args);
/** limits that rise from dark to light */
export const rasterLimitsAscend = (): string => say("raster-limits-ascend");
/** put the limits in order */
export const rasterOrderLimits = (): string => say("raster-order-limits");
/** {count} limit|{count} limits */
export const rasterLimitCount = (args: { readonly count: number }): string => say("raster-limit-count", args);
/** {count} limit, between the two sides|{count} limits, one between each two levels */
export const rasterLimitsAllowed = (args: { readonly count: number }): string => say("raster-limits-allowed", args);
/** state as many, or leave limits out */
export const rasterMatchLimits = (): string => say("raster-match-limits");
/** {key} beside trace: colours — $key: limits or near */
export const rasterKeyOfTones = (args: { readonly key: Word }): string => say("raster-key-of-tones", args);
/** limits and near for silhouette, tones and depth only */
export const rasterKeyAllowed = (): string => say("raster-key-allowed");
/** remove it */
export const rasterRemoveKey = (): string => say("raster-remove-key");
/** "{colour}" is no colour */
export const rasterNoColour = (args: { readonly colour: Word }): string => say("raster-no-colour", args);
/** a colour as style sheets write it: "#c33", teal or rgb(20 80 140) */
export const rasterColourAllowed = (): string => say("raster-colour-allowed");
/** correct it */
export const rasterCorrectColour = (): string => say("raster-correct-colour");
/** "{colour}" at a second level */
export const rasterColourTwice = (args: { readonly colour: Word }): string => say("raster-colour-twice", args);
/** each colour at one level */
export const rasterColourOnce = (): string => say("raster-colour-once");
/** remove one of the two */
export const rasterOneColour = (): string => say("raster-one-colour");
/** no colour|{count} colour|{count} colours of one level */
export const rasterColourCount = (args: { readonly count: number }): string => say("raster-colour-count", args);
/** colours of two levels at least, the ground’s among them */
export const rasterColoursAllowed = (): string => say("raster-colours-allowed");
/** state the colour of another level: wall: { fill: "#fff" } */
export const rasterAddColour = (): string => say("raster-add-colour");
/** transparency carries the shape; to go by lightness instead, state limits */
export const rasterAlpha = (): string => say("raster-alpha");
/** the lightness parts at {list}; to move that, write limits: [{limits}]|the lightness parts at {list}; to move them, write limits: [{limits}] — $list: one or more limits as a list; $limits: the same as they are typed. */
export const rasterLimits = (args: { readonly count: number; readonly list: Word; readonly limits: Word }): string => say("raster-limits", args);
/** {specks} part or hole smaller than {least} mm was left out|{specks} parts and holes smaller than {least} mm were left out — $least: a diameter in mm */
export const rasterSpecks = (args: { readonly specks: number; readonly least: Word }): string => say("raster-specks", args);
/** the picture moves: the first of {frames} frame was taken|the picture moves: the first of {frames} frames was taken */
export const rasterFrames = (args: { readonly frames: number }): string => say("raster-frames", args);
/** taken at {width} × {height} pixels of {savedWidth} × {savedHeight}, which is as fine as a book shows — Pixels. */
export const rasterReduced = (args: { readonly width: Word; readonly height: Word; readonly savedWidth: Word; readonly savedHeight: Word }): string => say("raster-reduced", args);
/** the colours {a} and {b} hardly differ, so their levels may mix — $a and $b: colours as they are typed: #c33 */
export const rasterColoursNear = (args: { readonly a: Word; readonly b: Word }): string => say("raster-colours-near", args);
/** {percent}% of the picture is of other colours than those stated, and went to the nearest */
export const rasterColoursFar = (args: { readonly percent: Word }): string => say("raster-colours-far", args);
/** {class}: {books} of {all} seats have a book; the book for {seats} is still to come.|the books for {seats} are still to come. — $seats names the $count seats without a book: "seat 6" or "seats 2 and 6". */
export const reportAwaiting = (args: { readonly class: Word; readonly books: Word; readonly all: Word; readonly count: number; readonly seats: Word }): string => say("report-awaiting", args);
/** {class}, seat {seat}: {kit} does not fit its book. {why} What would help: */
export const reportMisfit = (args: { readonly class: Word; readonly seat: Word; readonly kit: Word; readonly why: Word }): string => say("report-misfit", args);
/**   - {help} */
export const reportHelp = (args: { readonly help: Word }): string => say("report-help", args);
/**     row of the table:|below seats: {text} — A line to paste. $into: below “seats:” in the class's file, or in the table of books. */
export const reportEntry = (args: { readonly into: Word; readonly text: Word }): string => say("report-entry", args);
/** warning  {class}, seat {seat}: {doubt} */
export const reportDoubt = (args: { readonly class: Word; readonly seat: Word; readonly doubt: Word }): string => say("report-doubt", args);
/** warning  {class}: nothing on the shopping list is called “{item}”, which is in stock */
export const reportUnusedStock = (args: { readonly class: Word; readonly item: Word }): string => say("report-unused-stock", args);
/** {title}: in the room */
export const roomTitle = (args: { readonly title: Word }): string => say("room-title", args);
/** Parts of this page */
export const roomWays = (): string => say("room-ways");
/** In the room: to project, to tick off, to take home */
export const roomLink = (): string => say("room-link");
/** For the screen */
export const roomShow = (): string => say("room-show");
/** Seats */
export const roomSeats = (): string => say("room-seats");
/** Slips to take home */
export const roomHome = (): string => say("room-home");
/** Sizes in the pictures are of the kit’s own book: every seat’s stand in its packet. */
export const roomOwnSizes = (): string => say("room-own-sizes");
/** Session */
export const roomSession = (): string => say("room-session");
/** Begin now */
export const roomBegin = (): string => say("room-begin");
/** Timer, minutes */
export const roomTimer = (): string => say("room-timer");
/** Start timer */
export const roomTimerStart = (): string => say("room-timer-start");
/** Stop timer */
export const roomTimerStop = (): string => say("room-timer-stop");
/** Time is up */
export const roomTimerOver = (): string => say("room-timer-over");
/** Step before */
export const roomPrevious = (): string => say("room-previous");
/** Next step */
export const roomNext = (): string => say("room-next");
/** Full screen */
export const roomFull = (): string => say("room-full");
/** {kit}, step {number} of {of} — $number is the step's, of as many. */
export const roomStep = (args: { readonly kit: Word; readonly number: Word; readonly of: Word }): string => say("room-step", args);
/** By the pause|By the end — $when is the session's pause or its end. */
export const roomTargets = (args: { readonly when: Word }): string => say("room-targets", args);
/** score lines|window|finished — Short, as it is read from the last row. $at: what a seat is working on. */
export const roomTarget = (args: { readonly at: Word }): string => say("room-target", args);
/** lines done */
export const roomTargetScored = (): string => say("room-target-scored");
/** Settling in|Pause|Time to catch up|Tidying up|Work at the book until {until}: {left} left — What a session is in the middle of, and until when: "Work at the book until 19:40, 14 min left". */
export const roomStretch = (args: { readonly kind: Word; readonly until: Word; readonly left: Word }): string => say("room-stretch", args);
/** Begins at {time} */
export const roomBefore = (args: { readonly time: Word }): string => say("room-before", args);
/** This session is over */
export const roomAfter = (): string => say("room-after");
/** Not begun */
export const roomUnbegun = (): string => say("room-unbegun");
/** Here: {session} — $session is its title. */
export const roomHere = (args: { readonly session: Word }): string => say("room-here", args);
/** Folded up to page */
export const roomUpTo = (): string => say("room-up-to");
/** Finished */
export const roomFinished = (): string => say("room-finished");
/** Left */
export const roomLeft = (): string => say("room-left");
/** Tick who is here, and write the last page that is folded. This device alone keeps it, by seat numbers. */
export const roomSeatsNote = (): string => say("room-seats-note");
/** With JavaScript, this page keeps the list. Without it, use the supervision list of the teacher’s packet. */
export const roomNoscript = (): string => say("room-noscript");
/** This browser keeps nothing: what is ticked here is lost when the page is closed. */
export const roomNotKept = (): string => say("room-not-kept");
/** Empty the list */
export const roomClear = (): string => say("room-clear");
/** Empty the whole list of this class? Nobody else has it. */
export const roomClearSure = (): string => say("room-clear-sure");
/** Seat {seat} is here: {session} */
export const roomSeatHere = (args: { readonly seat: Word; readonly session: Word }): string => say("room-seat-here", args);
/** Seat {seat}: folded up to page */
export const roomSeatPage = (args: { readonly seat: Word }): string => say("room-seat-page", args);
/** Seat {seat} is finished */
export const roomSeatFinished = (args: { readonly seat: Word }): string => say("room-seat-finished", args);
/** no leaves, {time}|one leaf, {time}|{leaves} leaves, {time} — $time is an estimate: "about 2 h". */
export const roomRest = (args: { readonly leaves: number; readonly time: Word }): string => say("room-rest", args);
/** one leaf, page {page}; {time}|{leaves} leaves, from page {page} on; {time} */
export const roomRestFrom = (args: { readonly leaves: number; readonly page: Word; readonly time: Word }): string => say("room-rest-from", args);
/** nothing: it is finished */
export const roomRestNone = (): string => say("room-rest-none");
/** No seat is ticked as here|One seat is here|{here} seats are here; none is finished|one is finished|{finished} are finished. Together the class has done {percent}. — $percent is one, with its sign. How many seats are here in the session that is shown, and how far they are together. */
export const roomSum = (args: { readonly here: number; readonly finished: number; readonly percent: Word }): string => say("room-sum", args);
/** What the list above knows is filled in; the rest is a line to write on. Print this page: only the slips are printed. */
export const roomHomeNote = (): string => say("room-home-note");
/** Print the slips */
export const roomPrint = (): string => say("room-print");
/** The whole piece has one leaf|{leaves} leaves to fold and takes {time} in all. */
export const roomSlipWhole = (args: { readonly leaves: number; readonly time: Word }): string => say("room-slip-whole", args);
/** Take along: book, gauge, packet, and the parts in your bag. No loose blades go home, and cells stay behind their screwed door.|Take along: book, gauge, packet, and the parts in your bag. No loose blades go home. */
export const roomSlipTake = (args: { readonly light: Word }): string => say("room-slip-take", args);
/** Take along: book, corner gauge, packet, and the card in your bag. */
export const roomSlipTakeFolded = (): string => say("room-slip-take-folded");
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
/** The folded leaves hold this book open to about {degrees}° or more. */
export const roundResting = (args: { readonly degrees: Word }): string => say("round-resting", args);
/** The window is cut for the kit’s own opening and does not fit here.|and is left out here. */
export const roundWindow = (args: { readonly shown: Word }): string => say("round-window", args);
/** closed|open {degrees}° */
export const roundDoor = (args: { readonly state: Word; readonly degrees: Word }): string => say("round-door", args);
/** {level} {name} — In the legend of colours: the level's number and name. */
export const roundLevel = (args: { readonly level: Word; readonly name: Word }): string => say("round-level", args);
/** What picks shapes of the picture, or a list of such: ["#rim", "Waves"]. */
export const selectListField = (): string => say("select-list-field");
/** "#id"; ".class"; any other text for a name, of a layer or an object; or a colour, { fill: "#c33" } or { stroke: "#c33" }. — { "{" } and { "}" } write braces. */
export const selectField = (): string => say("select-field");
/** A colour as CSS writes it: "#c33" or "red". */
export const selectColourField = (): string => say("select-colour-field");
/** What part is the picture: canvas; drawing, the box of all that is drawn; or a rectangle, { x: 10, y: 5, width: 80, height: 60 }. */
export const cropField = (): string => say("crop-field");
/** Left edge of the rectangle, from the canvas’s left edge, in the picture’s own units. */
export const cropXField = (): string => say("crop-x-field");
/** Upper edge of the rectangle, from the canvas’s upper edge, in the picture’s own units. */
export const cropYField = (): string => say("crop-y-field");
/** Width of the rectangle, in the picture’s own units. */
export const cropWidthField = (): string => say("crop-width-field");
/** Height of the rectangle, in the picture’s own units. */
export const cropHeightField = (): string => say("crop-height-field");
/** fill: "{value}" ({share}%)|stroke: "{value}" ({share}%)|"#{value}" ({share}%)|".{value}" ({share}%)|"{value}" ({share}%) — $value: a colour as #cc3333, or a name. $share: percent of the picture. */
export const selectFound = (args: { readonly kind: Word; readonly value: Word; readonly share: Word }): string => say("select-found", args);
/** {file} can be picked by {found} — $found: things of the picture with their shares of it, as a list. Told of a kit that is checked by name. $found: as in select-offers. */
export const selectOffersOf = (args: { readonly file: Word; readonly found: Word }): string => say("select-offers-of", args);
/** {file} paints nothing that can be picked */
export const selectNothingIn = (args: { readonly file: Word }): string => say("select-nothing-in", args);
/** what the picture has: {found} */
export const selectOffers = (args: { readonly found: Word }): string => say("select-offers", args);
/** something that the picture has, and it paints nothing that can be picked */
export const selectNothing = (): string => say("select-nothing");
/** state for each level what picks its shapes, or name layers like the levels */
export const selectState = (): string => say("select-state");
/** correct it, or give the shape this name in the drawing */
export const selectCorrect = (): string => say("select-correct");
/** did you mean "{meant}"? */
export const selectDidYouMean = (args: { readonly meant: Word }): string => say("select-did-you-mean", args);
/** a colour as CSS writes it: "#c33" or "red" */
export const selectColour = (): string => say("select-colour");
/** correct the colour */
export const selectWriteColour = (): string => say("select-write-colour");
/** no shapes are stated, so these levels take what is called like them: {levels} — $levels: names in quotes, as a list. */
export const selectByName = (args: { readonly levels: Word }): string => say("select-by-name", args);
/** {shape}, stroke {colour}|fill {colour} — $shape: a shape of no level: <path> under #gull. $colour: of its fill or stroke. */
export const selectLostColour = (args: { readonly shape: Word; readonly paint: Word; readonly colour: Word }): string => say("select-lost-colour", args);
/** {shape}, and {more} shape more|{more} shapes more — $shape: the last shape of no level that is told. */
export const selectLostMore = (args: { readonly shape: Word; readonly more: number }): string => say("select-lost-more", args);
/** pick it in picture.levels by its id, name or colour, or give it no fill */
export const selectNameShape = (): string => say("select-name-shape");
/** pick it in picture.levels by its id, name or colour, or give it no fill; there is {found} — $found: what else can pick shapes, as a list. */
export const selectPickShape = (args: { readonly found: Word }): string => say("select-pick-shape", args);
/** <{element}>{id} — $id: its id or name with a space before it, or nothing. */
export const selectShape = (args: { readonly element: Word; readonly id: Word }): string => say("select-shape", args);
/** {shape} (line {line}) — $shape: <path> #wave */
export const selectShapeAt = (args: { readonly shape: Word; readonly line: Word }): string => say("select-shape-at", args);
/** {more} shape more|{more} shapes more — The last part of a list of shapes. */
export const selectMoreShapes = (args: { readonly more: number }): string => say("select-more-shapes", args);
/** on level “{level}” nobody will see {shapes}: what lies under them is of the same level. Give them another one */
export const selectVanish = (args: { readonly level: Word; readonly shapes: Word }): string => say("select-vanish", args);
/** x {x}, y {y}, {width} × {height} — $x, $y: the upper left corner. */
export const cropBox = (args: { readonly x: Word; readonly y: Word; readonly width: Word; readonly height: Word }): string => say("crop-box", args);
/** the drawing ({drawing}) fills {percent}% of its canvas ({canvas}), so it is taken without the rest. To keep the canvas, state crop: canvas — $drawing, $canvas: boxes: x 0, y 0, 80 × 60 */
export const cropTaken = (args: { readonly drawing: Word; readonly percent: Word; readonly canvas: Word }): string => say("crop-taken", args);
/** nothing visible: the drawing ({drawing}) lies outside ({canvas}) */
export const cropEmpty = (args: { readonly drawing: Word; readonly canvas: Word }): string => say("crop-empty", args);
/** state crop: drawing, or a rectangle that holds something of it */
export const cropOther = (): string => say("crop-other");
/** a picture that paints nothing */
export const cropNothing = (): string => say("crop-nothing");
/** a picture with something visible in it */
export const cropSomething = (): string => say("crop-something");
/** draw shapes with a fill or a stroke, and see that they are not hidden */
export const cropDrawSomething = (): string => say("crop-draw-something");
/** Followed in {seconds} s. — $seconds: how long it took, as it is written: 0.4. */
export const servingFollowed = (args: { readonly seconds: Word }): string => say("serving-followed", args);
/** One kit is|{count} kits are worked out one after the other; what is gone to comes first. — At the start, where kits have to be worked out first. */
export const servingWaiting = (args: { readonly count: number }): string => say("serving-waiting", args);
/** All is worked out. */
export const servingReady = (): string => say("serving-ready");
/** Something could not be made; the terminal of npm start says what. — On the desk, where a page could not be made by a fault of the program itself. */
export const servingFailed = (): string => say("serving-failed");
/** The program itself has changed. Stop it and start it again: until then nothing is made anew. */
export const servingOld = (): string => say("serving-old");
/** This PDF could not be printed */
export const servingUnprinted = (): string => say("serving-unprinted");
/** Correct what is named, and load this page again. */
export const servingUnprintedRemedy = (): string => say("serving-unprinted-remedy");
/** {option} has no value. Write it behind: {option} {example} — $option: as it was given: --content. $example: what may stand behind it. */
export const siteOptionEmpty = (args: { readonly option: Word; readonly example: Word }): string => say("site-option-empty", args);
/** {option} is said twice. Say it once. */
export const siteOptionTwice = (args: { readonly option: Word }): string => say("site-option-twice", args);
/** {file} cannot be read as variables: lines of NAME=value. Correct it, or move it away — $file: the name of the file. */
export const siteVariablesFile = (args: { readonly file: Word }): string => say("site-variables-file", args);
/** There is no folder {content} to read content from. Allowed is a folder like content, with kits, classes and site.yaml. Make it, or correct --content or LEAFLIGHT_CONTENT. — $content: the folder as it was given. */
export const siteContentMissing = (args: { readonly content: Word }): string => say("site-content-missing", args);
/** {content} is no folder for content: it holds the program, or is a part of it. Choose a folder of its own, such as sites/north. */
export const siteContentOwn = (args: { readonly content: Word }): string => say("site-content-own", args);
/** The part|The site cannot be made in {output}: {why}. Choose a new or an empty folder with --output or LEAFLIGHT_OUTPUT. — $output: the folder as it was given. $why: one of the messages below. $made: what is to be made there: part, or site. */
export const siteOutput = (args: { readonly made: Word; readonly output: Word; readonly why: Word }): string => say("site-output", args);
/** it holds the program or the content, or is a part of them */
export const siteOutputOwn = (): string => say("site-output-own");
/** it holds something else than a part|site, which would be lost */
export const siteOutputFull = (args: { readonly made: Word }): string => say("site-output-full", args);
/** There is no option “{option}”. Allowed are --content, --url, --port, --desk-port and --network. — $option: as it was given. */
export const siteStartOption = (args: { readonly option: Word }): string => say("site-start-option", args);
/** “{given}” is no port. Allowed is a whole number from 1 to 65535, such as --port 8090. */
export const siteStartPort = (args: { readonly given: Word }): string => say("site-start-port", args);
/** {host} is kept for examples, so the codes on seat cards and handouts lead nowhere. State the site’s own address: url in {file}, --url, or {variable}. — $host: of the site's address. $file: the settings. $variable: a variable of the environment. */
export const checkNobodysAddress = (args: { readonly host: Word; readonly file: Word; readonly variable: Word }): string => say("check-nobodys-address", args);
/** “{given}” is no part. Allowed is which part of how many, at most {most}, such as --shard 2/3. — $given: what stood behind --shard. */
export const sitePartNoShard = (args: { readonly given: Word; readonly most: Word }): string => say("site-part-no-shard", args);
/** Say --shard or --only, not both. */
export const sitePartTwoWays = (): string => say("site-part-two-ways");
/** A part’s kits are named with --only: npm run build -- --only {kit} — Names of folders stood beside --shard or --only. */
export const sitePartAndNames = (args: { readonly kit: Word }): string => say("site-part-and-names", args);
/** {folder} is a draft, and no part of the site. Take draft out of its front matter, or leave it out of --only. — $folder: the kit’s folder below the project. */
export const sitePartDraft = (args: { readonly folder: Word }): string => say("site-part-draft", args);
/** No kit was dealt to this part|{kits} kit|{kits} kits in {output}: join it with the other parts by npm run merge. */
export const sitePartMade = (args: { readonly kits: number; readonly output: Word }): string => say("site-part-made", args);
/** No part was named. Name the folders of all parts: npm run merge -- parts/1-of-2 parts/2-of-2 */
export const sitePartNone = (): string => say("site-part-none");
/** {folder} is no part of a site: it has no {file}|its {file} is of another version of Leaflight|its {file} is damaged. Make it again with npm run build -- --shard 2/3. */
export const sitePartUnreadable = (args: { readonly folder: Word; readonly why: Word; readonly file: Word }): string => say("site-part-unreadable", args);
/** {folder} was made from other content (settings, words, motifs, fonts, or what pages link to)|other kits: some were added, taken away, or made drafts|another address|another browser, or without packets|another version of the program, of its packages or of Node than what is here. Make all parts and join them from the same files, with the same options. */
export const sitePartDiffers = (args: { readonly folder: Word; readonly what: Word }): string => say("site-part-differs", args);
/** {kit} in {folder} was made from another folder {kit} than the one here. Make all parts and join them from the same files. */
export const sitePartKitDiffers = (args: { readonly kit: Word; readonly folder: Word }): string => say("site-part-kit-differs", args);
/** {folder} is one of {of} parts, and {other} one of {others}. Make all parts with the same count. */
export const sitePartCounts = (args: { readonly folder: Word; readonly of: Word; readonly other: Word; readonly others: Word }): string => say("site-part-counts", args);
/** {folder} and {other} are the same part. Leave one of them out. */
export const sitePartTwice = (args: { readonly folder: Word; readonly other: Word }): string => say("site-part-twice", args);
/** {kit} is in {folder} and in {other}. Leave one of the parts out. */
export const sitePartKitTwice = (args: { readonly kit: Word; readonly folder: Word; readonly other: Word }): string => say("site-part-kit-twice", args);
/** Part {number} of {of} is missing. Name the folders of all parts. */
export const sitePartMissing = (args: { readonly number: Word; readonly of: Word }): string => say("site-part-missing", args);
/** No part has {names}. Name the folders of all parts. — $names: of kits, or the beginning of a long list. */
export const sitePartKitsMissing = (args: { readonly names: Word }): string => say("site-part-kits-missing", args);
/** {file} is not what {manifest} says: it is not there|it has other contents. Copy the part again, or make it again. */
export const sitePartFile = (args: { readonly file: Word; readonly manifest: Word; readonly why: Word }): string => say("site-part-file", args);
/** Skip to content */
export const siteSkip = (): string => say("site-skip");
/** Every measurement is worked out for the book each kit names. */
export const siteFoot = (): string => say("site-foot");
/** Pages of this site — Read aloud before the links at the top of every page. */
export const siteWays = (): string => say("site-ways");
/** Feed of new kits — Link at the foot of every page. */
export const siteFeed = (): string => say("site-feed");
/** {site}: kits and classes — Name of the feed for programs that read feeds. */
export const siteFeedTitle = (args: { readonly site: Word }): string => say("site-feed-title", args);
/** {page} · {site} — Title of a page: its own heading and the site's name. */
export const siteTitle = (args: { readonly page: Word; readonly site: Word }): string => say("site-title", args);
/** Not on the shelf — Where an address leads nowhere. */
export const siteMissingTitle = (): string => say("site-missing-title");
/** This page is not on the shelf */
export const siteMissingHeading = (): string => say("site-missing-heading");
/** There is nothing at this address. The page may have been moved or taken away, or a letter may be missing from the link. */
export const siteMissingText = (): string => say("site-missing-text");
/** All kits */
export const siteMissingKits = (): string => say("site-missing-kits");
/** Go to the catalogue */
export const siteToCatalogue = (): string => say("site-to-catalogue");
/** Not on this device — Where a page is asked for without network and is not kept on the device. */
export const siteAbsentTitle = (): string => say("site-absent-title");
/** Not on this device yet */
export const siteAbsentHeading = (): string => say("site-absent-heading");
/** You are offline, and this page has not been opened on this device before. Kits that you have opened work offline; the catalogue marks them. */
export const siteAbsentText = (): string => say("site-absent-text");
/** Try this page again */
export const siteAbsentAgain = (): string => say("site-absent-again");
/** {title}, a book folded into a picture, seen from the front — Describes a link preview's picture. */
export const sitePreviewPicture = (args: { readonly title: Word }): string => say("site-preview-picture", args);
/** {title}, version {version} — Title of a feed's entry. */
export const feedEntry = (args: { readonly title: Word; readonly version: Word }): string => say("feed-entry", args);
/** Licence: {licence} */
export const feedLicence = (args: { readonly licence: Word }): string => say("feed-licence", args);
/** 1 folded book — What a kit's instructions make, in data for search engines. */
export const howToYield = (): string => say("how-to-yield");
/** Picture after {work}, {source}, licence {licence} */
export const howToCredit = (args: { readonly work: Word; readonly source: Word; readonly licence: Word }): string => say("how-to-credit", args);
/** {title}. {text} — A caution beside a step: title and one sentence. */
export const howToTip = (args: { readonly title: Word; readonly text: Word }): string => say("how-to-tip", args);
/** The book */
export const stepSectionBook = (): string => say("step-section-book");
/** Light and window */
export const stepSectionWindow = (): string => say("step-section-window");
/** What the lines of the drawings mean */
export const stepLegend = (): string => say("step-legend");
/** about {time} — How long a step takes. */
export const stepTime = (args: { readonly time: Word }): string => say("step-time", args);
/** then {time} to dry|then {time} to dry, in each of {times} batches — How long glued things must lie still after a step, or after each of some batches. */
export const stepDrying = (args: { readonly times: number; readonly time: Word }): string => say("step-drying", args);
/** Parts */
export const stepParts = (): string => say("step-parts");
/** Tools */
export const stepTools = (): string => say("step-tools");
/** gauge — A part beside a step that is no part of the window. */
export const stepPartGauge = (): string => say("step-part-gauge");
/** Check the book */
export const stepCheck = (): string => say("step-check");
/** Count leaves, not pages: a leaf is one sheet with two pages. This pattern is for {leaves} leaves, {height} tall and {width} wide, pressed {thickness} thick. Another book needs the pattern worked out for it. */
export const stepCheckText = (args: { readonly leaves: Word; readonly height: Word; readonly width: Word; readonly thickness: Word }): string => say("step-check-text", args);
/** Measure height, width and thickness, and count leaves, not pages. */
export const stepCheckGist = (): string => say("step-check-gist");
/** Find pattern page 1 */
export const stepFind = (): string => say("step-find");
/** The picture begins on {first} (pattern page 1) and ends on {last} (pattern page {page}). Put a slip of paper at each. */
export const stepFindText = (args: { readonly first: Word; readonly last: Word; readonly page: Word }): string => say("step-find-text", args);
/** Put a slip of paper at the first and at the last picture leaf. */
export const stepFindGist = (): string => say("step-find-gist");
/** Make the gauge */
export const stepGauge = (): string => say("step-gauge");
/** Print the packet’s gauge on card, or prick it through to card. Cut out the gauge with its holes, or the strips: each is as wide as its line’s distance from the fore-edge. The lines: {lines}. */
export const stepGaugeText = (args: { readonly lines: Word }): string => say("step-gauge-text", args);
/** {number} {name}: line {line}, {depth} — A level's line: number and name of the level, number of the gauge's line, distance from the fore-edge. */
export const stepGaugeLine = (args: { readonly number: Word; readonly name: Word; readonly line: Word; readonly depth: Word }): string => say("step-gauge-line", args);
/** {number} {name}: {depth} */
export const stepGaugeFreeLine = (args: { readonly number: Word; readonly name: Word; readonly depth: Word }): string => say("step-gauge-free-line", args);
/** Print the gauge on card and cut it out; prick its holes. Or cut out its strips, each as wide as its line’s distance. */
export const stepGaugeGist = (): string => say("step-gauge-gist");
/** Press the score lines */
export const stepScore = (): string => say("step-score");
/** Lay the gauge’s edge along the fore-edge, with packing under the lower side so that it lies level. Prick the line’s dots and join them along the ruler with the bone folder, or use the line’s strip. Follow the scoring plan: {count} line|{count} lines in all. Crease the paper, never press through it; try a spare leaf first. */
export const stepScoreText = (args: { readonly count: number }): string => say("step-score-text", args);
/** Lay the gauge along the fore-edge, packing under the lower side. Prick the dots and join them along a ruler with a blunt tool; never press through. */
export const stepScoreGist = (): string => say("step-score-gist");
/** Fold the leaves before the picture */
export const stepBorderBefore = (): string => say("step-border-before");
/** Fold {count} whole leaf|{count} whole leaves before the picture at the {level} line, {depth} from the fore-edge. */
export const stepBorderBeforeText = (args: { readonly count: number; readonly level: Word; readonly depth: Word }): string => say("step-border-before-text", args);
/** Fold the whole leaves before the picture at the background line. */
export const stepBorderBeforeGist = (): string => say("step-border-before-gist");
/** Fold the leaves after the picture */
export const stepBorderAfter = (): string => say("step-border-after");
/** When the last batch is done, fold {count} whole leaf|{count} whole leaves after the picture at the {level} line, {depth} from the fore-edge. */
export const stepBorderAfterText = (args: { readonly count: number; readonly level: Word; readonly depth: Word }): string => say("step-border-after-text", args);
/** Last of all leaves, fold the whole ones after the picture at the background line. */
export const stepBorderAfterGist = (): string => say("step-border-after-gist");
/** Fold the picture, batch by batch */
export const stepFold = (): string => say("step-fold");
/** Work on at most {batch} leaves at a time. Mark from the head edge. Cut square in from the fore-edge with short sharp scissors, one or two leaves at a time, never deeper than {deepest}. Fold each strip at its level’s line and tuck it behind.|Mark from the head edge. Slide the mat under this one leaf. Set the point on the score line and draw it outward through the fore-edge, in several light strokes, never deeper than {deepest}. Fold each strip at its level’s line and tuck it behind.|Fold each leaf whole at its level’s line and tuck it behind. Tick the row. At each checkpoint, compare the page number and the first mark before you turn the leaf. */
export const stepFoldText = (args: { readonly batch: Word; readonly cutWith: Word; readonly deepest: Word }): string => say("step-fold-text", args);
/** Work on at most {batch} leaves at a time. First fold the whole leaf at the {front} line, {depth}; a leaf of one level is folded at its own line instead. Mark from the head edge. Cut square in from the folded edge with short sharp scissors, one or two leaves at a time, never deeper than {deepest}.|Slide the mat under this one leaf. Set the point on the score line and draw it outward through the folded edge, in several light strokes, never deeper than {deepest}. Fold each deeper strip back again at its own line and tuck it behind. Tick the row. At each checkpoint, compare the page number and the first mark before you turn the leaf. */
export const stepFoldTextStepped = (args: { readonly batch: Word; readonly front: Word; readonly depth: Word; readonly cutWith: Word; readonly deepest: Word }): string => say("step-fold-text-stepped", args);
/** Mark from the head, cut each mark square to the edge, fold each strip at its line, tuck it behind, tick the row. */
export const stepFoldGist = (): string => say("step-fold-gist");
/** In each batch: notch for the light */
export const stepNotch = (): string => say("step-notch");
/** One leaf is notched|{count} leaves are notched, from leaf {first} to leaf {last}, so that the light stands inside. Mark each notch with the leaf’s other marks. Once the batch is folded and tucked, cut them with the knife, one leaf at a time on the mat: through body and flap, in several light strokes. The pocket’s floor is {floor} from the head. */
export const stepNotchText = (args: { readonly count: number; readonly first: Word; readonly last: Word; readonly floor: Word }): string => say("step-notch-text", args);
/** Once the batch is tucked, cut each notch with the knife in several light strokes, one leaf at a time. */
export const stepNotchGist = (): string => say("step-notch-gist");
/** In each batch: tack loose flaps */
export const stepTack = (): string => say("step-tack");
/** {count} flap is loose, because the next leaf does not hold it.|{count} flaps are loose, because the next leaf does not hold them. At the end of each batch, put a pin-head of clear-drying glue under each one that is listed as a tack. Press it down with a slip of baking paper behind it. Let the glue dry before the next batch.|At the end of each batch, put a glue dot under each one that is listed as a tack, and press it down. */
export const stepTackText = (args: { readonly count: number; readonly with: Word }): string => say("step-tack-text", args);
/** At the end of each batch, stick down each flap that is listed as a tack. */
export const stepTackGist = (): string => say("step-tack-gist");
/** Open to the hold width */
export const stepHold = (): string => say("step-hold");
/** Stand the book up, head up. Open it until the folded edges of the first and last picture leaf are {width} apart at the head edge, measured straight across. The edges of boards or cover are then about {boards} apart. At this width the picture has its true shape. Set the holder on the head edge, its slots over the first and last picture leaf. Leave it there until all glue is dry.|Prop it open at that width overnight with a folded strip of card. */
export const stepHoldText = (args: { readonly width: Word; readonly boards: Word; readonly holder: Word }): string => say("step-hold-text", args);
/** Measure straight across at the head edge; there the picture has its true shape. */
export const stepHoldGist = (): string => say("step-hold-gist");
/** Cut out the window */
export const stepCut = (): string => say("step-cut");
/** With the knife, cut {count} part|{count} parts of card, the holder among them, and the glazing of acetate, from the templates or with the cut files. Cut inner outlines first, then the outer ones. Press the dashed line of the door; do not cut it. */
export const stepCutText = (args: { readonly count: number }): string => say("step-cut-text", args);
/** Inner outlines first, then the outer ones; press the door’s dashed line, do not cut it. */
export const stepCutGist = (): string => say("step-cut-gist");
/** Glue the base frame and let it dry */
export const stepFrame = (): string => say("step-frame");
/** With the holder on, run double-sided tape round the back of the base frame, and a little glue along its inner edge. Press it onto the front tips, closure tab under its marked edge. Its outer edge stands an even {lip} beyond the folded shape all round. Make the door while it dries, holder on. */
export const stepFrameText = (args: { readonly lip: Word }): string => say("step-frame-text", args);
/** Put the holder on, glue the frame to the front tips, and leave the holder until the glue is dry. */
export const stepFrameGist = (): string => say("step-frame-gist");
/** Glaze the door */
export const stepGlaze = (): string => say("step-glaze");
/** Fold the flap back along the score and open it again. Then fix the glazing to the back of the door with narrow double-sided tape. Keep it clear of the score line at the left|right. Leave the door flat under a weight while the frame dries. */
export const stepGlazeText = (args: { readonly hinge: Word }): string => say("step-glaze-text", args);
/** Tape the glazing to the back of the door, clear of the score line, and leave it flat under a weight. */
export const stepGlazeGist = (): string => say("step-glaze-gist");
/** Decorate in layers */
export const stepDecorate = (): string => say("step-decorate");
/** Lay the decoration guide under the glazing. */
export const stepDecorateGuide = (): string => say("step-decorate-guide");
/** Fix flat ones with glue dots. Take the guide away at the end. */
export const stepDecorateDry = (): string => say("step-decorate-dry");
/** Lay the guide under the glazing; set each motif at its number in the figure, measured from the frame’s left and upper edge. */
export const stepDecorateGist = (): string => say("step-decorate-gist");
/** Hang the door */
export const stepHang = (): string => say("step-hang");
/** Fold the flap under the door and glue it to the face of the dry base frame at the left|right, edges lined up. Keep the door ajar by a finger’s width until the glue has set. */
export const stepHangText = (args: { readonly hinge: Word }): string => say("step-hang-text", args);
/** Glue the flap to the dry frame, edges lined up; keep the door ajar by a finger’s width until it has set. */
export const stepHangGist = (): string => say("step-hang-gist");
/** Close it */
export const stepClose = (): string => say("step-close");
/** Fix the button on the door’s mark with glue dots. Tie {string} of string into a loop through the tab’s hole, long enough to slip over the button. */
export const stepCloseText = (args: { readonly string: Word }): string => say("step-close-text", args);
/** Fix the button on its mark; tie the string through the tab so that the loop slips over it. */
export const stepCloseGist = (): string => say("step-close-gist");
/** Set the light */
export const stepLight = (): string => say("step-light");
/** When all glue is dry, take off what holds the book open. Switch the LED light on and stand it on the pocket’s floor, {setback} behind the front. Leave clear space all round: no paper touches its sides. If it does not stand steady, lay a small floor of card on the notches first. */
export const stepLightText = (args: { readonly setback: Word }): string => say("step-light-text", args);
/** When all is dry, stand the LED light on the pocket’s floor; no paper may touch it. */
export const stepLightGist = (): string => say("step-light-gist");
/** Materials */
export const supplyMaterials = (): string => say("supply-materials");
/** Tools */
export const supplyTools = (): string => say("supply-tools");
/** Total of the prices given: {total}. */
export const supplyTotal = (args: { readonly total: Word }): string => say("supply-total", args);
/** second-hand book|second-hand books */
export const supplyBook = (args: { readonly quantity: number }): string => say("supply-book", args);
/** card */
export const supplyCard = (): string => say("supply-card");
/** acetate */
export const supplyAcetate = (): string => say("supply-acetate");
/** paper */
export const supplyPaper = (): string => say("supply-paper");
/** narrow double-sided tape */
export const supplyTape = (): string => say("supply-tape");
/** string */
export const supplyString = (): string => say("supply-string");
/** glue dot|glue dots */
export const supplyGlueDots = (args: { readonly quantity: number }): string => say("supply-glue-dots", args);
/** button|buttons */
export const supplyButton = (args: { readonly quantity: number }): string => say("supply-button", args);
/** battery LED light|battery LED lights */
export const supplyLight = (args: { readonly quantity: number }): string => say("supply-light", args);
/** cells for the light */
export const supplyCells = (): string => say("supply-cells");
/** craft-knife blade|craft-knife blades */
export const supplyBlades = (args: { readonly quantity: number }): string => say("supply-blades", args);
/** bottle of clear-drying glue|bottles of clear-drying glue */
export const supplyGlue = (args: { readonly quantity: number }): string => say("supply-glue", args);
/** strip of baking paper|strips of baking paper */
export const supplyBakingPaper = (args: { readonly quantity: number }): string => say("supply-baking-paper", args);
/** foam spacer|foam spacers */
export const supplySpacers = (args: { readonly quantity: number }): string => say("supply-spacers", args);
/** bone folder or other blunt scoring tool */
export const supplyBoneFolder = (): string => say("supply-bone-folder");
/** ruler with clear divisions */
export const supplyRuler = (): string => say("supply-ruler");
/** soft pencil and eraser */
export const supplyPencil = (): string => say("supply-pencil");
/** awl or thick pin */
export const supplyAwl = (): string => say("supply-awl");
/** short sharp scissors */
export const supplyScissors = (): string => say("supply-scissors");
/** two slips of paper as bookmarks */
export const supplySlips = (): string => say("supply-slips");
/** a few heavy books as a weight */
export const supplyWeight = (): string => say("supply-weight");
/** craft knife */
export const supplyKnife = (): string => say("supply-knife");
/** cutting mat and metal safety ruler */
export const supplyMat = (): string => say("supply-mat");
/** packing */
export const supplyPacking = (): string => say("supply-packing");
/** {amount} {item} — A quantity with what it counts: "4 craft-knife blades", "2 sheets of card", "1.1 m of string", "1 set of cells". */
export const supplyLineEach = (args: { readonly amount: Word; readonly item: Word }): string => say("supply-line-each", args);
/** {amount} sheet of {item}|{amount} sheets of {item} */
export const supplyLineSheet = (args: { readonly quantity: number; readonly amount: Word; readonly item: Word }): string => say("supply-line-sheet", args);
/** {amount} set of {item}|{amount} sets of {item} */
export const supplyLineSet = (args: { readonly quantity: number; readonly amount: Word; readonly item: Word }): string => say("supply-line-set", args);
/** {amount} m of {item} */
export const supplyLineM = (args: { readonly amount: Word; readonly item: Word }): string => say("supply-line-m", args);
/** {amount} ft of {item} */
export const supplyLineFt = (args: { readonly amount: Word; readonly item: Word }): string => say("supply-line-ft", args);
/** {amount} {unit} of {item} — The author's own unit: "3 rolls of washi tape". */
export const supplyLineOwn = (args: { readonly amount: Word; readonly unit: Word; readonly item: Word }): string => say("supply-line-own", args);
/** piece|pieces — Units by themselves, as in a table or in data. */
export const supplyUnitEach = (args: { readonly quantity: number }): string => say("supply-unit-each", args);
/** sheet|sheets */
export const supplyUnitSheet = (args: { readonly quantity: number }): string => say("supply-unit-sheet", args);
/** set|sets */
export const supplyUnitSet = (args: { readonly quantity: number }): string => say("supply-unit-set", args);
/** m */
export const supplyUnitM = (): string => say("supply-unit-m");
/** ft */
export const supplyUnitFt = (): string => say("supply-unit-ft");
/** {leaves} leaves, each {leafHeight} tall and {leafWidth} wide */
export const whyBook = (args: { readonly leaves: Word; readonly leafHeight: Word; readonly leafWidth: Word }): string => say("why-book", args);
/** {cuts} cuts in the book, a fresh blade every {perBlade} */
export const whyBlades = (args: { readonly cuts: Word; readonly perBlade: Word }): string => say("why-blades", args);
/** {tacks} for tacks */
export const whyGlueDotsTacks = (args: { readonly tacks: Word }): string => say("why-glue-dots-tacks", args);
/** {window} for closure and motifs */
export const whyGlueDotsWindow = (args: { readonly window: Word }): string => say("why-glue-dots-window", args);
/** {tacks} for tacks, {window} for closure and motifs */
export const whyGlueDotsBoth = (args: { readonly tacks: Word; readonly window: Word }): string => say("why-glue-dots-both", args);
/** {sheet}, 250–300 g/m²: {gauge} for the scoring gauge (one line|{lines} lines) and small pieces */
export const whyCardGauge = (args: { readonly sheet: Word; readonly gauge: Word; readonly lines: number }): string => say("why-card-gauge", args);
/** {sheet}, 250–300 g/m²: {gauge} for the scoring gauge (one line|{lines} lines) and small pieces, {window} for the window and motifs */
export const whyCardWindow = (args: { readonly sheet: Word; readonly gauge: Word; readonly lines: number; readonly window: Word }): string => say("why-card-window", args);
/** {sheet}, clear, 0.2 mm thick, for the glazing */
export const whyAcetate = (args: { readonly sheet: Word }): string => say("why-acetate", args);
/** {sheet} (too small for {parts}) — $sheet is a sheet's name; $parts are parts that it has no room for. */
export const whySheetTooSmall = (args: { readonly sheet: Word; readonly parts: Word }): string => say("why-sheet-too-small", args);
/** at most {diameter} wide and {height} tall; measure it */
export const whyLight = (args: { readonly diameter: Word; readonly height: Word }): string => say("why-light", args);
/** as the light’s maker says; battery door closed with a screw */
export const whyCells = (): string => say("why-cells");
/** twice round the frame ({frame}) */
export const whyTape = (args: { readonly frame: Word }): string => say("why-tape", args);
/** twice round the frame ({frame}), with {waste} for waste */
export const whyTapeWaste = (args: { readonly frame: Word; readonly waste: Word }): string => say("why-tape-waste", args);
/** loop and knot of the closure */
export const whyString = (): string => say("why-string");
/** loop and knot of the closure, with {waste} for waste */
export const whyStringWaste = (args: { readonly waste: Word }): string => say("why-string-waste", args);
/** flat, 12–15 mm wide, for the closure */
export const whyButton = (): string => say("why-button");
/** to press creases and sharpen folds */
export const whyBoneFolder = (): string => say("why-bone-folder");
/** in millimetres */
export const whyRulerMm = (): string => say("why-ruler-mm");
/** in sixteenths or thirty-seconds of an inch */
export const whyRulerIn = (): string => say("why-ruler-in");
/** for the marks */
export const whyPencil = (): string => say("why-pencil");
/** for paper and card */
export const whyGlue = (): string => say("why-glue");
/** behind each tack */
export const whyBakingPaper = (): string => say("why-baking-paper");
/** to prick the gauge’s lines */
export const whyAwl = (): string => say("why-awl");
/** with a cap */
export const whyKnife = (): string => say("why-knife");
/** under and beside every cut */
export const whyMat = (): string => say("why-mat");
/** card, up to {height} in all, to keep the gauge level */
export const whyPacking = (args: { readonly height: Word }): string => say("why-packing", args);
/** {pieces} packing pieces of {piece}, {height} in all, to keep the gauge level */
export const whyPackingPieces = (args: { readonly pieces: Word; readonly piece: Word; readonly height: Word }): string => say("why-packing-pieces", args);
/** Teacher’s packet */
export const teacherOver = (): string => say("teacher-over");
/** {date} · {place} · one seat|{seats} seats, one session|{sessions} sessions */
export const teacherLede = (args: { readonly date: Word; readonly place: Word; readonly seats: number; readonly sessions: number }): string => say("teacher-lede", args);
/** Roster */
export const teacherRoster = (): string => say("teacher-roster");
/** Kit and book */
export const teacherKitHead = (): string => say("teacher-kit-head");
/** Picture leaves */
export const teacherLeavesHead = (): string => say("teacher-leaves-head");
/** Opening */
export const teacherOpeningHead = (): string => say("teacher-opening-head");
/** Hold width */
export const teacherWidthHead = (): string => say("teacher-width-head");
/** {first}–{last} — The first and the last picture leaf. */
export const teacherLeaves = (args: { readonly first: Word; readonly last: Word }): string => say("teacher-leaves", args);
/** Does not fit */
export const teacherNoFit = (): string => say("teacher-no-fit");
/** see below */
export const teacherSeeBelow = (): string => say("teacher-see-below");
/** Work is at the pace of the class, without what is ready beforehand. A kit’s own page and bench give its author’s estimate. */
export const teacherRosterNote = (): string => say("teacher-roster-note");
/** Seat {seat}: {kit} does not fit its book */
export const teacherMisfit = (args: { readonly seat: Word; readonly kit: Word }): string => say("teacher-misfit", args);
/** What would help: */
export const teacherHelp = (): string => say("teacher-help");
/** Will work, but check first */
export const teacherDoubts = (): string => say("teacher-doubts");
/** Seat {seat}. — Stands in bold before what is to be checked at a seat. */
export const teacherSeat = (args: { readonly seat: Word }): string => say("teacher-seat", args);
/** Shopping list */
export const teacherShopping = (): string => say("teacher-shopping");
/** Material */
export const teacherMaterialHead = (): string => say("teacher-material-head");
/** Tool */
export const teacherToolHead = (): string => say("teacher-tool-head");
/** Needed */
export const teacherNeededHead = (): string => say("teacher-needed-head");
/** From stock */
export const teacherStockHead = (): string => say("teacher-stock-head");
/** To buy */
export const teacherBuyHead = (): string => say("teacher-buy-head");
/** To find */
export const teacherFindHead = (): string => say("teacher-find-head");
/** Price */
export const teacherPriceHead = (): string => say("teacher-price-head");
/** {count} {sheet} sheet|{count} {sheet} sheets — Sheets of a size: "4 A4 sheets". */
export const shoppingSheets = (args: { readonly count: number; readonly sheet: Word }): string => say("shopping-sheets", args);
/** {amount} {unit} — A quantity in a unit: "1.9 m", "2 sets", "3 rolls". */
export const shoppingAmount = (args: { readonly amount: Word; readonly unit: Word }): string => say("shopping-amount", args);
/** packed over all seats */
export const shoppingPacked = (): string => say("shopping-packed");
/** too small for {parts} */
export const shoppingTooSmall = (args: { readonly parts: Word }): string => say("shopping-too-small", args);
/** one per seat, measured as in the roster */
export const shoppingBooks = (): string => say("shopping-books");
/** for one seat|for {seats} seats */
export const shoppingSeats = (args: { readonly seats: number }): string => say("shopping-seats", args);
/** {why}; for one seat|{why}; for {seats} seats — $why says which it is: "at most 38 mm wide and 45 mm high; measure it". */
export const shoppingWhy = (args: { readonly seats: number; readonly why: Word }): string => say("shopping-why", args);
/** In stock, not needed here: {items}. */
export const teacherUnused = (args: { readonly items: Word }): string => say("teacher-unused", args);
/** Not in this list: {seats}, whose book does not fit yet. Sort this out first, and build again.|Not in this list: {seats}, whose books do not fit yet. Sort this out first, and build again. — $seats names them: "seat 6" or "seats 2 and 6". */
export const teacherAway = (args: { readonly count: number; readonly seats: Word }): string => say("teacher-away", args);
/** Not in this list: {seats}, whose book is still to come.|Not in this list: {seats}, whose books are still to come. — $seats names them: "seat 6" or "seats 2 and 6". */
export const teacherAwaited = (args: { readonly count: number; readonly seats: Word }): string => say("teacher-awaited", args);
/** Costs */
export const teacherCosts = (): string => say("teacher-costs");
/** Materials that all seats use: {used}. Still to pay, after what is in stock: {toPay}. Only items you have priced count; what printing costs is in the print plan. Sheets are shared out by area, tape and string by length. */
export const teacherCostsText = (args: { readonly used: Word; readonly toPay: Word }): string => say("teacher-costs-text", args);
/** Kit */
export const teacherCostsKitHead = (): string => say("teacher-costs-kit-head");
/** Uses */
export const teacherUses = (): string => say("teacher-uses");
/** Paid — Head of a column of boxes to tick. */
export const teacherPaid = (): string => say("teacher-paid");
/** Preparation, in order */
export const teacherPrepare = (): string => say("teacher-prepare");
/** Measure the book for {seats}, enter it and build again.|Measure the books for {seats}, enter them and build again. — $seats names them: "seat 6" or "seats 2 and 6". */
export const teacherCollect = (args: { readonly count: number; readonly seats: Word }): string => say("teacher-collect", args);
/** Print what the print plan lists, in its order and at 100%. Check the 100 mm bars on the first sheet of each. */
export const teacherPrint = (): string => say("teacher-print");
/** Sort out seat {seat}: {kit} does not fit its book. */
export const teacherSettle = (args: { readonly seat: Word; readonly kit: Word }): string => say("teacher-settle", args);
/** Buy what is on the shopping list. Check the tools: sharp blades, caps on. */
export const teacherBuy = (): string => say("teacher-buy");
/** Buy what is on the shopping list. — Where no seat has a knife. */
export const teacherBuyFolded = (): string => say("teacher-buy-folded");
/** Buy what is on the shopping list. Test every light and screw its battery door shut. */
export const teacherBuyLight = (): string => say("teacher-buy-light");
/** Cut {what} — $what is how many pieces of what: "2 × door, card". */
export const teacherCut = (args: { readonly what: Word }): string => say("teacher-cut", args);
/** {count} × {part}, {material} */
export const teacherPieces = (args: { readonly count: Word; readonly part: Word; readonly material: Word }): string => say("teacher-pieces", args);
/** all seats that fit */
export const teacherAllSeats = (): string => say("teacher-all-seats");
/** {where}; on sheet {names}|{where}; on sheets {names} — $where is for which seats; $names are names of sheets, as their files have them. */
export const teacherOnSheets = (args: { readonly count: number; readonly where: Word; readonly names: Word }): string => say("teacher-on-sheets", args);
/** Print or mark the cut sheets below and lay out their card. Students cut their own parts in class. */
export const teacherLayOut = (): string => say("teacher-lay-out");
/** Print or mark the cut sheets below and lay out their card, acetate and paper. Students cut their own parts in class. */
export const teacherLayOutWindow = (): string => say("teacher-lay-out-window");
/** Press the score lines of every book, as the scoring plan in its packet says. */
export const teacherScores = (): string => say("teacher-scores");
/** Put together a bag for each seat: {things}. — $things is a list of what goes in, from the messages below. */
export const teacherBag = (args: { readonly things: Word }): string => say("teacher-bag", args);
/** packet */
export const teacherBagPacket = (): string => say("teacher-bag-packet");
/** gauge */
export const teacherBagGauge = (): string => say("teacher-bag-gauge");
/** gauge and window parts */
export const teacherBagParts = (): string => say("teacher-bag-parts");
/** sheet for its gauge */
export const teacherBagGaugeSheet = (): string => say("teacher-bag-gauge-sheet");
/** sheets for its gauge and window */
export const teacherBagSheets = (): string => say("teacher-bag-sheets");
/** light with its battery door screwed shut (no loose cells) */
export const teacherBagLight = (): string => say("teacher-bag-light");
/** seat card */
export const teacherBagCard = (): string => say("teacher-bag-card");
/** Lay out the room: a lamp and elbow room for each seat, a mat for each that cuts, and a closed container for old blades. Where a glue gun is used, keep water ready for burns. */
export const teacherRoom = (): string => say("teacher-room");
/** Lay out the room: a lamp and elbow room for each seat. — Where no seat has a knife. */
export const teacherRoomFolded = (): string => say("teacher-room-folded");
/** Set who works without a knife an arm’s length from every blade: {seats}. — Beside seats that cut. $seats: "seat 7", "seats 3 and 7". */
export const teacherRoomApart = (args: { readonly seats: Word }): string => say("teacher-room-apart", args);
/** To cut in class */
export const teacherCutInClass = (): string => say("teacher-cut-in-class");
/** {what}: {where} — What is to be cut, and for which seats: "2 × door, card: seats 2 and 8". */
export const teacherCutFor = (args: { readonly what: Word; readonly where: Word }): string => say("teacher-cut-for", args);
/** Cut sheets of the class */
export const teacherCutSheets = (): string => say("teacher-cut-sheets");
/** {size} {material} — A sheet's size and stuff: "A4 card". */
export const teacherSheet = (args: { readonly size: Word; readonly material: Word }): string => say("teacher-sheet", args);
/** Numbers are seats. The files to cut are in {folder}, each as SVG in mm, SVG at 72 dpi and DXF. — $folder is the name of a folder. */
export const teacherCutNote = (args: { readonly folder: Word }): string => say("teacher-cut-note", args);
/** {kit}: glue needs {all} to dry, {longest} of it in one go. End a session with what must dry. — What lies still beside the work, and the longest of it. */
export const teacherDrying = (args: { readonly kit: Word; readonly all: Word; readonly longest: Word }): string => say("teacher-drying", args);
/** Who may need more time, and what to do */
export const teacherLate = (): string => say("teacher-late");
/** Seat {seat}, {kit}: {minutes} short. */
export const teacherLateSeat = (args: { readonly seat: Word; readonly kit: Word; readonly minutes: Word }): string => say("teacher-late-seat", args);
/** By this estimate, every seat that fits finishes in these sessions. */
export const teacherNoneLate = (): string => say("teacher-none-late");
/** Finish one leaf at home with “Work along”: about {hours}.|Finish {leaves} leaves at home with “Work along”: about {hours}. — “Work along” is the name of a link: class-seat-bench. */
export const remedyLeavesAtHome = (args: { readonly leaves: number; readonly hours: Word }): string => say("remedy-leaves-at-home", args);
/** Press the score lines and fold one leaf at home with “Work along”: about {hours}.|Press the score lines and fold {leaves} leaves at home with “Work along”: about {hours}. */
export const remedyLeavesAndScoresAtHome = (args: { readonly leaves: number; readonly hours: Word }): string => say("remedy-leaves-and-scores-at-home", args);
/** Finish the window at home: about {hours}. */
export const remedyWindowAtHome = (args: { readonly hours: Word }): string => say("remedy-window-at-home", args);
/** Press its score lines before the class. That saves {saves}; the seat is still {missing} short. */
export const remedyScoresBefore = (args: { readonly saves: Word; readonly missing: Word }): string => say("remedy-scores-before", args);
/** Press its score lines before the class. That saves {saves}, enough to finish. */
export const remedyScoresEnough = (args: { readonly saves: Word }): string => say("remedy-scores-enough", args);
/** Cut its window parts before the class. That saves {saves}; the seat is still {missing} short. */
export const remedyPartsBefore = (args: { readonly saves: Word; readonly missing: Word }): string => say("remedy-parts-before", args);
/** Cut its window parts before the class. That saves {saves}, enough to finish. */
export const remedyPartsEnough = (args: { readonly saves: Word }): string => say("remedy-parts-enough", args);
/** Do both. The seat is still {missing} short. — Both of the two before. */
export const remedyBothBefore = (args: { readonly missing: Word }): string => say("remedy-both-before", args);
/** Do both. That is enough to finish. */
export const remedyBothEnough = (): string => say("remedy-both-enough");
/** Make {kit} instead. It fits this book and would be finished in time. */
export const remedyShorterKit = (args: { readonly kit: Word }): string => say("remedy-shorter-kit", args);
/** Add a session like the last one.|Add {sessions} sessions like the last one. */
export const remedyMoreSessions = (args: { readonly sessions: number }): string => say("remedy-more-sessions", args);
/** Every seat’s book, to write down */
export const teacherMeasures = (): string => say("teacher-measures");
/** Write at the table, in {unit}, and put the rows into the table of books. There, write the unit behind each inch figure (6 in); a bare figure is millimetres. The measuring card says how to measure. */
export const teacherMeasuresText = (args: { readonly unit: Word }): string => say("teacher-measures-text", args);
/** Supervision list */
export const teacherSupervision = (): string => say("teacher-supervision");
/** The rules of your house come first; this list helps you keep count. Tick each box at the table, out and back. */
export const teacherSupervisionText = (): string => say("teacher-supervision-text");
/** No seat of this class has a knife, so there is nothing to count out and back. — In place of that text and its lists where no seat has a knife. */
export const teacherNoKnives = (): string => say("teacher-no-knives");
/** Knife out — Names of rows: up to about 24 letters keep to one line. */
export const teacherKnifeOut = (): string => say("teacher-knife-out");
/** Knife back, capped */
export const teacherKnifeBack = (): string => say("teacher-knife-back");
/** Cells in, door screwed */
export const teacherCellsIn = (): string => say("teacher-cells-in");
/** Cells counted back */
export const teacherCellsBack = (): string => say("teacher-cells-back");
/** Out/back: knives ____/____ · new blades ____ · old blades in the container ____ · glue guns cold {box} — Underscores are room to write; $box is a box to tick. */
export const teacherCounts = (args: { readonly box: Word }): string => say("teacher-counts", args);
/** Out/back: knives ____/____ · cells ____/____ · new blades ____ · old blades in the container ____ · glue guns cold {box} */
export const teacherCountsLight = (args: { readonly box: Word }): string => say("teacher-counts-light", args);
/** What goes home unfinished goes without loose blades or cells. A light that goes home keeps its cells behind the screwed door and counts as out until it is back: seats ____________________. Anyone carrying on at home works beside a competent adult where the cautions above ask for one. */
export const teacherHome = (): string => say("teacher-home");
/** Handout · {class} */
export const teacherHandout = (args: { readonly class: Word }): string => say("teacher-handout", args);
/** {kit}: the steps */
export const teacherSteps = (args: { readonly kit: Word }): string => say("teacher-steps", args);
/** {title}. — A step's or a caution's title in bold, before its sentence. */
export const teacherHandoutTitle = (args: { readonly title: Word }): string => say("teacher-handout-title", args);
/** Done for you before the class. */
export const teacherDone = (): string => say("teacher-done");
/** Your own leaves, marks and widths are in your packet. Stop after every batch, and compare at every checkpoint. */
export const teacherHandoutFoot = (): string => say("teacher-handout-foot");
/** Seat cards */
export const teacherCards = (): string => say("teacher-cards");
/** Seat cards, continued */
export const teacherCardsMore = (): string => say("teacher-cards-more");
/** This site has no address yet, so there is no code. */
export const teacherNoCode = (): string => say("teacher-no-code");
/** Measuring card · {class} */
export const cardOver = (args: { readonly class: Word }): string => say("card-over", args);
/** Measure your book */
export const cardHeading = (): string => say("card-heading");
/** Seat — Before room to write the seat's number. */
export const cardSeat = (): string => say("card-seat");
/** A ruler at true scale: centimetres above, inches below. Cut along its upper line. */
export const cardRuler = (): string => say("card-ruler");
/** Print at “actual size” or 100% and check the ruler against another: 10 cm must be {least} to {most} mm. If a leaf is longer, make a pencil mark and go on from it. Then type height, width, thickness and leaves on the class’s page, which tells you at once whether the book fits. The kit’s page takes the rest. */
export const cardNote = (args: { readonly least: Word; readonly most: Word }): string => say("card-note", args);
/** {seats}: {part} — A part of one seat, or a gauge of several; $seats: "seat 2" or "seats 1, 3 and 4". */
export const sheetPart = (args: { readonly seats: Word; readonly part: Word }): string => say("sheet-part", args);
/** {seats} {part} — The same in short, on the part in the drawing; $seats is "2" or "1, 3, 4". */
export const sheetPartShort = (args: { readonly seats: Word; readonly part: Word }): string => say("sheet-part-short", args);
/** {first} and {more} more — On a part of many seats: the number of the first, and how many others. */
export const sheetSeatsMany = (args: { readonly first: Word; readonly more: Word }): string => say("sheet-seats-many", args);
/** Sheet {name}, {width} × {height} mm: {parts} — $name is the name of the sheet's files, $parts a list of sheet-part. */
export const sheetLabel = (args: { readonly name: Word; readonly width: Word; readonly height: Word; readonly parts: Word }): string => say("sheet-label", args);
/** {class}: {material}, {size} sheet {number}: {parts} */
export const sheetTitle = (args: { readonly class: Word; readonly material: Word; readonly size: Word; readonly number: Word; readonly parts: Word }): string => say("sheet-title", args);
/** Leaflight class {class}; parts of all seats; layers: {layers} — In the file's description; $layers are names in the file. */
export const sheetAbout = (args: { readonly class: Word; readonly layers: Word }): string => say("sheet-about", args);
/** mm */
export const unitMm = (): string => say("unit-mm");
/** {degrees}° */
export const unitDegree = (args: { readonly degrees: Word }): string => say("unit-degree", args);
/** {share}% */
export const unitPercent = (args: { readonly share: Word }): string => say("unit-percent", args);
/** base frame */
export const partBaseFrame = (): string => say("part-base-frame");
/** glazing */
export const partGlazing = (): string => say("part-glazing");
/** door */
export const partDoor = (): string => say("part-door");
/** closure tab */
export const partClosureTab = (): string => say("part-closure-tab");
/** decoration guide */
export const partDecorationGuide = (): string => say("part-decoration-guide");
/** holder */
export const partHolder = (): string => say("part-holder");
/** scoring gauge */
export const partScoringGauge = (): string => say("part-scoring-gauge");
/** corner gauge */
export const partCornerGauge = (): string => say("part-corner-gauge");
/** folding card */
export const partFoldingCard = (): string => say("part-folding-card");
/** motif {name} — $name is the motif's own name, in its author's words. */
export const partMotif = (args: { readonly name: Word }): string => say("part-motif", args);
/** glued to the front tips of the leaves */
export const useBaseFrame = (): string => say("use-base-frame");
/** glued behind the door, {lip} inside its edge */
export const useGlazing = (args: { readonly lip: Word }): string => say("use-glazing", args);
/** hangs over the base frame; its flap folds back under it */
export const useDoor = (): string => say("use-door");
/** takes the string through its hole; the loop goes round the button */
export const useClosureTab = (): string => say("use-closure-tab");
/** lies under the glazing while you place the motifs */
export const useDecorationGuide = (): string => say("use-decoration-guide");
/** its slots go over the first and last picture leaf at the head, just behind their folded edges */
export const useHolder = (): string => say("use-holder");
/** the packet’s gauge is printed on it, or pricked through to it */
export const useScoringGauge = (): string => say("use-scoring-gauge");
/** corners are folded over its slanted side */
export const useCornerGauge = (): string => say("use-corner-gauge");
/** leaves that show nothing are folded over it */
export const useFoldingCard = (): string => say("use-folding-card");
/** set on the window, in front of the light */
export const useLargestMotif = (): string => say("use-largest-motif");
/** set on the window where its figure shows */
export const useMotif = (): string => say("use-motif");
/** closure tab behind here */
export const markTabBehind = (): string => say("mark-tab-behind");
/** button */
export const markButton = (): string => say("mark-button");
/** glue this end behind the base frame */
export const markGlueBehindFrame = (): string => say("mark-glue-behind-frame");
/** the light stands behind */
export const markLightHere = (): string => say("mark-light-here");
/** first picture leaf */
export const markFirstPictureLeaf = (): string => say("mark-first-picture-leaf");
/** last picture leaf */
export const markLastPictureLeaf = (): string => say("mark-last-picture-leaf");
/** card */
export const materialCard = (): string => say("material-card");
/** acetate */
export const materialAcetate = (): string => say("material-acetate");
/** paper */
export const materialPaper = (): string => say("material-paper");
