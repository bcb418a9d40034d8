import { mkdirSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { FIXTURE_KITS, inFolder, readKit } from "../input/kit/kit-folders.ts";
import { makeStrangers, writeStrangers } from "./strangers.ts";

describe("makeStrangers(count)", () => {
  it("makes the same kits every time, and the first ones whatever their number", () => {
    expect(makeStrangers(12)).toEqual(makeStrangers(40).slice(0, 12));
  });

  it("gives each kit a name and a book of its own, and every fixture its turn", () => {
    const strangers = makeStrangers(200);
    expect(new Set(strangers.map(({ slug }) => slug)).size).toBe(200);
    const books = strangers.map(({ text }) => /^book:\n(?: .*\n)+/m.exec(text)![0]);
    expect(new Set(books).size).toBe(200);
    for (const fixture of FIXTURE_KITS)
      expect(strangers.filter((one) => one.fixture === fixture)).toHaveLength(200 / FIXTURE_KITS.length);
  });
});

describe("writeStrangers(content, count)", () => {
  it("writes kits that fit their books", () => {
    inFolder((base) => {
      mkdirSync(join(base, "content/kits"), { recursive: true });
      const strangers = writeStrangers(join(base, "content"), 400);
      expect(readdirSync(join(base, "content/kits")).sort()).toEqual(strangers.map(({ slug }) => slug).sort());
      // Whoever does not fit is told of by name; every thirteenth is of another fixture.
      for (const { slug } of strangers.filter((_, i) => i % 13 === 0))
        expect(readKit(join(base, "content/kits", slug), base).pattern.leaves.length).toBeGreaterThan(100);
    });
  });
});
