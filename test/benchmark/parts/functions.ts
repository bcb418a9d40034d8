import { Bench } from "tinybench";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { computePattern } from "../../../src/core/pattern/compute.ts";
import type { LevelMap } from "../../../src/core/picture/level-map.ts";
import { madeKit } from "../../core/kit/made-kit.ts";
import { openDrag } from "../desk-drag.ts";
import { dottedPicture, freshCopy, hatchedPicture, wavyPicture } from "../drawn-pictures.ts";
import type { Figure } from "../figure.ts";
import { askLibrary } from "../plain-crossings.ts";
import type { Scale } from "../scale.ts";
import { cpuTime, EDGES, LEAVES, yardstick } from "../yardstick.ts";

/** Patterns of many edges and of many shapes, beside what must be done at the least and what a library does; and a drag on the desk. */
export async function measureFunctions({ quick }: Scale): Promise<Figure[]> {
  const wavy = wavyPicture(EDGES);
  const bench = new Bench({
    now: cpuTime,
    time: quick ? 500 : 2000,
    iterations: 8,
    warmupIterations: 3,
    warmupTime: 200,
  });
  bench.add("library", () => askLibrary(wavy, LEAVES));
  for (const [name, picture] of [
    ["wavy", wavy],
    ["dots", dottedPicture(1000)],
    ["hatches", hatchedPicture(400)],
  ] as const) {
    let kit = kitOf(picture);
    // What is kept with a picture must not help the next turn.
    const beforeEach = (): void => {
      kit = kitOf(freshCopy(picture));
    };
    bench.add(name, () => computePattern(kit), { beforeEach });
  }
  const drag = await openDrag();
  bench.add("desk-leaves", drag.leaves);
  bench.add("desk-whole", drag.whole);
  const before = yardstick();
  await bench.run();
  const turn = (before + yardstick()) / 2;
  const mean = (name: string): number => {
    const result = bench.getTask(name)?.result;
    if (result?.state !== "completed") throw new Error(`${name} was not measured: ${result?.state}`);
    return result.latency.mean;
  };
  return [
    { line: "pattern-library", value: mean("library") / mean("wavy") },
    { line: "pattern-pass", value: mean("wavy") / turn },
    { line: "dots", value: mean("dots"), yardstick: turn },
    { line: "hatches", value: mean("hatches"), yardstick: turn },
    { line: "desk-leaves", value: mean("desk-leaves"), yardstick: turn },
    { line: "desk-whole", value: mean("desk-whole"), yardstick: turn },
  ];
}

/** A picture on a book of so many picture leaves. */
function kitOf(picture: LevelMap): Kit {
  return madeKit({
    levels: [
      { name: "rim", depth: 10, line: 1, background: false },
      { name: "well", depth: 18, line: 2, background: false },
      { name: "wall", depth: 26, line: 3, background: true },
    ],
    gaugeLines: [10, 18, 26],
    picture,
    book: { leafHeight: 240, leafWidth: 150, blockThickness: 22, leaves: LEAVES + 8, lastPage: 2 * LEAVES + 16 },
    fit: { shape: { solve: "opening", pictureLeaves: "fill", height: 150 }, head: 40, markStep: 0.5 },
  });
}
