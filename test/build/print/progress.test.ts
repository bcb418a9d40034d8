import { describe, expect, it } from "vitest";
import { linesLog } from "../../../src/build/print/progress.ts";
import { TimeLeft } from "../../../src/build/print/time-left.ts";

describe("TimeLeft", () => {
  it("foretells nothing before six are done, and then by the time that each took", () => {
    let now = 0;
    const left = new TimeLeft(10, () => now);
    const steps = Array.from({ length: 10 }, () => {
      now += 200;
      return left.step();
    });
    // Six in 1200 ms: 200 ms each, and four to go.
    expect(steps).toEqual([undefined, undefined, undefined, undefined, undefined, 800, 600, 400, 200, 0]);
  });

  it("goes by the last forty only", () => {
    let now = 0;
    const left = new TimeLeft(200, () => now);
    const step = (ms: number): number | undefined => {
      now += ms;
      return left.step();
    };
    for (let i = 0; i < 60; i += 1) step(1000);
    for (let i = 0; i < 39; i += 1) step(100);
    expect(step(100)).toBe(100 * 100);
  });
});

describe("linesLog(count)", () => {
  it("tells as seldom as every half minute how many are printed and how long it still takes", () => {
    let now = 0;
    const told: string[] = [];
    const log = linesLog(
      100,
      (line) => told.push(line),
      () => now,
    );
    for (let i = 0; i < 100; i += 1) {
      now += 4000;
      log.step("a packet");
    }
    log.end();
    expect(told.slice(0, 2)).toEqual([
      "8 of 100 PDFs printed, about 6 min left",
      "16 of 100 PDFs printed, about 6 min left",
    ]);
    expect(told.at(-1)).toBe("96 of 100 PDFs printed, less than a minute left");
    expect(told).toHaveLength(12);
  });

  it("says nothing between where all is soon done", () => {
    const told: string[] = [];
    const log = linesLog(
      20,
      (line) => told.push(line),
      () => 0,
    );
    for (let i = 0; i < 20; i += 1) log.step("a packet");
    expect(told).toEqual([]);
  });
});
