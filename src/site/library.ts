import { join } from "node:path";
import { type KitFolder, readKits } from "../kit/read-kit.ts";
import type { Caution } from "./cautions.ts";
import { viewKit } from "./kit-view.ts";
import { type PrintedKit, withPacket } from "./packet-view.ts";
import { readCautions } from "./read-cautions.ts";

/** All kits of a site, computed once a build; templates look them up by slug. */
export interface Library {
  readonly views: readonly PrintedKit[];
  readonly cautions: readonly Caution[];
  readonly view: (slug: string) => PrintedKit;
}

/** Reads `content` under the project folder `base`. @throws KitError */
export function openLibrary(base: string): Library {
  const folders: KitFolder[] = readKits(join(base, "content/kits"), base);
  const cautions = readCautions(join(base, "content/words/cautions.yaml"));
  const views = folders.map((folder) => withPacket(viewKit(folder, cautions)));
  return {
    views,
    cautions,
    view: (slug) => {
      const found = views.find((view) => view.slug === slug);
      if (!found) throw new Error(`no kit "${slug}"`);
      return found;
    },
  };
}
