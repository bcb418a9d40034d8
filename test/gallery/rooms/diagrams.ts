import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import { closing } from "../../../src/output/drawing/diagrams/closing.ts";
import { cutDepth } from "../../../src/output/drawing/diagrams/cut-depth.ts";
import { doorHinge } from "../../../src/output/drawing/diagrams/door-hinge.ts";
import { foldSteps } from "../../../src/output/drawing/diagrams/fold-steps.ts";
import { holdWidth } from "../../../src/output/drawing/diagrams/hold-width.ts";
import { holderInPlace } from "../../../src/output/drawing/diagrams/holder-in-place.ts";
import { leafAndPages } from "../../../src/output/drawing/diagrams/leaf-and-pages.ts";
import { lineLegend } from "../../../src/output/drawing/diagrams/line-legend.ts";
import { measureBook } from "../../../src/output/drawing/diagrams/measure-book.ts";
import { checkStep, lengthStep, pagesStep } from "../../../src/output/drawing/diagrams/measure-step.ts";
import { scoring } from "../../../src/output/drawing/diagrams/scoring.ts";
import { tucking } from "../../../src/output/drawing/diagrams/tucking.ts";
import { wholeLeaf } from "../../../src/output/drawing/diagrams/whole-leaf.ts";
import type { Figure } from "../../../src/output/drawing/figure.ts";
import { galleryKit, type KitName, WINDOWED } from "../kits.ts";
import { DIAGRAM, figureIn, type Scene, stated } from "../scene.ts";

type Diagram = (kit: Kit, pattern: Pattern) => Figure | undefined;

const OF_EVERY_KIT: readonly Diagram[] = [
  cutDepth,
  foldSteps,
  holdWidth,
  leafAndPages,
  measureBook,
  scoring,
  tucking,
  wholeLeaf,
];
const OF_WINDOWS: readonly Diagram[] = [closing, doorHinge, holderInPlace];
const BOOKS: readonly KitName[] = ["gull", "boat", "moon", "tide", "small", "tall", "plate"];

/** Instruction diagrams with each kit's own numbers. */
export const diagrams: readonly Scene[] = [
  ...OF_EVERY_KIT.flatMap((of) => BOOKS.map((kit) => diagram(of, kit))),
  diagram(holdWidth, "small-along"),
  diagram(foldSteps, "small-scissors"),
  diagram(tucking, "small-lost"),
  ...OF_WINDOWS.flatMap((of) => WINDOWED.map((kit) => diagram(of, kit))),
  { room: "diagrams", name: "line-legend", of: lineLegend, draw: () => figureIn(DIAGRAM, lineLegend()) },
  { room: "diagrams", name: "pages-step", of: pagesStep, draw: () => figureIn(DIAGRAM, pagesStep()) },
  {
    room: "diagrams",
    name: "check-step",
    of: checkStep,
    draw: () => figureIn(DIAGRAM, checkStep({ leaf: leafNumber(20), page: 35 })),
  },
  ...(["leafHeight", "leafWidth", "blockThickness"] as const).map(
    (length): Scene => ({
      room: "diagrams",
      name: `length-step-${length.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`,
      of: lengthStep,
      draw: () => figureIn(DIAGRAM, lengthStep(length)),
    }),
  ),
];

function diagram(of: Diagram, name: KitName): Scene {
  return {
    room: "diagrams",
    name: `${of.name.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}-${name}`,
    of,
    draw: () => {
      const { kit, pattern } = galleryKit(name);
      return figureIn(DIAGRAM, stated(of(kit, pattern)));
    },
  };
}
