import { kitKey } from "../kits/read-kit-entry.ts";
import type { KitNews, ReadKits } from "../library/kit-entry.ts";
import type { SiteFacts } from "../library/site-facts.ts";

/** What is known of kits, by their folders, as long as nothing that they are read from changes. */
export class HeldKits {
  readonly #known = new Map<string, { readonly key: string; readonly news: KitNews }>();

  /** Reads kits that are not known as they are now by `read`. */
  reader(facts: SiteFacts, read: ReadKits): ReadKits {
    return async (folders) => {
      const keys = new Map(folders.map((folder) => [folder, kitKey(folder, facts)]));
      const missing = folders.filter((folder) => this.#known.get(folder)?.key !== keys.get(folder));
      const news = missing.length > 0 ? await read(missing) : [];
      for (const [i, folder] of missing.entries())
        this.#known.set(folder, { key: news[i]!.entry?.key ?? keys.get(folder)!, news: news[i]! });
      return folders.map((folder) => this.#known.get(folder)!.news);
    };
  }
}
