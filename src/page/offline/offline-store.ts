import type { KeepFailure } from "../../output/offline/messages.ts";
import type { FileNames } from "../../output/offline/site-list.ts";
import { addressOf, keptAddress, pathIn } from "./paths.ts";

/** So many files are fetched at a time. */
const AT_ONCE = 6;

/** Something of the site cannot be kept. */
export class KeepError extends Error {
  readonly failure: KeepFailure;
  constructor(failure: KeepFailure) {
    super(failure.kind);
    this.failure = failure;
  }
}

/** The files of one site that a device keeps, each under its path and the name of its contents. */
export class OfflineStore {
  #site: string;

  constructor(site: string) {
    this.#site = site;
  }

  async find(path: string, name: string): Promise<Response | undefined> {
    return (await this.#cache()).match(keptAddress(this.#site, path, name));
  }

  /** Keeps all of some files below a folder. What is there is not fetched again. @throws KeepError at the first that cannot be kept, and what fetching and the cache throw */
  async keepAll(folder: string, files: FileNames): Promise<void> {
    const waiting = Object.entries(files);
    const work = async (): Promise<void> => {
      for (let next = waiting.pop(); next; next = waiting.pop()) await this.keep(`${folder}${next[0]}`, next[1]);
    };
    await Promise.all(Array.from({ length: AT_ONCE }, work));
  }

  /** Keeps one file, from a response where there is one. @throws KeepError where it is absent or has other contents, and what fetching and the cache throw */
  async keep(path: string, name: string, response?: Response): Promise<void> {
    if (await this.find(path, name)) return;
    const got = response ?? (await fetch(addressOf(this.#site, path), { cache: "no-cache" }));
    if (!got.ok) throw new KeepError({ kind: "absent", path });
    const bytes = await got.arrayBuffer();
    if ((await nameOf(bytes, name.length)) !== name) throw new KeepError({ kind: "other-version", path });
    const type = got.headers.get("content-type") ?? "application/octet-stream";
    const cache = await this.#cache();
    await cache.put(keptAddress(this.#site, path, name), new Response(bytes, { headers: { "content-type": type } }));
  }

  /** Paths of everything kept, of whatever version. */
  async paths(): Promise<string[]> {
    return (await this.#addresses()).flatMap((address) => pathIn(this.#site, address) ?? []);
  }

  /** Tells whether all of some files are kept. */
  async holds(): Promise<(folder: string, files: FileNames) => boolean> {
    const kept = new Set(await this.#addresses());
    return (folder, files) =>
      Object.entries(files).every(([path, name]) => kept.has(keptAddress(this.#site, `${folder}${path}`, name)));
  }

  /** Drops what is not among these files. */
  async prune(wanted: readonly (readonly [folder: string, files: FileNames])[]): Promise<void> {
    const addresses = new Set(
      wanted.flatMap(([folder, files]) =>
        Object.entries(files).map(([path, name]) => keptAddress(this.#site, `${folder}${path}`, name)),
      ),
    );
    const cache = await this.#cache();
    for (const address of await this.#addresses()) if (!addresses.has(address)) await cache.delete(address);
  }

  async #addresses(): Promise<string[]> {
    return (await (await this.#cache()).keys()).map((request) => request.url);
  }

  /** Caches belong to a whole host: another site in another folder has its own. */
  #cache(): Promise<Cache> {
    return caches.open(`leaflight ${new URL(this.#site).pathname}`);
  }
}

/** The beginning of the contents' SHA-256, as the build names files. */
async function nameOf(bytes: ArrayBuffer, letters: number): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return [...digest]
    .map((byte) => byte.toString(16).padStart(2, "0"))
    .join("")
    .slice(0, letters);
}
