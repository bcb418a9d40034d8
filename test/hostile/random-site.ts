import { readFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { FIXTURES } from "../input/kit/kit-folders.ts";
import { fc } from "../seed.ts";

/** The files of a site below `content`, by path. */
export type SiteFiles = Readonly<Record<string, string | Buffer>>;

/** A small change of a site, as a careless hand or a broken program makes it. */
type Spoil = (files: SiteFiles) => SiteFiles;

const KIT = "kits/gull/index.md";
const PICTURE = "kits/gull/gull.svg";
const CLASS = "classes/evening/index.md";
const BOOKS = "classes/evening/books.csv";
const SETTINGS = "site.yaml";

const fixture = (path: string): string => readFileSync(join(FIXTURES, "content", path), "utf8");
const PHOTO = await sharp({ create: { width: 64, height: 48, channels: 3, background: "#778" } })
  .jpeg()
  .toBuffer();

/** One kit on a thin book, a class of two seats, settings, a photo: a site that builds. */
export const SOUND_SITE: SiteFiles = {
  [KIT]: fixture("kits/little-gull/index.md")
    .replace("leaves: 112", "leaves: 40")
    .replace("lastPage: 218", "lastPage: 74")
    .replace("borderLeaves: [8, 8]", "borderLeaves: [2, 2]")
    .replace("height: 125", "height: 60")
    .replace("picture:\n", "photos:\n  - { file: desk.jpg, alt: A desk }\npicture:\n"),
  [PICTURE]: fixture("kits/little-gull/gull.svg"),
  "kits/gull/desk.jpg": PHOTO,
  [CLASS]: `---
title: An evening
date: 2027-02-04
place: Reading room
kits: [gull]
books: books.csv
sessions:
  - { title: All of it, starts: "18:30", minutes: 150 }
prices: { card: 0.35 }
currency: EUR
---
Come early.
`,
  [BOOKS]: `seat,kit,leafHeight,leafWidth,blockThickness,leaves,pageOneLeaf,lastPage
1,gull,178,108,12.5,40,3,74
2,gull,180,110,11,44,3,82
`,
  [SETTINGS]: "title: Folds\nurl: https://folds.example.org/\n",
};

const VALUES = [
  ...["", "~", "0", "-1", "1e9", ".nan", ".inf", "0x10", "1_000", "true", "[]", "{}", "[1, 2", "{ a: 1", '"', "'x'"],
  ...["12 in", "1 1/2 in", "12,5", "2026-02-30", "2026-10-03", "25:99", "*a", "&a [*a]", "!x y", "!!binary aGk="],
  ...["|", ">-", "- a", "a: b", "# x", "gull", "sky", "../x", "/etc/hosts", "gull.svg", "desk.jpg", "index.md"],
  ...[
    "W".repeat(70),
    "W".repeat(2000),
    "word ".repeat(90),
    "Ночь над гаванью",
    "Λιμάνι",
    "夜の港",
    "\u202eabc",
    "🌙",
    "a\u0000b",
  ],
  ...[
    "https://example.org/",
    `https://example.org/${"x".repeat(300)}`,
    "javascript:alert(1)",
    "solve",
    "fill",
    "stepped",
  ],
];

const TEXTS = [
  "![desk](desk.jpg)",
  "![gone](gone.jpg)",
  "![far](https://example.org/x.png)",
  "![svg](gull.svg)",
  "[home](../../)",
  "[gone](../gone/)",
  "[script](javascript:alert(1))",
  "<script>alert(1)</script>",
  "{{ 7 * 7 }}{% include 'x' %}",
  "W".repeat(400),
  "Тихий вечер, 静かな夜",
  "> ".repeat(300),
];

const PICTURES = [
  "",
  "<svg",
  "<html></html>",
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"/>',
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path id="gull" d="M0 0h9v9z"/><path id="sky" d="M20 20h9v9z"/></svg>',
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><g id="gull"><text>x</text></g><path id="sky" d="M0 0h9v9z"/></svg>',
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><g id="gull"><use href="#gull"/></g><path id="sky" d="M0 0h9v9z"/></svg>',
];

/** Changes a text at a place between 0 and 1 of it. */
type Edit = (text: string, place: number) => string;

const lineEdit =
  (change: (line: string) => readonly string[]): Edit =>
  (text, place) => {
    const lines = text.split("\n");
    const at = Math.floor(place * lines.length);
    return lines.flatMap((line, i) => (i === at ? change(line) : [line])).join("\n");
  };

const indentOf = (line: string): string => /^[\s-]*/.exec(line)![0];

const edits = (value: string): readonly Edit[] => [
  lineEdit((line) => [line.replace(/(:\s*)(?!$).*$/, (_, colon: string) => colon + value)]),
  lineEdit((line) => [line.replace(/([:,]\s*)([^:,{}[\]]+)(?=[,}\]])/, (_, sign: string) => sign + value)]),
  lineEdit(() => []),
  lineEdit((line) => [line, line]),
  lineEdit((line) => [line, `${indentOf(line)}${value}`]),
  lineEdit((line) => [line, `${indentOf(line)}extra: ${value}`]),
  lineEdit((line) => [` ${line}`]),
  (text, place) => text.slice(0, Math.floor(place * text.length)),
  (text, place) =>
    `${text.slice(0, Math.floor(place * text.length))}${value}${text.slice(Math.floor(place * text.length))}`,
];

const edited: fc.Arbitrary<Spoil> = fc
  .record({
    path: fc.constantFrom(KIT, KIT, KIT, CLASS, BOOKS, SETTINGS, PICTURE),
    value: fc.constantFrom(...VALUES),
    edit: fc.nat({ max: edits("").length - 1 }),
    place: fc.double({ min: 0, max: 0.999, noNaN: true }),
  })
  .map(({ path, value, edit, place }) => (files) => {
    const text = files[path];
    return text === undefined ? files : { ...files, [path]: edits(value)[edit]!(String(text), place) };
  });

const told: fc.Arbitrary<Spoil> = fc
  .record({ path: fc.constantFrom(KIT, CLASS), text: fc.constantFrom(...TEXTS) })
  .map(({ path, text }) => (files) => ({ ...files, [path]: `${files[path] ?? ""}\n${text}\n` }));

const drawn: fc.Arbitrary<Spoil> = fc
  .constantFrom(...PICTURES)
  .map((picture) => (files) => ({ ...files, [PICTURE]: picture }));

const bytes: fc.Arbitrary<Spoil> = fc
  .record({
    path: fc.constantFrom(...Object.keys(SOUND_SITE)),
    put: fc.constantFrom([0], [0xff], [0x1b], [0xe4], [0xff, 0xfe], [0x1f, 0x8b], [0xed, 0xa0, 0x80]),
    place: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ path, put, place }) => (files) => {
    const whole = Buffer.from(files[path] ?? "");
    const at = Math.floor(place * whole.length);
    return { ...files, [path]: Buffer.concat([whole.subarray(0, at), Buffer.from(put), whole.subarray(at)]) };
  });

const added: fc.Arbitrary<Spoil> = fc
  .constantFrom<SiteFiles>(
    { "kits/gull/README.md": "notes" },
    { "kits/gull/gull.11tydata.js": "throw new Error('run')" },
    { "notes.njk": "{{ x }}" },
    { "motifs/two.svg": PICTURES[3]! },
    { "motifs/lamp.svg": '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path d="M0 0h9v9z"/></svg>' },
    { "kits/2026-01-01-moon/index.md": "---\ntitle: Moon\n---\n" },
    { "kits/Gull/index.md": "" },
    { "kits/empty/x.txt": "" },
    { "kits/gull/desk.jpg": "no photo" },
    { "kits/gull/desk.jpg": PHOTO.subarray(0, 300) },
    { "index.md": "---\ntitle: All kits\n---\n![x](x.jpg)\n" },
    { "index.md": "---\nheading: All kits\n---\nWelcome.\n" },
  )
  .map((more) => (files) => ({ ...files, ...more }));

/** Sites with one or two small changes; some of them can still be built. */
export const randomSites: fc.Arbitrary<SiteFiles> = fc
  .array(fc.oneof({ weight: 5, arbitrary: edited }, told, drawn, bytes, added), { minLength: 1, maxLength: 2 })
  .map((spoils) => spoils.reduce<SiteFiles>((files, spoil) => spoil(files), SOUND_SITE));
