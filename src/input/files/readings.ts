import { KitError, type KitMessage } from "./message.ts";

/** What could be read of several things, and the messages about the others. */
export interface Readings<T> {
  readonly made: readonly T[];
  readonly messages: readonly KitMessage[];
}

/** Reads each of several things; one that cannot be read stops none of the others. */
export function readEach<S, T>(sources: readonly S[], read: (source: S) => T): Readings<T> {
  const made: T[] = [];
  const messages: KitMessage[] = [];
  for (const source of sources) {
    try {
      made.push(read(source));
    } catch (error) {
      if (!(error instanceof KitError)) throw error;
      messages.push(...error.messages);
    }
  }
  return { made, messages };
}
