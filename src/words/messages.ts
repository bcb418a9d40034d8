// Made by `npm run words` from content/words/en: change the messages there.
import type { Word } from "./message.ts";
import { say } from "./speak.ts";

/** {title}: {part}, {count} of {material}, seen from the front — $part is a part's name, $material what it is cut from. */
export const cutPartTitle = (args: { readonly title: Word; readonly part: Word; readonly count: Word; readonly material: Word }): string => say("cut-part-title", args);
/** {title}: {material}, {size} sheet {number}: {parts} — $size is a sheet's size, $number which sheet of it, $parts the parts on it. */
export const cutSheetTitle = (args: { readonly title: Word; readonly material: Word; readonly size: Word; readonly number: Word; readonly parts: Word }): string => say("cut-sheet-title", args);
/** Leaflight kit {slug}, revision {revision}; wrap|flat panel, lip {lip} mm, hinge left|right; layers: {layers} ({width} x {height} mm) — $revision is a short code. $layers are the names of the file's layers; the last one holds a rectangle to measure, which is $width by $height mm. */
export const cutAbout = (args: { readonly slug: Word; readonly revision: Word; readonly panel: Word; readonly lip: Word; readonly hinge: Word; readonly layers: Word; readonly width: Word; readonly height: Word }): string => say("cut-about", args);
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
/** What the lines mean. Continuous: a cut, or an edge. Dashed: a score line. Dash-dot: a position only. Thin with ticks: a dimension. Heavy: a folded edge. Plain line in a section: a leaf seen edge-on. Arrow: move this way. Filled dot: glue. */
export const drawLegend = (): string => say("draw-legend");
/** cut, edge */
export const drawLegendCut = (): string => say("draw-legend-cut");
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
/** Glue to card, cut along the full outline, prick the holes along each line, and score through them. */
export const drawGaugeMake = (): string => say("draw-gauge-make");
/** Dashed: score lines, each at its distance from the fore-edge. */
export const drawGaugeDashed = (): string => say("draw-gauge-dashed");
/** {number} {level} — A level by its number in the pattern table and its name. */
export const drawGaugeLevel = (args: { readonly number: Word; readonly level: Word }): string => say("draw-gauge-level", args);
/** line {line} · {depth} — Beside a line: the levels folded at it, the line's number, its distance from the fore-edge. */
export const drawGaugeLine = (args: { readonly line: Word; readonly depth: Word }): string => say("draw-gauge-line", args);
/** {levels} · line {line} · {depth} */
export const drawGaugeUsedLine = (args: { readonly levels: Word; readonly line: Word; readonly depth: Word }): string => say("draw-gauge-used-line", args);
/** {levels} · {depth} */
export const drawGaugeOwnLine = (args: { readonly levels: Word; readonly depth: Word }): string => say("draw-gauge-own-line", args);
/** Levels on your gauge, from the fore-edge */
export const drawGaugeList = (): string => say("draw-gauge-list");
/** Bold numbers are the levels of the pattern table. */
export const drawGaugeListNote = (): string => say("draw-gauge-list-note");
/** {levels}: line {line}, {depth} */
export const drawGaugeListUsed = (args: { readonly levels: Word; readonly line: Word; readonly depth: Word }): string => say("draw-gauge-list-used", args);
/** {levels}: a line of its own, {depth} */
export const drawGaugeListOwn = (args: { readonly levels: Word; readonly depth: Word }): string => say("draw-gauge-list-own", args);
/** line {line}, {depth}: not used in this kit */
export const drawGaugeListUnused = (args: { readonly line: Word; readonly depth: Word }): string => say("draw-gauge-list-unused", args);
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
/** Cut on the full lines only. */
export const drawTemplateCutOnly = (): string => say("draw-template-cut-only");
/** match {number} — Two sheets that belong side by side carry the same number at their match lines. */
export const drawTemplateMatch = (args: { readonly number: Word }): string => say("draw-template-match", args);
/** Black: this sheet. Lay the sheets so that match lines with the same number lie on each other, and tape them. */
export const drawTemplateMap = (): string => say("draw-template-map");
/** {part}: {use} — A part and what it is for. */
export const drawPart = (args: { readonly part: Word; readonly use: Word }): string => say("draw-part", args);
/** The window from the book outward: {frame}, then {glazing}, then {door}. */
export const drawLayers = (args: { readonly frame: Word; readonly glazing: Word; readonly door: Word }): string => say("draw-layers", args);
/** {number} {part} */
export const drawLayer = (args: { readonly number: Word; readonly part: Word }): string => say("draw-layer", args);
/** book */
export const drawLayersBook = (): string => say("draw-layers-book");
/** you */
export const drawLayersYou = (): string => say("draw-layers-you");
/** The pocket from above, {height} from the head. One leaf is|{notches} leaves are cut back so that the light, {diameter} wide, stands {setback} behind the front with {clearance} free all round. Every third leaf is drawn. */
export const drawPocketPlan = (args: { readonly height: Word; readonly notches: number; readonly diameter: Word; readonly setback: Word; readonly clearance: Word }): string => say("draw-pocket-plan", args);
/** Ø {diameter} */
export const drawPocketDiameter = (args: { readonly diameter: Word }): string => say("draw-pocket-diameter", args);
/** The pocket from the front. Its floor is {floor} from the head edge. The light is {height} high, and the notches begin {clearance} above it. */
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
/** {number}  {step} — A step's number and what is done. */
export const drawFoldTitle = (args: { readonly number: Word; readonly step: Word }): string => say("draw-fold-title", args);
/** Score both lines */
export const drawFoldScore = (): string => say("draw-fold-score");
/** Mark and cut */
export const drawFoldCut = (): string => say("draw-fold-cut");
/** Fold each span back */
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
/** The single fold in four steps, for two neighbouring spans at levels {upper} and {lower}. 1: score the lines at {nearer} and {deeper} from the fore-edge. 2: mark, and cut from the fore-edge {deeper} inward, on a mat. 3: fold each span back at its own line, the upper one at {upperDepth}, the lower one at {lowerDepth}. 4: tuck the flaps between this leaf and the next. */
export const drawFoldSingle = (args: { readonly upper: Word; readonly lower: Word; readonly nearer: Word; readonly deeper: Word; readonly upperDepth: Word; readonly lowerDepth: Word }): string => say("draw-fold-single", args);
/** The stepped fold in four steps, for two neighbouring spans at levels {upper} and {lower}. 1: score the lines at {front} and {deeper} from the fore-edge. 2: fold the whole leaf back at {front}. 3: mark, and cut from the folded edge {cut} inward, through both layers, on a mat. 4: fold the deeper span back again at its line and tuck it between this leaf and the next; the other stays at the folded edge. */
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
/** One leaf whole: {title}. Heights from the head in {units}. Spans: {spans}. Marks and cuts from the folded edge|fore-edge: {cuts}. — $title is the leaf with its pages; $units the symbol of the heights' unit; $spans and $cuts are lists. */
export const drawLeaf = (args: { readonly title: Word; readonly units: Word; readonly spans: Word; readonly style: Word; readonly cuts: Word }): string => say("draw-leaf", args);
/** One leaf whole: {title}. Heights from the head in {units}. Spans: {spans}. There are no marks. */
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
/** The holder in place, seen from the front. The strip of card sits on the head edge, one slot over the first picture leaf, leaf {first}, the other over the last, leaf {last}, {width} apart. It stays there until all glue is dry. */
export const drawHolder = (args: { readonly first: Word; readonly last: Word; readonly width: Word }): string => say("draw-holder", args);
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
