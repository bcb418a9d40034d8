import { existsSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { fixtureText } from "../../input/kit/kit-folders.ts";
import { makeProject, PACKETS, type Project } from "../../site/project.ts";
import { keptByAll } from "../../site/shared-site.ts";
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
const MADE = /^Followed in \d+\.\d s\.$/gm;

describe("serving a site some of which is broken", () => {
  let project: Project;
  let site: Serving;
  /** Changes files, and waits until a page shows it, which it does early in a turn, and for the turn's end. */
  const followed = async (change: () => void, page: () => Promise<string>, shows: string): Promise<void> => {
    const turns = (): number => site.told().match(MADE)?.length ?? 0;
    const before = turns();
    change();
    await expect.poll(page, { timeout: 120_000 }).toContain(shows);
    await expect.poll(turns, { timeout: 120_000 }).toBeGreaterThan(before);
  };
  beforeAll(async () => {
    // What is printed is counted.
    project = makeProject({
      kits: ["little-gull", "evening-boat"],
      kept: keptByAll().filter((one) => !one.endsWith(PACKETS)),
    });
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
    await site.says("Server at");
    const told = await site.says("All is worked out.");
    expect(told).toContain("Left out until this is corrected:");
    expect(told).toMatch(/^content\/kits\/evening-boat\/index\.md:\d+:\d+ {2}front matter: .*; do: /m);
    expect(told).toMatch(/^content\/motifs\/broken\.svg:1 {2}motif: .*; do: /m);
    expect(told).toMatch(
      /^content\/classes\/one\/index\.md:5:8 {2}kits\[1\]: the kit "evening-boat" cannot be built;/m,
    );
    expect(await site.status("/kits/little-gull/")).toBe(200);
    expect(await site.status("/kits/evening-boat/")).toBe(404);
    expect(await site.status("/classes/one/")).toBe(404);
    const author = (): Promise<string> => site.page("/author/little-gull/");
    await expect.poll(author, { timeout: 120_000 }).toContain("For the author of Little Gull");
    expect(await site.page("/author/")).toContain("little-gull/");
    const catalogue = await site.page("/");
    expect(catalogue).toContain("kits/little-gull/");
    expect(catalogue).not.toContain("evening-boat");
  });

  it("takes a kit in as soon as it is corrected", async () => {
    rmSync(join(project.folder, "content/classes"), { recursive: true });
    rmSync(join(project.folder, "content/motifs/broken.svg"));
    project.write(BOAT, fixtureText("evening-boat"));
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

  it("prints a PDF when it is asked for, and again when its page changed", async () => {
    const [one, same] = await Promise.all([1, 2].map(() => site.get("/kits/evening-boat/table-compact-a4.pdf")));
    expect(one!.headers.get("content-type")).toBe("application/pdf");
    const before = Buffer.from(await one!.arrayBuffer());
    expect(Buffer.from(await same!.arrayBuffer()).equals(before)).toBe(true);
    expect(await site.status("/kits/evening-boat/packet-a3.pdf")).toBe(404);
    expect(site.told().match(/^Printing 1 PDF with/gm)).toHaveLength(1);
    project.write(BOAT, fixtureText("evening-boat").replace("title: Evening Boat", "title: Morning Boat"));
    const page = (): Promise<string> => site.page("/kits/evening-boat/packet/large.html");
    await expect.poll(page, { timeout: 120_000 }).toContain("Morning Boat");
    const after = Buffer.from(await (await site.get("/kits/evening-boat/table-compact-a4.pdf")).arrayBuffer());
    expect(after.equals(before)).toBe(false);
    expect(site.told().match(/^Printing 1 PDF with/gm)).toHaveLength(2);
  });

  it("makes what changed, and nothing else", async () => {
    const file = (path: string): string => join(project.folder, ".cache/serving", path);
    // Its title stands on pages of the whole site.
    const restore = (): void => {
      project.write(BOAT, fixtureText("evening-boat"));
      project.write(GULL, fixtureText("little-gull"));
    };
    await followed(restore, async () => String(await site.status("/kits/little-gull/")), "200");
    expect(await site.status("/kits/little-gull/table-compact-a4.pdf")).toBe(200);
    const untouched = ["kits/little-gull/index.html", "kits/little-gull/front.svg", "glossary/index.html"];
    const before = [...untouched, "kits/evening-boat/index.html"].map((path) => statSync(file(path)).mtimeMs);
    const tellMore = (): void => project.write(BOAT, `${fixtureText("evening-boat")}\nIt comes home at seven.\n`);
    await followed(tellMore, () => site.page("/kits/evening-boat/"), "It comes home at seven.");
    const after = [...untouched, "kits/evening-boat/index.html"].map((path) => statSync(file(path)).mtimeMs);
    expect(after.slice(0, -1)).toEqual(before.slice(0, -1));
    expect(after.at(-1)).toBeGreaterThan(before.at(-1)!);
  });

  it("takes away what a kit had that is removed", async () => {
    rmSync(join(project.folder, "content/kits/little-gull"), { recursive: true });
    const index = join(project.folder, ".cache/serving/kits/little-gull/index.html");
    await expect.poll(() => existsSync(index), { timeout: 120_000 }).toBe(false);
    expect(await site.status("/kits/little-gull/")).toBe(404);
    expect(await site.status("/kits/little-gull/table-compact-a4.pdf")).toBe(404);
    expect(await site.page("/")).not.toContain("little-gull");
  });

  it("shows no trace of the program's own steps", () => {
    expect(site.told()).not.toMatch(/^\s+at .*:\d+/m);
  });
});
