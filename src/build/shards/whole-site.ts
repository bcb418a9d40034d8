import { join } from "node:path";
import { isOver } from "../../core/class/class-state.ts";
import { classMatter } from "../../input/class/schema.ts";
import { contentPath } from "../../input/files/content-folder.ts";
import { foldersIn, pathBelow } from "../../input/files/folders.ts";
import { readFrontMatter } from "../../input/files/front-matter.ts";
import { KitError } from "../../input/files/message.ts";
import { pageText } from "../../input/files/page-text.ts";
import { readGuide } from "../../input/guide/read-guide.ts";
import { frontMatter } from "../../input/kit/schema.ts";
import type { Surroundings } from "../library/page-source.ts";
import type { SiteFacts } from "../library/site-facts.ts";

/** What of the whole site a part's pages show. */
export type WholeSite = Pick<Surroundings, "hasGuide" | "hasFeed">;

/** Finds out what the whole site has from what its folders state: no kit is computed for it. `folders` are those of all its kits. */
export function wholeSite({ base, settings }: SiteFacts, folders: readonly string[]): WholeSite {
  const classes = foldersIn(join(base, contentPath("classes")), base);
  return {
    hasGuide: readGuide(base, settings.language).made.length > 0,
    hasFeed:
      settings.url !== undefined &&
      (folders.some((folder) => hasVersions(base, folder)) || classes.some((folder) => isAnnounced(base, folder))),
  };
}

function hasVersions(base: string, folder: string): boolean {
  const { data } = frontMatter.safeParse(stated(base, folder, "versions"));
  return (data?.versions.length ?? 0) > 0;
}

function isAnnounced(base: string, folder: string): boolean {
  const { data } = classMatter.safeParse(stated(base, folder, "announced"));
  return data?.announced !== undefined && !(data.state !== undefined && isOver(data.state));
}

/** A folder's front matter where it has a key; what cannot be read is told by who reads it for use. */
function stated(base: string, folder: string, key: string): unknown {
  const file = pathBelow(base, join(folder, "index.md"));
  try {
    const text = pageText({ base, file, home: pathBelow(base, folder) });
    return text.includes(key) ? readFrontMatter(file, text).value : undefined;
  } catch (error) {
    if (error instanceof KitError) return undefined;
    throw error;
  }
}
