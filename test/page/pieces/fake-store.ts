import type { PieceStore } from "../../../src/page/pieces/piece-store.ts";

/** A device's storage of editions in memory: of it the pages under test use only these. */
export function fakeStore(): { readonly store: PieceStore; readonly kept: Map<string, ArrayBuffer> } {
  const kept = new Map<string, ArrayBuffer>();
  const base = {
    get: async (_: string, key: string) => kept.get(key),
    getKey: async (_: string, key: string) => (kept.has(key) ? key : undefined),
    getAllKeys: async () => [...kept.keys()],
    put: async (_: string, value: ArrayBuffer, key: string) => {
      kept.set(key, value);
    },
    delete: async (_: string, key: string) => {
      kept.delete(key);
    },
  };
  return { store: { base } as unknown as PieceStore, kept };
}
