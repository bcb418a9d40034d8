import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { newKit } from "../../../src/build/beginning/new-kit.ts";
import { sketchOf } from "../../../src/build/beginning/sketch-of.ts";
import { BuildError } from "../../../src/build/errors/build-error.ts";
import { USUAL_BOOK } from "../../../src/core/beginning/answers.ts";

let base: string;

beforeEach(() => {
  base = mkdtempSync(join(tmpdir(), "leaflight-sketch-"));
});

afterEach(() => rmSync(base, { recursive: true, force: true }));

describe("sketchOf(answer, base)", () => {
  it.each(["literata", "Literata"])("writes a word in the project's font %s", (font) => {
    const { picture, files } = sketchOf({ from: "word", text: "Ahoy", font }, base);
    expect(picture).toEqual({ text: "Ahoy", level: "picture", font: "literata" });
    expect(files).toEqual([]);
  });

  it("takes a font file along", () => {
    writeFileSync(join(base, "Script Bold.WOFF2"), "font");
    const { picture, files } = sketchOf({ from: "word", text: "Ahoy", font: "Script Bold.WOFF2" }, base);
    expect(picture).toMatchObject({ font: "font.woff2" });
    expect(files).toEqual([{ name: "font.woff2", bytes: Buffer.from("font") }]);
  });

  it.each(["nowhere.ttf", "picture.png", ""])("tells which fonts there are where %j is none", (font) => {
    writeFileSync(join(base, "picture.png"), "");
    const draw = (): unknown => sketchOf({ from: "word", text: "Ahoy", font }, base);
    expect(draw).toThrow(BuildError);
    expect(draw).toThrow(/literata, source-sans-3/);
  });
});

describe("newKit(answers, sketch, way)", () => {
  it("adds no ground to a drawing that has one", () => {
    const file = join(base, "frame.svg");
    const shapes = '<rect width="10" height="10" fill="white"/><rect width="4" height="4" fill="red"/>';
    writeFileSync(file, `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10">${shapes}</svg>`);
    const picture = { from: "file", path: file } as const;
    const answers = {
      slug: "frame",
      title: "Frame",
      picture,
      book: USUAL_BOOK,
      light: undefined,
      units: "mm",
      draft: false,
    } as const;
    const kit = newKit(answers, sketchOf(picture, base), { relief: "raised", light: undefined, height: 100 });
    expect(kit.levels).toEqual([
      { name: "red", depth: 10 },
      { name: "white", depth: 20, background: true },
    ]);
  });
});
