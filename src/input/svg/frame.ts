import type { Element } from "@xmldom/xmldom";
import { type Affine, compose, determinant, mapPoint, translation } from "../../core/geometry/affine.ts";
import type { Ring } from "../../core/geometry/point.ts";
import { readAttribute, readLength, readSize } from "./attribute.ts";
import { parseSvgLength } from "./svg-length.ts";
import { fitViewBox, parseFitting, parseViewBox, type ViewBox, type Viewport, viewportOf } from "./view-box.ts";

/** Where an inner `svg` shows its content, or a `use` its symbol. */
export interface Frame {
  /** From the space inside to the picture. */
  readonly map: Affine;
  /** What percentages inside refer to. */
  readonly viewport: Viewport;
  /** Corners of the frame in the picture; empty when a side or the map is 0. */
  readonly corners: Ring;
}

/**
 * The frame of a symbol: sized by the `use`, else by the symbol, else as the viewport around; its viewBox fitted in, and its
 * point of reference in the corner. Source: SVG 2, "The 'symbol' element" and "The 'preserveAspectRatio' attribute".
 *
 * @param map from the space of the `use`, with its x and y applied, to the picture
 * @throws PictureError for malformed attributes
 */
export function frameSymbol(symbol: Element, use: Element, map: Affine, around: Viewport): Frame {
  const side = (name: "width" | "height"): number =>
    readSize(use, name, around[name]) ?? readSize(symbol, name, around[name]) ?? around[name];
  return frameOf(symbol, map, around, { width: side("width"), height: side("height") });
}

/** The frame of an inner `svg`, as {@link frameSymbol}. @throws PictureError for malformed attributes */
export function frameSvg(svg: Element, map: Affine, around: Viewport): Frame {
  const side = (name: "width" | "height"): number => readSize(svg, name, around[name]) ?? around[name];
  return frameOf(svg, map, around, { width: side("width"), height: side("height") });
}

function frameOf(
  element: Element,
  outer: Affine,
  around: Viewport,
  { width, height }: { readonly width: number; readonly height: number },
): Frame {
  const x = readLength(element, "x", around.width) ?? 0;
  const y = readLength(element, "y", around.height) ?? 0;
  const box = readAttribute(element, "viewBox", parseViewBox);
  const fitting = readAttribute(element, "preserveAspectRatio", parseFitting) ?? parseFitting("xMidYMid");
  const fit = box === undefined ? translation(0, 0) : fitViewBox(box, width, height, fitting);
  const [shiftX, shiftY] = referencePoint(element, box ?? { x: 0, y: 0, width, height }, fit);
  const map = compose(outer, translation(x - shiftX, y - shiftY));
  const isFlat = width === 0 || height === 0 || determinant(map) === 0;
  const corners: Ring = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  return {
    map: compose(map, fit),
    viewport: viewportOf(box ?? { width, height }),
    corners: isFlat ? [] : corners.map((corner) => mapPoint(map, corner)),
  };
}

const WORDS: Readonly<Record<string, number>> = { left: 0, top: 0, center: 0.5, right: 1, bottom: 1 };

/** Where `refX` and `refY` of a symbol come to lie, from the corner of its frame; without them that corner. */
function referencePoint(element: Element, box: ViewBox, fit: Affine): readonly [number, number] {
  const read = (name: "refX" | "refY", from: number, size: number): number | undefined =>
    readAttribute(element, name, (text) => {
      const word = text.trim();
      const share = Object.hasOwn(WORDS, word) ? WORDS[word] : undefined;
      return share === undefined ? parseSvgLength(text, size) : from + share * size;
    });
  const [refX, refY] = [read("refX", box.x, box.width), read("refY", box.y, box.height)];
  return [refX === undefined ? 0 : fit[0] * refX + fit[4], refY === undefined ? 0 : fit[3] * refY + fit[5]];
}
