import type { Element } from "@xmldom/xmldom";
import * as say from "../../words/messages.ts";
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

/** Whether the fill and the stroke of a shape show, and what to tell about them. */
export interface ShapePaint {
  readonly filled: boolean;
  readonly notes: readonly string[];
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
 * How a shape is painted. Any paint but a fully transparent one fills its whole area.
 *
 * @throws PictureError for a paint server that is missing or in another file
 */
export function shapePaint(
  shape: { readonly name: string; readonly line: number },
  style: Style,
  context: ContextPaint,
  byId: ReadonlyMap<string, Element>,
): ShapePaint {
  if (style.visibility !== "visible") return { filled: false, notes: [] };
  const notes: string[] = [];
  const fill = servedPaint(resolvePaint(style.fill, style, context), shape.line, byId);
  const alpha = paintAlpha(fill);
  const filled = shape.name !== "line" && alpha > 0 && parseOpacity(style["fill-opacity"]) > 0;
  if (filled && (alpha < 1 || isPerforated(fill, byId))) notes.push(say.pictureFillSolid({ fill: quoted(fill) }));
  if (isStroked(style, context)) {
    notes.push(filled ? say.pictureStrokeIgnored({ name: shape.name }) : say.pictureStrokeAlone({ name: shape.name }));
  }
  return { filled, notes };
}

/** An opacity as a number 0…1. @throws ValueError unless it is a number or a percentage */
export function parseOpacity(text: string): number {
  const [, digits, percent] = /^([+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?)(%?)$/.exec(text) ?? [];
  if (digits === undefined) throw new ValueError((what) => say.pictureNoOpacity({ what, value: quoted(text) }));
  return Math.min(1, Math.max(0, Number(digits) / (percent === "%" ? 100 : 1)));
}

function isStroked(style: Style, context: ContextPaint): boolean {
  const width = Number.parseFloat(style["stroke-width"]);
  return (
    paintAlpha(resolvePaint(style.stroke, style, context)) > 0 &&
    parseOpacity(style["stroke-opacity"]) > 0 &&
    width !== 0
  );
}

/** Replaces `url(#id)` by its fallback where the target is no paint server. */
function servedPaint(paint: string, line: number, byId: ReadonlyMap<string, Element>): string {
  const reference = readReference(paint);
  if (reference === undefined) return paint;
  const { target, fallback } = reference;
  if (!target.startsWith("#")) {
    throw new PictureError(line, say.pictureFillElsewhere({ fill: quoted(paint) }));
  }
  if (PAINT_SERVERS.includes(byId.get(target.slice(1))?.localName ?? "")) return paint;
  if (fallback !== "") return fallback;
  throw new PictureError(line, say.pictureFillNoServer({ fill: quoted(paint) }));
}

/** What a paint's `url(…)` points to and the paint after it, or undefined for other paints. */
function readReference(paint: string): { target: string; fallback: string } | undefined {
  const [, target, fallback] = /^url\(([^)]*)\)(.*)$/i.exec(paint) ?? [];
  if (target === undefined || fallback === undefined) return undefined;
  return { target: target.replaceAll(/["']/g, "").trim(), fallback: fallback.trim() };
}

const perforated = new WeakMap<Element, boolean>();

/** Whether a paint may leave gaps: a pattern, or a gradient with a stop that is not opaque. */
function isPerforated(paint: string, byId: ReadonlyMap<string, Element>): boolean {
  const server = byId.get(readReference(paint)?.target.slice(1) ?? "");
  if (server === undefined) return false;
  const known = perforated.get(server) ?? leavesGaps(server);
  perforated.set(server, known);
  return known;
}

function leavesGaps(server: Element): boolean {
  if (server.localName === "pattern" || server.localName === "hatch") return true;
  return childElements(server).some(
    (stop) =>
      /stop-opacity|rgba|transparent/.test(stop.getAttribute("style") ?? "") || stop.hasAttribute("stop-opacity"),
  );
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
