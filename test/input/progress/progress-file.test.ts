import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { tickUntimed } from "../../../src/core/bench/progress.ts";
import { ProgressError, parseProgress, serialiseProgress } from "../../../src/input/progress/progress-file.ts";
import { anyProgress, begin } from "../../core/bench/made.ts";

const OURS = { kit: "little-gull", fit: "" };

function refusal(text: string, wanted = OURS): ProgressError {
  try {
    parseProgress(text, wanted);
  } catch (error) {
    if (error instanceof ProgressError) return error;
    throw error;
  }
  throw new Error("the text was taken in");
}

describe("a progress file", () => {
  it("gives back what was written, whatever it is", () => {
    fc.assert(
      fc.property(anyProgress, (progress) => {
        expect(parseProgress(serialiseProgress(progress), progress)).toEqual(progress);
      }),
      { seed: 4, numRuns: 300 },
    );
  });

  it("is refused with a ProgressError, and with nothing else, when a part of it is damaged", () => {
    const spoil = fc.oneof(
      fc.string(),
      fc.jsonValue().map((value) => JSON.stringify(value)),
      fc.tuple(anyProgress, fc.nat()).map(([progress, at]) => {
        const text = serialiseProgress(progress);
        return text.slice(0, at % (text.length - 2));
      }),
    );
    fc.assert(
      fc.property(spoil, (text) => {
        expect(refusal(text).message).not.toBe("");
      }),
      { seed: 5, numRuns: 300 },
    );
  });

  const file = () => JSON.parse(serialiseProgress(tickUntimed(begin(), [1, 2]))) as Record<string, unknown>;
  it.each([
    ["schema", "leaflight/progress/0", /not a progress file of this version: schema is "leaflight\/progress\/0"/],
    ["schema", undefined, /schema is missing/],
    ["kit", 7, /kit is 7, expected text/],
    ["at", 0, /at is 0, expected a whole number from 1 to 5000/],
    ["at", 2.5, /at is 2.5/],
    ["ticks", {}, /ticks is {}, expected a list/],
    ["ticks", [[1, -1]], /ticks\[0\]\[1\] is -1, expected a number from 0/],
    [
      "ticks",
      [
        [4, 0],
        [3, 0],
        [4, 9],
      ],
      /ticks has leaf 4 twice/,
    ],
    ["passed", ["batch 1", 2], /passed\[1\] is 2, expected text/],
    ["lost", [{ leaf: 5, cleared: [[0, 1]] }], /lost\[0\].cleared\[0\]\[0\] is 0/],
    [
      "lost",
      [
        { leaf: 5, cleared: [] },
        { leaf: 5, cleared: [] },
      ],
      /lost has leaf 5 twice/,
    ],
    ["measured", { leaves: 20, thickness: "9" }, /measured.thickness is "9"/],
    ["measured", { leaves: 20, thickness: 0 }, /measured.thickness is 0, expected a number above 0/],
    ["clock", { worked: 1, seen: 2 }, /clock.ticked is missing/],
  ])("says where it is wrong: %s = %j", (key, value, message) => {
    expect(refusal(JSON.stringify({ ...file(), [key]: value })).message).toMatch(message);
  });

  it("is refused for another kit, and for another fit names that fit", () => {
    const other = serialiseProgress({ ...begin(), kit: "harbour-moon" });
    expect(refusal(other)).toMatchObject({
      fit: undefined,
      message: expect.stringContaining('the kit "harbour-moon"'),
    });
    expect(refusal(serialiseProgress({ ...begin(), fit: "leaves=128" })).fit).toBe("leaves=128");
  });

  it("says of a text that is no JSON that it is none", () => {
    expect(refusal("leaf,page\n1,2\n").message).toContain("not JSON");
  });
});
