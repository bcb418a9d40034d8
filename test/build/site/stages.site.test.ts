import { readdirSync } from "node:fs";
import { join, matchesGlob, relative } from "node:path";
import { describe, expect, inject, it } from "vitest";
import { STAGES } from "../../../src/build/stages.ts";
import { FIXTURE_KITS } from "../../input/kit/kit-folders.ts";

describe("the stages of a build", () => {
  const { folder, stdout } = inject("site");
  const dist = join(folder, "dist");
  const files = readdirSync(dist, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(dist, join(entry.parentPath, entry.name)).replaceAll("\\", "/"));

  it("make every file of the site, each by one stage", () => {
    const makers = files.map((file) => [
      file,
      STAGES.filter(({ makes }) => makes.some((glob) => matchesGlob(file, glob))).map(({ name }) => name),
    ]);
    expect(makers.filter(([, names]) => names!.length !== 1)).toEqual([]);
  });

  it("make each what they state", () => {
    const none = STAGES.flatMap(({ makes }) =>
      makes.filter((glob) => !/photos|pictures/.test(glob) && !files.some((file) => matchesGlob(file, glob))),
    );
    expect(none).toEqual([]);
  });

  it("are told of when all is made", () => {
    expect(stdout).toContain(`${FIXTURE_KITS.length} kits and 1 class in dist: open dist/index.html`);
  });

  it("have names of their own", () => {
    expect(new Set(STAGES.map(({ name }) => name)).size).toBe(STAGES.length);
  });
});
