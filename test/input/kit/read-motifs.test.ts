import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { formatMessage } from "../../../src/input/files/format-message.ts";
import { readMotifs } from "../../../src/input/kit/read-motifs.ts";
import { inFolder } from "./kit-folders.ts";

const OPEN = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">';
const SQUARE = '<path d="M1 1h2v2h-2z"/>';
const TOUCHING = '<path d="M2 2h5v2h-5z"/>';
const APART = '<path d="M6 6h2v2h-2z"/>';

/** What a site with these motifs reads: names, and messages as they are told. */
function read(motifs: Readonly<Record<string, string>>): { names: string[]; messages: string[] } {
  return inFolder((base) => {
    mkdirSync(join(base, "content/motifs"), { recursive: true });
    for (const [name, text] of Object.entries(motifs)) writeFileSync(join(base, "content/motifs", name), text);
    const { made, messages } = readMotifs(base);
    return { names: made.map(({ name }) => name), messages: messages.map(formatMessage) };
  });
}

describe("readMotifs(base)", () => {
  it("reads every SVG of the folder by name, also one of shapes that touch", () => {
    const motifs = {
      "wave.svg": `${OPEN}${SQUARE}</svg>`,
      "buoy.svg": `${OPEN}${SQUARE}${TOUCHING}</svg>`,
      "read.me": "",
    };
    expect(read(motifs)).toEqual({ names: ["buoy", "wave"], messages: [] });
  });

  it("reads nothing where there is no folder", () => {
    expect(inFolder(readMotifs)).toEqual({ made: [], messages: [] });
  });

  it.each([
    ["two pieces", `${OPEN}\n${SQUARE}\n${APART}</svg>`, 3, "2 pieces", "join the pieces"],
    ["a shape between its neighbours", `${OPEN}\n${APART}\n${SQUARE}\n${TOUCHING}</svg>`, 2, "2 pieces", "join"],
    ["two pieces of one path", `${OPEN}\n<path d="M1 1h2v2h-2zM6 6h2v2h-2z"/></svg>`, 2, "2 pieces", "join"],
    ["no shape", `${OPEN}</svg>`, 1, "no filled shape", "draw a filled shape"],
    ["nothing painted", `${OPEN}<path d="M1 1h2v2h-2z" fill="none"/></svg>`, 1, "no filled", "draw"],
    ["a broken file", `${OPEN}\n<path d="M1 1h2v"/></svg>`, 2, "has the end", "drawing program"],
    ["an empty file", "", 1, "not an SVG picture", "drawing program"],
  ])("tells of %s with its place, and reads the others", (_, text, line, given, remedy) => {
    const { names, messages } = read({ "spoilt.svg": text, "wave.svg": `${OPEN}${SQUARE}</svg>` });
    expect(names).toEqual(["wave"]);
    expect(messages).toHaveLength(1);
    expect(messages[0]).toMatch(new RegExp(`^content/motifs/spoilt\\.svg:${line} {2}motif: .*${given}.*; allowed: `));
    expect(messages[0]).toMatch(new RegExp(`; do: .*${remedy}`));
  });
});
