import { createHash } from "node:crypto";
import { deserialize, serialize } from "node:v8";
import { KeptFiles } from "../kept/kept-files.ts";

/** Letters of a contents' name: the beginning of its SHA-256. What keeps files on a device compares as many. */
const NAME_LENGTH = 16;

/** A file that was made: its path below the site, with slashes, its contents, and their name. */
export interface MadeFile {
  readonly path: string;
  readonly bytes: Uint8Array;
  readonly name: string;
}

/** What a stage made of a part of the site: files, and what others want to know of it. */
export interface Made<T = undefined> {
  readonly files: readonly MadeFile[];
  readonly data: T;
}

/** Where what was made is kept, below the project. */
const FOLDER = ".cache/made";

/**
 * What was made of each part of a site, by the key of all that it is made from: inputs, code, and what the code runs. A part
 * that is found here is not made again. What is kept is verified when it is read.
 */
export class Store {
  readonly #kept: KeptFiles;

  constructor(folder = FOLDER) {
    this.#kept = new KeptFiles(folder, "made");
  }

  /** What was made under a key; undefined where nothing whole is kept. */
  take<T>(key: string): Made<T> | undefined {
    const bytes = this.#kept.take(key);
    return bytes && (deserialize(bytes) as Made<T>);
  }

  put<T>(key: string, made: Made<T>): void {
    this.#kept.put(key, serialize(made));
  }

  /** A value that is computed once for a key. */
  value<T>(key: string, compute: () => T): T {
    const made = this.take<T>(key);
    if (made) return made.data;
    const data = compute();
    this.put(key, { files: [], data });
    return data;
  }

  /** Names of all that this run used, for the store of another thread that clears up. */
  used(): string[] {
    return this.#kept.used();
  }

  /** Clears up: `alsoUsed` are names of what other threads of this run used. */
  close(alsoUsed: readonly string[] = []): void {
    this.#kept.close({ alsoUsed });
  }
}

/** A key of the parts that are given, in their order. */
export function keyOf(...parts: readonly unknown[]): string {
  return KeptFiles.key(createHash("sha256").update(JSON.stringify(parts)));
}

/** The name of a file's contents: the same contents have the same name. */
export function nameOf(contents: string | Uint8Array): string {
  return nameOfHash(createHash("sha256").update(contents).digest("hex"));
}

/** The name of contents of which the SHA-256 is known. */
export function nameOfHash(sha256: string): string {
  return sha256.slice(0, NAME_LENGTH);
}
