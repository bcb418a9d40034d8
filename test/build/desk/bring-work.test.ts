import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import sharp from "sharp";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { BringWork } from "../../../src/build/desk/bring-work.ts";
import { patternKit } from "../../../src/build/library/pattern-kit.ts";
import { USUAL_BOOK } from "../../../src/core/beginning/answers.ts";
import type { Brought, Look } from "../../../src/core/beginning/brought.ts";
import type { PictureWish } from "../../../src/core/beginning/picture-wish.ts";
import { type NewKitForm, newKitForm } from "../../../src/input/beginning/new-kit-form.ts";
import { readKit } from "../../../src/input/kit/read-kit.ts";

/** Two dark shapes on paper of two tones. */
const GULL = `<svg xmlns="http://www.w3.org/2000/svg" width="450" height="350" viewBox="0 0 90 70"><rect width="90" height="70" fill="#f4f4f4"/>
<rect y="45" width="90" height="25" fill="#9a9a9a"/><path fill="#252a30" d="M8 24Q28 12 43 32Q62 8 84 20Q66 24 55 44Q45 52 37 43Q27 26 8 24Z"/></svg>`;

const BOAT = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 120 100">
<g id="sky"><rect width="120" height="100" fill="#334"/></g><g id="boat"><path fill="#b03030" d="M30 55H90L80 72H42Z"/></g>
<g id="sail"><path fill="#4060a0" d="M58 12V50H34Z"/></g></svg>`;

let base = "";
let work: BringWork;

beforeEach(() => {
  base = mkdtempSync(join(tmpdir(), "leaflight-bring-"));
  mkdirSync(join(base, "content"));
  work = new BringWork(base, () => []);
});

afterEach(() => rmSync(base, { recursive: true, force: true }));

function bring(name: string, bytes: Uint8Array | string): Extract<Brought, { readonly upload: string }> {
  const brought = work.bring(name, typeof bytes === "string" ? Buffer.from(bytes) : bytes);
  if ("hurdles" in brought) throw new Error(JSON.stringify(brought.hurdles));
  return brought;
}

function form(upload: string, wish: PictureWish = {}, more: Partial<NewKitForm> = {}): NewKitForm {
  const picture = { from: "brought", upload, wish } as const;
  const plain = { slug: "gull", title: "Gull", picture, book: USUAL_BOOK, units: "mm", draft: false, ...more };
  return newKitForm.parse(JSON.parse(JSON.stringify(plain)));
}

const photograph = (): Promise<Buffer> => sharp(Buffer.from(GULL)).jpeg({ quality: 95 }).toBuffer();

function hurdlesIn(look: Look | undefined): string[] {
  return (look?.hurdles ?? []).map(({ place, given }) => `${place ?? ""} ${given}`.trim());
}

describe("BringWork.bring(name, bytes)", () => {
  it("says what there is to choose of a photograph", async () => {
    const { seen } = bring("gull.jpg", await photograph());
    if (seen.kind !== "photograph") throw new Error("no photograph");
    expect(seen).toMatchObject({ width: 450, height: 350, isCutOut: false });
    // Drawn in #25, #9a and #f4: limits lie between them, and the middle colour is about #9a9a9a.
    const [[one] = [], [dark, light] = []] = seen.limits;
    expect(one).toBeGreaterThan(0x25);
    expect([dark! > 0x2a && dark! < 0x9a, light! > 0x9a && light! < 0xf4]).toEqual([true, true]);
    expect(seen.palettes[1]!.map(({ level }) => level)).toEqual([1, 2, 0]);
  });

  it("says how a drawing’s shapes can be told apart, names first", () => {
    const { seen } = bring("boat.svg", BOAT);
    if (seen.kind !== "drawing") throw new Error("no drawing");
    expect(seen.sortings.map(({ by, marks }) => [by, marks.map(({ name, level }) => `${name} ${level}`)])).toEqual([
      ["names", ["sail 1", "boat 2", "sky 0"]],
      ["colours", ["blue 1", "red 2", "grey 0"]],
    ]);
    expect(seen.sortings[0]!.markOf).toEqual([2, 1, 0]);
    expect(seen.shapes.map(({ colour }) => colour)).toEqual(["#333344", "#b03030", "#4060a0"]);
  });

  it.each<[string, string | Buffer, RegExp]>([
    [
      "notes.svg",
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">\n<path d="M1 1h5"></svg>',
      /^notes\.svg:2 /,
    ],
    ["photo.png", Buffer.from("\x89PNG\r\n\x1a\nand then nothing", "latin1"), /^photo\.png .*cannot be read/],
    ["page.svg", "<html></html>", /no picture that can be used/],
    ["film.jpg", "GIF89a", /no picture that can be used/],
    ["packed.svg", Buffer.from([0x1f, 0x8b, 8, 0, 0, 0]), /no picture that can be used/],
    [
      "entities.svg",
      `<!DOCTYPE svg [<!ENTITY a "aaaaaaaaaa">${Array.from({ length: 9 }, (_, i) => `<!ENTITY ${"abcdefghij"[i + 1]} "${`&${"abcdefghij"[i]};`.repeat(10)}">`).join("")}]><svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><text>&j;</text></svg>`,
      /^entities\.svg:1 /,
    ],
    ["wide.svg", Buffer.from('<svg xmlns="http://www.w3.org/2000/svg">', "utf16le"), /no picture that can be used/],
  ])("says in one message what is wrong with %s", (name, bytes, told) => {
    const brought = work.bring(name, Buffer.from(bytes));
    if (!("hurdles" in brought)) throw new Error("it was taken");
    expect(brought.hurdles).toHaveLength(1);
    expect(`${brought.hurdles[0]!.place ?? ""} ${brought.hurdles[0]!.given}`.trim()).toMatch(told);
  });

  it("keeps the pictures that were brought last", () => {
    const uploads = Array.from({ length: 7 }, () => bring("boat.svg", BOAT).upload);
    expect(uploads.map((upload) => work.look(form(upload)) !== undefined)).toEqual([false, ...Array(6).fill(true)]);
  });
});

describe("BringWork.seen(upload)", () => {
  it("shows a photograph without what its file knows of time and place", async () => {
    const tagged = await sharp(Buffer.from(GULL))
      .jpeg()
      .withExif({ IFD0: { ImageDescription: "harbour" } })
      .toBuffer();
    expect(tagged.includes("harbour")).toBe(true);
    const seen = Buffer.from((await work.seen(bring("gull.jpg", tagged).upload))!);
    expect(await sharp(seen).metadata()).toMatchObject({ format: "webp", width: 450, height: 350 });
    expect(seen.includes("harbour")).toBe(false);
    expect(await work.seen("00000000-0000-4000-8000-000000000000")).toBeUndefined();
  });
});

describe("BringWork.look(form) and make(form)", () => {
  it.each<[string, PictureWish]>([
    ["one shape", { parting: { trace: "silhouette", limits: [100], tolerance: 0.5 } }],
    ["tones", { parting: { trace: "tones", levels: 3 } }],
    [
      "colours",
      {
        parting: { trace: "colours" },
        marks: [
          { name: "gull", selector: { fill: "#252a30" }, level: 1 },
          { name: "sea", selector: { fill: "#9a9a9a" }, level: 2 },
          { name: "sky", selector: { fill: "#f4f4f4" }, level: 0 },
        ],
      },
    ],
    ["a part of it", { parting: { trace: "silhouette" }, crop: { x: 20, y: 30, width: 400, height: 240 } }],
  ])("write the picture that was seen: a photograph as %s", async (_, wish) => {
    const { upload } = bring("gull.jpg", await photograph());
    const look = work.look(form(upload, wish));
    expect(hurdlesIn(look)).toEqual([]);
    expect(readdirSync(join(base, "content"))).toEqual([]);
    expect(work.make(form(upload, wish))).toEqual({ slug: "gull" });
    const read = readKit(join(base, "content/kits/gull"), base, []);
    expect(read.kit).toEqual({ ...look!.kit, picture: look!.map, slug: "gull" });
    expect(patternKit(read).pattern.leaves.length).toBeGreaterThan(0);
  });

  it("write the levels to which a drawing’s shapes were put", () => {
    const { upload } = bring("boat.svg", BOAT);
    const marks = [
      { name: "sail", selector: "sail", level: 2 },
      { name: "boat", selector: "boat", level: 1 },
      { name: "sky", selector: "sky", level: 0 },
    ];
    const look = work.look(form(upload, { marks }));
    expect([look!.levels, hurdlesIn(look)]).toEqual([["boat", "sail", "sky"], []]);
    work.make(form(upload, { marks }));
    expect(readKit(join(base, "content/kits/gull"), base, []).kit.picture).toEqual(look!.map);
  });

  it("still show a picture that fits no book, and say why", () => {
    const { upload } = bring("boat.svg", BOAT);
    const book = { leafHeight: 40, leafWidth: 30, blockThickness: 1, leaves: 4 };
    const look = work.look(form(upload, {}, { book }));
    expect(look!.map?.shapes.length).toBeGreaterThan(0);
    expect([look!.kit, hurdlesIn(look)[0]]).toEqual([
      undefined,
      "No height was found at which the picture fits this book.",
    ]);
  });

  it("say under which key something cannot be", async () => {
    const { upload } = bring("gull.jpg", await photograph());
    const look = work.look(form(upload, { parting: { trace: "silhouette", limits: [90, 80] } }));
    expect(hurdlesIn(look)).toEqual([expect.stringMatching(/^picture\.limits /)]);
  });

  it("write nothing where a folder is there, or is called what none may be called", () => {
    const { upload } = bring("boat.svg", BOAT);
    mkdirSync(join(base, "content/kits/gull"), { recursive: true });
    expect(work.make(form(upload))).toMatchObject({ hurdles: [{ given: expect.stringMatching(/already/) }] });
    for (const slug of ["../gull", "Gull", "", "a/b"])
      expect(work.make(form(upload, {}, { slug })), slug).toMatchObject({
        hurdles: [{ given: expect.stringMatching(/folder/) }],
      });
    expect(readdirSync(join(base, "content/kits"))).toEqual(["gull"]);
    expect(readdirSync(join(base, "content/kits/gull"))).toEqual([]);
  });

  it("write nothing outside of the project, where a link stands in the place of the kits", () => {
    const { upload } = bring("boat.svg", BOAT);
    const outside = mkdtempSync(join(tmpdir(), "leaflight-outside-"));
    symlinkSync(outside, join(base, "content/kits"), "junction");
    expect(work.make(form(upload))).toHaveProperty("hurdles");
    expect(readdirSync(outside)).toEqual([]);
    rmSync(outside, { recursive: true });
  });

  it("take nothing for a font that names a file of the disk", () => {
    const picture = { from: "word", text: "Ahoy", font: "/etc/passwd.ttf" } as const;
    expect(hurdlesIn(work.look(form("", {}, { picture })))).toEqual([expect.stringMatching(/^picture\.font /)]);
    expect(existsSync(join(base, "content/kits"))).toBe(false);
  });

  it("say nothing of a picture that is not kept", () => {
    const gone = form("00000000-0000-4000-8000-000000000000");
    expect([work.look(gone), work.make(gone)]).toEqual([undefined, undefined]);
  });

  it("leave out a light that has no room, and say so", () => {
    const { upload } = bring("boat.svg", BOAT);
    const look = work.look(form(upload, {}, { light: { diameter: 100, height: 150 } }));
    expect([look!.lit, look!.kit?.light]).toEqual([false, undefined]);
    expect(work.look(form(upload))!.lit).toBe(true);
  });
});

it("copies the picture as it was brought", async () => {
  const bytes = await photograph();
  work.make(form(bring("gull.jpg", bytes).upload));
  expect(readFileSync(join(base, "content/kits/gull/picture.jpg")).equals(bytes)).toBe(true);
});
