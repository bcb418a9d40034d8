import { describe, expect, it } from "vitest";
import type { PatternedKit } from "../../../src/core/pattern/patterned-kit.ts";
import { formatMessage } from "../../../src/input/files/format-message.ts";
import { KitError } from "../../../src/input/files/message.ts";
import { fixtureFrontMatter, readMadeKit } from "./kit-folders.ts";

const SQUARE =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path id="gull" d="M3 3h3v3h-3z"/><path id="sky" d="M0 0h1v1h-1z"/></svg>';

function readWith(change: object): PatternedKit {
  const demo = fixtureFrontMatter("little-gull");
  return readMadeKit({ ...demo, picture: { ...demo.picture, file: "picture.svg" }, ...change }, SQUARE);
}

function messageWith(change: object): string {
  try {
    readWith(change);
  } catch (error) {
    if (error instanceof KitError) return error.messages.map(formatMessage).join("\n");
    throw error;
  }
  return "";
}

const NEW = { version: "1.1", date: "2026-10-03", note: "Wider lantern." };
const OLD = { version: "1.0", date: "2026-03-14" };

describe("versions, licence and links", () => {
  it("are read as they are stated", () => {
    const licence = { name: "MIT", url: "https://host.example/licence" };
    const links = [{ label: "Film", url: "https://films.example.org/moon?part=1" }];
    const { kit } = readWith({ versions: [NEW, OLD], licence, links });
    expect(kit.versions).toEqual([NEW, { ...OLD, note: undefined }]);
    expect(kit.licence).toEqual(licence);
    expect(kit.links).toEqual([{ ...links[0], host: "films.example.org" }]);
  });

  it("may be left out", () => {
    const { kit } = readWith({ versions: undefined, licence: undefined, links: undefined });
    expect(kit).toMatchObject({ versions: [], licence: undefined, links: [] });
  });

  it("may have two versions on a day", () => {
    const twice = [NEW, { ...OLD, date: NEW.date }];
    expect(readWith({ versions: twice }).kit.versions).toHaveLength(2);
  });

  it.each<[string, object, RegExp]>([
    [
      "oldest first",
      { versions: [OLD, NEW] },
      /versions\[2\]\.date: 2026-10-03 below 2026-03-14; allowed: newest first/,
    ],
    [
      "a version twice",
      { versions: [NEW, { ...OLD, version: "1.1" }] },
      /versions\[2\]\.version: a second version "1\.1"/,
    ],
    ["a number", { versions: [{ ...NEW, version: 1.1 }] }, /versions\[1\]\.version: given 1\.1; allowed: .*in quotes/],
    ["spaces", { versions: [{ ...NEW, version: "1.1 beta" }] }, /versions\[1\]\.version: given "1\.1 beta"/],
    [
      "no such day",
      { versions: [{ ...NEW, date: "2026-02-30" }] },
      /versions\[1\]\.date: given "2026-02-30"; allowed: .*2026-10-03/,
    ],
    ["another order", { versions: [{ ...NEW, date: "03.10.2026" }] }, /versions\[1\]\.date: given "03\.10\.2026"/],
    ["no date", { versions: [{ version: "1.1" }] }, /versions\[1\]\.date: not given/],
    [
      "a link that runs",
      { links: [{ label: "Film", url: "javascript:alert(1)" }] },
      /links\[1\]\.url: given "javascript/,
    ],
    ["a link without words", { links: [{ label: " ", url: "https://host.example/" }] }, /links\[1\]\.label: given/],
    ["an unnamed licence", { licence: { url: "https://host.example/" } }, /licence\.name: not given/],
  ])("refuse %s, with place and remedy", (_, change, message) => {
    expect(messageWith(change)).toMatch(message);
    expect(messageWith(change)).toMatch(/index\.md:\d+:\d+ .*; do: /);
  });
});
