import { kitKey } from "../kits/read-kit-entry.ts";
import type { KitNews, ReadKits } from "../library/kit-entry.ts";
import type { SiteFacts } from "../library/site-facts.ts";

const WAITING: KitNews = { entry: undefined, isWaiting: true, broken: [], letters: [], photos: [] };

/** What is known of kits, by their folders, as long as nothing that they are read from changes. */
export class HeldKits {
  readonly #known = new Map<string, { readonly key: string; readonly news: KitNews }>();

  /** Gives what is known of kits, or kept of them: the others wait. */
  knownReader(facts: SiteFacts, kept: (folder: string) => KitNews | undefined): ReadKits {
    return (folders) =>
      Promise.resolve(
        folders.map((folder): KitNews => {
          const key = kitKey(folder, facts);
          const known = this.#known.get(folder);
          if (known?.key === key) return known.news;
          const news = kept(folder);
          if (news) this.#known.set(folder, { key, news });
          return news ?? WAITING;
        }),
      );
  }

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
