import Ajv from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { classJsonSchema } from "../../../src/input/class/schema.ts";
import { KitError } from "../../../src/input/files/message.ts";
import { readAmong } from "../../core/class/made-class.ts";

const WINTER = `---
title: Winter evenings
date: 2027-01-14
announced: 2026-11-20
place: Reading room
kits: [little-gull, harbour-moon]
places: 8
state: held
seats: [{ seat: 1, pace: 2 }]
sessions:
  - { title: One, date: 2027-01-14, minutes: 150 }
  - { title: Two, date: 2027-01-28, minutes: 120 }
  - { title: Open end, minutes: 60 }
pace: 1.3
bring: [a lamp]
---
Come and fold.
`;
const OWN = "from: winter\ndate: 2027-10-07\n";
const made = (front: string, body = "", others: Readonly<Record<string, string>> = {}) =>
  readAmong({ winter: WINTER, ...others, made: `---\n${front}---\n${body}` });
const messagesOf = (read: () => unknown) => {
  try {
    read();
  } catch (error) {
    if (error instanceof KitError) return error.messages;
    throw error;
  }
  return [];
};

describe("a class that takes over from another", () => {
  it("has all but its days, state and seats, and its sessions as many days apart", () => {
    const { plan, story } = made(OWN);
    expect(plan).toMatchObject({ slug: "made", title: "Winter evenings", pace: 1.3, bring: ["a lamp"] });
    expect([plan.state, plan.announced, plan.awaiting.length, plan.seats]).toEqual(["announced", undefined, 8, []]);
    // By hand: two weeks lie between the first two sessions.
    expect(plan.sessions.map(({ date, minutes }) => [date, minutes])).toEqual([
      ["2027-10-07", 150],
      ["2027-10-21", 120],
      [undefined, 60],
    ]);
    expect(story.markdown.trim()).toBe("Come and fold.");
  });

  it("keeps what it states itself, its text, too", () => {
    const { plan, story } = made(`${OWN}title: Autumn\nplaces: 4\nsessions: [{ minutes: 90 }]\n`, "Autumn it is.\n");
    expect([plan.title, plan.awaiting.length, plan.sessions.length]).toEqual(["Autumn", 4, 1]);
    expect(story.markdown.trim()).toBe("Autumn it is.");
  });

  it("may take over from one that does the same, but not in a circle, nor from what is not there", () => {
    const spring = "---\nfrom: winter\ndate: 2027-04-08\ntitle: Spring\n---\n";
    const chained = made("from: spring\ndate: 2027-10-07\n", "", { spring });
    expect([chained.plan.title, chained.plan.sessions[1]!.date]).toEqual(["Spring", "2027-10-21"]);
    const round = messagesOf(() =>
      made("from: spring\ndate: 2027-10-07\n", "", { spring: spring.replace("winter", "made") }),
    );
    expect(round).toMatchObject([{ file: "content/classes/spring/index.md", line: 2, field: "from" }]);
    const [missing] = messagesOf(() => made("from: wintre\ndate: 2027-10-07\n"));
    expect(missing).toMatchObject({ file: "content/classes/made/index.md", line: 2, given: 'given "wintre"' });
    expect(missing!.allowed).toContain("winter");
  });

  it("needs its own day, and editors know that it needs nothing else", () => {
    expect(messagesOf(() => made("from: winter\n")).map(({ field }) => field)).toEqual(["date"]);
    // Source: ajv, an unrelated reader of JSON Schema.
    const valid = new (Ajv as unknown as typeof Ajv.default)({ strict: false, validateFormats: false }).compile(
      classJsonSchema(),
    );
    expect(
      [{ from: "winter", date: "2027-10-07" }, { from: "winter" }, { date: "2027-10-07" }].map((one) => valid(one)),
    ).toEqual([true, false, false]);
  });
});
