import ical from "ical.js";
import { describe, expect, it } from "vitest";
import { classCalendar } from "../../../src/output/feeds/calendar.ts";
import { readFixtureClass } from "../../core/class/made-class.ts";
import { madeClass, session } from "../../core/class/made-seats.ts";
import { settingsWith } from "./made-kits.ts";

const SETTINGS = settingsWith();

/** Read back by ical.js, an unrelated reader of iCalendar (RFC 5545). */
function read(text: string) {
  const calendar = new ical.Component(ical.parse(text));
  return {
    calendar,
    events: calendar.getAllSubcomponents("vevent").map((one) => ({ stamp: one, event: new ical.Event(one) })),
  };
}

describe("classCalendar(plan, settings)", () => {
  // By hand from the demo class's front matter: three evenings from half past six to nine.
  it("has an entry for each session, in local time, read back by another program", () => {
    const { calendar, events } = read(classCalendar(readFixtureClass(), SETTINGS));
    expect([calendar.name, calendar.getFirstPropertyValue("version")]).toEqual(["vcalendar", "2.0"]);
    expect(events.map(({ event }) => [event.startDate.toString(), event.endDate.toString()])).toEqual([
      ["2027-01-14T18:30:00", "2027-01-14T21:00:00"],
      ["2027-01-21T18:30:00", "2027-01-21T21:00:00"],
      ["2027-01-28T18:30:00", "2027-01-28T21:00:00"],
    ]);
    for (const { event } of events) expect(event.startDate.zone.tzid).toBe("floating");
    expect(events[1]!.event.summary).toBe("Winter evenings at the harbour library: Folding on");
    expect(events[1]!.event.location).toBe("Reading room of the harbour library, up the stairs");
    expect(events[1]!.stamp.getFirstPropertyValue("url")).toBe(`${SETTINGS.url}classes/winter-evenings/`);
  });

  // 3.1: lines end with CR and LF, and are at most 75 octets long. 3.8.4.7: each entry has an id of its own.
  it("keeps the form of RFC 5545", () => {
    const text = classCalendar(
      madeClass({ title: "Äöü, ; \\ ".repeat(20), sessions: [session(60), { ...session(60), date: "2027-02-05" }] }),
      SETTINGS,
    );
    for (const line of text.split("\r\n")) {
      expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
      expect(line).not.toMatch(/[\r\n]/);
    }
    const { events } = read(text);
    expect(new Set(events.map(({ event }) => event.uid)).size).toBe(2);
    expect(events[0]!.event.summary).toContain("Äöü, ; \\ Äöü");
  });

  it("is the same every time, and stamped with the day of its announcement or its own", () => {
    const stampOf = (announced: string | undefined): string => {
      const text = classCalendar(madeClass({ announced }), SETTINGS);
      expect(text).toBe(classCalendar(madeClass({ announced }), SETTINGS));
      return String(read(text).events[0]!.stamp.getFirstPropertyValue("dtstamp"));
    };
    expect(stampOf(undefined)).toBe("2027-02-04T00:00:00Z");
    expect(stampOf("2026-11-20")).toBe("2026-11-20T00:00:00Z");
  });

  it("takes the whole day where no time is stated, goes on after midnight, and leaves out what has no day", () => {
    const late = { ...session(90), starts: "23:00", date: "2027-02-11" };
    const { events } = read(classCalendar(madeClass({ sessions: [session(60), session(60), late] }), SETTINGS));
    expect(events.map(({ event }) => [event.startDate.toString(), event.endDate.toString()])).toEqual([
      ["2027-02-04", "2027-02-05"],
      ["2027-02-11T23:00:00", "2027-02-12T00:30:00"],
    ]);
  });

  it("tells nothing of seats and costs, and needs no address", () => {
    const text = classCalendar(readFixtureClass(), { ...SETTINGS, url: undefined });
    expect(text.replace(/DESCRIPTION:.*/, "")).not.toMatch(/€|EUR|price|cost| mm|Height/i);
    expect(read(text).events).toHaveLength(3);
  });
});
