import { describe, expect, it } from "vitest";
import { tickUntimed } from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { serialisePieces } from "../../../src/input/piece/piece-file.ts";
import { serialiseProgress } from "../../../src/input/progress/progress-file.ts";
import { readFile } from "../../../src/page/pieces/read-file.ts";
import { begin } from "../../core/bench/made.ts";
import { madePiece } from "../../core/piece/made-piece.ts";

const EARLIER = { ...tickUntimed(begin(), [1, 2].map(leafNumber)), fit: "leaves=128" };

describe("readFile(text, titles)", () => {
  it("reads pieces", () => {
    expect(readFile(serialisePieces([madePiece()]), {})).toEqual({ pieces: [madePiece()] });
  });

  it("reads progress of an earlier version as a piece: the same file is the same piece", () => {
    const text = serialiseProgress(EARLIER);
    const read = readFile(text, { "little-gull": "Little Gull" });
    expect(read).toMatchObject({
      pieces: [{ kit: "little-gull", title: "Little Gull", address: "leaves=128", progress: { ticks: EARLIER.ticks } }],
    });
    const again = readFile(text, {});
    expect("pieces" in read && "pieces" in again && read.pieces[0]!.id === again.pieces[0]!.id).toBe(true);
  });

  it("dates it by when it was worked on last, where that is a time", () => {
    const seen = Date.UTC(2026, 9, 3, 20, 15);
    const dated = { ...EARLIER, clock: { worked: 5, seen, ticked: 5 } };
    expect(readFile(serialiseProgress(dated), {})).toMatchObject({ pieces: [{ last: "2026-10-03T20:15:00.000Z" }] });
    const wild = { ...EARLIER, clock: { worked: 5, seen: 1e300, ticked: 5 } };
    expect("pieces" in readFile(serialiseProgress(wild), {})).toBe(true);
  });

  it.each([
    ["a kit that is no name", { kit: "../x" }],
    ["figures that are no address", { fit: 'x"><script>' }],
  ])("refuses %s", (_, change) => {
    expect(readFile(serialiseProgress({ ...EARLIER, ...change }), {})).toMatchObject({
      failure: { kind: "wrong-value" },
    });
  });

  it("refuses damaged progress with its own place", () => {
    const text = serialiseProgress(EARLIER).replace('"at":1', '"at":"x"');
    expect(readFile(text, {})).toMatchObject({ failure: { kind: "wrong-value", path: "at" } });
  });

  it("refuses progress that is of no kit at all", () => {
    expect(readFile('{"schema":"leaflight/progress/1"}', {})).toHaveProperty("failure");
    expect(readFile('{"schema":"leaflight/progress/1","kit":7,"fit":{}}', {})).toHaveProperty("failure");
  });
});
