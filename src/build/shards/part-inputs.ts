import { join } from "node:path";
import { slugOf } from "../../input/files/folders.ts";
import type { PartInputs } from "../../input/part/part-manifest.ts";
import { URL_VARIABLE } from "../../input/settings/settings.ts";
import { browserVersion } from "../browser/find-browser.ts";
import type { SiteFacts } from "../library/site-facts.ts";
import { folderKey } from "../store/folder-key.ts";
import { keyOf } from "../store/store.ts";
import type { WholeSite } from "./whole-site.ts";

/** The program's folder, and what of it makes sites. */
const PROGRAM = join(import.meta.dirname, "../../..");
const OF_PROGRAM = ["src", "layouts", ".eleventy.js", "package-lock.json"];

/** What all parts of a site share. */
export interface SharedInputs {
  readonly facts: SiteFacts;
  readonly whole: WholeSite;
  /** Folders of all kits of the site. */
  readonly folders: readonly string[];
  readonly packets: boolean;
}

/** Names what all parts of a site are made from: parts are joined where all of these are the same. */
export async function partInputs({ facts, whole, folders, packets }: SharedInputs): Promise<PartInputs> {
  return {
    content: keyOf(facts.content, whole),
    program: keyOf(
      process.version,
      OF_PROGRAM.map((name) => folderKey(join(PROGRAM, name), PROGRAM)),
    ),
    address: process.env[URL_VARIABLE] ?? "",
    browser: packets ? await browserVersion() : "",
    kits: keyOf(folders.map(slugOf)),
  };
}
