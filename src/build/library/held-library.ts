import type { Library } from "./library.ts";

/** The library of this run: all its stages work on the same one. */
let current: Library | undefined;

export function holdLibrary(library: Library): void {
  current = library;
}

/** @throws Error where none was opened yet */
export function currentLibrary(): Library {
  if (!current) throw new Error("the library is not open yet");
  return current;
}
