import * as say from "../../words/messages.ts";
import type { CornerView } from "../views/corner-view.ts";
import { bookPart } from "./book.ts";
import { cautionsPart } from "./cautions.ts";
import { cornerPatternPart } from "./corner-pattern.ts";
import { drawnAgain } from "./drawn-once.ts";
import { explained } from "./explained.ts";
import { figuresPart } from "./figures.ts";
import type { KitPart } from "./kit-parts.ts";
import { type Html, html } from "./markup.ts";
import { measurePart } from "./measure.ts";
import { bookMadeReadyForCorners } from "./preparation.ts";
import { stepsPart } from "./steps.ts";
import { suppliesPart } from "./supplies.ts";
import { carePart, takesPart } from "./takes.ts";
import { warningsPart } from "./warnings.ts";

/** The parts of a kit's page where corners are folded: nothing is tacked, and there is neither light nor window. */
export const CORNER_PARTS: Readonly<Record<KitPart, (view: CornerView) => Html>> = {
  book: explained(bookPart),
  care: carePart,
  cautions: explained(cautionsPart),
  "cautions-gist": ({ cautions }) => html`${say.kitChapterCautions({ count: cautions.length })}`,
  figures: figuresPart,
  measure: measurePart,
  pattern: cornerPatternPart,
  "pattern-gist": ({ counts }) => html`${say.cornerChapterPattern(counts)}`,
  preparation: explained((view: CornerView) => bookMadeReadyForCorners(view, true)),
  "preparation-gist": ({ preparation }) => html`${say.cornerChapterPrepare({ batches: preparation.batches.length })}`,
  steps: explained((view: CornerView) => stepsPart(view, drawnAgain)),
  "steps-gist": ({ work, figures: { hours } }) => html`${say.kitChapterSteps({ steps: work.length, hours })}`,
  supplies: explained(suppliesPart),
  "supplies-gist": ({ supplies }) => {
    const materials = supplies.filter(({ kind }) => kind === "material").length;
    return html`${say.kitChapterSupplies({ materials, tools: supplies.length - materials })}`;
  },
  tacks: () => html`<p>${say.cornerTacksNone()}</p>`,
  "tacks-gist": () => html`${say.kitChapterTacks({ count: 0 })}`,
  takes: takesPart,
  warnings: explained(warningsPart),
  window: () => html`<p>${say.cornerWindowNone()}</p>`,
  "window-gist": () => html`${say.cornerChapterWindow()}`,
};
