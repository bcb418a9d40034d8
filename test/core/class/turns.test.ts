import { describe, expect, it } from "vitest";
import type { ToolBlock } from "../../../src/core/class/tool-blocks.ts";
import { takeTurns } from "../../../src/core/class/turns.ts";
import { fc } from "../../seed.ts";

const block = (task: number, holds: number, minutes: number, tools: ToolBlock["tools"] = ["mat"]): ToolBlock => ({
  task,
  tools,
  holds,
  minutes,
});
const waits = (...of: Parameters<typeof takeTurns>) => takeTurns(...of).map((one) => [...one]);

describe("takeTurns(tools, seats)", () => {
  it("lets nobody wait where nothing is shared, or nothing is held", () => {
    expect(waits({}, [[block(0, 5, 9)], [block(0, 5, 9)]])).toEqual([[], []]);
    expect(waits({ knife: 1 }, [[block(0, 5, 9)], [block(0, 5, 9)]])).toEqual([[], []]);
    expect(waits({ mat: 1 }, [[block(0, 0, 9)], [block(0, 0, 9)]])).toEqual([[], []]);
  });

  // By hand: the mat goes 0–4 to the first, 4–8 to the second, 8–12 to the third; the first comes again at 10 and waits 2.
  it("gives one tool to who comes first, and to who stands first of those", () => {
    const seat = [block(0, 4, 10), block(3, 4, 10)];
    expect(waits({ mat: 1 }, [seat, seat, seat])).toEqual([
      [[3, 2]],
      [
        [0, 4],
        [3, 2],
      ],
      [
        [0, 8],
        [3, 2],
      ],
    ]);
  });

  it("gives each of several tools to one seat", () => {
    const seat = [block(0, 4, 10)];
    expect(waits({ mat: 2 }, [seat, seat, seat])).toEqual([[], [], [[0, 4]]]);
  });

  // By hand: the second has the mat at once but waits for the knife, which is given back at 6.
  it("begins when all tools of a block are free", () => {
    expect(waits({ mat: 2, knife: 1 }, [[block(0, 6, 6, ["knife"])], [block(0, 3, 3, ["knife", "mat"])]])).toEqual([
      [],
      [[0, 6]],
    ]);
  });

  it("never lets more seats hold a tool than there are", () => {
    const blocks = fc.array(fc.tuple(fc.integer({ min: 1, max: 9 }), fc.nat(9)), { maxLength: 5 });
    fc.assert(
      fc.property(fc.array(blocks, { maxLength: 8 }), fc.integer({ min: 1, max: 3 }), (sizes, mats) => {
        const seats = sizes.map((own) => own.map(([holds, rest], task) => block(task, holds, holds + rest)));
        const held = takeTurns({ mat: mats }, seats).flatMap((own, i) => {
          let at = 0;
          return seats[i]!.map(({ task, holds, minutes }) => {
            const from = at + (own.get(task) ?? 0);
            at = from + minutes;
            return { from, until: from + holds };
          });
        });
        for (const { from } of held)
          expect(held.filter((other) => other.from <= from && from < other.until).length).toBeLessThanOrEqual(mats);
      }),
    );
  });
});
