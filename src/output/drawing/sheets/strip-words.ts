import { toDecimals } from "../../../core/units/length.ts";
import * as say from "../../../words/messages.ts";
import { escapeXml } from "../../xml.ts";
import { num, tag, text } from "../svg-text.ts";
import { SMALL, STRIP, type Strip, TITLE } from "./strip.ts";

/** Words too wide for a strip are set narrower, not lower. */
const NARROWER = { textLength: STRIP - 0.8, lengthAdjust: "spacingAndGlyphs" };

/** Width of figures with a fraction as a share of their height: digits are half as wide, the signs between them less. */
const FIGURE = 0.43;

/** From a strip's left side to a level's number, and from its right side to the end of other words, mm. */
const MARGIN = { number: 1, mark: 0.4, notch: 2.2 } as const;

/** The words of strips from strip to strip, as who has them read hears them, then the levels in the fields. */
export function stripWords(strips: readonly Strip[]): string {
  const sizes = Map.groupBy(strips.flatMap(numbersOf), ({ size }) => size);
  return [
    words(
      { "font-size": SMALL, "text-anchor": "middle" },
      strips.map((strip) => namesOf(strip) + depthsOf(strip) + notchOf(strip)),
    ),
    ...[...sizes].map(([size, numbers]) => digits(size, numbers)),
  ].join("");
}

type Look = Readonly<Record<string, string | number>>;

/** Words that share a look. */
function words(look: Look, all: readonly string[]): string {
  const said = all.join("");
  return said === "" ? "" : tag("g", look, said);
}

/** Leaf, book page and pattern page on the tab. */
function namesOf({ x: left, leaf: { leaf, bookPage, patternPage } }: Strip): string {
  const x = left + STRIP / 2;
  const page = bookPage === null ? say.drawStripNoPage() : say.leafPage({ page: bookPage });
  return [
    text(x, TITLE + 3.7, String(leaf), { "font-size": 3.4, "font-weight": 700 }),
    text(x, TITLE + 7.3, page),
    text(x, TITLE + 10.6, `(${patternPage})`),
  ].join("");
}

interface PlacedDigit {
  readonly digit: number;
  readonly x: number;
  readonly y: number;
  readonly size: number;
}

function numbersOf({ x, numbers }: Strip): PlacedDigit[] {
  return numbers.map(({ level, y, size }) => ({ digit: level, x: x + MARGIN.number, y, size }));
}

/** Levels of one height of letters: one text, as each letter can have its own place (SVG 2, "The 'x', 'y' attributes of 'text'"). */
function digits(size: number, all: readonly PlacedDigit[]): string {
  const places = (decimals: number, of: (one: PlacedDigit) => number): string =>
    all.map((one) => toDecimals(of(one), decimals)).join(" ");
  const place = { x: places(2, ({ x }) => x), y: places(1, ({ y }) => y) };
  return tag("text", { "font-size": size, "font-weight": 600, ...place }, all.map(({ digit }) => digit).join(""));
}

/** Words of a strip's marks below each other at its right side. */
function depthsOf({ x, marks }: Strip): string {
  const said = marks
    .filter(({ words }) => words !== "")
    .map(({ words, foot }) => {
      const narrower = words.length * FIGURE * SMALL > STRIP - 0.8 ? NARROWER : {};
      return tag("text", { y: toDecimals(foot, 1), ...narrower }, escapeXml(words));
    });
  return words({ transform: `translate(${num(x + STRIP - MARGIN.mark)})`, "text-anchor": "end" }, said);
}

function notchOf({ x, notch }: Strip): string {
  if (!notch) return "";
  const place = `${num(x + STRIP - MARGIN.notch)} ${num((notch.from + notch.to) / 2, 1)}`;
  return tag("text", { transform: `translate(${place}) rotate(-90)` }, escapeXml(notch.words));
}
