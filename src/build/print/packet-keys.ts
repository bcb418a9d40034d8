import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { countedPlan } from "../../output/parts/print-plan.ts";
import { KeptFiles } from "../kept/kept-files.ts";
import { usedPackage } from "../kept/used-package.ts";
import type { PrintJob } from "./print-job.ts";

/** What makes PDFs, beside the browser. */
const PACKAGES = ["puppeteer", "@cantoo/pdf-lib"] as const;

/** The program's rooms that take part in printing. */
const ROOMS = [import.meta.dirname, join(import.meta.dirname, "../browser")];

/** Names PDFs by all that they are made from: the page, its pictures, the site's style sheets and fonts, and what prints. */
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
    for (const folder of [join(output, "bundle"), join(output, "assets/fonts"), ...ROOMS])
      for (const file of readdirSync(folder).sort()) hash.update(readFileSync(join(folder, file)));
    this.#common = hash.digest();
  }

  of({ page, pictures, title, footer, paper, without }: PrintJob): string {
    const hash = createHash("sha256").update(this.#common);
    const [html, ...shown] = [page, ...pictures].map((file) => readFileSync(file));
    for (const bytes of [html!, ...shown]) hash.update(createHash("sha256").update(bytes).digest());
    const address = hasLinks(html!.toString("utf8")) ? this.#address : "";
    return KeptFiles.key(hash.update(JSON.stringify([title, footer, paper, address, without])));
  }
}

/** Whether anything on the sheets is a link; what stands before them is not printed. */
function hasLinks(html: string): boolean {
  return html.includes("<a ", html.indexOf("<main"));
}
