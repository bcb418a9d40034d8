import { cpSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import {
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFName,
  PDFNumber,
  type PDFObject,
  PDFRawStream,
  PDFStream,
} from "@cantoo/pdf-lib";
import { afterAll, beforeAll, describe, expect, inject, it } from "vitest";
import { ADDRESS } from "../../site/address.ts";
import { TALL, writeTall } from "../../site/own-kits.ts";
import { makeProject, type Project } from "../../site/project.ts";
import { bytesOf, type Printed, type PrintedPdf } from "./printed.ts";
import { ARROW } from "./table.ts";

/** The typefaces that the site brings along; any other comes from the machine that printed. */
const OWN_TYPEFACES = /^[A-Z]{6}\+(SourceSans3|Literata)/;

interface Raw {
  readonly pdf: PrintedPdf;
  readonly raw: PDFDocument;
}

export function documentSuite(printed: () => Printed): void {
  const files: Raw[] = [];
  beforeAll(async () => {
    for (const pdf of printed().pdfs)
      files.push({ pdf, raw: await PDFDocument.load(readFileSync(pdf.path), { updateMetadata: false }) });
  });

  describe("the document", () => {
    // ISO 32000 14.7 and 14.8, with the checks of veraPDF's PDF/UA-1 profile (6.2, 7.1, 7.2); no conformity is claimed.
    it("is tagged and says so", async () => {
      for (const { pdf, raw } of files) {
        const root = raw.catalog.lookup(PDFName.of("StructTreeRoot"), PDFDict);
        expect(root.get(PDFName.of("K")), pdf.name).toBeDefined();
        expect(root.get(PDFName.of("ParentTree")), pdf.name).toBeDefined();
        expect((await pdf.document.getMarkInfo())?.Marked, pdf.name).toBe(true);
        for (const { page, number } of pdf.pages) {
          const tree = await page.getStructTree();
          expect(tree?.children.length, `${pdf.name} page ${number}`).toBeGreaterThan(0);
        }
      }
    });

    it("has a language and the kit's title, which the viewer shows", async () => {
      for (const { pdf, raw } of files) {
        expect(raw.catalog.get(PDFName.of("Lang"))?.toString(), pdf.name).toBe("(en)");
        const info = await informationOf(pdf);
        const kind = { packet: "packet", "table-large": "large-print table", "table-compact": "table in short" }[
          pdf.kind
        ];
        expect(info.Title, pdf.name).toBe(`${pdf.pattern.title}: ${kind}`);
        expect(
          ((await pdf.document.getViewerPreferences()) as { DisplayDocTitle?: boolean } | null)?.DisplayDocTitle,
          pdf.name,
        ).toBe(true);
      }
    });

    // ISO 32000 12.2 Table 147: PrintScaling None makes the print dialogue begin at actual size.
    it("asks viewers to print at actual size", () => {
      for (const { pdf, raw } of files) {
        const preferences = raw.catalog.lookup(PDFName.of("ViewerPreferences"), PDFDict);
        expect(preferences.get(PDFName.of("PrintScaling"))?.toString(), pdf.name).toBe("/None");
      }
    });

    // ISO 32000 7.7.3.3 Table 31: UserUnit multiplies the unit of 1/72 in and is 1 where it is left out.
    it("has pages in units of 1/72 in, upright, and nothing cropped", () => {
      for (const { pdf, raw } of files) {
        for (const page of raw.getPages()) {
          expect(page.node.get(PDFName.of("UserUnit")), pdf.name).toBeUndefined();
          expect(page.getRotation().angle, pdf.name).toBe(0);
          expect(page.getCropBox(), pdf.name).toEqual(page.getMediaBox());
        }
      }
    });

    it("has an outline of its headings, each leading to the page that says it", async () => {
      for (const { pdf } of files) {
        const outline = flatten(await pdf.document.getOutline());
        const titles = outline.map(({ title }) => title);
        const wanted =
          pdf.kind === "packet"
            ? [
                pdf.pattern.title,
                "Cautions",
                "Supplies and tools",
                "Prepare the book",
                "Steps",
                "Pattern table",
                "Batch 1: leaves",
                "Scoring gauge, true scale",
              ]
            : ["attern table"];
        for (const title of wanted) expect(titles.join("\n"), pdf.name).toContain(title);
        for (const { title, dest } of outline) {
          expect(Array.isArray(dest), `${pdf.name} ${title}`).toBe(true);
          const index = await pdf.document.getPageIndex((dest as [{ num: number; gen: number }])[0]);
          const said = pdf.pages[index]!.text.replace(/\s/g, "");
          expect(said, `${pdf.name} page ${index + 1}`).toContain(title.replace(/\s/g, ""));
        }
      }
    });

    it("begins its headings at the first level and skips none", async () => {
      for (const { pdf } of files) {
        const levels: number[] = [];
        for (const { page } of pdf.pages) levels.push(...headingLevels(await page.getStructTree()));
        expect(levels[0], pdf.name).toBe(1);
        for (const [i, level] of levels.slice(1).entries()) expect(level - levels[i]!, pdf.name).toBeLessThanOrEqual(1);
      }
    });

    it("has words for every figure and a scope for every heading of a table", () => {
      for (const { pdf, raw } of files) {
        const elements = dictionaries(raw).filter((one) => one.get(PDFName.of("Type"))?.toString() === "/StructElem");
        const role = (one: PDFDict): string | undefined => one.get(PDFName.of("S"))?.toString();
        const figures = elements.filter((one) => role(one) === "/Figure");
        if (pdf.kind === "packet") expect(figures.length, pdf.name).toBeGreaterThan(2);
        for (const figure of figures) expect(figure.get(PDFName.of("Alt")), pdf.name).toBeDefined();
        const heads = elements.filter((one) => role(one) === "/TH");
        expect(heads.length, pdf.name).toBeGreaterThan(pdf.pattern.leaves.length);
        for (const head of heads) expect(scopeOf(head), pdf.name).toMatch(/^\/(Row|Column)$/);
      }
    });
  });

  describe("the fonts", () => {
    it("are all embedded and can be copied as text", () => {
      for (const { pdf, raw } of files) {
        const fonts = fontsOf(raw);
        expect(fonts.length, pdf.name).toBeGreaterThan(0);
        for (const font of fonts) {
          expect(isEmbedded(font), `${pdf.name} ${nameOfFont(font)}`).toBe(true);
          expect(font.get(PDFName.of("ToUnicode")), `${pdf.name} ${nameOfFont(font)}`).toBeDefined();
        }
      }
    });

    it("are those that the site brings, so that every machine prints the same", () => {
      const strange = files.flatMap(({ pdf, raw }) =>
        fontsOf(raw)
          .map(nameOfFont)
          .filter((name) => !OWN_TYPEFACES.test(name))
          .map((name) => `${pdf.name}: ${name}`),
      );
      expect(strange).toEqual([]);
    });

    it("have a glyph for everything that is said", () => {
      for (const { pdf } of files) {
        const said = pdf.pages.map(({ text }) => text).join(" ");
        expect(said, pdf.name).toContain(ARROW);
        expect(said, pdf.name).not.toMatch(/[\uFFFD\p{Co}\p{Cn}]/u);
      }
    });
  });

  describe("printing again", () => {
    const path = `content/kits/${TALL.slug}/index.md`;
    const shared = inject("ownKits").folder;
    let project: Project;
    beforeAll(() => {
      project = makeProject({ kits: ["little-gull"] });
      writeTall(project);
    });
    afterAll(() => project?.remove());
    const build = () => project.build({ LEAFLIGHT_SITE_URL: ADDRESS });

    it("gives the same bytes, and dates that do not tell when", async () => {
      const run = build();
      expect(run.code, run.stderr).toBe(0);
      expect(run.stdout).toContain("Printing 16 PDFs");
      const again = [...bytesOf(project.folder)].filter(([file]) => file.includes(TALL.slug));
      expect(again).toHaveLength(8);
      const before = bytesOf(shared);
      for (const [file, bytes] of again) expect(bytes.equals(before.get(file)!), file).toBe(true);
      const today = new Date().toISOString().slice(0, 10).replaceAll("-", "");
      for (const { pdf } of files) {
        const info = await informationOf(pdf);
        expect(info.CreationDate, pdf.name).toMatch(/^D:\d{14}/);
        expect(info.ModDate, pdf.name).toBe(info.CreationDate);
        expect(info.CreationDate.slice(2, 10), pdf.name).not.toBe(today);
      }
    });

    it("prints only what changed", () => {
      const before = bytesOf(project.folder);
      project.write(path, project.read(path).replace("[8, 14.5, 16, 40]", "[8, 14.5, 17, 40]"));
      const run = build();
      expect(run.code, run.stderr).toBe(0);
      expect(run.stdout).toMatch(/Printing [2468] PDFs/);
      const after = bytesOf(project.folder);
      for (const [file, bytes] of before) {
        const changed = !bytes.equals(after.get(file)!);
        if (!file.includes(TALL.slug)) expect(changed, file).toBe(false);
        if (file.includes(`${TALL.slug}/packet`)) expect(changed, file).toBe(true);
      }
    });

    it("is refused for what does not fit its sheet, and leaves what was built", () => {
      const before = project.list("dist");
      // A style that lets a title run out of its sheet.
      rmSync(join(project.folder, "layouts"));
      cpSync(join(import.meta.dirname, "../../../layouts"), join(project.folder, "layouts"), { recursive: true });
      const styles = "layouts/styles/print.css";
      project.write(styles, `${project.read(styles)}.cover h1 { white-space: nowrap; }\n`);
      project.write(path, project.read(path).replace(/^title: .*$/m, `title: ${"Leporello ".repeat(12)}`));
      const run = build();
      expect(run.code).toBe(1);
      expect(run.stderr).toMatch(
        /^content\/kits\/tall\/index\.md:2:1 {2}title: a text that leaves its box on kits\/tall\/packet; allowed: /m,
      );
      expect(project.list("dist")).toEqual(before);
    });
  });
}

/** The information dictionary (ISO 32000 14.3.3). */
async function informationOf(pdf: PrintedPdf): Promise<Readonly<Record<"Title" | "CreationDate" | "ModDate", string>>> {
  return (await pdf.document.getMetadata()).info as Record<"Title" | "CreationDate" | "ModDate", string>;
}

interface OutlineNode {
  readonly title: string;
  readonly dest: string | unknown[] | null;
  readonly items: readonly OutlineNode[];
}

function flatten(nodes: readonly OutlineNode[] | null): OutlineNode[] {
  return (nodes ?? []).flatMap((node) => [node, ...flatten(node.items)]);
}

function headingLevels(node: unknown): number[] {
  const { role, children = [] } = node as { role?: string; children?: unknown[] };
  const level = /^H([1-6])$/.exec(role ?? "")?.[1];
  return [...(level ? [Number(level)] : []), ...children.flatMap(headingLevels)];
}

function dictionaries(raw: PDFDocument): PDFDict[] {
  return raw.context.enumerateIndirectObjects().flatMap(([, one]) => (one instanceof PDFDict ? [one] : []));
}

/** The Scope in a structure element's attributes (ISO 32000 14.8.5.7), one dictionary or an array of them. */
function scopeOf(element: PDFDict): string {
  const attributes = element.lookup(PDFName.of("A"));
  const list: (PDFObject | undefined)[] =
    attributes instanceof PDFArray ? attributes.asArray().map((_, i) => attributes.lookup(i)) : [attributes];
  const scopes = list.flatMap((one) => (one instanceof PDFDict ? [one.get(PDFName.of("Scope"))] : []));
  return scopes.find((scope) => scope !== undefined)?.toString() ?? "none";
}

/** Fonts that text is set in; the descendants of composite fonts are theirs. */
function fontsOf(raw: PDFDocument): PDFDict[] {
  return dictionaries(raw).filter(
    (one) =>
      one.get(PDFName.of("Type"))?.toString() === "/Font" &&
      !one.get(PDFName.of("Subtype"))?.toString().startsWith("/CIDFont"),
  );
}

function descriptorOf(font: PDFDict): PDFDict | undefined {
  const descendants = font.lookup(PDFName.of("DescendantFonts"));
  const holder = descendants instanceof PDFArray ? descendants.lookup(0, PDFDict) : font;
  return holder.lookupMaybe(PDFName.of("FontDescriptor"), PDFDict);
}

function nameOfFont(font: PDFDict): string {
  return (descriptorOf(font)?.get(PDFName.of("FontName")) ?? font.get(PDFName.of("BaseFont")) ?? "none")
    .toString()
    .slice(1);
}

/** ISO 32000 9.9: a font file in the descriptor. A Type 3 font (9.6.4) is its glyphs' own drawings, a stream for each width. */
function isEmbedded(font: PDFDict): boolean {
  if (font.get(PDFName.of("Subtype"))?.toString() !== "/Type3") {
    const descriptor = descriptorOf(font);
    return ["FontFile", "FontFile2", "FontFile3"].some(
      (key) => descriptor?.lookup(PDFName.of(key)) instanceof PDFStream,
    );
  }
  const glyphs = font.lookup(PDFName.of("CharProcs"), PDFDict);
  const widths = font.lookup(PDFName.of("Widths"), PDFArray).asArray();
  const used = widths.filter((width) => width instanceof PDFNumber && width.asNumber() > 0).length;
  return glyphs.keys().length >= used && glyphs.keys().every((key) => glyphs.lookup(key) instanceof PDFRawStream);
}
