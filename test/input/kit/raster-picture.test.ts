import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import type { PatternedKit } from "../../../src/core/pattern/patterned-kit.ts";
import { copyFixture, fixtureFolder, inFolder, messagesOf, readKit } from "./kit-folders.ts";

const SVG_PICTURE = /picture:\n {2}file: gull\.svg\n {2}levels:\n.*\n.*\n/;

/** The light gull on its dark sky, as its SVG shows them. */
const GULL = await sharp(join(fixtureFolder("little-gull"), "gull.svg"), { density: 300 })
  .flatten({ background: "#3f6479" })
  .png()
  .toBuffer();

/** Runs `use` with the folder of the little gull that has a PNG, and what its picture states. */
function withGull(picture: string, use: (folder: string, base: string) => void): void {
  inFolder((base) => {
    const folder = copyFixture(base, "little-gull");
    writeFileSync(join(folder, "gull.png"), GULL);
    const text = readFileSync(join(folder, "index.md"), "utf8");
    writeFileSync(join(folder, "index.md"), text.replace(SVG_PICTURE, `picture:\n${picture}`));
    use(folder, base);
  });
}

/** Where the strips of each leaf begin and end, mm from the head. */
const marksOf = ({ pattern }: PatternedKit): number[][] =>
  pattern.leaves.map(({ spans }) => spans.flatMap(({ from, to }) => [from, to]));

describe("readKit(folder, base, motifs) of a raster picture", () => {
  it("marks leaves as the drawing does", () => {
    withGull("  file: gull.png\n  trace: silhouette\n  near: light\n  limits: [120]\n", (folder, base) => {
      const traced = readKit(folder, base);
      const drawn = inFolder((other) => readKit(copyFixture(other, "little-gull"), other));
      const [ours, theirs] = [marksOf(traced), marksOf(drawn)];
      expect(ours).toHaveLength(theirs.length);
      // Marks are whole millimetres, so an outline that strays by less may move one to the next.
      const same = ours.filter(
        (marks, i) =>
          marks.length === theirs[i]!.length && marks.every((mark, k) => Math.abs(mark - theirs[i]![k]!) <= 1),
      );
      expect(same.length / ours.length).toBeGreaterThan(0.95);
      expect(traced.pictureNotes).toEqual([]);
    });
  });

  it("tells which file a note is about", () => {
    withGull("  file: gull.png\n  trace: silhouette\n", (folder, base) => {
      const { pictureNotes } = readKit(folder, base);
      expect(pictureNotes[0]).toMatch(/^kits\/little-gull\/gull\.png: the lightness parts at \d+; /);
    });
  });

  it.each([
    ["limits that do not rise", "  file: gull.png\n  trace: tones\n  limits: [9, 3]\n", "picture.limits", 15],
    ["another one", "  file: gull.png\n  trace: edges\n", "picture.trace", 14],
    ["no file", "  file: goose.jpg\n  trace: tones\n", "picture.file", 13],
  ])("tells of %s at its place", (_, picture, field, line) => {
    withGull(picture, (folder, base) => {
      expect(messagesOf(folder, base)).toMatchObject([{ file: "kits/little-gull/index.md", field, line }]);
    });
  });

  it("lets the program end", () => {
    withGull("  file: gull.png\n  trace: silhouette\n", (folder) => {
      const module = pathToFileURL(join(import.meta.dirname, "../../../src/input/raster/read-pixels.ts")).href;
      const script = `import { readFileSync } from "node:fs";
        const { readPixels } = await import(${JSON.stringify(module)});
        console.log(Object.keys(readPixels(readFileSync(${JSON.stringify(join(folder, "gull.png"))}))));`;
      const { status, stdout, stderr } = spawnSync(process.execPath, ["--input-type=module", "-e", script], {
        encoding: "utf8",
      });
      expect([status, stdout.trim(), stderr]).toEqual([0, "[ 'pixels' ]", ""]);
    });
  });
});
