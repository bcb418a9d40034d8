import { drawing, type Files, type HostileCase, MOTIF, page, picture } from "./sound.ts";

/** Drawings made to exhaust the reader, and files that only look like drawings. */

const OPEN = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 90">';
const SQUARE = '<path id="s0" d="M0 0h9v9z"/>';

function told(name: string, svg: string | Uint8Array, says: RegExp): HostileCase {
  return { name, files: drawing(svg), expect: "told", says };
}

function built(name: string, svg: string): HostileCase {
  return { name, files: drawing(svg), expect: "built" };
}

/** Elements each of which shows the one before it twice. */
function doubling(times: number, around: (id: string, inner: string) => string): string {
  const each = Array.from({ length: times }, (_, i) =>
    around(`s${i + 1}`, `<use href="#s${i}"/><use href="#s${i}" x="1"/>`),
  );
  return picture(`<defs>${SQUARE}${each.join("")}</defs><g id="more"><use href="#s${times}"/></g>`);
}

const symbol = (id: string, inner: string): string => `<symbol id="${id}" viewBox="0 0 50 50">${inner}</symbol>`;
const group = (id: string, inner: string): string => `<g id="${id}">${inner}</g>`;
const many = (count: number, make: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => make(i)).join("");

const star = (corners: number): string =>
  Array.from(
    { length: corners },
    (_, i) => `${(50 + 40 * Math.cos(2.9 * i)).toFixed(3)} ${(45 + 40 * Math.sin(2.9 * i)).toFixed(3)}`,
  ).join("L");

const expanding: readonly HostileCase[] = [
  told("symbols doubling 15 times", doubling(15, symbol), /more than 100,000 elements/),
  told("symbols doubling 30 times", doubling(30, symbol), /more than 100,000 elements/),
  told("groups doubling 30 times", doubling(30, group), /more than 100,000 elements/),
  told(
    "60,000 uses of a symbol in 2 kB",
    picture(
      `<symbol id="a" viewBox="0 0 9 9">${SQUARE}</symbol><symbol id="b">${many(245, () => '<use href="#a"/>')}</symbol>${many(245, () => '<use href="#b"/>')}`,
    ),
    /more than 100,000 elements/,
  ),
  told(
    "a symbol that clips a long path again and again",
    picture(
      `<symbol id="a" viewBox="0 0 9 9"><path d="M0 0${"l20 20-20 3 ".repeat(9000)}z"/></symbol>${many(90, () => '<use href="#a"/>')}`,
    ),
    /points/,
  ),
  told("a use that shows itself", picture('<g id="x"><use href="#x"/></g>'), /shows itself/),
  told(
    "uses in a chain of 5,000",
    picture(`${SQUARE}${many(5000, (i) => `<use id="s${i + 1}" href="#s${i}"/>`)}`),
    /levels of groups/,
  ),
  told("groups 100,000 deep", picture(`${"<g>".repeat(100_000)}${"</g>".repeat(100_000)}`), /more than 200 levels/),
  told("groups 300 deep", picture(`${"<g>".repeat(300)}${"</g>".repeat(300)}`), /more than 200 levels/),
  told("100,001 elements", picture(many(100_001, () => "<g/>")), /more than 100,000 elements/),
  told("a path of 200,000 segments", picture(`<path id="more" d="M0 0${"l9 1-9 1".repeat(100_000)}z"/>`), /no level/),
  told(
    "curves thousands of times as large as the picture",
    picture('<circle id="more" r="1e12"/>'),
    /thousands of times/,
  ),
  told("numbers beyond all numbers", picture('<path id="more" d="M0 0L1e400 1"/>'), /number/),
  told(
    "2,000 elements and as many rules for all of them",
    picture(
      `<style>${many(2000, (i) => `rect{opacity:.${i}1}`)}</style>${many(2000, () => '<rect width="1" height="1"/>')}`,
    ),
    /styles/,
  ),
  built(
    "1,000 classes and 1,000 rules",
    picture(
      `<style>${many(1000, (i) => `.c${i}{fill:#123}`)}</style><g fill="none">${many(1000, (i) => `<g class="d${i}"/>`)}</g>`,
    ),
  ),
  built("4,000 elements", drawingOf(4000)),
  told(
    "full-size shapes by the thousand",
    picture(`<g id="more">${many(8000, () => '<rect width="100" height="90"/>')}</g>`),
    /times as long as the picture/,
  ),
  told("an attribute of 2 MB", picture(`<rect id="${"a".repeat(2_000_000)}" width="1" height="1"/>`), /no level/),
  told("an element named with 2 MB", picture(`<${"a".repeat(2_000_000)}/>`), /cannot be drawn/),
  told("styles within styles", picture(`<style>a{fill:${"(".repeat(50_000)}</style>`), /nested too deeply|CSS/),
  told("a hundred and one namespaces", picture(`<g ${many(101, (i) => `xmlns:n${i}="u:${i}" `)}/>`), /namespaces/),
  told(
    "a document type of 300,000 entities",
    `<!DOCTYPE svg [${many(3000, (i) => `<!ENTITY e${i} "x">`)}]>${picture()}`,
    /document type/,
  ),
  told(
    "entities within entities",
    `<!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;">]>${picture("<desc>&b;</desc>")}`,
    /entity "&b;"/,
  ),
  told(
    "an entity from a file",
    `<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/hostname">]>${picture("<desc>&x;</desc>")}`,
    /entity "&x;"/,
  ),
  told(
    "an entity from the network",
    `<!DOCTYPE svg SYSTEM "http://127.0.0.1/x.dtd">${picture("<desc>&x;</desc>")}`,
    /entity/,
  ),
  told(
    "dashes by the million",
    picture('<path id="more" d="M0 9h90" stroke="red" stroke-dasharray="1e-5"/>'),
    /more than 50,000 dashes/,
  ),
  told(
    "a round line along 40,000 corners",
    picture(
      `<path id="more" fill="none" stroke="red" stroke-width="90" stroke-linejoin="round" d="M0 0${"l9 1-9 1".repeat(20_000)}"/>`,
    ),
    /points/,
  ),
  told(
    "a clip path of a star of 5,000 corners",
    picture(
      `<clipPath id="c"><path d="M${star(5000)}z"/></clipPath><rect id="more" width="90" height="90" clip-path="url(#c)"/>`,
    ),
    /crossings/,
  ),
  told(
    "many shapes cut by a clip path of many corners",
    picture(
      `<clipPath id="c"><path d="M${star(301)}z"/></clipPath><g id="more" clip-path="url(#c)">${many(2000, (i) => `<circle cx="${i % 90}" cy="50" r="30"/>`)}</g>`,
    ),
    /crossings|times as long/,
  ),
  told(
    "clip paths that cut each other",
    picture(
      '<clipPath id="a"><rect width="9" height="9" clip-path="url(#b)"/></clipPath><clipPath id="b"><rect width="9" height="9" clip-path="url(#a)"/></clipPath><rect id="more" width="9" height="9" clip-path="url(#a)"/>',
    ),
    /cuts itself/,
  ),
  told(
    "masks in masks that show each other",
    picture(
      '<mask id="a"><rect width="9" height="9" fill="#fff" mask="url(#b)"/></mask><mask id="b"><rect width="9" height="9" fill="#fff" mask="url(#a)"/></mask><rect id="more" width="9" height="9" mask="url(#a)"/>',
    ),
    /cuts itself/,
  ),
  told(
    "clip paths doubling 30 times",
    picture(
      `${many(30, (i) => `<clipPath id="c${i + 1}"><rect width="9" height="9" clip-path="url(#c${i})"/><rect width="8" height="9" clip-path="url(#c${i})"/></clipPath>`)}<clipPath id="c0"><rect width="9" height="9"/></clipPath><rect id="more" width="9" height="9" clip-path="url(#c30)"/>`,
    ),
    /no level|more than 100,000 elements/,
  ),
  told(
    "variables that double",
    picture(
      `<style>:root{${many(40, (i) => `--v${i + 1}:var(--v${i}) var(--v${i});`)}--v0:red}</style><rect id="more" width="9" height="9" fill="var(--v40)"/>`,
    ),
    /has no value/,
  ),
  told(
    "selectors that look far around",
    picture(
      `<style>${many(300, () => "g g g g g g g g g g a rect{fill:red}")}</style>${"<g>".repeat(150)}${many(200, () => '<rect width="1" height="1"/>')}${"</g>".repeat(150)}`,
    ),
    /styles/,
  ),
  told(
    "an entity of 1,000 letters 5,000 times",
    `<!DOCTYPE svg [<!ENTITY a "${"a".repeat(1000)}">]>${picture(`<desc>${"&a;".repeat(5000)}</desc>`)}`,
    /entities/,
  ),
  built(
    "an exporter's entities, switch and metadata",
    `<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://127.0.0.1/svg11.dtd" [<!ENTITY ns_x "http://example.org/x">]>${picture('<metadata><x xmlns="&ns_x;"/></metadata><switch><foreignObject requiredExtensions="&ns_x;"/><g/></switch>')}`,
  ),
  ...["<", "<!--", "<![CDATA[", "<?x ", "<rect ", '<rect a="', "</g>", "&", "]]>"].map((piece) =>
    told(`${piece} 20,000 times`, `${OPEN}${piece.repeat(20_000)}`, /picture: /),
  ),
];

const others: readonly HostileCase[] = [
  told("a PNG named .svg", Buffer.from("89504e470d0a1a0a0000000d49484452", "hex"), /a PNG image/),
  told("a JPEG named .svg", Buffer.from("ffd8ffe000104a46494600", "hex"), /a JPEG photo/),
  told("a PDF named .svg", "%PDF-1.7\n", /a PDF document/),
  told("a PostScript file named .svg", "%!PS-Adobe-3.0 EPSF-3.0\n", /a PostScript file/),
  told("a page of the web named .svg", "<!DOCTYPE html><html><body/></html>", /picture: /),
  told("plain words named .svg", "The moon is round.\n", /no <svg> element/),
  told("an empty drawing", "", /no <svg> element|empty/),
  told(
    "a declared ISO-8859-1 with letters of UTF-8",
    `<?xml version="1.0" encoding="ISO-8859-1"?>${picture("<desc>Löwe</desc>")}`,
    /encoding="ISO-8859-1"/,
  ),
  told("a declared UTF-16 that is UTF-8", `<?xml version="1.0" encoding="UTF-16"?>${picture()}`, /encoding="UTF-16"/),
  built("a declared ISO-8859-1 of plain letters", `<?xml version="1.0" encoding="ISO-8859-1"?>${picture()}`),
  built("a declared UTF-8", `<?xml version="1.0" encoding="utf-8"?>${picture("<desc>Löwe</desc>")}`),
  built("scripts, events and outside addresses", picture('<script>alert(1)</script><desc onclick="alert(1)"/>')),
  told(
    "an image from a file",
    picture('<image href="file:///etc/hostname" width="1" height="1"/>'),
    /a picture of its own/,
  ),
  told("a use from a file", picture('<use href="/etc/hostname#x"/>'), /not in this file/),
  told("a sheet from the network", `<?xml-stylesheet href="http://127.0.0.1/x.css"?>${picture()}`, /xml-stylesheet/),
  told("a sheet that imports one", picture("<style>@import url(http://127.0.0.1/x.css);</style>"), /@import/),
  told("foreign markup", picture("<foreignObject><p>moon</p></foreignObject>"), /foreignObject/),
  told("17 MB of spaces", `${picture()}${" ".repeat(16_000_000)}`, /16\.1 MB/),
];

const motif = (name: string, svg: string, says: RegExp): HostileCase => {
  const files: Files = { "content/motifs/broken.svg": svg };
  return { name: `a motif: ${name}`, files, expect: "told", says };
};

const motifs: readonly HostileCase[] = [
  motif("empty", "", /no <svg>|empty/),
  motif("without a shape", `${OPEN}</svg>`, /no filled shape/),
  motif("of two pieces", `${OPEN}<path d="M1 1h2v2h-2z"/><path d="M6 6h2v2h-2z"/></svg>`, /2 pieces/),
  motif(
    "of 5,000 pieces",
    `${OPEN}${many(5000, (i) => `<path d="M${i % 100} ${Math.floor(i / 100)}h.4v.4z"/>`)}</svg>`,
    /pieces|crowd/,
  ),
  motif("cut off", MOTIF.slice(0, 60), /motif: /),
  motif("with coordinates beyond all use", `${OPEN}<path d="M0 0H1e30V1e30z"/></svg>`, /too large or too small/),
  motif(
    "too small for its units",
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1e-7 1e-7"><path d="M0 0h1e-7v1e-7z"/></svg>',
    /too large or too small/,
  ),
  motif("a star of 5,000 corners", `${OPEN}<path d="M${star(5000)}z"/></svg>`, /crowd/),
  motif("doubling symbols", doubling(30, symbol), /more than 100,000 elements/),
];

const WINDOW = page("book:\n", "insert: { outline: moon }\nbook:\n");
const windows: readonly HostileCase[] = [
  {
    name: "a window round a star of 5,000 corners",
    files: { ...WINDOW, ...drawing(picture().replace(/<circle.*\/>/, `<path id="moon" d="M${star(5000)}z"/>`)) },
    expect: "told",
    says: /insert\.outline: outlines that cross/,
  },
  {
    name: "a window of shapes that take turns",
    files: {
      ...WINDOW,
      ...drawing(
        picture(
          many(
            250,
            (i) => `<g id="${i % 2 ? "moon" : "hills"}${i}"><rect x="${i % 90}" y="9" width="2" height="2"/></g>`,
          ),
        ),
      ),
    },
    expect: "told",
    says: /no level|take turns/,
  },
];

export const PICTURES: readonly HostileCase[] = [...expanding, ...others, ...motifs, ...windows];

/** A picture whose moon is of many small shapes, as a drawing program traces one. */
function drawingOf(count: number): string {
  const shapes = many(
    count,
    (i) => `<path style="fill:#123;stroke:none" d="M${i % 80} ${Math.floor(i / 80)}c.1.2.3.4.5.6s.3.1.2-.4z"/>`,
  );
  return picture().replace(/<circle.*\/>/, `<g id="moon">${shapes}</g>`);
}
