import { mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { formatMessage } from "../../../src/input/files/format-message.ts";
import type { KitMessage } from "../../../src/input/files/message.ts";
import { copyFixture, fixtureFolder, fixtureText, inFolder, messagesOf, readKit } from "./kit-folders.ts";

/** A kit's light and window, which have limits of their own. */
const LIGHT_AND_WINDOW = /^(light|insert):.*\n/gm;
/** Offset of what follows the first `---`. */
const START = 4;
const MOON = "harbour-moon";
const GULL = "little-gull";

/** What the one message about a broken kit says; texts that it must hold. `at` is where it points to: the text that begins there, or an offset. */
interface Want {
  readonly file?: string;
  readonly at: string | number;
  readonly field: string;
  readonly given: string | RegExp;
  readonly allowed: string | RegExp;
  readonly remedy: string | RegExp;
}

type Replacements = readonly (readonly [find: string | RegExp, put: string])[];

/** A copy of a fixture kit with a few changes. */
interface Spoiled {
  readonly kit: string;
  /** Replacements in index.md; each must change it. */
  readonly text?: Replacements;
  /** Replacements in the picture. */
  readonly svg?: Replacements;
  readonly files?: (folder: string) => void;
}

interface Broken extends Spoiled {
  readonly name: string;
  readonly want: Want;
}

const BROKEN: readonly Broken[] = [
  {
    name: "no front matter",
    kit: MOON,
    text: [[/^---[\s\S]*?\n---\n/, ""]],
    want: {
      at: "",
      field: "front matter",
      given: "no front matter",
      allowed: "YAML",
      remedy: "start the file with ---",
    },
  },
  {
    name: "front matter that does not end",
    kit: MOON,
    text: [["\n---\nI drew", "\nI drew"]],
    want: { at: "", field: "front matter", given: "no front matter", allowed: "YAML", remedy: "---" },
  },
  {
    name: "the same key twice",
    kit: MOON,
    text: [["  leaves: 204\n", "  leaves: 204\n  leaves: 205\n"]],
    want: {
      at: "leaves: 205",
      field: "front matter",
      given: 'second key "leaves"',
      allowed: "well-formed YAML",
      remedy: "correct",
    },
  },
  {
    name: "an alias that leads nowhere",
    kit: MOON,
    text: [["title: Harbour Moon", "title: *moon"]],
    want: { at: "*moon", field: "front matter", given: "alias", allowed: "well-formed YAML", remedy: "correct" },
  },
  {
    name: "a misspelt key that is needed, told once",
    kit: MOON,
    text: [["leafHeight", "leafHight"]],
    want: {
      at: "leafHight",
      field: "book.leafHight",
      given: 'unknown key "leafHight"',
      allowed: /leafHeight.*leafWidth.*blockThickness/,
      remedy: 'write "leafHeight"',
    },
  },
  {
    name: "a misspelt key that could be left out",
    kit: MOON,
    text: [["  head:", "  heda:"]],
    want: { at: "heda", field: "fit.heda", given: '"heda"', allowed: "head", remedy: 'write "head"' },
  },
  {
    name: "a misspelt key in a list",
    kit: MOON,
    text: [["rim, line: 2", "rim, lines: 2"]],
    want: {
      at: "lines: 2",
      field: "levels[1].lines",
      given: '"lines"',
      allowed: "name, depth, line",
      remedy: 'write "line"',
    },
  },
  {
    name: "a key that is like none",
    kit: MOON,
    text: [["title: Harbour Moon\n", "title: Harbour Moon\npublisher: me\n"]],
    want: { at: "publisher", field: "publisher", given: '"publisher"', allowed: "title", remedy: "remove it" },
  },
  {
    name: "a missing title",
    kit: MOON,
    text: [[/title: .*\n/, ""]],
    want: { at: START, field: "title", given: "not given", allowed: "name", remedy: "add title" },
  },
  {
    name: "a missing measurement of the book",
    kit: MOON,
    text: [["  leafWidth: 140\n", ""]],
    want: {
      at: "book:",
      field: "book.leafWidth",
      given: "not given",
      allowed: "30 to 500 mm",
      remedy: "add leafWidth",
    },
  },
  {
    name: "a missing height",
    kit: MOON,
    text: [["  height: 130\n", ""]],
    want: { at: "fit:", field: "fit.height", given: "not given", allowed: "solve", remedy: "add height" },
  },
  {
    name: "a level without a name",
    kit: MOON,
    text: [["name: rim, ", ""]],
    want: { at: "{ line: 2", field: "levels[1].name", given: "not given", allowed: "name", remedy: "add name" },
  },
  {
    name: "another unit",
    kit: MOON,
    text: [["leafHeight: 216", 'leafHeight: "612 pt"']],
    want: {
      at: "leafHeight",
      field: "book.leafHeight",
      given: /"612 pt".*unit "pt"/,
      allowed: /40 to 600 mm.*"1 1\/2 in"/,
      remedy: "correct",
    },
  },
  {
    name: "a length as text without a unit",
    kit: MOON,
    text: [["leafHeight: 216", 'leafHeight: "216"']],
    want: {
      at: "leafHeight",
      field: "book.leafHeight",
      given: /"216".*no unit/,
      allowed: '"12 mm"',
      remedy: "correct",
    },
  },
  {
    name: "a height as text without a unit",
    kit: MOON,
    text: [["height: 130", 'height: "130"']],
    want: { at: 'height: "130"', field: "fit.height", given: /"130".*no unit/, allowed: "solve", remedy: "correct" },
  },
  {
    name: "a length out of range",
    kit: MOON,
    text: [
      ["leafHeight: 216", 'leafHeight: "2 1/2 in"'],
      ["height: 130", "height: 900"],
    ],
    want: { at: "height: 900", field: "fit.height", given: "900 mm", allowed: "solve", remedy: "correct" },
  },
  {
    name: "no number at all",
    kit: MOON,
    text: [["leafHeight: 216", "leafHeight: .nan"]],
    want: { at: "leafHeight", field: "book.leafHeight", given: /nan/i, allowed: "40 to 600 mm", remedy: "correct" },
  },
  {
    name: "half a leaf",
    kit: MOON,
    text: [["leaves: 204", "leaves: 203.5"]],
    want: { at: "leaves", field: "book.leaves", given: "203.5", allowed: "whole number, 4 to 3000", remedy: "correct" },
  },
  {
    name: "a word that is none of the choices",
    kit: MOON,
    text: [["direction: ltr", "direction: left"]],
    want: { at: "direction", field: "book.direction", given: '"left"', allowed: "ltr, rtl", remedy: "correct" },
  },
  {
    name: "two quantities to solve",
    kit: MOON,
    text: [["height: 130", "height: solve"]],
    want: {
      at: "opening",
      field: "fit.opening",
      given: "height and opening",
      allowed: "one of",
      remedy: "state opening",
    },
  },
  {
    name: "no opening while the height is to be solved",
    kit: MOON,
    text: [
      ["height: 130", "height: solve"],
      ["  opening: solve\n", ""],
    ],
    want: {
      at: "fit:",
      field: "fit.opening",
      given: 'height is "solve"',
      allowed: "degrees",
      remedy: "state the opening",
    },
  },
  {
    name: "an opening beyond flat seen from the front",
    kit: MOON,
    text: [
      ["height: 130", "height: solve"],
      ["opening: solve", "opening: 200"],
    ],
    want: { at: "opening", field: "fit.opening", given: "200", allowed: "5 to 180", remedy: "view: along" },
  },
  {
    name: "a picture that is not there",
    kit: MOON,
    text: [["file: moon.svg", "file: mon.svg"]],
    want: {
      at: "file",
      field: "picture.file",
      given: '"mon.svg" is not there',
      allowed: "moon.svg",
      remedy: "correct the name",
    },
  },
  {
    name: "a picture above the kit folder",
    kit: MOON,
    text: [["file: moon.svg", "file: ../moon.svg"]],
    files: (folder) => writeFileSync(join(folder, "../moon.svg"), readFileSync(join(folder, "moon.svg"))),
    want: {
      at: "file",
      field: "picture.file",
      given: "outside its folder",
      allowed: "beside index.md",
      remedy: "copy",
    },
  },
  {
    name: "a picture in a folder whose name begins like the kit's",
    kit: MOON,
    text: [["file: moon.svg", `file: ../${MOON}-two/moon.svg`]],
    files: (folder) => {
      mkdirSync(`${folder}-two`);
      writeFileSync(join(`${folder}-two`, "moon.svg"), readFileSync(join(folder, "moon.svg")));
    },
    want: {
      at: "file",
      field: "picture.file",
      given: "outside its folder",
      allowed: "beside index.md",
      remedy: "copy",
    },
  },
  {
    name: "a picture at an absolute place",
    kit: MOON,
    text: [["file: moon.svg", `file: ${join(import.meta.dirname, "picture.svg")}`]],
    want: {
      at: "file",
      field: "picture.file",
      given: "outside its folder",
      allowed: "beside index.md",
      remedy: "copy",
    },
  },
  {
    name: "a link to a picture outside",
    kit: MOON,
    files: (folder) => {
      writeFileSync(join(folder, "../outside.svg"), readFileSync(join(folder, "moon.svg")));
      rmSync(join(folder, "moon.svg"));
      symlinkSync("../outside.svg", join(folder, "moon.svg"));
    },
    want: {
      at: "file",
      field: "picture.file",
      given: '"moon.svg": a link that leads out of kits/harbour-moon',
      allowed: "what is in kits/harbour-moon itself",
      remedy: "in place of the link",
    },
  },
  {
    name: "a folder in the picture's place",
    kit: MOON,
    files: (folder) => {
      rmSync(join(folder, "moon.svg"));
      mkdirSync(join(folder, "moon.svg"));
    },
    want: { at: "file", field: "picture.file", given: '"moon.svg": a folder', allowed: "SVG", remedy: "put the file" },
  },
  {
    name: "words in the picture's place",
    kit: MOON,
    svg: [[/^[\s\S]*$/, "The moon is round.\n"]],
    want: { file: "moon.svg", at: "", field: "picture", given: "not an SVG picture", allowed: /./, remedy: /./ },
  },
  {
    name: "a picture that is not well-formed",
    kit: MOON,
    svg: [['cx="137"', "cx=137"]],
    want: {
      file: "moon.svg",
      at: '<circle id="well"',
      field: "picture",
      given: "not well-formed",
      allowed: /./,
      remedy: /./,
    },
  },
  {
    name: "shapes that are listed under no level",
    kit: MOON,
    text: [[/ {4}well: .*\n/, ""]],
    want: {
      file: "moon.svg",
      at: '<circle id="well"',
      field: "picture.levels",
      given: "#well",
      allowed: "belongs to a level",
      remedy: "picture.levels",
    },
  },
  {
    name: "a shape of no level and no name",
    kit: MOON,
    svg: [["</svg>", '\n<rect width="9" height="9"/>\n</svg>']],
    want: {
      file: "moon.svg",
      at: "<rect",
      field: "picture.levels",
      given: "<rect> without an id",
      allowed: "belongs to a level",
      remedy: "no fill",
    },
  },
  {
    name: "a level whose list is missing",
    kit: MOON,
    text: [
      ["    well: [", "    rim2: ["],
      ["line: 5 }\n", "line: 5 }\n  - { name: rim2, depth: 50 }\n"],
    ],
    want: {
      at: "{ name: well",
      field: "levels[3]",
      given: '"well"',
      allowed: "at least one",
      remedy: "picture.levels.well",
    },
  },
  {
    name: "a level whose shapes are not painted",
    kit: MOON,
    svg: [['id="well"', 'id="well" display="none"']],
    want: { at: "well: [", field: "picture.levels.well", given: '"well"', allowed: "at least one", remedy: "visible" },
  },
  {
    name: "an empty list of shapes",
    kit: MOON,
    text: [['well: ["#well"]', "well: []"]],
    want: { at: "well: []", field: "picture.levels.well", given: "[]", allowed: "#", remedy: "correct" },
  },
  {
    name: "an id that the picture does not have",
    kit: MOON,
    text: [['"#well"', '"#wel"']],
    want: {
      at: '"#wel"',
      field: "picture.levels.well[1]",
      given: '"#wel"',
      allowed: /#well.*#rim|#rim.*#well/,
      remedy: 'did you mean "#well"?',
    },
  },
  {
    name: "a name that nothing in the picture has",
    kit: MOON,
    text: [['"#well"', '"deep water"']],
    want: {
      at: '"deep water"',
      field: "picture.levels.well[1]",
      given: '"deep water"',
      allowed: /"#rim" \(\d+%\).*fill: "#/,
      remedy: "correct",
    },
  },
  {
    name: "an id under two levels",
    kit: MOON,
    text: [['well: ["#well"]', 'well: ["#well", "#rim"]']],
    want: {
      at: '"#rim"]\nlevels',
      field: "picture.levels.well[2]",
      given: '"#rim" a second time',
      allowed: "one level",
      remedy: "remove",
    },
  },
  {
    name: "shapes for a level that is not there",
    kit: MOON,
    text: [["    well: [", "    welt: ["]],
    want: {
      at: "welt",
      field: "picture.levels.welt",
      given: '"welt"',
      allowed: "rim, wall, well",
      remedy: 'did you mean "well"?',
    },
  },
  {
    name: "two levels at one depth",
    kit: GULL,
    text: [["depth: 24", "depth: 12"]],
    want: {
      at: "{ name: sky",
      field: "levels[2]",
      given: /"sky" at 12 mm after "gull" at 12 mm/,
      allowed: "increase",
      remedy: "in order",
    },
  },
  {
    name: "levels from back to front",
    kit: MOON,
    text: [["wall, line: 3", "wall, line: 1"]],
    want: {
      at: "{ name: wall",
      field: "levels[2]",
      given: /10 mm after "rim" at 18 mm/,
      allowed: "increase",
      remedy: "in order",
    },
  },
  {
    name: "gauge lines out of order",
    kit: MOON,
    text: [["26, 34", "34, 26"]],
    want: { at: "26, 42", field: "gauge.lines[4]", given: "26 mm after 34 mm", allowed: "further", remedy: "in order" },
  },
  {
    name: "a line beyond the gauge",
    kit: MOON,
    text: [["line: 5", "line: 6"]],
    want: { at: "line: 6", field: "levels[3].line", given: "6", allowed: "1 to 5", remedy: "gauge.lines" },
  },
  {
    name: "line 0",
    kit: MOON,
    text: [["line: 5", "line: 0"]],
    want: { at: "line: 0", field: "levels[3].line", given: "0", allowed: "1 for the first", remedy: "correct" },
  },
  {
    name: "a line without a gauge",
    kit: MOON,
    text: [[/gauge: .*\n/, ""]],
    want: { at: "line: 2", field: "levels[1].line", given: "2", allowed: "there are none", remedy: "gauge.lines" },
  },
  {
    name: "both depth and line",
    kit: MOON,
    text: [["rim, line: 2", "rim, line: 2, depth: 18"]],
    want: { at: "{ name: rim", field: "levels[1]", given: "both", allowed: "one of them", remedy: "remove one" },
  },
  {
    name: "neither depth nor line",
    kit: MOON,
    text: [["rim, line: 2", "rim"]],
    want: {
      at: "{ name: rim",
      field: "levels[1]",
      given: "neither",
      allowed: "one of them",
      remedy: "add depth or line",
    },
  },
  {
    name: "no background",
    kit: MOON,
    text: [[", background: true", ""]],
    want: {
      at: "levels:\n  -",
      field: "levels",
      given: "0 levels",
      allowed: "exactly one",
      remedy: "add background: true",
    },
  },
  {
    name: "two backgrounds",
    kit: MOON,
    text: [["line: 5", "line: 5, background: true"]],
    want: { at: "levels:\n  -", field: "levels", given: "2 levels", allowed: "exactly one", remedy: "one level only" },
  },
  {
    name: "two levels of one name",
    kit: MOON,
    text: [["name: well, line: 5", "name: rim, line: 5"]],
    want: { at: "name: rim, line: 5", field: "levels[3].name", given: '"rim"', allowed: "its own", remedy: "rename" },
  },
  {
    name: "a single level",
    kit: GULL,
    text: [
      ["  - { name: gull, depth: 12 }\n", ""],
      ['    gull: ["#gull"]\n', ""],
    ],
    want: { at: "levels:\n  -", field: "levels", given: '"sky"', allowed: "2 to 9", remedy: "correct" },
  },
  {
    // 2 · 51.6 + 5 is 108.2 mm on a leaf 108 mm wide.
    name: "a single fold that reaches the gutter",
    kit: GULL,
    text: [["depth: 24", "depth: 51.6"]],
    want: {
      at: "{ name: sky",
      field: "levels[2]",
      given: /"sky" is 51.6 mm deep.*103.2 mm/,
      allowed: /108 mm.*5 mm/,
      remedy: "51.5 mm",
    },
  },
  {
    // Folded at 18 mm first, the second flap at 76.6 mm reaches 2 · 76.6 − 18 mm; with 5 mm clearance that is 140.2 mm.
    name: "a second fold that reaches the gutter",
    kit: MOON,
    text: [["42]", "76.6]"]],
    want: {
      at: "{ name: well",
      field: "levels[3]",
      given: /76.6 mm deep.*135.2 mm/,
      allowed: /140 mm.*5 mm/,
      remedy: "76.5 mm",
    },
  },
  {
    name: "a book too thin for its borders",
    kit: MOON,
    text: [["[12, 12]", "[102, 101]"]],
    want: {
      at: "borderLeaves",
      field: "fit.borderLeaves",
      given: "102",
      allowed: "204 leaves",
      remedy: "narrower borders",
    },
  },
  {
    name: "more picture leaves than the book has",
    kit: MOON,
    text: [["pictureLeaves: fill", "pictureLeaves: 181"]],
    want: {
      at: "pictureLeaves",
      field: "fit.pictureLeaves",
      given: /12 .*181 .*12 .*205/,
      allowed: "204 leaves",
      remedy: "at most 180",
    },
  },
  {
    name: "a picture that is higher than the leaf",
    kit: MOON,
    text: [["head: 40", "head: 90"]],
    want: {
      at: "height: 130",
      field: "fit.height",
      given: "head 90 mm + height 130 mm",
      allowed: "216 mm tall",
      remedy: "126 mm",
    },
  },
  {
    name: "a solved height that is more than the leaf's",
    kit: MOON,
    text: [
      ["height: 130", "height: solve"],
      ["opening: solve", "opening: 120"],
    ],
    want: {
      at: "head",
      field: "fit.head",
      given: /head 40 mm \+ height 215\.\d+ mm \(solved\)/,
      allowed: "216 mm tall",
      remedy: "176 mm",
    },
  },
  {
    name: "a picture wider than the book can show",
    kit: GULL,
    text: [
      ["leafHeight: 178", "leafHeight: 480"],
      ["height: 125", "height: 400"],
    ],
    want: {
      at: "height: 400",
      field: "fit.height",
      given: "400 mm tall",
      allowed: /180°.*at most/,
      remedy: /lower the height to/,
    },
  },
  {
    name: "a picture narrower than the closed book",
    kit: MOON,
    text: [["height: 130", "height: 15"]],
    want: {
      at: "height: 15",
      field: "fit.height",
      given: "15 mm wide",
      allowed: "21.2 mm thick",
      remedy: "at least 21.5 mm",
    },
  },
  {
    name: "too few leaves at the stated opening",
    kit: MOON,
    text: [
      ["pictureLeaves: fill", "pictureLeaves: solve"],
      ["opening: solve", "opening: 40"],
    ],
    want: {
      at: "pictureLeaves",
      field: "fit.pictureLeaves",
      given: /130 mm wide at 40°/,
      allowed: "180 leaves",
      remedy: /open the book to \d+°/,
    },
  },
  {
    // Page 499 is on the 250th numbered leaf, the 254th of the book.
    name: "a last page beyond the leaves",
    kit: MOON,
    text: [["lastPage: 399", "lastPage: 499"]],
    want: {
      at: "lastPage",
      field: "book.lastPage",
      given: "page 499",
      allowed: "254 leaves",
      remedy: "count the leaves",
    },
  },
  {
    name: "plates that the book has no room for",
    kit: MOON,
    text: [["plates: []", "plates: [{ afterPage: 100, leaves: 1 }]"]],
    want: { at: "lastPage", field: "book.lastPage", given: "page 399", allowed: "205 leaves", remedy: "plates" },
  },
  {
    name: "plates after the last page",
    kit: MOON,
    text: [["plates: []", "plates: [{ afterPage: 400, leaves: 4 }]"]],
    want: {
      at: "afterPage",
      field: "book.plates[1].afterPage",
      given: "400",
      allowed: "1 to 399",
      remedy: "end leaves",
    },
  },
  {
    name: "plates after the last page of a book whose last page follows from its leaves",
    kit: MOON,
    text: [
      ["plates: []", "plates: [{ afterPage: 398, leaves: 4 }]"],
      ["  lastPage: 399\n", ""],
    ],
    // 204 leaves less 4 before page 1 and 4 plates: 196 leaves, pages 1 to 392.
    want: { at: "afterPage", field: "book.plates[1].afterPage", given: "398", allowed: "1 to 392", remedy: /./ },
  },
  {
    name: "page 1 beyond the book",
    kit: MOON,
    text: [
      ["pageOneLeaf: 5", "pageOneLeaf: 300"],
      ["  lastPage: 399\n", ""],
    ],
    want: { at: "pageOneLeaf", field: "book.pageOneLeaf", given: "leaf 300", allowed: "204", remedy: "count again" },
  },
  {
    name: "a lost leaf that carries no picture",
    kit: MOON,
    text: [["leastTab: 3\n", "leastTab: 3\n  lostLeaves: [87, 193]\n"]],
    want: {
      at: "lostLeaves",
      field: "fit.lostLeaves",
      given: "leaf 193",
      allowed: "13 to 192",
      remedy: "take it off the list",
    },
  },
  {
    name: "an address that is no web page",
    kit: "evening-boat",
    text: [["url: https://github.com/phosphor-icons/core", 'url: "javascript:alert(1)"']],
    want: { at: 'url: "javascript', field: "credit.url", given: "javascript", allowed: "https://", remedy: "correct" },
  },
];

/** Copies the kit, spoils it, and gives the messages and the texts of its two files. */
function spoil(broken: Spoiled): { messages: readonly KitMessage[]; text: string; svg: string } {
  return inFolder((base) => {
    const folder = copyFixture(base, broken.kit);
    const picture = /file: (\S+)/.exec(fixtureText(broken.kit))![1]!;
    broken.files?.(folder);
    const text = change(join(folder, "index.md"), broken.text ?? []);
    const svg = broken.svg
      ? change(join(folder, picture), broken.svg)
      : readFileSync(join(fixtureFolder(broken.kit), picture), "utf8");
    return { messages: messagesOf(folder, base), text, svg };
  });
}

function change(path: string, replacements: Replacements): string {
  const changed = replacements.reduce(
    (text, [find, put]) => {
      const next = text.replace(find, put);
      if (next === text) throw new Error(`nothing to replace: ${find}`);
      return next;
    },
    readFileSync(path, "utf8").replace(LIGHT_AND_WINDOW, ""),
  );
  writeFileSync(path, changed);
  return changed;
}

describe("readKit(folder, base) of a broken kit", () => {
  it.each(BROKEN.map((broken) => [broken.name, broken] as const))("%s", (_, broken) => {
    const { messages, text, svg } = spoil(broken);
    const { want } = broken;
    expect(messages.map(formatMessage)).toHaveLength(1);
    const [message] = messages as [KitMessage];
    const file = want.file ?? "index.md";
    expect(message.file).toBe(`kits/${broken.kit}/${file}`);
    const place = typeof want.at === "number" ? want.at : (file === "index.md" ? text : svg).indexOf(want.at);
    expect(place).toBeGreaterThanOrEqual(0);
    const before = (file === "index.md" ? text : svg).slice(0, place).split("\n");
    expect(message.line).toBe(before.length);
    if (file === "index.md") expect(message.column).toBe(before.at(-1)!.length + 1);
    expect(message.field).toBe(want.field);
    expect(message.given).toMatch(want.given);
    expect(message.allowed).toMatch(want.allowed);
    expect(message.remedy).toMatch(want.remedy);
  });

  it("broken YAML: the first message is at the place where it breaks", () => {
    const broken: Spoiled = { kit: MOON, text: [["[10, 18, 26", "[10, 18,, 26"]] };
    const { messages, text } = spoil(broken);
    const before = text.slice(0, text.indexOf(", 26")).split("\n");
    expect(messages[0]).toMatchObject({
      line: before.length,
      column: before.at(-1)!.length + 1,
      field: "front matter",
    });
    expect(messages[0]!.allowed).toBe("well-formed YAML");
  });

  it("plates that leave no page of the book", () => {
    const text: Replacements = [
      ["plates: []", "plates: [{ afterPage: 1, leaves: 200 }]"],
      ["  lastPage: 399\n", ""],
    ];
    const { messages } = spoil({ kit: MOON, text });
    expect(messages).toHaveLength(1);
    expect(messages[0]!.field).toMatch(/^book\./);
  });

  it("several things wrong: one message each", () => {
    const text: Replacements = [
      ["leafHeight: 216", "leafHeight: 2"],
      ["leaves: 204", "leaves: 0"],
      ["units: mm", "unist: mm"],
    ];
    const { messages } = spoil({ kit: MOON, text });
    expect(messages.map((message) => message.field).sort()).toEqual(["book.leafHeight", "book.leaves", "unist"]);
  });

  it.each([
    ["a byte order mark before", (text: string) => `\uFEFF${text}`],
    ["lines that end with CR LF", (text: string) => text.replaceAll("\n", "\r\n")],
  ])("%s moves no line", (_, edit) => {
    inFolder((base) => {
      const folder = copyFixture(base, MOON);
      const text = fixtureText(MOON).replace("leafHeight: 216", "leafHeight: 2");
      writeFileSync(join(folder, "index.md"), edit(text));
      const line = text.slice(0, text.indexOf("leafHeight")).split("\n").length;
      expect(messagesOf(folder, base)).toMatchObject([{ field: "book.leafHeight", line, column: 3 }]);
    });
  });

  it.each([
    ["Harbour-Moon", 'folder "Harbour-Moon"'],
    ["harbour_moon", 'folder "harbour_moon"'],
    ["harbour--moon", 'folder "harbour--moon"'],
    ["-moon", 'folder "-moon"'],
    ["moon 2", 'folder "moon 2"'],
    ["mönd", 'folder "mönd"'],
  ])("a folder named %s cannot be an address", (slug, given) => {
    inFolder((base) => {
      const messages = messagesOf(copyFixture(base, MOON, slug), base);
      expect(messages).toMatchObject([{ file: `kits/${slug}/index.md`, line: undefined, field: "kit folder", given }]);
      expect(messages[0]!.allowed).toContain("small letters");
      expect(messages[0]!.remedy).toContain("rename");
    });
  });

  it("a folder without index.md", () => {
    inFolder((base) => {
      const folder = copyFixture(base, MOON);
      rmSync(join(folder, "index.md"));
      const want = {
        file: "kits/harbour-moon/index.md",
        line: undefined,
        field: "kit folder",
        given: "no index.md in the folder",
      };
      expect(messagesOf(folder, base)).toMatchObject([want]);
    });
  });

  it("several lists of shapes wrong: one message each", () => {
    const text: Replacements = [
      ['"#well"]', '"#wel", "#wall"]'],
      ['"#rim"', '"#rum"'],
    ];
    const { messages } = spoil({ kit: MOON, text });
    expect(messages.map((message) => message.field).sort()).toEqual([
      "picture.levels.rim[1]",
      "picture.levels.well[1]",
      "picture.levels.well[2]",
    ]);
  });

  it("several shapes of no level: one message each with its line, the first ten of many", () => {
    const rects = (count: number) => Array.from({ length: count }, () => '\n<rect width="9" height="9"/>').join("");
    const lines = (count: number) => {
      const svg: Replacements = [["</svg>", `${rects(count)}\n</svg>`]];
      return spoil({ kit: MOON, svg }).messages.map((message) => message.line);
    };
    const [first, ...more] = lines(3);
    expect(more).toEqual([first! + 1, first! + 2]);
    expect(lines(40)).toHaveLength(10);
  });

  it("a message is one line: place, field, what was given, what is allowed, what to do", () => {
    const { messages, text } = spoil({ kit: MOON, text: [["line: 5", "line: 6"]] });
    const line = text.slice(0, text.indexOf("line: 6")).split("\n").length;
    expect(formatMessage(messages[0]!)).toBe(
      `kits/harbour-moon/index.md:${line}:19  levels[3].line: given 6; allowed: 1 to 5, the lines of gauge.lines; do: correct the number or add the line to gauge.lines`,
    );
  });

  it("a level's name may hold a dot or be a number, and places are still right", () => {
    for (const name of ["we.ll", "7"]) {
      const text: Replacements = [
        ["name: well,", `name: "${name}",`],
        ["    well:", `    "${name}":`],
        ['"#well"', '"#nowhere"'],
      ];
      const { messages, text: changed } = spoil({ kit: MOON, text });
      expect(messages).toHaveLength(1);
      expect(messages[0]!.line).toBe(changed.slice(0, changed.indexOf('"#nowhere"')).split("\n").length);
    }
  });
});

describe("what a message says would do", () => {
  const reads = (kit: string, text: Replacements) =>
    inFolder((base) => {
      const folder = copyFixture(base, kit);
      change(join(folder, "index.md"), text);
      return readKit(folder, base).pattern;
    });

  it.each([
    ["single", GULL, "depth: 24", (depth: number) => `depth: ${depth}`, 51.5],
    ["stepped", MOON, "42]", (depth: number) => `${depth}]`, 76.5],
  ] as const)("%s folds: the greatest depth that is named passes, 0.2 mm more does not", (_, kit, find, put, most) => {
    const [message] = spoil({ kit, text: [[find, put(most + 3)]] }).messages as [KitMessage];
    const named = Number(/deepest fold possible is ([\d.]+) mm/.exec(message.remedy)![1]);
    expect(named).toBe(most);
    expect(reads(kit, [[find, put(named)]]).levels.at(-1)!.depth).toBe(most);
    expect(spoil({ kit, text: [[find, put(named + 0.2)]] }).messages).toHaveLength(1);
  });

  it("the height that is named for a tall picture fits, 0.2 mm more does not", () => {
    const [message] = spoil({ kit: MOON, text: [["head: 40", "head: 90"]] }).messages as [KitMessage];
    const named = Number(/at most ([\d.]+) mm/.exec(message.remedy)![1]);
    const at = (height: number): Replacements => [
      ["head: 40", "head: 90"],
      ["height: 130", `height: ${height}`],
    ];
    expect(reads(MOON, at(named)).fit.height).toBe(126);
    expect(spoil({ kit: MOON, text: at(named + 0.2) }).messages).toHaveLength(1);
  });

  it("the picture leaves that are named fit, one more does not", () => {
    const [message] = spoil({ kit: MOON, text: [["pictureLeaves: fill", "pictureLeaves: 190"]] }).messages as [
      KitMessage,
    ];
    const named = Number(/at most (\d+) picture leaves/.exec(message.remedy)![1]);
    expect(reads(MOON, [["pictureLeaves: fill", `pictureLeaves: ${named}`]]).fit.lastLeaf).toBe(192);
    expect(spoil({ kit: MOON, text: [["pictureLeaves: fill", `pictureLeaves: ${named + 1}`]] }).messages).toHaveLength(
      1,
    );
  });

  it("at least two picture leaves must remain when leaves are lost", () => {
    const lost = (count: number): Replacements => [
      ["leastTab: 3\n", `leastTab: 3\n  lostLeaves: [${Array.from({ length: count }, (_, i) => 13 + i).join(", ")}]\n`],
    ];
    const { messages } = spoil({ kit: MOON, text: lost(179) });
    expect(messages).toMatchObject([{ field: "fit.lostLeaves" }]);
    expect(reads(MOON, lost(178)).leaves.filter((leaf) => leaf.patternPage !== null)).toHaveLength(2);
  });
});
