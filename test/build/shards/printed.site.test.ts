import { cpSync, readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Built, makeProject, type Project } from "../../site/project.ts";
import { keptByAll } from "../../site/shared-site.ts";

const CLASS = `---
title: One evening
date: 2027-01-14
place: Reading room
units: mm
kits: [little-gull]
seats:
  - { seat: 1, kit: little-gull, book: { leafHeight: 178, leafWidth: 110, blockThickness: 9.5, leaves: 96, pageOneLeaf: 3, lastPage: 186 } }
sessions:
  - { title: All of it, starts: "18:30", minutes: 600 }
---
One seat.
`;

describe("a site with packets that is made in parts and joined", { timeout: 900_000 }, () => {
  const projects: Project[] = [];
  const machine = (): Project => {
    const project = makeProject({ kits: ["little-gull"], kept: keptByAll() });
    project.write("content/classes/one-evening/index.md", CLASS);
    projects.push(project);
    return project;
  };
  const files = ({ folder }: Project): Map<string, Buffer> =>
    new Map(
      readdirSync(join(folder, "dist"), { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => join(entry.parentPath, entry.name))
        .toSorted()
        .map((file) => [relative(join(folder, "dist"), file), readFileSync(file)]),
    );
  let whole: Project;
  let away: Project;
  let here: Project;
  let part: Built;
  let joined: Built;
  beforeAll(() => {
    whole = machine();
    away = machine();
    here = machine();
    expect(whole.build()).toMatchObject({ code: 0 });
    part = away.build({}, ["--only", "little-gull"]);
    cpSync(join(away.folder, "parts"), join(here.folder, "parts"), { recursive: true });
    joined = here.run("src/build/merge.ts", {}, ["parts/little-gull"]);
  }, 900_000);
  afterAll(() => {
    for (const one of projects) one.remove();
  });

  it("has the packets in the part, and no fonts that it was printed with", () => {
    expect(part.code, part.stderr).toBe(0);
    const { kits, shared } = JSON.parse(here.read("parts/little-gull/part.json"));
    const paths: string[] = kits[0].files.map(({ path }: { path: string }) => path);
    expect(paths).toContain("site/kits/little-gull/packet-a4.pdf");
    expect(shared.every(({ path }: { path: string }) => path.startsWith("site/bundle/"))).toBe(true);
  });

  it("is the same as at once, with the packets of kits and classes", () => {
    expect(joined.code, joined.stderr).toBe(0);
    const [made, expected] = [files(here), files(whole)];
    expect([...made.keys()]).toEqual([...expected.keys()]);
    expect([...expected].filter(([path, bytes]) => !made.get(path)?.equals(bytes)).map(([path]) => path)).toEqual([]);
    expect([...made.keys()].filter((path) => path.endsWith("packet-a4.pdf"))).toHaveLength(2);
  });
});
