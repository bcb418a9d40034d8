import type { benchMisfitText } from "../../words/findings/bench-misfit.ts";
import type { refusalText } from "../../words/findings/bench-refusal.ts";
import * as say from "../../words/messages.ts";
import { LoadError, loadScript } from "../shared/load-script.ts";

/** What tells why a kit does not open at the bench, or a leaf cannot be left out: a script of its own, as it is seldom needed. */
export interface WhyNot {
  readonly misfit: typeof benchMisfitText;
  readonly refusal: typeof refusalText;
}

declare global {
  interface Window {
    leaflightWhyNot?: WhyNot;
  }
}

/** Why something cannot be done, or that this could not be loaded. */
export async function whyNot(tell: (words: WhyNot) => string, load = loadScript): Promise<string> {
  try {
    if (!self.leaflightWhyNot) await load("../../../assets/scripts/why-not.js", "reasons");
    return tell(self.leaflightWhyNot!);
  } catch (error) {
    if (!(error instanceof LoadError)) throw error;
    return say.loadReasons();
  }
}
