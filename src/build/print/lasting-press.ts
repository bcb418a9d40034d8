import { BrowserError } from "../browser/browser-error.ts";
import { BuildError } from "../errors/build-error.ts";
import { type Press, type PressSettings, startPress } from "./press.ts";
import { failed } from "./print-error.ts";
import { printSitting, type RawPdf } from "./print-sitting.ts";
import type { Sitting } from "./sittings.ts";

/** A press whose browser is replaced, once for a PDF, when it ends by itself. */
export class LastingPress {
  readonly #settings: PressSettings;
  #press: Press;
  #closed = false;

  private constructor(settings: PressSettings, press: Press) {
    this.#settings = settings;
    this.#press = press;
  }

  /** @throws BrowserError where the browser does not start */
  static async start(settings: PressSettings): Promise<LastingPress> {
    return new LastingPress(settings, await startPress(settings));
  }

  /** @throws PrintError, BrowserError */
  async *print(sitting: Sitting): AsyncGenerator<RawPdf> {
    let replaced = false;
    for (let left = sitting; left.length > 0; ) {
      try {
        for await (const raw of printSitting(this.#press, left)) {
          left = left.slice(1);
          replaced = false;
          yield raw;
        }
      } catch (error) {
        if (!(error instanceof BuildError)) throw failed(error, left[0]!.of, this.#settings.found);
        if (replaced || this.#closed || !(error instanceof BrowserError && error.died)) throw error;
        replaced = true;
        await this.#replace();
      }
    }
  }

  async close(): Promise<void> {
    this.#closed = true;
    await this.#press.started.close();
  }

  async #replace(): Promise<void> {
    await this.#press.started.close();
    // What holds for the first browser was told of it.
    this.#press = await startPress({ ...this.#settings, note: () => undefined });
    if (this.#closed) await this.#press.started.close();
  }
}
