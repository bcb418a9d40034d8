import { describe, expect, it } from "vitest";
import type { Overflow } from "../../../src/build/print/overflow.ts";
import { byFields } from "../../../src/build/print/overflow-fields.ts";
import { OverflowError } from "../../../src/build/print/print-error.ts";
import { formatMessages } from "../../../src/input/files/format-message.ts";
import { KitError } from "../../../src/input/files/message.ts";

const PAGE = { kind: "kit", slug: "moon", name: "kits/moon/packet" } as const;
const BOX: Overflow = { kind: "wide", heading: "", text: "", size: 400, room: 300 };
const TEXTS = [
  { file: "content/kits/moon/index.md", line: 9, column: 7, field: "levels[2].name", text: "harbour", printed: true },
  {
    file: "content/kits/moon/index.md",
    line: 3,
    column: 1,
    field: "title",
    text: "The harbour at night",
    printed: true,
  },
];

describe("byFields(error, texts)", () => {
  it("names the longest text that somebody wrote and that stands in the box", () => {
    const told = byFields(new OverflowError(PAGE, [{ ...BOX, text: "1 The harbour at night" }]), TEXTS);
    expect(told).toBeInstanceOf(KitError);
    expect(formatMessages((told as KitError).messages)).toMatch(
      /^content\/kits\/moon\/index\.md:3:1 {2}title: a text that leaves its box on kits\/moon\/packet; allowed: .*; do: .*$/,
    );
  });

  it("names the heading's own text where what reaches out was written by nobody", () => {
    const told = byFields(new OverflowError(PAGE, [{ ...BOX, heading: "The harbour at night", text: "€9" }]), TEXTS);
    expect(formatMessages((told as KitError).messages)).toContain("title: a text that leaves its box");
  });

  it("leaves alone what nobody wrote, and other errors", () => {
    const own = new OverflowError(PAGE, [{ ...BOX, text: "Leaf" }]);
    expect(byFields(own, TEXTS)).toBe(own);
    const other = new Error("other");
    expect(byFields(other, TEXTS)).toBe(other);
  });
});
