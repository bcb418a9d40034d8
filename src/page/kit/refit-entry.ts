import { serveFits } from "./fit-worker.ts";
import { bindRefit } from "./refit-page.ts";

/** Script that a kit page fetches when the reader turns to its panel or comes with a book; its worker runs the same one. */
if (typeof document === "undefined") serveFits();
else self.leaflightRefit = bindRefit;
