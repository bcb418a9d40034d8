import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { OUTLINES } from "../../../src/input/outlines/schema.ts";
import { LEVELS, madePicture } from "../layers/made-picture.ts";

const PAGE = readFileSync(join(import.meta.dirname, "../../../content/guide/en/layers.md"), "utf8");
const examples = [...PAGE.matchAll(/^```yaml\n(.*?)^```/gms)].map(([, yaml]) => parse(yaml!).picture as object);

describe("the guide's page on layers", () => {
  it.each(examples.map((picture) => [Object.keys(picture).join(", "), picture] as const))(
    "has a picture of %s that is made without a note",
    (_, picture) => {
      const both = "layers" in picture || "levels" in picture;
      const { map, notes } = madePicture(picture, undefined, both ? undefined : LEVELS.slice(0, 2));
      expect(notes).toEqual([]);
      expect(map.shapes.length).toBeGreaterThan(0);
    },
  );

  it("has every outline in its table", () => {
    const rows = [...PAGE.matchAll(/^\| `(\w+)` \|/gm)].map(([, key]) => key!);
    expect(rows.sort()).toEqual([...OUTLINES].sort());
  });
});
