import { contentPath } from "../../input/files/content-folder.ts";
import type { KitMessage } from "../../input/files/message.ts";
import type { KitStageName } from "../kits/kit-stages.ts";
import type { KitEntry } from "../library/kit-entry.ts";

/** Kits, and the stages that can be made of all of them. */
export interface MakeableStages<Kit> {
  readonly kits: readonly Kit[];
  readonly stages: readonly KitStageName[];
}

/** Asked stages of kits as far as they can be made: photos that cannot be read were told when the site was read, and keep nothing else back. */
export function makeableStages<Kit extends Pick<KitEntry, "slug">>(
  kits: readonly Kit[],
  asked: readonly KitStageName[],
  photoMessages: readonly Pick<KitMessage, "file">[],
): MakeableStages<Kit>[] {
  const told = new Set(photoMessages.map(({ file }) => file));
  const { sound = [], unsound = [] } = Object.groupBy(kits, ({ slug }) =>
    told.has(contentPath(`kits/${slug}/index.md`)) ? "unsound" : "sound",
  );
  const all = [
    { kits: sound, stages: asked },
    { kits: unsound, stages: asked.filter((stage) => stage !== "photos") },
  ];
  return all.filter((some) => some.kits.length > 0 && some.stages.length > 0);
}
