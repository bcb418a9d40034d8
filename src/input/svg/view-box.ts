import type { Affine } from "../../core/geometry/affine.ts";
import * as say from "../../words/messages.ts";
import { parseNumberList } from "./number-list.ts";
import { quoted, ValueError } from "./picture-error.ts";

/** What percentages refer to, in user units. */
export interface Viewport {
  readonly width: number;
  readonly height: number;
  /** √((width² + height²) / 2), for lengths along neither axis (SVG 2, "Units"). */
  readonly diagonal: number;
}

/** A rectangle in user units, with the corner of least x and y; width and height > 0. */
export interface ViewBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The viewport of a rectangle's size. */
export function viewportOf(size: { readonly width: number; readonly height: number }): Viewport {
  return { width: size.width, height: size.height, diagonal: Math.hypot(size.width, size.height) / Math.SQRT2 };
}

/**
 * The rectangle of a `viewBox` attribute.
 *
 * @throws ValueError unless it has four numbers, the last two > 0
 */
export function parseViewBox(text: string): ViewBox {
  const [x, y, width, height, ...rest] = parseNumberList(text);
  if (x === undefined || y === undefined || width === undefined || height === undefined || rest.length > 0) {
    throw new ValueError((what) => say.pictureViewBoxNumbers({ what, value: quoted(text) }));
  }
  if (width <= 0 || height <= 0) throw new ValueError((what) => say.pictureViewBoxSize({ what, value: quoted(text) }));
  return { x, y, width, height };
}

/** How a viewBox is fitted into a viewport: a share 0…1 of the room left over on each axis, or stretched. */
export interface Fitting {
  readonly align: readonly [x: number, y: number] | "stretch";
  /** True to cover the viewport, false to stay within it. */
  readonly slice: boolean;
}

const SHARE: Readonly<Record<string, number>> = { Min: 0, Mid: 0.5, Max: 1 };

/**
 * A `preserveAspectRatio` attribute; the default is `xMidYMid meet`.
 *
 * @throws ValueError for anything that SVG 2 does not define
 */
export function parseFitting(text: string): Fitting {
  const found = /^(?:none|x(Min|Mid|Max)Y(Min|Mid|Max))(?:\s+(meet|slice))?$/.exec(text.trim());
  if (found === null) throw new ValueError((what) => say.pictureFitting({ what, value: quoted(text) }));
  const [, x, y, mode] = found;
  if (x === undefined || y === undefined) return { align: "stretch", slice: false };
  return { align: [SHARE[x]!, SHARE[y]!], slice: mode === "slice" };
}

/** The map from a viewBox to a viewport with its corner at 0,0. Source: SVG 2, "Computing the equivalent transform". */
export function fitViewBox(box: ViewBox, width: number, height: number, fitting: Fitting): Affine {
  const scaleX = width / box.width;
  const scaleY = height / box.height;
  if (fitting.align === "stretch") return [scaleX, 0, 0, scaleY, -box.x * scaleX, -box.y * scaleY];
  const scale = fitting.slice ? Math.max(scaleX, scaleY) : Math.min(scaleX, scaleY);
  const [shareX, shareY] = fitting.align;
  const left = (width - box.width * scale) * shareX;
  const top = (height - box.height * scale) * shareY;
  return [scale, 0, 0, scale, left - box.x * scale, top - box.y * scale];
}
