import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Level } from "../../../src/core/kit/kit.ts";
import { readKit } from "../../../src/input/kit/read-kit.ts";
import { readMotifs } from "../../../src/input/kit/read-motifs.ts";
import { resolveLevels } from "../../../src/input/kit/resolve-levels.ts";
import { kitText } from "../../../src/input/kit/state-kit.ts";
import { PictureFiles } from "../../../src/input/layers/draw-file.ts";
import { pickableShapes } from "../../../src/input/layers/pickable.ts";
import { type PictureMatter, pictureSchema } from "../../../src/input/layers/schema.ts";
import { FIXTURE_KITS, FIXTURES, fixtureText } from "../kit/kit-folders.ts";

const LEVELS: readonly Level[] = ["near", "far"].map((name, i) => ({
  name,
  depth: 10 * (i + 1),
  line: undefined,
  background: i === 1,
}));

/** Two squares of 10 in a canvas of 40 × 20, the second under a group, and a disc of another colour without a name. */
const DRAWING = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20">
<rect id="plain" x="0" y="0" width="10" height="10" fill="#cc3333"/>
<g id="pair"><rect class="small" x="20" y="5" width="10" height="10" fill="#cc3333"/></g>
<circle cx="35" cy="15" r="5" fill="#33cc33"/>
</svg>
`;

describe("pickableShapes(files, matter, levels)", () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "leaflight-"));
    writeFileSync(join(folder, "drawing.svg"), DRAWING);
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  const shapes = (matter: object) =>
    pickableShapes(
      new PictureFiles({ base: folder, folder }),
      pictureSchema.parse({ file: "drawing.svg", ...matter }) as PictureMatter,
      LEVELS,
    );

  it("names what picks each shape, what picks the fewest others first", () => {
    const [plain, small, disc] = shapes({ crop: "canvas", levels: { near: ["#plain"] } });
    expect(plain).toMatchObject({ file: "drawing.svg", line: 2, colour: "#cc3333", level: 1 });
    expect(plain!.selectors[0]).toBe("#plain");
    expect(plain!.selectors.at(-1)).toEqual({ fill: "#cc3333" });
    expect(small!.selectors).toContain(".small");
    expect(small!.selectors).toContain("#pair");
    expect(small!.selectors.at(-1)).toEqual({ fill: "#cc3333" });
    expect(disc!.selectors).toEqual([{ fill: "#33cc33" }]);
    expect([small!.level, disc!.level]).toEqual([undefined, undefined]);
  });

  it("gives outlines in the picture's box: cropped, and as large as it states", () => {
    const matter = { levels: { near: ["#plain"] }, crop: { x: 0, y: 0, width: 20, height: 20 }, width: 60 };
    const [, small] = shapes(matter);
    // 20 wide becomes 60: three times as large.
    expect(small!.rings[0]!.map(([x]) => x).toSorted((a, b) => a - b)[0]).toBeCloseTo(60, 9);
    expect(small!.rings[0]!.map(([, y]) => y).toSorted((a, b) => a - b)[0]).toBeCloseTo(15, 9);
  });

  it("lays shapes of layers where the layer stands, the hindmost first", () => {
    const layer = { file: "drawing.svg", crop: "canvas", names: "#plain", at: [50, 50], width: 40 };
    const layers = [
      { ...layer, level: "near" },
      { ...layer, level: "far", mirror: true },
    ];
    const found = pickableShapes(
      new PictureFiles({ base: folder, folder }),
      pictureSchema.parse({ width: 100, height: 100, layers }) as PictureMatter,
      LEVELS,
    );
    expect(found.map(({ level }) => level)).toEqual([2, undefined, undefined, 1, undefined, undefined]);
    const lefts = found.map(({ rings }) => Math.min(...rings[0]!.map(([x]) => x)));
    // 40 wide around 50: from 30 to 70; mirrored, what began at 0 ends at 70.
    expect(lefts[3]).toBeCloseTo(30, 9);
    expect(lefts[0]).toBeCloseTo(60, 9);
  });

  it("has nothing to pick where nothing can be read", () => {
    expect(shapes({ file: "no-such.svg" })).toEqual([]);
    expect(shapes({ file: undefined, text: "Ahoy", level: "near" })).toEqual([]);
  });

  it.each(FIXTURE_KITS)("gives %s the levels and outlines that its reader gives it", (slug) => {
    const kit = readKit(join(FIXTURES, "content/kits", slug), FIXTURES, readMotifs(FIXTURES).made).kit;
    const { data } = kitText(slug, "index.md", fixtureText(slug));
    const files = new PictureFiles({ base: FIXTURES, folder: join(FIXTURES, "content/kits", slug) });
    const picked = pickableShapes(files, data.picture, resolveLevels(data)).filter(({ level }) => level !== undefined);
    expect(picked.map(({ level }) => level)).toEqual(kit.picture.shapes.map(({ level }) => level));
    for (const [i, { rings }] of kit.picture.shapes.entries())
      for (const [n, ring] of rings.entries())
        for (const [k, [x, y]] of ring.entries()) {
          expect(picked[i]!.rings[n]![k]![0]).toBeCloseTo(x, 6);
          expect(picked[i]!.rings[n]![k]![1]).toBeCloseTo(y, 6);
        }
  });
});
