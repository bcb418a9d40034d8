import { describe, expect, it } from "vitest";
import { remediesFor } from "../../../src/core/class/remedies.ts";
import type { SeatSchedule, Target } from "../../../src/core/class/schedule.ts";
import { madeKit } from "../kit/made-kit.ts";
import { madeSeat, session } from "./made-seats.ts";

/** A schedule by hand: the made pattern's 5 leaves, 2 of them folded, 30 minutes short. */
function schedule(changes: Partial<SeatSchedule>, end: Partial<Target> = {}): SeatSchedule {
  const earlier: Target = { leaf: undefined, leaves: 0, at: "scores", share: 0.1 };
  return {
    fit: madeSeat(2),
    minutes: 100,
    waits: 0,
    windowAt: 80,
    reaches: [earlier, { leaf: undefined, leaves: 2, at: "leaf", share: 0.7, ...end }],
    pauses: [undefined, undefined],
    short: 30,
    saves: { scores: 0, parts: 0 },
    shorterKits: [],
    ...changes,
  };
}

const plan = { sessions: [session(90), session(25, 10)] };

describe("remediesFor(plan, schedule)", () => {
  it("has nothing for a seat that finishes", () => {
    expect(remediesFor(plan, schedule({ short: 0, saves: { scores: 9, parts: 9 }, shorterKits: [madeKit()] }))).toEqual(
      [],
    );
  });

  // By hand: 3 of 5 leaves are left; a session like the last is 15 minutes of work, so two more do.
  it("begins with what is left for home, and ends with sessions like the last one that are enough", () => {
    expect(remediesFor(plan, schedule({}))).toEqual([
      { kind: "leaves-at-home", leaves: 3, scores: false, minutes: 30 },
      { kind: "more-sessions", sessions: 2 },
    ]);
  });

  it.each([
    [15, 1],
    [15.1, 2],
    [30.1, 3],
    [1, 1],
  ])("needs for %d minutes %d sessions more", (short, sessions) => {
    expect(remediesFor(plan, schedule({ short })).at(-1)).toEqual({ kind: "more-sessions", sessions });
  });

  it("counts the score lines in where they are not done either, and only the window where all leaves are folded", () => {
    const home = (end: Partial<Target>) => remediesFor(plan, schedule({}, end))[0];
    const early = { kind: "leaves-at-home", leaves: 5, scores: true, minutes: 30 };
    expect(home({ leaves: 0, at: "scores" })).toEqual(early);
    expect(home({ leaves: 4 })).toEqual({ kind: "leaves-at-home", leaves: 1, scores: false, minutes: 30 });
    expect(home({ leaves: 5, at: "parts" })).toEqual({ kind: "window-at-home", minutes: 30 });
  });

  it.each([
    ["nothing that saves nothing", 0, 0, []],
    ["also what saves little", 0.5, 0, [{ kind: "scores-before", saves: 0.5, missing: 29.5 }]],
    [
      "also little of both",
      0.5,
      0.25,
      [
        { kind: "scores-before", saves: 0.5, missing: 29.5 },
        { kind: "parts-before", saves: 0.25, missing: 29.75 },
        { kind: "both-before", missing: 29.25 },
      ],
    ],
    ["the score lines", 12, 0, [{ kind: "scores-before", saves: 12, missing: 18 }]],
    ["the parts", 0, 40, [{ kind: "parts-before", saves: 40, missing: 0 }]],
    [
      "both, alone and together",
      12,
      17,
      [
        { kind: "scores-before", saves: 12, missing: 18 },
        { kind: "parts-before", saves: 17, missing: 13 },
        { kind: "both-before", missing: 1 },
      ],
    ],
    [
      "both where they are more than enough together",
      20,
      20,
      [
        { kind: "scores-before", saves: 20, missing: 10 },
        { kind: "parts-before", saves: 20, missing: 10 },
        { kind: "both-before", missing: 0 },
      ],
    ],
  ])("offers to do beforehand %s", (_, scores, parts, remedies) => {
    expect(remediesFor(plan, schedule({ saves: { scores, parts } })).slice(1, -1)).toEqual(remedies);
  });

  it("names the shorter kits of the schedule before more sessions", () => {
    const kits = [madeKit({ slug: "short" }), madeKit({ slug: "shorter" })];
    const between = remediesFor(plan, schedule({ shorterKits: kits, saves: { scores: 1, parts: 0 } })).slice(2, -1);
    expect(between).toEqual(kits.map((kit) => ({ kind: "shorter-kit", kit })));
  });
});
