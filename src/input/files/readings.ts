import { KitError, type KitMessage } from "./message.ts";

/** What could be read of several things, and the messages about the others. */
export interface Readings<T> {
  readonly made: readonly T[];
  readonly messages: readonly KitMessage[];
}

/** Reads each of the things that `list` finds, where it finds them. */
export function readListed<S, T>(list: () => readonly S[], read: (source: S) => T): Readings<T> {
  const listed = readEach([list], (find) => find());
  const { made, messages } = readEach(listed.made.flat(), read);
  return { made, messages: [...listed.messages, ...messages] };
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
