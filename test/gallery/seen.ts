import { DOMParser, type Element, onErrorStopParsing } from "@xmldom/xmldom";
import { wordsWidth } from "../../src/output/drawing/words-width.ts";
import type { Point } from "../core/geometry/plane.ts";
import { type Bounds, number, type Shape, shapeOf } from "./seen-shape.ts";

/** A line of words: its letters' height and about the four corners of its ink, in units of the drawing. */
export interface Label {
  readonly words: string;
  readonly size: number;
  readonly corners: readonly Point[];
  /** In the order of painting. */
  readonly place: number;
}

/** A drawing as it is seen, read from its file by a parser that knows nothing of the program. */
export interface Seen {
  readonly box: Bounds;
  /** Millimetres of a unit. */
  readonly scale: number;
  readonly labels: readonly Label[];
  /** What is in a drawing within the drawing is clipped and left out; its frame counts. */
  readonly shapes: readonly Shape[];
  readonly ids: readonly string[];
}

const MM_PER_PIXEL = 25.4 / 96;

/** The part of letters above the baseline, as a share of their height. */
const ASCENT = 0.7;

/** Reads a golden. @throws where it is not well-formed XML */
export function seen(text: string): Seen {
  const root = new DOMParser({ onError: onErrorStopParsing }).parseFromString(text, "image/svg+xml").documentElement!;
  const [left, top, width, height] = root.getAttribute("viewBox")!.split(" ").map(Number) as [
    number,
    number,
    number,
    number,
  ];
  const stated = root.getAttribute("width")!;
  const all = [...root.getElementsByTagName("*")];
  const painted = all.filter((one) => isPainted(one, root));
  return {
    box: [left, top, left + width, top + height],
    scale: (Number.parseFloat(stated) * (stated.endsWith("mm") ? 1 : MM_PER_PIXEL)) / width,
    labels: painted.flatMap((one, place) => (one.tagName === "text" ? labelsOf(one, place) : [])),
    shapes: painted.flatMap((one, place) => (one.tagName === "text" ? [] : [shapeOf(one, place)])),
    ids: all.flatMap((one) => one.getAttribute("id") ?? []),
  };
}

const PAINTED = ["path", "rect", "circle", "line", "text", "svg"];

function isPainted(one: Element, root: Element): boolean {
  if (!PAINTED.includes(one.tagName)) return false;
  for (let above = one.parentNode as Element; above !== root; above = above.parentNode as Element)
    if (above.tagName === "svg" || above.tagName === "defs") return false;
  return true;
}

function labelsOf(text: Element, place: number): Label[] {
  const xs = (text.getAttribute("x") ?? "").split(" ");
  const ys = (text.getAttribute("y") ?? "").split(" ");
  if (xs.length > 1 || ys.length > 1) return lettersOf(text, xs, ys, place);
  const lines = [...text.getElementsByTagName("tspan")].filter((one) => one.hasAttribute("y"));
  return (lines.length > 0 ? lines : [text])
    .map((line) => labelOf(text, line, place))
    .filter(({ words }) => words.trim() !== "");
}

function labelOf(text: Element, line: Element, place: number): Label {
  const words = line.textContent ?? "";
  const size = Number(inherited(text, "font-size") ?? 0);
  const length = number(text, "textLength") || wordsWidth(words, size);
  const anchor = inherited(text, "text-anchor");
  const left = number(line, "x") - (anchor === "middle" ? length / 2 : anchor === "end" ? length : 0);
  const foot = number(line, "y");
  const turn = turnOf(inherited(text, "transform") ?? "");
  const corners = (
    [
      [left, foot],
      [left + length, foot],
      [left + length, foot - ASCENT * size],
      [left, foot - ASCENT * size],
    ] as const
  ).map(turn);
  return { words: words.replaceAll("\u00a0", " "), size, corners, place };
}

/** Letters that each have a place of their own (SVG 2, "The 'x', 'y' attributes of 'text'"). @throws where one has none */
function lettersOf(text: Element, xs: readonly string[], ys: readonly string[], place: number): Label[] {
  const letters = [...(text.textContent ?? "")];
  if (xs.length !== letters.length || ys.length !== letters.length)
    throw new Error(`${letters.length} letters have ${xs.length} and ${ys.length} places`);
  return letters.map((letter, i) => {
    const one = text.cloneNode(false) as Element;
    one.setAttribute("x", xs[i]!);
    one.setAttribute("y", ys[i]!);
    one.textContent = letter;
    return labelOf(text, one, place);
  });
}

/** What an element or one round it says (SVG 2, "Presentation attributes": these are inherited); undefined where none does. */
function inherited(one: Element, name: string): string | undefined {
  const own = one.getAttribute(name);
  const above = one.parentNode as Element | null;
  return own ?? (above?.tagName === "g" || above?.tagName === "svg" ? inherited(above, name) : undefined);
}

/** `translate(x)` or `translate(x y)` with or without `rotate(degrees)` after it. */
function turnOf(transform: string): (point: Point) => Point {
  const [, x = "0", y = "0", degrees = "0"] = /^(?:translate\((\S+?)(?: (\S+))?\))?(?: ?rotate\((\S+)\))?$/.exec(
    transform,
  )!;
  const angle = (Number(degrees) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return ([px, py]) => [Number(x) + px * cos - py * sin, Number(y) + px * sin + py * cos];
}
