import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readSvg } from "../../../src/input/svg/read-svg.ts";
import { compare, covered, drawn, SIDE } from "./raster.ts";

const ICONS = new URL("../../../node_modules/@phosphor-icons/core/assets/", import.meta.url);
const wrap = (body: string, viewBox = "0 0 100 100"): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="${viewBox}">${body}</svg>`;

const STAR = "M50,5 L79,95 2,39 98,39 21,95 z";
const LEAF = '<path id="leaf" d="M0 0C10 -20 30 -20 40 0S10 20 0 0z"/>';

const DRAWINGS: Readonly<Record<string, string>> = {
  "evenodd star": wrap(`<path fill-rule="evenodd" d="${STAR}"/>`),
  "nonzero star": wrap(`<path d="${STAR}"/>`),
  "nested transforms": wrap(
    '<g transform="translate(50 50) rotate(30)"><g transform="scale(1.5,.7)"><rect x="-20" y="-20" width="40" height="40"/></g>' +
      '<g transform="skewX(20) translate(5,-30)skewY(-10)"><circle r="8"/></g></g>',
  ),
  "matrix and rotation about a point": wrap(
    '<ellipse cx="20" cy="30" rx="15" ry="6" transform="matrix(1.2 .4 -.3 .9 20 10)"/><rect x="60" y="60" width="20" height="10" transform="rotate(-25 60 60)"/>',
  ),
  "rounded rectangles": wrap(
    '<rect x="5" y="5" width="40" height="30" rx="8"/><rect x="55" y="5" width="40" height="30" ry="20"/>' +
      '<rect x="5" y="55" width="40" height="30" rx="30" ry="4"/><rect x="55" y="55" width="40" height="30" rx="100" ry="100"/>',
  ),
  "polygons, open polylines and units": wrap(
    '<polyline points="10,10 40,15 30,40"/><polygon points="60-5,90 20,70,45"/><circle cx="50%" cy="70%" r="10%"/><rect x="5mm" y="1in" width="8pt" height="1pc" transform="translate(0 -20)"/>',
  ),
  "use of shapes and groups": wrap(
    `<defs>${LEAF}<g id="pair"><use href="#leaf"/><use xlink:href="#leaf" transform="scale(-1 1)"/></g></defs>` +
      '<use href="#pair" x="50" y="30"/><use href="#pair" x="10" y="20" transform="rotate(40 50 50)"/>',
  ),
  "use of symbols, fitted and cut": wrap(
    '<symbol id="s" viewBox="-10 -10 20 30"><circle r="14"/><rect x="-4" y="5" width="8" height="40"/></symbol>' +
      '<symbol id="t" viewBox="0 0 10 10" preserveAspectRatio="xMaxYMin slice"><path d="M0 0h10v10z"/></symbol>' +
      '<symbol id="u" viewBox="0 0 10 10" preserveAspectRatio="none"><circle cx="5" cy="5" r="5"/></symbol>' +
      '<use href="#s" x="5" y="5" width="50" height="40"/><use href="#t" x="60" y="5" width="35" height="20"/>' +
      '<use href="#u" x="60" y="40" width="35" height="50" transform="rotate(10 60 40)"/><use href="#s" x="5" y="55" width="20" height="40" transform="skewX(-5)"/>',
  ),
  "inherited style through use": wrap(
    `<defs><g id="g"><path fill-rule="inherit" d="${STAR}"/></g></defs><g fill="none"><use href="#g" fill="red" fill-rule="evenodd" transform="scale(.5)"/><use href="#g" x="50" transform="scale(.9)"/></g>`,
  ),
  "style sheet": wrap(
    `<style>.a{fill:none} rect.b{fill:blue} #c{fill:none!important} *{fill-rule:evenodd} path{fill:green}</style>` +
      `<rect class="a" width="20" height="20"/><rect class="a b" x="30" width="20" height="20"/><circle id="c" style="fill:red" cx="80" cy="10" r="9"/>` +
      `<path class="x" fill="none" d="${STAR}" transform="translate(10 30) scale(.6)"/>`,
  ),
  "visibility and display": wrap(
    '<g visibility="hidden"><rect width="30" height="30"/><rect x="40" width="30" height="30" visibility="visible"/></g>' +
      '<g display="none"><rect y="40" width="30" height="30" display="inline"/></g><g opacity="0"><rect x="40" y="40" width="30" height="30"/></g><circle cx="85" cy="85" r="12" fill="none"/><circle cx="15" cy="85" r="12"/>',
  ),
  "negative viewBox corner": wrap(
    '<path d="M480-80Q313-80 196.5-197T80-480q0-166 116.500-283T480-880t283.500 117T880-480q0 166-116.500 283T480-80Z"/>',
    "0 -960 960 960",
  ),
  "oblong viewBox": wrap('<circle cx="0" cy="0" r="40"/><path d="M-90-40H-60V40z"/>', "-100 -50 200 100"),
  "arcs with packed flags": wrap(
    '<path d="M20 30a10 10 0 1110 10z"/><path d="M60 20a20 8 30 01.5 20.5 8 20-30 00-20-5z"/><path d="M10 70a12 5 45 1030-4A12 5 45 0010 70M60 80a1 2 0 0130 10z"/>',
  ),
  "clip paths": wrap(
    `<clipPath id="a"><circle cx="30" cy="30" r="22"/><path d="M40 20h30v30h-30z" transform="rotate(20 50 30)"/></clipPath>` +
      '<clipPath id="b" clipPathUnits="objectBoundingBox"><rect x=".1" y=".2" width=".5" height=".6"/><circle cx=".8" cy=".5" r=".2"/></clipPath>' +
      `<clipPath id="c" clip-path="url(#a)"><path d="${STAR}" clip-rule="evenodd" transform="scale(.7)"/></clipPath>` +
      '<clipPath id="d"><use href="#leaf" x="5" y="70"/></clipPath>' +
      `<defs>${LEAF}</defs><rect width="60" height="60" clip-path="url(#a)"/><g transform="translate(30 0)"><rect x="30" y="5" width="40" height="30" clip-path="url(#b)"/></g>` +
      '<g clip-path="url(#c)" transform="translate(30 40) scale(.9)"><rect width="100" height="100"/></g><rect y="50" width="60" height="50" clip-path="url(#d)" transform="rotate(5)"/>',
  ),
  "a clip path round a group, with a box of its own": wrap(
    '<clipPath id="b" clipPathUnits="objectBoundingBox"><ellipse cx=".5" cy=".5" rx=".5" ry=".3"/></clipPath>' +
      '<g clip-path="url(#b)" transform="translate(3 4) scale(.9 .8)"><rect x="10" y="20" width="30" height="70"/><circle cx="70" cy="60" r="25"/></g>',
  ),
  "masks of plain shapes": wrap(
    '<mask id="m" maskUnits="userSpaceOnUse" x="0" y="0" width="90" height="80"><rect width="100" height="100" fill="#fff"/><circle cx="40" cy="40" r="20"/><circle cx="40" cy="40" r="8" fill="white"/></mask>' +
      '<mask id="n" mask-type="alpha" style="mask-type:alpha"><rect x="55" y="60" width="30" height="25" fill="#123"/></mask>' +
      '<rect x="5" y="5" width="90" height="70" mask="url(#m)"/><g mask="url(#n)" transform="translate(5 8)"><rect x="50" y="65" width="40" height="40"/></g>',
  ),
  "inner frames": wrap(
    '<svg x="10" y="10" width="40" height="30" viewBox="0 0 10 10"><circle cx="5" cy="5" r="6"/></svg>' +
      '<g transform="rotate(10)"><svg x="60" y="5" width="30" height="50" viewBox="0 0 10 10" preserveAspectRatio="xMidYMin slice"><path d="M0 0h10v10z"/><svg x="50%" y="50%" width="9"><circle r="2"/></svg></svg></g>' +
      '<svg y="60" width="50" height="20" overflow="visible"><circle cx="20" cy="20" r="15"/></svg>',
  ),
  "the branch of a switch": wrap(
    '<switch><foreignObject requiredExtensions="http://example.org/x"><rect width="90" height="90"/></foreignObject><g systemLanguage="fr"><rect width="80" height="80"/></g><circle cx="45" cy="45" r="25"/><circle r="90"/></switch>',
  ),
  "selectors with what is around": wrap(
    `<style>g.off rect{fill:none} g.off > rect.on{fill:red} [data-k="a b"]{fill:none} [data-k^="z"] path{fill:none} rect{-x-foo:bar}</style>` +
      '<g class="off"><rect width="20" height="20"/><rect class="on" x="30" width="20" height="20"/><g><rect class="on" x="60" width="20" height="20"/></g></g>' +
      '<path data-k="a b" d="M0 30q20 0 20 20z"/><g data-k="zed"><path d="M30 30q20 0 20 20z"/></g><path d="M60 30q20 0 20 20z"/>',
  ),
  "entities of its own": `<!DOCTYPE svg [<!ENTITY dark "fill:#123"><!ENTITY d 'M10 10h60v30z'>]>${wrap('<path style="&dark;" d="&d;"/><rect fill="none" width="5" height="5"/>')}`,
  "fills with strokes": wrap(
    '<g stroke="#333" stroke-width="4"><rect x="10" y="10" width="30" height="30" fill="red"/><circle cx="70" cy="70" r="18" fill="none"/><path d="M10 60l20 30 10-25z" fill="#fff" stroke-linejoin="round"/></g>',
  ),
  "smooth curves": wrap('<path d="M5 50C5 5 30 5 50 50S95 95 95 50s-20-50-45-10T20 90t-10-5q-20-20-5-35"/>'),
};

describe("readSvg(text) beside librsvg", () => {
  it.each(Object.entries(DRAWINGS))("covers what it paints: %s", async (_, svg) => {
    const { wrong, edge, filled, off } = await compare(svg);
    expect(filled).toBeGreaterThan(10_000);
    expect(wrong).toBe(0);
    // The whole areas differ by less than a tenth of a pixel for each pixel on an outline.
    expect(Math.abs(off)).toBeLessThan(0.1 * edge);
  });

  // Every 400th icon of each weight, so that no one picked those that work.
  it.each(
    ["bold", "duotone", "fill", "light", "regular", "thin"].flatMap((weight) =>
      readdirSync(new URL(`${weight}/`, ICONS))
        .sort()
        .filter((_, i) => i % 400 === 199)
        .map((name) => `${weight}/${name}`),
    ),
  )("covers what it paints: %s", async (name) => {
    // A duotone's lighter part counts as solid.
    const icon = readFileSync(new URL(name, ICONS), "utf8").replace(/ opacity="0.2"/, "");
    const { wrong, edge, filled, off } = await compare(icon);
    expect(filled).toBeGreaterThan(10_000);
    expect(wrong).toBe(0);
    expect(Math.abs(off)).toBeLessThan(0.1 * edge);
  });

  it("notices a hole that is missing", async () => {
    const svg = DRAWINGS["evenodd star"]!;
    const picture = readSvg(svg);
    const solid = { ...picture, shapes: picture.shapes.map((shape) => ({ ...shape, rule: "nonzero" as const })) };
    const theirs = await drawn(svg, SIDE, SIDE);
    const wrong = covered(solid, SIDE, SIDE).filter((share, i) => Math.abs(share - theirs[i]!) > 0.5).length;
    expect(wrong).toBeGreaterThan(10_000);
  });
});
