// Made by `npm run words` from content/words/en: change the messages there.
import type { Word } from "./message.ts";
import { say } from "./speak.ts";

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
/** given {value}, which is {length} mm, outside {least} to {most} mm — Lengths as they are typed. */
export const checkGivenOutside = (args: { readonly value: Word; readonly length: Word; readonly least: Word; readonly most: Word }): string => say("check-given-outside", args);
/** given {value}, which has the unit "{unit}" */
export const checkGivenUnit = (args: { readonly value: Word; readonly unit: Word }): string => say("check-given-unit", args);
/** given {value}, which has a comma: write a point|has no unit|is not a finite number|divides by zero|is more than the address of a folder|is as long as the session|is not a length */
export const checkGivenFault = (args: { readonly value: Word; readonly fault: Word }): string => say("check-given-fault", args);
/** unknown key "{key}" */
export const checkUnknownKey = (args: { readonly key: Word }): string => say("check-unknown-key", args);
/** add {field} */
export const checkAddField = (args: { readonly field: Word }): string => say("check-add-field", args);
/** correct this value */
export const checkCorrectValue = (): string => say("check-correct-value");
/** remove it, or use one of the keys that are allowed */
export const checkRemoveKey = (): string => say("check-remove-key");
/** write "{key}" */
export const checkWriteKey = (args: { readonly key: Word }): string => say("check-write-key", args);
/** folder "{name}" */
export const checkFolderName = (args: { readonly name: Word }): string => say("check-folder-name", args);
/** small letters, digits and single hyphens */
export const checkFolderNames = (): string => say("check-folder-names");
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
/** {kit}: leaves {first} to {last}, {width} × {height}, opening {opening}, hold width {hold}, {hours} */
export const checkKit = (args: { readonly kit: Word; readonly first: Word; readonly last: Word; readonly width: Word; readonly height: Word; readonly opening: Word; readonly hold: Word; readonly hours: Word }): string => say("check-kit", args);
/** Nothing was built; dist is as it was. */
export const checkNothingBuilt = (): string => say("check-nothing-built");
/** Left out until this is corrected: */
export const checkLeftOut = (): string => say("check-left-out");
/** {kits} kit|{kits} kits in dist: open {page} */
export const checkKitCount = (args: { readonly kits: number; readonly page: Word }): string => say("check-kit-count", args);
/** {kits} kit|{kits} kits and {classes} class|{classes} classes in dist: open {page} */
export const checkKitsAndClasses = (args: { readonly kits: number; readonly classes: number; readonly page: Word }): string => say("check-kits-and-classes", args);
/** No url in {file} or {variable}: left out site map, feed, canonical addresses, link previews and the page for missing addresses. */
export const checkNoAddress = (args: { readonly file: Word; readonly variable: Word }): string => say("check-no-address", args);
/** {about} A length of {least} to {most} mm: {help}. — help: field-length-help */
export const fieldLength = (args: { readonly about: Word; readonly least: Word; readonly most: Word; readonly help: Word }): string => say("field-length", args);
/** a number in mm, or text with a unit: 12, "12 mm", "1.2 cm", "0.5 in", "1 1/2 in" */
export const fieldLengthHelp = (): string => say("field-length-help");
/** {about} A whole number, {least} to {most}. */
export const fieldCount = (args: { readonly about: Word; readonly least: Word; readonly most: Word }): string => say("field-count", args);
/** {about} A number, {least} to {most}. */
export const fieldNumber = (args: { readonly about: Word; readonly least: Word; readonly most: Word }): string => say("field-number", args);
/** {about} Text. */
export const fieldText = (args: { readonly about: Word }): string => say("field-text", args);
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
/** Units of page and packet. */
export const fieldUnits = (): string => say("field-units");
/** Share added to lengths for waste. A number, 0 to 1. */
export const fieldKitWaste = (): string => say("field-kit-waste");
/** Currency of the prices. */
export const fieldCurrency = (): string => say("field-currency");
/** Where the picture is, and which of its shapes lie at which level. */
export const fieldPicture = (): string => say("field-picture");
/** The SVG picture beside index.md, as a path inside the kit folder. */
export const fieldPictureFile = (): string => say("field-picture-file");
/** Which shapes belong to which level: a level’s name, and the ids under it. */
export const fieldPictureLevels = (): string => say("field-picture-levels");
/** Ids of shapes or groups, each with its #: ["#rim", "#wave"]. */
export const fieldPictureIds = (): string => say("field-picture-ids");
/** The id of a shape or group, with its #. */
export const fieldPictureId = (): string => say("field-picture-id");
/** The levels, front (nearest the viewer) to back; 2 to 9 of them. */
export const fieldLevels = (): string => say("field-levels");
/** A level of the picture: its name, and either depth or line. */
export const fieldLevel = (): string => say("field-level");
/** The level’s name, used on page and packet. */
export const fieldLevelName = (): string => say("field-level-name");
/** Distance of the fold from the fore-edge. */
export const fieldLevelDepth = (): string => say("field-level-depth");
/** Number of a gauge line, 1 for the first of gauge.lines. */
export const fieldLevelLine = (): string => say("field-level-line");
/** true on the level that shows where no shape is. true or false. */
export const fieldLevelBackground = (): string => say("field-level-background");
/** The scoring gauge: its lines, and the packing pieces that support the working side. */
export const fieldGauge = (): string => say("field-gauge");
/** Distances of the gauge’s lines from the fore-edge, line 1 first, increasing. */
export const fieldGaugeLines = (): string => say("field-gauge-lines");
/** Distance of a gauge line from the fore-edge. */
export const fieldGaugeLine = (): string => say("field-gauge-line");
/** Thickness of one of your own packing pieces, for the support table. */
export const fieldGaugeTile = (): string => say("field-gauge-tile");
/** Published versions, newest first; the first is the current one. */
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
/** Links of your own, up to 12. */
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
/** Photos shown with the kit, up to 12. */
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
/** Unnumbered leaves between the pages; [] where there are none. */
export const fieldBookPlates = (): string => say("field-book-plates");
/** Reading direction. */
export const fieldBookDirection = (): string => say("field-book-direction");
/** How far a board stands beyond the leaves. */
export const fieldBookSquare = (): string => say("field-book-square");
/** Thickness of one board. */
export const fieldBookBoardThickness = (): string => say("field-book-board-thickness");
/** Unnumbered leaves bound in after a printed page. */
export const fieldPlate = (): string => say("field-plate");
/** Printed page that the plates follow. */
export const fieldPlateAfterPage = (): string => say("field-plate-after-page");
/** How many unnumbered leaves. */
export const fieldPlateLeaves = (): string => say("field-plate-leaves");
/** How the picture is matched to the book. At most one of pictureLeaves, height and opening is solve. */
export const fieldFit = (): string => say("field-fit");
/** Whole leaves before and after the picture, folded at the background’s depth: [12, 12]. */
export const fieldFitBorderLeaves = (): string => say("field-fit-border-leaves");
/** Whole leaves before the picture. */
export const fieldBorderBefore = (): string => say("field-border-before");
/** Whole leaves after the picture. */
export const fieldBorderAfter = (): string => say("field-border-after");
/** Leaves that carry the picture: fill, solve, or a whole number from 2. */
export const fieldFitPictureLeaves = (): string => say("field-fit-picture-leaves");
/** fill: all between the borders; solve: as many as the shape needs. */
export const fieldFitPictureLeavesWord = (): string => say("field-fit-picture-leaves-word");
/** Picture leaves. */
export const fieldFitPictureLeavesCount = (): string => say("field-fit-picture-leaves-count");
/** Head edge to the picture’s top, on the front level. Left out: the picture is centred. */
export const fieldFitHead = (): string => say("field-fit-head");
/** Height of the picture on the front: solve, or {help}. */
export const fieldFitHeight = (args: { readonly help: Word }): string => say("field-fit-height", args);
/** Height of the picture on the front. */
export const fieldFitHeightLength = (): string => say("field-fit-height-length");
/** Opening of the book in degrees, 5 to 180 (to 360 with view: along), or solve. */
export const fieldFitOpening = (): string => say("field-fit-opening");
/** front: true shape as seen from the front; along: for pieces seen while walking round. */
export const fieldFitView = (): string => say("field-fit-view");
/** How the spine lies in the opened book. */
export const fieldFitSpine = (): string => say("field-fit-spine");
/** Marks are rounded to this step (0.5, 1, 1/32 in, 1/16 in). */
export const fieldFitMarkStep = (): string => say("field-fit-mark-step");
/** Strips shorter than this are merged with a neighbour. */
export const fieldFitLeastTab = (): string => say("field-fit-least-tab");
/** single: each strip is folded once; stepped: the whole leaf at the front line first. */
export const fieldFitFoldStyle = (): string => say("field-fit-fold-style");
/** Paper to leave between a flap and the gutter. */
export const fieldFitGutterClearance = (): string => say("field-fit-gutter-clearance");
/** How many leaf thicknesses a springy flap counts. */
export const fieldFitFlapBulk = (): string => say("field-fit-flap-bulk");
/** Most leaves worked before a pause. */
export const fieldFitBatch = (): string => say("field-fit-batch");
/** Leaves that were skipped or torn: the picture is closed over the leaves after each. [87]. */
export const fieldFitLostLeaves = (): string => say("field-fit-lost-leaves");
/** A leaf of the book. */
export const fieldFitLostLeaf = (): string => say("field-fit-lost-leaf");
/** A battery LED light that stands inside the book: an upright cylinder. */
export const fieldLight = (): string => say("field-light");
/** Level in whose region the light stands; left out: the deepest. */
export const fieldLightIn = (): string => say("field-light-in");
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
/** Level whose outline the window’s frame follows. */
export const fieldInsertOutline = (): string => say("field-insert-outline");
/** How far the frame reaches beyond the outline, and into the hole. */
export const fieldInsertLip = (): string => say("field-insert-lip");
/** Side of the door’s hinge. */
export const fieldInsertHinge = (): string => say("field-insert-hinge");
/** wrap: parts are unrolled along the front, for card that bends; flat: as seen from the front. */
export const fieldInsertPanel = (): string => say("field-insert-panel");
/** Sheets that parts are laid on; supplies are counted with the first. a4, letter, 12x12, or { name, width, height }. — { "{" } and { "}" } write braces. */
export const fieldSheets = (): string => say("field-sheets");
/** A sheet of your own size. */
export const fieldSheet = (): string => say("field-sheet");
/** The sheet’s name. */
export const fieldSheetName = (): string => say("field-sheet-name");
/** Width of the sheet. */
export const fieldSheetWidth = (): string => say("field-sheet-width");
/** Height of the sheet. */
export const fieldSheetHeight = (): string => say("field-sheet-height");
/** Your prices for one of each. Keys: {keys}. */
export const fieldPrices = (args: { readonly keys: Word }): string => say("field-prices", args);
/** A price for one of it. A number, 0 or more, with a point: 0.35. */
export const fieldPrice = (): string => say("field-price");
/** Your own working times; the hours of the kit follow from them. */
export const fieldRates = (): string => say("field-rates");
/** Turning to a leaf and reading its row. */
export const fieldRateLeaf = (): string => say("field-rate-leaf");
/** Pressing one score line. */
export const fieldRateScore = (): string => say("field-rate-score");
/** Making one mark. */
export const fieldRateMark = (): string => say("field-rate-mark");
/** Making one cut. */
export const fieldRateCut = (): string => say("field-rate-cut");
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
/** Supplies of the kit’s own. */
export const fieldSupplies = (): string => say("field-supplies");
/** A supply of the kit’s own, beside the computed ones. */
export const fieldSupply = (): string => say("field-supply");
/** What it is. */
export const fieldSupplyItem = (): string => say("field-supply-item");
/** How much. A number above 0. */
export const fieldSupplyQuantity = (): string => say("field-supply-quantity");
/** Of what: pieces, sheets, mm … */
export const fieldSupplyUnit = (): string => say("field-supply-unit");
/** Your price for all of it. A number, 0 or more. */
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
/** Folder names of the kits that the class offers; seats take the first unless they say: [harbour-moon]. */
export const fieldClassKits = (): string => say("field-class-kits");
/** A kit’s folder name. */
export const fieldClassKit = (): string => say("field-class-kit");
/** A table of the seats’ books (CSV) beside index.md. */
export const fieldClassBooks = (): string => say("field-class-books");
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
/** How much is in stock, in the list’s unit. A number above 0. */
export const fieldStockQuantity = (): string => say("field-stock-quantity");
/** What students bring beside their book. */
export const fieldBring = (): string => say("field-bring");
/** Something to bring. */
export const fieldBringItem = (): string => say("field-bring-item");
/** An evening or a morning of the class. */
export const fieldSession = (): string => say("field-session");
/** What the session is called. */
export const fieldSessionTitle = (): string => say("field-session-title");
/** Day of the session. */
export const fieldSessionDate = (): string => say("field-session-date");
/** When it starts: "18:30", in quotes. */
export const fieldSessionStarts = (): string => say("field-session-starts");
/** How long the session is. */
export const fieldSessionMinutes = (): string => say("field-session-minutes");
/** Of these, not spent on the work: welcome, cautions, clearing away. */
export const fieldSessionAside = (): string => say("field-session-aside");
/** A seat: its number, and its book here or in the books table. */
export const fieldSeat = (): string => say("field-seat");
/** The seat’s number; never a name. */
export const fieldSeatNumber = (): string => say("field-seat-number");
/** The kit of this seat; left out: the class’s first. */
export const fieldSeatKit = (): string => say("field-seat-kit");
/** This seat’s own pace instead of the group’s. */
export const fieldSeatPace = (): string => say("field-seat-pace");
/** The book of this seat, measured as in a kit. */
export const fieldSeatBook = (): string => say("field-seat-book");
/** How the kit is matched to this seat’s book; what is left out stays as the kit has it. */
export const fieldSeatFit = (): string => say("field-seat-fit");
/** Picture height on this seat’s book. */
export const fieldSeatHeight = (): string => say("field-seat-height");
/** Head edge to the picture’s top. */
export const fieldSeatHead = (): string => say("field-seat-head");
/** Whole leaves before and after the picture: [8, 8]. */
export const fieldSeatBorderLeaves = (): string => say("field-seat-border-leaves");
/** How flaps are folded. */
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
/** Language of the pages: the name of a folder of content/words, or one of it with a region: en, en-GB, en-US … */
export const fieldSiteLanguage = (): string => say("field-site-language");
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
/** degrees, 5 to 180 */
export const frontOpeningDegrees = (): string => say("front-opening-degrees");
/** state the opening, or let opening be the one that is solved */
export const frontStateOpening = (): string => say("front-state-opening");
/** 5 to 180 degrees with view: front */
export const frontOpeningBeyondFlat = (): string => say("front-opening-beyond-flat");
/** lower it, or use view: along for a piece seen while walking round */
export const frontLowerOpening = (): string => say("front-lower-opening");
/** a leaf of the book, 1 to {leaves} */
export const frontPageOneLeaf = (args: { readonly leaves: Word }): string => say("front-page-one-leaf", args);
/** count again from the first leaf */
export const frontCountAgain = (): string => say("front-count-again");
/** {plates} unnumbered leaf between the pages|{plates} unnumbered leaves between the pages */
export const frontManyPlates = (args: { readonly plates: number }): string => say("front-many-plates", args);
/** fewer than the {leaves} leaf from page 1 on|fewer than the {leaves} leaves from page 1 on */
export const frontFewerPlates = (args: { readonly leaves: number }): string => say("front-fewer-plates", args);
/** count the plates again (leaves, not pages) */
export const frontCountPlates = (): string => say("front-count-plates");
/** a printed page, 1 to {last} */
export const frontPlatePage = (args: { readonly last: Word }): string => say("front-plate-page", args);
/** leaves after the last page need no entry: they are unnumbered end leaves */
export const frontEndLeaves = (): string => say("front-end-leaves");
/** {line} mm after {before} mm */
export const frontLinesOutOfOrder = (args: { readonly line: Word; readonly before: Word }): string => say("front-lines-out-of-order", args);
/** lines further and further from the fore-edge */
export const frontLinesOutward = (): string => say("front-lines-outward");
/** put the lines in order */
export const frontOrderLines = (): string => say("front-order-lines");
/** "{level}" at {depth} mm after "{before}" at {beforeDepth} mm */
export const frontLevelsOutOfOrder = (args: { readonly level: Word; readonly depth: Word; readonly before: Word; readonly beforeDepth: Word }): string => say("front-levels-out-of-order", args);
/** depths that increase from the first level (front) to the last (back) */
export const frontLevelsInward = (): string => say("front-levels-inward");
/** put the levels in order or deepen this one */
export const frontOrderLevels = (): string => say("front-order-levels");
/** a second level "{level}" */
export const frontLevelTwice = (args: { readonly level: Word }): string => say("front-level-twice", args);
/** a name of its own for each level */
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
/** "{file}" is outside the kit folder */
export const frontFileOutside = (args: { readonly file: Word }): string => say("front-file-outside", args);
/** "{file}" is a folder */
export const frontFileFolder = (args: { readonly file: Word }): string => say("front-file-folder", args);
/** "{file}" is a link to a file outside the kit folder */
export const frontFileLink = (args: { readonly file: Word }): string => say("front-file-link", args);
/** a file in the kit folder */
export const frontFileInside = (): string => say("front-file-inside");
/** a file in the kit folder (it holds {files}) */
export const frontFileAmong = (args: { readonly files: Word }): string => say("front-file-among", args);
/** correct the name or add the file */
export const frontAddFile = (): string => say("front-add-file");
/** name the file itself */
export const frontNameFile = (): string => say("front-name-file");
/** copy the photo into the kit folder|copy the picture beside index.md */
export const frontCopyFile = (args: { readonly kind: Word }): string => say("front-copy-file", args);
/** "{file}" is not an SVG file */
export const frontNoSvg = (args: { readonly file: Word }): string => say("front-no-svg", args);
/** an SVG picture (.svg) */
export const frontAnSvg = (): string => say("front-an-svg");
/** draw the levels as filled shapes and save them as SVG */
export const frontDrawSvg = (): string => say("front-draw-svg");
/** "{file}" is not a photo */
export const frontNoPhoto = (args: { readonly file: Word }): string => say("front-no-photo", args);
/** save it as one of these */
export const frontSavePhoto = (): string => say("front-save-photo");
/** "{file}" cannot be read as a photo: {fault} — $fault: the words of the program that reads photos, in English. */
export const frontPhotoUnreadable = (args: { readonly file: Word; readonly fault: Word }): string => say("front-photo-unreadable", args);
/** a whole photo: {kinds} */
export const frontPhotoKinds = (args: { readonly kinds: Word }): string => say("front-photo-kinds", args);
/** open it in a photo program and save it again */
export const frontSavePhotoAgain = (): string => say("front-save-photo-again");
/** filled shapes, paths, groups and use, as the README’s reference lists them */
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
/** every painted shape belongs to a level, by its own id or a group’s */
export const frontShapesBelong = (): string => say("front-shapes-belong");
/** name its id in picture.levels, move it into a named group, or give it no fill */
export const frontNameShape = (): string => say("front-name-shape");
/** level "{level}" has no painted shape */
export const frontLevelEmpty = (args: { readonly level: Word }): string => say("front-level-empty", args);
/** every level but the background has at least one */
export const frontLevelsPainted = (): string => say("front-levels-painted");
/** check that the shapes under these ids are filled and visible; strokes do not count, so convert strokes to paths */
export const frontCheckShapes = (): string => say("front-check-shapes");
/** list its shapes under picture.levels.{level} */
export const frontListShapes = (args: { readonly level: Word }): string => say("front-list-shapes", args);
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
/** {date} or later, as the sessions follow each other */
export const frontSessionBefore = (args: { readonly date: Word }): string => say("front-session-before", args);
/** correct the day, or put the sessions in order */
export const frontOrderSessions = (): string => say("front-order-sessions");
/** The session */
export const frontTheSession = (): string => say("front-the-session");
/** Session {number} */
export const frontSession = (args: { readonly number: Word }): string => say("front-session", args);
/** a CSV file beside index.md */
export const frontTableBeside = (): string => say("front-table-beside");
/** a CSV file beside index.md (there is {files}) */
export const frontTableAmong = (args: { readonly files: Word }): string => say("front-table-among", args);
/** a kit: {kits} */
export const frontAKit = (args: { readonly kits: Word }): string => say("front-a-kit", args);
/** a kit of the class: {kits} */
export const frontClassKit = (args: { readonly kits: Word }): string => say("front-class-kit", args);
/** the kit "{kit}" cannot be built — The kit itself has something wrong that is told of before. */
export const frontKitBroken = (args: { readonly kit: Word }): string => say("front-kit-broken", args);
/** correct the kit first */
export const frontKitCorrectFirst = (): string => say("front-kit-correct-first");
/** seat {seat} has a book here and in {table} */
export const frontTwoBooks = (args: { readonly seat: Word; readonly table: Word }): string => say("front-two-books", args);
/** one book a seat */
export const frontOneBook = (): string => say("front-one-book");
/** remove one of them */
export const frontRemoveBook = (): string => say("front-remove-book");
/** no seat */
export const frontNoSeat = (): string => say("front-no-seat");
/** at least one seat, here or in a books table */
export const frontSomeSeat = (): string => say("front-some-seat");
/** add seats, each with its number and book */
export const frontAddSeats = (): string => say("front-add-seats");
/** seat {seat} stands here a second time */
export const frontSeatTwice = (args: { readonly seat: Word }): string => say("front-seat-twice", args);
/** each number once */
export const frontSeatOnce = (): string => say("front-seat-once");
/** give every seat a number of its own */
export const frontNumberSeats = (): string => say("front-number-seats");
/** seat {seat} has no book */
export const frontSeatNoBook = (args: { readonly seat: Word }): string => say("front-seat-no-book", args);
/** a book for every seat: here, or in the books table */
export const frontSeatBook = (): string => say("front-seat-book");
/** measure its book and add it */
export const frontMeasureSeat = (): string => say("front-measure-seat");
/** {count} depth|{count} depths */
export const frontDepths = (args: { readonly count: number }): string => say("front-depths", args);
/** {count}, one for each level of {kit}: {levels} */
export const frontDepthsOfKit = (args: { readonly count: Word; readonly kit: Word; readonly levels: Word }): string => say("front-depths-of-kit", args);
/** state one for each level, front to back */
export const frontStateDepths = (): string => say("front-state-depths");
/** an empty file */
export const frontTableEmpty = (): string => say("front-table-empty");
/** a head row with the columns {columns} */
export const frontTableHead = (args: { readonly columns: Word }): string => say("front-table-head", args);
/** unknown column "{column}" */
export const frontColumnUnknown = (args: { readonly column: Word }): string => say("front-column-unknown", args);
/** these columns, in any order: {columns} */
export const frontColumns = (args: { readonly columns: Word }): string => say("front-columns", args);
/** two columns "{column}" */
export const frontColumnTwice = (args: { readonly column: Word }): string => say("front-column-twice", args);
/** each column once */
export const frontColumnOnce = (): string => say("front-column-once");
/** "{cell}" stands beyond the last column */
export const frontCellBeyond = (args: { readonly cell: Word }): string => say("front-cell-beyond", args);
/** {count} cell, as the head row has; a text with a comma in quotes|{count} cells, as the head row has; a text with a comma in quotes */
export const frontCells = (args: { readonly count: number }): string => say("front-cells", args);
/** cells separated by commas, a text that holds a comma or a quote in quotes */
export const frontCellsApart = (): string => say("front-cells-apart");
/** plates: "{cell}" */
export const frontPlatesCell = (args: { readonly cell: Word }): string => say("front-plates-cell", args);
/** page:leaves, 192:4; 300:2 for four leaves after page 192 and two after page 300 */
export const frontPlatesForm = (): string => say("front-plates-form");
/** correct the table here */
export const frontCorrectTable = (): string => say("front-correct-table");
/** correct this cell */
export const frontCorrectCell = (): string => say("front-correct-cell");
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
/** id {id} is taken by <{name}> in line {line}: give each element its own */
export const pictureIdTwice = (args: { readonly id: Word; readonly name: Word; readonly line: Word }): string => say("picture-id-twice", args);
/** <svg> has no size: add viewBox="0 0 width height" */
export const pictureNoSize = (): string => say("picture-no-size");
/** <svg> transform is not supported: move it to a <g> around the content */
export const pictureRootTransform = (): string => say("picture-root-transform");
/** the picture needs more than {most} points: simplify it */
export const pictureManyPoints = (args: { readonly most: Word }): string => say("picture-many-points", args);
/** more than {most} levels of groups: flatten groups */
export const pictureManyLevels = (args: { readonly most: Word }): string => say("picture-many-levels", args);
/** the picture shows more than {most} elements: simplify it */
export const pictureManyElements = (args: { readonly most: Word }): string => say("picture-many-elements", args);
/** <{name}> cannot be drawn: convert the text to paths|trace the image to paths|keep only the branch to be shown|remove it|remove it or correct its name */
export const pictureUndrawn = (args: { readonly name: Word }): string => say("picture-undrawn", args);
/** <svg> inside the picture cannot be drawn: put its content in a <g> with a transform */
export const pictureInnerSvg = (): string => say("picture-inner-svg");
/** <{name}> is ignored; the picture is taken at rest */
export const pictureAnimation = (args: { readonly name: Word }): string => say("picture-animation", args);
/** <script> is ignored; the picture is taken as written */
export const pictureScript = (): string => say("picture-script");
/** <{name}> is ignored: it is outside the SVG namespace */
export const pictureOtherNamespace = (args: { readonly name: Word }): string => say("picture-other-namespace", args);
/** <{name}> {attribute} is not supported: remove it */
export const pictureCondition = (args: { readonly name: Word; readonly attribute: Word }): string => say("picture-condition", args);
/** <{name}> transform-origin is not supported: write rotate(angle x y) */
export const pictureTransformOrigin = (args: { readonly name: Word }): string => say("picture-transform-origin", args);
/** <symbol> {attribute} is not supported: move the <use> instead */
export const pictureSymbolAttribute = (args: { readonly attribute: Word }): string => say("picture-symbol-attribute", args);
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
/** malformed CSS: {fault} — $fault: the words of the style sheet reader, in English. */
export const pictureCss = (args: { readonly fault: Word }): string => say("picture-css", args);
/** malformed CSS: nested too deeply */
export const pictureCssDepth = (): string => say("picture-css-depth");
/** malformed CSS: {text} is no declaration */
export const pictureCssDeclaration = (args: { readonly text: Word }): string => say("picture-css-declaration", args);
/** @{name} is not supported: write the rules plainly in this <style> */
export const pictureCssAtRule = (args: { readonly name: Word }): string => say("picture-css-at-rule", args);
/** selector {selector} is too complex: use an element name, .class, #id or * */
export const pictureCssSelector = (args: { readonly selector: Word }): string => say("picture-css-selector", args);
/** <style> media {media} is not supported: remove it */
export const pictureStyleMedia = (args: { readonly media: Word }): string => say("picture-style-media", args);
/** {property} "" has no value: write one or remove {property} */
export const pictureNoValue = (args: { readonly property: Word }): string => say("picture-no-value", args);
/** {property} {value} is not supported: write the value itself */
export const pictureCssVariable = (args: { readonly property: Word; readonly value: Word }): string => say("picture-css-variable", args);
/** {property} {value} is unknown: use {values} */
export const pictureUnknownValue = (args: { readonly property: Word; readonly value: Word; readonly values: Word }): string => say("picture-unknown-value", args);
/** <{name}> {property} {value} in CSS is not supported: write it as an attribute */
export const pictureCssGeometry = (args: { readonly name: Word; readonly property: Word; readonly value: Word }): string => say("picture-css-geometry", args);
/** <{name}> {property} {value} is not supported: cut the shape itself|remove it or draw its result|draw the marker as a shape */
export const pictureUnsupported = (args: { readonly name: Word; readonly property: Word; readonly value: Word; readonly advice: Word }): string => say("picture-unsupported", args);
/** fill {fill} is in another file: bring it into this one */
export const pictureFillElsewhere = (args: { readonly fill: Word }): string => say("picture-fill-elsewhere", args);
/** fill {fill} points to no gradient or pattern: write a colour */
export const pictureFillNoServer = (args: { readonly fill: Word }): string => say("picture-fill-no-server", args);
/** fill {fill} counts as solid */
export const pictureFillSolid = (args: { readonly fill: Word }): string => say("picture-fill-solid", args);
/** <{name}> stroke is ignored; only fills count */
export const pictureStrokeIgnored = (args: { readonly name: Word }): string => say("picture-stroke-ignored", args);
/** <{name}> has a stroke without fill, which has no area: convert the stroke to a path */
export const pictureStrokeAlone = (args: { readonly name: Word }): string => say("picture-stroke-alone", args);
/** Printing {count} PDF|Printing {count} PDFs with the browser of LEAFLIGHT_BROWSER,|the installed browser|the downloaded browser|the packaged browser {path} — $browser: how the browser was found. $path: its file. */
export const printStart = (args: { readonly count: number; readonly browser: Word; readonly path: Word }): string => say("print-start", args);
/** {done} of {count}: {title} */
export const printStep = (args: { readonly done: Word; readonly count: Word; readonly title: Word }): string => say("print-step", args);
/** Printed {count} PDF|Printed {count} PDFs */
export const printDone = (args: { readonly count: number }): string => say("print-done", args);
/** no browser to print with: install Chrome or Chromium, or set LEAFLIGHT_BROWSER to the path of one */
export const printNoBrowser = (): string => say("print-no-browser");
/** LEAFLIGHT_BROWSER names "{path}", and no file is there: correct the path or unset it */
export const printNoSetting = (args: { readonly path: Word }): string => say("print-no-setting", args);
/** {page}: would not print at true scale: {boxes}. Shorten what stands there, or report this kit — $page: the page’s file. $boxes: one or several of the messages below. */
export const printOverflow = (args: { readonly page: Word; readonly boxes: Word }): string => say("print-overflow", args);
/** the page is {width} px wide in {room} px — Pixels. */
export const printPageWide = (args: { readonly width: Word; readonly room: Word }): string => say("print-page-wide", args);
/** {box} "{text}" is {width} px wide in {room} px — $box: an element of the page. $text: its heading or what stands in it. */
export const printBoxWide = (args: { readonly box: Word; readonly text: Word; readonly width: Word; readonly room: Word }): string => say("print-box-wide", args);
/** {box} "{text}" is {height} px high in {room} px */
export const printBoxHigh = (args: { readonly box: Word; readonly text: Word; readonly height: Word; readonly room: Word }): string => say("print-box-high", args);
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
