import { describe, expect, it } from "vitest";
import { readBody } from "./figure.ts";

const SIZE = 'width="9" height="9"';

/** Whether the rect of a body is painted. */
function isPainted(body: string): boolean {
  return readBody(body).shapes.length > 0;
}

describe("readSvg(text): what is painted", () => {
  it.each<[boolean, string]>([
    [true, `<rect ${SIZE}/>`],
    [false, `<rect ${SIZE} fill="none"/>`],
    [false, `<rect ${SIZE} fill="transparent"/>`],
    [false, `<rect ${SIZE} fill="#12345600"/>`],
    [false, `<rect ${SIZE} fill="#1230"/>`],
    [true, `<rect ${SIZE} fill="#1201"/>`],
    [false, `<rect ${SIZE} fill="rgba(1, 2, 3, 0)"/>`],
    [false, `<rect ${SIZE} fill="rgb(1 2 3 / 0%)"/>`],
    [true, `<rect ${SIZE} fill="rgb(1, 2, 0)"/>`],
    [true, `<rect ${SIZE} fill="currentColor"/>`],
    [false, `<g color="transparent"><rect ${SIZE} fill="currentColor"/></g>`],
    [true, `<g color="transparent" fill="currentColor"><rect ${SIZE} color="red"/></g>`],
    [true, `<linearGradient id="g"/><rect ${SIZE} fill="url(#g)"/>`],
    [true, `<linearGradient id="g"/><rect ${SIZE} style="fill:url('#g')"/>`],
    [false, `<rect ${SIZE} fill="url(#missing) none"/>`],
    [true, `<rect ${SIZE} fill="url(#missing) red"/>`],
    [false, `<g fill="none"><rect ${SIZE}/></g>`],
    [true, `<g fill="none"><rect ${SIZE} fill="red"/></g>`],
    [false, `<g fill="none"><rect ${SIZE} fill="inherit"/></g>`],
    [true, `<g fill="none"><rect ${SIZE} fill="initial"/></g>`],
    [false, `<g fill="none"><rect ${SIZE} style="fill:unset"/></g>`],
    [false, `<rect ${SIZE} fill-opacity="0"/>`],
    [false, `<g fill-opacity="0%"><rect ${SIZE}/></g>`],
    [true, `<g fill-opacity="0"><rect ${SIZE} fill-opacity="1"/></g>`],
    [false, `<rect ${SIZE} opacity="0"/>`],
    [false, `<g opacity="0"><rect ${SIZE} opacity="1"/></g>`],
    [false, `<rect ${SIZE} visibility="hidden"/>`],
    [false, `<g visibility="collapse"><rect ${SIZE}/></g>`],
    [true, `<g visibility="hidden"><rect ${SIZE} visibility="visible"/></g>`],
    [false, `<rect ${SIZE} display="none"/>`],
    [false, `<g display="none"><rect ${SIZE} display="inline"/></g>`],
    [false, `<g style="display:NONE"><rect ${SIZE}/></g>`],
    [false, `<g display="none"><text>t</text><foo/></g>`],
    [false, `<rect ${SIZE} fill="context-fill"/>`],
    [true, `<defs><rect id="r" ${SIZE} fill="context-fill"/></defs><use href="#r" fill="red"/>`],
    [false, `<defs><rect id="r" ${SIZE} fill="context-fill"/></defs><use href="#r" fill="none"/>`],
    [true, `<defs><rect id="r" ${SIZE} fill="context-stroke"/></defs><use href="#r" stroke="red"/>`],
    [false, `<defs><rect id="r" ${SIZE}/></defs><use href="#r" fill="none"/>`],
    [true, `<g fill="none"><rect id="r" ${SIZE}/></g><use href="#r"/>`],
  ])("paints: %s, %s", (painted, body) => {
    expect(isPainted(body)).toBe(painted);
  });
});

describe("readSvg(text): cascade", () => {
  const rect = (attributes = ""): string => `<rect id="r" class="a b" ${SIZE} ${attributes}/>`;

  it.each<[boolean, string, string]>([
    [false, "a sheet beats an attribute", `<style>rect{fill:none}</style>${rect('fill="red"')}`],
    [false, "* beats an attribute", `<style>*{fill:none}</style>${rect('fill="red"')}`],
    [true, "the style attribute beats a sheet", `<style>#r{fill:none}</style>${rect('style="fill:red"')}`],
    [
      false,
      "!important beats the style attribute",
      `<style>rect{fill:none!important}</style>${rect('style="fill:red"')}`,
    ],
    [
      true,
      "!important in the style attribute beats a sheet's",
      `<style>#r{fill:none!important}</style>${rect('style="fill:red ! important"')}`,
    ],
    [false, "a class beats a type", `<style>.a{fill:none} rect{fill:red}</style>${rect()}`],
    [false, "an id beats classes", `<style>#r{fill:none} .a.b{fill:red} rect.a{fill:red}</style>${rect()}`],
    [true, "two classes beat one", `<style>.a.b{fill:red} .b{fill:none}</style>${rect()}`],
    [false, "a type with a class beats a class", `<style>rect.a{fill:none} .b{fill:red}</style>${rect()}`],
    [true, "of equals the later counts", `<style>.a{fill:none} .b{fill:red}</style>${rect()}`],
    [false, "of equals the later sheet counts", `<style>.a{fill:red}</style><style>.b{fill:none}</style>${rect()}`],
    [false, "in one block the later counts", `<style>.a{fill:red;fill:none}</style>${rect()}`],
    [true, "an earlier !important beats a later plain one", `<style>.a{fill:red!important;fill:none}</style>${rect()}`],
    [false, "a list means each of its selectors", `<style>circle, .z , #r{fill:none}</style>${rect()}`],
    [
      true,
      "a selector must match in full",
      `<style>rect.a.z{fill:none} circle.a{fill:none} rect#q{fill:none}</style>${rect()}`,
    ],
    [true, "names are case-sensitive", `<style>.A{fill:none} RECT{fill:none} #R{fill:none}</style>${rect()}`],
    [false, "property names and keywords are not", `<style>rect{FILL:None}</style>${rect()}`],
    [false, "escaped names", `<style>.\\61{fill:none}</style>${rect()}`],
    [false, "a sheet behind its element", `${rect()}<style>.a{fill:none}</style>`],
    [
      false,
      "a sheet in defs, in CDATA",
      `<defs><style type="text/css"><![CDATA[ .a{fill:none} ]]></style></defs>${rect()}`,
    ],
    [true, "a sheet of another language", `<style type="text/x-other">.a > {{{</style>${rect()}`],
    [
      false,
      "at-rules without bearing and comments",
      `<style>@charset "utf-8"; @font-face{font-family:x} /* .a{fill:red} */ .a{fill:none}</style>${rect()}`,
    ],
    [false, "rules for groups are inherited", `<style>g{fill:none}</style><g>${rect()}</g>`],
    [false, "what is inside", `<style>g.out a .a{fill:none}</style><g class="out"><g><a>${rect()}</a></g></g>`],
    [true, "what is not inside", `<style>g.out .a{fill:none}</style><g class="other">${rect()}</g>`],
    [false, "a child", `<style>g > .a{fill:none}</style><g>${rect()}</g>`],
    [true, "no child", `<style>g > .a{fill:none}</style><g><a>${rect()}</a></g>`],
    [false, "an attribute", `<style>rect[width]{fill:none}</style>${rect()}`],
    [false, "an attribute's value", `<style>[width="9"]{fill:none}</style>${rect()}`],
    [true, "another value", `<style>[width="8"]{fill:none}</style>${rect()}`],
    [false, "the root", `<style>:root{fill:none}</style>${rect()}`],
    [true, "states that never are", `<style>.a:hover, .a::before{fill:none}</style>${rect()}`],
    [false, "the screen", `<style>@media screen{.a{fill:none}}</style>${rect()}`],
    [true, "no paper", `<style>@media print{.a{fill:none}}</style><style media="print">.a{fill:none}</style>${rect()}`],
    [true, "no darkness", `<style>@media (prefers-color-scheme: dark){.a{fill:none}}</style>${rect()}`],
    [false, "a layer", `<style>@layer x{.a{fill:none}}</style>${rect()}`],
    [false, "a variable", `<style>:root{--c:none} .a{fill:var(--c)}</style>${rect()}`],
    [
      false,
      "a variable of a variable",
      `<style>:root{--c:none} g{--d:var(--c)} .a{fill:var( --d , red)}</style><g>${rect()}</g>`,
    ],
    [false, "a variable's fallback", `<style>.a{fill:var(--c, var(--d, none))}</style>${rect()}`],
    [false, "what stands beside malformed CSS", `<style>.b{fill} .a{fill:none;;!} .c{{</style>${rect()}`],
    [
      true,
      "properties without bearing",
      `<style>.a{font:12px x;line-height:125%;enable-background:new;cursor:pointer}</style>${rect('style="-x-y:1;;"')}`,
    ],
    [
      false,
      "rules for a use's target go by the target",
      `<style>.t{fill:none}</style><defs><rect class="t" id="t" ${SIZE}/></defs><use href="#t" fill="red"/>`,
    ],
  ])("paints: %s, %s", (painted, _, body) => {
    expect(isPainted(body)).toBe(painted);
  });
});

describe("readSvg(text): notes", () => {
  it.each<[string, number, [number, string][]]>([
    [`<rect ${SIZE} stroke="red"/>`, 2, [[2, "a stroke counts as the area that it covers"]]],
    [`<g stroke="red" fill="none">\n<path d="M0 0h5v5"/></g>`, 1, [[3, "a stroke counts as the area that it covers"]]],
    ['<line x2="5" y2="5" stroke="red"/>', 1, [[2, "a stroke counts as the area that it covers"]]],
    ['<line x2="5" y2="5"/>', 0, []],
    [`<rect ${SIZE} stroke="red" stroke-width="0"/>`, 1, []],
    [`<rect ${SIZE} stroke="red" stroke-opacity="0"/>`, 1, []],
    [`<rect ${SIZE} stroke="red" visibility="hidden"/>`, 0, []],
    [`<rect ${SIZE} fill="none"/>`, 0, []],
    [`<rect ${SIZE} opacity=".5"/>`, 1, [[2, '<rect> opacity ".5" counts as solid']]],
    [`<g style="fill-opacity:30%">\n<rect ${SIZE}/></g>`, 1, [[2, '<g> fill-opacity "30%" counts as solid']]],
    [`<rect ${SIZE} fill="rgba(1,2,3,.5)"/>`, 1, [[2, 'fill "rgba(1,2,3,.5)" counts as solid']]],
    [`<pattern id="p"/><rect ${SIZE} fill="url(#p)"/>`, 1, [[2, 'fill "url(#p)" counts as solid']]],
    [
      `<linearGradient id="p"><stop stop-opacity="0"/></linearGradient><rect ${SIZE} fill="url(#p)"/>`,
      1,
      [[2, 'fill "url(#p)" counts as solid']],
    ],
    ['<rect width="0" height="9"/>', 0, [[2, "<rect> is not painted: it has no area"]]],
    ['<rect height="9"/>', 0, [[2, "<rect> is not painted: it has no area"]]],
    ["<circle/>", 0, [[2, "<circle> is not painted: it has no area"]]],
    ["<path/>", 0, [[2, "<path> is not painted: it has no area"]]],
    ['<path d="M0 0 1 2 3 6 2 4z"/>', 0, [[2, "<path> is not painted: it has no area"]]],
    [`<rect ${SIZE} transform="scale(1 0)"/>`, 0, [[2, "<rect> is not painted: it has no area"]]],
    [`<rect ${SIZE} transform="rotate(30) scale(1 0)"/>`, 0, [[2, "<rect> is not painted: it has no area"]]],
    [
      `<g filter="blur(2px)">\n<rect ${SIZE}/></g>`,
      1,
      [[2, "the filter of <g> is left out; the shape counts as it is"]],
    ],
    ['<path d="M0 0h5v5" marker-end="url(#m)"/>', 1, [[2, "the markers of <path> are left out: draw them as shapes"]]],
    [
      `<rect ${SIZE} clip-path="url(#c)"/>`,
      1,
      [[2, '<rect> clip-path "url(#c)" is left out: it points to nothing of its kind']],
    ],
    [
      `<clipPath id="c"><rect x="50" ${SIZE}/></clipPath><rect ${SIZE} clip-path="url(#c)"/>`,
      0,
      [[2, "<rect> is not painted: its clip path or mask leaves nothing of it"]],
    ],
    [
      `<mask id="m"><rect ${SIZE} fill="#777"/></mask>\n<rect ${SIZE} mask="url(#m)"/>`,
      1,
      [[2, "<rect> in a mask counts as all open: masks here are open or closed"]],
    ],
    [
      `<g id="a"/>\n<g id="a"><rect ${SIZE}/></g>`,
      1,
      [[3, 'id "a" is also that of <g> in line 2; where it is named, both count']],
    ],
    [`<style>.a{fill}</style><rect ${SIZE}/>`, 1, [[2, "malformed CSS is skipped: colon is expected"]]],
    [`<rect ${SIZE}\nstyle="fill"/>`, 1, [[3, "malformed CSS is skipped: colon is expected"]]],
    [
      `<rect ${SIZE} opacity=".5"/>\n<rect ${SIZE} opacity=".5"/>\n<rect ${SIZE} opacity=".5"/>`,
      3,
      [[2, '<rect> opacity ".5" counts as solid (and in 2 more lines)']],
    ],
    ["<script>x()</script>", 0, [[2, "<script> is ignored; the picture is taken as written"]]],
    [`<rect ${SIZE}/>\n<animate/>`, 1, [[3, "<animate> is ignored; the picture is taken at rest"]]],
    ['<rect xmlns="" width="1" height="1"/>', 0, [[2, "<rect> is ignored: it is outside the SVG namespace"]]],
    [
      `<defs><rect id="r" ${SIZE} stroke="red"/></defs><use href="#r"/><use href="#r" x="9"/>`,
      4,
      [[2, "a stroke counts as the area that it covers"]],
    ],
    [
      `<symbol id="s" viewBox="0 0 9 9"><rect x="20" ${SIZE}/></symbol><use href="#s"/>`,
      0,
      [[2, "<rect> is not painted: it lies outside its symbol’s viewBox"]],
    ],
  ])("notes what is left out of %s", (body, shapes, notes) => {
    const picture = readBody(body);
    expect(picture.notes).toEqual(notes.map(([line, message]) => ({ line, message })));
    expect(picture.shapes.length).toBe(shapes);
  });
});
