import { describe, expect, it } from "vitest";
import type { Shown } from "../../../src/core/corner/leaf-fold.ts";
import { takeTurns } from "../../../src/core/corner/turns.ts";
import { fc } from "../../seed.ts";

/** A strip of the picture that lies in a lane of its own, from a leaf to another. */
interface Lane {
  readonly first: number;
  readonly leaves: number;
  readonly length: number;
}

const LANE = 30;

/** Which lanes each leaf meets, from the head. */
function lanesOn(lanes: readonly Lane[], leaf: number): number[] {
  return lanes.flatMap(({ first, leaves }, i) => (leaf >= first && leaf < first + leaves ? [i] : []));
}

function stretchesOf(lanes: readonly Lane[], count: number): Shown[][] {
  return Array.from({ length: count }, (_, leaf) =>
    lanesOn(lanes, leaf).map((i) => ({ from: LANE * i, to: LANE * i + lanes[i]!.length })),
  );
}

/** Which lane each leaf shows, by the turns that were taken. */
function shownLanes(lanes: readonly Lane[], count: number): (number | undefined)[] {
  const { byLeaf } = takeTurns(stretchesOf(lanes, count));
  return byLeaf.map((turn, leaf) => {
    const here = lanesOn(lanes, leaf);
    if (turn) expect(turn.of).toBe(here.length);
    else expect(here.length).toBeLessThan(2);
    return here[turn ? turn.which - 1 : 0];
  });
}

/** How often each lane is shown. */
const counted = (shown: readonly (number | undefined)[], lane: number) => shown.filter((one) => one === lane).length;

const anyLanes = fc.array(
  fc.record({
    first: fc.integer({ min: 0, max: 40 }),
    leaves: fc.integer({ min: 1, max: 40 }),
    length: fc.integer({ min: 3, max: 25 }),
  }),
  { minLength: 1, maxLength: 6 },
);
const COUNT = 80;

describe("turns, by counting", () => {
  it("lets none wait for more than two leaves, or for more than the others at once", () => {
    fc.assert(
      fc.property(anyLanes, (lanes) => {
        const shown = shownLanes(lanes, COUNT);
        lanes.forEach(({ first, leaves }, lane) => {
          let [waited, most] = [0, 3];
          for (let leaf = first; leaf < first + leaves; leaf += 1) {
            most = Math.max(most, lanesOn(lanes, leaf).length);
            waited = shown[leaf] === lane ? 0 : waited + 1;
            expect(waited).toBeLessThan(most);
            if (waited === 0) most = Math.max(3, lanesOn(lanes, leaf).length);
          }
        });
      }),
      { numRuns: 500 },
    );
  });

  it("says how many leaves take turns, the longest wait, and what is never shown", () => {
    fc.assert(
      fc.property(anyLanes, (lanes) => {
        const shown = shownLanes(lanes, COUNT);
        const { facts } = takeTurns(stretchesOf(lanes, COUNT));
        const met = shown.map((_, leaf) => lanesOn(lanes, leaf).length);
        const waits = lanes.flatMap(({ first, leaves }, lane) => {
          let waited = 0;
          return Array.from({ length: leaves }, (_, i) => {
            waited = shown[first + i] === lane ? 0 : waited + 1;
            return waited;
          });
        });
        expect(facts).toEqual({
          leaves: met.filter((count) => count > 1).length,
          most: Math.max(...met),
          every: 1 + Math.max(...waits),
          unseen: lanes.filter((_, lane) => counted(shown, lane) === 0).length,
        });
      }),
    );
  });

  it("shows every strip of three leaves or more, where no more than three ask", () => {
    fc.assert(
      fc.property(anyLanes, (all) => {
        const lanes = all.slice(0, 3);
        const shown = shownLanes(lanes, COUNT);
        lanes.forEach(({ leaves }, lane) => {
          if (leaves >= 3) expect(counted(shown, lane)).toBeGreaterThan(0);
        });
      }),
    );
  });

  const even = (lengths: readonly number[]) => lengths.map((length) => ({ first: 0, leaves: 60, length }));

  it.each([
    ["as often where they are as long", [10, 10], [30, 30]],
    ["every third leaf where one is a tenth as long", [3, 30], [20, 40]],
    ["by their lengths, 2 to 3", [12, 18], [24, 36]],
    ["in a round of three, whatever their lengths", [3, 25, 10], [20, 20, 20]],
    ["in a round of five", [5, 10, 15, 20, 25], [12, 12, 12, 12, 12]],
  ])("shows strips on 60 leaves %s", (_, lengths, wanted) => {
    const shown = shownLanes(even(lengths), 60);
    wanted.forEach((count, lane) => {
      expect(Math.abs(counted(shown, lane) - count)).toBeLessThan(2);
    });
  });

  it("shows one whose edges move fast more often than one as long that stands still", () => {
    const leaves = Array.from({ length: 60 }, (_, i) => [
      { from: 0, to: 20 },
      { from: 30 + 4 * (i % 2), to: 50 + 4 * (i % 2) },
    ]);
    const moving = takeTurns(leaves).byLeaf.filter((turn) => turn?.which === 2).length;
    // 20 mm and 2 · (4 + 4) for its edges, to 20 mm: 36 to 20 of 60 leaves, more than two in three are not given.
    expect(moving).toBeGreaterThanOrEqual(37);
    expect(moving).toBeLessThanOrEqual(40);
  });

  it("follows a thin strip that runs aslant, also where it misses its own next", () => {
    const leaves = Array.from({ length: 40 }, (_, i) => [
      { from: 5 * i, to: 5 * i + 4 },
      { from: 250, to: 290 },
    ]);
    const { facts } = takeTurns(leaves);
    expect(facts).toEqual({ leaves: 40, most: 2, every: 3, unseen: 0 });
  });

  it("has none where leaves meet one strip or nothing", () => {
    expect(takeTurns([[], [{ from: 0, to: 5 }], []])).toEqual({
      byLeaf: [null, null, null],
      facts: { leaves: 0, most: 1, every: 1, unseen: 0 },
    });
    expect(takeTurns([]).facts).toEqual({ leaves: 0, most: 0, every: 1, unseen: 0 });
  });
});
