import type { KitView } from "../views/kit-view.ts";
import { bookPart } from "./book.ts";
import { cautionsPart } from "./cautions.ts";
import { drawnAgain } from "./drawn-once.ts";
import { explained } from "./explained.ts";
import { figuresPart } from "./figures.ts";
import { GIST_PARTS } from "./gists.ts";
import type { Html } from "./markup.ts";
import { measurePart } from "./measure.ts";
import { patternPart } from "./pattern.ts";
import { preparationPart } from "./preparation.ts";
import { stepsPart } from "./steps.ts";
import { suppliesPart } from "./supplies.ts";
import { tacksPart } from "./tacks.ts";
import { carePart, takesPart } from "./takes.ts";
import { warningsPart } from "./warnings.ts";
import { windowPart } from "./window-part.ts";

type Steps = Parameters<typeof stepsPart>[0];

/** The parts of a kit's page that follow a reader's book, by the names that the page gives them (`data-part`). */
export const KIT_PARTS = {
  ...GIST_PARTS,
  book: explained(bookPart),
  care: carePart,
  cautions: explained(cautionsPart),
  figures: figuresPart,
  measure: measurePart,
  pattern: patternPart,
  preparation: explained(preparationPart),
  steps: explained((view: Steps) => stepsPart(view, drawnAgain)),
  supplies: explained(suppliesPart),
  tacks: explained(tacksPart),
  takes: takesPart,
  warnings: explained(warningsPart),
  window: explained(windowPart),
} as const satisfies Readonly<Record<string, (view: KitView) => Html>>;

export type KitPart = keyof typeof KIT_PARTS;
