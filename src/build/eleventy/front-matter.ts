import { parse } from "yaml";
import { currentLibrary } from "../library/current-library.ts";
import type { SiteConfig } from "./site-config.ts";

/** A page of a kit or a class: its folder's name is the kit's. */
const OF_FOLDER = /(?:^|\/)content\/(kits|classes)\/([^/]+)\/index\.md$/;

/** A page of the guide: src/input reads all of it, and Eleventy makes its pages from a list. */
const OF_GUIDE = /(?:^|\/)content\/guide\//;

/**
 * Front matters are read by src/input, which tells what is wrong with them. Eleventy takes what it can of them, and makes no
 * page of a kit or class that the library leaves out.
 */
export function registerFrontMatter(config: SiteConfig): void {
  config.setFrontMatterParsingOptions({ engines: { yaml: plainFields } });
  config.addPreprocessor("pages of the library", "md", ({ page }) => isInLibrary(page.inputPath));
}

/** The fields of a front matter; none where it is not YAML. A class's day is no date of Eleventy's. */
function plainFields(yaml: string): Readonly<Record<string, unknown>> {
  try {
    const fields: unknown = parse(yaml);
    if (typeof fields !== "object" || fields === null || Array.isArray(fields)) return {};
    return Object.fromEntries(Object.entries(fields).filter(([name]) => name !== "date"));
  } catch {
    return {};
  }
}

function isInLibrary(inputPath: string): false | undefined {
  if (OF_GUIDE.test(inputPath)) return false;
  const [, kind, slug] = OF_FOLDER.exec(inputPath) ?? [];
  if (kind === undefined) return undefined;
  const { views, classes } = currentLibrary();
  return (kind === "kits" ? views : classes).some((one) => one.slug === slug) ? undefined : false;
}
