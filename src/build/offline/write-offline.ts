import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import {
  KIT_LIST,
  type ListedKit,
  listSite,
  type SiteFile,
  type SiteList,
  WORKER,
} from "../../output/offline/site-list.ts";
import type { KitFacts } from "../../output/views/kit-card.ts";
import { CLASSIC_SCRIPT } from "../bundle/classic-script.ts";
import type { KitEntry } from "../library/kit-entry.ts";
import { codeKey } from "../store/code-keys.ts";
import { filesBelow } from "../store/files-below.ts";
import { keyOf, nameOf, type Store } from "../store/store.ts";

/** The worker's own module. */
const WORKER_ENTRY = join(import.meta.dirname, "../../page/offline/offline-worker.ts");

/** What is known of a built site before it is listed. */
export interface BuiltSite {
  readonly output: string;
  readonly kits: readonly Pick<KitEntry, "slug" | "card">[];
  /** Names of contents that are known already, by paths below the site. */
  readonly names: ReadonlyMap<string, string>;
  readonly store: Store;
}

/** Lets a built site work without network. The last step of a build: it lists every file. */
export async function writeOffline({ output, kits, names, store }: BuiltSite): Promise<SiteList> {
  const known = Object.fromEntries(kits.map(({ slug, card }) => [slug, listed(card.kit)]));
  const { site, kits: lists } = listSite(filesOf(output, names), nameOf, known);
  for (const [slug, list] of Object.entries(lists)) writeFileSync(join(output, "kits", slug, KIT_LIST), list);
  writeFileSync(join(output, WORKER), await workerOf(site, store));
  return site;
}

/** While serving, pages change without a list: a worker that an earlier build left there takes itself away. */
export function retireWorker(output: string): void {
  const lines = [
    'self.addEventListener("install", () => self.skipWaiting());',
    'self.addEventListener("activate", (event) => event.waitUntil(self.registration.unregister()));',
  ];
  writeFileSync(join(output, WORKER), `${lines.join("\n")}\n`);
}

function listed({ versions, fit }: KitFacts): ListedKit {
  const newest = versions[0];
  return { edition: newest && { version: newest.version, date: newest.date }, byCorners: fit.foldStyle === "corner" };
}

async function workerOf(site: SiteList, store: Store): Promise<Uint8Array> {
  const key = keyOf("worker", codeKey([import.meta.filename, WORKER_ENTRY]), site);
  const kept = store.take(key)?.files[0]?.bytes;
  if (kept) return kept;
  const { outputFiles } = await build({
    entryPoints: [WORKER_ENTRY],
    ...CLASSIC_SCRIPT,
    define: { SITE: JSON.stringify(site) },
    write: false,
  });
  const bytes = outputFiles[0]!.contents;
  store.put(key, { files: [{ path: WORKER, bytes, name: nameOf(bytes) }], data: undefined });
  return bytes;
}

function filesOf(output: string, names: ReadonlyMap<string, string>): SiteFile[] {
  return filesBelow(output).map(({ path, file }) => {
    const name = names.get(path) ?? nameOf(readFileSync(file));
    return { path, name, bytes: () => bytesKept(path, readFileSync(file)) };
  });
}

/** How many bytes a file takes on a device, which packs what is text. */
function bytesKept(path: string, contents: Buffer): number {
  return /\.(html|css|js|json|svg|csv|xml|webmanifest|txt)$/.test(path) ? gzipSync(contents).length : contents.length;
}
