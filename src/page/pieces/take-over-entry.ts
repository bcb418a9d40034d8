import { PieceStore } from "./piece-store.ts";
import { takeOver } from "./take-over.ts";

declare global {
  interface Window {
    leaflightTakeOver?: (titles: Readonly<Record<string, string>>) => Promise<void>;
  }
}

/** Script that catalogue and kits' pages fetch once, where a device keeps something of an earlier version. */
self.leaflightTakeOver = async (titles) => {
  await takeOver(await PieceStore.open(), titles);
};
