import { join } from "node:path";
import { type KitFolder, readKits } from "../kit/read-kit.ts";
import { readSettings } from "../settings/read-settings.ts";
import { type SiteSettings, URL_VARIABLE } from "../settings/settings.ts";
import type { Caution } from "./cautions.ts";
import { type KitView, viewKit } from "./kit-view.ts";
import { readCautions } from "./read-cautions.ts";

/** All kits of a site, computed once a build; templates look them up by slug. */
export interface Library {
  readonly views: readonly KitView[];
  readonly cautions: readonly Caution[];
  readonly settings: SiteSettings;
  readonly view: (slug: string) => KitView;
}

/** Reads `content` under the project folder `base`. @throws KitError */
export function openLibrary(base: string): Library {
  const settings = readSettings(base, process.env[URL_VARIABLE]);
  const folders: KitFolder[] = readKits(join(base, "content/kits"), base);
  const cautions = readCautions(join(base, "content/words/cautions.yaml"));
  const views = folders.map((folder) => viewKit(folder, cautions));
  return {
    views,
    cautions,
    settings,
    view: (slug) => {
      const found = views.find((view) => view.slug === slug);
      if (!found) throw new Error(`no kit "${slug}"`);
      return found;
    },
  };
}
