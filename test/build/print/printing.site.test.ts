import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { PDFDict, PDFDocument, PDFName, PDFString } from "@cantoo/pdf-lib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { BrowserError } from "../../../src/build/browser/browser-error.ts";
import { findBrowser } from "../../../src/build/browser/find-browser.ts";
import { ownName } from "../../../src/build/making/owner.ts";
import { OverflowError } from "../../../src/build/print/print-error.ts";
import type { FootedPaper, PrintJob } from "../../../src/build/print/print-job.ts";
import { type Printing, printEach } from "../../../src/build/print/printing.ts";
import { PAPERS } from "../../../src/output/views/paper.ts";
import { processesWith } from "../browser/processes.ts";
import { type MadeSite, madeSite } from "./made-site.ts";
import { readPdf } from "./read-pdf.ts";

const PAGE = (body: string, head = ""): string =>
  `<!doctype html><html lang="en"><head><title>p</title>${head}</head><body>${body}</body></html>`;

/** Where every link of a PDF leads; an empty text for one that leads nowhere. */
async function linksOf(pdf: Uint8Array): Promise<string[]> {
  const read = await PDFDocument.load(pdf);
  return read.context
    .enumerateIndirectObjects()
    .map(([, value]) => value)
    .filter((value) => value instanceof PDFDict)
    .filter((value) => value.get(PDFName.of("Subtype")) === PDFName.of("Link"))
    .map(
      (link) => link.lookupMaybe(PDFName.of("A"), PDFDict)?.lookupMaybe(PDFName.of("URI"), PDFString)?.asString() ?? "",
    );
}

describe("printEach", () => {
  let site: MadeSite;
  let printing: Printing;
  beforeAll(async () => {
    site = madeSite();
    const notes: string[] = [];
    printing = {
      found: await findBrowser(),
      output: site.output,
      address: undefined,
      note: (line) => notes.push(line),
    };
    for (const name of ["one", "two", "three"]) site.write(`${name}.html`, PAGE(`<p>${name}</p>`));
    site.write(
      "kits/a/links.html",
      PAGE('<a href="../b/index.html">b</a> <a href="https://host.example/c">c</a> <a href="file:///etc/hosts">d</a>'),
    );
    site.write("wide.css", "section { overflow: hidden }");
    const head = '<link rel="stylesheet" href="wide.css">';
    site.write("wide.html", PAGE(`<section data-flow><h2>Head</h2>${"x".repeat(900)}</section>`, head));
  });
  afterAll(() => site?.remove());
  const jobs = (): ReturnType<MadeSite["job"]>[] => ["one.html", "two.html", "three.html"].map(site.job);
  const own = (): number[] => processesWith(`leaflight-${ownName()}`);

  /** What a run prints, by titles. */
  const printed = async (
    with_: Partial<Printing>,
    work: readonly PrintJob[],
    done?: (count: number) => void,
  ): Promise<Record<string, Uint8Array>> => {
    const pdfs: Record<string, Uint8Array> = {};
    await printEach({ ...printing, ...with_ }, work, ({ title }, pdf) => {
      pdfs[title] = pdf;
      done?.(Object.keys(pdfs).length);
    });
    return pdfs;
  };

  it("prints the same bytes on one press and on two, and where the browser was killed on the way", async () => {
    const first = await printed({ presses: 1 }, jobs());
    expect(Object.keys(first)).toEqual(["one.html", "two.html", "three.html"]);
    expect(await printed({ presses: 2 }, jobs())).toEqual(first);
    const killed = await printed({ presses: 1 }, jobs(), (count) => {
      if (count === 1) for (const number of own()) process.kill(number, "SIGKILL");
    });
    expect(killed).toEqual(first);
    expect(own()).toEqual([]);
  });

  it("prints a page's papers and editions from one opening as from one each", async () => {
    const plan = `<ul data-print-plan='${JSON.stringify({ gauge: 1, strips: 1, templates: 0 })}'></ul>`;
    const flow = `<div data-flow>${"<p>line</p>".repeat(90)}</div>`;
    const sheets = ["gauge", "strips"].map((name) => `<section data-sheet="${name}"><h2>${name}</h2></section>`);
    site.write("sheets.css", "section, [data-flow] { break-before: page }");
    const head = '<link rel="stylesheet" href="sheets.css">';
    site.write("packet.html", PAGE(`${plan}${flow}${sheets.join("")}`, head));
    const footed = (edition: string): PrintJob[] => {
      const both = PAPERS.map((paper) => ({ paper, footer: `${edition} on ${paper.name} paper` }));
      return both.map((one) => ({
        ...site.job("packet.html"),
        ...one,
        both: [both[0]!, both[1]!],
        title: `${edition}, ${one.paper.name}`,
      }));
    };
    const work = [...footed("whole"), ...footed("bench").map((job) => ({ ...job, edition: "bench" as const }))];
    const together = await printed({ presses: 1 }, work);
    const alone = Object.assign({}, ...(await Promise.all(work.map((job) => printed({ presses: 1 }, [job])))));
    expect(together).toEqual(alone);
    const pages = async (title: string): Promise<number[]> =>
      (await PDFDocument.load(together[title]!)).getPages().map((page) => Math.round(page.getHeight()));
    // A4 and US Letter in points: 297 and 279.4 mm.
    const whole = await pages("whole, a4");
    expect(new Set(whole)).toEqual(new Set([842]));
    expect(await pages("whole, letter")).toEqual(whole.map(() => 792));
    expect(await pages("bench, letter")).toHaveLength(whole.length - 1);
  });

  it.each([
    ["short", "foot"],
    ["long", `foot ${"of many words ".repeat(12)}`],
  ])(
    "brings what it printed on one paper onto the other as if it were printed there, with a %s footer",
    async (_, foot) => {
      const [a4, letter] = PAPERS.map((paper) => ({ paper, footer: `${foot} ${paper.name}` })) as [
        FootedPaper,
        FootedPaper,
      ];
      const drawing =
        '<svg width="90mm" height="40mm"><rect x="1" y="2" width="50mm" height="20mm" fill="none" stroke="#000"/></svg>';
      const body = `<h1>Head</h1>${"<p>line</p>".repeat(60)}${drawing}`;
      site.write("both.html", PAGE(`<main><a href="both.html">here</a>${body}</main>`));
      for (const one of [a4, letter]) {
        const job = { ...site.job("both.html"), ...one };
        const pdfs = [
          await printed({ presses: 1 }, [job]),
          await printed({ presses: 1 }, [{ ...job, both: [a4, letter] }]),
        ];
        const [plain, moved] = await Promise.all(
          pdfs.map(async (pdf, i) => {
            site.write(`${i}.pdf`, "");
            writeFileSync(join(site.output, `${i}.pdf`), pdf["both.html"]!);
            return readPdf(join(site.output, `${i}.pdf`));
          }),
        );
        expect(moved!.pages.map(({ text }) => text)).toEqual(plain!.pages.map(({ text }) => text));
        for (const [i, page] of moved!.pages.entries()) {
          const other = plain!.pages[i]!;
          expect([page.width, page.height]).toEqual([other.width, other.height]);
          // Chromium rounds margins to pixels of 0.26 mm.
          const far = [
            ...page.words.flatMap(({ x, y }, k) => [x - other.words[k]!.x, y - other.words[k]!.y]),
            ...page.outlines.flatMap(({ box }, k) => [
              box.left - other.outlines[k]!.box.left,
              box.top - other.outlines[k]!.box.top,
            ]),
          ].map(Math.abs);
          expect(Math.max(...far)).toBeLessThan(0.14);
          expect(page.words.length).toBe(other.words.length);
        }
      }
    },
  );

  it("stops all presses at the first failure, and leaves no browser", async () => {
    const many = ["wide.html", "one.html", "two.html", "three.html"].map(site.job);
    const titles: string[] = [];
    const run = printEach({ ...printing, presses: 2 }, many, ({ title }) => titles.push(title));
    await expect(run).rejects.toBeInstanceOf(OverflowError);
    expect(own()).toEqual([]);
    const ended = titles.length;
    await new Promise((resolve) => setTimeout(resolve, 200));
    expect(titles).toHaveLength(ended);
  });

  it("tells in one message of a browser that is stopped on the way", async () => {
    const run = printEach({ ...printing, bounds: { start: 45_000, answer: 3000 } }, jobs(), () => {
      for (const number of own()) process.kill(number, "SIGSTOP");
    });
    await expect(run).rejects.toBeInstanceOf(BrowserError);
    await expect(run).rejects.toThrow(/did not answer within 3 seconds while it printed/);
    expect(own()).toEqual([]);
  });

  it("leads links to the site's address, or nowhere", async () => {
    for (const [address, link] of [
      ["https://folds.example.org/quay/", "https://folds.example.org/quay/kits/b/index.html"],
      [undefined, ""],
    ] as const) {
      const pdfs: Uint8Array[] = [];
      await printEach({ ...printing, address }, [site.job("kits/a/links.html")], (_, pdf) => pdfs.push(pdf));
      expect(await linksOf(pdfs[0]!)).toEqual([link, "https://host.example/c", ""]);
    }
  });

  it("measures what print media show", async () => {
    site.write("screen.css", "@media screen { section { overflow: hidden } p { width: 9000px } }");
    const head = '<link rel="stylesheet" href="screen.css">';
    site.write("screen.html", PAGE("<section data-flow><p>narrow in print</p></section>", head));
    const printed: string[] = [];
    await printEach(printing, [site.job("screen.html")], ({ title }) => printed.push(title));
    expect(printed).toEqual(["screen.html"]);
  });

  it("hands up what does not fit as figures, with the page's name", async () => {
    const run = printEach(printing, [site.job("wide.html")], () => undefined);
    await expect(run).rejects.toBeInstanceOf(OverflowError);
    const error = (await run.catch((one: unknown) => one)) as OverflowError;
    expect(error.page).toEqual({ kind: "kit", slug: "made", name: "wide.html" });
    expect(error.boxes.map(({ kind, heading }) => [kind, heading])).toContainEqual(["wide", "Head"]);
    expect(error.message).toMatch(/^wide\.html: would not print at true scale/);
  });
});
