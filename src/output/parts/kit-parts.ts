import type { KitView } from "../views/kit-view.ts";
import { bookPart } from "./book.ts";
import { cautionsPart } from "./cautions.ts";
import { figuresPart } from "./figures.ts";
import type { Html } from "./markup.ts";
import { measurePart } from "./measure.ts";
import { patternPart } from "./pattern.ts";
import { preparationPart } from "./preparation.ts";
import { stepsPart } from "./steps.ts";
import { suppliesPart } from "./supplies.ts";
import { tacksPart } from "./tacks.ts";
import { warningsPart } from "./warnings.ts";
import { windowPart } from "./window-part.ts";

/** The parts of a kit's page that follow a reader's book, by the names that the page gives them (`data-part`). */
export const KIT_PARTS = {
  book: bookPart,
  cautions: cautionsPart,
  figures: figuresPart,
  measure: measurePart,
  pattern: patternPart,
  preparation: preparationPart,
  steps: stepsPart,
  supplies: suppliesPart,
  tacks: tacksPart,
  warnings: warningsPart,
  window: windowPart,
} as const satisfies Readonly<Record<string, (view: KitView) => Html>>;

export type KitPart = keyof typeof KIT_PARTS;
