import type { Element } from "@xmldom/xmldom";
import { compose, IDENTITY, translation } from "../../core/geometry/affine.ts";
import * as say from "../../words/messages.ts";
import { atLine, lineOf, readAttribute, readLength } from "./attribute.ts";
import { readShape } from "./basic-shapes.ts";
import { Cascade, computedStyle, type DeclaredStyle } from "./cascade.ts";
import { roleOf } from "./element-role.ts";
import { contextOf, parseOpacity, shapePaint } from "./paint.ts";
import { hasArea, outlinePath } from "./path-outline.ts";
import { MOST_ELEMENTS, MOST_LEVELS, MOST_NOTES, MOST_POINTS } from "./picture-bounds.ts";
import { PictureError, quoted } from "./picture-error.ts";
import { resolveUse } from "./reference.ts";
import { type RenderedKind, refuseUnhonoured } from "./refusal.ts";
import type { Scope } from "./scope.ts";
import type { Style } from "./style-property.ts";
import { childElements, type SvgDocument } from "./svg-document.ts";
import type { PaintedShape, PictureNote } from "./svg-picture.ts";
import { parseTransform } from "./svg-transform.ts";
import { clipToFrame, frameSymbol, type SymbolFrame } from "./symbol-frame.ts";

/** Goes through a document in painter order and gathers what is filled. */
export class PictureWalk {
  readonly #shapes: PaintedShape[] = [];
  readonly #notes = new Map<string, PictureNote>();
  readonly #document: SvgDocument;
  readonly #cascade: Cascade;
  readonly #tolerance: number;
  #elements = 0;
  #points = 0;

  /** @param tolerance largest distance from a chord to its curve, in picture units */
  constructor(document: SvgDocument, tolerance: number) {
    this.#document = document;
    this.#cascade = new Cascade(document.sheet);
    this.#tolerance = tolerance;
  }

  get shapes(): readonly PaintedShape[] {
    return this.#shapes;
  }

  get notes(): PictureNote[] {
    const told = [...this.#notes.values()];
    const more = told.length - MOST_NOTES;
    if (more <= 0) return told;
    return [...told.slice(0, MOST_NOTES), { line: told[MOST_NOTES]!.line, message: say.pictureMoreNotes({ more }) }];
  }

  /** Gathers from an element and all it shows. @throws PictureError for what cannot be honoured */
  visit(element: Element, outer: Scope): void {
    const role = element === this.#document.root ? ({ kind: "group" } as const) : roleOf(element);
    if (role.kind === "noted") this.#note(lineOf(element), role.message());
    if (role.kind === "noted" || role.kind === "idle") return;
    if (role.kind === "refused") {
      const style = computedStyle(this.#cascade.declaredBy(element), outer.style);
      if (style.display === "none") return;
      throw new PictureError(lineOf(element), role.message());
    }
    const scope = this.#enter(element, outer, role.kind);
    if (scope === undefined) return;
    if (role.kind === "group") this.#visitChildren(element, scope);
    else if (role.kind === "use") this.#visitUse(element, scope);
    else this.#paint(element, scope);
  }

  /** The scope inside an element, or undefined when nothing of it shows. */
  #enter(element: Element, outer: Scope, kind: RenderedKind): Scope | undefined {
    this.#countElement(element, outer.depth);
    const declared = this.#cascade.declaredBy(element);
    const style = computedStyle(declared, outer.style);
    if (style.display === "none" || this.#readOpacities(element, declared, style) === 0) return undefined;
    refuseUnhonoured(element, kind, declared, style);
    const id = element.getAttribute("id");
    return {
      ...outer,
      map: compose(outer.map, readAttribute(element, "transform", parseTransform) ?? IDENTITY),
      style,
      ids: id ? [id, ...outer.ids] : outer.ids,
      depth: outer.depth + 1,
    };
  }

  /** The element's own opacity; notes every opacity of it that is neither 0 nor 1. */
  #readOpacities(element: Element, declared: DeclaredStyle, style: Style): number {
    for (const name of ["opacity", "fill-opacity", "stroke-opacity"] as const) {
      const line = declared.get(name)?.line;
      if (line === undefined) continue;
      const value = atLine(line, `<${element.localName}> ${name}`, () => parseOpacity(style[name]));
      if (name === "stroke-opacity" || value === 0 || value === 1) continue;
      this.#note(line, say.pictureSolid({ what: `<${element.localName}> ${name}`, value: quoted(style[name]) }));
    }
    return parseOpacity(style.opacity);
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
    if (target.localName === "symbol") this.#visitSymbol(target, use, inner);
    else this.visit(target, inner);
  }

  #visitSymbol(symbol: Element, use: Element, outer: Scope): void {
    const scope = this.#enter(symbol, outer, "use");
    if (scope === undefined) return;
    const frame = frameSymbol(symbol, use, outer.map, outer.viewport);
    const before = this.#shapes.length;
    this.#visitChildren(symbol, { ...scope, map: frame.map, viewport: frame.viewport });
    if (scope.style.overflow !== "visible" && scope.style.overflow !== "auto") this.#clip(before, frame);
  }

  /** Cuts the shapes gathered since `before` to a symbol's viewport. */
  #clip(before: number, frame: SymbolFrame): void {
    let kept = before;
    for (let i = before; i < this.#shapes.length; i += 1) {
      const shape = this.#shapes[i]!;
      this.#countPoints(shape.line, shape.rings, frame.corners.length);
      const rings = clipToFrame(shape.rings, frame.corners, this.#tolerance);
      if (rings.length === 0) this.#note(shape.line, say.pictureOutsideSymbol({ name: shape.element }));
      else this.#shapes[kept++] = rings === shape.rings ? shape : { ...shape, rings };
    }
    this.#shapes.length = kept;
  }

  #paint(element: Element, scope: Scope): void {
    const name = element.localName!;
    const line = lineOf(element);
    const paint = shapePaint({ name, line }, scope.style, scope.context, this.#document.byId);
    for (const message of paint.notes) this.#note(line, message);
    const segments = readShape(element, scope.viewport);
    if (!paint.filled) return;
    const rings = atLine(line, `<${name}>`, () => outlinePath(segments, scope.map, this.#tolerance));
    if (!hasArea(rings)) {
      this.#note(line, say.pictureNoArea({ name }));
      return;
    }
    this.#countPoints(line, rings);
    this.#shapes.push({ element: name, line, ids: scope.ids, rule: ruleOf(scope.style), rings });
  }

  /** A point counts each time that it is looked at. */
  #countPoints(line: number, rings: PaintedShape["rings"], times = 1): void {
    this.#points += times * rings.reduce((sum, ring) => sum + ring.length, 0);
    if (this.#points > MOST_POINTS) throw new PictureError(line, say.pictureManyPoints({ most: MOST_POINTS }));
  }

  #countElement(element: Element, depth: number): void {
    this.#elements += 1;
    if (depth >= MOST_LEVELS) throw new PictureError(lineOf(element), say.pictureManyLevels({ most: MOST_LEVELS }));
    if (this.#elements <= MOST_ELEMENTS) return;
    throw new PictureError(lineOf(element), say.pictureManyElements({ most: MOST_ELEMENTS }));
  }

  #note(line: number, message: string): void {
    const key = `${line} ${message}`;
    if (!this.#notes.has(key)) this.#notes.set(key, { line, message });
  }
}

function ruleOf(style: Style): PaintedShape["rule"] {
  return style["fill-rule"] === "evenodd" ? "evenodd" : "nonzero";
}
