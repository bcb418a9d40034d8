import { describe, expect, it } from "vitest";
import { kitNamed } from "../../../src/input/class/kit-named.ts";
import { ProblemError } from "../../../src/input/files/problem.ts";
import { fixtureKit } from "../../input/kit/kit-folders.ts";

describe("kitNamed(name, offered, at)", () => {
  const gull = fixtureKit("little-gull");
  const offered = { names: ["little-gull"], kit: () => gull, broken: [], drafts: [], folded: ["herring"] };

  it("gives a kit whose leaves are cut", () => {
    expect(kitNamed("little-gull", offered, ["kits", 0])).toBe(gull);
  });

  it("refuses one whose corners are folded, and says why", () => {
    const ask = () => kitNamed("herring", offered, ["kits", 0]);
    expect(ask).toThrow(ProblemError);
    expect(ask).toThrow('the kit "herring", which is folded by corners');
  });
});
