import { describe, expect, it } from "vitest";
import { readAsked } from "../../src/build/asked.ts";
import { BuildError } from "../../src/build/errors/build-error.ts";

describe("readAsked(words)", () => {
  it("asks for the whole site where nothing is said", () => {
    expect(readAsked([])).toEqual({ kits: [], stopAtMisfit: false });
  });

  it("takes names of kits and its one option, in any order", () => {
    expect(readAsked(["moon", "--stop-at-misfit", "gull"])).toEqual({ kits: ["moon", "gull"], stopAtMisfit: true });
  });

  it.each([["--moon"], ["-x"], ["moon", "--stop-at-misfit=no"]])("refuses %j %s", (...words) => {
    expect(() => readAsked(words)).toThrow(BuildError);
  });
});
