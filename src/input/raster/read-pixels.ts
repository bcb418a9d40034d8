import { fileURLToPath } from "node:url";
import { createSyncFn } from "synckit";
import type { Decoded } from "./pixels.ts";
import { MOST_TIME } from "./raster-bounds.ts";

type Decoder = (bytes: Uint8Array) => Decoded;

let decoder: Decoder | undefined;

/** Decodes a picture in a thread of its own, which is started by the first one and never keeps the program from ending. */
export function readPixels(bytes: Uint8Array): Decoded {
  decoder ??= createSyncFn(fileURLToPath(new URL("./decoder.ts", import.meta.url)), MOST_TIME) as Decoder;
  return decoder(bytes);
}
