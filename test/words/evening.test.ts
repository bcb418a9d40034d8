import { describe, expect, it } from "vitest";
import { scheduleOf } from "../../src/core/class/schedule.ts";
import { dryingText, momentText, pairText, sharedToolsText, stretchText, waitsText } from "../../src/words/evening.ts";
import { shoppingBuy } from "../../src/words/shopping.ts";
import { madeClass, madeSeat, session } from "../core/class/made-seats.ts";

const SESSIONS = [session(150, 20, { title: "First", starts: "18:30" }), session(60, 0, { title: "Last" })];

describe("momentText(session, minute)", () => {
  it("is a time of day where the session has one, over midnight too", () => {
    expect(momentText(SESSIONS[0]!, 65)).toBe("19:35");
    expect(momentText({ ...SESSIONS[0]!, starts: "23:30" }, 45)).toBe("00:15");
    expect(momentText(SESSIONS[1]!, 65)).toBe("65 min");
  });
});

describe("stretchText(stretch, goesOn)", () => {
  it("tells what is done", () => {
    const text = (kind: Parameters<typeof stretchText>[0]["kind"], goesOn = false) =>
      stretchText({ kind, from: 0, until: 1 }, goesOn);
    expect([text("work"), text("work", true), text("pause")]).toEqual(["Work at the books", "Work on", "Pause"]);
    expect(text("settle")).toContain("cautions");
    expect(text("catch-up")).toContain("late");
    expect(text("tidy")).toContain("Count tools");
  });
});

describe("dryingText(drying, sessions)", () => {
  it.each([
    [0, 1, "Glue the frame in “First” and hang the door in “Last”. It dries for 12 h."],
    [0, 0, "Glue the frame and hang the door in “First”. It dries for 12 h."],
    [1, "home", "Glue the frame in “Last” and hang the door at home. It dries for 12 h."],
    ["home", "home", "Glue the frame and hang the door at home. It dries for 12 h."],
  ] as const)("glued in %s and hung in %s", (glued, hung, text) => {
    expect(dryingText({ glued, hung, dries: 720 }, SESSIONS)).toBe(text);
  });
});

describe("who sits beside whom, and who waits", () => {
  it("says when the quick one is done", () => {
    const pair = { helper: 3, helped: 1, ahead: 160 };
    expect(pairText({ ...pair, from: undefined }, SESSIONS)).toBe(
      "Seat 3 beside seat 1: done about 2 h 45 min before it.",
    );
    expect(pairText({ ...pair, from: { session: 0, minute: 65 } }, SESSIONS)).toBe(
      "Seat 3 beside seat 1: done about 2 h 45 min before it, in “First” at 19:35.",
    );
  });

  it("names the tools with their count", () => {
    expect(sharedToolsText({ knife: 1, glueGun: 2 })).toBe("1 × craft knife and 2 × glue guns");
  });

  // By hand: two seats press lines for 10 minutes each with one awl.
  it("names who waits how long, or says that nobody does", () => {
    const seats = [1, 2].map((number) => madeSeat(number, { byStage: { score: 10 } }));
    expect(waitsText(scheduleOf(madeClass({ tools: { awl: 2 } }), seats))).toBe("By this estimate, nobody waits.");
    expect(waitsText(scheduleOf(madeClass({ tools: { awl: 1 } }), seats))).toContain("some wait: seat 2: 10 min.");
  });
});

describe("shoppingBuy(line)", () => {
  it("tells whole packs, or a count", () => {
    expect(shoppingBuy({ buy: 12, packs: { count: 2, size: 10 } })).toBe("2 packs of 10");
    expect(shoppingBuy({ buy: 9, packs: { count: 1, size: 10 } })).toBe("one pack of 10");
    expect(shoppingBuy({ buy: 9, packs: undefined })).toBe("9");
    expect(shoppingBuy({ buy: 0, packs: undefined })).toBe("–");
  });
});
