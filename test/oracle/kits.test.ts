import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { published } from "../core/pattern/published.ts";
import { FIXTURE_KITS, FIXTURES, fixtureFolder, fixtureFrontMatter, readKit } from "../input/kit/kit-folders.ts";
import type { KitInput } from "./kit-input.ts";
import { compareWithOracle, expectPattern } from "./oracle.ts";

// Source: the oracle of test/oracle, which shares no code with the program and reads pictures with librsvg.
describe("the published pattern of the fixture kits", () => {
  it.each(FIXTURE_KITS)("%s agrees with the oracle leaf by leaf", async (slug) => {
    const input = inMillimetres(fixtureFrontMatter(slug)) as KitInput;
    const svg = readFileSync(join(fixtureFolder(slug), input.picture.file!), "utf8");
    const pattern = published(readKit(fixtureFolder(slug), FIXTURES));
    expect(compareWithOracle(pattern, await expectPattern(input, svg))).toEqual([]);
  });
});

/** Texts such as "1 3/8 in" as millimetres (1 in = 25.4 mm exactly, the international inch of 1959). */
function inMillimetres(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inMillimetres);
  if (value !== null && typeof value === "object")
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, inMillimetres(inner)]));
  if (typeof value !== "string" || !/^\d[\d /.]* in$/.test(value)) return value;
  const sum = value
    .replace(" in", "")
    .split(" ")
    .map((part) => part.split("/").map(Number))
    .reduce((total, [over, under = 1]) => total + over! / under, 0);
  return sum * 25.4;
}
