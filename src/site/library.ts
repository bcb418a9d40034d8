import { join } from "node:path";
import { readClasses } from "../class/read-classes.ts";
import { type KitFolder, readKits } from "../kit/read-kit.ts";
import type { Caution } from "./cautions.ts";
import { type ClassView, viewClass } from "./classes/class-view.ts";
import { type KitView, viewKit } from "./kit-view.ts";
import { readCautions } from "./read-cautions.ts";

/** All kits and classes of a site, computed once a build; templates look them up by slug. */
export interface Library {
  readonly views: readonly KitView[];
  readonly classes: readonly ClassView[];
  readonly cautions: readonly Caution[];
  readonly view: (slug: string) => KitView;
}

/** Reads `content` under the project folder `base`. @throws KitError */
export function openLibrary(base: string): Library {
  const folders: KitFolder[] = readKits(join(base, "content/kits"), base);
  const cautions = readCautions(join(base, "content/words/cautions.yaml"));
  const views = folders.map((folder) => viewKit(folder, cautions));
  const kits = folders.map((folder) => folder.kit);
  const siteUrl = process.env["LEAFLIGHT_SITE_URL"];
  return {
    views,
    classes: readClasses(join(base, "content/classes"), base, kits).map((plan) =>
      viewClass(plan, views, cautions, siteUrl),
    ),
    cautions,
    view: (slug) => {
      const found = views.find((view) => view.slug === slug);
      if (!found) throw new Error(`no kit "${slug}"`);
      return found;
    },
  };
}
