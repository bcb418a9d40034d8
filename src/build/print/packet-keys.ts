import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { countedPlan } from "../../output/parts/print-plan.ts";
import { KeptFiles } from "../kept/kept-files.ts";
import { usedPackage } from "../kept/used-package.ts";
import type { PrintJob } from "./print-job.ts";

/** What makes PDFs, beside the browser. */
const PACKAGES = ["puppeteer", "@cantoo/pdf-lib"] as const;

/** The program's rooms that take part in printing. */
const ROOMS = [import.meta.dirname, join(import.meta.dirname, "../browser")];

/** Names PDFs by all that they are made from: what is printed of the page, its pictures and style sheets, the site's fonts, and what prints. */
export class PacketKeys {
  /** The same for all pages of a site. */
  readonly #common: Buffer;

  readonly #address: string;

  /** `browser` is the version of the browser that prints, `address` the site's, which links lead to. */
  constructor(output: string, browser: string, address = "") {
    this.#address = address;
    const hash = createHash("sha256");
    hash.update(JSON.stringify([PACKAGES.map((name) => usedPackage(name).version), browser]));
    // The words of the plan that is written when the pages are counted.
    hash.update(String(countedPlan({ gauge: 2, strips: 2, templates: 2 }, 2)));
    for (const folder of [join(output, "assets/fonts"), ...ROOMS])
      for (const file of readdirSync(folder).sort()) hash.update(readFileSync(join(folder, file)));
    this.#common = hash.digest();
  }

  of({ page, pictures, title, footer, paper, without }: PrintJob): string {
    const hash = createHash("sha256").update(this.#common);
    const html = readFileSync(page, "utf8");
    const sheets = styleSheets(html).map((href) => join(dirname(page), href));
    for (const bytes of [printed(html), ...[...pictures, ...sheets].map((file) => readFileSync(file))])
      hash.update(createHash("sha256").update(bytes).digest());
    const address = hasLinks(html) ? this.#address : "";
    return KeptFiles.key(hash.update(JSON.stringify([title, footer, paper, address, without])));
  }
}

/** A page without what its head tells programs: that names the site's address, and is not printed. */
function printed(html: string): string {
  return html.replace(/<head>[\s\S]*<\/head>/, (head) =>
    head.replace(/<(meta (property|name)|link rel="(canonical|alternate)")[^>]*>/g, ""),
  );
}

/** The addresses of a page's style sheets, from the page. */
function styleSheets(html: string): string[] {
  return [...html.matchAll(/<link rel="stylesheet" href="([^"]+)">/g)].map(([, href]) => href!);
}

/** Whether anything on the sheets is a link; what stands before them is not printed. */
function hasLinks(html: string): boolean {
  return html.includes("<a ", html.indexOf("<main"));
}
