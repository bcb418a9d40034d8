import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Built, makeProject, type Project } from "../../site/project.ts";
import { keptByAll } from "../../site/shared-site.ts";

describe("several sites from one folder", () => {
  let project: Project;
  let ended: readonly Built[];
  const north = "https://north.harbour.test/folds/";
  const south = "https://south.harbour.test/";
  beforeAll(async () => {
    project = makeProject({ kits: ["little-gull"], kept: keptByAll() });
    for (const name of ["north", "south"]) {
      const kits = join(project.folder, "sites", name, "kits");
      mkdirSync(kits, { recursive: true });
      cpSync(join(project.folder, "content/kits/little-gull"), join(kits, "little-gull"), { recursive: true });
      writeFileSync(join(kits, "../site.yaml"), `title: Folds of the ${name}\n`);
    }
    rmSync(join(project.folder, "content/kits"), { recursive: true });
    ended = await Promise.all([
      project.buildAside({
        LEAFLIGHT_CONTENT: "sites/north",
        LEAFLIGHT_OUTPUT: "made/north",
        LEAFLIGHT_SITE_URL: north,
      }),
      project.buildAside({
        LEAFLIGHT_CONTENT: "sites/south",
        LEAFLIGHT_OUTPUT: "made/south",
        LEAFLIGHT_SITE_URL: south,
      }),
    ]);
  });
  afterAll(() => project.remove());

  it("are made side by side, each with its own kits, title and address", () => {
    expect(ended.map(({ code, stderr }) => [code, code === 0 ? "" : stderr])).toEqual([
      [0, ""],
      [0, ""],
    ]);
    for (const [name, url, other] of [
      ["north", north, south],
      ["south", south, north],
    ] as const) {
      const page = readFileSync(join(project.folder, "made", name, "index.html"), "utf8");
      expect(page).toContain(`Folds of the ${name}`);
      const map = readFileSync(join(project.folder, "made", name, "sitemap.xml"), "utf8");
      expect(map).toContain(`<loc>${url}kits/little-gull/</loc>`);
      for (const text of [page, map]) expect(text).not.toContain(other);
      expect(existsSync(join(project.folder, "made", name, "kits/little-gull/packet-a4.pdf"))).toBe(true);
    }
    expect(existsSync(join(project.folder, "dist"))).toBe(false);
  });

  it("prints nothing anew at another address", () => {
    const moved = project.build({ LEAFLIGHT_SITE_URL: south }, ["--content", "sites/north", "--output", "made/north"]);
    expect([moved.code, moved.stderr.includes("Printing"), moved.stdout.includes("Printing")]).toEqual([
      0,
      false,
      false,
    ]);
    expect(readFileSync(join(project.folder, "made/north/sitemap.xml"), "utf8")).toContain(
      `<loc>${south}kits/little-gull/</loc>`,
    );
  });
});
