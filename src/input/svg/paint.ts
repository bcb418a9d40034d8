import type { Element } from "@xmldom/xmldom";
import * as say from "../../words/messages.ts";
import { hexOf } from "./colour.ts";
import { PictureError, quoted, ValueError } from "./picture-error.ts";
import type { Style } from "./style-property.ts";
import { childElements } from "./svg-document.ts";

/** What `context-fill` and `context-stroke` mean: the paints of the nearest `use`. */
export interface ContextPaint {
  readonly fill: string;
  readonly stroke: string;
}

/** No paint, as outside any `use`. */
export const NO_CONTEXT: ContextPaint = { fill: "none", stroke: "none" };

/** A paint that shows; any but a fully transparent one covers its whole area. */
export interface Paint {
  /** As `#rrggbb`; undefined for gradients, patterns and what is no colour. */
  readonly colour: string | undefined;
  /** With the opacity of its kind, above 0 to 1. */
  readonly alpha: number;
  /** What counts otherwise than it is drawn. */
  readonly note: string | undefined;
}

const PAINT_SERVERS = ["linearGradient", "radialGradient", "pattern", "meshgradient", "hatch", "solidcolor"];

/** The paint a `fill` or `stroke` value comes to, with `currentColor` and the context keywords replaced. */
export function resolvePaint(value: string, style: Style, context: ContextPaint): string {
  if (value === "currentcolor") return style.color === "currentcolor" ? "black" : style.color;
  if (value === "context-fill") return context.fill;
  return value === "context-stroke" ? context.stroke : value;
}

/** The context that a `use` of this style makes for what it shows. */
export function contextOf(style: Style, outer: ContextPaint): ContextPaint {
  return { fill: resolvePaint(style.fill, style, outer), stroke: resolvePaint(style.stroke, style, outer) };
}

/**
 * The fill or the stroke of a shape of this style; undefined where it shows nothing.
 *
 * @throws PictureError for a paint server that is missing or in another file
 */
export function paintOf(
  kind: "fill" | "stroke",
  line: number,
  style: Style,
  context: ContextPaint,
  byId: ReadonlyMap<string, Element>,
): Paint | undefined {
  if (style.visibility !== "visible") return undefined;
  const paint = servedPaint(kind, resolvePaint(style[kind], style, context), line, byId);
  const alpha = paintAlpha(paint);
  const opacity = parseOpacity(style[`${kind}-opacity`]);
  if (alpha === 0 || opacity === 0) return undefined;
  const server = serverOf(paint, byId);
  const solid = alpha < 1 || (server !== undefined && leavesGaps(server));
  return {
    colour: server === undefined ? hexOf(paint) : undefined,
    alpha: alpha * opacity,
    note: solid ? say.pictureFillSolid({ kind, fill: quoted(paint) }) : undefined,
  };
}

/** An opacity as a number 0…1. @throws ValueError unless it is a number or a percentage */
export function parseOpacity(text: string): number {
  const [, digits, percent] = /^([+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?)(%?)$/.exec(text) ?? [];
  if (digits === undefined) throw new ValueError((what) => say.pictureNoOpacity({ what, value: quoted(text) }));
  return Math.min(1, Math.max(0, Number(digits) / (percent === "%" ? 100 : 1)));
}

/** Replaces `url(#id)` by its fallback where the target is no paint server. */
function servedPaint(kind: "fill" | "stroke", paint: string, line: number, byId: ReadonlyMap<string, Element>): string {
  const reference = readReference(paint);
  if (reference === undefined) return paint;
  const { target, fallback } = reference;
  if (!target.startsWith("#")) {
    throw new PictureError(line, say.pictureFillElsewhere({ kind, fill: quoted(paint) }));
  }
  if (serverOf(paint, byId) !== undefined) return paint;
  if (fallback !== "") return fallback;
  throw new PictureError(line, say.pictureFillNoServer({ kind, fill: quoted(paint) }));
}

function serverOf(paint: string, byId: ReadonlyMap<string, Element>): Element | undefined {
  const server = byId.get(readReference(paint)?.target.slice(1) ?? "");
  return server !== undefined && PAINT_SERVERS.includes(server.localName ?? "") ? server : undefined;
}

/** What a paint's `url(…)` points to and the paint after it, or undefined for other paints. */
function readReference(paint: string): { target: string; fallback: string } | undefined {
  const [, target, fallback] = /^url\(([^)]*)\)(.*)$/i.exec(paint) ?? [];
  if (target === undefined || fallback === undefined) return undefined;
  return { target: target.replaceAll(/["']/g, "").trim(), fallback: fallback.trim() };
}

const perforated = new WeakMap<Element, boolean>();

/** Whether a paint may leave gaps: a pattern, or a gradient with a stop that is not opaque. */
function leavesGaps(server: Element): boolean {
  const known = perforated.get(server);
  if (known !== undefined) return known;
  const gaps =
    server.localName === "pattern" ||
    server.localName === "hatch" ||
    childElements(server).some(
      (stop) =>
        /stop-opacity|rgba|transparent/.test(stop.getAttribute("style") ?? "") || stop.hasAttribute("stop-opacity"),
    );
  perforated.set(server, gaps);
  return gaps;
}

/** The alpha that a paint states, 0…1; 1 where it states none. */
function paintAlpha(paint: string): number {
  if (paint === "none" || paint === "transparent") return 0;
  const [, short, long] = /^#(?:[\da-f]{3}([\da-f])|[\da-f]{6}([\da-f]{2}))$/.exec(paint) ?? [];
  if (short !== undefined) return Number.parseInt(short, 16) / 15;
  if (long !== undefined) return Number.parseInt(long, 16) / 255;
  const [, digits, percent] =
    /^(?:rgba?|hsla?)\((?:[^,/]*,){3}\s*(\d+(?:\.\d+)?|\.\d+)(%?)\s*\)$/.exec(paint) ??
    /^[a-z]+\([^/]*\/\s*(\d+(?:\.\d+)?|\.\d+)(%?)\s*\)$/.exec(paint) ??
    [];
  return digits === undefined ? 1 : Number(digits) / (percent === "%" ? 100 : 1);
}
