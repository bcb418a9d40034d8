import { describe, expect, it } from "vitest";
import type { Assessment } from "../../src/core/makeability/assessment.ts";
import type { Makeability, TroubleWithWays } from "../../src/core/makeability/makeability.ts";
import { makeabilityLines, shareText, troubleText, wayTexts } from "../../src/words/findings/makeability.ts";

const LEVELS = [{ name: "rim" }, { name: "wall" }, { name: "well" }];
const MM = { units: "mm", levels: LEVELS } as const;
const INCHES = { units: "in", levels: LEVELS } as const;

/** What is looked at, with where the third level is hidden. */
function made(troubles: readonly TroubleWithWays[]): Makeability {
  const hiddenAt = [
    { from: -49.1, to: -11.2 },
    { from: -3, to: 4 },
    { from: 16, to: 54 },
  ];
  const seen = { levels: [1, 2, 3].map((level) => ({ level, hiddenAt })), lost: [] };
  const assessment: Partial<Record<keyof Assessment, unknown>> = { seen };
  return { ...assessment, troubles } as Makeability;
}

const HIDDEN = { kind: "hidden", level: 3, figure: 0.246, share: 0.739 } as const;
const REACH = { kind: "out-of-reach", level: 3, figure: 2 } as const;
const SHALLOWER = {
  change: { kind: "depths", depths: [18, 22, 30] },
  before: 0.246,
  after: 0.134,
  ends: false,
} as const;

describe("troubleText(trouble, made, telling)", () => {
  it.each([
    [
      HIDDEN,
      "Seen from the front, sides of prouder leaves hide 25% of “well”. It is hidden 11 to 49 mm left of the middle, from 3 mm left to 4 mm right of the middle, and 16 to 54 mm right of the middle.",
    ],
    [REACH, "“well” goes on 2 mm further at the side than its folds reach."],
    [
      { kind: "slivers", figure: 0.01, strips: 23, places: 11, most: 2, share: 0.003 },
      "23 strips at 11 places are too short to fold and are merged. “wall” loses most by it: 0.3% of its area.",
    ],
    [
      { kind: "narrow", figure: 2, unseen: 1, pitch: 0.72 },
      "2 parts of the picture are narrower than two leaves. A leaf’s column is 0.7 mm wide. One of them falls between the leaves and is not seen at all.",
    ],
    [{ kind: "many-cuts", figure: 1, most: 10 }, "One leaf has more than 8 cuts, up to 10. Such leaves tear easily."],
    [
      { kind: "springs-open", figure: Math.PI / 18, opening: Math.PI / 3, resting: (7 * Math.PI) / 18 },
      "The flaps push the book open to 70°, 10° more than the picture needs.",
    ],
  ] as const)("says %o", (trouble, text) => {
    expect(troubleText(trouble, made([]), MM).replaceAll("\u00a0", " ")).toBe(text);
  });

  it("says places in inches", () => {
    expect(troubleText(HIDDEN, made([]), INCHES).replaceAll("\u00a0", " ")).toContain(
      "5/8 to 2 1/8 in right of the middle",
    );
  });
});

describe("wayTexts(trouble, ways, telling)", () => {
  const texts = (...told: Parameters<typeof wayTexts>): string[] =>
    wayTexts(...told).map((text) => text.replaceAll("\u00a0", " "));

  it("tells the figure with the change and without it", () => {
    expect(texts(HIDDEN, [SHALLOWER], MM)).toEqual([
      "Make the levels shallower: 18 mm, 22 mm, 30 mm (13% hidden instead of 25%).",
    ]);
  });

  it.each([
    [
      { kind: "merge-levels", level: 2, into: 3 },
      "Fold “wall” together with “well” (0 mm out of reach instead of 2 mm).",
    ],
    [{ kind: "simplify", tolerance: 0.8 }, "Smooth the outlines by up to 0.8 mm (0 mm out of reach instead of 2 mm)."],
  ] as const)("tells the author's own change %o", (change, text) => {
    expect(texts(REACH, [{ change, before: 2, after: 0, ends: true }], MM)).toEqual([text]);
  });

  it("leaves out a change whose figures read the same", () => {
    const slivers = { kind: "slivers", figure: 0.0144, strips: 40, places: 9, most: 2, share: 0.03 } as const;
    const change = { kind: "height", height: 117 } as const;
    const ways = [
      { change, before: 0.0144, after: 0.0096, ends: false },
      { change, before: 0.0144, after: 0.0004, ends: false },
    ];
    expect(texts(slivers, ways, MM)).toEqual([
      "Make the picture 117 mm tall (under 0.1% of the picture merged instead of 1%).",
    ]);
  });

  it("counts parts and leaves in the singular, too", () => {
    const cuts = { kind: "many-cuts", figure: 4, most: 10 } as const;
    const way = { change: { kind: "height", height: 117 }, before: 4, after: 1, ends: false } as const;
    expect(texts(cuts, [way], MM)).toEqual(["Make the picture 117 mm tall (1 such leaf instead of 4)."]);
  });
});

describe("makeabilityLines(made, telling)", () => {
  const REACHING = { change: { kind: "height", height: 117 }, before: 2, after: 0, ends: true } as const;

  it("says a trouble, and on a line of its own what helps against it; of what is a warning already only this", () => {
    const lines = makeabilityLines(
      made([
        { trouble: HIDDEN, ways: [SHALLOWER] },
        { trouble: REACH, ways: [REACHING] },
        { trouble: { kind: "springs-open", figure: 1, opening: 1, resting: 2 }, ways: [] },
      ]),
      MM,
    );
    expect(lines.map((line) => line.replaceAll("\u00a0", " "))).toEqual([
      "to look at: Seen from the front, sides of prouder leaves hide 25% of “well”.",
      "what helps against hidden parts of “well”: Make the levels shallower: 18 mm, 22 mm, 30 mm (13% hidden instead of 25%).",
      "what helps against “well” out of reach: Make the picture 117 mm tall (0 mm out of reach instead of 2 mm).",
    ]);
  });

  it.each([
    [{ kind: "slivers", figure: 0.02, strips: 9, places: 3, most: 1, share: 0.1 }, "merged strips"],
    [{ kind: "narrow", figure: 3, unseen: 0, pitch: 0.7 }, "narrow parts"],
    [{ kind: "many-cuts", figure: 3, most: 9 }, "leaves with many cuts"],
    [{ kind: "springs-open", figure: 1, opening: 1, resting: 2 }, "springing open"],
  ] as const)("names what %o is helped against", (trouble, name) => {
    const way = { ...REACHING, before: trouble.figure };
    const lines = makeabilityLines(made([{ trouble, ways: [way] }]), MM);
    expect(lines.at(-1)).toContain(`what helps against ${name}: Make the picture 117`);
  });
});

describe("shareText(share)", () => {
  it.each([
    [0, "0%"],
    [0.00004, "under 0.1%"],
    [0.0034, "0.3%"],
    [0.0096, "1%"],
    [0.246, "25%"],
  ])("writes %d as %s", (share, text) => {
    expect(shareText(share)).toBe(text);
  });
});
