import { CORNER_WAY } from "../../core/bench/corner-way.ts";
import { CORNER_FACE } from "./corner-face.ts";
import { CORNER_SHEETS } from "./corner-sheets.ts";
import type { CornerBench } from "./need-corners.ts";

/** Script that the bench and the page of a piece fetch where corners are folded. */
self.leaflightCornerBench = { way: CORNER_WAY, face: CORNER_FACE, sheets: CORNER_SHEETS } satisfies CornerBench;
