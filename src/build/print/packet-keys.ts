import { createHash, hash } from "node:crypto";
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

/** What a page gives to the keys of its jobs. */
interface ReadPage {
  /** The hash of what is printed of it. */
  readonly printed: string;
  /** Paths of its style sheets. */
  readonly sheets: readonly string[];
  readonly hasLinks: boolean;
}

/**
 * Names PDFs by all that they are made from: what is printed of the page, its pictures and style sheets, the site's fonts, and
 * what prints. A file is read once, so it must not change while the keys are asked for.
 */
export class PacketKeys {
  /** The same for all pages of a site. */
  readonly #common: Buffer;
  readonly #address: string;
  readonly #pages = new Map<string, ReadPage>();
  readonly #files = new Map<string, string>();

  /** `browser` is the version of the browser that prints, `address` the site's, which links lead to. */
  constructor(output: string, browser: string, address = "") {
    this.#address = address;
    const common = createHash("sha256");
    common.update(JSON.stringify([PACKAGES.map((name) => usedPackage(name).version), browser]));
    // The words of the plan that is written when the pages are counted.
    for (const corners of [false, true])
      common.update(String(countedPlan({ gauge: 2, corners, strips: 2, templates: 2 }, 2)));
    for (const folder of [join(output, "assets/fonts"), ...ROOMS])
      for (const file of readdirSync(folder).sort()) common.update(readFileSync(join(folder, file)));
    this.#common = common.digest();
  }

  of({ page, pictures, title, footer, paper, both, edition }: PrintJob): string {
    const { printed, sheets, hasLinks } = this.#page(page);
    const files = [...pictures, ...sheets].map((file) => this.#file(file));
    const address = hasLinks ? this.#address : "";
    const stated = JSON.stringify([printed, files, title, footer, paper, both, address, edition]);
    return KeptFiles.key(createHash("sha256").update(this.#common).update(stated));
  }

  #page(path: string): ReadPage {
    let page = this.#pages.get(path);
    if (!page) {
      const html = readFileSync(path, "utf8");
      const sheets = styleSheets(html).map((href) => join(dirname(path), href));
      page = { printed: hash("sha256", printedOf(html)), sheets, hasLinks: hasLinks(html) };
      this.#pages.set(path, page);
    }
    return page;
  }

  #file(path: string): string {
    let name = this.#files.get(path);
    if (name === undefined) {
      name = hash("sha256", readFileSync(path));
      this.#files.set(path, name);
    }
    return name;
  }
}

/** A page without what its head tells programs: that names the site's address, and is not printed. */
function printedOf(html: string): string {
  const end = html.indexOf("</head>");
  return `${html.slice(0, end).replace(/<(meta (property|name)|link rel="(canonical|alternate)")[^>]*>/g, "")}${html.slice(end)}`;
}

/** The addresses of a page's style sheets, from the page. */
function styleSheets(html: string): string[] {
  return [...html.slice(0, html.indexOf("</head>")).matchAll(/<link rel="stylesheet" href="([^"]+)">/g)].map(
    ([, href]) => href!,
  );
}

/** Whether anything on the sheets is a link; what stands before them is not printed. */
function hasLinks(html: string): boolean {
  return html.includes("<a ", html.indexOf("<main"));
}
