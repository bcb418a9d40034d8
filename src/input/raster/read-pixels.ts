import { createHash } from "node:crypto";
import { fileURLToPath } from "node:url";
import { createSyncFn } from "synckit";
import type { Decoded } from "./pixels.ts";
import { MOST_TIME } from "./raster-bounds.ts";

type Decoder = (bytes: Uint8Array) => Decoded;

let decoder: Decoder | undefined;

const known = new WeakMap<Uint8Array, Decoded>();

/** Pictures that are read again and again, by the hash of their bytes; those that were read last stand last. */
const held = new Map<string, Decoded>();
let mostHeld = 0;

/**
 * Decodes a picture in a thread of its own, which is started by the first one and never keeps the program from ending. The
 * same bytes are decoded once, as long as somebody holds them.
 */
export function readPixels(bytes: Uint8Array): Decoded {
  const decoded = known.get(bytes) ?? (mostHeld > 0 ? holding(bytes) : decode(bytes));
  known.set(bytes, decoded);
  return decoded;
}

/** From now on so many pictures are held as they were decoded last, also where their files are read anew. */
export function holdPixels(most: number): void {
  mostHeld = most;
}

function holding(bytes: Uint8Array): Decoded {
  const key = createHash("sha256").update(bytes).digest("base64");
  const decoded = held.get(key) ?? decode(bytes);
  held.delete(key);
  held.set(key, decoded);
  if (held.size > mostHeld) held.delete([...held.keys()][0]!);
  return decoded;
}

function decode(bytes: Uint8Array): Decoded {
  decoder ??= createSyncFn(fileURLToPath(new URL("./decoder.ts", import.meta.url)), MOST_TIME) as Decoder;
  return decoder(bytes);
}
