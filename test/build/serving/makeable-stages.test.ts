import { describe, expect, it } from "vitest";
import { makeableStages } from "../../../src/build/serving/makeable-stages.ts";
import { contentPath } from "../../../src/input/files/content-folder.ts";

const kits = [{ slug: "moon" }, { slug: "gull" }];
const photoOfGull = { file: contentPath("kits/gull/index.md") };

describe("makeableStages(kits, asked, photoMessages)", () => {
  it("leaves out photos of the kits whose photos cannot be read, and nothing else", () => {
    expect(makeableStages(kits, ["pictures", "photos"], [photoOfGull])).toEqual([
      { kits: [{ slug: "moon" }], stages: ["pictures", "photos"] },
      { kits: [{ slug: "gull" }], stages: ["pictures"] },
    ]);
    expect(makeableStages([kits[1]!], ["photos"], [photoOfGull])).toEqual([]);
  });

  it("asks for everything at once where all photos can be read", () => {
    expect(makeableStages(kits, ["photos"], [{ file: "content/site.yaml" }])).toEqual([{ kits, stages: ["photos"] }]);
  });
});
