import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { cornerCard, cornerHeard, cornerMarkHeard, cornerMarks } from "../../../src/output/views/corner-card.ts";
import { cornerPlan } from "../../core/bench/corner-plan.ts";
import { SILHOUETTES } from "../../oracle/corner/silhouettes.ts";

const MM = { units: "mm", step: 0.5 } as const;
const [, , BARS] = SILHOUETTES;
const plain = <T>(value: T): T => JSON.parse(JSON.stringify(value).replaceAll("\u00a0", " ")) as T;

describe("cornerCard(plan, leaf, style)", () => {
  // By hand: the square stands from 68 to 122 of 200 mm.
  it("says the marks in the order of the hands, and nothing more of a leaf that meets the picture once", () => {
    const card = plain(cornerCard(cornerPlan(), leafNumber(60), MM));
    expect(card).toMatchObject({ big: "119", bigIsPage: true, patternPage: "111", border: "", notes: [] });
    expect(card.folds).toEqual(["68.0 mm: fold the corner above it", "122.0 mm: fold the corner below it"]);
    expect(card.spoken).toBe(
      "Leaf 60, page 119. Pattern page 111. 2 marks in millimetres from the head: 68.0; 122.0. 68.0 mm: fold the corner above it. 122.0 mm: fold the corner below it.",
    );
  });

  it("folds border leaves whole over the card", () => {
    const card = plain(cornerCard(cornerPlan(), leafNumber(2), MM));
    expect(card.border).toBe("Border leaf 2 of 4 before the picture");
    expect([card.patternPage, card.folds]).toEqual(["", []]);
    expect(card.notes).toEqual(["No marks: fold the whole leaf over the folding card, 20 mm from the fore-edge."]);
  });

  it("says which strip a leaf shows where it meets several", () => {
    const plan = cornerPlan({}, BARS);
    const turns = plan.pattern.leaves.flatMap(({ leaf, fold }) =>
      fold.kind === "corners" && fold.turn?.of === 3 ? [[leaf, fold.turn.which] as const] : [],
    );
    expect(turns.length).toBeGreaterThan(50);
    for (const [leaf, which] of turns)
      expect(cornerCard(plan, leaf, MM).notes).toEqual([
        `The picture meets this leaf 3 times. It shows strip ${which}, counted from the head; its neighbours show the others.`,
      ]);
  });

  it("gives both corners one mark where a leaf is folded to its middle", () => {
    const plan = cornerPlan({ fit: { corner: { levels: [1], empty: "middle", dropped: [] } } });
    const card = cornerCard(plan, leafNumber(1), MM);
    expect([cornerMarks(card.source), card.notes]).toEqual([[100], ["Both corners go to one mark."]]);
    expect(cornerMarkHeard(plan, leafNumber(1), 0, MM)).toEqual([
      "Mark 100: fold the corner above it.",
      "Mark 100: fold the corner below it.",
    ]);
  });

  it("says where a crease ends that is turned from the gutter", () => {
    // By hand: on a leaf 65 mm wide, 5 of them clear, a corner 68 mm from the mark ends at (68 − √(68² − 60²)) · 68 / 60, 40.8,
    // rounded down to half a millimetre.
    const plan = cornerPlan({ book: { leafWidth: 65 } });
    const [above] = plain(cornerCard(plan, leafNumber(60), MM).folds);
    expect(above).toBe("68.0 mm: fold the corner above it, from the mark to 40.5 mm on the head edge");
  });
});

describe("cornerHeard(plan, leaf, style)", () => {
  it("is the page and the marks with their corners, without a sign", () => {
    expect(cornerHeard(cornerPlan(), leafNumber(60), MM)).toEqual([
      "Page 119.",
      "2 marks from the head, in millimetres.",
      "Mark 68: fold the corner above it.",
      "Mark 122: fold the corner below it.",
    ]);
  });

  it("is where a whole leaf is folded", () => {
    expect(cornerHeard(cornerPlan(), leafNumber(1), MM)).toEqual([
      "Page 1.",
      "Border leaf.",
      "No marks. Fold the whole leaf over the folding card.",
    ]);
  });
});
