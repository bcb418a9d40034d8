import { describe, expect, it } from "vitest";
import type { BroughtDrawing, BroughtPhotograph } from "../../../src/core/beginning/brought.ts";
import { newKitForm } from "../../../src/input/beginning/new-kit-form.ts";
import {
  type Bringing,
  formOf,
  levelsOf,
  limitsOf,
  NOTHING_BROUGHT,
  proposedTitle,
  slugShown,
  withLevels,
  withLimit,
  withMark,
  withPicture,
  withSorting,
  withTrace,
} from "../../../src/page/bring/bringing.ts";
import { fc } from "../../seed.ts";

const UPLOAD = "00000000-0000-4000-8000-000000000000";

const colour = (fill: string, level: number) => ({ name: fill, selector: { fill }, level });

const PHOTOGRAPH: BroughtPhotograph = {
  kind: "photograph",
  width: 900,
  height: 700,
  histogram: Array.from({ length: 256 }, () => 1),
  limits: [[110], [80, 160], [60, 120, 190], [50, 100, 150, 200], [40, 80, 120, 160, 200]],
  isCutOut: false,
  palettes: [
    [colour("#000000", 1), colour("#ffffff", 0)],
    [colour("#000000", 1), colour("#808080", 2), colour("#ffffff", 0)],
  ],
};

const DRAWING: BroughtDrawing = {
  kind: "drawing",
  width: 120,
  height: 100,
  shapes: [],
  sortings: [
    {
      by: "names",
      marks: [
        { name: "boat", selector: "boat", level: 1 },
        { name: "sea", selector: "sea", level: 0 },
      ],
      shares: [0.2, 0.8],
      markOf: [1, 0],
    },
    { by: "colours", marks: [colour("#ff0000", 1)], shares: [1], markOf: [0, 0] },
  ],
};

const photograph = (): Bringing =>
  withPicture(NOTHING_BROUGHT, { upload: UPLOAD, name: "Grey gull.jpg", seen: PHOTOGRAPH });
const drawing = (): Bringing => withPicture(NOTHING_BROUGHT, { upload: UPLOAD, name: "boat.svg", seen: DRAWING });

/** What goes over the wire, as the server reads it. */
function sent(state: Bringing) {
  return newKitForm.parse(JSON.parse(JSON.stringify(formOf(state, []))));
}

function wishOf(state: Bringing) {
  const { picture } = sent(state);
  return picture.from === "brought" ? picture.wish : undefined;
}

describe("formOf(state, taken)", () => {
  it("asks nothing before there is a picture", () => {
    expect(formOf(NOTHING_BROUGHT, [])).toBeUndefined();
    expect(formOf({ ...NOTHING_BROUGHT, origin: "word", word: "  " }, [])).toBeUndefined();
    expect(formOf({ ...NOTHING_BROUGHT, origin: "icon" }, [])).toBeUndefined();
  });

  it.each<[string, Bringing]>([
    ["a word", { ...NOTHING_BROUGHT, origin: "word", word: " To\nsea ", font: "literata" }],
    ["an outline", { ...NOTHING_BROUGHT, origin: "outline" }],
    ["an icon", { ...NOTHING_BROUGHT, origin: "icon", icon: "sailboat" }],
    ["a photograph", photograph()],
    ["tones", withTrace(photograph(), "tones")],
    ["colours", withTrace(photograph(), "colours")],
    ["depth", withTrace(photograph(), "depth")],
    ["a drawing", drawing()],
  ])("is what the server takes: %s", (_, state) => {
    expect(sent(state).title.length).toBeGreaterThan(0);
  });

  it("says of a photograph only what its kind of tracing takes", () => {
    const lit = { ...photograph(), parting: { trace: "silhouette", near: "light", limits: [90] } } as const;
    expect(wishOf(lit)).toEqual({ parting: { trace: "silhouette", near: "light", limits: [90] } });
    expect(wishOf(withTrace(lit, "colours"))).toEqual({
      marks: PHOTOGRAPH.palettes[1],
      parting: { trace: "colours", levels: 3 },
    });
    expect(wishOf(withTrace(lit, "depth"))).toEqual({ parting: { trace: "depth", levels: 3 } });
  });
});

describe("levels and limits", () => {
  it("shows the limits that the program finds, until one is moved", () => {
    expect(limitsOf(photograph())).toEqual([110]);
    const tones = withLevels(withTrace(photograph(), "tones"), 4);
    expect([levelsOf(tones), limitsOf(tones)]).toEqual([4, [60, 120, 190]]);
    expect(wishOf(tones)?.parting?.limits).toBeUndefined();
    expect(wishOf(withLimit(tones, 1, 100))?.parting?.limits).toEqual([60, 100, 190]);
  });

  it("keeps limits in their order, wherever one is moved", () => {
    const tones = withLevels(withTrace(photograph(), "tones"), 6);
    fc.assert(
      fc.property(fc.nat(4), fc.nat(254), (at, limit) => {
        const limits = limitsOf(withLimit(tones, at, limit));
        return (
          limits.length === 5 && limits.every((one, i) => one >= 0 && one <= 254 && (i === 0 || one > limits[i - 1]!))
        );
      }),
    );
  });

  it("takes other colours with another number of levels", () => {
    const colours = withLevels(withTrace(photograph(), "colours"), 2);
    expect(colours.marks).toEqual(PHOTOGRAPH.palettes[0]);
    expect(withMark(colours, 0, { level: 0 }).marks[0]).toMatchObject({ name: "#000000", level: 0 });
  });
});

describe("a drawing", () => {
  it("is sorted as the program does it, another way, or not at all", () => {
    expect(drawing().marks).toEqual(DRAWING.sortings[0]!.marks);
    expect(withSorting(drawing(), 1).marks).toEqual(DRAWING.sortings[1]!.marks);
    expect(wishOf(withSorting(drawing(), undefined))).toEqual({ marks: [] });
  });
});

describe("names", () => {
  it("follow from the picture until they are typed", () => {
    expect([proposedTitle(photograph()), slugShown(photograph(), [])]).toEqual(["Grey gull", "grey-gull"]);
    expect(slugShown(photograph(), ["grey-gull"])).toBe("grey-gull-2");
    expect(slugShown({ ...photograph(), title: "Evening" }, [])).toBe("evening");
    expect(slugShown({ ...photograph(), slug: "Mine" }, [])).toBe("Mine");
  });
});
