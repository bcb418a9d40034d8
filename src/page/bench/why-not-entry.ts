import { benchMisfitText } from "../../words/findings/bench-misfit.ts";
import { refusalText } from "../../words/findings/bench-refusal.ts";
import type { WhyNot } from "./why-not.ts";

/** Script that the bench fetches where something cannot be done. */
self.leaflightWhyNot = { misfit: benchMisfitText, refusal: refusalText } satisfies WhyNot;
