import { depthsOf, type Pattern } from "../../../core/pattern/pattern.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import type { LeafCard } from "../../views/leaf-card.ts";
import { paperTone } from "../front/tone.ts";
import { placeLabels } from "../label-places.ts";
import { escapeXml, num, tag, text } from "../svg-text.ts";

/** The room for the drawing, CSS pixels. */
export interface Room {
  readonly width: number;
  readonly height: number;
}

/** Letters are this wide, as a share of their height, on the wide side. */
const LETTER = 0.54;
const SMALLEST = 13;
const LARGEST = 60;
/** From a number's disc to the leaf; from the edge to the marks' heights. Pixels. */
const LEAD_IN = 14;
const LEAD_OUT = 34;

/** Where things are, in pixels. x is `edge + inward · (depth − origin) · scale`. */
interface Sheet {
  readonly scale: number;
  /** Depth of the edge that is drawn, mm: 0, or the front level's where the whole leaf is folded there first. */
  readonly origin: number;
  readonly top: number;
  readonly foot: number;
  /** The fore-edge. */
  readonly edge: number;
  /** −1 where the fore-edge is at the right, as on the front of a leaf of a left-to-right book. */
  readonly inward: 1 | -1;
  /** How far inward the leaf is drawn, mm. */
  readonly shown: number;
  /** Height of letters: of the marks, and of the small words beside the leaf. */
  readonly size: number;
  readonly word: number;
  readonly circle: number;
}

/**
 * The edge of one leaf seen on its front as it lies when it is cut, to scale in both directions: marks with their heights
 * and cut depths, cuts as lines, each span's fold line and its flap in the tint of its level, the level's number behind it,
 * the light's notch. With stepped folds the edge is the one folded at the front level's line, otherwise the fore-edge.
 */
export function leafEdge(card: LeafCard, pattern: Pattern, units: UnitSystem, room: Room): string {
  const sheet = laySheet(card, pattern, room);
  const parts = [
    body(sheet),
    ...card.source.spans.map((span) => flap(span, pattern, sheet)),
    notch(card, pattern, sheet),
    ...card.source.cuts.map((cut) => cutLine(cut, sheet)),
    levelNumbers(card, pattern, sheet),
    markLabels(card, sheet),
    card.row.marks.length > 0 ? unitWord(units, sheet) : "",
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" class="edge-drawing" width="${num(room.width)}" height="${num(room.height)}" viewBox="0 0 ${num(room.width)} ${num(room.height)}" role="img" aria-label="${escapeXml(`Fore-edge of the leaf. ${card.spoken}`)}">${parts.join("")}</svg>`;
}

function laySheet(card: LeafCard, pattern: Pattern, room: Room): Sheet {
  const { leafHeight, leafWidth, direction } = pattern.book;
  const { marks } = card.row;
  const depths = depthsOf(pattern.levels);
  const origin = pattern.fit.foldStyle === "stepped" && marks.length > 0 ? depths[0]! : 0;
  const shown = Math.min(leafWidth, 1.3 * Math.max(...depths)) - origin;
  const word = clamp(room.width / 24, 14, 20);
  const tall = room.height - 2 * (word + 9);
  const circle = clamp(Math.min(tall / (marks.length + 2) / 2.2, room.width / 22), 9, 22);
  const letters =
    marks.length > 0 ? LETTER * Math.max(8, ...marks.map(({ at, cut }) => at.length + cut.length + 2)) : 0;
  const aside = 2 * circle + LEAD_IN;
  const leadOut = marks.length > 0 ? LEAD_OUT : 0;
  const free = room.width - aside - leadOut;
  const wide = Math.max(0.45 * free, free - (shown * tall) / leafHeight);
  const size = clamp(Math.min((tall / (marks.length + 1)) * 0.8, wide / Math.max(1, letters)), SMALLEST, LARGEST);
  const scale = Math.min(tall / leafHeight, (free - letters * size) / shown);
  const left = (room.width - aside - shown * scale - leadOut - letters * size) / 2;
  const gutter = left + aside;
  const inward = direction === "ltr" ? -1 : 1;
  const edge = inward === -1 ? gutter + shown * scale : room.width - gutter - shown * scale;
  const top = (room.height - leafHeight * scale) / 2;
  return { scale, origin, top, foot: top + leafHeight * scale, edge, inward, shown, size, word, circle };
}

function body(sheet: Sheet): string {
  const gutter = across(sheet, sheet.origin + sheet.shown);
  const wave = 5;
  const steps = Math.max(4, Math.round((sheet.foot - sheet.top) / 22));
  const torn = Array.from({ length: steps + 1 }, (_, i) => {
    const y = sheet.foot - ((sheet.foot - sheet.top) * i) / steps;
    return `L${num(gutter + (i % 2 === 0 ? 0 : wave))} ${num(y)}`;
  }).join("");
  const name = { class: "edge-word", "text-anchor": "middle", "font-size": sheet.word };
  const middle = (sheet.edge + gutter) / 2;
  return (
    tag("path", {
      class: "edge-body",
      d: `M${num(sheet.edge)} ${num(sheet.top)}L${num(sheet.edge)} ${num(sheet.foot)}${torn}Z`,
    }) +
    (sheet.origin > 0 ? edgeLine(sheet) : "") +
    text(middle, sheet.top - 7, "head", name) +
    text(middle, sheet.foot + sheet.word, "tail", name)
  );
}

/** The edge of a leaf that is folded whole first. */
function edgeLine({ edge, top, foot }: Sheet): string {
  return tag("line", { class: "edge-folded", x1: edge, y1: top, x2: edge, y2: foot });
}

function flap(span: { from: number; to: number; level: number }, pattern: Pattern, sheet: Sheet): string {
  const depth = pattern.levels[span.level - 1]!.depth;
  const fold = across(sheet, depth);
  const [top, foot] = [down(sheet, span.from), down(sheet, span.to)];
  const x = Math.min(sheet.edge, fold);
  return (
    tag("rect", {
      class: "edge-flap",
      x,
      y: top,
      width: Math.abs(sheet.edge - fold),
      height: foot - top,
      fill: levelTone(pattern, span.level),
    }) + tag("line", { class: "edge-fold", x1: fold, y1: top, x2: fold, y2: foot })
  );
}

/** The tint of a level: light where the picture is proud, dark where it is deep. */
export function levelTone(pattern: Pattern, level: number): string {
  const depths = depthsOf(pattern.levels);
  const [front, deepest] = [depths[0]!, Math.max(...depths)];
  return paperTone((depths[level - 1]! - front) / Math.max(1, deepest - front), 0.99);
}

function notch(card: LeafCard, pattern: Pattern, sheet: Sheet): string {
  const found = pattern.pocket?.notches.find((one) => one.leaf === card.row.leaf);
  if (!found) return "";
  const inner = across(sheet, Math.min(found.depth, sheet.origin + sheet.shown));
  const [top, foot] = [down(sheet, found.from), down(sheet, found.to)];
  return tag("rect", {
    class: "edge-notch",
    x: Math.min(sheet.edge, inner),
    y: top,
    width: Math.abs(sheet.edge - inner),
    height: foot - top,
  });
}

function cutLine(cut: { at: number; depth: number }, sheet: Sheet): string {
  const y = down(sheet, cut.at);
  return tag("line", { class: "edge-cut", x1: sheet.edge, y1: y, x2: across(sheet, cut.depth), y2: y });
}

/** Numbers of the levels, one for each span, on the body's side. */
function levelNumbers(card: LeafCard, pattern: Pattern, sheet: Sheet): string {
  const { spans } = card.source;
  const { circle } = sheet;
  const middles = spans.map((span) => down(sheet, (span.from + span.to) / 2));
  const places = placeLabels(middles, 2 * circle + 2, sheet.top + circle, sheet.foot - circle);
  const x = across(sheet, sheet.origin + sheet.shown) + sheet.inward * (circle + 12);
  return spans
    .map((span, i) => {
      const fold = across(sheet, pattern.levels[span.level - 1]!.depth);
      const y = places[i]!;
      return (
        tag("path", {
          class: "edge-lead",
          d: `M${num(fold + sheet.inward * 3)} ${num(middles[i]!)}L${num(x - sheet.inward * (circle + 9))} ${num(middles[i]!)}L${num(x - sheet.inward * circle)} ${num(y)}`,
        }) +
        tag("circle", { class: "edge-disc", cx: x, cy: y, r: circle, fill: levelTone(pattern, span.level) }) +
        text(x, y + circle * 0.42, String(span.level), {
          class: "edge-level",
          "text-anchor": "middle",
          "font-size": circle * 1.25,
        })
      );
    })
    .join("");
}

/** Height and cut depth of each mark, beside the fore-edge. */
function markLabels(card: LeafCard, sheet: Sheet): string {
  const { size } = sheet;
  const heights = card.source.cuts.map((cut) => down(sheet, cut.at));
  const places = placeLabels(heights, size * 1.12, sheet.top + size * 0.2, sheet.foot - size * 0.2);
  const away = -sheet.inward;
  const anchor = away === 1 ? "start" : "end";
  return card.row.marks
    .map((mark, i) => {
      const [y, x] = [places[i]!, sheet.edge + away * 30];
      const lead = `M${num(sheet.edge)} ${num(heights[i]!)}L${num(sheet.edge + away * 8)} ${num(heights[i]!)}L${num(x - away * 5)} ${num(y)}`;
      const words = `<tspan class="edge-at">${escapeXml(mark.at)}</tspan><tspan class="edge-depth" dx="${num(size * 0.3)}">›${escapeXml(mark.cut)}</tspan>`;
      return (
        tag("path", { class: "edge-lead", d: lead }) +
        tag("text", { class: "edge-label", x, y: y + size * 0.35, "font-size": size, "text-anchor": anchor }, words)
      );
    })
    .join("");
}

/** What the figures are. */
function unitWord(units: UnitSystem, sheet: Sheet): string {
  const away = -sheet.inward;
  const anchor = away === 1 ? "start" : "end";
  return text(sheet.edge + away * 30, sheet.top - 7, `${units} from the head ›cut`, {
    class: "edge-word",
    "text-anchor": anchor,
    "font-size": sheet.word,
  });
}

function across(sheet: Sheet, depth: number): number {
  return sheet.edge + sheet.inward * (depth - sheet.origin) * sheet.scale;
}

function down(sheet: Sheet, mm: number): number {
  return sheet.top + mm * sheet.scale;
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
