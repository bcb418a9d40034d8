import { describe, expect, it } from "vitest";
import { tasksOf } from "../../../src/core/class/tasks.ts";
import { toolBlocks } from "../../../src/core/class/tool-blocks.ts";
import { madeKit } from "../kit/made-kit.ts";
import { madeClass, madeSeat } from "./made-seats.ts";

const RATES = { leaf: 60, score: 0, mark: 6, cut: 12, fold: 0, check: 0, tack: 0, notch: 0, part: 0, first: 2 };

/** By hand: three of five leaves have two cuts of 18 seconds with their mark, so a batch of three and one of two leaves take 4.2 and 2.6 minutes. */
const seat = (cutWith: "knife" | "scissors", pace = 1) =>
  madeSeat(1, {
    kit: madeKit({ rates: RATES, fit: { batch: 3, cutWith } }),
    byStage: { score: 10, part: 20 },
    pace,
  });

const blocks = (ready: ("scores" | "parts")[], fit = seat("knife")) => {
  const plan = madeClass({ ready });
  return toolBlocks(plan, fit, tasksOf(plan, fit)).map(({ task, tools, holds, minutes }) => [
    task,
    tools.join(),
    ...[holds, minutes].map((value) => Math.round(value * 1e6) / 1e6),
  ]);
};

describe("toolBlocks(plan, fit, tasks)", () => {
  it("holds the awl for score lines, the knife for each batch's cuts and the parts, the glue gun for the window", () => {
    expect(blocks([])).toEqual([
      [0, "awl", 10, 10],
      [1, "knife,mat", 1.2, 4.2],
      [4, "knife,mat", 0.6, 2.6],
      [6, "knife,mat", 15, 15],
      [6, "glueGun", 5, 5],
    ]);
  });

  it("leaves out what is ready, and cuts with scissors where the kit does", () => {
    expect(blocks(["scores", "parts"], seat("scissors"))).toEqual([
      [0, "scissors", 1.2, 4.2],
      [3, "scissors", 0.6, 2.6],
      [5, "knife,mat", 0, 0],
      [5, "glueGun", 5, 5],
    ]);
  });

  it("counts at the seat's pace", () => {
    expect(blocks(["scores", "parts"], seat("knife", 2))[0]).toEqual([0, "knife,mat", 2.4, 8.4]);
  });
});
