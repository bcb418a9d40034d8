import { PDFDict, PDFDocument, PDFName, PDFString } from "@cantoo/pdf-lib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { BrowserError } from "../../../src/build/browser/browser-error.ts";
import { findBrowser } from "../../../src/build/browser/find-browser.ts";
import { ownName } from "../../../src/build/making/owner.ts";
import { OverflowError } from "../../../src/build/print/print-error.ts";
import { type Printing, printEach } from "../../../src/build/print/printing.ts";
import { processesWith } from "../browser/processes.ts";
import { type MadeSite, madeSite } from "./made-site.ts";

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

  it("prints the same bytes again, and again where the browser was killed on the way", async () => {
    const first: Uint8Array[] = [];
    await printEach(printing, jobs(), (_, pdf) => first.push(pdf));
    const second: Uint8Array[] = [];
    await printEach(printing, jobs(), (_, pdf) => {
      second.push(pdf);
      if (second.length === 1) for (const number of own()) process.kill(number, "SIGKILL");
    });
    expect(second).toEqual(first);
    expect(own()).toEqual([]);
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
