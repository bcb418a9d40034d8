import { describe, expect, it } from "vitest";
import { differencesOf } from "../../../src/core/makeability/differences.ts";
import type { LostBox } from "../../../src/core/makeability/kept-levels.ts";

/** A column of 1 mm that is lost between two heights. */
function column(left: number, top: number, bottom: number, level = 3, fate: LostBox["fate"] = "hidden"): LostBox {
  return { level, fate, left, right: left + 1, top, bottom };
}

function lost(...boxes: readonly LostBox[]): ReturnType<typeof differencesOf> {
  return differencesOf({ slivers: [], narrow: [], seen: { levels: [], lost: boxes } });
}

describe("differencesOf", () => {
  it("joins columns that stand side by side to one place, with the box round them and their area", () => {
    const boxes = [column(10, 20, 30), column(11, 22, 30), column(12, 21, 40)];
    expect(lost(...boxes)).toEqual([
      { kind: "hidden", level: 3, area: 10 + 8 + 19, box: { left: 10, right: 13, top: 20, bottom: 40 }, boxes },
    ]);
  });

  it("parts places that are 4 mm or more from each other, and tells the larger first", () => {
    const far = lost(column(0, 0, 5), column(5, 0, 9));
    expect(far.map(({ area }) => area)).toEqual([9, 5]);
    expect(lost(column(0, 0, 5), column(4.9, 0, 9))).toHaveLength(1);
  });

  it("keeps levels and fates apart", () => {
    const all = lost(column(0, 0, 5, 2), column(0, 5, 10, 3), column(0, 10, 15, 3, "unreached"));
    expect(all.map(({ kind, level }) => `${kind} ${level}`).toSorted()).toEqual([
      "hidden 2",
      "hidden 3",
      "unreached 3",
    ]);
  });

  it("leaves out what is too small to be seen, less than 4 mm²", () => {
    expect(lost(column(0, 0, 3.9))).toEqual([]);
    expect(lost(column(0, 0, 4))).toHaveLength(1);
  });

  it("tells merged strips and narrow parts at their places", () => {
    const sliver = { level: 1, into: 2, strips: 4, firstLeaf: 3, lastLeaf: 6, from: 10, to: 12, left: 1, right: 4 };
    const part = { level: 2, leaves: 0, left: 0, right: 0.5, top: 0, bottom: 8 };
    const all = differencesOf({
      slivers: [
        { ...sliver, area: 6, share: 0.1 } as unknown as Parameters<typeof differencesOf>[0]["slivers"][number],
      ],
      narrow: [part],
      seen: undefined,
    });
    expect(all).toEqual([
      { kind: "slivers", level: 1, into: 2, strips: 4, area: 6, box: { left: 1, right: 4, top: 10, bottom: 12 } },
      { kind: "narrow", level: 2, leaves: 0, area: 4, box: { left: 0, right: 0.5, top: 0, bottom: 8 } },
    ]);
  });
});
