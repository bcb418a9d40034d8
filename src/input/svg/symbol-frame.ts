import type { Element } from "@xmldom/xmldom";
import { type Affine, compose, determinant, mapPoint } from "../../core/geometry/affine.ts";
import { clipRing, staysWithin } from "../../core/geometry/clip-ring.ts";
import type { Ring } from "../../core/geometry/point.ts";
import * as say from "../../words/messages.ts";
import { lineOf, readAttribute, readSize } from "./attribute.ts";
import { hasArea } from "./path-outline.ts";
import { PictureError } from "./picture-error.ts";
import { fitViewBox, parseFitting, parseViewBox, type Viewport, viewportOf } from "./view-box.ts";

/** Where a `use` puts a symbol. */
export interface SymbolFrame {
  /** From the symbol's user space to the picture. */
  readonly map: Affine;
  /** What percentages inside the symbol refer to. */
  readonly viewport: Viewport;
  /** Corners of the symbol's viewport in the picture; empty when a side or the map is 0. */
  readonly corners: Ring;
}

const UNHONOURED = ["x", "y", "refX", "refY", "transform"];

/**
 * The frame of a symbol: sized by the `use`, else by the symbol, else as the viewport around; its viewBox fitted in.
 * Source: SVG 2, "The 'symbol' element" and "The 'preserveAspectRatio' attribute".
 *
 * @param map from the space of the `use`, with its x and y applied, to the picture
 * @throws PictureError for malformed attributes and those of symbol that move it
 */
export function frameSymbol(symbol: Element, use: Element, map: Affine, around: Viewport): SymbolFrame {
  for (const name of UNHONOURED.filter((attribute) => symbol.hasAttribute(attribute))) {
    throw new PictureError(lineOf(symbol), say.pictureSymbolAttribute({ attribute: name }));
  }
  const side = (name: "width" | "height"): number =>
    readSize(use, name, around[name]) ?? readSize(symbol, name, around[name]) ?? around[name];
  const width = side("width");
  const height = side("height");
  const box = readAttribute(symbol, "viewBox", parseViewBox);
  const fitting = readAttribute(symbol, "preserveAspectRatio", parseFitting) ?? parseFitting("xMidYMid");
  const inner = box === undefined ? map : compose(map, fitViewBox(box, width, height, fitting));
  const isFlat = width === 0 || height === 0 || determinant(map) === 0;
  const corners: Ring = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  return {
    map: inner,
    viewport: viewportOf(box ?? { width, height }),
    corners: isFlat ? [] : corners.map((corner) => mapPoint(map, corner)),
  };
}

/** The rings as far as they lie in a frame; themselves when they leave it by no more than `tolerance`. */
export function clipToFrame(rings: readonly Ring[], corners: Ring, tolerance: number): readonly Ring[] {
  if (rings.every((ring) => staysWithin(ring, corners, tolerance))) return rings;
  return rings.map((ring) => clipRing(ring, corners)).filter((ring) => ring.length >= 3 && hasArea([ring]));
}
