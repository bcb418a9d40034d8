import type { Reason } from "../../output/offline/messages.ts";
import type { SiteList } from "../../output/offline/site-list.ts";
import { nameIn, type OfflineKits } from "./offline-kits.ts";
import { lookAtHost } from "./offline-look.ts";
import type { OfflineStore } from "./offline-store.ts";
import { absentAddress, addressOf, kitOf, pathIn } from "./paths.ts";

/** What a page may be given for what it asks for: of the kept version, or from the host. */
export class OfflineAnswers {
  #site: string;
  #list: SiteList;
  #store: OfflineStore;
  #kits: OfflineKits;

  constructor(site: string, list: SiteList, store: OfflineStore, kits: OfflineKits) {
    this.#site = site;
    this.#list = list;
    this.#store = store;
    this.#kits = kits;
  }

  /**
   * A kit that is kept whole is all of its version: what of it is not kept is taken from the host only where it is that
   * version's. Of other kits page and data are the host's. Everything else comes from what is kept first. `later` is told of
   * work that goes on after the answer.
   */
  async answer(request: Request, path: string, later: (work: Promise<unknown>) => void): Promise<Response> {
    const kit = kitOf(path);
    const own = kit && (await this.#nameInKit(kit, path));
    if (kit && own && (await this.#kits.isWhole(kit)))
      return (await this.#store.find(path, own)) ?? this.#checked(request, path, own);
    const name = own ?? this.#name(path);
    const kept = name && (await this.#store.find(path, name));
    const ofHost = kit !== undefined && (request.mode === "navigate" || this.#asks(request) === kit);
    if (kept && !ofHost) return kept;
    try {
      const response = await fetch(request);
      if (name && response.ok && !path.endsWith(".pdf"))
        later(this.#store.keep(path, name, { response: response.clone() }).catch(() => undefined));
      return response;
    } catch (error) {
      if (kept) return kept;
      if (request.mode !== "navigate") throw error;
      const isFolder = (await this.#nameOf(`${path}/index.html`)) !== undefined;
      return Response.redirect(isFolder ? `${addressOf(this.#site, path)}/` : absentAddress(this.#site, path));
    }
  }

  /** A file from the host, whole and of this version, or the page that says why there is none. */
  async #checked(request: Request, path: string, name: string): Promise<Response> {
    try {
      const response = await fetch(addressOf(this.#site, path), { cache: "no-cache" });
      const bytes = await this.#store.bytesOf(response, name);
      if (bytes)
        return new Response(bytes, { headers: { "content-type": response.headers.get("content-type") ?? "" } });
    } catch {
      // What the host does is looked at below.
    }
    const state = await lookAtHost(this.#site, this.#list.version);
    const why: Reason = state === "same" ? "wrong" : state;
    return request.mode === "navigate" ? Response.redirect(absentAddress(this.#site, path, why)) : Response.error();
  }

  /** The kit whose page asks. */
  #asks({ referrer }: Request): string | undefined {
    return URL.canParse(referrer) ? kitOf(pathIn(this.#site, referrer) ?? "") : undefined;
  }

  /** The name of a file's contents in this version; undefined for what is in no list that is here. */
  async #nameOf(path: string): Promise<string | undefined> {
    const kit = kitOf(path);
    return (kit && (await this.#nameInKit(kit, path))) ?? this.#name(path);
  }

  #name(path: string): string | undefined {
    return nameIn(this.#list.shell, path) ?? nameIn(this.#list.seen, path);
  }

  async #nameInKit(kit: string, path: string): Promise<string | undefined> {
    const list = await this.#kits.listOf(kit);
    const inside = path.slice(`kits/${kit}/`.length);
    return list && (nameIn(list.files, inside) ?? nameIn(list.rest, inside));
  }
}
