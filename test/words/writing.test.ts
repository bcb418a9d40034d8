import { afterEach, describe, expect, it } from "vitest";
import { dayText } from "../../src/words/dates.ts";
import { setLanguage } from "../../src/words/language.ts";
import { money } from "../../src/words/money.ts";

afterEach(() => setLanguage("en"));

describe("money(amount, currency)", () => {
  it.each([
    ["en", 2, "EUR", "€2.00"],
    ["en", 0.345, "GBP", "£0.35"],
    ["en", 1200, "JPY", "¥1,200.00"],
    ["en", 2.5, "crowns", "2.50 crowns"],
    ["en", 2, "", "2.00"],
    ["de", 2.5, "EUR", "2,50\u00a0€"],
    ["de", 2.5, "Kronen", "2,50 Kronen"],
  ])("%s: %d of %s is %s", (tag, amount, currency, wanted) => {
    setLanguage(tag);
    expect(money(amount, currency)).toBe(wanted);
  });
});

describe("dayText(date)", () => {
  it.each([
    ["en", "3 October 2026"],
    ["en-US", "October 3, 2026"],
    ["de", "3. Oktober 2026"],
  ])("%s: %s", (tag, wanted) => {
    setLanguage(tag);
    expect(dayText("2026-10-03")).toBe(wanted);
  });
});
