import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { lightCover } from "../../../src/core/window/light-cover.ts";
import { type MotifPart, setOutlines } from "../../../src/core/window/motif.ts";
import { fc } from "../../seed.ts";
import { circleRing } from "../geometry/plane.ts";
import { box, CURVE, plate } from "./made.ts";
import { faceWith, LIGHT, motifAt } from "./made-face.ts";

const cover = (...motifs: readonly MotifPart[]) => lightCover(faceWith(...motifs), LIGHT, CURVE);
const near = (beside: number, through: number) => ({
  beside: expect.closeTo(beside, 6),
  through: expect.closeTo(through, 6),
});

// By hand: the light is 20 by 40 mm, from −10 to 10 and from 35 to 75.
describe("lightCover(window, pocket, curve)", () => {
  it("shows all of a light that nothing covers", () => {
    expect(cover()).toEqual(near(1, 0));
  });

  it("shows what a motif leaves of it, at whatever height it stands", () => {
    expect(cover(motifAt([-10, 55], [box(0, 0, 20, 20)]))).toEqual(near(0.5, 0));
    expect(cover(motifAt([-10, 55], [box(0, 0, 20, 20)], 3))).toEqual(near(0.5, 0));
    expect(cover(motifAt([-40, 55], [box(0, 0, 20, 20)]))).toEqual(near(1, 0));
  });

  it("tells what shows through openings apart", () => {
    const window = plate(box(0, 0, 20, 40), box(5, 5, 15, 15));
    expect(cover(motifAt([-10, 35], window))).toEqual(near(0, 100 / 800));
  });

  it("counts nothing twice where motifs lie on each other", () => {
    const half = box(0, 0, 20, 20);
    expect(cover(motifAt([-10, 35], [half]), motifAt([-10, 45], [half], 1))).toEqual(near(10 / 40, 0));
  });

  it("counts nothing that the frame hides", () => {
    const face = faceWith();
    const low = { ...face, guide: { ...face.guide, outlines: [box(-30, 20, 30, 65)] } };
    expect(lightCover(low, LIGHT, CURVE)).toEqual(near(0.75, 0));
  });

  it("looks from the front also at a window that is wrapped: three times as long along the tips", () => {
    const { wish, ...face } = faceWith(motifAt([0, 35], [box(0, 0, 30, 40)]));
    const guide = { ...face.guide, outlines: [box(-90, 20, 90, 80)] };
    expect(lightCover({ ...face, guide, wish: { ...wish, panel: "wrap" } }, LIGHT, CURVE)).toEqual(near(0.5, 0));
  });

  // The unrelated renderer (librsvg, through sharp) paints light and motifs at 16 pixels to a millimetre.
  it("agrees with a rasterisation", async () => {
    const at = fc.tuple(fc.integer({ min: -30, max: 10 }), fc.integer({ min: 20, max: 60 }));
    const motif = fc.tuple(at, fc.integer({ min: 4, max: 14 })).map(([seat, radius]) => {
      const ring = circleRing(radius, radius, radius, 60);
      const eye = [...circleRing(radius, radius, radius / 2, 40)].reverse();
      return motifAt(seat, [ring, eye]);
    });
    await fc.assert(
      fc.asyncProperty(fc.array(motif, { minLength: 1, maxLength: 3 }), async (motifs) => {
        const { beside, through } = cover(...motifs);
        expect(Math.abs(beside + through - (await seen(motifs)))).toBeLessThan(0.01);
      }),
      { numRuns: 12 },
    );
  });
});

/** Share of the light that stays bright. */
async function seen(motifs: readonly MotifPart[]): Promise<number> {
  const paths = motifs.map(
    (motif) =>
      `<path fill="#000" fill-rule="evenodd" d="${setOutlines(motif)
        .map((ring) => `M${ring.map((point) => point.join(" ")).join("L")}Z`)
        .join("")}"/>`,
  );
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="320" height="640" viewBox="-10 35 20 40"><rect x="-10" y="35" width="20" height="40" fill="#fff"/>${paths.join("")}</svg>`;
  const pixels = await sharp(Buffer.from(svg)).greyscale().raw().toBuffer();
  return pixels.reduce((sum, value) => sum + value, 0) / (255 * pixels.length);
}
