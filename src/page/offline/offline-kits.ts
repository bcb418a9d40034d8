import type { Answer } from "../../output/offline/messages.ts";
import { type Edition, type FileNames, KIT_LIST, type KitList, type SiteList } from "../../output/offline/site-list.ts";
import { isFull, KeepError, type OfflineStore } from "./offline-store.ts";

/** The kits of one version of the site that a device keeps. */
export class OfflineKits {
  #store: OfflineStore;
  #site: SiteList;
  #lists = new Map<string, KitList>();
  /** Kits whose files were found to be all there: nothing takes a part of them away. */
  #whole = new Set<string>();

  constructor(store: OfflineStore, site: SiteList) {
    this.#store = store;
    this.#site = site;
  }

  /** Keeps what a kit is chosen and worked by, or `all` of it with what that needs of the site; on a full device what was `added`, now and before, is given back. @throws KeepError, and what fetching and the cache throw */
  async keep(kit: string, all: boolean, added: string[] = []): Promise<void> {
    const name = nameIn(this.#site.kits, kit);
    if (name === undefined) throw new KeepError({ kind: "no-kit", kit });
    const folder = `kits/${kit}/`;
    try {
      await this.#store.keep(`${folder}${KIT_LIST}`, name, { added });
      const list = await this.listOf(kit);
      if (!list) return;
      await this.#store.keepAll(folder, list.files, added);
      await this.#store.keepAll("", list.shared ?? {}, added);
      if (!all) return;
      await this.#store.keepAll(folder, list.rest, added);
      await this.#store.keepAll("", this.#site.asked, added);
    } catch (error) {
      if (isFull(error)) {
        await this.#store.drop(added);
        this.#lists.delete(kit);
      }
      throw error;
    }
  }

  /** The list of a kit that is kept or was begun to be. */
  async listOf(kit: string): Promise<KitList | undefined> {
    const name = nameIn(this.#site.kits, kit);
    const known = this.#lists.get(kit);
    if (known || name === undefined) return known;
    const kept = await this.#store.find(`kits/${kit}/${KIT_LIST}`, name);
    const list = (await kept?.json()) as KitList | undefined;
    if (list) this.#lists.set(kit, list);
    return list;
  }

  /** Whether page, data and bench of a kit are all kept; the rest may be missing. */
  async isWhole(kit: string): Promise<boolean> {
    if (this.#whole.has(kit)) return true;
    const list = await this.listOf(kit);
    const whole = list !== undefined && isHeld(kit, list, await this.#store.holds());
    if (whole) this.#whole.add(kit);
    return whole;
  }

  async kept(): Promise<Pick<Answer, "kits" | "all" | "editions">> {
    const holds = await this.#store.holds();
    const kits: string[] = [];
    const all: string[] = [];
    const editions: Record<string, Edition> = {};
    for (const kit of Object.keys(this.#site.kits)) {
      const list = await this.listOf(kit);
      if (!list || !isHeld(kit, list, holds)) continue;
      kits.push(kit);
      if (list.edition) editions[kit] = list.edition;
      if (holds(`kits/${kit}/`, list.rest)) all.push(kit);
    }
    return { kits, all, editions };
  }

  /** All files of the kits that are kept, each folder with its list. */
  async files(): Promise<(readonly [string, FileNames])[]> {
    const all = await Promise.all(
      Object.entries(this.#site.kits).map(async ([kit, name]): Promise<(readonly [string, FileNames])[]> => {
        const list = await this.listOf(kit);
        const folder = `kits/${kit}/`;
        return list
          ? [
              [folder, { [KIT_LIST]: name }],
              [folder, list.files],
              [folder, list.rest],
            ]
          : [];
      }),
    );
    return all.flat();
  }
}

/** Whether all is held that a kit is chosen and worked by. */
function isHeld(
  kit: string,
  { files, shared }: KitList,
  holds: (folder: string, files: FileNames) => boolean,
): boolean {
  return holds(`kits/${kit}/`, files) && holds("", shared ?? {});
}

export function nameIn(names: FileNames, path: string): string | undefined {
  return Object.hasOwn(names, path) ? names[path] : undefined;
}
