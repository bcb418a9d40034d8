import type { Element } from "@xmldom/xmldom";
import { compose, translation } from "../../core/geometry/affine.ts";
import * as say from "../../words/messages.ts";
import { lineOf, readLength } from "./attribute.ts";
import { Cascade, computedStyle } from "./cascade.ts";
import { Cutter } from "./cutter.ts";
import { branchOf, meetsConditions, type RenderedKind, roleOf } from "./element-role.ts";
import { Entrance } from "./entrance.ts";
import { type Frame, frameSvg, frameSymbol } from "./frame.ts";
import { Gathered } from "./gathered.ts";
import type { Letters } from "./letters.ts";
import { contextOf } from "./paint.ts";
import { cutByConvex, PictureAreas } from "./picture-areas.ts";
import { PictureError } from "./picture-error.ts";
import type { PictureReport } from "./picture-report.ts";
import { resolveUse } from "./reference.ts";
import type { Scope } from "./scope.ts";
import { type Canvas, ShapePainter } from "./shape-painter.ts";
import { childElements, type SvgDocument } from "./svg-document.ts";
import type { PaintedShape } from "./svg-picture.ts";
import { TextPainter } from "./text-painter.ts";
import type { ViewBox } from "./view-box.ts";

/** A picture that is read: its file, its box, and what is told of it. */
export interface Walked {
  readonly document: SvgDocument;
  readonly box: ViewBox;
  /** As {@link Canvas}. */
  readonly tolerance: number;
  readonly pixel: number;
  readonly report: PictureReport;
  readonly letters: Letters | undefined;
}

/** Goes through a document in painter order and gathers what is painted. */
export class PictureWalk {
  readonly #gathered = new Gathered();
  readonly #document: SvgDocument;
  readonly #report: PictureReport;
  readonly #cascade: Cascade;
  readonly #canvas: Canvas;
  readonly #painter: ShapePainter;
  readonly #texts: TextPainter;
  readonly #cutter: Cutter;
  readonly #entrance: Entrance;

  constructor({ document, box, tolerance, pixel, report, letters }: Walked) {
    const { byId } = document;
    this.#document = document;
    this.#report = report;
    this.#cascade = new Cascade(document.sheet, report);
    this.#entrance = new Entrance(this.#cascade, report);
    this.#canvas = { tolerance, pixel, byId };
    this.#painter = new ShapePainter(this.#canvas, this.#gathered, report);
    this.#texts = new TextPainter({
      canvas: this.#canvas,
      gathered: this.#gathered,
      cascade: this.#cascade,
      letters,
      report,
    });
    this.#cutter = new Cutter({
      byId,
      cascade: this.#cascade,
      gathered: this.#gathered,
      report,
      areas: new PictureAreas(box),
      visit: (element, scope) => this.visit(element, scope),
    });
  }

  get shapes(): readonly PaintedShape[] {
    return this.#gathered.shapes;
  }

  /** Gathers from an element and all it shows; what is at fault in it is told. @throws PictureLimit */
  visit(element: Element, outer: Scope): void {
    this.#report.attempt(() => this.#visit(element, outer));
  }

  #visit(element: Element, outer: Scope): void {
    const role = element === this.#document.root ? ({ kind: "group" } as const) : roleOf(element);
    if (role.kind === "noted") this.#report.note(lineOf(element), role.message());
    if (role.kind === "noted" || role.kind === "idle") return;
    if (role.kind === "refused") {
      const style = computedStyle(this.#cascade.declaredBy(element), outer.style);
      if (style.display === "none" || !meetsConditions(element)) return;
      throw new PictureError(lineOf(element), role.message());
    }
    const scope = this.#entrance.enter(element, outer, role.kind);
    if (scope === undefined) return;
    const before = this.#gathered.shapes.length;
    this.#show(element, scope, role.kind);
    this.#cutter.cut(element, scope, before);
  }

  #show(element: Element, scope: Scope, kind: RenderedKind): void {
    if (kind === "group") this.#visitChildren(element, scope);
    else if (kind === "use") this.#visitUse(element, scope);
    else if (kind === "svg") this.#visitFrame(element, scope, frameSvg(element, scope.map, scope.viewport));
    else if (kind === "text") this.#texts.paint(element, scope);
    else if (kind === "shape") this.#painter.paint(element, scope);
    else {
      const branch = branchOf(childElements(element));
      if (branch) this.visit(branch, scope);
    }
  }

  #visitChildren(element: Element, scope: Scope): void {
    for (const child of childElements(element)) this.visit(child, scope);
  }

  #visitUse(use: Element, scope: Scope): void {
    const target = resolveUse(use, this.#document.byId, scope.showing);
    const x = readLength(use, "x", scope.viewport.width) ?? 0;
    const y = readLength(use, "y", scope.viewport.height) ?? 0;
    const inner: Scope = {
      ...scope,
      map: compose(scope.map, translation(x, y)),
      showing: [...scope.showing, target],
      context: contextOf(scope.style, scope.context),
    };
    if (target.localName !== "symbol" && target.localName !== "svg") {
      this.visit(target, inner);
      return;
    }
    const framed = this.#entrance.enter(target, inner, "svg");
    if (framed === undefined) return;
    const before = this.#gathered.shapes.length;
    this.#visitFrame(target, framed, frameSymbol(target, use, framed.map, scope.viewport));
    this.#cutter.cut(target, framed, before);
  }

  /** Shows the content of a symbol or an inner `svg`, cut to its frame. */
  #visitFrame(element: Element, scope: Scope, frame: Frame): void {
    const before = this.#gathered.shapes.length;
    this.#visitChildren(element, { ...scope, map: frame.map, viewport: frame.viewport });
    if (scope.style.overflow === "visible" || scope.style.overflow === "auto") return;
    this.#gathered.replaceSince(before, (shape) => {
      this.#gathered.count(shape.line, shape.rings, frame.corners.length);
      const { rings } = cutByConvex(shape, frame.corners, this.#canvas.tolerance);
      if (rings.length > 0) return rings === shape.rings ? shape : { ...shape, rings };
      this.#report.note(shape.line, say.pictureOutsideSymbol({ name: shape.element }));
      return undefined;
    });
  }
}
