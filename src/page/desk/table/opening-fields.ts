import { BOUNDS, openingBounds } from "../../../core/kit/bounds.ts";
import { EMPTY_FOLDS } from "../../../core/kit/corner-wish.ts";
import { type PatternLeafBase, pictureLeaves } from "../../../core/pattern/pattern.ts";
import { FOLD_STYLES } from "../../../core/spans/fold-style.ts";
import { toDegrees } from "../../../core/units/angle.ts";
import { roundTo, tidy } from "../../../core/units/length.ts";
import { rulerStep } from "../../../core/units/ruler.ts";
import type { Edit } from "../../../input/desk/edit.ts";
import { optionText } from "../../../words/fields.ts";
import * as say from "../../../words/messages.ts";
import type { FigureField } from "./figure-field.ts";
import { lengthAt } from "./length-at.ts";
import type { AnyShown } from "./shown.ts";

type Solve = AnyShown["kit"]["fit"]["shape"]["solve"];

/** What decides how the picture is laid out: which figure follows from the others, these figures, borders, folds. */
export function openingFields(shown: AnyShown): FigureField[] {
  const { kit, pattern } = shown;
  const { shape, borderLeaves } = kit.fit;
  const degrees = tidy(toDegrees(pattern.fit.opening), 1);
  return [
    {
      name: "solve",
      label: say.deskKitSolve(),
      options: [
        { value: "opening", label: say.deskKitSolveOpening() },
        { value: "height", label: say.deskKitSolveHeight() },
        { value: "pictureLeaves", label: say.deskKitSolveLeaves() },
        { value: "nothing", label: say.deskKitSolveNothing() },
      ],
      chosen: shape.solve,
      edits: (solve) => solveEdits(shown, solve as Solve),
    },
    {
      name: "opening",
      label: say.fitFieldOpening(),
      bounds: openingBounds(kit.fit.view),
      figure: degrees,
      fixed: shape.solve === "opening",
      edits: (opening) => [{ at: ["fit", "opening"], value: opening }],
    },
    {
      name: "pictureLeaves",
      label: say.deskKitPictureLeaves(),
      bounds: BOUNDS.pictureLeaves,
      figure: pictureLeaves<PatternLeafBase>(pattern).length,
      fixed: shape.solve === "pictureLeaves",
      edits: (count) => [{ at: ["fit", "pictureLeaves"], value: allOrCount(shown, count) }],
    },
    {
      name: "height",
      label: say.fitFieldHeight(),
      bounds: BOUNDS.pictureHeight,
      figure: pattern.fit.height,
      fixed: shape.solve === "height",
      edits: (height) => [lengthAt(["fit", "height"], height)],
    },
    {
      name: "head",
      label: say.fitFieldHead(),
      bounds: BOUNDS.head,
      figure: pattern.fit.head,
      edits: (head) => [lengthAt(["fit", "head"], head)],
    },
    border(shown, 0, say.deskKitBorderBefore()),
    border(shown, 1, say.deskKitBorderAfter()),
    {
      name: "foldStyle",
      label: say.fitFieldFoldStyle(),
      options: FOLD_STYLES.map((value) => ({ value, label: optionText(value) })),
      chosen: kit.fit.foldStyle,
      edits: (style) => [{ at: ["fit", "foldStyle"], value: style }],
    },
    ...emptyLeaves(shown),
    {
      name: "leastTab",
      label: say.deskKitLeastTab(),
      bounds: BOUNDS.leastTab,
      figure: kit.fit.leastTab,
      edits: (mm) => [lengthAt(["fit", "leastTab"], mm)],
    },
  ];

  function border({ stated }: AnyShown, end: 0 | 1, label: string): FigureField {
    return {
      name: end === 0 ? "borderBefore" : "borderAfter",
      label,
      bounds: BOUNDS.borderLeaves,
      figure: borderLeaves[end],
      edits: (count) => {
        const both = stated.fit.borderLeaves.with(end, count) as [number, number];
        return [{ at: ["fit", "borderLeaves"], value: both }];
      },
    };
  }
}

/** How leaves are folded that show nothing, where corners are folded. */
function emptyLeaves({ kit }: AnyShown): FigureField[] {
  if (kit.fit.foldStyle !== "corner") return [];
  return [
    {
      name: "empty",
      label: say.deskKitCornerEmpty(),
      options: EMPTY_FOLDS.map((value) => ({ value, label: say.deskKitCornerEmptyFold({ fold: value }) })),
      chosen: kit.fit.corner.empty,
      edits: (empty) => [{ at: ["fit", "corner", "empty"], value: empty }],
    },
  ];
}

/** The count of leaves between the borders is written as a word, so that it stays all of them. */
function allOrCount({ kit }: AnyShown, count: number): number | "fill" {
  const [before, after] = kit.fit.borderLeaves;
  return count === kit.book.leaves - before - after ? "fill" : count;
}

/** Another figure follows from the others: the one that did is stated as it came out. */
function solveEdits(shown: AnyShown, solve: Solve): Edit[] {
  const { kit, pattern } = shown;
  const { shape } = kit.fit;
  if (solve === shape.solve) return [];
  const stated: Edit[] = [];
  if (shape.solve === "opening")
    stated.push({ at: ["fit", "opening"], value: tidy(toDegrees(pattern.fit.opening), 1) });
  if (shape.solve === "height") {
    const step = rulerStep(kit.units, "fine");
    stated.push(lengthAt(["fit", "height"], roundTo(pattern.fit.height, step)));
  }
  if (shape.solve === "pictureLeaves")
    stated.push({
      at: ["fit", "pictureLeaves"],
      value: allOrCount(shown, pictureLeaves<PatternLeafBase>(pattern).length),
    });
  return solve === "nothing" ? stated : [...stated, { at: ["fit", solve], value: "solve" }];
}
