import type { Element } from "@xmldom/xmldom";
import { IDENTITY, largestStretch, mapPoint } from "../../core/geometry/affine.ts";
import type { Ring } from "../../core/geometry/point.ts";
import * as say from "../../words/messages.ts";
import { atLine, lineOf } from "./attribute.ts";
import { readShape } from "./basic-shapes.ts";
import type { Gathered } from "./gathered.ts";
import { type Paint, paintOf } from "./paint.ts";
import { hasArea, outlinePath } from "./path-outline.ts";
import type { PathSegment } from "./path-segment.ts";
import { tracePath } from "./path-trace.ts";
import type { PictureReport } from "./picture-report.ts";
import type { Scope } from "./scope.ts";
import { dashTraces, lengthOf } from "./stroke-dashes.ts";
import { outlineStroke } from "./stroke-outline.ts";
import { dashScale, hasWidth, type StrokeStyle, scaledStroke, strokeStyle } from "./stroke-style.ts";
import type { PaintedShape } from "./svg-picture.ts";

/** What is the same for all shapes of a picture. */
export interface Canvas {
  /** Largest distance from a chord to its curve, in picture units. */
  readonly tolerance: number;
  /** Picture units in a pixel of the screen, for strokes that keep their width. */
  readonly pixel: number;
  readonly byId: ReadonlyMap<string, Element>;
}

/** Turns shapes and their strokes into areas. */
export class ShapePainter {
  readonly #canvas: Canvas;
  readonly #gathered: Gathered;
  readonly #report: PictureReport;

  constructor(canvas: Canvas, gathered: Gathered, report: PictureReport) {
    this.#canvas = canvas;
    this.#gathered = gathered;
    this.#report = report;
  }

  /** Gathers what a shape element paints. @throws PictureError */
  paint(element: Element, scope: Scope): void {
    const segments = readShape(element, scope.viewport);
    if (scope.clipping) {
      if (scope.style.visibility === "visible" && element.localName !== "line")
        this.#fill(element, scope, segments, OPAQUE);
      return;
    }
    const line = lineOf(element);
    const paint = (kind: "fill" | "stroke"): Paint | undefined =>
      paintOf(kind, line, scope.style, scope.context, this.#canvas.byId);
    const fill = element.localName === "line" ? undefined : paint("fill");
    const stroke = hasWidth(scope.style) ? paint("stroke") : undefined;
    const steps = [
      () => fill && this.#fill(element, scope, segments, fill, stroke !== undefined),
      () => stroke && this.#stroke(element, scope, segments, stroke),
    ];
    for (const step of strokeFirst(scope.style["paint-order"]) ? steps.toReversed() : steps) step();
  }

  #fill(element: Element, scope: Scope, segments: readonly PathSegment[], paint: Paint, stroked = false): void {
    const name = element.localName!;
    const line = lineOf(element);
    const rings = atLine(line, `<${name}>`, () => outlinePath(segments, scope.map, this.#canvas.tolerance));
    if (paint.note !== undefined) this.#report.note(line, paint.note);
    if (!hasArea(rings)) {
      if (!stroked) this.#report.note(line, say.pictureNoArea({ name }));
      return;
    }
    const { style } = scope;
    const rule = ruleOf(scope.clipping ? style["clip-rule"] : style["fill-rule"]);
    this.#gathered.add({ ...this.#shape(element, scope, paint), paint: "fill", rule, rings });
  }

  #stroke(element: Element, scope: Scope, segments: readonly PathSegment[], paint: Paint): void {
    const name = element.localName!;
    const line = lineOf(element);
    const rings = atLine(line, `<${name}>`, () => this.#strokeRings(element, scope, segments));
    if (paint.note !== undefined) this.#report.note(line, paint.note);
    if (!hasArea(rings)) return;
    this.#report.note(line, say.pictureStrokeArea());
    this.#gathered.add({ ...this.#shape(element, scope, paint), paint: "stroke", rule: "nonzero", rings });
  }

  /** The area of a stroke in the picture; it is drawn in the element's own space, which the map may skew. */
  #strokeRings(element: Element, scope: Scope, segments: readonly PathSegment[]): readonly Ring[] {
    const stroke = strokeStyle(scope.style, scope.viewport.diagonal);
    if (stroke === undefined) return [];
    const { tolerance, pixel } = this.#canvas;
    const [a, b, c, d] = scope.map;
    const stretch = largestStretch([a, b], [c, d]);
    if (scope.style["vector-effect"].includes("non-scaling-stroke")) {
      const traces = tracePath(segments, scope.map, tolerance);
      return strokedTraces(element, traces, scaledStroke(stroke, pixel), tolerance);
    }
    if (stretch === 0) return [];
    const traces = tracePath(segments, IDENTITY, tolerance / stretch);
    const rings = strokedTraces(element, traces, stroke, tolerance / stretch);
    return rings.map((ring) => ring.map((point) => mapPoint(scope.map, point)));
  }

  #shape(element: Element, scope: Scope, { colour, alpha }: Paint): Omit<PaintedShape, "paint" | "rule" | "rings"> {
    return { element: element.localName!, line: lineOf(element), called: scope.called, colour, alpha };
  }
}

const OPAQUE: Paint = { colour: "#000000", alpha: 1, note: undefined };

function strokedTraces(
  element: Element,
  traces: ReturnType<typeof tracePath>,
  stroke: StrokeStyle,
  tolerance: number,
): readonly Ring[] {
  const { pen, dashes } = scaledStroke(
    stroke,
    1,
    dashScale(element, () => lengthOf(traces)),
  );
  const drawn = dashes ? dashTraces(traces, dashes) : traces;
  return outlineStroke(drawn, pen, tolerance).filter((ring) => ring.length >= 3);
}

/** Whether strokes lie under fills. Source: SVG 2, "The 'paint-order' property": what is not named follows in its usual order. */
function strokeFirst(order: string): boolean {
  const [stroke, fill] = [order.indexOf("stroke"), order.indexOf("fill")];
  return stroke >= 0 && (fill < 0 || stroke < fill) && !/^\s*fill/.test(order);
}

function ruleOf(value: string): PaintedShape["rule"] {
  return value === "evenodd" ? "evenodd" : "nonzero";
}
