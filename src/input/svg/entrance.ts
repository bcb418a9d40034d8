import type { Element } from "@xmldom/xmldom";
import { compose, IDENTITY } from "../../core/geometry/affine.ts";
import * as say from "../../words/messages.ts";
import { atLine, lineOf, readAttribute } from "./attribute.ts";
import { callingOf } from "./calling.ts";
import { type Cascade, computedStyle, type DeclaredStyle } from "./cascade.ts";
import { meetsConditions, type RenderedKind } from "./element-role.ts";
import { parseOpacity } from "./paint.ts";
import { MOST_ELEMENTS, MOST_LEVELS } from "./picture-bounds.ts";
import { PictureLimit, quoted } from "./picture-error.ts";
import type { PictureReport } from "./picture-report.ts";
import type { Scope } from "./scope.ts";
import type { Style } from "./style-property.ts";
import { parseTransform } from "./svg-transform.ts";
import { tellUnhonoured } from "./unhonoured.ts";

/** Goes into elements: counts them, and finds what they change for all inside. */
export class Entrance {
  readonly #cascade: Cascade;
  readonly #report: PictureReport;
  #elements = 0;

  constructor(cascade: Cascade, report: PictureReport) {
    this.#cascade = cascade;
    this.#report = report;
  }

  /** The scope inside an element, or undefined when nothing of it shows. @throws PictureError */
  enter(element: Element, outer: Scope, kind: RenderedKind): Scope | undefined {
    this.#countElement(element, outer.depth);
    if (!meetsConditions(element)) return undefined;
    const declared = this.#cascade.declaredBy(element);
    const style = computedStyle(declared, outer.style);
    if (style.display === "none" || this.#readOpacities(element, declared, style) === 0) return undefined;
    tellUnhonoured(element, kind, declared, style, this.#report);
    const called = callingOf(element);
    const isNamed = called.id !== undefined || called.names.length > 0 || called.classes.length > 0;
    return {
      ...outer,
      map: compose(outer.map, readAttribute(element, "transform", parseTransform) ?? IDENTITY),
      style,
      called: isNamed || kind === "shape" || kind === "text" ? [called, ...outer.called] : outer.called,
      depth: outer.depth + 1,
    };
  }

  /** The element's own opacity; notes every opacity of it that is neither 0 nor 1. */
  #readOpacities(element: Element, declared: DeclaredStyle, style: Style): number {
    for (const name of ["opacity", "fill-opacity", "stroke-opacity"] as const) {
      const line = declared.get(name)?.line;
      if (line === undefined) continue;
      const value = atLine(line, `<${element.localName}> ${name}`, () => parseOpacity(style[name]));
      if (value === 0 || value === 1) continue;
      this.#report.note(line, say.pictureSolid({ what: `<${element.localName}> ${name}`, value: quoted(style[name]) }));
    }
    return parseOpacity(style.opacity);
  }

  #countElement(element: Element, depth: number): void {
    this.#elements += 1;
    if (depth >= MOST_LEVELS) throw new PictureLimit(lineOf(element), say.pictureManyLevels({ most: MOST_LEVELS }));
    if (this.#elements <= MOST_ELEMENTS) return;
    throw new PictureLimit(lineOf(element), say.pictureManyElements({ most: MOST_ELEMENTS }));
  }
}
