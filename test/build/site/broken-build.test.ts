import { existsSync, rmSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { demoText } from "../../input/kit/kit-folders.ts";
import { makeProject, type Project } from "./project.ts";

const BOAT = "content/kits/evening-boat/index.md";
const GULL = "content/kits/little-gull/index.md";

describe("a build with broken kits", () => {
  let project: Project;
  beforeAll(() => {
    project = makeProject({ demoKits: ["little-gull", "evening-boat"] });
  });
  afterAll(() => {
    project.remove();
  });

  const breakBoat = () => project.write(BOAT, demoText("evening-boat").replace("leafHeight: 234", "leafHeight: 12"));
  const breakGull = () => project.write(GULL, demoText("little-gull").replace("depth: 24", "depth: 60"));
  const lineOf = (text: string, part: string) => text.slice(0, text.indexOf(part)).split("\n").length;

  it("that is the first one stops with code 1, says what is wrong with each kit, and makes no dist", () => {
    breakBoat();
    breakGull();
    const { code, stderr } = project.build();
    expect(code).toBe(1);
    const boatLine = lineOf(demoText("evening-boat"), "leafHeight");
    expect(stderr).toContain(`${BOAT}:${boatLine}:3  book.leafHeight: given 12`);
    // 108 mm less 5 mm clearance, halved.
    expect(stderr).toMatch(
      new RegExp(
        `${GULL}:${lineOf(demoText("little-gull"), "{ name: sky")}:5 {2}levels\\[2\\]: .*60 mm deep.*51\\.5 mm`,
      ),
    );
    expect(stderr).not.toMatch(/^\s+at .*\.ts:\d+/m);
    expect(existsSync(join(project.folder, "dist"))).toBe(false);
    expect(existsSync(join(project.folder, ".cache/site"))).toBe(false);
  });

  it("keeps the dist of the last good build, byte for byte", () => {
    project.write(GULL, demoText("little-gull"));
    rmSync(join(project.folder, "content/kits/evening-boat"), { recursive: true });
    const good = project.build();
    // The gull has warnings; they do not stop it.
    expect(good.stderr).toContain("warning  little-gull:");
    expect(good.code).toBe(0);
    const before = project.list("dist");
    expect(before.some((line) => line.startsWith("kits/little-gull/index.html "))).toBe(true);

    breakGull();
    const broken = project.build();
    expect(broken.code).toBe(1);
    expect(broken.stderr).toContain("levels[2]");
    expect(broken.stderr).toContain("dist is as it was");
    expect(project.list("dist")).toEqual(before);
  });
});

describe("a build without kits", () => {
  it("says on the catalogue that there is none", () => {
    const project = makeProject({ demoKits: [] });
    try {
      const { code, stdout } = project.build();
      expect(code).toBe(0);
      expect(stdout).toContain("0 kits");
      expect(project.read("dist/index.html")).toContain("There is no kit yet");
    } finally {
      project.remove();
    }
  });
});
