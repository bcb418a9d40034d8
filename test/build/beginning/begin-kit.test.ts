import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { beginKit } from "../../../src/build/beginning/begin-kit.ts";
import { BuildError } from "../../../src/build/errors/build-error.ts";
import { patternKit } from "../../../src/build/library/pattern-kit.ts";
import { type Answers, OUTLINES, type PictureAnswer, USUAL_BOOK } from "../../../src/core/beginning/answers.ts";
import { KitError } from "../../../src/input/files/message.ts";
import { readKit } from "../../../src/input/kit/read-kit.ts";

let base = "";

beforeEach(() => {
  base = mkdtempSync(join(tmpdir(), "leaflight-begin-"));
});

afterEach(() => rmSync(base, { recursive: true, force: true }));

function answers(picture: PictureAnswer, more: Partial<Answers> = {}): Answers {
  return { slug: "new", title: "New", picture, book: USUAL_BOOK, light: undefined, units: "mm", draft: false, ...more };
}

const HEART: PictureAnswer = { from: "outline", name: "heart" };
const NARROW = { leafHeight: 110, leafWidth: 70, blockThickness: 6, leaves: 40 };
const LARGE = { leafHeight: 297, leafWidth: 210, blockThickness: 45, leaves: 420 };

describe("beginKit(base, answers)", () => {
  it.each<[string, Answers]>([
    ["a word", answers({ from: "word", text: "Ahoy" })],
    ["two lines in a narrow book", answers({ from: "word", text: "To\\nsea" }, { book: NARROW })],
    ["an icon with a light", answers({ from: "icon", name: "sailboat" }, { light: { diameter: 22, height: 24 } })],
    ["an outline in inches", answers(HEART, { units: "in" })],
    ["an outline in a large book", answers(HEART, { book: LARGE, draft: true })],
    ["an outline in a thin booklet", answers(HEART, { book: NARROW })],
    ...OUTLINES.map((name): [string, Answers] => [name, answers({ from: "outline", name })]),
  ])("writes a folder that can be computed as it stands: %s", (_, asked) => {
    const { kit, write } = beginKit(base, asked);
    expect(existsSync(join(base, "content"))).toBe(false);
    write();
    const folder = join(base, "content/kits/new");
    expect(patternKit(readKit(folder, base, [])).pattern).toEqual(kit.pattern);
    expect(readFileSync(join(folder, "index.md"), "utf8")).toMatch(/^---\n# yaml-language-server/);
  });

  it("leaves a light out that has no room, and says so", () => {
    const { kit, lit } = beginKit(base, answers(HEART, { book: NARROW, light: { diameter: 60, height: 80 } }));
    expect(lit).toBe(false);
    expect(kit.kit.light).toBeUndefined();
  });

  it("takes a drawing with its levels", () => {
    const file = join(base, "boat.svg");
    writeFileSync(
      file,
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path fill="red" d="M1 5h7v3h-7z"/><path fill="#00f" d="M4 1h3v4h-3z"/></svg>',
    );
    const { kit, write } = beginKit(base, answers({ from: "file", path: file }));
    write();
    expect(kit.kit.levels).toHaveLength(3);
    expect(readdirSync(join(base, "content/kits/new")).toSorted()).toEqual(["index.md", "picture.svg"]);
  });

  it("tells of a drawing by the name that its maker knows, and writes nothing", () => {
    const file = join(base, "notes.svg");
    writeFileSync(file, '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path d="M1 1h5"></svg>');
    let told: unknown;
    try {
      beginKit(base, answers({ from: "file", path: file }));
    } catch (error) {
      told = error;
    }
    expect(told).toBeInstanceOf(KitError);
    expect((told as KitError).messages[0]!.file).toContain("notes.svg");
    expect(existsSync(join(base, "content"))).toBe(false);
  });

  it("leaves a folder alone that is there already", () => {
    mkdirSync(join(base, "content/kits/new"), { recursive: true });
    expect(() => beginKit(base, answers(HEART))).toThrow(BuildError);
    expect(readdirSync(join(base, "content/kits/new"))).toEqual([]);
  });
});
