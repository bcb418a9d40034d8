// Made by `npm run words` from content/words/en: change the messages there.
import type { Word } from "./message.ts";
import { say } from "./speak.ts";

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
/** a guide, for a practised hand */
export const figureTimeNote = (): string => say("figure-time-note");
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
/** all leaves pressed together, without the boards */
export const figureThicknessNote = (): string => say("figure-thickness-note");
/** easy — How much work a kit is. */
export const difficultyEasy = (): string => say("difficulty-easy");
/** moderate */
export const difficultyModerate = (): string => say("difficulty-moderate");
/** demanding */
export const difficultyDemanding = (): string => say("difficulty-demanding");
/** {hours} h */
export const hoursOnly = (args: { readonly hours: Word }): string => say("hours-only", args);
/** {minutes} min */
export const hoursMinutesOnly = (args: { readonly minutes: Word }): string => say("hours-minutes-only", args);
/** {hours} h {minutes} min */
export const hoursAndMinutes = (args: { readonly hours: Word; readonly minutes: Word }): string => say("hours-and-minutes", args);
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
/** {difficulty} · stepped folds|single folds · opening {opening} · reads right to left|reads left to right */
export const kitTagline = (args: { readonly difficulty: Word; readonly folds: Word; readonly opening: Word; readonly direction: Word }): string => say("kit-tagline", args);
/** Packet, {paper} — Links to what is printed; $paper is the name of a paper. */
export const kitPacketOn = (args: { readonly paper: Word }): string => say("kit-packet-on", args);
/** Large-print table, {paper} */
export const kitLargeOn = (args: { readonly paper: Word }): string => say("kit-large-on", args);
/** Print my packet */
export const kitMyPacket = (): string => say("kit-my-packet");
/** Large-print table */
export const kitMyLarge = (): string => say("kit-my-large");
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
/** This kit’s light is {given} wide; this book has room for up to {width} at that height, or for a light {height} high at that width. Measure yours first. */
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
/** The parts are cut as unrolled along the front, for card that bends round it. */
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
/** free — Stands for the number of a line where the gauge has none at this depth. */
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
/** One leaf of this book is {thickness} thick (thickness ÷ leaves). */
export const preparationCaliper = (args: { readonly thickness: Word }): string => say("preparation-caliper", args);
/** Skip to content */
export const siteSkip = (): string => say("site-skip");
/** Every measurement is worked out for the book each kit names. */
export const siteFoot = (): string => say("site-foot");
/** Feed of new kits — Link at the foot of every page. */
export const siteFeed = (): string => say("site-feed");
/** {site}: new and changed kits — Name of the feed for programs that read feeds. */
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
/** Parts */
export const stepParts = (): string => say("step-parts");
/** Tools */
export const stepTools = (): string => say("step-tools");
/** Check the book */
export const stepCheck = (): string => say("step-check");
/** Count leaves, not pages: a leaf is one sheet with two pages. This pattern is for {leaves} leaves, {height} high and {width} wide, pressed {thickness} thick. Another book needs the pattern worked out for it. */
export const stepCheckText = (args: { readonly leaves: Word; readonly height: Word; readonly width: Word; readonly thickness: Word }): string => say("step-check-text", args);
/** Measure height, width and thickness, and count leaves, not pages. */
export const stepCheckGist = (): string => say("step-check-gist");
/** Find pattern page 1 */
export const stepFind = (): string => say("step-find");
/** The picture begins on {first} (pattern page 1) and ends on {last} (pattern page {page}). Put a slip of paper at each. */
export const stepFindText = (args: { readonly first: Word; readonly last: Word; readonly page: Word }): string => say("step-find-text", args);
/** Put a slip of paper at the first and at the last picture leaf. */
export const stepFindGist = (): string => say("step-find-gist");
/** Set up the gauge */
export const stepGauge = (): string => say("step-gauge");
/** Cut the gauge from the packet, or mark a strip of card with these lines: {lines}. Distances are from the fore-edge. Slip packing under the lower side as the support table says, so that the gauge lies level. */
export const stepGaugeText = (args: { readonly lines: Word }): string => say("step-gauge-text", args);
/** {number} {name}: line {line}, {depth} — A level's line: number and name of the level, number of the gauge's line, distance from the fore-edge. */
export const stepGaugeLine = (args: { readonly number: Word; readonly name: Word; readonly line: Word; readonly depth: Word }): string => say("step-gauge-line", args);
/** {number} {name}: {depth} */
export const stepGaugeFreeLine = (args: { readonly number: Word; readonly name: Word; readonly depth: Word }): string => say("step-gauge-free-line", args);
/** Glue it to card, cut it out, and slip packing under the lower side of the book so that it lies level. */
export const stepGaugeGist = (): string => say("step-gauge-gist");
/** Press the score lines */
export const stepScore = (): string => say("step-score");
/** Press {count} line|{count} lines with a blunt tool, following the scoring plan. Press just hard enough to crease the paper, never through it; try it on a spare leaf first. Scoring every line on every leaf takes more strokes, but there is nothing to look up. */
export const stepScoreText = (args: { readonly count: number }): string => say("step-score-text", args);
/** Crease the paper with a blunt tool along the gauge’s lines; never press through it. */
export const stepScoreGist = (): string => say("step-score-gist");
/** Fold the border leaves */
export const stepBorder = (): string => say("step-border");
/** Fold no leaf|{before} whole leaf|{before} whole leaves before the picture and none|{after} after it at the {level} line, {depth} from the fore-edge. */
export const stepBorderText = (args: { readonly before: number; readonly after: number; readonly level: Word; readonly depth: Word }): string => say("step-border-text", args);
/** This kit has no border leaves. */
export const stepBorderNone = (): string => say("step-border-none");
/** Fold whole leaves at the background line, before the picture and after it. */
export const stepBorderGist = (): string => say("step-border-gist");
/** Mark, cut and fold, batch by batch */
export const stepFold = (): string => say("step-fold");
/** Work on at most {batch} leaves at a time. Mark from the head edge. Slide a card or a thin mat under this one leaf, so that the leaves below stay whole. Cut square in from the fore-edge, never deeper than {deepest}. Fold each strip at its level’s line and tuck it behind. Tick the row. At each checkpoint, compare the page number and the first mark before you turn the leaf. */
export const stepFoldText = (args: { readonly batch: Word; readonly deepest: Word }): string => say("step-fold-text", args);
/** Work on at most {batch} leaves at a time. First fold the whole leaf at the {front} line, {depth}; a leaf of one level is folded at its own line instead. Mark from the head edge. Slide a card or a thin mat under this one leaf, so that the leaves below stay whole. Cut square in from the folded edge, never deeper than {deepest}. Fold each deeper strip back again at its own line and tuck it behind. Tick the row. At each checkpoint, compare the page number and the first mark before you turn the leaf. */
export const stepFoldTextStepped = (args: { readonly batch: Word; readonly front: Word; readonly depth: Word; readonly deepest: Word }): string => say("step-fold-text-stepped", args);
/** A card under the leaf; mark from the head, cut square in, fold each strip at its line, tuck it behind, tick the row. */
export const stepFoldGist = (): string => say("step-fold-gist");
/** In each batch: notch for the light */
export const stepNotch = (): string => say("step-notch");
/** One leaf is notched|{count} leaves are notched, from leaf {first} to leaf {last}, so that the light stands inside. Mark each notch with the leaf’s other marks. Once the batch is folded and tucked, cut the notches one leaf at a time, with a card under the leaf. Cut through body and flap in several light strokes. The pocket’s floor is {floor} from the head. */
export const stepNotchText = (args: { readonly count: number; readonly first: Word; readonly last: Word; readonly floor: Word }): string => say("step-notch-text", args);
/** Once the batch is tucked, cut each notch in several light strokes, one leaf at a time. */
export const stepNotchGist = (): string => say("step-notch-gist");
/** In each batch: tack loose flaps */
export const stepTack = (): string => say("step-tack");
/** {count} flap is loose, because the next leaf does not hold it.|{count} flaps are loose, because the next leaf does not hold them. Put a dot of glue under each one in the tack list, press, and let it dry before the next batch. */
export const stepTackText = (args: { readonly count: number }): string => say("step-tack-text", args);
/** Put a dot of glue under each flap in the tack list, press, let it dry. */
export const stepTackGist = (): string => say("step-tack-gist");
/** Open to the hold width */
export const stepHold = (): string => say("step-hold");
/** Stand the book up, head up. Open it until the folded edges of the first and last picture leaf are {width} apart at the head edge, measured straight across. The boards’ edges are then about {boards} apart. At this width the picture has its true shape. Set the holder on the head edge, its slots over the first and last picture leaf, and leave it there until all glue is dry.|Prop it open at that width overnight. */
export const stepHoldText = (args: { readonly width: Word; readonly boards: Word; readonly holder: Word }): string => say("step-hold-text", args);
/** Measure straight across at the head edge; there the picture has its true shape. */
export const stepHoldGist = (): string => say("step-hold-gist");
/** Cut out the window */
export const stepCut = (): string => say("step-cut");
/** Cut {count} part|{count} parts of card and the glazing of acetate, from the templates or with the cut files. Cut inner outlines first, then the outer ones. Press the dashed line of the door; do not cut it. */
export const stepCutText = (args: { readonly count: number }): string => say("step-cut-text", args);
/** Inner outlines first, then the outer ones; press the door’s dashed line, do not cut it. */
export const stepCutGist = (): string => say("step-cut-gist");
/** Glue the base frame and let it dry */
export const stepFrame = (): string => say("step-frame");
/** With the holder on, run double-sided tape or clear-drying glue round the back of the base frame. Press it onto the front tips, closure tab under its marked edge. Its outer edge stands an even {lip} beyond the folded shape all round. Leave the holder on until the glue is dry, for the time on the label; overnight is safe. Make the door meanwhile. */
export const stepFrameText = (args: { readonly lip: Word }): string => say("step-frame-text", args);
/** Put the holder on, glue the frame to the front tips, and leave the holder until the glue is dry. */
export const stepFrameGist = (): string => say("step-frame-gist");
/** Glaze the door */
export const stepGlaze = (): string => say("step-glaze");
/** Fold the flap back along the score and open it again. Then fix the glazing to the back of the door with narrow double-sided tape or a glue made for acetate. Keep it clear of the score line at the left|right. Leave the door flat under a weight while it dries. */
export const stepGlazeText = (args: { readonly hinge: Word }): string => say("step-glaze-text", args);
/** Fix the glazing to the back of the door, clear of the score line, and leave it flat under a weight. */
export const stepGlazeGist = (): string => say("step-glaze-gist");
/** Decorate in layers */
export const stepDecorate = (): string => say("step-decorate");
/** Lay the decoration guide under the glazing. */
export const stepDecorateGuide = (): string => say("step-decorate-guide");
/** The {motif} goes low and flat on the glazing, over the marked place. */
export const stepDecorateLargest = (args: { readonly motif: Word }): string => say("step-decorate-largest", args);
/** It covers the light, {width} wide, that stands behind. */
export const stepDecorateLight = (args: { readonly width: Word }): string => say("step-decorate-light", args);
/** Then set {motifs} on card spacers, raised, above and beside it. — $motifs is a list of names. */
export const stepDecorateOthers = (args: { readonly motifs: Word }): string => say("step-decorate-others", args);
/** Then set what else you like on card spacers, raised, above and beside it. */
export const stepDecorateOwn = (): string => say("step-decorate-own");
/** Take the guide away when all is dry. */
export const stepDecorateDry = (): string => say("step-decorate-dry");
/** Lay the guide under the glazing; the largest motif low and flat, the others raised on card spacers. */
export const stepDecorateGist = (): string => say("step-decorate-gist");
/** Hang the door */
export const stepHang = (): string => say("step-hang");
/** Fold the flap under the door and glue it to the face of the dry base frame at the left|right, edges lined up. Keep the door ajar by a finger’s width until the glue has set. */
export const stepHangText = (args: { readonly hinge: Word }): string => say("step-hang-text", args);
/** Glue the flap to the dry frame, edges lined up; keep the door ajar by a finger’s width until it has set. */
export const stepHangGist = (): string => say("step-hang-gist");
/** Close it */
export const stepClose = (): string => say("step-close");
/** Glue the button on the door’s mark. Tie {string} of string into a loop through the tab’s hole, long enough to slip over the button. */
export const stepCloseText = (args: { readonly string: Word }): string => say("step-close-text", args);
/** Glue the button on its mark; tie the string through the tab so that the loop slips over it. */
export const stepCloseGist = (): string => say("step-close-gist");
/** Set the light */
export const stepLight = (): string => say("step-light");
/** When all glue is dry, take the holder off. Switch the LED light on and stand it on the pocket’s floor, {setback} behind the front. Leave clear space all round: no paper touches its sides. If it does not stand steady on the notches, glue in a small floor of card first. */
export const stepLightText = (args: { readonly setback: Word }): string => say("step-light-text", args);
/** When all is dry, stand the LED light on the pocket’s floor; no paper may touch it. */
export const stepLightGist = (): string => say("step-light-gist");
/** Materials */
export const supplyMaterials = (): string => say("supply-materials");
/** Tools */
export const supplyTools = (): string => say("supply-tools");
/** Total of the prices given: {total}. */
export const supplyTotal = (args: { readonly total: Word }): string => say("supply-total", args);
/** ruler */
export const toolRuler = (): string => say("tool-ruler");
/** metal ruler */
export const toolMetalRuler = (): string => say("tool-metal-ruler");
/** ruler or marking strips */
export const toolRulerOrStrips = (): string => say("tool-ruler-or-strips");
/** pencil */
export const toolPencil = (): string => say("tool-pencil");
/** craft knife */
export const toolCraftKnife = (): string => say("tool-craft-knife");
/** mat */
export const toolMat = (): string => say("tool-mat");
/** bone folder */
export const toolBoneFolder = (): string => say("tool-bone-folder");
/** gauge */
export const toolGauge = (): string => say("tool-gauge");
/** packing */
export const toolPacking = (): string => say("tool-packing");
/** glue dots */
export const toolGlueDots = (): string => say("tool-glue-dots");
/** double-sided tape */
export const toolTape = (): string => say("tool-tape");
/** clear-drying glue */
export const toolGlue = (): string => say("tool-glue");
/** gauge — Parts beside a step that are no parts of the window. */
export const stepPartGauge = (): string => say("step-part-gauge");
/** button */
export const stepPartButton = (): string => say("step-part-button");
/** string */
export const stepPartString = (): string => say("step-part-string");
/** battery LED light */
export const stepPartLight = (): string => say("step-part-light");
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
