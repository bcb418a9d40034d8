import type { Element } from "@xmldom/xmldom";
import * as say from "../../words/messages.ts";
import { readAttribute } from "./attribute.ts";
import { quoted, ValueError } from "./picture-error.ts";
import type { Dashes } from "./stroke-dashes.ts";
import type { Pen } from "./stroke-outline.ts";
import type { Style } from "./style-property.ts";
import { parseSvgLength } from "./svg-length.ts";

/** How the stroke of an element is drawn, in its user units; undefined where it has no width. */
export interface StrokeStyle {
  readonly pen: Pen;
  /** Undefined for a line without gaps. */
  readonly dashes: Dashes | undefined;
}

/** More lengths of dashes and gaps than drawings have. */
const MOST_LENGTHS = 1000;

/**
 * The stroke that a style describes.
 *
 * @param diagonal what 100 % is, in user units
 * @throws ValueError for a value that its property does not have
 */
export function strokeStyle(style: Style, diagonal: number): StrokeStyle | undefined {
  const width = lengthIn(style, "stroke-width", diagonal);
  if (width < 0) {
    throw new ValueError(() => say.pictureNegative({ what: "stroke-width", value: quoted(style["stroke-width"]) }));
  }
  if (width === 0) return undefined;
  const join = style["stroke-linejoin"];
  const limit = Number(style["stroke-miterlimit"]);
  const pen: Pen = {
    width,
    cap: style["stroke-linecap"] as Pen["cap"],
    join: join === "round" || join === "bevel" ? join : "miter",
    miterLimit: limit >= 1 ? limit : 4,
  };
  return { pen, dashes: dashesOf(style, diagonal) };
}

/** Whether strokes of a style have a width at all, as far as that can be read. */
export function hasWidth(style: Style): boolean {
  return Number.parseFloat(style["stroke-width"]) !== 0;
}

/** By what dashes are multiplied where an element states its own length. Source: SVG 2, "The 'pathLength' attribute". */
export function dashScale(element: Element, length: () => number): number {
  const stated = readAttribute(element, "pathLength", Number);
  return stated !== undefined && stated > 0 && Number.isFinite(stated) ? length() / stated : 1;
}

/** A stroke with everything in it multiplied. */
export function scaledStroke({ pen, dashes }: StrokeStyle, scale: number, dashBy = scale): StrokeStyle {
  return {
    pen: { ...pen, width: pen.width * scale },
    dashes: dashes && { lengths: dashes.lengths.map((one) => one * dashBy), offset: dashes.offset * dashBy },
  };
}

/** An odd list counts twice, one that is all 0 is no dashing (SVG 2, "The 'stroke-dasharray' property"). */
function dashesOf(style: Style, diagonal: number): Dashes | undefined {
  const value = style["stroke-dasharray"];
  if (value === "none") return undefined;
  const parts = value.split(/[\s,]+/).filter(Boolean);
  const lengths = parts
    .slice(0, MOST_LENGTHS)
    .map((part) => named("stroke-dasharray", () => parseSvgLength(part, diagonal)));
  if (lengths.some((length) => length < 0)) {
    throw new ValueError(() => say.pictureNegative({ what: "stroke-dasharray", value: quoted(value) }));
  }
  if (!lengths.some((length) => length > 0)) return undefined;
  const offset = lengthIn(style, "stroke-dashoffset", diagonal);
  return { lengths: lengths.length % 2 === 0 ? lengths : [...lengths, ...lengths], offset };
}

function lengthIn(style: Style, property: "stroke-width" | "stroke-dashoffset", diagonal: number): number {
  return named(property, () => parseSvgLength(style[property], diagonal));
}

/** A fault in a value is one of its property, wherever the element is that it is inherited by. */
function named<T>(property: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof ValueError)) throw error;
    throw new ValueError(() => error.about(property));
  }
}
