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
/** Kits */
export const catalogueKits = (): string => say("catalogue-kits");
/** Classes */
export const catalogueClasses = (): string => say("catalogue-classes");
/** {count} level|{count} levels — On a kit's card. */
export const catalogueLevels = (args: { readonly count: number }): string => say("catalogue-levels", args);
/** {count} leaf|{count} leaves */
export const catalogueLeaves = (args: { readonly count: number }): string => say("catalogue-leaves", args);
/** about {hours} */
export const catalogueHours = (args: { readonly hours: Word }): string => say("catalogue-hours", args);
/** {date} · {place} — A class's day and place. */
export const catalogueClass = (args: { readonly date: Word; readonly place: Word }): string => say("catalogue-class", args);
/** There is no kit yet. Make a folder under {folder} with {file} and a picture; the README says what goes into it. — Told to the site's author; both arguments are names of files. */
export const catalogueEmpty = (args: { readonly folder: Word; readonly file: Word }): string => say("catalogue-empty", args);
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
/** For the teacher */
export const classTeacher = (): string => say("class-teacher");
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
/** Worked out from each book’s leaves, cuts and folds, and from the group’s pace. It is a guide: nobody has to keep up with it. */
export const classScheduleNote = (): string => say("class-schedule-note");
/** Pattern */
export const classSeatPattern = (): string => say("class-seat-pattern");
/** Work along */
export const classSeatBench = (): string => say("class-seat-bench");
/** Packet */
export const classSeatPacket = (): string => say("class-seat-packet");
/** Does not fit yet: {help} — $help is a link, class-seat-help. */
export const classSeatMisfit = (args: { readonly help: Word }): string => say("class-seat-misfit", args);
/** what would help */
export const classSeatHelp = (): string => say("class-seat-help");
/** Seats have numbers only. Nothing about anyone is kept here. */
export const classSeatsNote = (): string => say("class-seats-note");
/** Teacher’s packet */
export const classTeacherPacket = (): string => say("class-teacher-packet");
/** All seats’ packets, to print */
export const classAllPackets = (): string => say("class-all-packets");
/** Roster, shopping list, costs, preparation, cut sheets, schedule, supervision list, handouts and seat cards. {read}. — $read is a link, class-teacher-read. */
export const classTeacherText = (args: { readonly read: Word }): string => say("class-teacher-text", args);
/** Read it here */
export const classTeacherRead = (): string => say("class-teacher-read");
/** Cut files for the whole class: {files} (SVG in mm; DXF and 72 dpi beside them). — $files is a list of links. */
export const classCutFiles = (args: { readonly files: Word }): string => say("class-cut-files", args);
/** {class}: teacher’s packet — Titles of files. */
export const classTeacherTitle = (args: { readonly class: Word }): string => say("class-teacher-title", args);
/** {class}: measuring card */
export const classCardTitle = (args: { readonly class: Word }): string => say("class-card-title", args);
/** {class}: packets of all seats */
export const classPacketsTitle = (args: { readonly class: Word }): string => say("class-packets-title", args);
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
/** Work */
export const seatWork = (): string => say("seat-work");
/** {difficulty}; a guide, at the class’s pace — $difficulty is easy, moderate or demanding. */
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
/** At the end of each session */
export const seatReaches = (): string => say("seat-reaches");
/** This piece needs {minutes} more than the sessions allow. Your teacher has a list of what can be done about it. */
export const seatShort = (args: { readonly minutes: Word }): string => say("seat-short", args);
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
/** The level “{level}” is {depth} deep, so its flap reaches {reach} inward. The leaf is {leafWidth} wide, and {clearance} must stay free at the gutter. */
export const failFlapInGutterWhy = (args: { readonly level: Word; readonly depth: Word; readonly reach: Word; readonly leafWidth: Word; readonly clearance: Word }): string => say("fail-flap-in-gutter-why", args);
/** level "{level}" is {depth} deep, its flap reaches {reach} inward */
export const failFlapInGutterGiven = (args: { readonly level: Word; readonly depth: Word; readonly reach: Word }): string => say("fail-flap-in-gutter-given", args);
/** leaf width {leafWidth} less {clearance} clearance at the gutter */
export const failFlapInGutterAllowed = (args: { readonly leafWidth: Word; readonly clearance: Word }): string => say("fail-flap-in-gutter-allowed", args);
/** the deepest fold possible is {deepest} (stepped folds|single folds) */
export const failFlapInGutterDoAuthor = (args: { readonly deepest: Word; readonly style: Word }): string => say("fail-flap-in-gutter-do-author", args);
/** The deepest fold possible is {deepest}. Make the levels shallower, or choose a wider book. */
export const failFlapInGutterDoReader = (args: { readonly deepest: Word }): string => say("fail-flap-in-gutter-do-reader", args);
/** The deepest fold possible is {deepest}: lower this seat’s depths, or give it a wider book. */
export const failFlapInGutterDoTeacher = (args: { readonly deepest: Word }): string => say("fail-flap-in-gutter-do-teacher", args);
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
/** The picture would end {end} from the head. The leaf is {leafHeight} high. */
export const failPictureOffLeafWhy = (args: { readonly end: Word; readonly leafHeight: Word }): string => say("fail-picture-off-leaf-why", args);
/** head {head} + height {height} (solved)| */
export const failPictureOffLeafGiven = (args: { readonly head: Word; readonly height: Word; readonly solved: Word }): string => say("fail-picture-off-leaf-given", args);
/** the leaf is {leafHeight} high */
export const failPictureOffLeafAllowed = (args: { readonly leafHeight: Word }): string => say("fail-picture-off-leaf-allowed", args);
/** lower the opening or use fewer picture leaves until the height is at most {room}, or choose a taller book|lower the height to at most {room} or the head|, or choose a taller book */
export const failPictureOffLeafDoAuthor = (args: { readonly solved: Word; readonly room: Word; readonly stated: Word }): string => say("fail-picture-off-leaf-do-author", args);
/** Make the picture at most {room} tall, or choose a taller book. */
export const failPictureOffLeafDoReader = (args: { readonly room: Word }): string => say("fail-picture-off-leaf-do-reader", args);
/** Set this seat’s height to at most {room}, or give it a taller book. */
export const failPictureOffLeafDoTeacher = (args: { readonly room: Word }): string => say("fail-picture-off-leaf-do-teacher", args);
/** A picture {height} tall is {width} wide. Even closed, {leaves} picture leaves of this book are {least} thick. */
export const failPictureTooNarrowWhy = (args: { readonly height: Word; readonly width: Word; readonly leaves: Word; readonly least: Word }): string => say("fail-picture-too-narrow-why", args);
/** a picture {height} high is {width} wide */
export const failPictureTooNarrowGiven = (args: { readonly height: Word; readonly width: Word }): string => say("fail-picture-too-narrow-given", args);
/** even closed, {leaves} picture leaves of this book are {least} thick */
export const failPictureTooNarrowAllowed = (args: { readonly leaves: Word; readonly least: Word }): string => say("fail-picture-too-narrow-allowed", args);
/** raise the height to at least {leastHeight} or use fewer picture leaves */
export const failPictureTooNarrowDoAuthor = (args: { readonly leastHeight: Word }): string => say("fail-picture-too-narrow-do-author", args);
/** Make the picture at least {leastHeight} tall, or fold more leaves as borders. */
export const failPictureTooNarrowDoReader = (args: { readonly leastHeight: Word }): string => say("fail-picture-too-narrow-do-reader", args);
/** Set this seat’s height to at least {leastHeight}, or raise its borderBefore and borderAfter. */
export const failPictureTooNarrowDoTeacher = (args: { readonly leastHeight: Word }): string => say("fail-picture-too-narrow-do-teacher", args);
/** A picture {height} tall is {width} wide. Opened to {widest}, {leaves} picture leaves of this book fill only {most}. */
export const failPictureTooWideWhy = (args: { readonly height: Word; readonly width: Word; readonly widest: Word; readonly leaves: Word; readonly most: Word }): string => say("fail-picture-too-wide-why", args);
/** a picture {height} high is {width} wide */
export const failPictureTooWideGiven = (args: { readonly height: Word; readonly width: Word }): string => say("fail-picture-too-wide-given", args);
/** at {widest} this book can show at most {most} with {leaves} picture leaves */
export const failPictureTooWideAllowed = (args: { readonly widest: Word; readonly most: Word; readonly leaves: Word }): string => say("fail-picture-too-wide-allowed", args);
/** lower the height to {mostHeight}, or use {enough} picture leaves (smaller borders)|lower the height to {mostHeight}, or choose a book with more or wider leaves */
export const failPictureTooWideDoAuthor = (args: { readonly help: Word; readonly mostHeight: Word; readonly enough: Word }): string => say("fail-picture-too-wide-do-author", args);
/** Make the picture {mostHeight} tall, or fold fewer border leaves, so that {enough} leaves carry it.|Make the picture {mostHeight} tall, or choose a book with more or wider leaves. */
export const failPictureTooWideDoReader = (args: { readonly help: Word; readonly mostHeight: Word; readonly enough: Word }): string => say("fail-picture-too-wide-do-reader", args);
/** Set this seat’s height to {mostHeight}, or lower its borderBefore and borderAfter, so that {enough} leaves carry the picture.|Set this seat’s height to {mostHeight}, or give it a book with more or wider leaves. */
export const failPictureTooWideDoTeacher = (args: { readonly help: Word; readonly mostHeight: Word; readonly enough: Word }): string => say("fail-picture-too-wide-do-teacher", args);
/** A picture {height} tall is {width} wide. At {opening}, the {leaves} leaves between the borders fill only {most}. */
export const failLeavesShowTooLittleWhy = (args: { readonly height: Word; readonly width: Word; readonly opening: Word; readonly leaves: Word; readonly most: Word }): string => say("fail-leaves-show-too-little-why", args);
/** a picture {height} high and {width} wide at {opening} */
export const failLeavesShowTooLittleGiven = (args: { readonly height: Word; readonly width: Word; readonly opening: Word }): string => say("fail-leaves-show-too-little-given", args);
/** the {leaves} leaves between the borders fill only {most} */
export const failLeavesShowTooLittleAllowed = (args: { readonly leaves: Word; readonly most: Word }): string => say("fail-leaves-show-too-little-allowed", args);
/** open the book to {openingNeeded}, or lower the height to {mostHeight}, or choose a book with more leaves|lower the height to {mostHeight}, or choose a book with more leaves */
export const failLeavesShowTooLittleDoAuthor = (args: { readonly help: Word; readonly openingNeeded: Word; readonly mostHeight: Word }): string => say("fail-leaves-show-too-little-do-author", args);
/** Open the book to {openingNeeded}, make the picture {mostHeight} tall, or choose a book with more leaves.|Make the picture {mostHeight} tall, or choose a book with more leaves. */
export const failLeavesShowTooLittleDoReader = (args: { readonly help: Word; readonly openingNeeded: Word; readonly mostHeight: Word }): string => say("fail-leaves-show-too-little-do-reader", args);
/** Set this seat’s height to {mostHeight}, or give it a book with more leaves. */
export const failLeavesShowTooLittleDoTeacher = (args: { readonly mostHeight: Word }): string => say("fail-leaves-show-too-little-do-teacher", args);
/** Leaf {leaf} carries no picture: the picture leaves run from {first} to {last}. */
export const failLostLeafOutsideWhy = (args: { readonly leaf: Word; readonly first: Word; readonly last: Word }): string => say("fail-lost-leaf-outside-why", args);
/** leaf {leaf} */
export const failLostLeafOutsideGiven = (args: { readonly leaf: Word }): string => say("fail-lost-leaf-outside-given", args);
/** picture leaves are {first} to {last} */
export const failLostLeafOutsideAllowed = (args: { readonly first: Word; readonly last: Word }): string => say("fail-lost-leaf-outside-allowed", args);
/** a lost border leaf changes nothing in the picture: leave it out of the list */
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
/** begin again with another book */
export const failTooFewRemainDoAuthor = (): string => say("fail-too-few-remain-do-author");
/** Begin again with another book. */
export const failTooFewRemainDoReader = (): string => say("fail-too-few-remain-do-reader");
/** Begin again with another book. */
export const failTooFewRemainDoTeacher = (): string => say("fail-too-few-remain-do-teacher");
/** A light {diameter} wide and {height} high with {clearance} of free space does not fit: {obstacle}. */
export const failNoRoomForLightWhy = (args: { readonly diameter: Word; readonly height: Word; readonly clearance: Word; readonly obstacle: Word }): string => say("fail-no-room-for-light-why", args);
/** a light {diameter} wide and {height} high with {clearance} clearance: {obstacle} */
export const failNoRoomForLightGiven = (args: { readonly diameter: Word; readonly height: Word; readonly clearance: Word; readonly obstacle: Word }): string => say("fail-no-room-for-light-given", args);
/** the largest that can stand here: one of {height} height may be {mostDiameter} wide, or one of {diameter} width may be {mostHeight} high|the largest that can stand here: one of {height} height may be {mostDiameter} wide|the largest that can stand here: one of {diameter} width may be {mostHeight} high|no light of this width or height can stand in "{level}" — $choice says which of the two largest lights there are: both, only a width, only a height, or none. */
export const failNoRoomForLightAllowed = (args: { readonly choice: Word; readonly height: Word; readonly mostDiameter: Word; readonly diameter: Word; readonly mostHeight: Word; readonly level: Word }): string => say("fail-no-room-for-light-allowed", args);
/** choose another region for light.in, a larger picture or a wider book|choose a smaller light, a larger picture or a wider region */
export const failNoRoomForLightDoAuthor = (args: { readonly choice: Word }): string => say("fail-no-room-for-light-do-author", args);
/** Here, a light {height} high may be up to {mostDiameter} wide, or one {diameter} wide up to {mostHeight} high. Or make the picture larger.|Here, a light {height} high may be up to {mostDiameter} wide. Or make the picture larger.|Here, a light {diameter} wide may be up to {mostHeight} high. Or make the picture larger.|No light of this width or height has room here. Make the picture larger, or choose a wider book. */
export const failNoRoomForLightDoReader = (args: { readonly choice: Word; readonly height: Word; readonly mostDiameter: Word; readonly diameter: Word; readonly mostHeight: Word }): string => say("fail-no-room-for-light-do-reader", args);
/** Give this seat a light up to {mostDiameter} wide (light: diameter), or up to {mostHeight} high (light: height), or raise its height.|Give this seat a light up to {mostDiameter} wide (light: diameter), or raise its height.|Give this seat a light up to {mostHeight} high (light: height), or raise its height.|Raise this seat’s height, or give it a wider book. */
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
/** raise the setback by {more} */
export const failLightNearWindowDoAuthor = (args: { readonly more: Word }): string => say("fail-light-near-window-do-author", args);
/** Use a narrower light. */
export const failLightNearWindowDoReader = (): string => say("fail-light-near-window-do-reader");
/** Give this seat a narrower light (light: diameter). */
export const failLightNearWindowDoTeacher = (): string => say("fail-light-near-window-do-teacher");
/** The level “{level}”, which the window follows, cannot be seen in the picture. */
export const failOutlineHiddenWhy = (args: { readonly level: Word }): string => say("fail-outline-hidden-why", args);
/** "{level}" shows nowhere in the picture */
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
/** a lip of at most {most} for "{level}"|"{level}" takes a lip of {most} at the most, and {least} is the least that holds */
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
/** The folded flaps will push the book open to about {resting}. The picture has its true shape at {opening}. Press the folds well, and tie the book while it settles. Shallower levels, fewer folded leaves or a taller picture would help. */
export const doubtSpringsOpen = (args: { readonly resting: Word; readonly opening: Word }): string => say("doubt-springs-open", args);
/** The folded flaps will push the book open all the way round. The picture has its true shape at {opening}. Shallower levels, fewer folded leaves or a taller picture would help. */
export const doubtSpringsOpenRound = (args: { readonly opening: Word }): string => say("doubt-springs-open-round", args);
/** Only {leaves} leaves carry the picture. Each step is {column} wide, so curves look jagged and smaller details are lost. A book with more leaves, or a smaller picture, would help. */
export const doubtCoarse = (args: { readonly leaves: Word; readonly column: Word }): string => say("doubt-coarse", args);
/** The picture comes out {percent} wider than drawn. */
export const doubtWiderThanDrawn = (args: { readonly percent: Word }): string => say("doubt-wider-than-drawn", args);
/** The picture comes out {percent} narrower than drawn. */
export const doubtNarrowerThanDrawn = (args: { readonly percent: Word }): string => say("doubt-narrower-than-drawn", args);
/** Let one of height, opening and pictureLeaves be "solve" to keep its shape. */
export const doubtOutOfShapeDoAuthor = (): string => say("doubt-out-of-shape-do-author");
/** Where the light stands, “{level}” is only {width} wide at its narrowest, and the light needs {need}. Paper beside the level is cut away too. */
export const doubtNarrowFloor = (args: { readonly level: Word; readonly width: Word; readonly need: Word }): string => say("doubt-narrow-floor", args);
/** floor: auto looks for a wide enough place. */
export const doubtNarrowFloorDoAuthor = (): string => say("doubt-narrow-floor-do-author");
/** The light is {diameter} wide and the window’s hole {width} × {height}: the light is too wide to go in. Use a narrower light, or a larger hole. */
export const doubtLightWiderThanHole = (args: { readonly diameter: Word; readonly width: Word; readonly height: Word }): string => say("doubt-light-wider-than-hole", args);
/** The last {missing} of “{level}” at the side will look too deep, or vanish: its folds cannot reach so far out. */
export const doubtLevelOutOfReach = (args: { readonly missing: Word; readonly level: Word }): string => say("doubt-level-out-of-reach", args);
/** One strip was shorter than {leastTab}, too short to fold, and was merged with the next.|{spans} strips on one leaf|{leaves} leaves were shorter than {leastTab}, too short to fold, and were merged with the next. */
export const doubtMergedSpans = (args: { readonly spans: number; readonly leastTab: Word; readonly leaves: number }): string => say("doubt-merged-spans", args);
/** One leaf stays unfolded after the last border leaf, so the picture sits off-centre. Fold {before} leaves before and {after} after to centre it.|{unfolded} leaves stay unfolded after the last border leaf, so the picture sits off-centre. Fold {before} leaves before and {after} after to centre it. */
export const doubtOffCentre = (args: { readonly unfolded: number; readonly before: Word; readonly after: Word }): string => say("doubt-off-centre", args);
/** In the front matter: borderLeaves: [{before}, {after}]. */
export const doubtOffCentreDoAuthor = (args: { readonly before: Word; readonly after: Word }): string => say("doubt-off-centre-do-author", args);
/** Make the picture {height} tall */
export const offerHeight = (args: { readonly height: Word }): string => say("offer-height", args);
/** Open the book to {opening} */
export const offerOpening = (args: { readonly opening: Word }): string => say("offer-opening", args);
/** Fold {before} border leaves before and {after} after */
export const offerBorders = (args: { readonly before: Word; readonly after: Word }): string => say("offer-borders", args);
/** Make the levels shallower: {depths} */
export const offerDepths = (args: { readonly depths: Word }): string => say("offer-depths", args);
/** Use stepped folds|Use single folds */
export const offerFolds = (args: { readonly style: Word }): string => say("offer-folds", args);
/** Use a light {diameter} wide */
export const offerLightWidth = (args: { readonly diameter: Word }): string => say("offer-light-width", args);
/** Use a light {height} high */
export const offerLightHeight = (args: { readonly height: Word }): string => say("offer-light-height", args);
/** Choose a book with at least {leaves} leaves of this paper ({thickness} thick) */
export const offerBookLeast = (args: { readonly leaves: Word; readonly thickness: Word }): string => say("offer-book-least", args);
/** Choose a book with at most {leaves} leaves of this paper ({thickness} thick) */
export const offerBookMost = (args: { readonly leaves: Word; readonly thickness: Word }): string => say("offer-book-most", args);
/** {first}; also: {more} — Two changes that go together: $first is a whole offer from above, $more the second one with a small letter. */
export const offerBoth = (args: { readonly first: Word; readonly more: Word }): string => say("offer-both", args);
/** {offer}. Its flaps will push this book open beyond flat */
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
/** All leaves pressed under a board, without the book’s own boards, measured at the fore-edge. */
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
/** Unnumbered leaves between the pages, as page × leaves: 192 × 4, 300 × 2. Empty where there are none. */
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
/** Single: fold each strip once. Stepped: fold the whole leaf at the front line first. */
export const fitHelpFoldStyle = (): string => say("fit-help-fold-style");
/** Mark step */
export const fitFieldMarkStep = (): string => say("fit-field-mark-step");
/** The finest step on your ruler: 0.5 mm, 1 mm, 1/32 in, 1/16 in. */
export const fitHelpMarkStep = (): string => say("fit-help-mark-step");
/** Light width */
export const fitFieldLightDiameter = (): string => say("fit-field-light-diameter");
/** Your LED light at its widest. */
export const fitHelpLightDiameter = (): string => say("fit-help-light-diameter");
/** Light height */
export const fitFieldLightHeight = (): string => say("fit-field-light-height");
/** With its tip. */
export const fitHelpLightHeight = (): string => say("fit-help-light-height");
/** left to right */
export const fitOptionLtr = (): string => say("fit-option-ltr");
/** right to left */
export const fitOptionRtl = (): string => say("fit-option-rtl");
/** single */
export const fitOptionSingle = (): string => say("fit-option-single");
/** stepped */
export const fitOptionStepped = (): string => say("fit-option-stepped");
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
/** page × leaves, separated by commas: 192 × 4, 300 × 2 */
export const fitAllowedPlates = (): string => say("fit-allowed-plates");
/** two whole numbers: 12, 12 */
export const fitAllowedBorders = (): string => say("fit-allowed-borders");
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
/** The two stiff covers of the book. */
export const termBoardsMeaning = (): string => say("term-boards-meaning");
/** caliper */
export const termCaliper = (): string => say("term-caliper");
/** caliper */
export const termCaliperForms = (): string => say("term-caliper-forms");
/** The thickness of one leaf: the thickness of all leaves, pressed, divided by their number. */
export const termCaliperMeaning = (): string => say("term-caliper-meaning");
/** level */
export const termLevel = (): string => say("term-level");
/** level|levels */
export const termLevelForms = (): string => say("term-level-forms");
/** A depth of the picture. Level 1 stands proudest, nearest to you; the others lie further back. */
export const termLevelMeaning = (): string => say("term-level-meaning");
/** background */
export const termBackground = (): string => say("term-background");
/** background */
export const termBackgroundForms = (): string => say("term-background-forms");
/** The level that stands where the picture has no shape. */
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
/** mark|marks */
export const termMarkForms = (): string => say("term-mark-forms");
/** A pencil point on a leaf, measured from the head, where a cut begins. */
export const termMarkMeaning = (): string => say("term-mark-meaning");
/** cut */
export const termCut = (): string => say("term-cut");
/** cut|cuts */
export const termCutForms = (): string => say("term-cut-forms");
/** A slit from the fore-edge inward, square to it, that frees neighbouring strips from each other. */
export const termCutMeaning = (): string => say("term-cut-meaning");
/** strip */
export const termStrip = (): string => say("term-strip");
/** strip|strips */
export const termStripForms = (): string => say("term-strip-forms");
/** A stretch of one leaf at one level, between two cuts. It is folded as one flap. */
export const termStripMeaning = (): string => say("term-strip-meaning");
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
/** Card or pieces of one’s own under the lower side of the book, so that the gauge lies level. */
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
/** A silhouette of card that decorates the window. The largest one covers the light. */
export const termMotifMeaning = (): string => say("term-motif-meaning");
/** packet */
export const termPacket = (): string => say("term-packet");
/** packet */
export const termPacketForms = (): string => say("term-packet-forms");
/** The printed kit: table, gauge, strips and templates at true scale. */
export const termPacketMeaning = (): string => say("term-packet-meaning");
/** {hours} h */
export const hoursOnly = (args: { readonly hours: Word }): string => say("hours-only", args);
/** {minutes} min */
export const hoursMinutesOnly = (args: { readonly minutes: Word }): string => say("hours-minutes-only", args);
/** {hours} h {minutes} min */
export const hoursAndMinutes = (args: { readonly hours: Word; readonly minutes: Word }): string => say("hours-and-minutes", args);
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
/** {title}: packet */
export const packetTitle = (args: { readonly title: Word }): string => say("packet-title", args);
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
/** How to read a row of the pattern table */
export const packetReading = (): string => say("packet-reading");
/** Scoring gauge, true scale */
export const packetGauge = (): string => say("packet-gauge");
/** Scoring gauge at true scale, with a line for each of the kit’s distances from the fore-edge */
export const packetGaugeAlt = (): string => say("packet-gauge-alt");
/** Merged strips */
export const packetMerged = (): string => say("packet-merged");
/** Too short to fold, so each was merged with the neighbour whose depth is nearest: leaf, from–to, level into level. */
export const packetMergedText = (): string => say("packet-merged-text");
/** leaf {leaf}: {place}, {level} into {into} */
export const packetMergedStrip = (args: { readonly leaf: Word; readonly place: Word; readonly level: Word; readonly into: Word }): string => say("packet-merged-strip", args);
/** Marking strips, true scale: leaves {first} to {last} */
export const packetStrips = (args: { readonly first: Word; readonly last: Word }): string => say("packet-strips", args);
/** Marking strips, true scale: leaves {first} to {last}, part {part} of {parts} */
export const packetStripsPart = (args: { readonly first: Word; readonly last: Word; readonly part: Word; readonly parts: Word }): string => say("packet-strips-part", args);
/** Marking strips for leaves {first} to {last} at true scale */
export const packetStripsAlt = (args: { readonly first: Word; readonly last: Word }): string => say("packet-strips-alt", args);
/** Templates, true scale: {parts} */
export const packetTemplates = (args: { readonly parts: Word }): string => say("packet-templates", args);
/** Templates at true scale: {parts} */
export const packetTemplatesAlt = (args: { readonly parts: Word }): string => say("packet-templates-alt", args);
/** {title}: pattern table */
export const packetLargeHeading = (args: { readonly title: Word }): string => say("packet-large-heading", args);
/** continued, sheet {sheet} of {sheets} */
export const packetTableContinued = (args: { readonly sheet: Word; readonly sheets: Word }): string => say("packet-table-continued", args);
/** Marks from the head in {units}; ›cut from the fore-edge. Levels: {levels}. — Above the table; $levels is a list. */
export const packetTableText = (args: { readonly units: Word; readonly levels: Word }): string => say("packet-table-text", args);
/** Marks from the head in {units}; ›cut from the folded edge (after the whole leaf is folded at the {level} line). Levels: {levels}. */
export const packetTableTextStepped = (args: { readonly units: Word; readonly level: Word; readonly levels: Word }): string => say("packet-table-text-stepped", args);
/** {number} {name} */
export const packetTableLevel = (args: { readonly number: Word; readonly name: Word }): string => say("packet-table-level", args);
/** {number} {name} (line {line}) */
export const packetTableLevelLine = (args: { readonly number: Word; readonly name: Word; readonly line: Word }): string => say("packet-table-level-line", args);
/** Done */
export const packetTableDone = (): string => say("packet-table-done");
/** Folds, head to tail */
export const packetTableFolds = (): string => say("packet-table-folds");
/** notch {notch} */
export const packetTableNotch = (args: { readonly notch: Word }): string => say("packet-table-notch", args);
/** Check: {leaves} leaf|{leaves} leaves and {cuts} cut|{cuts} cuts on this sheet, {sofar} of {all} cuts so far. */
export const packetTableCheck = (args: { readonly leaves: number; readonly cuts: number; readonly sofar: Word; readonly all: Word }): string => say("packet-table-check", args);
/** Last row: leaf {leaf} ends the pattern. */
export const packetTableLast = (args: { readonly leaf: Word }): string => say("packet-table-last", args);
/** Shaded rows are checkpoints. */
export const packetTableShaded = (): string => say("packet-table-shaded");
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
/** This kit does not fit the book in this address: {given}; {allowed}. Go back to the kit’s page and choose one of its offers. — Told in the browser where the book in the address does not fit. */
export const packetMisfit = (args: { readonly given: Word; readonly allowed: Word }): string => say("packet-misfit", args);
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
/** {class}, seat {seat}: {kit} does not fit its book. {why} What would help: */
export const reportMisfit = (args: { readonly class: Word; readonly seat: Word; readonly kit: Word; readonly why: Word }): string => say("report-misfit", args);
/**   - {help} */
export const reportHelp = (args: { readonly help: Word }): string => say("report-help", args);
/** warning  {class}, seat {seat}: {doubt} */
export const reportDoubt = (args: { readonly class: Word; readonly seat: Word; readonly doubt: Word }): string => say("report-doubt", args);
/** warning  {class}: nothing on the shopping list is called “{item}”, which is in stock */
export const reportUnusedStock = (args: { readonly class: Word; readonly item: Word }): string => say("report-unused-stock", args);
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
/** second-hand book|second-hand books */
export const supplyBook = (args: { readonly quantity: number }): string => say("supply-book", args);
/** card */
export const supplyCard = (): string => say("supply-card");
/** acetate */
export const supplyAcetate = (): string => say("supply-acetate");
/** paper */
export const supplyPaper = (): string => say("supply-paper");
/** double-sided tape */
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
/** bone folder or other blunt scoring tool */
export const supplyBoneFolder = (): string => say("supply-bone-folder");
/** ruler with clear marks */
export const supplyRuler = (): string => say("supply-ruler");
/** soft pencil and eraser */
export const supplyPencil = (): string => say("supply-pencil");
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
/** {leaves} leaves, each {leafHeight} high and {leafWidth} wide */
export const whyBook = (args: { readonly leaves: Word; readonly leafHeight: Word; readonly leafWidth: Word }): string => say("why-book", args);
/** {cuts} cuts in the book, a fresh blade every {perBlade} */
export const whyBlades = (args: { readonly cuts: Word; readonly perBlade: Word }): string => say("why-blades", args);
/** {tacks} for tacks */
export const whyGlueDotsTacks = (args: { readonly tacks: Word }): string => say("why-glue-dots-tacks", args);
/** {window} for closure and motifs */
export const whyGlueDotsWindow = (args: { readonly window: Word }): string => say("why-glue-dots-window", args);
/** {tacks} for tacks, {window} for closure and motifs */
export const whyGlueDotsBoth = (args: { readonly tacks: Word; readonly window: Word }): string => say("why-glue-dots-both", args);
/** {sheet}: {gauge} for the scoring gauge (one line|{lines} lines) */
export const whyCardGauge = (args: { readonly sheet: Word; readonly gauge: Word; readonly lines: number }): string => say("why-card-gauge", args);
/** {sheet}: {gauge} for the scoring gauge (one line|{lines} lines), {window} for the window and motifs */
export const whyCardWindow = (args: { readonly sheet: Word; readonly gauge: Word; readonly lines: number; readonly window: Word }): string => say("why-card-window", args);
/** {sheet}, clear, for the glazing */
export const whyAcetate = (args: { readonly sheet: Word }): string => say("why-acetate", args);
/** {sheet} (too small for {parts}) — $sheet is a sheet's name; $parts are parts that it has no room for. */
export const whySheetTooSmall = (args: { readonly sheet: Word; readonly parts: Word }): string => say("why-sheet-too-small", args);
/** at most {diameter} wide and {height} high; measure it */
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
/** for the closure */
export const whyButton = (): string => say("why-button");
/** to press the score lines and sharpen folds */
export const whyBoneFolder = (): string => say("why-bone-folder");
/** in millimetres */
export const whyRulerMm = (): string => say("why-ruler-mm");
/** in sixteenths or thirty-seconds of an inch */
export const whyRulerIn = (): string => say("why-ruler-in");
/** for the marks */
export const whyPencil = (): string => say("why-pencil");
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
/** Costs */
export const teacherCosts = (): string => say("teacher-costs");
/** Materials that all seats use: {used}. Still to pay, after what is in stock: {toPay}. Only items you have priced count. Sheets are shared out by area, tape and string by length. */
export const teacherCostsText = (args: { readonly used: Word; readonly toPay: Word }): string => say("teacher-costs-text", args);
/** Uses */
export const teacherUses = (): string => say("teacher-uses");
/** Preparation, in order */
export const teacherPrepare = (): string => say("teacher-prepare");
/** Print the seats’ packets at 100% and check the 100 mm bars on the first sheet of each. */
export const teacherPrint = (): string => say("teacher-print");
/** Sort out seat {seat}: {kit} does not fit its book. */
export const teacherSettle = (args: { readonly seat: Word; readonly kit: Word }): string => say("teacher-settle", args);
/** Buy what is on the shopping list. Check the tools: sharp blades, caps on. */
export const teacherBuy = (): string => say("teacher-buy");
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
/** Lay out the room: a mat, a lamp and elbow room for each seat, and a closed container for old blades. Where a glue gun is used, keep water ready for burns. */
export const teacherRoom = (): string => say("teacher-room");
/** To cut in class */
export const teacherCutInClass = (): string => say("teacher-cut-in-class");
/** {what}: {where} — What is to be cut, and for which seats: "2 × door, card: seats 2 and 8". */
export const teacherCutFor = (args: { readonly what: Word; readonly where: Word }): string => say("teacher-cut-for", args);
/** Cut sheets of the class */
export const teacherCutSheets = (): string => say("teacher-cut-sheets");
/** {size} {material} — A sheet's size and stuff: "A4 card". */
export const teacherSheet = (args: { readonly size: Word; readonly material: Word }): string => say("teacher-sheet", args);
/** Numbers are seats. The files to cut are under {folder} beside the class’s page, each as SVG in mm, SVG at 72 dpi and DXF. — $folder is the name of a folder. */
export const teacherCutNote = (args: { readonly folder: Word }): string => say("teacher-cut-note", args);
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
/** Supervision list */
export const teacherSupervision = (): string => say("teacher-supervision");
/** The rules of your house come first; this list helps you keep count. Tick each box at the table, out and back. */
export const teacherSupervisionText = (): string => say("teacher-supervision-text");
/** Knife out */
export const teacherKnifeOut = (): string => say("teacher-knife-out");
/** Knife back, capped */
export const teacherKnifeBack = (): string => say("teacher-knife-back");
/** Cells in, door screwed shut */
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
/** seat {seat}: {part} — A part of one seat. */
export const sheetPart = (args: { readonly seat: Word; readonly part: Word }): string => say("sheet-part", args);
/** {seat} {part} — The same in short, on the part in the drawing. */
export const sheetPartShort = (args: { readonly seat: Word; readonly part: Word }): string => say("sheet-part-short", args);
/** Sheet {name}, {width} × {height} mm: {parts} — $name is the name of the sheet's files, $parts a list of sheet-part. */
export const sheetLabel = (args: { readonly name: Word; readonly width: Word; readonly height: Word; readonly parts: Word }): string => say("sheet-label", args);
/** {class}: {material}, {size} sheet {number}: {parts} */
export const sheetTitle = (args: { readonly class: Word; readonly material: Word; readonly size: Word; readonly number: Word; readonly parts: Word }): string => say("sheet-title", args);
/** Leaflight class {class}; parts of all seats; layers: {layers} — In the file's description; $layers are names in the file. */
export const sheetAbout = (args: { readonly class: Word; readonly layers: Word }): string => say("sheet-about", args);
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
/** the packet’s gauge is glued to it */
export const useScoringGauge = (): string => say("use-scoring-gauge");
/** the largest: low on the glazing, in front of the light */
export const useLargestMotif = (): string => say("use-largest-motif");
/** raised on card spacers, above or beside the largest */
export const useMotif = (): string => say("use-motif");
/** closure tab behind here */
export const markTabBehind = (): string => say("mark-tab-behind");
/** button */
export const markButton = (): string => say("mark-button");
/** glue this end behind the base frame */
export const markGlueBehindFrame = (): string => say("mark-glue-behind-frame");
/** light: the largest motif here */
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
