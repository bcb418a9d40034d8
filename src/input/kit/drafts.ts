import { join } from "node:path";
import { pathBelow, slugOf } from "../files/folders.ts";
import { readFrontMatter } from "../files/front-matter.ts";
import { KitError } from "../files/message.ts";
import { pageText } from "../files/page-text.ts";
import { isThere } from "../files/real-path.ts";

/** A kit's folder that is not to be published yet. */
export interface Draft {
  readonly slug: string;
  /** The folder below the project. */
  readonly folder: string;
  /** Its index.md says so, or there is none yet. */
  readonly why: "stated" | "no index";
}

/** The draft in a folder of the project `base`; undefined where its kit is meant for everybody, or cannot be read at all. */
export function draftIn(folder: string, base: string): Draft | undefined {
  const file = pathBelow(base, join(folder, "index.md"));
  const draft = { slug: slugOf(folder), folder: pathBelow(base, folder) };
  if (!isThere(base, file)) return { ...draft, why: "no index" };
  return statesDraft(base, file, draft.folder) ? { ...draft, why: "stated" } : undefined;
}

function statesDraft(base: string, file: string, home: string): boolean {
  try {
    const text = pageText({ base, file, home });
    if (!text.includes("draft")) return false;
    const { value } = readFrontMatter(file, text);
    return typeof value === "object" && value !== null && "draft" in value && value.draft === true;
  } catch (error) {
    // What cannot be read is told by the reader of kits.
    if (error instanceof KitError) return false;
    throw error;
  }
}
