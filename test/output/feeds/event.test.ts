import { describe, expect, it } from "vitest";
import type { SiteSettings } from "../../../src/core/site-settings.ts";
import { eventOf } from "../../../src/output/feeds/event.ts";
import { dataBlock } from "../../../src/output/feeds/how-to.ts";
import { fixtureClassView } from "../parts/class/made-view.ts";
import { settingsWith } from "./made-kits.ts";
import { vocabularyFaults } from "./vocabulary-faults.ts";

const SETTINGS = settingsWith({ author: { name: "Quay workshop" } });

/** As a reader of the page gets it. */
const published = (changes: object = {}, settings: SiteSettings = SETTINGS) =>
  JSON.parse(dataBlock(eventOf(fixtureClassView(changes), settings)));

describe("eventOf(view, settings)", () => {
  it("uses types and properties of schema.org only, each where it belongs", () => {
    expect(vocabularyFaults(published())).toEqual([]);
    const bare = { sessions: [{ title: "", date: undefined, starts: undefined, minutes: 60, aside: 0 }], summary: "" };
    expect(vocabularyFaults(published(bare, { ...SETTINGS, url: undefined, author: undefined }))).toEqual([]);
  });

  // By hand from the demo class's front matter: three evenings from half past six to nine.
  it("begins with the first session and ends with the last, in local time", () => {
    const { startDate, endDate, subEvent, maximumAttendeeCapacity } = published();
    expect([startDate, endDate, maximumAttendeeCapacity]).toEqual(["2027-01-14T18:30", "2027-01-28T21:00", 8]);
    expect(subEvent).toHaveLength(3);
    expect(subEvent[1]).toMatchObject({
      name: "Folding on",
      startDate: "2027-01-21T18:30",
      endDate: "2027-01-21T21:00",
    });
  });

  it("counts on from midnight, and has days alone where no time is stated", () => {
    const session = { title: "", date: undefined, starts: "23:00", minutes: 90, aside: 0 };
    expect(published({ sessions: [session] })).toMatchObject({
      startDate: "2027-01-14T23:00",
      endDate: "2027-01-15T00:30",
    });
    const { startDate, subEvent } = published({ sessions: [{ ...session, starts: undefined }] });
    expect([startDate, subEvent]).toEqual(["2027-01-14", undefined]);
  });

  it("tells nothing of seats, books and costs", () => {
    expect(JSON.stringify(published({ summary: "" }))).not.toMatch(/seat|€|EUR|price|cost| mm|Height/i);
  });
});
