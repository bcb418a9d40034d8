import type { DeskNews } from "../../input/desk/protocol.ts";

/** Who hears of news. */
export type Listener = (news: DeskNews) => void;

/** Tells every page of the desk that is open what happened. */
export class News {
  readonly #listeners = new Set<Listener>();

  tell(news: DeskNews): void {
    for (const listener of this.#listeners) listener(news);
  }

  /** @returns what ends it */
  listen(listener: Listener): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }
}
