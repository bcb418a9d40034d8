import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Built, makeProject, type Project } from "../../site/project.ts";
import { keptByAll } from "../../site/shared-site.ts";

/** What lists the files of a site: a list without packets is another. */
const LISTS = ["sw.js", "kits/little-gull/offline.json"];

describe("npm run build -- --no-packets", () => {
  let whole: Project;
  let bare: Project;
  let told: Built;
  beforeAll(() => {
    whole = makeProject({ kits: ["little-gull"], kept: keptByAll() });
    bare = makeProject({ kits: ["little-gull"] });
    expect(whole.build().code).toBe(0);
    told = bare.build({ LEAFLIGHT_BROWSER: "/no/browser/is/asked/for" }, ["--no-packets"]);
  });
  afterAll(() => {
    whole?.remove();
    bare?.remove();
  });
  const files = (project: Project): string[] =>
    readdirSync(join(project.folder, "dist"), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => relative(join(project.folder, "dist"), join(entry.parentPath, entry.name)).replaceAll("\\", "/"))
      .toSorted();
  const read = (project: Project, file: string): Buffer => readFileSync(join(project.folder, "dist", file));

  it("ends well without a browser, and says that the site is not to be published", () => {
    expect(told.code, told.stderr).toBe(0);
    expect(told.stderr).toContain(
      "Packets were not printed, and links to them lead nowhere: try this site, but do not publish it.",
    );
  });

  it("makes every file but the packets, byte for byte", () => {
    expect(files(bare)).toEqual(files(whole).filter((file) => !file.endsWith(".pdf")));
    const differ = files(bare).filter((file) => !LISTS.includes(file) && !read(bare, file).equals(read(whole, file)));
    expect(differ).toEqual([]);
  });

  it("lists no packet for a device to keep", () => {
    for (const file of LISTS) expect(read(bare, file).toString("utf8")).not.toMatch(/packet-(a4|letter)\.pdf"/);
  });
});
