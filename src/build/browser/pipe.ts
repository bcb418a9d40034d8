import type { Readable, Writable } from "node:stream";
import type { ConnectionTransport } from "puppeteer";

/** Longer than any message of a browser, a PDF of many pages included; characters. */
const LONGEST = 1 << 28;

/**
 * The pipe to a browser: messages in JSON, each ended by a zero byte. No other process can reach it, unlike a port, and the
 * browser ends when it breaks.
 */
export class Pipe implements ConnectionTransport {
  onmessage?: (message: string) => void;
  onclose?: () => void;
  readonly #to: Writable;
  readonly #from: Readable;
  #begun: Buffer[] = [];
  #length = 0;
  #closed = false;

  /** `strange` is called when what comes is no message. */
  constructor(to: Writable, from: Readable, strange: () => void) {
    this.#to = to;
    this.#from = from;
    to.on("error", () => this.close());
    from.on("error", () => this.close());
    from.on("close", () => this.close());
    from.on("data", (data: Buffer) => {
      if (!this.#closed && !this.#take(data)) strange();
    });
  }

  send(message: string): void {
    if (!this.#closed) this.#to.write(`${message}\0`);
  }

  close(): void {
    if (this.#closed) return;
    this.#closed = true;
    this.#to.destroy();
    this.#from.destroy();
    this.onclose?.();
  }

  #take(data: Buffer): boolean {
    let rest = data;
    for (let end = rest.indexOf(0); end >= 0; end = rest.indexOf(0)) {
      const message = Buffer.concat([...this.#begun, rest.subarray(0, end)]).toString("utf8");
      this.#begun = [];
      this.#length = 0;
      rest = rest.subarray(end + 1);
      if (!isMessage(message)) return false;
      // A message may be answered by closing: the next ones wait their turn.
      setImmediate(() => this.onmessage?.(message));
    }
    if (rest.length > 0) this.#begun.push(rest);
    this.#length += rest.length;
    return this.#length < LONGEST;
  }
}

function isMessage(text: string): boolean {
  try {
    const message: unknown = JSON.parse(text);
    return typeof message === "object" && message !== null;
  } catch {
    return false;
  }
}
