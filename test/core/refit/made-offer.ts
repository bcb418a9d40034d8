import type { Offer } from "../../../src/core/refit/offer.ts";

/** A way that changes nothing, for tests in which only there being one counts. */
export const OFFER: Offer = {
  says: [],
  refit: {},
  otherBook: false,
  springsOpen: false,
  quality: "fits",
  minutes: 60,
  margins: { head: 20, tail: 20 },
};
