import { bindRefit } from "./refit-page.ts";

/** Script that a kit page fetches when the reader turns to its panel or comes with a book. */
self.leaflightRefit = bindRefit;
