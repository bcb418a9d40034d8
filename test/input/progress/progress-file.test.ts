import { describe, expect, it } from "vitest";
import { tickUntimed } from "../../../src/core/bench/progress.ts";
import type { ProgressFailure } from "../../../src/core/bench/progress-failure.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { parseProgress, serialiseProgress } from "../../../src/input/progress/progress-file.ts";
import { progressFailure } from "../../../src/words/progress.ts";
import { anyProgress, begin } from "../../core/bench/made.ts";
import { fc } from "../../seed.ts";

const OURS = { kit: "little-gull", fit: "" };

function refusal(text: string, wanted = OURS): ProgressFailure {
  const read = parseProgress(text, wanted);
  if ("progress" in read) throw new Error("the text was taken in");
  return read.failure;
}

describe("a progress file", () => {
  it("gives back what was written, whatever it is", () => {
    fc.assert(
      fc.property(anyProgress, (progress) => {
        expect(parseProgress(serialiseProgress(progress), progress)).toEqual({ progress });
      }),
      { numRuns: 300 },
    );
  });

  it("is refused with what is wrong, and nothing is thrown, when a part of it is damaged", () => {
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
        expect(progressFailure(refusal(text))).toMatch(/^[A-Z[a-z].*\.$/s);
      }),
      { numRuns: 300 },
    );
  });

  it("may have been written before other work stood at the bench", () => {
    const { item, ...old } = JSON.parse(serialiseProgress({ ...begin(), item: "step gauge" })) as Record<
      string,
      unknown
    >;
    expect(item).toBe("step gauge");
    expect(parseProgress(JSON.stringify(old), OURS)).toEqual({ progress: begin() });
  });

  it("may tell of what was glued last alone, as it once did", () => {
    const glued = { item: "step frame", at: 5 };
    const old = JSON.stringify({ ...JSON.parse(serialiseProgress(begin())), glued });
    expect(parseProgress(old, OURS)).toEqual({ progress: { ...begin(), glued: [glued] } });
  });

  const file = () =>
    JSON.parse(serialiseProgress(tickUntimed(begin(), [1, 2].map(leafNumber)))) as Record<string, unknown>;
  it.each([
    [
      "schema",
      "leaflight/progress/0",
      /^It is not a file of pieces or progress of this version: its schema is "leaflight\/progress\/0", not "leaflight\/progress\/1"\.$/,
    ],
    ["schema", undefined, /its schema is missing/],
    ["kit", 7, /^kit is 7, but must be text\.$/],
    ["at", 0, /^at is 0, but must be a whole number from 1 to 3000\.$/],
    ["at", 2.5, /at is 2.5/],
    ["ticks", {}, /^ticks is {}, but must be a list\.$/],
    ["ticks", [[1, -1]], /^ticks\[0\]\[1\] is -1, but must be a number of 0 or more\.$/],
    [
      "ticks",
      [
        [4, 0],
        [3, 0],
        [4, 9],
      ],
      /ticks has leaf 4 twice/,
    ],
    ["passed", ["batch 1", 2], /^passed\[1\] is 2, but must be text\.$/],
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
    ["measured", { leaves: 20, thickness: 0 }, /^measured.thickness is 0, but must be a number above 0\.$/],
    ["glued", [{ item: "step frame", at: -1 }], /^glued\[0\].at is -1, but must be a number of 0 or more\.$/],
    ["glued", "frame", /^glued\[0\]/],
    ["sitting", { began: 1 }, /^sitting.worked is missing/],
    ["sitting", { began: 1, worked: 0, until: "21:30" }, /^sitting.until is "21:30"/],
    ["clock", { worked: 1, seen: 2 }, /clock.ticked is missing/],
  ])("says where it is wrong: %s = %j", (key, value, message) => {
    expect(progressFailure(refusal(JSON.stringify({ ...file(), [key]: value })))).toMatch(message);
  });

  it("keeps ticks in book order, whatever their order in the file, and reads past what it does not know", () => {
    const told = JSON.stringify({
      ...file(),
      ticks: [
        [9, 0, "more"],
        [2, 5],
      ],
      later: true,
    });
    expect(parseProgress(told, OURS)).toMatchObject({
      progress: {
        ticks: [
          { leaf: 2, took: 5 },
          { leaf: 9, took: 0 },
        ],
      },
    });
  });

  it("is refused for another kit, and for another fit names that fit", () => {
    const other = serialiseProgress({ ...begin(), kit: "harbour-moon" });
    expect(refusal(other)).toEqual({ kind: "other-kit", kit: "harbour-moon", wanted: "little-gull" });
    expect(refusal(serialiseProgress({ ...begin(), fit: "leaves=128" }))).toEqual({
      kind: "other-fit",
      fit: "leaves=128",
    });
  });

  it("says of a text that is no JSON that it is none", () => {
    expect(refusal("leaf,page\n1,2\n")).toEqual({ kind: "not-json" });
  });
});
