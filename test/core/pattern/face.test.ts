import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { boxOfFace, curveOfFace, faceOf, layOutPicture } from "../../../src/core/pattern/face.ts";
import { curveOf, fanOf } from "../../../src/core/pattern/fan-of.ts";
import { cellEdges, displayedWidth, readingPositions, tip } from "../../oracle/fan.ts";
import { failureIn, valueFrom } from "../findings/made.ts";
import { fanFor, kitOf, LEVELS, patternFor } from "./made.ts";

const opened = { solve: "height", pictureLeaves: "fill", opening: 1.2 } as const;

describe("layOutPicture(kit)", () => {
  it("lays the picture between the borders, in the shape that it is drawn in", () => {
    const kit = kitOf({ fit: { shape: opened, view: "front", borderLeaves: [3, 1] } });
    const { fan, range, solution, head } = valueFrom(layOutPicture(kit));
    const width = displayedWidth(fanFor(kit, 1.2), 4, 13, 20, "front");
    expect(fan).toEqual(fanFor(kit, 1.2));
    expect(range).toEqual({ first: 3, count: 10 });
    // Ten units wide and ten high.
    expect(solution.height).toBeCloseTo(width, 9);
    expect(head).toBe(50);
  });

  it("takes the picture's own shape: twice as wide is half as high", () => {
    const wide = kitOf({ fit: { shape: opened }, picture: { ...kitOf().picture, width: 20 } });
    expect(valueFrom(layOutPicture(wide)).solution.height).toBeCloseTo(
      displayedWidth(fanFor(wide, 1.2), 3, 12, 20, "along") / 2,
      9,
    );
  });

  it.each([
    [0.5, 49.5],
    [1, 50],
    [25.4 / 16, (25.4 / 16) * 31],
  ])("stands in the middle of the leaf, to a step of %d mm, where no head is stated", (markStep, head) => {
    const shape = { solve: "nothing", pictureLeaves: "fill", height: 100.8, opening: 1 } as const;
    const kit = kitOf({ fit: { head: undefined, markStep, shape } });
    expect(valueFrom(layOutPicture(kit)).head).toBeCloseTo(head, 9);
  });

  const depths = (...list: number[]) => LEVELS.map((level, i) => ({ ...level, depth: list[i]! }));
  const tall = { solve: "nothing", pictureLeaves: "fill", height: 160, opening: 1 } as const;
  it.each([
    ["the book", { book: { lastPage: 30 }, levels: depths(20, 10, 60) }, "pages-need-more-leaves"],
    ["the levels", { levels: depths(20, 10, 90) }, "levels-out-of-order"],
    ["a flap", { levels: depths(20, 40, 61), fit: { shape: { ...tall, opening: 7 } } }, "flap-in-gutter"],
    ["the opening", { fit: { shape: { ...tall, opening: 7 } } }, "opening-too-wide"],
    ["the place", { fit: { shape: tall, lostLeaves: [leafNumber(1)] } }, "picture-off-leaf"],
    ["a lost leaf", { fit: { lostLeaves: [leafNumber(1)] } }, "lost-leaf-outside"],
  ])("fails at the first that is wrong: %s", (_, changes, kind) => {
    expect(failureIn(layOutPicture(kitOf(changes))).kind).toBe(kind);
  });

  it("advises no height off the leaf", () => {
    const shape = { solve: "opening", pictureLeaves: "fill", height: 900 } as const;
    const failure = failureIn(layOutPicture(kitOf({ fit: { shape, view: "along" } })));
    expect(failure).toMatchObject({ kind: "picture-too-wide", mostHeight: 150 });
  });
});

describe("faceOf(kit, layout)", () => {
  const kit = kitOf({ fit: { view: "front", shape: opened, lostLeaves: [leafNumber(6)] } });
  const face = faceOf(kit, valueFrom(layOutPicture(kit)));

  it("has a cell for each picture leaf, and closes the picture over the lost one from there on", () => {
    const edges = cellEdges(readingPositions(fanFor(kit, 1.2), 3, 12, 20, "front"));
    expect(face.front.edges).toEqual(edges.map((edge) => expect.closeTo(edge - edges[0]!, 9)));
    const station = face.front.stations[8]!;
    for (const cell of [0, 1, 2]) expect(face.faces[cell]!(station)).toBeCloseTo(station / face.front.width, 9);
    for (const cell of [3, 4, 9]) expect(face.faces[cell]!(station)).toBeLessThan(station / face.front.width - 1e-6);
  });

  it("knows where the picture lies, and the curve of its tips", () => {
    const { width, height } = face.solution;
    expect(boxOfFace(face)).toEqual({ head: 50, height, width });
    const first = tip(fanFor(kit, 1.2), 3, 20);
    expect(curveOfFace(kit, face).points[0]).toMatchObject({
      x: expect.closeTo(first.x, 9),
      z: expect.closeTo(first.z, 9),
    });
  });

  it("has the fan that the computed pattern has", () => {
    expect(fanOf(patternFor(kit))).toEqual(fanFor(kit, 1.2));
    const { points } = curveOf(patternFor(kit));
    const tips = Array.from({ length: 10 }, (_, i) => tip(fanFor(kit, 1.2), i + 3, 20));
    expect(points.map(({ x, z }) => [x, z])).toEqual(
      tips.map(({ x, z }) => [expect.closeTo(x, 9), expect.closeTo(z, 9)]),
    );
  });
});
