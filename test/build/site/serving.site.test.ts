import { rmSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { fixtureText } from "../../input/kit/kit-folders.ts";
import { makeProject, type Project } from "../../site/project.ts";
import { type Serving, serveProject } from "./serving.ts";

const BOAT = "content/kits/evening-boat/index.md";
const GULL = "content/kits/little-gull/index.md";
const CLASS = `---
title: An evening
date: 2027-02-04
place: Reading room
kits: [evening-boat]
sessions: [{ minutes: 120 }]
seats: [{ seat: 1 }]
---
`;
/** What ends a turn. */
const MADE = /\[11ty\] (Copied|Wrote) .* seconds|\[11ty\] Watching/;

describe("serving a site some of which is broken", () => {
  let project: Project;
  let site: Serving;
  beforeAll(async () => {
    project = makeProject({ kits: ["little-gull", "evening-boat"] });
    project.write(BOAT, fixtureText("evening-boat").replace("title: Evening Boat", "title: ["));
    project.write("content/classes/one/index.md", CLASS);
    project.write("content/motifs/broken.svg", "<svg>");
    site = await serveProject(project);
  });
  afterAll(async () => {
    await site.stop();
    project.remove();
  });

  it("says at the first start what is broken, with its place, and serves the rest", async () => {
    const told = await site.says("Server at");
    expect(told).toContain("Left out until this is corrected:");
    expect(told).toMatch(/^content\/kits\/evening-boat\/index\.md:\d+:\d+ {2}front matter: .*; do: /m);
    expect(told).toMatch(/^content\/motifs\/broken\.svg:1 {2}motif: .*; do: /m);
    expect(told).toMatch(
      /^content\/classes\/one\/index\.md:5:8 {2}kits\[1\]: the kit "evening-boat" cannot be built;/m,
    );
    expect(await site.status("/kits/little-gull/")).toBe(200);
    expect(await site.status("/kits/evening-boat/")).toBe(404);
    expect(await site.status("/classes/one/")).toBe(404);
    expect(await site.page("/author/little-gull/")).toContain("For the author of Little Gull");
    expect(await site.page("/author/")).toContain("little-gull/");
    const catalogue = await site.page("/");
    expect(catalogue).toContain("kits/little-gull/");
    expect(catalogue).not.toContain("evening-boat");
  });

  it("takes a kit in as soon as it is corrected", async () => {
    rmSync(join(project.folder, "content/classes"), { recursive: true });
    rmSync(join(project.folder, "content/motifs/broken.svg"));
    project.write(BOAT, fixtureText("evening-boat"));
    await site.says(MADE);
    await expect.poll(() => site.page("/"), { timeout: 120_000 }).toContain("kits/evening-boat/");
    await expect.poll(() => site.status("/kits/evening-boat/"), { timeout: 120_000 }).toBe(200);
  });

  it("leaves out a kit that no longer fits its book, and says what would do", async () => {
    project.write(GULL, fixtureText("little-gull").replace("depth: 24", "depth: 60"));
    const told = await site.says("levels[2]");
    expect(told).toContain("Left out until this is corrected:");
    await expect.poll(() => site.page("/"), { timeout: 120_000 }).not.toContain("kits/little-gull/");
    expect(await site.page("/")).toContain("kits/evening-boat/");
  });

  it("shows no trace of the program's own steps", () => {
    expect(site.told()).not.toMatch(/^\s+at .*:\d+/m);
  });
});
