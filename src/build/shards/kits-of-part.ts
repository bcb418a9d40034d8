import { pathBelow, slugOf } from "../../input/files/folders.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import { kitFolders } from "../library/kit-folders.ts";
import type { AskedPart } from "./asked-part.ts";
import { dealtTo } from "./deal.ts";

/** The names of a part's kits, where `folders` are those of all kits of the site. @throws BuildError for a kit that is not there, or a draft */
export function kitsOfPart(base: string, part: AskedPart, folders: readonly string[]): string[] {
  if ("shard" in part) return dealtTo(part.shard, folders.map(slugOf));
  for (const folder of kitFolders(base, { kits: part.only }).folders)
    if (!folders.includes(folder)) throw new BuildError(say.sitePartDraft({ folder: pathBelow(base, folder) }));
  return [...part.only];
}
