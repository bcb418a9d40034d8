import { KitError, type KitMessage } from "../../input/files/message.ts";
import type { Readings } from "../../input/files/readings.ts";

/** What becomes of something that cannot be read or computed: it stops the run, or is left out of it. */
export type WhenBroken = "stop" | "leave out";

/** Gathers what can be read of a site, and the messages about the rest. */
export class Gathering {
  readonly #whenBroken: WhenBroken;
  readonly #messages: KitMessage[] = [];

  constructor(whenBroken: WhenBroken) {
    this.#whenBroken = whenBroken;
  }

  get messages(): readonly KitMessage[] {
    return this.#messages;
  }

  /** What could be read of several things. */
  all<T>({ made, messages }: Readings<T>): readonly T[] {
    this.#tell(messages);
    return made;
  }

  /** One thing, or what stands in for it. */
  one<T>(read: () => T, standIn: () => T): T {
    try {
      return read();
    } catch (error) {
      if (!(error instanceof KitError)) throw error;
      this.#tell(error.messages);
      return standIn();
    }
  }

  /** A file that is read twice is told of once. */
  #tell(messages: readonly KitMessage[]): void {
    const told = new Set(this.#messages.map((one) => JSON.stringify(one)));
    this.#messages.push(...messages.filter((one) => !told.has(JSON.stringify(one))));
  }

  /** @throws KitError with all that was told so far, where that is to stop the run */
  stopWhereBroken(): void {
    if (this.#whenBroken === "stop" && this.#messages.length > 0) throw new KitError(this.#messages);
  }
}
