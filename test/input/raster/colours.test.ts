import { describe, expect, it } from "vitest";
import { areaOf, drawing, drawn, problemsOf, traced } from "./pictures.ts";

const stated = (colours: Readonly<Record<string, number>>) => ({
  trace: "colours" as const,
  colours: Object.entries(colours).map(([colour, level]) => ({ colour, level, at: ["picture", "levels", colour] })),
  levels: [1, 2, 3],
  background: 3,
});
const told = (picture: ReturnType<typeof traced>): string[] => picture.notes.map(({ message }) => message);

/** A disc of radius 20, and a square of side 30, on paper of 100 by 100, at 4 pixels a unit. */
const TWO = drawing(
  '<circle cx="30" cy="30" r="20" fill="#b02a2a"/><rect x="60" y="60" width="30" height="30" fill="#2a50b0"/>',
);
const bytes = await drawn(TWO, 400).png().toBuffer();
const [DISC, SQUARE] = [Math.PI * 80 * 80, 120 * 120];

describe("drawRaster(file, plan) of colours", () => {
  it("gives each pixel to the nearest of the stated colours", () => {
    const picture = traced(bytes, stated({ "#c33": 1, "#36c": 2, white: 3 }));
    expect(picture.shapes.map(({ level }) => level)).toEqual([2, 1]);
    expect(areaOf(picture.shapes[1]!.rings) / DISC).toBeCloseTo(1, 2);
    expect(areaOf(picture.shapes[0]!.rings) / (DISC + SQUARE)).toBeCloseTo(1, 2);
    expect(told(picture)).toEqual([]);
  });

  it("takes several colours for one level", () => {
    const picture = traced(bytes, stated({ "#c33": 2, "#36c": 2, white: 3 }));
    expect(picture.shapes.map(({ level }) => level)).toEqual([2]);
    expect(areaOf(picture.shapes[0]!.rings) / (DISC + SQUARE)).toBeCloseTo(1, 2);
  });

  it("sees no third colour where two meet", async () => {
    // Between black and white lies grey.
    const body = '<rect x="10" y="10" width="30" height="80"/><circle cx="70" cy="50" r="20" fill="#777"/>';
    const picture = traced(await drawn(drawing(body), 403).png().toBuffer(), {
      ...stated({ black: 1, "#777": 2, white: 3 }),
      tolerance: 0.05,
    });
    const grey = areaOf(picture.shapes[0]!.rings) - areaOf(picture.shapes[1]!.rings);
    expect(grey / (Math.PI * 80.6 * 80.6)).toBeCloseTo(1, 2);
  });

  it("leaves transparent pixels to the background", async () => {
    const clear = await drawn(TWO.replace('fill="#fff"', 'fill="none"'), 400).png().toBuffer();
    const picture = traced(clear, stated({ "#c33": 1, "#36c": 2 }));
    expect(picture.shapes.map(({ level }) => level)).toEqual([2, 1]);
    expect(areaOf(picture.shapes[0]!.rings) / (DISC + SQUARE)).toBeCloseTo(1, 2);
    expect(areaOf(picture.shapes[1]!.rings) / DISC).toBeCloseTo(1, 2);
  });

  it("says which colours hardly differ, and how much of the picture is of others", () => {
    const picture = traced(bytes, stated({ "#c33": 1, "#c73838": 2, white: 3 }));
    expect(told(picture)).toEqual([
      "the colours #c33 and #c73838 hardly differ, so their levels may mix",
      // 900 of 10,000 square units are blue.
      "9% of the picture is of other colours than those stated, and went to the nearest",
    ]);
  });

  it.each([
    ["none", {}, [["picture", "levels"], "no colour"]],
    ["one", { "#c33": 1 }, [["picture", "levels"], "1 colour"]],
    [
      "one twice",
      { "#c33": 1, "#cc3333": 2, white: 3 },
      [["picture", "levels", "#cc3333"], '"#cc3333" at a second level'],
    ],
    ["none that is known", { sea: 1, white: 3 }, [["picture", "levels", "sea"], '"sea" is no colour']],
  ] as const)("tells of colours that cannot part levels: %s", (_, colours, [at, given]) => {
    expect(problemsOf(bytes, stated(colours))).toMatchObject([{ at, given }]);
  });

  it("tells of limits beside colours", () => {
    const plan = { ...stated({ "#c33": 1, white: 3 }), limits: [100], near: "dark" as const };
    expect(problemsOf(bytes, plan)).toMatchObject([
      { at: ["picture", "limits"], given: "limits beside trace: colours" },
      { at: ["picture", "near"], given: "near beside trace: colours" },
    ]);
  });
});
