import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { PDFDict, PDFDocument, PDFName } from "@cantoo/pdf-lib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { parse } from "yaml";
import { FOLDER } from "../../site/address.ts";
import { WAYS, writeExtremes } from "../../site/extreme.ts";
import { makeProject, type Project } from "../../site/project.ts";
import { type OpenedSite, openSite } from "../../site/shared-site.ts";
import { pageOverflow } from "../site/pseudo/page-overflow.ts";
import { readPdf } from "./read-pdf.ts";

const ADDRESS = `https://${"folds.".repeat(18)}example.org/${FOLDER}/`;

describe("texts as long as they may be", () => {
  let project: Project;
  let site: OpenedSite;
  let built: ReturnType<Project["build"]>;
  beforeAll(async () => {
    project = makeProject({ kits: [] });
    writeExtremes(project);
    built = project.build({ LEAFLIGHT_SITE_URL: ADDRESS });
    if (built.code !== 0) throw new Error(built.stderr);
    site = await openSite(project.folder);
  });
  afterAll(async () => {
    await site?.close();
    project?.remove();
  });

  const said = async (path: string): Promise<string> => {
    const { pages } = await readPdf(join(project.folder, "dist", path));
    return bare(pages.map(({ text }) => text).join(" "));
  };

  it("are printed on both papers, and no box is too small for them", () => {
    const printed = readdirSync(join(project.folder, "dist"), { recursive: true, encoding: "utf8" });
    for (const way of WAYS)
      for (const paper of ["a4", "letter"]) expect(printed).toContain(`kits/extreme-${way}/packet-${paper}.pdf`);
    expect(printed).toContain("private/classes/class-word/all-seats-a4.pdf");
    expect(printed).toContain("private/classes/class-mixed/all-seats-letter.pdf");
  });

  it.each(WAYS)("stand whole in packets: %s", async (way) => {
    const matter = parse(project.read(`content/kits/extreme-${way}/index.md`).split(/^---$/m)[1]!);
    const packet = await said(`kits/extreme-${way}/packet-letter.pdf`);
    const texts = [
      matter.title,
      matter.summary,
      matter.licence.name,
      ...[matter.credit.work, matter.credit.source, matter.credit.licence],
      ...matter.levels.map(({ name }: { name: string }) => name),
      ...matter.supplies.flatMap(({ item, unit }: { item: string; unit: string }) => [item, unit]),
      matter.light.cells,
    ];
    for (const text of texts) expect(packet).toContain(bare(text));
    const plan = parse(project.read(`content/classes/class-${way}/index.md`).split(/^---$/m)[1]!);
    const teacher = await said(`private/classes/class-${way}/teacher.pdf`);
    for (const text of [
      plan.title,
      plan.place,
      plan.stock[0].item,
      ...plan.sessions.map(({ title }: { title: string }) => title),
    ])
      expect(teacher).toContain(bare(text));
  });

  it("are set in the site's own faces, whatever their script", async () => {
    const packet = readFileSync(join(project.folder, "dist/kits/extreme-mixed/packet-a4.pdf"));
    const raw = await PDFDocument.load(packet, { updateMetadata: false });
    const names = raw.context.enumerateIndirectObjects().flatMap(([, value]) => {
      if (!(value instanceof PDFDict) || value.get(PDFName.of("Type")) !== PDFName.of("Font")) return [];
      return [String(value.get(PDFName.of("BaseFont")))];
    });
    expect(names.length).toBeGreaterThan(3);
    for (const name of names) expect(name).toMatch(/^\/[A-Z]{6}\+(SourceSans3|Literata)/);
  });

  it("make no page wider than its window, on a phone and on a desk", async () => {
    const page = await site.browser.newPage();
    const found: string[] = [];
    const files = readdirSync(site.dist, { recursive: true, encoding: "utf8" }).filter((file) =>
      file.endsWith(".html"),
    );
    expect(files.length).toBeGreaterThan(20);
    for (const file of files) {
      for (const width of [390, 1280]) {
        await page.setViewport({ width, height: 900 });
        await page.goto(site.host.site + file, { waitUntil: "load" });
        found.push(...(await page.evaluate(pageOverflow)).map((fault) => `${file} at ${width} px: ${fault}`));
      }
    }
    await page.close();
    expect(found).toEqual([]);
  });
});

/** A text without spaces and the hidden places where a word may break. */
function bare(text: string): string {
  return text.replace(/[\s\u200b]+/g, "");
}
