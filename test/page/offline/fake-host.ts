import { createHash } from "node:crypto";
import { vi } from "vitest";
import { listSite, type SiteList } from "../../../src/output/offline/site-list.ts";
import { OfflineAnswers } from "../../../src/page/offline/offline-answers.ts";
import { OfflineKits } from "../../../src/page/offline/offline-kits.ts";
import { OfflineStore } from "../../../src/page/offline/offline-store.ts";

export const SITE = "https://library.example/workshop/";

/** A file that a host has, or how it answers in its place. */
export type Held = string | (() => Response);

/** The beginning of a text's SHA-256, by Node's own. */
const nameOf = (text: string): string => createHash("sha256").update(text).digest("hex").slice(0, 16);

/** One version of a site: its files, its list, and its worker, which says what version it is. */
export interface SiteVersion {
  readonly files: Readonly<Record<string, string>>;
  readonly list: SiteList;
}

export function siteVersion(files: Readonly<Record<string, string>>): SiteVersion {
  const named = Object.entries(files).map(([path, text]) => ({ path, name: nameOf(text), bytes: () => text.length }));
  const { site, kits } = listSite(named, nameOf, {
    gull: { edition: { version: "1.2", date: "2026-05-01" } },
    herring: { byCorners: true },
  });
  const lists = Object.entries(kits).map(([slug, text]) => [`kits/${slug}/offline.json`, text]);
  const worker = `caches.open("leaflight /workshop/"); const version = "${site.version}";`;
  return { files: { ...files, ...Object.fromEntries(lists), "sw.js": worker }, list: site };
}

/** A device and a host in place of the browser's: `held` is what the host has now, undefined while it is gone. */
export class FakeHost {
  held: Readonly<Record<string, Held>> | undefined = {};
  readonly asked: string[] = [];
  /** So many more files find room. */
  room = Number.POSITIVE_INFINITY;
  readonly kept = new Map<string, Response>();

  /** Puts itself in the place of `fetch` and `caches`. */
  install(): void {
    vi.stubGlobal("fetch", async (asked: Request | URL | string) => this.#answer(asked));
    const cache = {
      match: async (address: string) => this.kept.get(address)?.clone(),
      put: async (address: string, response: Response) => {
        if (this.room <= 0) throw new DOMException("no room", "QuotaExceededError");
        this.room -= 1;
        this.kept.set(address, response);
      },
      delete: async (address: string) => this.kept.delete(address),
      keys: async () => [...this.kept.keys()].map((url) => ({ url })),
    };
    vi.stubGlobal("caches", { open: async () => cache });
  }

  /** What is kept, by path, sorted. */
  get paths(): string[] {
    return [...this.kept.keys()].map((address) => new URL(address).pathname.slice("/workshop/".length)).sort();
  }

  #answer(asked: Request | URL | string): Response {
    const url = new URL(typeof asked === "object" && "url" in asked ? asked.url : String(asked));
    const path = url.pathname.slice("/workshop/".length) || "index.html";
    this.asked.push(path);
    if (!this.held) throw new TypeError("failed to fetch");
    const held = this.held[path];
    if (held === undefined) return new Response("<h1>Not here</h1>", { status: 404 });
    return typeof held === "string" ? new Response(held, { headers: { "content-type": "x/y" } }) : held();
  }
}

/** A worker of this version on a device. */
export function workerOf({ list }: SiteVersion): { readonly kits: OfflineKits; readonly answers: OfflineAnswers } {
  const store = new OfflineStore(SITE);
  const kits = new OfflineKits(store, list);
  return { kits, answers: new OfflineAnswers(SITE, list, store, kits) };
}
