import { join } from "node:path";
import { runInNewContext } from "node:vm";
import { build } from "esbuild";
import { describe, expect, it } from "vitest";
import { CLASSIC_SCRIPT } from "../../../src/build/bundle/classic-script.ts";
import { unusedMethods } from "../../../src/build/bundle/unused-methods.ts";
import * as whole from "../../../src/core/geometry/area.ts";
import { packParts } from "../../../src/core/packing/pack.ts";
import type { Part } from "../../../src/core/window/part.ts";
import { fc } from "../../seed.ts";

type Bundled = typeof whole & { readonly packParts: typeof packParts };

/** The modules as a page has them. */
async function bundled(): Promise<Bundled> {
  const core = join(import.meta.dirname, "../../../src/core");
  const contents = `export * from "./geometry/area.ts"; export { packParts } from "./packing/pack.ts";`;
  const { outputFiles } = await build({
    ...CLASSIC_SCRIPT,
    stdin: { contents, loader: "ts", resolveDir: core },
    globalName: "made",
    plugins: [unusedMethods],
    write: false,
  });
  return runInNewContext(`${outputFiles[0]!.text}; made`) as Bundled;
}

const lean = await bundled();

const coordinate = fc.integer({ min: -300, max: 300 }).map((quarters) => quarters / 4);
const ring = fc.array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 12 });
const rings = fc.array(ring, { minLength: 1, maxLength: 4 });

const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

// The libraries with all their methods are what they are compared with.
describe("unusedMethods", () => {
  it("leaves areas as they are, also grown and shrunk", () => {
    fc.assert(
      fc.property(rings, rings, fc.integer({ min: -80, max: 80 }), (a, b, by) => {
        for (const rule of ["nonzero", "evenodd"] as const)
          expect(plain(lean.areaOfRings(a, rule))).toEqual(plain(whole.areaOfRings(a, rule)));
        expect(plain(lean.unite(a, b))).toEqual(plain(whole.unite(a, b)));
        expect(plain(lean.subtract(a, b))).toEqual(plain(whole.subtract(a, b)));
        const area = whole.intersect(whole.areaOfRings(a, "nonzero"), b);
        expect(plain(lean.grow(area, by / 4))).toEqual(plain(whole.grow(area, by / 4)));
      }),
      { numRuns: 20 },
    );
  });

  it("leaves parts where they are packed", () => {
    const side = fc.integer({ min: 5, max: 220 });
    fc.assert(
      fc.property(fc.array(fc.tuple(side, side), { minLength: 1, maxLength: 14 }), (sizes) => {
        const parts = sizes.map(([width, height], i) => plate(`${i}`, width, height));
        expect(plain(lean.packParts(parts, 194, 281))).toEqual(plain(packParts(parts, 194, 281)));
      }),
    );
  });
});

function plate(id: string, width: number, height: number): Part {
  const outlines = [whole.rectangle(0, 0, width, height)];
  return { id, kind: "motif", material: "card", count: 1, frame: "own", outlines, scores: [], marks: [] };
}
