import { createHash, randomBytes, timingSafeEqual } from "node:crypto";

/** Random bytes of a key: nobody guesses it. */
const BYTES = 32;

/** What opens the desk, for as long as its server runs. */
export interface DeskKeys {
  /** Stands in the address that the terminal tells, and then in the cookie of this machine's browser. */
  readonly cookie: string;
  /** What only a page of the desk itself can read, and sends with all that changes something. */
  readonly token: string;
}

export function newKeys(): DeskKeys {
  const key = (): string => randomBytes(BYTES).toString("base64url");
  return { cookie: key(), token: key() };
}

/** Whether a key is the one that was given out; how long that takes tells nothing of it. */
export function isKey(given: string | undefined, key: string): boolean {
  const digest = (text: string): Buffer => createHash("sha256").update(text).digest();
  return given !== undefined && timingSafeEqual(digest(given), digest(key));
}
