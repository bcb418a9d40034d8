import { rmdirSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import type { MadeFile } from "./store.ts";
import { type NamedFile, writeMade } from "./write-made.ts";

/** A part of a site as it stands there: the key of all that it was made from, and its files. */
export interface PlacedPart {
  readonly part: string;
  readonly key: string;
  readonly files: readonly NamedFile[];
}

/**
 * What stands in a site that is made in place, by parts. A part that stands there with its key is not written again, and files
 * that no part has any more are removed. A file may be of many parts, as style sheets are.
 */
export class Placing {
  readonly output: string;
  readonly #parts = new Map<string, PlacedPart>();
  readonly #names = new Map<string, string>();
  /** How many parts have a file. */
  readonly #holders = new Map<string, number>();
  #wanted = new Set<string>();
  #changed = new Set<string>();

  constructor(output: string) {
    this.output = output;
  }

  /** Names of contents by paths below the site. */
  get names(): ReadonlyMap<string, string> {
    return this.#names;
  }

  /** Whether a part stands as it is to be; from then on it is wanted. */
  stands(part: string, key: string): boolean {
    this.#wanted.add(part);
    return this.#parts.get(part)?.key === key;
  }

  /** Puts a part in place: of its files those that do not stand there yet are written. */
  put(part: string, key: string, files: readonly MadeFile[]): void {
    writeMade(
      this.output,
      files.filter(({ path, name }) => this.#names.get(path) !== name),
    );
    this.note({ part, key, files });
  }

  /** A part was put in place by another. */
  note({ part, key, files }: PlacedPart): void {
    const before = this.#parts.get(part)?.files ?? [];
    this.#wanted.add(part);
    this.#parts.set(part, { part, key, files: files.map(({ path, name }) => ({ path, name })) });
    for (const { path, name } of files) {
      if (this.#names.get(path) !== name) this.#changed.add(path);
      this.#names.set(path, name);
      this.#holders.set(path, (this.#holders.get(path) ?? 0) + 1);
    }
    this.#drop(before);
  }

  /** Parts that stand stay wanted, as they are, where nothing newer could be made of what they are of. */
  keep(isKept: (part: string) => boolean): void {
    for (const part of this.#parts.keys()) if (isKept(part)) this.#wanted.add(part);
  }

  /** Takes away what was not wanted since the last time: all parts of a site were asked for or put in place meanwhile. */
  sweep(): void {
    for (const { part, files } of this.#parts.values()) {
      if (this.#wanted.has(part)) continue;
      this.#parts.delete(part);
      this.#drop(files);
    }
    this.#wanted = new Set();
  }

  /** Paths below the site of what changed there since this was asked last. */
  takeChanged(): string[] {
    const changed = [...this.#changed];
    this.#changed = new Set();
    return changed;
  }

  #drop(files: readonly NamedFile[]): void {
    for (const { path } of files) {
      const left = this.#holders.get(path)! - 1;
      this.#holders.set(path, left);
      if (left > 0) continue;
      this.#holders.delete(path);
      this.#names.delete(path);
      this.#changed.add(path);
      rmSync(join(this.output, path), { force: true });
      removeEmpty(this.output, dirname(path));
    }
  }
}

/** Removes a folder below the site, and those above it, as far as nothing stands in them. */
function removeEmpty(output: string, folder: string): void {
  for (let at = folder; at !== "."; at = dirname(at)) {
    try {
      rmdirSync(join(output, at));
    } catch {
      return;
    }
  }
}
