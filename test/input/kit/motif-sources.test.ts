import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { stringify } from "yaml";
import { outlinesOf, sizeOf } from "../../../src/core/geometry/area.ts";
import { boxOf } from "../../../src/core/geometry/box.ts";
import type { MotifWish } from "../../../src/core/window/motif.ts";
import { formatMessage } from "../../../src/input/files/format-message.ts";
import { readKit as readStated } from "../../../src/input/kit/read-kit.ts";
import { readMotifs } from "../../../src/input/kit/read-motifs.ts";
import { copyFixture, fixtureFrontMatter, inFolder, messagesOf, readKit } from "./kit-folders.ts";

const BOAT = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100">
  <path id="hull" d="M10 50h60v20h-60z"/>
  <path id="sail" d="M20 10h20v30h-20z"/>
</svg>`;

/** A dark block of 60 by 30 pixels on a light ground. */
const BLOCK = await sharp(
  Buffer.from(
    '<svg xmlns="http://www.w3.org/2000/svg" width="100" height="80"><rect width="100" height="80" fill="#eee"/><rect x="20" y="30" width="60" height="30"/></svg>',
  ),
)
  .png()
  .toBuffer();

/** The fixture’s lit kit with these motifs, a shelf of one block of 20 by 10, and files beside it. */
function inKit<T>(motifs: readonly object[], use: (folder: string, base: string) => T): T {
  return inFolder((base) => {
    mkdirSync(join(base, "content/motifs"), { recursive: true });
    const block = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 40"><path d="M5 5h20v10h-20z"/></svg>';
    writeFileSync(join(base, "content/motifs/block.svg"), block);
    const folder = copyFixture(base, "harbour-moon");
    const matter = fixtureFrontMatter("harbour-moon");
    const changed = { ...matter, insert: { ...matter.insert, motifs } };
    writeFileSync(join(folder, "index.md"), `---\n${stringify(changed)}---\nTold.\n`);
    writeFileSync(join(folder, "boat.svg"), BOAT);
    writeFileSync(join(folder, "block.png"), BLOCK);
    return use(folder, base);
  });
}

/** A motif as the kit asks for it. */
function wish(motif: object): MotifWish {
  return inKit([motif], (folder, base) => readStated(folder, base, readMotifs(base).made).kit.motifs[0]!);
}

const told = (...motifs: readonly object[]): string[] =>
  inKit(motifs, messagesOf).map((message) => formatMessage(message).replace(/^[^ ]*? {2}/, ""));

/** Its area in mm², where width and height are stated in mm. */
function areaInMm({ area, width, height }: MotifWish): number {
  const { left, top, right, bottom } = boxOf(area);
  const [across, down] = [width, height].map((side) => (side as { readonly mm: number }).mm) as [number, number];
  return (sizeOf(area) * across * down) / ((right - left) * (bottom - top));
}

describe("the source of a motif", () => {
  it("may be words, which get their size and are told of where they fall apart", () => {
    const words = { text: "27", at: ["50%", "50%"], width: 30 };
    const { name, width, height, area } = wish(words);
    expect([name, width, height]).toEqual(["words", { mm: 30 }, undefined]);
    expect(outlinesOf(area).outer).toHaveLength(2);
    const [message] = told(words);
    expect(message).toContain("insert.motifs[1]: 2 pieces that touch nothing of the motif “words”");
    expect(message).toContain("do: join the pieces, as with a bar or a ring under join");
  });

  it("may be joined with a bar, in shares of its box or in mm", () => {
    const bar = { rectangle: {}, at: ["50%", "100%"], width: "110%", height: "20%" };
    const one = wish({ text: "27", width: 30, join: [bar] });
    expect(outlinesOf(one.area).outer).toHaveLength(1);
    // The bar is 3 mm longer than the words, so that all of it is 33 mm wide and the words are 30 still.
    expect(one.width).toEqual({ mm: 33 });
    expect(wish({ text: "27", width: "40%", join: [bar] }).width).toEqual({ share: 0.44 });
    expect(wish({ text: "27", width: 30, join: [{ ...bar, width: 36 }] }).width).toEqual({ mm: 36 });
    const built = inKit([{ text: "27", at: ["50%", "50%"], width: 30, join: [bar] }], readKit);
    expect(built.pattern.window!.motifs).toHaveLength(1);
  });

  it("may be an outline with lengths in mm", () => {
    const ring = wish({ ring: { width: 3 }, width: 30, height: 30 });
    expect(ring.name).toBe("ring");
    // π (15² − 12²), less what polygons of the chord error lose.
    expect(areaInMm(ring)).toBeCloseTo(Math.PI * 81, 0);
    const plate = wish({ rectangle: {}, width: 40, height: 20, cut: [{ oval: {}, width: 10, height: 10 }] });
    expect(areaInMm(plate)).toBeCloseTo(800 - Math.PI * 25, 0);
  });

  it("is as large as stated before it is turned", () => {
    // 40 cos 30° + 4 sin 30°, and 40 sin 30° + 4 cos 30°.
    const bar = { rectangle: {}, width: 40, height: 4, turn: 30 };
    expect(wish(bar)).toMatchObject({ width: { mm: 36.641 }, height: { mm: 23.4641 } });
    // A block of 20 by 10, 40 mm wide, turned by a quarter.
    expect(wish({ motif: "block", width: 40, turn: 90 })).toMatchObject({ width: { mm: 20 }, height: undefined });
    expect(wish({ motif: "block", width: 40, height: 4, turn: 30 })).toMatchObject({
      width: { mm: 36.641 },
      height: { mm: 23.4641 },
    });
  });

  it("may be parts of a drawing, or what a rectangle cuts out of it", () => {
    const shape = ({ area }: MotifWish): number => {
      const { left, top, right, bottom } = boxOf(area);
      return (right - left) / (bottom - top);
    };
    expect(shape(wish({ file: "boat.svg" }))).toBeCloseTo(1, 4);
    expect(shape(wish({ file: "boat.svg", names: ["#hull"] }))).toBeCloseTo(3, 4);
    // Of the hull from x 10 to 70 and y 50 to 70, the rectangle keeps x 30 to 70 and y 60 to 70.
    const part = { file: "boat.svg", names: ["#hull"], crop: { x: 30, y: 60, width: 60, height: 20 }, width: 60 };
    expect(shape(wish(part))).toBeCloseTo(4, 3);
    // The rectangle of 60 is 60 mm wide, so that the 40 of the hull in it are 40 mm.
    expect(wish(part).width).toEqual({ mm: 40 });
  });

  it("may be the silhouette in a photograph", () => {
    const { name, area } = wish({ file: "block.png", trace: "silhouette", width: 30 });
    const { left, top, right, bottom } = boxOf(area);
    expect(name).toBe("block");
    expect((right - left) / (bottom - top)).toBeCloseTo(2, 1);
  });

  it("may be a motif of the shelf with something joined or cut", () => {
    const block = wish({ motif: "block", width: 20, height: 10, cut: [{ rectangle: {}, width: 4, height: 5 }] });
    expect([block.name, areaInMm(block)]).toEqual(["block", expect.closeTo(180, 1)]);
  });

  it("brings notes about its file, also of a piece", () => {
    const blurred = BOAT.replace('id="sail"', 'id="sail" filter="url(#soft)"');
    const notes = inKit([{ heart: {}, join: [{ file: "boat.svg" }] }], (folder, base) => {
      writeFileSync(join(folder, "boat.svg"), blurred);
      return readStated(folder, base, []).pictureNotes;
    });
    expect(notes.join("\n")).toMatch(/boat\.svg:3: .*filter/);
  });

  it.each([
    ["mm without a size in mm", { ring: { width: 3 } }, "insert.motifs[1].ring.width: 3 mm, in a motif without"],
    [
      "mm of a piece without a size in mm",
      { heart: {}, width: "20%", join: [{ oval: {}, at: ["50%", 4] }] },
      "insert.motifs[1].join[1].at[2]: 4 mm, in a motif without",
    ],
    [
      "shares that are turned",
      { motif: "block", width: "20%", height: 30, turn: 45 },
      "insert.motifs[1].turn: turned, with width and height of which one is a share",
    ],
    ["a font of an outline", { heart: {}, font: "literata" }, 'insert.motifs[1].font: "font", which belongs to words'],
    [
      "a crop of the shelf",
      { motif: "block", crop: "drawing" },
      'insert.motifs[1].crop: "crop", which belongs to a file',
    ],
    ["a level", { heart: {}, level: "rim" }, 'insert.motifs[1].level: unknown key "level"'],
    ["names that are none", { file: "boat.svg", names: ["#mast"] }, "insert.motifs[1].names[1]: "],
    ["a photograph in tones", { file: "block.png", trace: "tones" }, "insert.motifs[1].trace: given tones"],
    ["no letters", { text: "  " }, "insert.motifs[1].text: words without a letter that shows"],
    ["a piece without a source", { heart: {}, cut: [{}] }, "insert.motifs[1].cut[1]: no source"],
    [
      "all of it cut away",
      { heart: {}, cut: [{ rectangle: {} }] },
      "insert.motifs[1]: nothing that is left to be cut from card",
    ],
  ])("is told of with its field: %s", (_, motif, message) => {
    const messages = told(motif);
    expect(messages).toHaveLength(1);
    expect(messages[0]).toContain(message);
  });

  it("is told of in every motif at once", () => {
    const messages = told({ text: "27", font: "none" }, { heart: {} }, { file: "no.svg" });
    expect(messages.map((message) => message.split(":", 1)[0])).toEqual([
      "insert.motifs[1].font",
      "insert.motifs[3].file",
    ]);
  });
});
