import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { KeptFiles } from "../kept/kept-files.ts";
import { packageVersion } from "../kept/package-version.ts";
import type { PrintJob } from "./print-job.ts";

/** What makes PDFs, beside the browser. */
const PACKAGES = ["puppeteer", "@cantoo/pdf-lib"] as const;

/** The program's rooms that take part in printing. */
const ROOMS = [import.meta.dirname, join(import.meta.dirname, "../browser")];

/** Names PDFs by all that they are made from: the page, its pictures, the site's style sheets and fonts, and what prints. */
export class PacketKeys {
  /** The same for all pages of a site. */
  readonly #common: Buffer;

  /** `also` names what else decides how a PDF comes out. */
  constructor(output: string, also: readonly string[]) {
    const hash = createHash("sha256");
    hash.update(JSON.stringify([PACKAGES.map(packageVersion), also]));
    for (const folder of [join(output, "bundle"), join(output, "assets/fonts"), ...ROOMS])
      for (const file of readdirSync(folder).sort()) hash.update(readFileSync(join(folder, file)));
    this.#common = hash.digest();
  }

  of({ page, pictures, title, footer, paper }: PrintJob): string {
    const hash = createHash("sha256").update(this.#common);
    for (const file of [page, ...pictures]) hash.update(createHash("sha256").update(readFileSync(file)).digest());
    return KeptFiles.key(hash.update(JSON.stringify([title, footer, paper])));
  }
}
