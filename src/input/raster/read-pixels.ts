import { fileURLToPath } from "node:url";
import { createSyncFn } from "synckit";
import type { Decoded } from "./pixels.ts";
import { MOST_TIME } from "./raster-bounds.ts";

type Decoder = (bytes: Uint8Array) => Decoded;

let decoder: Decoder | undefined;

const known = new WeakMap<Uint8Array, Decoded>();

/**
 * Decodes a picture in a thread of its own, which is started by the first one and never keeps the program from ending. The
 * same bytes are decoded once, as long as somebody holds them.
 */
export function readPixels(bytes: Uint8Array): Decoded {
  const decoded = known.get(bytes) ?? decode(bytes);
  known.set(bytes, decoded);
  return decoded;
}

function decode(bytes: Uint8Array): Decoded {
  decoder ??= createSyncFn(fileURLToPath(new URL("./decoder.ts", import.meta.url)), MOST_TIME) as Decoder;
  return decoder(bytes);
}
