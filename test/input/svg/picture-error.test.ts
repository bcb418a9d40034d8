import { describe, expect, it } from "vitest";
import { PictureError, readSvg } from "../../../src/input/svg/read-svg.ts";
import { readBody } from "./figure.ts";

const OPEN = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"';
const NO_FONT =
  "<text> cannot be drawn: no font for it is at hand; turn the text into paths in the program that drew it";
const SIZE = 'width="9" height="9"';

function faultOf(read: () => unknown): [number, string] {
  try {
    read();
  } catch (error) {
    if (error instanceof PictureError) return [error.line, error.message];
    throw error;
  }
  throw new Error("nothing was thrown");
}

describe("readSvg(text): files that are no picture", () => {
  it.each<[string, number, string]>([
    ["", 1, "not an SVG picture: it has no <svg> element"],
    ["moon", 1, "not an SVG picture: it has no <svg> element"],
    ["<!-- -->\n<html/>", 2, "not an SVG picture: its root is <html>"],
    ['<svg viewBox="0 0 1 1"/>', 1, 'not an SVG picture: add xmlns="http://www.w3.org/2000/svg" to <svg>'],
    [`${OPEN}>\n<g>\n</svg>`, 2, 'not well-formed XML: opening and ending tag mismatch: "g" != "svg"'],
    [`${OPEN}>\n<g a="1"\n a="2"/></svg>`, 2, "not well-formed XML: attribute a redefined"],
    [`${OPEN}>\n<g a=1/></svg>`, 2, 'not well-formed XML: attribute "1" missed quot(")!'],
    [`${OPEN}>\n<x:g/></svg>`, 2, "not well-formed XML: prefix is non-null and namespace is null"],
    [`${OPEN}>\n<desc>&leaf;</desc></svg>`, 2, 'entity "&leaf;" is not read: write its text in place'],
    [
      `<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]>\n${OPEN}>\n<desc>&x;</desc></svg>`,
      3,
      'entity "&x;" is not read: write its text in place',
    ],
    [
      `<?xml-stylesheet href="a.css"?>${OPEN}/>`,
      1,
      "<?xml-stylesheet?> is not supported: put the rules in a <style> element",
    ],
  ])("rejects %s", (text, line, message) => {
    expect(faultOf(() => readSvg(text))).toEqual([line, message]);
  });
});

describe("readSvg(text): several faults", () => {
  it("come at once, by their lines", () => {
    const body = `<g id="a">
<rect width="5x" height="1"/>
<path d="M0 0 L"/></g><text>moon</text>
<use href="#nowhere"/><rect ${SIZE} style="fill:var(--x)"/>
<style>a+b{fill:red}</style>`;
    const faults = (): unknown => {
      try {
        return readBody(body);
      } catch (error) {
        return (error as PictureError).faults.map(
          ({ line, message }) => `${line} ${message.split(" ").slice(0, 2).join(" ")}`,
        );
      }
    };
    expect(faults()).toEqual([
      "3 <rect> width",
      "4 <path> d",
      "4 <text> cannot",
      "5 <use> href",
      '5 fill "var(--x)"',
      '6 selector "a+b"',
    ]);
  });

  it("are told up to fifty", () => {
    let found: PictureError | undefined;
    try {
      readBody("<use/>\n".repeat(80));
    } catch (error) {
      found = error as PictureError;
    }
    expect(found!.faults).toHaveLength(50);
  });
});

describe("readSvg(text): damaged files", () => {
  const whole = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 90 90">
<style>.a{fill:red} #b{fill-rule:evenodd!important}</style>
<defs><path id="p" class="a" d="M5 5a2 2 0 01.5.5q1 1 2 2t5 5c1 2 3 4 5 6s7 8 9 10z"/></defs>
<symbol id="s" viewBox="0 0 9 9"><circle cx="5" cy="5" r="6"/></symbol>
<g id="b" transform="rotate(30 5 5) skewX(3)" style="opacity:1;fill:#123"><use href="#p" x="5"/><use href="#s" width="9mm"/></g>
<rect x="1" y="2" width="30%" height="4" rx="1"/><polygon points="0,0 5,5 0 9" stroke="red"/></svg>`;

  it("are read or rejected with a line of theirs, wherever a character is lost, doubled or changed", () => {
    const outcomes = new Set<string>();
    const lines = whole.split("\n").length;
    for (let at = 0; at < whole.length; at += 1) {
      for (const put of ["", whole[at]!.repeat(2), "<", "9", "&", "-", "e", '"', "\u0000"]) {
        const text = whole.slice(0, at) + put + whole.slice(at + 1);
        try {
          const { shapes } = readSvg(text);
          for (const point of shapes.flatMap(({ rings }) => rings.flat()))
            expect(point.every(Number.isFinite)).toBe(true);
          outcomes.add("read");
        } catch (error) {
          expect(error, text).toBeInstanceOf(PictureError);
          expect((error as PictureError).line).toBeGreaterThanOrEqual(1);
          expect((error as PictureError).line).toBeLessThanOrEqual(lines);
          outcomes.add("rejected");
        }
      }
    }
    expect(outcomes).toEqual(new Set(["read", "rejected"]));
  });
});

describe("readSvg(text): picture box", () => {
  it.each<[string, string]>([
    ["", '<svg> has no size: add viewBox="0 0 width height"'],
    ['width="5"', '<svg> has no size: add viewBox="0 0 width height"'],
    ['width="100%" height="100%"', '<svg> has no size: add viewBox="0 0 width height"'],
    ['width="0" height="5"', '<svg> width "0" must be above 0'],
    ['width="5" height="-5"', '<svg> height "-5" must be above 0'],
    ['viewBox="0 0 0 5"', '<svg> viewBox "0 0 0 5" needs a width and a height above 0'],
    ['viewBox="0 0 5 -5"', '<svg> viewBox "0 0 5 -5" needs a width and a height above 0'],
    ['viewBox="0 0 5"', '<svg> viewBox "0 0 5" needs four numbers: x, y, width and height'],
    ['viewBox="0 0 5 5 5"', '<svg> viewBox "0 0 5 5 5" needs four numbers: x, y, width and height'],
    ['viewBox="0 0 5mm 5"', '<svg> viewBox "0 0 5mm 5" has "mm 5" where a number belongs'],
  ])("rejects %s", (attributes, message) => {
    expect(faultOf(() => readBody("", attributes))).toEqual([1, message]);
  });
});

describe("readSvg(text): elements that are not supported", () => {
  it.each<[string, number, string]>([
    ["\n<text>moon</text>", 3, NO_FONT],
    ["<g>\n<image/></g>", 3, "<image> cannot be drawn: remove it here, and make it a picture of its own"],
    ["<foreignObject/>", 2, "<foreignObject> cannot be drawn: remove it"],
    ["<video/>", 2, "<video> cannot be drawn: remove it or correct its name"],
    ["<retc/>", 2, "<retc> cannot be drawn: remove it or correct its name"],
    ["<constructor/>", 2, "<constructor> cannot be drawn: remove it or correct its name"],
    ['<defs><text id="t">moon</text></defs>\n<use href="#t"/>', 2, NO_FONT],
    ["<use/>", 2, "<use> has no href: name the id of a shape or group"],
    ["<use\nhref='#a'/>", 3, '<use> href "#a" has no target: no element has this id'],
    ["<use href='a.svg#b'/>", 2, '<use> href "a.svg#b" is not in this file: write "#" and an id of it'],
    ["<use href='http://x/a.svg'/>", 2, '<use> href "http://x/a.svg" is not in this file: write "#" and an id of it'],
    ["<use href=''/>", 2, '<use> href "" is not in this file: write "#" and an id of it'],
    ["<g id='a'>\n<use href='#a'/></g>", 3, '<use> href "#a" shows itself: break the cycle'],
    ["<use id='a' href='#a'/>", 2, '<use> href "#a" shows itself: break the cycle'],
    ["<use id='a' href='#b'/>\n<use id='b' href='#a'/>", 2, '<use> href "#b" shows itself: break the cycle'],
    ["<linearGradient id='a'/><use href='#a'/>", 2, '<use> href "#a" is a <linearGradient>: name a shape or group'],
    [
      "<symbol id='a' viewBox='0 0 9 9' preserveAspectRatio='mid'/><use href='#a'/>",
      2,
      '<symbol> preserveAspectRatio "mid" is unknown: write none or, for example, xMidYMid meet',
    ],
    [
      "<symbol id='a' viewBox='0 0 0 9'/><use href='#a'/>",
      2,
      '<symbol> viewBox "0 0 0 9" needs a width and a height above 0',
    ],
  ])("rejects %s", (body, line, message) => {
    expect(faultOf(() => readBody(body))).toEqual([line, message]);
  });
});

describe("readSvg(text): attribute values", () => {
  it.each<[string, number, string]>([
    ["<rect\n width='5x' height='1'/>", 3, '<rect> width "5x" has the unit "x": use px, mm, cm, in, pt, pc, Q or %'],
    ["<rect width='5em' height='1'/>", 2, '<rect> width "5em" has the unit "em": use px, mm, cm, in, pt, pc, Q or %'],
    [
      "<rect x='' width='5' height='1'/>",
      2,
      '<rect> x "" is not a length: write a number, or one with px, mm, cm, in, pt, pc, Q or %',
    ],
    [
      "<rect y='1 2'/>",
      2,
      '<rect> y "1 2" is not a length: write a number, or one with px, mm, cm, in, pt, pc, Q or %',
    ],
    ["<circle r='1e999'/>", 2, '<circle> r "1e999" is too large'],
    [
      "<circle r='constructor'/>",
      2,
      '<circle> r "constructor" is not a length: write a number, or one with px, mm, cm, in, pt, pc, Q or %',
    ],
    [
      "<circle r='1constructor'/>",
      2,
      '<circle> r "1constructor" has the unit "constructor": use px, mm, cm, in, pt, pc, Q or %',
    ],
    ["<circle r='-1'/>", 2, '<circle> r "-1" is negative: write 0 or more'],
    ["<rect rx='-1'/>", 2, '<rect> rx "-1" is negative: write 0 or more'],
    ["<polygon points='0 0 1'/>", 2, '<polygon> points "0 0 1" has 3 numbers: every x needs its y'],
    ["<polygon points='0 0 1 x'/>", 2, '<polygon> points "0 0 1 x" has "x" where a number belongs'],
    ["<polygon points='0 0,,1 1'/>", 2, '<polygon> points "0 0,,1 1" has ",1 1" where a number belongs'],
    ["<polyline points='0 0 1 1,'/>", 2, '<polyline> points "0 0 1 1," ends in a comma'],
    [
      "<g transform='turn(5)'/>",
      2,
      '<g> transform "turn()" is no transform: use matrix, translate, scale, rotate, skewX, skewY',
    ],
    ["<g transform='rotate(5deg)'/>", 2, '<g> transform "5deg" has "deg" where a number belongs'],
    ["<g transform='rotate(5 5)'/>", 2, '<g> transform "rotate(5 5)" takes 1 or 3 numbers'],
    ["<g transform='matrix(1 0 0 1)'/>", 2, '<g> transform "matrix(1 0 0 1)" takes 6 numbers'],
    ["<g transform='scale()'/>", 2, '<g> transform "scale()" takes 1 or 2 numbers'],
    [
      "<g transform='scale(2) 5'/>",
      2,
      '<g> transform "scale(2) 5" has "5" where a transform such as rotate(30) belongs',
    ],
    [
      "<g transform='scale(2'/>",
      2,
      '<g> transform "scale(2" has "scale(2" where a transform such as rotate(30) belongs',
    ],
    [
      "<g transform='scale(2)' transform-origin='5 5'/>",
      2,
      "<g> transform-origin is not supported: write rotate(angle x y)",
    ],
    [
      "<circle r='1e9'/>",
      2,
      "<circle> has a curve thousands of times as large as the picture: draw it at the picture’s size",
    ],
    ["<path d='M0 0H1e308V1e308z' transform='scale(1e9)'/>", 2, "<path> has coordinates too large to compute with"],
  ])("rejects %s", (body, line, message) => {
    expect(faultOf(() => readBody(body))).toEqual([line, message]);
  });
});

describe("readSvg(text): styles", () => {
  const sheet = (css: string, body = ""): string => `<style>\n${css}</style>${body}`;
  const complex = (selector: string): string =>
    `selector "${selector}" is too complex: use element names, .class, #id, [attribute], spaces and >`;

  it.each<[string, number, string]>([
    [sheet("\n.a,\n.b+.c{fill:red}"), 5, complex(".b+.c")],
    [sheet("rect:nth-child(2){fill:red}"), 3, complex("rect:nth-child(2)")],
    [sheet("[fill=red i]{fill:red}"), 3, complex("[fill=red i]")],
    [sheet("svg|rect{fill:red}"), 3, complex("svg|rect")],
    [sheet('@import "a.css";'), 3, "@import is not supported: write the rules in this <style>"],
    [sheet(`.a{fill:${"(".repeat(100_000)}}`), 2, "malformed CSS: nested too deeply"],
    [`<rect ${SIZE} style="fill:"/>`, 2, 'fill "" has no value: write one or remove fill'],
    [`<rect ${SIZE} fill=""/>`, 2, 'fill "" has no value: write one or remove fill'],
    [
      `<rect ${SIZE} style="fill:var(--x)"/>`,
      2,
      'fill "var(--x)" has no value: state the variable, or write the value itself',
    ],
    [`<rect ${SIZE} fill-rule="odd"/>`, 2, 'fill-rule "odd" is unknown: use nonzero, evenodd'],
    [`<rect ${SIZE} visibility="no"/>`, 2, 'visibility "no" is unknown: use visible, hidden, collapse'],
    [`<rect ${SIZE} opacity="half"/>`, 2, '<rect> opacity "half" is no opacity: write a number from 0 to 1'],
    [`<g fill-opacity="x"/>`, 2, '<g> fill-opacity "x" is no opacity: write a number from 0 to 1'],
    [`<rect ${SIZE} fill="url(#g)"/>`, 2, 'fill "url(#g)" points to no gradient or pattern: write a colour'],
    [`<rect ${SIZE} fill="url(a.svg#g)"/>`, 2, 'fill "url(a.svg#g)" is in another file: bring it into this one'],
    [
      `<rect ${SIZE} clip-path="circle(4px)"/>`,
      2,
      '<rect> clip-path "circle(4px)" is not supported: cut the shape itself',
    ],
    [
      `<clipPath id="c"><rect ${SIZE} clip-path="url(#c)"/></clipPath><rect ${SIZE} clip-path="url(#c)"/>`,
      2,
      '<rect> clip-path "url(#c)" cuts itself: break the cycle',
    ],
    [`<path d="M0 0h9" stroke="red" stroke-width="-1"/>`, 2, 'stroke-width "-1" is negative: write 0 or more'],
    [
      `<path d="M0 0h9" stroke="red" stroke-dasharray="3 -1"/>`,
      2,
      'stroke-dasharray "3 -1" is negative: write 0 or more',
    ],
    [
      `<path d="M0 0h9" stroke="red" stroke-dasharray="1e-6"/>`,
      2,
      "<path> has more than 50,000 dashes: make them longer",
    ],
    [
      `<path d="M0 0h9" stroke="red" stroke-linecap="flat"/>`,
      2,
      'stroke-linecap "flat" is unknown: use butt, round, square',
    ],
    [
      sheet(".a{transform:scale(2)}", '\n<g class="a"/>'),
      3,
      '<g> transform "scale(2)" in CSS is not supported: write it as an attribute',
    ],
    [`<path style="d:path('M0 0')"/>`, 2, '<path> d "path("M0 0")" in CSS is not supported: write it as an attribute'],
    [`<circle style="r:5px"/>`, 2, '<circle> r "5px" in CSS is not supported: write it as an attribute'],
  ])("rejects %s", (body, line, message) => {
    expect(faultOf(() => readBody(body))).toEqual([line, message]);
  });

  it("lets pass what is not rendered", () => {
    const body = sheet(
      ".a{transform:scale(2)}",
      `<defs><rect class="a" filter="url(#f)"/></defs><g display="none" mask="url(#m)"/>`,
    );
    expect(readBody(body).shapes).toEqual([]);
  });
});
