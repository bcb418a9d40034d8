import { readdirSync, readFileSync } from "node:fs";
import { SVGPathData } from "svg-pathdata";
import { describe, expect, it } from "vitest";
import { parsePathData } from "../../../src/input/svg/path-data.ts";
import type { PathSegment } from "../../../src/input/svg/path-segment.ts";
import { onlyShape, readBody, rounded } from "./figure.ts";

const ICONS = new URL("../../../node_modules/@phosphor-icons/core/assets/fill/", import.meta.url);

describe("parsePathData(text)", () => {
  it.each<[string, string, number[][][]]>([
    [
      "absolute commands",
      "M10 10 H20 V20 L10,20 Z",
      [
        [
          [10, 10],
          [20, 10],
          [20, 20],
          [10, 20],
        ],
      ],
    ],
    [
      "relative commands",
      "m10 10h10v10l-10 0z",
      [
        [
          [10, 10],
          [20, 10],
          [20, 20],
          [10, 20],
        ],
      ],
    ],
    [
      "lines after a move",
      "M0 0 5 0 5 5",
      [
        [
          [0, 0],
          [5, 0],
          [5, 5],
        ],
      ],
    ],
    [
      "relative lines after a relative move",
      "m1 1 5 0 0 5",
      [
        [
          [1, 1],
          [6, 1],
          [6, 6],
        ],
      ],
    ],
    [
      "repeats of h and v",
      "M0 0h1 2 3v4-1z",
      [
        [
          [0, 0],
          [1, 0],
          [3, 0],
          [6, 0],
          [6, 4],
          [6, 3],
        ],
      ],
    ],
    [
      "packed numbers",
      "M.5.5-1-1+2e0.25e1z",
      [
        [
          [0.5, 0.5],
          [-1, -1],
          [2, 2.5],
        ],
      ],
    ],
    [
      "numbers with zeros before",
      "M007 00L10 0 10 5",
      [
        [
          [7, 0],
          [10, 0],
          [10, 5],
        ],
      ],
    ],
    [
      "every kind of white space",
      "M0\f0\n1\t0,\r1,1",
      [
        [
          [0, 0],
          [1, 0],
          [1, 1],
        ],
      ],
    ],
    [
      "a subpath that goes on after z",
      "M10 10h5v5zl-5 0 0-5z",
      [
        [
          [10, 10],
          [15, 10],
          [15, 15],
        ],
        [
          [10, 10],
          [5, 10],
          [5, 5],
        ],
      ],
    ],
    [
      "a relative move after z",
      "M10 10h5v5zm20 0h5v5z",
      [
        [
          [10, 10],
          [15, 10],
          [15, 15],
        ],
        [
          [30, 10],
          [35, 10],
          [35, 15],
        ],
      ],
    ],
    [
      "open subpaths",
      "M0 0h5v5M20 0h5v5",
      [
        [
          [0, 0],
          [5, 0],
          [5, 5],
        ],
        [
          [20, 0],
          [25, 0],
          [25, 5],
        ],
      ],
    ],
    [
      "an end that repeats the start",
      "M0 0h5v5H0V0z",
      [
        [
          [0, 0],
          [5, 0],
          [5, 5],
          [0, 5],
        ],
      ],
    ],
    [
      "points given twice",
      "M0 0h0h5h0v5l0 0z",
      [
        [
          [0, 0],
          [5, 0],
          [5, 5],
        ],
      ],
    ],
    [
      "a move without a line",
      "M9 9M0 0h5v5z",
      [
        [
          [0, 0],
          [5, 0],
          [5, 5],
        ],
      ],
    ],
    [
      "a subpath of two points beside another",
      "M0 0h9zM0 0h5v5z",
      [
        [
          [0, 0],
          [5, 0],
          [5, 5],
        ],
      ],
    ],
    [
      "an arc without radius as a line",
      "M0 0A0 5 0 0 1 5 0L5 5",
      [
        [
          [0, 0],
          [5, 0],
          [5, 5],
        ],
      ],
    ],
    [
      "an arc that goes nowhere",
      "M0 0A5 5 0 1 1 0 0L5 0 5 5",
      [
        [
          [0, 0],
          [5, 0],
          [5, 5],
        ],
      ],
    ],
  ])("reads %s", (_, d, expected) => {
    expect(rounded(onlyShape(`<path d="${d}"/>`).rings)).toEqual(expected);
  });

  // flag ::= "0" | "1" in SVG 2, paths, "The grammar for path data": nothing need follow a flag.
  it.each([
    ["M9 9a1 1 0 01.5.5z", "M9 9a1 1 0 0 1 .5 .5z"],
    ["M9 9a1 1 0 11.5.5.5.5.5 101-.5z", "M9 9a1 1 0 1 1 .5 .5 .5 .5 .5 1 0 1 -.5z"],
    ["M9 9a2,2,30,00-1-1z", "M9 9a2 2 30 0 0 -1 -1z"],
    ["M9 9A2 2 0 0110 10z", "M9 9A2 2 0 0 1 10 10z"],
  ])("reads the packed flags of %s", (packed, spaced) => {
    expect(parsePathData(packed)).toEqual(parsePathData(spaced));
  });

  it("reads the packed arc a1 1 0 01.5.5 as the grammar does", () => {
    expect(parsePathData("M1 2a3 4 90 01.5.5")[1]).toEqual({
      kind: "arc",
      radii: [3, 4],
      turn: Math.PI / 2,
      large: false,
      clockwise: true,
      to: [1.5, 2.5],
    });
  });

  it("takes radii without their sign", () => {
    expect(parsePathData("M0 0a-3-4 0 0 1 5 5")).toEqual(parsePathData("M0 0a3 4 0 0 1 5 5"));
  });

  it.each([
    [
      "S after C mirrors its second control point",
      "M0 0C1 2 3 4 5 5S8 8 9 9",
      [
        [7, 6],
        [8, 8],
      ],
    ],
    [
      "S after a line starts at the point itself",
      "M0 0L5 5S8 8 9 9",
      [
        [5, 5],
        [8, 8],
      ],
    ],
    [
      "S after Q starts at the point itself",
      "M0 0Q1 2 5 5S8 8 9 9",
      [
        [5, 5],
        [8, 8],
      ],
    ],
    ["T after Q mirrors its control point", "M0 0Q1 2 5 5T9 9", [[9, 8]]],
    ["T after T mirrors the mirrored one", "M0 0Q1 2 5 5T9 9t1 1", [[9, 10]]],
    ["T after C starts at the point itself", "M0 0C1 2 3 4 5 5T9 9", [[5, 5]]],
    [
      "s after c",
      "M1 1c1 2 3 4 5 5s3 3 4 4",
      [
        [8, 7],
        [9, 9],
      ],
    ],
  ])("%s", (_, d, controls) => {
    expect(parsePathData(d).at(-1)).toMatchObject({ kind: "curve", controls });
  });

  it("gives nothing for empty data and none", () => {
    expect(parsePathData("")).toEqual([]);
    expect(parsePathData(" \n")).toEqual([]);
    expect(parsePathData("none")).toEqual([]);
  });

  it.each([
    ["M0 0L5", 'has the end at character 7 where a number belongs, after "M0 0L5"'],
    ["M0 0 5 5 5", 'has the end at character 11 where a number belongs, after "M0 0 5 5 5"'],
    ["L5 5", 'has "L5 5" at character 1 where "M" belongs'],
    ["5 5M0 0", 'has "5 5M0 0" at character 1 where "M" belongs'],
    ["M0 0L5 5x", 'has "x" at character 9 where a path command belongs, after "M0 0L5 5"'],
    ["M0 0z5 5", 'has "5 5" at character 6 where a path command belongs, after "M0 0z"'],
    ["M0 0,L5 5", 'has "L5 5" at character 6 where a number belongs, after "M0 0,"'],
    ["M0 0L,5 5", 'has ",5 5" at character 6 where a number belongs, after "M0 0L"'],
    ["M0,,0", 'has ",0" at character 4 where a number belongs, after "M0,"'],
    ["M0 0L5 5,", 'has the end at character 10 where a number belongs, after "M0 0L5 5,"'],
    ["M0 0a1 1 0 2 1 5 5", 'has "2 1 5 5" at character 12 where an arc flag, 0 or 1, belongs, after "M0 0a1 1 0"'],
    ["M0 0L1e999 0", 'has "1e999 0" at character 6 where a number belongs, after "M0 0L"'],
    ["M0 0L1e 5", 'has "e 5" at character 7 where a number belongs, after "M0 0L1"'],
    ["M0 0 NaN 5", 'has "NaN 5" at character 6 where a path command belongs, after "M0 0"'],
  ])("rejects %s", (d, message) => {
    expect(() => parsePathData(d)).toThrow(expect.objectContaining({ message: `… ${message}` }));
    expect(() => readBody(`\n<path d="${d}"/>`)).toThrow(
      expect.objectContaining({ line: 3, message: `<path> d ${message}` }),
    );
  });
});

describe("parsePathData(text) beside the svg-pathdata library", () => {
  it("agrees on the ends and control points of all 1512 filled icons", () => {
    const names = readdirSync(ICONS);
    expect(names.length).toBe(1512);
    for (const name of names) {
      for (const [, d] of readFileSync(new URL(name, ICONS), "utf8").matchAll(/ d="([^"]+)"/g)) {
        const own = parsePathData(d!).map(numbersOf);
        const other = new SVGPathData(d!).toAbs().normalizeST().commands.map(numbersOfCommand);
        expect(own.length, name).toBe(other.length);
        own.forEach((numbers, i) => {
          expect(numbers.length, name).toBe(other[i]!.length);
          for (const [k, value] of numbers.entries()) expect(Math.abs(value - other[i]![k]!) > 1e-9, name).toBe(false);
        });
      }
    }
  });
});

function numbersOf(segment: PathSegment): number[] {
  if (segment.kind === "close") return [];
  if (segment.kind === "curve") return [...segment.controls.flat(), ...segment.to];
  if (segment.kind !== "arc") return [...segment.to];
  return [
    ...segment.radii,
    (segment.turn * 180) / Math.PI,
    Number(segment.large),
    Number(segment.clockwise),
    ...segment.to,
  ];
}

/** The numbers of a command of the library; NaN for the coordinate that `H` and `V` do not give. */
function numbersOfCommand(command: SVGPathData["commands"][number]): number[] {
  switch (command.type) {
    case SVGPathData.CLOSE_PATH:
      return [];
    case SVGPathData.CURVE_TO:
      return [command.x1, command.y1, command.x2, command.y2, command.x, command.y];
    case SVGPathData.QUAD_TO:
      return [command.x1, command.y1, command.x, command.y];
    case SVGPathData.ARC:
      return [command.rX, command.rY, command.xRot, command.lArcFlag, command.sweepFlag, command.x, command.y];
    case SVGPathData.HORIZ_LINE_TO:
      return [command.x, Number.NaN];
    case SVGPathData.VERT_LINE_TO:
      return [Number.NaN, command.y];
    case SVGPathData.MOVE_TO:
    case SVGPathData.LINE_TO:
      return [command.x, command.y];
    default:
      throw new Error(`unexpected command ${command.type}`);
  }
}
