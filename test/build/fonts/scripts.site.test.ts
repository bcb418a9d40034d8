import { spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { PDFDict, PDFDocument, PDFName } from "@cantoo/pdf-lib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { stringify } from "yaml";
import { fixtureFrontMatter } from "../../input/kit/kit-folders.ts";
import { commandWords } from "../../site/command.ts";
import { makeProject, type Project } from "../../site/project.ts";
import { type OpenedSite, openSite } from "../../site/shared-site.ts";
import { readPdf } from "../print/read-pdf.ts";

const HEBREW = createRequire(import.meta.url).resolve(
  "@fontsource/noto-sans-hebrew/files/noto-sans-hebrew-hebrew-400-normal.woff2",
);
const KIT = "content/kits/little-gull/index.md";
const TITLE = "ירח ושחף";

function check(project: Project): { readonly code: number | null; readonly told: string } {
  const options = { cwd: project.folder, encoding: "utf8" } as const;
  const { status, stdout, stderr } = spawnSync(process.execPath, commandWords("src/build/check.ts"), options);
  return { code: status, told: (stdout + stderr).replace(/[\u2068\u2069]/g, "") };
}

describe("a site in a script that the program has no font for", () => {
  let project: Project;
  let site: OpenedSite;
  beforeAll(() => {
    project = makeProject({ kits: ["little-gull"] });
    const matter = { ...fixtureFrontMatter("little-gull"), title: TITLE, summary: "Łódź, Ирина, Ώρα" };
    project.write(KIT, `---\n${stringify(matter)}---\nA moon, 月.\n`);
  });
  afterAll(async () => {
    await site?.close();
    project?.remove();
  });

  it("is told by the check with file, line and field, wrong where it is printed and a warning where not", () => {
    const { code, told } = check(project);
    expect(code).not.toBe(0);
    expect(told).toContain(`${KIT}:2:1  title: “י” (U+05D9), “ר” (U+05E8), “ח” (U+05D7) and 3 other characters`);
    expect(told).not.toContain("summary");
    project.write(KIT, project.read(KIT).replace(TITLE, "Moon"));
    const second = check(project);
    expect(second.code).toBe(0);
    expect(second.told).toContain("“月” (U+6708)");
    project.write(KIT, project.read(KIT).replace("title: Moon", `title: ${TITLE}`));
  });

  it("is told of a language's words once for each file", () => {
    project.write("content/words/en/own.ftl", "kit-supplies = 材料\nkit-cautions = 注意\n");
    const { code, told } = check(project);
    expect(code).not.toBe(0);
    expect(told).toContain("content/words/en/own.ftl:1:1  kit-supplies: “材” (U+6750) and “料” (U+6599)");
    expect(told).not.toContain("kit-cautions");
    project.write("content/words/en/own.ftl", "");
  });

  it("says of a font that is none, or is not there, where it is named", () => {
    mkdirSync(join(project.folder, "content/fonts"), { recursive: true });
    writeFileSync(join(project.folder, "content/fonts/none.woff2"), "wOF2 and nothing else");
    for (const [file, fault] of [
      ["none.woff2", "no font"],
      ["lost.ttf", "not there"],
    ] as const) {
      project.write("content/site.yaml", `title: Quay\nfonts:\n  - file: ${file}\n`);
      const { code, told } = check(project);
      expect(code).not.toBe(0);
      expect(told).toContain("content/site.yaml:3:5  fonts[1].file: ");
      expect(told).toContain(fault);
    }
    for (const file of ["../site.yaml", ".hidden", "a/b.ttf"]) {
      project.write("content/site.yaml", `fonts: [{ file: "${file}" }]\n`);
      expect(check(project).told).toContain("fonts[1].file");
    }
  });

  it("prints and shows it in the font that its settings name, from right to left", async () => {
    copyFileSync(HEBREW, join(project.folder, "content/fonts/hebrew.woff2"));
    project.write("content/site.yaml", "title: Quay\nfonts: [{ file: hebrew.woff2, licence: OFL-1.1 }]\n");
    const { code, stderr } = project.build();
    expect(code, stderr).toBe(0);
    const packet = join(project.folder, "dist/kits/little-gull/packet-a4.pdf");
    const raw = await PDFDocument.load(readFileSync(packet), { updateMetadata: false });
    const names = raw.context.enumerateIndirectObjects().flatMap(([, value]) => {
      if (!(value instanceof PDFDict) || value.get(PDFName.of("Type")) !== PDFName.of("Font")) return [];
      return [String(value.get(PDFName.of("BaseFont"))).slice(8)];
    });
    expect(names.filter((name) => !/^(SourceSans3|Literata|NotoSansHebrew)/.test(name))).toEqual([]);
    expect(names.some((name) => name.startsWith("NotoSansHebrew"))).toBe(true);
    const { pages } = await readPdf(packet);
    expect(pages[0]!.text).toContain("Łódź, Ирина, Ώρα");
    site = await openSite(project.folder);
    const page = await site.device.newPage();
    const fonts: string[] = [];
    page.on("response", (answer) => {
      const { pathname } = new URL(answer.url());
      if (pathname.includes("/assets/fonts/")) fonts.push(pathname.split("/").at(-1)!);
    });
    await page.goto(`${site.host.site}kits/little-gull/index.html`, { waitUntil: "networkidle0" });
    const heading = await page.$eval("h1", (one) => getComputedStyle(one).direction);
    expect(heading).toBe("rtl");
    expect(fonts).toContain("own-1.woff2");
    expect(fonts).toContain("source-sans-3-cyrillic.woff2");
    expect(fonts).not.toContain("source-sans-3-vietnamese.woff2");
    expect(fonts).not.toContain("source-sans-3-400.woff2");
    await page.close();
  });
});
