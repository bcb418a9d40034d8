import { PieceStore } from "./piece-store.ts";
import { takeOver } from "./take-over.ts";

/** Script that pages fetch once, where a device keeps something of an earlier version. */
window.leaflightTakeOver = async (titles) => takeOver(await PieceStore.open(), titles);
