import type { Element } from "@xmldom/xmldom";
import { type Affine, compose, IDENTITY, mapPoint, translation } from "../../core/geometry/affine.ts";
import type { Area } from "../../core/geometry/area.ts";
import type { Box } from "../../core/geometry/box.ts";
import * as say from "../../words/messages.ts";
import { lineOf, readAttribute, readLength } from "./attribute.ts";
import { type Cascade, computedStyle } from "./cascade.ts";
import { luminanceOf } from "./colour.ts";
import { cutTarget } from "./cut-target.ts";
import type { Gathered } from "./gathered.ts";
import type { PictureAreas } from "./picture-areas.ts";
import type { PictureReport } from "./picture-report.ts";
import type { Scope } from "./scope.ts";
import { INITIAL_STYLE, type Style } from "./style-property.ts";
import { childElements } from "./svg-document.ts";
import type { PaintedShape } from "./svg-picture.ts";
import { parseTransform } from "./svg-transform.ts";

/** What a cut needs of the reading around it. */
export interface Reading {
  readonly byId: ReadonlyMap<string, Element>;
  readonly cascade: Cascade;
  readonly gathered: Gathered;
  readonly report: PictureReport;
  readonly areas: PictureAreas;
  /** Gathers what an element shows. */
  readonly visit: (element: Element, scope: Scope) => void;
}

/** What is cut: its user space, and its box in it where that is asked for. */
export interface Cutting {
  readonly scope: Scope;
  readonly box: () => Box;
}

/** Below and above these shares of light a mask is taken as closed and as open. */
const [CLOSED, OPEN] = [0.02, 0.98];

/** Elements that count inside a clip path. Source: CSS Masking 1, "The clipPath element". */
const CLIPPING = ["path", "rect", "circle", "ellipse", "polygon", "polyline", "line", "text", "use"];

/** Reads clip paths and masks as areas. */
export class CutAreas {
  readonly #reading: Reading;
  readonly #styles = new Map<Element, Style>();
  readonly #clips = new Map<Element, { readonly key: string; readonly area: Area }>();

  constructor(reading: Reading) {
    this.#reading = reading;
  }

  /** The area of a clip path. @throws PictureError for what cannot be followed */
  clipArea(clip: Element, cutting: Cutting): Area {
    const { areas } = this.#reading;
    const units = this.#units(clip, "clipPathUnits", "userSpaceOnUse", cutting);
    const map = compose(units, readAttribute(clip, "transform", parseTransform) ?? IDENTITY);
    const key = [...map, ...cutting.scope.map].join(" ");
    const known = this.#clips.get(clip);
    if (known?.key === key) return known.area;
    const line = lineOf(clip);
    const scope = { ...this.#inside(clip, cutting.scope, map), clipping: true };
    const shapes = this.#shapesOf(
      childElements(clip).filter(({ localName }) => CLIPPING.includes(localName!)),
      scope,
    );
    let area: Area = [];
    for (const shape of shapes) area = areas.unite(area, areas.areaOf(shape, shape.line), line);
    const { byId, report } = this.#reading;
    const outer = cutTarget(clip, { name: "clip-path", value: scope.style["clip-path"] }, scope, byId, report);
    if (outer)
      area = areas.intersect(
        area,
        this.clipArea(outer, { ...cutting, scope: { ...cutting.scope, showing: scope.showing } }),
        line,
      );
    this.#clips.set(clip, { key, area });
    return area;
  }

  /** The area that a mask leaves open: light shapes open it and black ones close it again. */
  maskArea(mask: Element, cutting: Cutting): Area {
    const { areas, report } = this.#reading;
    const map = this.#units(mask, "maskContentUnits", "userSpaceOnUse", cutting);
    const scope = this.#inside(mask, cutting.scope, map);
    const line = lineOf(mask);
    let area: Area = [];
    for (const shape of this.#shapesOf(childElements(mask), scope)) {
      const light = scope.style["mask-type"] === "alpha" || shape.colour === undefined ? 1 : luminanceOf(shape.colour);
      const open = light > CLOSED;
      const soft = shape.colour === undefined || shape.alpha < 1 || (open && light < OPEN);
      if (soft) report.note(shape.line, say.pictureMaskSolid({ name: shape.element }));
      const own = areas.areaOf(shape, shape.line);
      if (open) area = areas.unite(area, own, line);
      else if (shape.alpha >= OPEN) area = areas.subtract(area, own, line);
    }
    return areas.intersect(area, this.#maskFrame(mask, cutting), line);
  }

  /** The rectangle of a mask, outside which it is closed: a tenth around the box without figures. */
  #maskFrame(mask: Element, cutting: Cutting): Area {
    const { width, height } = cutting.scope.viewport;
    const own = mask.getAttribute("maskUnits") === "userSpaceOnUse";
    const of = own ? { width, height } : { width: 1, height: 1 };
    const x = readLength(mask, "x", of.width) ?? -0.1 * of.width;
    const y = readLength(mask, "y", of.height) ?? -0.1 * of.height;
    const right = x + (readLength(mask, "width", of.width) ?? 1.2 * of.width);
    const bottom = y + (readLength(mask, "height", of.height) ?? 1.2 * of.height);
    const map = this.#units(mask, "maskUnits", "objectBoundingBox", cutting);
    const corners = [
      [x, y],
      [right, y],
      [right, bottom],
      [x, bottom],
    ] as const;
    return this.#reading.areas.areaOf(
      { rings: [corners.map((corner) => mapPoint(map, corner))], rule: "nonzero" },
      lineOf(mask),
    );
  }

  /** From the units of an attribute to the picture. */
  #units(element: Element, attribute: string, initial: string, { scope, box }: Cutting): Affine {
    if ((element.getAttribute(attribute) || initial) !== "objectBoundingBox") return scope.map;
    const { left, top, right, bottom } = box();
    return compose(scope.map, compose(translation(left, top), [right - left, 0, 0, bottom - top, 0, 0]));
  }

  /** The scope of what stands inside a clip path or mask, which inherits where it stands and not where it is used. */
  #inside(element: Element, outer: Scope, map: Affine): Scope {
    return {
      ...outer,
      map,
      style: this.#styleOf(element),
      called: [],
      depth: outer.depth + 1,
      showing: [...outer.showing, element],
      clipping: false,
    };
  }

  #shapesOf(children: readonly Element[], scope: Scope): readonly PaintedShape[] {
    return this.#reading.gathered.apart(() => {
      for (const child of children) this.#reading.visit(child, scope);
    });
  }

  #styleOf(element: Element): Style {
    const known = this.#styles.get(element);
    if (known) return known;
    const { parentNode } = element;
    const outer = parentNode?.nodeType === 1 ? this.#styleOf(parentNode as Element) : INITIAL_STYLE;
    const style = computedStyle(this.#reading.cascade.declaredBy(element), outer);
    this.#styles.set(element, style);
    return style;
  }
}
