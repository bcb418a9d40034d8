import type { Rates } from "../../../src/core/kit/kit.ts";

/** Rates all of which differ, so that none can stand for another. */
export const RATES: Rates = {
  leaf: 12,
  score: 6,
  mark: 4,
  cut: 7,
  fold: 10,
  check: 20,
  tack: 15,
  notch: 25,
  part: 420,
  first: 2,
};
