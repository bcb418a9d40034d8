import { describe, expect, it } from "vitest";
import { BuildError } from "../../../src/build/errors/build-error.ts";
import { takePart, usualOutput } from "../../../src/build/shards/asked-part.ts";

describe("takePart(words)", () => {
  it("takes a shard out of a command's words, whichever way it is written", () => {
    const part = { shard: { number: 2, of: 3 } };
    expect(takePart(["--shard", "2/3", "--no-packets"])).toEqual({ part, rest: ["--no-packets"] });
    expect(takePart(["--no-packets", "--shard=2/3"])).toEqual({ part, rest: ["--no-packets"] });
  });

  it("takes kits that are picked by hand, each once", () => {
    const words = ["--only", "moon", "--only=gull", "--only", "moon"];
    expect(takePart(words)).toEqual({ part: { only: ["moon", "gull"] }, rest: [] });
  });

  it("leaves the words alone where no part is asked for", () => {
    expect(takePart(["moon", "--stop-at-misfit"])).toEqual({ part: undefined, rest: ["moon", "--stop-at-misfit"] });
  });

  it.each(["0/3", "4/3", "3", "1/", "/2", "1/1000", "1.5/2", "-1/2", "one/two", "1/2/3", ""])("refuses %j", (given) => {
    expect(() => takePart([`--shard=${given}`])).toThrow(BuildError);
  });

  it("refuses two shards, and both ways at once", () => {
    expect(() => takePart(["--shard", "1/2", "--shard", "2/2"])).toThrow(BuildError);
    expect(() => takePart(["--shard", "1/2", "--only", "moon"])).toThrow(BuildError);
  });

  it("names a folder for each part", () => {
    expect(usualOutput({ shard: { number: 2, of: 3 } })).toBe("parts/2-of-3");
    expect(usualOutput({ only: ["moon", "gull"] })).toBe("parts/moon-gull");
  });
});
