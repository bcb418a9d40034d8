import { afterEach, describe, expect, it } from "vitest";
import { clockText, dayTimeText, minutesText } from "../../src/words/clock.ts";
import { dayText } from "../../src/words/dates.ts";
import { setLanguage } from "../../src/words/language.ts";

afterEach(() => setLanguage("en"));

describe("clockText(starts, minutes)", () => {
  it("says from when to when, and counts on past midnight", () => {
    expect(clockText("18:30", 150)).toBe("18:30 to 21:00");
    expect(clockText("09:05", 50)).toBe("09:05 to 09:55");
    expect(clockText("23:30", 60)).toBe("23:30 to 00:30");
  });

  it("writes times as the language does", () => {
    setLanguage("en-US");
    expect(clockText("18:30", 150).replaceAll("\u202f", " ")).toBe("06:30 PM to 09:00 PM");
  });
});

describe("dayTimeText(time, now)", () => {
  const at = (day: number, hours: number, minutes: number): number => new Date(2026, 10, day, hours, minutes).getTime();

  // 30 November 2026 is a Monday.
  it("is a time of today, or of a weekday", () => {
    expect(dayTimeText(at(29, 14, 35), at(29, 14, 5))).toBe("14:35");
    expect(dayTimeText(at(30, 8, 20), at(29, 20, 20))).toBe("Monday 08:20");
  });
});

describe("minutesText(minutes)", () => {
  it.each([
    [0, "0 min"],
    [54, "54 min"],
    [59.6, "1 h"],
    [60, "1 h"],
    [274, "4 h 34 min"],
    [119.7, "2 h"],
  ])("writes %d to the minute", (minutes, text) => {
    expect(minutesText(minutes)).toBe(text);
  });
});

describe("dayText(date)", () => {
  it("writes a day as the language does, wherever it is read", () => {
    expect(dayText("2027-01-14")).toBe("14 January 2027");
    setLanguage("de");
    expect(dayText("2027-01-14")).toBe("14. Januar 2027");
  });
});
