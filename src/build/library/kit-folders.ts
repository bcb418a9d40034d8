import { join } from "node:path";
import { contentPath } from "../../input/files/content-folder.ts";
import { foldersIn, slugOf } from "../../input/files/folders.ts";
import { nearestName } from "../../input/files/nearest-name.ts";
import { nameList } from "../../input/files/short.ts";
import { type Draft, draftIn } from "../../input/kit/drafts.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import type { Opening } from "./opening.ts";

/** Folders of kits to read, and the drafts that are left out. */
export interface KitFolders {
  readonly folders: readonly string[];
  readonly drafts: readonly Draft[];
}

/** @throws BuildError for a kit that is asked for and not there; KitError where the folders cannot be listed */
export function kitFolders(base: string, { kits = [], drafts = "leave out" }: Opening): KitFolders {
  const all = foldersIn(join(base, contentPath("kits")), base);
  if (kits.length > 0) return { folders: kits.map((kit) => folderOf(kit, all)), drafts: [] };
  const found = all.map((folder) => ({ folder, draft: draftIn(folder, base) }));
  const isTaken = (draft: Draft | undefined): boolean => !draft || (drafts === "take" && draft.why === "stated");
  return {
    folders: found.filter(({ draft }) => isTaken(draft)).map(({ folder }) => folder),
    drafts: found.flatMap(({ draft }) => (draft && !isTaken(draft) ? [draft] : [])),
  };
}

function folderOf(kit: string, all: readonly string[]): string {
  const found = all.find((one) => slugOf(one) === kit);
  if (found !== undefined) return found;
  const folder = contentPath(`kits/${kit}`);
  const names = all.map(slugOf);
  const meant = nearestName(kit, names);
  if (meant !== undefined) throw new BuildError(say.askedKitMeant({ folder, meant }));
  throw new BuildError(
    names.length > 0 ? say.askedKit({ folder, kits: nameList(names) }) : say.askedNoKits({ folder }),
  );
}
