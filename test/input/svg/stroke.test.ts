import { describe, expect, it } from "vitest";
import { readSvg } from "../../../src/input/svg/read-svg.ts";
import { boundsOf, filledArea, onlyShape } from "./figure.ts";
import { compare } from "./raster.ts";

const JOINS = ["miter", "round", "bevel"] as const;
const CAPS = ["butt", "round", "square"] as const;
const DASHES = ["none", "9 5", "14 3 2", "0 8"] as const;
const TRANSFORMS = ["", "rotate(33 50 50) scale(1 .4)", "matrix(-.8 .2 .5 .9 45 -5)"] as const;

/** An open corner of each kind, a closed one, a curve with a tight bend, and a ring. */
const PATHS =
  '<path d="M12 20L30 12 24 30 40 24M50 12h16v14h-13z"/><path d="M12 60C60 20 4 40 40 84M50 60q30-26 32 12T60 88"/>' +
  '<ellipse cx="80" cy="34" rx="9" ry="6"/><path d="M20 92a9 6 20 0118-4"/>';

const drawing = (attributes: string, transform: string, body = PATHS): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100"><g fill="none" stroke="#000" ${attributes} transform="${transform}">${body}</g></svg>`;

describe("a stroke as an area, beside librsvg", () => {
  const cases = JOINS.flatMap((join) =>
    CAPS.flatMap((cap) => DASHES.flatMap((dash) => TRANSFORMS.map((transform) => ({ join, cap, dash, transform })))),
  );

  it.each(cases)("$join joins, $cap caps, dashes $dash, under $transform", async ({ join, cap, dash, transform }) => {
    const style = `stroke-width="5" stroke-linejoin="${join}" stroke-linecap="${cap}" stroke-dasharray="${dash}"`;
    if (dash === "0 8" && cap === "butt") {
      expect(readSvg(drawing(style, transform)).shapes).toEqual([]);
      return;
    }
    const { overlap } = await compare(drawing(style, transform), 600);
    // Dots are all edge, and librsvg measures along the coarser chords of its curves.
    expect(overlap).toBeGreaterThan(dash === "0 8" ? 0.98 : 0.99);
  });

  it.each([
    ["a miter limit", 'stroke-width="6" stroke-miterlimit="1.5"'],
    ["a high miter limit", 'stroke-width="6" stroke-miterlimit="20"'],
    ["an offset of dashes", 'stroke-width="4" stroke-dasharray="11 4" stroke-dashoffset="7"'],
    ["a negative offset", 'stroke-width="4" stroke-dasharray="11 4 2" stroke-dashoffset="-7"'],
    ["percentages", 'stroke-width="5%" stroke-dasharray="9% 4%"'],
    ["units", 'stroke-width="1mm" stroke-dasharray="3mm,1pt"'],
    ["a line wider than its bends", 'stroke-width="22" stroke-linejoin="round"'],
    ["a line wider than its bends, with miters", 'stroke-width="22"'],
  ])("honours %s", async (_, style) => {
    const { overlap } = await compare(drawing(style, ""), 600);
    expect(overlap).toBeGreaterThan(0.99);
  });

  it("draws a hair line, which is all edge", async () => {
    const { overlap } = await compare(drawing('stroke-width=".6"', ""), 1600);
    expect(overlap).toBeGreaterThan(0.99);
  });

  it.each([
    ["dots of lines without length", 'stroke-width="9" stroke-linecap="round"', '<path d="M20 20h0M50 50z"/>'],
    ["squares of lines without length", 'stroke-width="9" stroke-linecap="square"', '<path d="M20 20h0M50 50z"/>'],
    [
      "a line, a polyline and a polygon",
      'stroke-width="5"',
      '<line x1="9" y1="9" x2="70" y2="20"/><polyline points="10,40 50,30 60,60"/><polygon points="20,90 60,70 90,95"/>',
    ],
    ["a path that turns back", 'stroke-width="8" stroke-linejoin="round"', '<path d="M20 50H80H40"/>'],
    ["a rounded rectangle", 'stroke-width="3"', '<rect x="20" y="20" width="60" height="40" rx="12"/>'],
  ])("draws %s", async (_, style, body) => {
    const { overlap } = await compare(drawing(style, "", body));
    expect(overlap).toBeGreaterThan(0.99);
  });
});

describe("a stroke as an area", () => {
  it("has the area of its rectangle", () => {
    const { rings, rule, paint, colour } = onlyShape(
      '<path d="M10 10H60" fill="none" stroke="#C33" stroke-width="4"/>',
    );
    expect(filledArea(rings, rule)).toBeCloseTo(200, 9);
    expect(boundsOf(rings)).toEqual([10, 8, 60, 12]);
    expect({ paint, colour }).toEqual({ paint: "stroke", colour: "#cc3333" });
  });

  it("is a ring round a circle, of its circumference times its width", () => {
    const { rings, rule } = onlyShape('<circle cx="50" cy="50" r="30" fill="none" stroke="red" stroke-width="8"/>');
    // π (34² − 26²)
    expect(Math.abs(filledArea(rings, rule) - Math.PI * (34 ** 2 - 26 ** 2))).toBeLessThan(0.2);
  });

  it("keeps its width where it does not scale, in px of the picture's stated size", () => {
    const line =
      '<path d="M0 10H50" transform="scale(2)" stroke="red" stroke-width="3" vector-effect="non-scaling-stroke"/>';
    expect(boundsOf(onlyShape(line).rings).map((side) => Math.abs(side).toFixed(9))).toEqual(
      [0, 18.5, 100, 21.5].map((side) => side.toFixed(9)),
    );
    const large = onlyShape(line, 'viewBox="0 0 100 100" width="300" height="300"');
    expect(boundsOf(large.rings)[1]).toBeCloseTo(19.5, 9);
    expect(boundsOf(large.rings)[3]).toBeCloseTo(20.5, 9);
  });

  it("scales dashes to the length that a path states of itself", () => {
    const dashed = onlyShape(
      '<path d="M0 5H100" pathLength="10" stroke="red" stroke-width="2" stroke-dasharray="1 4"/>',
    );
    // Dashes of a tenth at 0 and at half of the way.
    expect(filledArea(dashed.rings, dashed.rule)).toBeCloseTo(2 * 10 * 2, 9);
  });

  it("lies over its fill, or under it where paint-order says so", () => {
    const rect = (order: string): string =>
      `<rect width="50" height="50" fill="red" stroke="blue" paint-order="${order}"/>`;
    const paints = (order: string): string[] =>
      readSvg(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">${rect(order)}</svg>`).shapes.map(
        ({ paint }) => paint,
      );
    expect(paints("normal")).toEqual(["fill", "stroke"]);
    expect(paints("stroke")).toEqual(["stroke", "fill"]);
    expect(paints("markers stroke")).toEqual(["stroke", "fill"]);
    expect(paints("fill stroke")).toEqual(["fill", "stroke"]);
  });
});
