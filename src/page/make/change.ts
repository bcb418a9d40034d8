import type { Progress } from "../../core/bench/progress.ts";

/** Makes a change of the piece's progress, and keeps and shows what comes of it. */
export type Change = (make: (progress: Progress) => Progress) => void;
