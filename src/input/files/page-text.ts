import { toldOfFile } from "./file-message.ts";
import { readText } from "./read-file.ts";
import type { SiteFile } from "./site-file.ts";

/** The text of a file that begins with a front matter. @throws KitError */
export function pageText(source: Omit<SiteFile, "kind">): string {
  return toldOfFile(() => readText({ ...source, kind: "page" }));
}
