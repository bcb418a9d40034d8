import { join } from "node:path";
import { readCautions } from "../input/cautions/read-cautions.ts";
import { readClasses } from "../input/class/read-classes.ts";
import { type KitFolder, readKits } from "../input/kit/read-kit.ts";
import { readSettings } from "../input/settings/read-settings.ts";
import { type SiteSettings, URL_VARIABLE } from "../input/settings/settings.ts";
import { readWords, SOURCE } from "../input/words/read-words.ts";
import type { Caution } from "../output/views/cautions.ts";
import { type ClassView, viewClass } from "../output/views/class/class-view.ts";
import { viewKit } from "../output/views/kit-view.ts";
import { type PrintedKit, withPacket } from "../output/views/packet-view.ts";
import type { Catalogue } from "../words/message.ts";
import { speak } from "../words/speak.ts";

/** All kits and classes of a site, computed once a build; templates look them up by slug. */
export interface Library {
  readonly views: readonly PrintedKit[];
  readonly classes: readonly ClassView[];
  readonly cautions: readonly Caution[];
  readonly settings: SiteSettings;
  /** The words of the site's language. */
  readonly words: Catalogue;
  readonly view: (slug: string) => PrintedKit;
}

/** Reads `content` under the project folder `base`. @throws KitError */
export function openLibrary(base: string): Library {
  speak(readWords(base, SOURCE), SOURCE);
  const settings = readSettings(base, process.env[URL_VARIABLE]);
  const words = readWords(base, settings.language);
  speak(words, settings.language);
  const folders: KitFolder[] = readKits(join(base, "content/kits"), base);
  const cautions = readCautions(join(base, "content/words/cautions.yaml"));
  const views = folders.map((folder) => withPacket(viewKit(folder, cautions)));
  const kits = folders.map((folder) => folder.kit);
  return {
    views,
    classes: readClasses(join(base, "content/classes"), base, kits).map((plan) =>
      viewClass(plan, views, cautions, settings.url),
    ),
    cautions,
    settings,
    words,
    view: (slug) => {
      const found = views.find((view) => view.slug === slug);
      if (!found) throw new Error(`no kit "${slug}"`);
      return found;
    },
  };
}
