import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { drawText } from "../../../src/input/kit/draw-text.ts";
import { type DrawnParts, drawingKey, notedParts, partsAsDrawn } from "../../../src/input/kit/drawn-parts.ts";
import { partsOfFiles } from "../../../src/input/kit/parts-of-files.ts";
import { readKit } from "../../../src/input/kit/read-kit.ts";
import { readMotifs } from "../../../src/input/kit/read-motifs.ts";
import { kitText, stateKit } from "../../../src/input/kit/state-kit.ts";
import { FIXTURE_KITS, FIXTURES } from "./kit-folders.ts";

const lent = { shelf: readMotifs(FIXTURES).made, fonts: [] };

const folderOf = (slug: string): string => join(FIXTURES, "content/kits", slug);
const textOf = (slug: string): string => readFileSync(join(folderOf(slug), "index.md"), "utf8");
const stated = (slug: string, text: string) => kitText(slug, `content/kits/${slug}/index.md`, text);

/** What the files of a kit draw for a text, sent as JSON. */
function sent(slug: string, text: string): DrawnParts {
  const parts = notedParts(partsOfFiles({ base: FIXTURES, folder: folderOf(slug) }, lent));
  stateKit(stated(slug, text), parts);
  return JSON.parse(JSON.stringify(parts.drawn()));
}

describe("stateKit(text, partsAsDrawn(drawn))", () => {
  it.each(FIXTURE_KITS)("gives %s as the reader of its folder gives it", (slug) => {
    const text = textOf(slug);
    const { kit } = stateKit(stated(slug, text), partsAsDrawn(sent(slug, text)));
    expect(kit).toEqual(readKit(folderOf(slug), FIXTURES, lent.shelf).kit);
  });

  it("takes what an older text drew where nothing that is drawn differs", () => {
    const text = textOf("harbour-moon");
    const deeper = text.replace(/lines: \[10/, "lines: [9");
    expect(deeper).not.toBe(text);
    const { kit } = stateKit(stated("harbour-moon", deeper), partsAsDrawn(sent("harbour-moon", text)));
    expect(kit.gaugeLines[0]).toBe(9);
    expect(kit).toEqual(stateKit(stated("harbour-moon", deeper), partsAsDrawn(sent("harbour-moon", deeper))).kit);
  });
});

describe("drawText(slug, text, folder, lent)", () => {
  const draw = (text: string) =>
    drawText("harbour-moon", text, { base: FIXTURES, folder: folderOf("harbour-moon") }, lent);

  it("draws a text that states no kit for another reason", () => {
    const text = textOf("harbour-moon").replace("outline: rim", "outline: brim");
    expect(() =>
      stateKit(stated("harbour-moon", text), partsAsDrawn(sent("harbour-moon", textOf("harbour-moon")))),
    ).toThrow(/brim/);
    expect(draw(text)).toMatchObject({ drawn: sent("harbour-moon", textOf("harbour-moon")) });
  });

  it.each([
    ["motif: lantern", "motif: no-such-motif", "insert.motifs[1].motif"],
    ["file: moon.svg", "file: no-such-moon.svg", "picture.file"],
    ["height: 130", "height: tall", "fit.height"],
  ])("tells why nothing is drawn where %s is %s", (was, is, field) => {
    expect(draw(textOf("harbour-moon").replace(was, is))).toMatchObject({ messages: [{ field }] });
  });
});

describe("drawingKey(text)", () => {
  const key = (change: readonly [string | RegExp, string]): string => {
    const text = textOf("harbour-moon");
    const changed = text.replace(...change);
    expect(changed).not.toBe(text);
    return drawingKey(stated("harbour-moon", changed));
  };
  const usual = drawingKey(stated("harbour-moon", textOf("harbour-moon")));

  it.each([
    ["a depth", [/lines: \[10/, "lines: [9"]],
    ["the height", [/height: 130/, "height: 120"]],
    ["the place of a motif", ["{ motif: gull }", "{ motif: gull, at: [20, 30] }"]],
    ["the title", [/title: .*/, "title: Another"]],
  ] as const)("does not differ with %s", (_, change) => {
    expect(key(change)).toBe(usual);
  });

  it.each([
    ["the file of the picture", [/file: [\w-]+\.svg/, "file: other.svg"]],
    ["the motif", [/motif: \w+/, "motif: other"]],
    ["which level is the background", [/, background: true/, ""]],
  ] as const)("differs with %s", (_, change) => {
    expect(key(change)).not.toBe(usual);
  });

  it("differs with the height where a photograph is traced to it", () => {
    const traced = (height: string): string => {
      const text = textOf("harbour-moon").replace(/file: [\w-]+\.svg/, "file: moon.png");
      return drawingKey(stated("harbour-moon", text.replace("height: 130", `height: ${height}`)));
    };
    expect(traced("120")).not.toBe(traced("130"));
  });
});
