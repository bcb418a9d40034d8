import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { stringify } from "yaml";
import type { PatternedKit } from "../../../src/core/pattern/patterned-kit.ts";
import { formatMessage } from "../../../src/input/files/format-message.ts";
import { copyFixture, fixtureFrontMatter, inFolder, messagesOf, readKit } from "./kit-folders.ts";

const svg = (path: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 40">\n<path d="${path}"/>\n</svg>`;

/** An L of 20 by 30: its foot goes to the right. */
const L = "M5 5h10v20h10v10h-20z";

/** A lit kit with a window in a project with a shelf of its own. */
function inKit<T>(
  insert: object,
  use: (folder: string, base: string) => T,
  files: Readonly<Record<string, string>> = {},
): T {
  return inFolder((base) => {
    mkdirSync(join(base, "content/motifs"), { recursive: true });
    writeFileSync(join(base, "content/motifs/hook.svg"), svg(L));
    const folder = copyFixture(base, "harbour-moon");
    const matter = fixtureFrontMatter("harbour-moon");
    const { motifs, card, ...window } = matter.insert;
    const changed = { ...matter, insert: { ...window, ...insert } };
    writeFileSync(join(folder, "index.md"), `---\n${stringify(changed)}---\nTold.\n`);
    for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
    return use(folder, base);
  });
}

const read = (insert: object, files?: Readonly<Record<string, string>>): PatternedKit => inKit(insert, readKit, files);

const told = (insert: object, files?: Readonly<Record<string, string>>): string[] =>
  inKit(insert, messagesOf, files).map((message) => formatMessage(message).replace(/^[^ ]*? {2}/, ""));

describe("a kit's motifs", () => {
  it("are none where it lists none, and all of the light shows", () => {
    const { kit, pattern, pictureNotes } = read({});
    expect(kit.motifs).toEqual([]);
    expect(pattern.window!.motifs).toEqual([]);
    expect(pictureNotes).toContain("insert.motifs: nothing covers the light; all of it shows in the window.");
  });

  it("come from the shelf by name and from files beside index.md, in the order of the list", () => {
    const motifs = [
      { file: "hull.svg", at: [30, "50 %"], width: "1 in", spacer: 2, card: { colour: "rgb(255 0 51)", name: "rose" } },
      { motif: "hook", covers: "light", card: "night", name: "Boat hook" },
      { motif: "hook" },
    ];
    const { kit, pattern } = read({ motifs, card: "teal" }, { "hull.svg": svg("M0 0h20v10h-20z") });
    expect(kit.motifs.map(({ area, ...rest }) => rest)).toEqual([
      {
        name: "hull",
        at: [{ mm: 30 }, { share: 0.5 }],
        width: { mm: 25.4 },
        height: undefined,
        spacers: 2,
        card: { name: "rose", colour: "#ff0033" },
        coversLight: false,
      },
      {
        name: "Boat hook",
        at: undefined,
        width: undefined,
        height: undefined,
        spacers: 0,
        card: { name: "night-blue", colour: "#1f2a3f" },
        coversLight: true,
      },
      {
        name: "hook",
        at: undefined,
        width: undefined,
        height: undefined,
        spacers: 1,
        card: undefined,
        coversLight: false,
      },
    ]);
    expect(pattern.window!.wish.card).toEqual({ name: "teal", colour: "#3f6b70" });
    const { motifs: set, frame } = pattern.window!;
    expect(set.map(({ id, kind }) => [id, kind])).toEqual([
      ["motif-hull", "motif"],
      ["motif-boat-hook", "largest-motif"],
      ["motif-hook", "motif"],
    ]);
    const left = Math.min(...frame.outlines.flat().map(([x]) => x));
    // Its middle is 30 mm from the frame's left edge and it is 25.4 mm wide.
    expect(set[0]!.seat[0]).toBeCloseTo(left + 30 - 12.7, 6);
  });

  // By hand: the triangle has the corners of its box of 20 by 30 but the upper right one.
  it.each([
    [{}, ["0 0", "0 30", "20 30"]],
    [{ mirror: true }, ["0 30", "20 0", "20 30"]],
    [{ turn: 180 }, ["0 0", "20 0", "20 30"]],
    [{ turn: 90 }, ["0 0", "0 20", "30 0"]],
    [{ turn: 90, mirror: true }, ["0 0", "0 20", "30 20"]],
  ])("are mirrored, and then turned clockwise: %o", (change, corners) => {
    const motif = { file: "sail.svg", at: ["50 %", "50 %"], width: 20, ...change };
    const points = read({ motifs: [motif] }, { "sail.svg": svg("M5 5l20 30h-20z") }).kit.motifs[0]!.area.flat();
    const [left, top] = [0, 1].map((axis) => Math.min(...points.map((point) => point[axis]!)));
    expect(points.map(([x, y]) => `${Math.round(x - left!)} ${Math.round(y - top!)}`).sort()).toEqual(corners);
  });

  // Pages carry every point of a motif. Its box of 20 by 30 is about 36 wide turned, so that six digits are four after the point.
  it.each([{}, { mirror: true, turn: 33 }, { height: 71 }])(
    "have few digits, also turned or stretched: %o",
    (change) => {
      const motif = { file: "sail.svg", at: ["50 %", "50 %"], width: 21, ...change };
      const points = read({ motifs: [motif] }, { "sail.svg": svg("M5 5l20 30h-20z") }).kit.motifs[0]!.area.flat();
      for (const figure of points.flat()) expect(String(Math.abs(figure))).toMatch(/^\d+(\.\d{1,4})?$/);
    },
  );

  it.each([
    [
      "no source",
      { at: [10, 10] },
      "insert.motifs[1]: no source: nothing says what to draw; allowed: one of motif, file, text, ",
    ],
    [
      "two sources",
      { motif: "hook", file: "hull.svg" },
      "insert.motifs[1]: motif, file in one; allowed: one of motif, file, text, ",
    ],
    [
      "a name that is near",
      { motif: "hok" },
      'insert.motifs[1].motif: given "hok"; allowed: a motif on the shelf: hook; do: write hook',
    ],
    ["a file that is not there", { file: "no.svg" }, "insert.motifs[1].file: "],
    ["a file outside", { file: "../../content/motifs/hook.svg" }, "insert.motifs[1].file: "],
    [
      "a colour that is none",
      { motif: "hook", card: { colour: "moonish", name: "x" } },
      'insert.motifs[1].card.colour: given "moonish"',
    ],
    ["a card that is none", { motif: "hook", card: "moonish" }, "insert.motifs[1].card: "],
    [
      "a place beside the window",
      { motif: "hook", at: [400, 400] },
      "insert.motifs[1].at: the motif “hook” lies beside the window",
    ],
    ["a size that no knife cuts", { motif: "hook", width: 1 }, "insert.motifs[1].width: "],
    ["a key that is none", { motif: "hook", spacr: 1 }, "insert.motifs[1].spacr: "],
  ])("are told of with their field: %s", (_, motif, message) => {
    const messages = told({ motifs: [motif] }, { "hull.svg": svg(L) });
    expect(messages).toHaveLength(1);
    expect(messages[0]).toContain(message);
  });

  it("are told of where a fifth has no place", () => {
    const [message] = told({ motifs: Array.from({ length: 5 }, () => ({ motif: "hook" })) });
    expect(message).toMatch(/^insert\.motifs\[5\]\.at: not given; allowed: at most 4 motifs/);
  });

  it("are told of where they cover the light of a kit that has none", () => {
    const messages = inKit({ motifs: [{ motif: "hook", covers: "light" }] }, (folder, base) => {
      const matter = fixtureFrontMatter("harbour-moon");
      const { light, ...dark } = matter;
      dark.insert = { outline: "rim", motifs: [{ motif: "hook", covers: "light" }] };
      writeFileSync(join(folder, "index.md"), `---\n${stringify(dark)}---\nTold.\n`);
      return messagesOf(folder, base).map(formatMessage);
    });
    expect(messages).toEqual([
      expect.stringContaining("insert.motifs[1].covers: covers the light of a kit that states none"),
    ]);
  });

  it("may be in pieces where each is glued to something", () => {
    const two = { "two.svg": svg("M0 10h10v10h-10zM30 10h10v10h-10z") };
    const across = { file: "two.svg", at: ["50 %", "50 %"] };
    // The hole is 90 mm wide, the frame 136: pieces at both ends of 134 mm lie on the frame.
    expect(read({ motifs: [{ ...across, width: 130 }] }, two).pattern.window!.motifs[0]!.outlines).toHaveLength(2);
    const [message] = told({ motifs: [{ ...across, width: 40 }] }, two);
    expect(message).toMatch(
      /^insert\.motifs\[1\]: 2 pieces that touch nothing of the motif “two”; allowed: .*; do: join/,
    );
  });

  it("are none of the files that nothing names", () => {
    const strays = inKit({ motifs: [{ file: "hull.svg" }] }, (folder, base) => messagesOf(folder, base), {
      "hull.svg": svg(L),
    });
    expect(strays).toEqual([]);
  });

  it("are told of in notes where they may disappoint, with their field", () => {
    const motifs = [
      { motif: "hook", at: [70, 70], width: 30 },
      { motif: "hook", at: [75, 70], width: 30 },
      { motif: "hook", at: [2, 70], width: 30 },
    ];
    const { pictureNotes } = read({ motifs });
    expect(pictureNotes).toContain(
      "insert.motifs[2]: the motifs “hook” and “hook” overlap on the same number of spacers. Move one, or give it another number.",
    );
    expect(pictureNotes.join("\n")).toMatch(
      /insert\.motifs\[3\]: the motif “hook” reaches 1\d(\.\d)?\smm beyond the frame\./,
    );
    expect(pictureNotes.join("\n")).toMatch(/insert\.motifs: \d+% of the light’s silhouette shows beside the motifs/);
  });
});
