import { describe, expect, it } from "vitest";
import type { Point } from "../../../src/core/geometry/point.ts";
import { PictureError, readSvg } from "../../../src/input/svg/read-svg.ts";
import type { PaintedShape } from "../../../src/input/svg/svg-picture.ts";
import { fc } from "../../seed.ts";
import { boundsOf, onlyShape, readBody, rounded } from "./figure.ts";

const idsOf = ({ called }: PaintedShape): string[] => called.flatMap(({ id }) => id ?? []);

const SQUARE = '<rect width="10" height="10"/>';

describe("readSvg(text): picture box", () => {
  it.each<[string, number, number, number[]]>([
    ['viewBox="0 0 100 50"', 100, 50, [0, 0, 10, 10]],
    ['viewBox="-20,10 100 50" width="1mm" height="9in"', 100, 50, [20, -10, 30, 0]],
    ['viewBox="0 -960 960 960"', 960, 960, [0, 960, 10, 970]],
    ['viewBox="5.5-5.5.5.25"', 0.5, 0.25, [-5.5, 5.5, 4.5, 15.5]],
    ['width="30" height="40px"', 30, 40, [0, 0, 10, 10]],
    ['width="1in" height="2.54cm"', 96, 96, [0, 0, 10, 10]],
    ['width="25.4mm" height="72pt"', 96, 96, [0, 0, 10, 10]],
    ['width="6pc" height="101.6Q"', 96, 96, [0, 0, 10, 10]],
    // An A4 sheet in px; source: CSS Values 4, "Absolute lengths".
    ['width="210mm" height="297mm"', 793.700787402, 1122.519685039, [0, 0, 10, 10]],
  ])("is given by %s", (attributes, width, height, bounds) => {
    const picture = readBody(SQUARE, attributes);
    expect(picture.width).toBeCloseTo(width, 9);
    expect(picture.height).toBeCloseTo(height, 9);
    expect(boundsOf(picture.shapes[0]!.rings)).toEqual(bounds);
  });

  it("leaves shapes uncut that go beyond it", () => {
    expect(boundsOf(onlyShape('<rect x="-50" y="90" width="500" height="20"/>').rings)).toEqual([-50, 90, 450, 110]);
  });
});

describe("readSvg(text): pictures without a size", () => {
  it.each<[string, number, number, number[]]>([
    ["", 30, 5, [0, 0, 30, 5]],
    ['width="100%" height="100%"', 30, 5, [0, 0, 30, 5]],
    ['width="500"', 30, 5, [0, 0, 30, 5]],
  ])("take the box of what is drawn: %s", (attributes, width, height, bounds) => {
    const { width: w, height: h, shapes, notes } = readBody('<rect x="20" y="-7" width="30" height="5"/>', attributes);
    expect([w, h]).toEqual([width, height]);
    expect(boundsOf(shapes[0]!.rings)).toEqual(bounds);
    expect(notes).toEqual([{ line: 1, message: "<svg> has no size, so the drawing’s own box is taken: 20 -7 30 5" }]);
  });

  it("honour a transform of the outermost element as that of a group", () => {
    const turned = onlyShape(SQUARE, 'viewBox="0 0 100 100" transform="translate(5 6) scale(2)"');
    expect(boundsOf(turned.rings)).toEqual([5, 6, 25, 26]);
  });
});

describe("readSvg(text): basic shapes", () => {
  it.each<[string, number[][][]]>([
    [
      '<rect x="1" y="2" width="3" height="4"/>',
      [
        [
          [1, 2],
          [4, 2],
          [4, 6],
          [1, 6],
        ],
      ],
    ],
    [
      '<rect width="3" height="4" rx="0" ry="1"/>',
      [
        [
          [0, 0],
          [3, 0],
          [3, 4],
          [0, 4],
        ],
      ],
    ],
    [
      '<rect x="10%" y="10%" width="50%" height="50%"/>',
      [
        [
          [20, 10],
          [120, 10],
          [120, 60],
          [20, 60],
        ],
      ],
    ],
    [
      '<polygon points="0,0 5,0 5,5"/>',
      [
        [
          [0, 0],
          [5, 0],
          [5, 5],
        ],
      ],
    ],
    [
      '<polygon points=" 0-1.5.5 5,5 5\n"/>',
      [
        [
          [0, -1.5],
          [0.5, 5],
          [5, 5],
        ],
      ],
    ],
    [
      '<polyline points="0 0 5 0 5 5 0 0"/>',
      [
        [
          [0, 0],
          [5, 0],
          [5, 5],
        ],
      ],
    ],
  ])("reads %s", (body, rings) => {
    expect(rounded(onlyShape(body, 'viewBox="0 0 200 100"').rings)).toEqual(rings);
  });

  it("takes percentages of a radius from the diagonal", () => {
    // √((30² + 40²) / 2) = 35.355…; a tenth of it.
    const [left, , right] = boundsOf(onlyShape('<circle cx="50%" cy="50%" r="10%"/>', 'viewBox="0 0 30 40"').rings);
    expect(left).toBeCloseTo(15 - 3.5355339059, 9);
    expect(right).toBeCloseTo(15 + 3.5355339059, 9);
  });

  it.each<[string, number, number]>([
    ['rx="3"', 3, 3],
    ['ry="3"', 3, 3],
    ['rx="auto" ry="3"', 3, 3],
    ['rx="3" ry="5"', 3, 5],
    ['rx="99"', 20, 10],
    ['rx="99" ry="2"', 20, 2],
    ['ry="15"', 15, 10],
    ['rx="10%"', 10, 10],
  ])("rounds a rect with %s by the auto and clamping rules", (attributes, rx, ry) => {
    // SVG 2, shapes, "The 'rect' element": the outline starts where the top left corner's curve ends.
    const [ring] = onlyShape(`<rect x="10" y="10" width="40" height="20" ${attributes}/>`).rings;
    expect(rounded([ring!])[0]![0]).toEqual([10 + rx, 10]);
    expect(boundsOf([ring!])).toEqual([10, 10, 50, 30]);
    for (const [x, y] of ring!.filter((p) => p[0] < 10 + rx - 1e-9 && p[1] < 10 + ry - 1e-9)) {
      expect(Math.hypot((x - 10 - rx) / rx, (y - 10 - ry) / ry)).toBeCloseTo(1, 9);
    }
  });

  it("gives an ellipse with one radius both", () => {
    expect(boundsOf(onlyShape('<ellipse cx="50" cy="50" rx="7"/>').rings).map(Math.round)).toEqual([43, 43, 57, 57]);
    expect(boundsOf(onlyShape('<ellipse cx="50" cy="50" ry="7" rx="auto"/>').rings).map(Math.round)).toEqual([
      43, 43, 57, 57,
    ]);
  });
});

describe("readSvg(text): transforms", () => {
  it.each<[string, Point[]]>([
    [
      "translate(5)",
      [
        [5, 0],
        [15, 0],
        [5, 10],
      ],
    ],
    [
      "translate(5 -3)",
      [
        [5, -3],
        [15, -3],
        [5, 7],
      ],
    ],
    [
      "scale(2)",
      [
        [0, 0],
        [20, 0],
        [0, 20],
      ],
    ],
    [
      "scale(2,-.5)",
      [
        [0, 0],
        [20, 0],
        [0, -5],
      ],
    ],
    [
      "rotate(90)",
      [
        [0, 0],
        [0, 10],
        [-10, 0],
      ],
    ],
    [
      "rotate(90 10 0)",
      [
        [10, -10],
        [10, 0],
        [0, -10],
      ],
    ],
    [
      "skewX(45)",
      [
        [0, 0],
        [10, 0],
        [10, 10],
      ],
    ],
    [
      "skewY(45)",
      [
        [0, 0],
        [10, 10],
        [0, 10],
      ],
    ],
    [
      "matrix(1 2 3 4 5 6)",
      [
        [5, 6],
        [15, 26],
        [35, 46],
      ],
    ],
    [
      "translate(10,0) , scale(2)",
      [
        [10, 0],
        [30, 0],
        [10, 20],
      ],
    ],
    [
      "scale(2)translate(10-5)",
      [
        [20, -10],
        [40, -10],
        [20, 10],
      ],
    ],
    [
      " rotate( 180 ) \n translate(1 1) ",
      [
        [-1, -1],
        [-11, -1],
        [-1, -11],
      ],
    ],
    [
      "none",
      [
        [0, 0],
        [10, 0],
        [0, 10],
      ],
    ],
    [
      "",
      [
        [0, 0],
        [10, 0],
        [0, 10],
      ],
    ],
  ])("moves a triangle by %s", (transform, corners) => {
    const triangle = '<path d="M0 0H10L0 10z"';
    expect(rounded(onlyShape(`${triangle} transform="${transform}"/>`).rings)[0]).toEqual(corners);
    expect(rounded(onlyShape(`<g transform="${transform}">${triangle}/></g>`).rings)[0]).toEqual(corners);
  });

  it("does nested transforms from the inside out, as one list would", () => {
    const step = fc.oneof(
      fc
        .tuple(fc.integer({ min: -40, max: 40 }), fc.integer({ min: -40, max: 40 }))
        .map(([x, y]) => `translate(${x} ${y})`),
      fc.integer({ min: -180, max: 180 }).map((angle) => `rotate(${angle} 3 4)`),
      fc.tuple(fc.integer({ min: 1, max: 3 }), fc.integer({ min: -3, max: -1 })).map(([x, y]) => `scale(${x} ${y})`),
      fc.integer({ min: -60, max: 60 }).map((angle) => `skewX(${angle})`),
    );
    fc.assert(
      fc.property(fc.array(step, { maxLength: 6 }), (steps) => {
        const nested = steps.reduceRight((body, transform) => `<g transform="${transform}">${body}</g>`, SQUARE);
        const listed = `<g transform="${steps.join(" ")}">${SQUARE}</g>`;
        const [p, q] = [onlyShape(nested).rings[0]!, onlyShape(listed).rings[0]!];
        p.forEach((point, i) => {
          expect(Math.hypot(point[0] - q[i]![0], point[1] - q[i]![1])).toBeLessThan(1e-9 * (1 + Math.hypot(...point)));
        });
      }),
      { numRuns: 200 },
    );
  });
});

describe("readSvg(text): use and symbol", () => {
  it("puts a use in painter order with the ids it is rendered under, nearest first", () => {
    const { shapes, ids } = readBody(
      `<defs><g id="pair"><rect id="low" width="1" height="1"/>\n<circle r="1"/></g></defs>
<g id="outer"><rect id="first" width="2" height="2"/><use id="shown" href="#pair" x="5" y="6"/><path id="last" d="M0 0h1v1z"/></g>`,
      'viewBox="0 0 100 100" id="root"',
    );
    expect(shapes.map((shape) => [shape.element, shape.line, ...idsOf(shape)])).toEqual([
      ["rect", 4, "first", "outer", "root"],
      ["rect", 2, "low", "pair", "shown", "outer", "root"],
      ["circle", 3, "pair", "shown", "outer", "root"],
      ["path", 4, "last", "outer", "root"],
    ]);
    expect(boundsOf(shapes[1]!.rings)).toEqual([5, 6, 6, 7]);
    expect([...ids]).toEqual([
      ["root", 1],
      ["pair", 2],
      ["low", 2],
      ["outer", 4],
      ["first", 4],
      ["shown", 4],
      ["last", 4],
    ]);
  });

  it("does the use's transform after its x and y", () => {
    const body = `<defs><rect id="r" width="1" height="1" transform="scale(2)"/></defs><use href="#r" x="10" transform="rotate(90)"/>`;
    expect(boundsOf(onlyShape(body).rings).map((v) => Math.round(v * 1e9) / 1e9)).toEqual([-2, 10, 0, 12]);
  });

  it("prefers href to xlink:href and takes either", () => {
    const defs = '<defs><rect id="a" width="1" height="1"/><rect id="b" width="2" height="2"/></defs>';
    expect(boundsOf(onlyShape(`${defs}<use xlink:href="#b" href="#a"/>`).rings)[2]).toBe(1);
    expect(boundsOf(onlyShape(`${defs}<use xlink:href="#b"/>`).rings)[2]).toBe(2);
  });

  it("shows a target whose parent is not displayed", () => {
    const shown = onlyShape('<g display="none"><rect id="a" width="1" height="1"/></g><use href="#a"/>');
    expect(idsOf(shown)).toEqual(["a"]);
  });

  it.each<[string, number[]]>([
    // The point of reference lies where the use is put: 4,2 of a 10 × 10 viewBox that is shown 20 × 20.
    ['refX="4" refY="2"', [50 - 8, 50 - 4, 50 + 12, 50 + 16]],
    ['refX="center" refY="bottom"', [40, 30, 60, 50]],
    ['refX="left"', [50, 50, 70, 70]],
    ['x="3" y="-4"', [53, 46, 73, 66]],
  ])("puts a symbol with %s", (attributes, bounds) => {
    const body = `<symbol id="s" viewBox="0 0 10 10" ${attributes}><rect width="10" height="10"/></symbol><use href="#s" x="50" y="50" width="20" height="20"/>`;
    expect(boundsOf(onlyShape(body).rings)).toEqual(bounds);
  });

  // Worked by hand from SVG 2, coordinate systems, "The 'preserveAspectRatio' attribute": a 10 × 20 viewBox at 1,2.
  it.each<[string, string, number[]]>([
    ["", 'width="40" height="40"', [10, 0, 30, 40]],
    ['preserveAspectRatio="xMinYMid"', 'width="40" height="40"', [0, 0, 20, 40]],
    ['preserveAspectRatio="xMaxYMid meet"', 'width="40" height="40"', [20, 0, 40, 40]],
    ['preserveAspectRatio="xMidYMax"', 'width="40" height="100"', [0, 20, 40, 100]],
    ['preserveAspectRatio="none"', 'width="40" height="40"', [0, 0, 40, 40]],
    ['preserveAspectRatio="xMidYMin slice"', 'width="40" height="40"', [0, 0, 40, 40]],
    ['width="40" height="40"', "", [10, 0, 30, 40]],
    ['width="7" height="7"', 'width="40" height="40"', [10, 0, 30, 40]],
    ["", "", [25, 0, 75, 100]],
    ["", 'width="40%" height="40%"', [10, 0, 30, 40]],
  ])("fits a symbol with %s into a use with %s", (symbol, use, bounds) => {
    const body = `<symbol id="s" viewBox="1 2 10 20" ${symbol}><rect x="1" y="2" width="10" height="20"/></symbol>`;
    expect(boundsOf(onlyShape(`${body}<use href="#s" ${use}/>`).rings)).toEqual(bounds);
  });

  it("takes percentages inside a symbol from its viewBox", () => {
    const body = '<symbol id="s" viewBox="0 0 10 10"><rect width="50%" height="100%"/></symbol>';
    expect(boundsOf(onlyShape(`${body}<use href="#s" x="5" width="20" height="20"/>`).rings)).toEqual([5, 0, 15, 20]);
  });

  it("cuts a symbol's content to its viewport unless it overflows visibly", () => {
    const symbol = (attributes: string): string =>
      `<symbol id="s" viewBox="0 0 10 10" ${attributes}><rect x="5" y="-5" width="10" height="10"/></symbol><use href="#s" width="20" height="20"/>`;
    expect(boundsOf(onlyShape(symbol("")).rings)).toEqual([10, 0, 20, 10]);
    expect(boundsOf(onlyShape(symbol('overflow="visible"')).rings)).toEqual([10, -10, 30, 10]);
    expect(boundsOf(onlyShape(symbol('style="overflow:visible"')).rings)).toEqual([10, -10, 30, 10]);
  });

  it("does not render defs, symbols, gradients and clip paths where they stand", () => {
    const body = `<defs>${SQUARE}</defs><symbol>${SQUARE}</symbol><clipPath>${SQUARE}</clipPath><mask>${SQUARE}</mask>
      <pattern>${SQUARE}</pattern><marker>${SQUARE}</marker><title>t</title><desc/><metadata><text/></metadata>`;
    expect(readBody(body)).toMatchObject({ shapes: [], notes: [] });
  });
});

describe("readSvg(text): namespaces and files", () => {
  it("ignores elements of other namespaces with all they hold", () => {
    const body =
      '<x:view xmlns:x="urn:x" id="base"><x:rect/><text xmlns="http://www.w3.org/2000/svg">t</text></x:view>';
    const picture = readBody(body);
    expect(picture).toMatchObject({ shapes: [], notes: [] });
    expect([...picture.ids]).toEqual([["base", 2]]);
  });

  it("reads prefixed elements, a declaration and a doctype", () => {
    const text =
      '<?xml version="1.0" encoding="UTF-8"?>\n<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">\n' +
      '<s:svg xmlns:s="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><s:g>\n<s:rect width="1" height="1"/></s:g></s:svg>';
    expect(readSvg(text).shapes).toMatchObject([{ element: "rect", line: 4 }]);
  });

  it("counts lines through comments, CDATA and carriage returns", () => {
    expect(onlyShape("<!--\n\n-->\r\n<desc><![CDATA[\n]]></desc>\n<rect\n width='1'\n height='1'/>").line).toBe(7);
  });

  it("stops at expanding use, deep nesting and curves out of proportion instead of hanging", () => {
    const levels = Array.from({ length: 12 }, (_, i) => `<g id="l${i + 1}">${`<use href="#l${i}"/>`.repeat(10)}</g>`);
    const laughs = `<defs><rect id="l0" width="1" height="1"/>${levels.join("")}</defs><use href="#l12"/>`;
    const deep = "<g>".repeat(5000) + "</g>".repeat(5000);
    const long = `<path d="M0 0C1e12 0 0 1e12 5 5z"/>`;
    for (const body of [laughs, deep, long]) expect(() => readBody(body)).toThrow(PictureError);
  });
});
