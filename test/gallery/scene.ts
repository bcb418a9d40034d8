import type { Figure } from "../../src/output/drawing/figure.ts";
import { SHEET } from "../../src/output/drawing/sheets/true-scale.ts";
import { num } from "../../src/output/drawing/svg-text.ts";

/** A drawing of the gallery: a function of `src/output/drawing` with what it is given. */
export interface Scene {
  /** Where it hangs: the folder of its golden. */
  readonly room: string;
  /** Its own in its room: small letters, digits and hyphens. */
  readonly name: string;
  /** The function that is called. */
  readonly of: Drawer;
  /** The drawing as an svg element with a width and a height. */
  readonly draw: () => string;
}

/** Any function of `src/output/drawing`; of its own file and name. */
export type Drawer = (...given: never[]) => unknown;

/** The room that a small figure has on paper, mm. */
export interface Place {
  readonly width: number;
  readonly height: number;
}

/** Where `layouts/styles` puts figures, mm: a diagram's column, and the least room of the other figures. */
export const DIAGRAM: Place = { width: 84, height: Number.POSITIVE_INFINITY };
export const PAIR: Place = { width: 88, height: 62 };
export const PART: Place = { width: 16, height: 16 };
export const CUT_SHEET: Place = { width: 58, height: Number.POSITIVE_INFINITY };
export const SEAT_CODE: Place = { width: 34, height: 34 };

/** Where a scene's golden is below the folder of goldens, without its ending: `room/name`. */
export function pathOf({ room, name }: Pick<Scene, "room" | "name">): string {
  return `${room}/${name}`;
}

/** A figure as large as it is printed. */
export function figureIn(place: Place, { svg }: Figure): string {
  const [, , width, height] = /viewBox="([^"]+)"/.exec(svg)![1]!.split(" ").map(Number) as [
    number,
    number,
    number,
    number,
  ];
  const scale = Math.min(place.width / width, place.height / height);
  const size = `width="${num(width * scale)}mm" height="${num(height * scale)}mm"`;
  return svg.replace("<svg ", `<svg xmlns="http://www.w3.org/2000/svg" ${size} `);
}

/** What a drawing puts on a sheet at true scale. */
export function onSheet(drawing: string, { width, height }: Place = SHEET): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" class="drawing" width="${num(width)}mm" height="${num(height)}mm" viewBox="0 0 ${num(width)} ${num(height)}">${drawing}</svg>`;
}

/** A figure that this kit must have. */
export function stated(figure: Figure | undefined): Figure {
  if (!figure) throw new Error("This kit has no such figure.");
  return figure;
}
