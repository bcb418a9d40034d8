import { contentPath } from "../../input/files/content-folder.ts";
import { readFrontMatter } from "../../input/files/front-matter.ts";
import { KitError } from "../../input/files/message.ts";
import { pageText } from "../../input/files/page-text.ts";
import type { SiteFile } from "../../input/files/site-file.ts";
import { settingsFile } from "../../input/settings/settings.ts";

/** What a file of the desk states. */
export type DeskKind = "kit" | "class" | "books" | "settings";

/** A file that the desk may read and write. */
export interface DeskFile extends SiteFile {
  readonly states: DeskKind;
}

/** A kit's or a class's folder with its name, and a file right in it. */
const INSIDE = /^(kits|classes)\/([a-z0-9]+(?:-[a-z0-9]+)*)\/([^/\\]+)$/;

/** Tables that are texts: workbooks are not written. */
const TABLE = /^[^.].*\.(csv|tsv|txt)$/i;

/**
 * The file of the desk at a path below the project `base`; undefined for every other: the desk has index.md of kits and classes, the
 * table that a class names for its seats, and the settings, whether they are there or not.
 */
export function deskFile(base: string, file: string): DeskFile | undefined {
  if (file === settingsFile()) return { base, file, home: contentPath(), kind: "settings", states: "settings" };
  const below = contentPath("");
  if (!file.startsWith(`${below}/`)) return undefined;
  const [, of, slug, name] = INSIDE.exec(file.slice(below.length + 1)) ?? [];
  if (of === undefined || name === undefined) return undefined;
  const home = contentPath(`${of}/${slug}`);
  if (name === "index.md") return { base, file, home, kind: "page", states: of === "kits" ? "kit" : "class" };
  if (of !== "classes" || !TABLE.test(name) || booksOf(base, home) !== name.normalize()) return undefined;
  return { base, file, home, kind: "table", states: "books" };
}

/** The table that the class in a folder names for its seats. */
export function booksOf(base: string, home: string): string | undefined {
  const file = `${home}/index.md`;
  try {
    const { value } = readFrontMatter(file, pageText({ base, file, home }));
    const books = typeof value === "object" && value !== null && "books" in value ? value.books : undefined;
    return typeof books === "string" ? books.normalize() : undefined;
  } catch (error) {
    if (error instanceof KitError) return undefined;
    throw error;
  }
}
