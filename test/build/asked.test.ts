import { describe, expect, it } from "vitest";
import { readAsked } from "../../src/build/asked.ts";
import { BuildError } from "../../src/build/errors/build-error.ts";

describe("readAsked(words, flags)", () => {
  const flags = ["stop-at-misfit", "no-packets"] as const;

  it("asks for the whole site with its packets where nothing is said", () => {
    expect(readAsked([], flags)).toEqual({ kits: [], stopAtMisfit: false, packets: true });
  });

  it("takes names of kits and options, in any order", () => {
    expect(readAsked(["moon", "--stop-at-misfit", "gull"], flags)).toEqual({
      kits: ["moon", "gull"],
      stopAtMisfit: true,
      packets: true,
    });
    expect(readAsked(["--no-packets", "moon"], flags)).toEqual({ kits: ["moon"], stopAtMisfit: false, packets: false });
  });

  it.each([["--moon"], ["-x"], ["moon", "--stop-at-misfit=no"], ["--packets"]])("refuses %j %s", (...words) => {
    expect(() => readAsked(words, flags)).toThrow(BuildError);
  });

  it("refuses an option of another command, and names its own", () => {
    expect(() => readAsked(["--no-packets"], ["stop-at-misfit"], ["--url"])).toThrow(
      /“--no-packets”.* --stop-at-misfit, --url\./,
    );
  });
});
