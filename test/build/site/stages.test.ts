import { readdirSync } from "node:fs";
import { join, matchesGlob, relative } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { STAGES, watchedFolders } from "../../../src/build/stages.ts";
import { makeProject, type Project } from "./project.ts";

const CLASS = `---
title: An evening
date: 2027-02-04
place: Reading room
kits: [harbour-moon]
sessions: [{ minutes: 120 }]
seats:
  - seat: 1
    book: { leafHeight: 216, leafWidth: 140, blockThickness: 24, leaves: 204, pageOneLeaf: 5, lastPage: 399 }
---
`;

describe("the stages of a build", () => {
  let project: Project;
  let files: string[];
  let told: string;
  beforeAll(() => {
    project = makeProject({ kits: ["harbour-moon"] });
    project.write("content/classes/one/index.md", CLASS);
    const { code, stdout, stderr } = project.build();
    if (code !== 0) throw new Error(stderr);
    told = stdout;
    const dist = join(project.folder, "dist");
    files = readdirSync(dist, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => relative(dist, join(entry.parentPath, entry.name)));
  });
  afterAll(() => project.remove());

  const stages = STAGES.filter((stage) => stage.serving !== "only");

  it("make every file of the site, each by one stage", () => {
    const makers = files.map((file) => [
      file,
      stages.filter(({ makes }) => makes.some((glob) => matchesGlob(file, glob))).map(({ name }) => name),
    ]);
    expect(makers.filter(([, names]) => names!.length !== 1)).toEqual([]);
  });

  it("make each what they state", () => {
    const none = stages.flatMap(({ makes }) =>
      makes.filter((glob) => !glob.includes("photos") && !files.some((file) => matchesGlob(file, glob))),
    );
    expect(none).toEqual([]);
  });

  it("are told of when all is made", () => {
    expect(told).toContain("1 kit and 1 class in dist: open dist/index.html");
  });

  it("have names of their own, and read folders of the project", () => {
    expect(new Set(STAGES.map(({ name }) => name)).size).toBe(STAGES.length);
    expect(watchedFolders().toSorted()).toEqual(["content", "layouts", "src"]);
  });
});
