import { existsSync, rmSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { fixtureText } from "../../input/kit/kit-folders.ts";
import { makeProject, type Project } from "../../site/project.ts";
import { keptByAll } from "../../site/shared-site.ts";

const BOAT = "content/kits/evening-boat/index.md";
const GULL = "content/kits/little-gull/index.md";

describe("a build with broken kits", () => {
  let project: Project;
  beforeAll(() => {
    project = makeProject({ kits: ["little-gull", "evening-boat"], kept: keptByAll() });
  });
  afterAll(() => {
    project.remove();
  });

  const breakBoat = () => project.write(BOAT, fixtureText("evening-boat").replace("leafHeight: 234", "leafHeight: 12"));
  const breakGull = () => project.write(GULL, fixtureText("little-gull").replace("depth: 24", "depth: 60"));
  const lineOf = (text: string, part: string) => text.slice(0, text.indexOf(part)).split("\n").length;

  it("that is the first one stops with code 1, says what is wrong with each kit, and makes no dist", () => {
    breakBoat();
    breakGull();
    const { code, stderr } = project.build();
    expect(code).toBe(1);
    const boatLine = lineOf(fixtureText("evening-boat"), "leafHeight");
    expect(stderr).toContain(`${BOAT}:${boatLine}:3  book.leafHeight: given 12`);
    // 108 mm less 5 mm clearance, halved.
    expect(stderr).toMatch(
      new RegExp(
        `${GULL}:${lineOf(fixtureText("little-gull"), "{ name: sky")}:5 {2}levels\\[2\\]: .*60 mm deep.*51\\.5 mm`,
      ),
    );
    expect(stderr).not.toMatch(/^\s+at .*\.ts:\d+/m);
    expect(existsSync(join(project.folder, "dist"))).toBe(false);
    expect(existsSync(join(project.folder, ".cache/site"))).toBe(false);
  });

  it("keeps the dist of the last good build, byte for byte", () => {
    project.write(GULL, fixtureText("little-gull"));
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

describe("a build of a site with other broken files", () => {
  let project: Project;
  beforeAll(() => {
    project = makeProject({ kits: ["little-gull"] });
  });
  afterAll(() => {
    project.remove();
  });
  const trace = /^\s+at .*:\d+/m;

  it("tells of kits, motifs and cautions together, each with its place, and makes nothing", () => {
    const cautions = project.read("content/words/en/cautions.yaml");
    const motif = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">\n<path d="M0 0h2v2zM5 5h2v2z"/></svg>';
    project.write(GULL, fixtureText("little-gull").replace("leafHeight: 178", "leafHeight: 12"));
    project.write("content/motifs/two.svg", motif);
    project.write("content/words/en/cautions.yaml", cautions.replace("when: cuts", "when: cut"));
    const { code, stderr } = project.build();
    project.write(GULL, fixtureText("little-gull"));
    project.write("content/words/en/cautions.yaml", cautions);
    rmSync(join(project.folder, "content/motifs/two.svg"));
    expect(code).toBe(1);
    expect(stderr).toMatch(/^content\/motifs\/two\.svg:2 {2}motif: 2 pieces/m);
    expect(stderr).toMatch(/^content\/kits\/little-gull\/index\.md:\d+:3 {2}book\.leafHeight: given 12/m);
    expect(stderr).toMatch(/^content\/words\/en\/cautions\.yaml:\d+:3 {2}cautions\[2\]\.when: given "cut"/m);
    expect(stderr).not.toMatch(trace);
    expect(existsSync(join(project.folder, "dist"))).toBe(false);
  });

  it("tells of words that are not known, in English", () => {
    project.write("content/words/en/own.ftl", "nonsense = Nothing\n");
    const { code, stderr } = project.build();
    rmSync(join(project.folder, "content/words/en/own.ftl"));
    expect(code).toBe(1);
    expect(stderr).toMatch(/content\/words\/en\/own\.ftl:1 {2}nonsense: a message that the program does not use/);
    expect(stderr).not.toMatch(trace);
  });

  it("tells of a photo that cannot be read", () => {
    const photo = "photos: [{ file: gull.jpg, alt: The gull }]\n";
    project.write(GULL, fixtureText("little-gull").replace("\nlevels:\n", `\n${photo}levels:\n`));
    project.write("content/kits/little-gull/gull.jpg", "no photo");
    const { code, stderr } = project.build();
    expect(code).toBe(1);
    expect(stderr).toMatch(
      /content\/kits\/little-gull\/index\.md:\d+:\d+ {2}photos\[1\]\.file: "gull\.jpg": a file of another kind/,
    );
    expect(stderr).toContain("dist is as it was");
    expect(stderr).not.toMatch(trace);
    expect(existsSync(join(project.folder, "dist"))).toBe(false);
  });

  it("tells of a browser that is not there", () => {
    project.write(GULL, fixtureText("little-gull"));
    const { code, stderr } = project.build({ LEAFLIGHT_BROWSER: "/no/such/browser" });
    expect(code).toBe(1);
    expect(stderr).toMatch(/LEAFLIGHT_BROWSER names "\/no\/such\/browser"/);
    expect(stderr).not.toMatch(trace);
  });
});

describe("a build without kits", () => {
  it("says on the catalogue that there is none", () => {
    const project = makeProject({ kits: [] });
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
