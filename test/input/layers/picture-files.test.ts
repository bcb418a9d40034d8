import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { PictureFiles } from "../../../src/input/layers/draw-file.ts";
import { inFolder } from "../kit/kit-folders.ts";

/** What the drawings of these texts offer, each read as a picture's. */
function offersOf(...drawings: readonly string[]): string[] {
  return inFolder((base) => {
    const folder = join(base, "content/kits/moon");
    mkdirSync(folder, { recursive: true });
    const files = new PictureFiles({ base, folder });
    for (const [i, markup] of drawings.entries()) {
      const name = `drawing-${i}.svg`;
      const text = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10">${markup}</svg>`;
      writeFileSync(join(folder, name), text);
      files.read(name, ["picture", "file"]);
    }
    return files.offers();
  });
}

describe("PictureFiles.offers()", () => {
  it("tells by what each drawing's shapes can be picked, with the share of the canvas", () => {
    const half = '<g data-name="Sea"><rect y="5" width="10" height="5" fill="#00f"/></g>';
    expect(offersOf(half, "<defs/>")).toEqual([
      'content/kits/moon/drawing-0.svg can be picked by "Sea" (50%), fill: "#0000ff" (50%)',
      "content/kits/moon/drawing-1.svg paints nothing that can be picked",
    ]);
  });

  it("tells nothing of a kit without drawings", () => {
    expect(offersOf()).toEqual([]);
  });
});
