import { describe, expect, it } from "vitest";
import { formatMessage, formatMessages } from "../../../src/input/files/format-message.ts";
import type { KitMessage } from "../../../src/input/files/message.ts";

const MESSAGE: KitMessage = {
  file: "content/kits/moon/index.md",
  line: 3,
  column: 5,
  field: "title",
  given: "given x",
  allowed: "a text",
  remedy: "correct it",
};

describe("formatMessage(message)", () => {
  it("shows controls, turning marks and halves of letters as their codes", () => {
    const given = "a\u0000b\u001b[31mc\nd\u202ee\ud800f\u009bg";
    expect(formatMessage({ ...MESSAGE, given })).toBe(
      String.raw`content/kits/moon/index.md:3:5  title: a\u0000b\u001b[31mc\u000ad\u202ee\ud800f\u009bg; allowed: a text; do: correct it`,
    );
  });

  it("has no use for marks around words of another direction", () => {
    expect(formatMessage({ ...MESSAGE, given: "a \u2068שלום\u2069 b" })).toMatch(/a שלום b/);
  });

  it("keeps letters of all scripts as they are", () => {
    const given = "Mond über dem Hafen, Ночь, 夜, 🌙";
    expect(formatMessage({ ...MESSAGE, given })).toContain(given);
  });

  it("is bounded, whatever was given", () => {
    const long = "🌙".repeat(1_000_000);
    const told = formatMessage({ ...MESSAGE, file: long, field: long, given: long, allowed: long, remedy: long });
    expect([...told].length).toBeLessThan(2300);
    expect(told).toContain("🌙…");
  });
});

describe("formatMessages(messages)", () => {
  it("tells the first of very many, and how many more there are", () => {
    const lines = formatMessages(Array.from({ length: 1000 }, (_, i) => ({ ...MESSAGE, line: i + 1 }))).split("\n");
    expect(lines).toHaveLength(61);
    expect(lines.at(-1)).toBe("… and 940 messages more, once these are mended.");
  });
});
