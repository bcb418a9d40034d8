import { readFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { type Files, type HostileCase, KIT, MOTIF, PAGE, page } from "./sound.ts";

/** Words, outlines, layers, crops, selections and motifs that have no sense, no end, or more than a kit is worth. */

const FONT = "node_modules/@fontsource/noto-sans-hebrew/files/noto-sans-hebrew-hebrew-400-normal";
const font = (ending: string): Buffer => readFileSync(join(import.meta.dirname, "../..", `${FONT}.${ending}`));
const WOFF = font("woff");
const WOFF2 = font("woff2");

const PICTURE = /picture:\n(?: {2}.*\n)+/;

/** The sound kit with another picture, in YAML that goes behind the key. */
function pictured(yaml: string, files: Files = {}): Files {
  return { ...page(PICTURE, `picture: ${yaml}\n`), ...files };
}

/** A picture of layers that shows all levels, with more behind them. */
function layered(more: string, files?: Files): Files {
  const layers = `{ level: hills, ground: { height: 30 } }, { level: moon, oval: {}, at: [60, 30], width: 30 }`;
  return pictured(`{ width: 100, height: 90, layers: [${layers}, ${more}] }`, files);
}

/** A kit with a window, and with this motif on it. */
function motif(yaml: string, files: Files = {}): Files {
  const layers = `{ level: hills, ring: { width: 14 }, width: 88 }, { level: moon, oval: {}, at: [50, 45], width: 40 }`;
  const text = PAGE.replace(PICTURE, () => `picture: { width: 100, height: 90, layers: [${layers}] }\n`);
  const insert = `insert: { outline: hills, motifs: [${yaml}] }\n`;
  return { [`${KIT}/index.md`]: text.replace("book:\n", () => `${insert}book:\n`), ...files };
}

/** Words in front of the picture, with a font file beside it. */
function lettered(yaml: string, files: Files = {}): Files {
  return layered(`{ level: moon, at: ["50%", "20%"], width: 30, ${yaml} }`, files);
}

const inFont = (bytes: string | Uint8Array, name = "own.ttf"): Files =>
  lettered(`text: "ירח", font: ${name}`, { [`${KIT}/${name}`]: bytes });

function told(name: string, files: Files, says: RegExp): HostileCase {
  return { name, files, expect: "told", says };
}

function built(name: string, files: Files): HostileCase {
  return { name, files, expect: "built" };
}

const words: readonly HostileCase[] = [
  built("words in a font of the kit", inFont(WOFF, "own.woff")),
  built("words in a font that is named for another kind", inFont(WOFF2, "own.ttf")),
  built(
    "words in a font of the site",
    lettered('text: "ירח", font: quay', {
      "content/site.yaml": "fonts: [{ file: own.woff, name: Quay }]\n",
      "content/fonts/own.woff": WOFF,
    }),
  ),
  told(
    "a font of the site that its settings do not name",
    lettered("text: moon, font: Quay", { "content/fonts/own.woff": WOFF }),
    /font: "Quay" is no font/,
  ),
  told("a font that is text", inFont("A font is what you make of it.\n"), /font: "own\.ttf" cannot be read as a font/),
  told("a font that is a picture", inFont(MOTIF), /cannot be read as a font/),
  told("a font that is empty", inFont(""), /font: .*empty/),
  told("a font cut off in its tables", inFont(WOFF.subarray(0, 300), "own.woff"), /cannot be read as a font/),
  told("half a font", inFont(WOFF2.subarray(0, WOFF2.length / 2), "own.woff2"), /cannot be read as a font|letters/),
  told("a font of 40 MB", inFont(Buffer.alloc(40_000_000)), /font: .*MB/),
  told("a font that is a folder", lettered("text: moon, font: own.ttf", { [`${KIT}/own.ttf`]: "folder" }), /font: /),
  told(
    "a font that is a link out of the kit",
    lettered("text: moon, font: own.ttf", {
      [`${KIT}/own.ttf`]: { link: "../../../secret.ttf" },
      "secret.ttf": WOFF,
    }),
    /font: .*outside|font: .*link/,
  ),
  told("a font in another folder", lettered("text: moon, font: ../other/own.ttf"), /font: .*outside|font: .*\.\./),
  told("a font with an address", lettered('text: moon, font: "https://example.org/moon.woff2"'), /font: /),
  told("a font that is not there", lettered("text: moon, font: own.otf"), /font: /),
  told("a font called __proto__", lettered("text: moon, font: __proto__"), /font: "__proto__" is no font/),
  told("a font called constructor", lettered("text: moon, font: constructor"), /font: "constructor" is no font/),
  told("a font of 10,000 letters", lettered(`text: moon, font: ${"f".repeat(10_000)}`), /font: /),
  told("letters that no font has", lettered('text: "月と船"'), /text: .*U\+6708/),
  told("emoji as words", lettered('text: "🌙"'), /text: .*U\+1F319/),
  told("10,000 letters", lettered(`text: "${"m".repeat(10_000)}"`), /text: /),
  told("a line of 1,000 letters", lettered(`text: ["${"m".repeat(1000)}"]`), /text/),
  told("a thousand lines", lettered(`text: [${"a,".repeat(1000)}]`), /text: /),
  told("words of spaces", lettered('text: "   "'), /text: words without a letter/),
  told("words of joiners", lettered('text: "\\u200d\\u200b\\u2060"'), /text: words without a letter/),
  told("words with a control character", lettered('text: "a\\u0007b"'), /U\+0007/),
  built("words turned about by a bidi override", lettered('text: "\\u202emoon\\u202c"')),
  built("bidi marks that do not end", lettered(`text: "${"\\u2067".repeat(100)}moon"`)),
  told("no line", lettered("text: []"), /text: given \[\]/),
  told("words that are a number", lettered("text: 27"), /text: given 27/),
  told("words that are a map", lettered("text: { a: 1 }"), /text: /),
  told("an arc beyond a turn", lettered("text: moon, arc: 1e9"), /arc: /),
  told("an arc that is no number", lettered("text: moon, arc: .nan"), /arc: /),
  told("an arc too tight for its lines", lettered("text: [o, o, o, o, o, o], arc: 360"), /arc: given 360/),
  told("letters that run over each other", lettered("text: moon, spacing: -9"), /spacing: /),
  told("a weight below nothing", lettered("text: moon, weight: -1"), /weight: /),
];

const outlines: readonly HostileCase[] = [
  ...["-3", "1e9", ".nan", ".inf", "null", '"wide"', "[3]", "{ mm: 3 }", '"0/0 mm"', '"-5%"', '"500%"'].map((width) =>
    told(`a ring ${width} wide`, layered(`{ level: hills, ring: { width: ${width} } }`), /layers\[3\]\.ring\.width: /),
  ),
  told("a ring broader than it is", layered("{ level: hills, ring: { width: 80 }, width: 90 }"), /ring\.width: .*mm/),
  told("a ring of no width", layered("{ level: hills, ring: { width: 0 } }"), /ring/),
  told("a star of 1e6 points", layered("{ level: hills, star: { points: 1e6 } }"), /star\.points: /),
  told("a star of 5.5 points", layered("{ level: hills, star: { points: 5.5 } }"), /star\.points: /),
  told("a star without an inside", layered("{ level: hills, star: { inner: 0 } }"), /star\.inner: /),
  told("a moon that is not lit", layered("{ level: hills, moon: { lit: 0 } }"), /moon\.lit: /),
  told("a moon lit twice", layered("{ level: hills, moon: { lit: 2 } }"), /moon\.lit: /),
  told("a heart that is a list", layered("{ level: hills, heart: [] }"), /heart: /),
  told("a heart that is a word", layered("{ level: hills, heart: yes }"), /heart: /),
  told("an outline of nothing", layered("{ level: hills, heart: null }"), /heart: |no source/),
  told("a ground that is all waves", layered("{ level: hills, ground: { height: 5, wave: 40 } }"), /ground\.wave: /),
  told("a border without a middle", layered("{ level: hills, border: { width: 60 } }"), /border\.width: /),
  told("an outline called constructor", layered("{ level: hills, constructor: {} }"), /unknown key "constructor"/),
  told("an outline called __proto__", layered("{ level: hills, __proto__: {} }"), /unknown key "__proto__"/),
];

const many = (count: number, one: string): string => Array.from({ length: count }, () => one).join(", ");

const layers: readonly HostileCase[] = [
  built("40 layers", layered(many(38, "{ level: moon, star: { points: 60 }, at: [20, 20], width: 9 }"))),
  told("41 layers", layered(many(39, "{ level: moon, heart: {} }")), /picture\.layers: /),
  told("no layers", pictured("{ width: 100, height: 90, layers: [] }"), /picture\.layers: /),
  told("layers without a box", pictured("{ layers: [{ level: moon, heart: {} }] }"), /picture\.width: not given/),
  told("layers in layers", layered("{ level: hills, layers: [{ level: moon, heart: {} }] }"), /unknown key "layers"/),
  told("a layer that is a word", layered("moon"), /picture\.layers\[3\]: /),
  told("a layer that is nothing", layered("null"), /picture\.layers\[3\]: /),
  told("a layer without a source", layered("{ level: hills }"), /layers\[3\]: no source/),
  told("a layer of no level", layered("{ level: __proto__, heart: {} }"), /level: given "__proto__"/),
  told("a layer with two sources", layered("{ level: hills, heart: {}, text: moon }"), /text, heart in one/),
  told(
    "a level cut by itself",
    pictured(
      "{ width: 100, height: 90, layers: [{ level: moon, oval: {}, width: 20, at: [20, 20] }, { level: hills, ground: { height: 30 }, cut: [{ ground: { height: 30 } }] }] }",
    ),
    /level "hills"/,
  ),
  built(
    "a layer cut twenty times",
    layered(`{ level: hills, oval: {}, cut: [${many(20, '{ star: { points: 60 }, width: "30%" }')}] }`),
  ),
  told("a layer cut 21 times", layered(`{ level: hills, oval: {}, cut: [${many(21, "{ heart: {} }")}] }`), /cut: /),
  told("pieces in pieces", layered("{ level: hills, oval: {}, cut: [{ heart: {}, cut: [] }] }"), /unknown key "cut"/),
  told("a turn of 1e9", layered("{ level: hills, heart: {}, turn: 1e9 }"), /turn: /),
  told("a turn that is no number", layered("{ level: hills, heart: {}, turn: .nan }"), /turn: /),
  told("a mirror that is a word", layered('{ level: hills, heart: {}, mirror: "left" }'), /mirror: /),
  ...['"0%"', "0", "-1", "1e9", ".inf", '"1e3%"', '"%"', "[1]"].map((width) =>
    told(`a layer ${width} wide`, layered(`{ level: hills, heart: {}, width: ${width} }`), /layers\[3\]\.width: /),
  ),
  built("a layer far outside", layered("{ level: hills, heart: {}, at: [1900, -1900] }")),
  told("a layer beyond all", layered("{ level: hills, heart: {}, at: [1e12, 0] }"), /layers\[3\]\.at\[1\]: /),
  told("a layer at one number", layered("{ level: hills, heart: {}, at: [5] }"), /layers\[3\]\.at: /),
  told("a layer at nowhere", layered("{ level: hills, heart: {}, at: [.nan, 0] }"), /layers\[3\]\.at\[1\]: /),
  told(
    "a box of 1e9",
    pictured("{ width: 1e9, height: 90, layers: [{ level: moon, heart: {} }] }"),
    /picture\.width: /,
  ),
];

const drawn = (levels: string, more = ""): Files =>
  page(PICTURE, `picture:\n  file: moon.svg\n  levels: ${levels}\n${more}`);

const selections: readonly HostileCase[] = [
  told("a colour that is none", drawn('{ hills: { fill: "moonish" }, moon: "#moon" }'), /levels\.hills.*: /),
  told("a colour that is a script", drawn('{ hills: { fill: "url(#a)" }, moon: "#moon" }'), /levels\.hills.*: /),
  told("a colour of 10,000 letters", drawn(`{ hills: { fill: "#${"c".repeat(10_000)}" }, moon: "#moon" }`), /hills/),
  told(
    "a colour that is a number",
    drawn('{ hills: { fill: 12 }, moon: "#moon" }'),
    /levels\.hills: given \{"fill":12\}/,
  ),
  told("a name of 10,000 letters", drawn(`{ hills: "${"h".repeat(10_000)}", moon: "#moon" }`), /hills/),
  told("10,000 names", drawn(`{ hills: [${many(10_000, '"#hills"')}], moon: "#moon" }`), /hills/),
  told("a name that is __proto__", drawn('{ hills: "__proto__", moon: "#moon" }'), /hills.*__proto__/),
  told("an id that is constructor", drawn('{ hills: "#constructor", moon: "#moon" }'), /hills.*#constructor/),
  told("a class that is toString", drawn('{ hills: ".toString", moon: "#moon" }'), /hills.*\.toString/),
  told(
    "shapes for a level called __proto__",
    drawn('{ __proto__: "#hills", moon: "#moon" }'),
    /unknown key "__proto__"/,
  ),
  told("shapes for a level called constructor", drawn('{ constructor: "#hills", moon: "#moon" }'), /constructor/),
  told("a selector of only a sign", drawn('{ hills: "#", moon: "#moon" }'), /hills/),
  told("an empty selection", drawn('{ hills: [], moon: "#moon" }'), /hills/),
  told("a selection of nothing", drawn('{ hills: null, moon: "#moon" }'), /hills/),
  told("a selection by a key that is none", drawn('{ hills: { href: "a" }, moon: "#moon" }'), /hills/),
  told("control characters in a name", drawn('{ hills: "a\\u0007", moon: "#moon" }'), /U\+0007/),
  told("the same shape at two levels", drawn('{ hills: ["#hills", "#moon"], moon: "#moon" }'), /moon/),
];

const MATTER = '{ hills: "#hills", moon: "#moon" }';

const crops: readonly HostileCase[] = [
  ...[
    ["outside", "{ x: 500, y: 500, width: 20, height: 20 }"],
    ["of no width", "{ x: 0, y: 0, width: 0, height: 20 }"],
    ["of negative width", "{ x: 0, y: 0, width: -20, height: 20 }"],
    ["that is no number", "{ x: .nan, y: 0, width: 20, height: 20 }"],
    ["without an end", "{ x: 0, y: 0, width: .inf, height: 20 }"],
    ["at the end of numbers", "{ x: 1e308, y: 0, width: 20, height: 20 }"],
    ["without a height", "{ x: 0, y: 0, width: 20 }"],
    ["of words", "{ x: left, y: top, width: all, height: all }"],
    ["that is a list", "[0, 0, 20, 20]"],
    ["that is a word", "everything"],
    ["of another key", "{ x: 0, y: 0, width: 20, height: 20, turn: 3 }"],
  ].map(([name, crop]) => told(`a crop ${name}`, drawn(MATTER, `  crop: ${crop}\n`), /picture\.crop/)),
  told(
    "a crop so small that it shows one level",
    drawn(MATTER, "  crop: { x: 60, y: 30, width: 0.001, height: 0.001 }\n"),
    /level|picture|cut/,
  ),
  told("a crop a million times as wide", drawn(MATTER, "  crop: { x: 0, y: 0, width: 1e6, height: 1e-6 }\n"), /./),
];

const PNG = await sharp({ create: { width: 60, height: 40, channels: 3, background: "#fff" } })
  .composite([
    { input: Buffer.from('<svg width="30" height="20"><rect width="30" height="20"/></svg>'), left: 9, top: 9 },
  ])
  .png()
  .toBuffer();

const BLANK = await sharp({ create: { width: 60, height: 40, channels: 3, background: "#fff" } })
  .png()
  .toBuffer();

const motifs: readonly HostileCase[] = [
  built(
    "a motif of every kind",
    motif(`{ heart: {} }, { motif: block }, { file: a.svg }, { file: a.png, trace: silhouette }`, {
      [`${KIT}/a.svg`]: MOTIF,
      [`${KIT}/a.png`]: PNG,
    }),
  ),
  told("a motif of words that fall apart", motif('{ text: "27", at: ["50%", "50%"] }'), /motifs\[1\]: 2 pieces/),
  told("a motif of no source", motif("{ width: 20 }"), /motifs\[1\]: no source/),
  told("a motif of three sources", motif("{ heart: {}, motif: block, text: a }"), /motif, text, heart in one/),
  told("a motif called __proto__", motif("{ motif: __proto__ }"), /motif: given "__proto__"/),
  told("a motif called constructor", motif("{ motif: constructor }"), /motif: given "constructor"/),
  told("a motif that is nothing", motif("null"), /insert\.motifs\[1\]: /),
  told("a motif of layers", motif("{ layers: [{ heart: {} }] }"), /unknown key "layers"/),
  told("a motif cut by itself", motif("{ heart: {}, cut: [{ heart: {} }] }"), /motifs\[1\]: nothing that is left/),
  told("a motif cut 21 times", motif(`{ heart: {}, cut: [${many(21, "{ heart: {} }")}] }`), /cut: /),
  built(
    "a motif cut twenty times",
    motif(`{ oval: {}, cut: [${many(20, '{ star: { points: 60 }, width: "20%" }')}] }`),
  ),
  told(
    "a motif joined far away",
    motif("{ heart: {}, width: 20, join: [{ oval: {}, at: [1900, 0], width: 5 }] }"),
    /motifs/,
  ),
  told("25 motifs", motif(many(25, "{ heart: {}, at: [20, 20] }")), /insert\.motifs: /),
  told("a motif of a picture outside", motif("{ file: ../../motifs/block.svg }"), /motifs\[1\]\.file: /),
  told("a motif of a raster named .svg", motif("{ file: a.svg }", { [`${KIT}/a.svg`]: PNG }), /a\.svg/),
  told("a motif of one tone", motif("{ file: a.png, trace: silhouette }", { [`${KIT}/a.png`]: BLANK }), /single tone/),
  told(
    "a motif of colours",
    motif("{ file: a.png, trace: colours }", { [`${KIT}/a.png`]: PNG }),
    /trace: given colours/,
  ),
  told("a motif of a font that is text", motif("{ text: a, font: own.ttf }", { [`${KIT}/own.ttf`]: "moon" }), /font: /),
  told("a motif turned 1e9", motif("{ heart: {}, turn: 1e9 }"), /turn: /),
  told("a motif of no width", motif('{ heart: {}, width: "0%" }'), /motifs\[1\]\.width: /),
  told("a motif as thin as a thread", motif("{ rectangle: {}, width: 600, height: 4, turn: 45, at: [1e3, 1e3] }"), /./),
];

const draft = (value: string): Files => page("title: First moon", `title: First moon\ndraft: ${value}`);

const drafts: readonly HostileCase[] = [
  ...['"yes"', "yes", "1", "[true]", "{ a: true }", '"true"'].map((value) =>
    told(`a draft that is ${value}`, draft(value), /draft: /),
  ),
  built("a draft", draft("true")),
  built("a kit that is no draft", draft("false")),
  built("a draft with a broken picture", { ...draft("true"), [`${KIT}/moon.svg`]: "<svg" }),
  told("a draft that is null", draft("null"), /draft: /),
];

/** A line that trembles, of 300,000 points on a short way. */
const TREMBLING = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 90"><path d="M0 40${"l.0003.0005.0003-.0005".repeat(150_000)}V80H0z"/></svg>`;

const repeated: readonly HostileCase[] = [
  told(
    "a long outline again and again",
    layered(many(30, "{ level: moon, file: long.svg }"), { [`${KIT}/long.svg`]: TREMBLING }),
    /fewer points: all sources together/,
  ),
  told(
    "a long outline joined and cut",
    layered(
      `{ level: moon, file: long.svg, join: [${many(20, "{ file: long.svg }")}], cut: [${many(20, "{ file: long.svg }")}] }`,
      { [`${KIT}/long.svg`]: TREMBLING },
    ),
    /fewer points: all sources together/,
  ),
  told(
    "a photograph in sixty-one pieces",
    layered(many(4, `{ level: moon, oval: {}, width: 9, cut: [${many(16, "{ file: a.png, trace: silhouette }")}] }`), {
      [`${KIT}/a.png`]: PNG,
    }),
    /one photograph or scan more than a kit may trace/,
  ),
];

export const SOURCES: readonly HostileCase[] = [
  ...words,
  ...outlines,
  ...layers,
  ...selections,
  ...crops,
  ...motifs,
  ...repeated,
  ...drafts,
];
