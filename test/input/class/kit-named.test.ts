import { describe, expect, it } from "vitest";
import { kitNamed } from "../../../src/input/class/kit-named.ts";
import { ProblemError } from "../../../src/input/files/problem.ts";
import { fixtureKit } from "../../input/kit/kit-folders.ts";

describe("kitNamed(name, offered, at)", () => {
  const gull = fixtureKit("little-gull");
  const offered = { names: ["little-gull"], kit: () => gull, broken: ["boat"], drafts: ["moon"] };

  it("gives a kit of the site", () => {
    expect(kitNamed("little-gull", offered, ["kits", 0])).toBe(gull);
  });

  it.each([
    ["boat", 'the kit "boat" cannot be built'],
    ["moon", 'the kit "moon" is a draft'],
    ["gul", '"gul"'],
  ])("refuses %s, and says why", (name, why) => {
    const ask = () => kitNamed(name, offered, ["kits", 0]);
    expect(ask).toThrow(ProblemError);
    expect(ask).toThrow(why);
  });
});
