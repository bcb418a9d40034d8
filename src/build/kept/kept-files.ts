import { createHash, type Hash } from "node:crypto";
import { lstatSync, mkdirSync, readdirSync, readFileSync, rmSync, utimesSync } from "node:fs";
import { join } from "node:path";
import * as say from "../../words/messages.ts";
import { isGone, ownName } from "../making/owner.ts";
import { removeAll } from "../making/remove.ts";
import { writeAside } from "../making/write-aside.ts";

/** What keeping is bounded by, beside what this run used. */
export interface KeptBounds {
  readonly bytes: number;
  /** Since it was last used. */
  readonly days: number;
}

export const KEPT_BOUNDS: KeptBounds = { bytes: 500_000_000, days: 90 };

const DAY = 86_400_000;

/** Of a hash as a key: enough that no two things meet. */
const KEY = 32;

interface Entry {
  readonly name: string;
  readonly key: string;
  readonly hash: string;
}

/**
 * Files kept from one build to the next under the hash of what they are made from. A name also holds the hash of the file, so
 * that one that was cut off, emptied or replaced is known and dropped. Where the folder cannot be used, nothing is kept.
 */
export class KeptFiles {
  readonly #folder: string;
  readonly #ending: string;
  readonly #tell: (line: string) => void;
  readonly #used = new Set<string>();
  #entries = new Map<string, Entry[]>();
  #damaged = 0;
  #usable = true;

  constructor(folder: string, ending: string, tell: (line: string) => void = console.warn) {
    this.#folder = folder;
    this.#ending = ending;
    this.#tell = tell;
    this.#try(() => {
      mkdirSync(folder, { recursive: true });
      this.#entries = Map.groupBy(this.#list(), ({ key }) => key);
    });
  }

  /** A key of all that a file is made from. */
  static key(hash: Hash): string {
    return hash.digest("hex").slice(0, KEY);
  }

  /** What is kept under a key; undefined where nothing whole is. */
  take(key: string): Buffer | undefined {
    for (const { name, hash } of this.#entries.get(key) ?? []) {
      const bytes = this.#read(name);
      if (bytes && hashOf(bytes) === hash) {
        this.#used.add(name);
        return bytes;
      }
      this.#damaged += 1;
      removeAll(join(this.#folder, name));
    }
    return undefined;
  }

  /** Keeps a file: written aside, and under its name when all of it is written. */
  put(key: string, bytes: Uint8Array): void {
    const hash = hashOf(bytes);
    const name = `${key}.${hash}.${this.#ending}`;
    this.#used.add(name);
    this.#try(() => {
      // A power cut may leave it short: then it is dropped when it is read.
      writeAside(join(this.#folder, name), `${name}.${ownName()}`, bytes, false);
      this.#entries.set(key, [{ name, key, hash }]);
    });
  }

  /** Names of all that this run used. */
  used(): string[] {
    return [...this.#used];
  }

  /** Tells what was damaged, and drops what is old or too much, the longest unused first; `alsoUsed` are names of what other threads used. */
  close({
    bounds = KEPT_BOUNDS,
    alsoUsed = [],
  }: {
    readonly bounds?: KeptBounds;
    readonly alsoUsed?: readonly string[];
  } = {}): void {
    for (const name of alsoUsed) this.#used.add(name);
    if (this.#damaged > 0) this.#tell(say.keptDamaged({ count: this.#damaged, folder: this.#folder }));
    if (!this.#usable) return;
    this.#try(() => {
      const now = new Date();
      for (const name of this.#used) touch(join(this.#folder, name), now);
      this.#prune(bounds, now.getTime());
    });
  }

  #prune({ bytes, days }: KeptBounds, now: number): void {
    for (const name of readdirSync(this.#folder)) if (isAbandoned(name)) removeAll(join(this.#folder, name));
    const unused = this.#list()
      .filter(({ name }) => !this.#used.has(name))
      .flatMap(({ name }) => {
        const found = lstatSync(join(this.#folder, name), { throwIfNoEntry: false });
        return found ? [{ name, size: found.size, age: now - found.mtimeMs }] : [];
      })
      .toSorted((a, b) => a.age - b.age);
    let sum = 0;
    for (const { name, size, age } of unused) {
      sum += size;
      if (sum > bytes || age > days * DAY) rmSync(join(this.#folder, name), { force: true });
    }
  }

  #list(): Entry[] {
    const named = new RegExp(`^([0-9a-f]{${KEY}})\\.([0-9a-f]{64})\\.${this.#ending}$`);
    const old = new RegExp(`^[0-9a-f]{${KEY}}\\.${this.#ending}$`);
    return readdirSync(this.#folder).flatMap((name) => {
      const [, key, hash] = named.exec(name) ?? [];
      // Without a hash nothing tells whether it is whole.
      if (old.test(name)) removeAll(join(this.#folder, name));
      return key !== undefined && hash !== undefined ? [{ name, key, hash }] : [];
    });
  }

  #read(name: string): Buffer | undefined {
    try {
      const path = join(this.#folder, name);
      return lstatSync(path).isFile() ? readFileSync(path) : undefined;
    } catch {
      return undefined;
    }
  }

  /** Does without keeping, and says so once, where the folder cannot be used. */
  #try(work: () => void): void {
    if (!this.#usable) return;
    try {
      work();
    } catch (error) {
      this.#usable = false;
      const { code, message } = error as NodeJS.ErrnoException;
      this.#tell(say.keptUnusable({ folder: this.#folder, fault: code ?? message }));
    }
  }
}

function hashOf(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}

/** Written aside by a process that is gone. */
function isAbandoned(name: string): boolean {
  return isGone(name.slice(name.lastIndexOf(".") + 1));
}

function touch(path: string, now: Date): void {
  try {
    utimesSync(path, now, now);
  } catch {
    // Another build dropped it, or it could not be written.
  }
}
