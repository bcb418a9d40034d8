import type { KeepFailure } from "../../output/offline/messages.ts";
import type { FileNames } from "../../output/offline/site-list.ts";
import { OURS } from "./offline-look.ts";
import { packed, unpacked } from "./packed.ts";
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

/** Whether the device has no room left. */
export function isFull(error: unknown): boolean {
  return error instanceof DOMException && error.name === "QuotaExceededError";
}

/** What keeping a file may be given: a response that is there already, and a list that is told what was added. */
export interface Keeping {
  readonly response?: Response;
  readonly added?: string[];
}

/** The files of one site that a device keeps, each under its path and the name of its contents. */
export class OfflineStore {
  #site: string;

  constructor(site: string) {
    this.#site = site;
  }

  async find(path: string, name: string): Promise<Response | undefined> {
    const kept = await (await this.#cache()).match(keptAddress(this.#site, path, name));
    return kept && unpacked(kept);
  }

  /** Keeps all of some files below a folder and notes what was added. What is there is not fetched again. @throws KeepError at the first that cannot be kept, and what fetching and the cache throw */
  async keepAll(folder: string, files: FileNames, added: string[]): Promise<void> {
    const waiting = Object.entries(files);
    const work = async (): Promise<void> => {
      for (let next = waiting.pop(); next; next = waiting.pop())
        await this.keep(`${folder}${next[0]}`, next[1], { added });
    };
    const ends = await Promise.allSettled(Array.from({ length: AT_ONCE }, work));
    // Only once all have come to rest: nothing is added behind the back of whoever drops what was added.
    for (const end of ends) if (end.status === "rejected") throw end.reason;
  }

  /** Keeps one file. @throws KeepError where it is absent or has other contents, and what fetching and the cache throw */
  async keep(path: string, name: string, { response, added }: Keeping = {}): Promise<void> {
    if (await this.find(path, name)) return;
    const got = response ?? (await fetch(addressOf(this.#site, path), { cache: "no-cache" }));
    if (!got.ok) throw new KeepError({ kind: "absent", path });
    const bytes = await this.bytesOf(got, name);
    if (!bytes) throw new KeepError({ kind: "other-version", path });
    const type = got.headers.get("content-type") ?? "application/octet-stream";
    const cache = await this.#cache();
    const address = keptAddress(this.#site, path, name);
    added?.push(address);
    await cache.put(address, packed(bytes, type));
  }

  /** The bytes of a host's answer; undefined where it is none, or where they are not those that the build wrote. */
  async bytesOf(response: Response, name: string): Promise<ArrayBuffer | undefined> {
    const bytes = response.ok ? await response.arrayBuffer() : undefined;
    return bytes && (await nameOf(bytes, name.length)) === name ? bytes : undefined;
  }

  /** Drops what was added. */
  async drop(addresses: readonly string[]): Promise<void> {
    const cache = await this.#cache();
    for (const address of addresses) await cache.delete(address);
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
    return caches.open(`${OURS}${new URL(this.#site).pathname}`);
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
