import { DOMParser, type Element } from "@xmldom/xmldom";
import type { Point } from "../../core/geometry/plane.ts";

export interface DrawnText {
  readonly words: string;
  readonly x: number;
  readonly y: number;
}

/** A nested drawing with a window of its own into its coordinates. */
export interface DrawnTile {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly viewBox: readonly [x: number, y: number, width: number, height: number];
}

export interface Drawing {
  readonly texts: readonly DrawnText[];
  readonly tiles: readonly DrawnTile[];
  /** Paths of M, L, l, h, v, Z by their dash pattern, with all their points. */
  readonly paths: readonly {
    readonly dash: string;
    readonly data: string;
    readonly points: readonly Point[];
    readonly inTile: boolean;
  }[];
}

/** Reads a sheet's drawing (the inside of an svg element) with xmldom. */
export function readDrawing(drawing: string): Drawing {
  const document = new DOMParser().parseFromString(
    `<svg xmlns="http://www.w3.org/2000/svg">${drawing}</svg>`,
    "image/svg+xml",
  );
  const all = (name: string): Element[] => Array.from(document.getElementsByTagName(name));
  const number = (element: Element, name: string): number => Number(element.getAttribute(name));
  return {
    texts: all("text").map((one) => ({ words: one.textContent ?? "", x: number(one, "x"), y: number(one, "y") })),
    tiles: all("svg")
      .slice(1)
      .map((one) => ({
        x: number(one, "x"),
        y: number(one, "y"),
        width: number(one, "width"),
        height: number(one, "height"),
        viewBox: (one.getAttribute("viewBox") ?? "").split(" ").map(Number) as unknown as DrawnTile["viewBox"],
      })),
    paths: all("path").map((one) => ({
      dash: one.getAttribute("stroke-dasharray") ?? "",
      data: one.getAttribute("d") ?? "",
      points: pointsOf(one.getAttribute("d") ?? ""),
      inTile: (one.parentNode as Element) !== document.documentElement,
    })),
  };
}

function pointsOf(data: string): Point[] {
  let at: Point = [0, 0];
  return Array.from(data.matchAll(/([MLlhvzZ])([^MLlhvzZ]*)/g)).flatMap(([, command, rest]): Point[] => {
    const values = Array.from(rest!.matchAll(/-?(\d+\.?\d*|\.\d+)/g), ([number]) => Number(number));
    if (command === "z" || command === "Z") return [];
    if (command === "l")
      return Array.from({ length: values.length / 2 }, (_, i): Point => {
        at = [at[0] + values[2 * i]!, at[1] + values[2 * i + 1]!];
        return at;
      });
    if (command === "h") at = [at[0] + values[0]!, at[1]];
    else if (command === "v") at = [at[0], at[1] + values[0]!];
    else at = [values[0]!, values[1]!];
    return [at];
  });
}
