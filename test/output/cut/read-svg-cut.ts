import { DOMParser, type Element } from "@xmldom/xmldom";
import { SVGPathData } from "svg-pathdata";
import type { Point } from "../../core/geometry/plane.ts";

/** A line of a cut file as an unrelated reader gives it, y down, in file order. */
export interface CutPath {
  readonly layer: string;
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly dash: string;
}

export interface CutSheet {
  readonly width: string;
  readonly height: string;
  readonly viewBox: readonly number[];
  readonly title: string;
  readonly description: string;
  readonly paths: readonly CutPath[];
  /** Every element and attribute name that occurs. */
  readonly names: ReadonlySet<string>;
}

/** Reads a cut file with xmldom and svg-pathdata. @throws Error on path commands other than absolute M, L, Z */
export function readSvgCut(text: string): CutSheet {
  const document = new DOMParser({
    onError: (level, message) => {
      throw new Error(`${level}: ${message}`);
    },
  }).parseFromString(text, "image/svg+xml");
  const root = document.documentElement as Element;
  const elements = [root, ...Array.from(document.getElementsByTagName("*"))];
  const attributes = elements.flatMap((element) => Array.from(element.attributes).map((one) => one.name));
  const textOf = (name: string): string => document.getElementsByTagName(name)[0]?.textContent ?? "";
  return {
    width: root.getAttribute("width") ?? "",
    height: root.getAttribute("height") ?? "",
    viewBox: (root.getAttribute("viewBox") ?? "").split(" ").map(Number),
    title: textOf("title"),
    description: textOf("desc"),
    paths: Array.from(document.getElementsByTagName("path")).map(readPath),
    names: new Set([...elements.map((element) => element.localName ?? ""), ...attributes]),
  };
}

function readPath(element: Element): CutPath {
  const commands = new SVGPathData(element.getAttribute("d") ?? "").commands;
  const points = commands.flatMap((command, i): Point[] => {
    if (command.type === SVGPathData.CLOSE_PATH && i === commands.length - 1) return [];
    const wanted = i === 0 ? SVGPathData.MOVE_TO : SVGPathData.LINE_TO;
    if (command.type !== wanted || command.relative) throw new Error(`command ${i} is of type ${command.type}`);
    return [[command.x, command.y]];
  });
  return {
    layer: (element.parentNode as Element).getAttribute("id") ?? "",
    points,
    closed: commands.at(-1)?.type === SVGPathData.CLOSE_PATH,
    dash: element.getAttribute("stroke-dasharray") ?? "",
  };
}
