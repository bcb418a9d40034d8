import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { straysIn } from "../../../src/input/files/strays.ts";
import { inFolder } from "../kit/kit-folders.ts";

describe("straysIn(base, folder, named)", () => {
  it("names what nothing names, folders with a slash, and leaves hidden files alone", () => {
    inFolder((base) => {
      const folder = join(base, "content/kits/moon");
      mkdirSync(join(folder, "photos"), { recursive: true });
      mkdirSync(join(folder, "old"));
      for (const name of ["index.md", "moon.svg", "README.md", "gull.11tydata.js", ".DS_Store", "._index.md"])
        writeFileSync(join(folder, name), "");
      expect(straysIn(base, "content/kits/moon", ["index.md", "./moon.svg", "photos/a.jpg"])).toEqual([
        { folder: "content/kits/moon", names: ["README.md", "gull.11tydata.js", "old/"] },
      ]);
      expect(straysIn(base, "content/kits/sun", [])).toEqual([]);
    });
  });
});
