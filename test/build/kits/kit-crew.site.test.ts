import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { KitCrew } from "../../../src/build/kits/kit-crew.ts";
import { openLibrary } from "../../../src/build/library/library.ts";
import { Placing } from "../../../src/build/store/placing.ts";
import { Store } from "../../../src/build/store/store.ts";
import { makeProject } from "../../site/project.ts";
import { writeStrangers } from "../../site/strangers.ts";

/** More than are made without threads where there are some. */
const KITS = 7;

const surroundings = { hasGuide: true, hasFeed: false, isServed: false };
const project = makeProject({ kits: [] });
writeStrangers(join(project.folder, "content"), KITS);
const folders: string[] = [];
afterAll(() => {
  project.remove();
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

/** Files of a site that some threads make, with their contents, and the order of its kits. */
async function madeBy(threads: number): Promise<{ readonly files: Map<string, string>; readonly slugs: string[] }> {
  const folder = mkdtempSync(join(tmpdir(), "leaflight-crew-"));
  folders.push(folder);
  const [output, aside] = ["site", "aside"].map((name) => join(folder, name));
  for (const one of [output!, aside!]) mkdirSync(one);
  const store = new Store(join(folder, "store"));
  const crew = new KitCrew(store, threads);
  // The catalogue's own text leads to kits that are not here.
  const opening = { whenBroken: "leave out" } as const;
  const library = await openLibrary(project.folder, opening, { store, readKits: (facts) => crew.reader(facts) });
  await crew.make(library.kits, library, { placing: new Placing(output!), aside: aside!, surroundings });
  await crew.close();
  const files = readdirSync(output!, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort()
    .map((file) => [file.slice(output!.length), readFileSync(file, "latin1")] as const);
  return { files: new Map(files), slugs: library.kits.map(({ slug }) => slug) };
}

describe("KitCrew", () => {
  it("makes the same files by two threads, by three, and by none", async () => {
    const alone = await madeBy(0);
    expect(alone.slugs).toHaveLength(KITS);
    for (const threads of [2, 3]) {
      const { files, slugs } = await madeBy(threads);
      expect(slugs).toEqual(alone.slugs);
      expect([...files.keys()]).toEqual([...alone.files.keys()]);
      for (const [path, contents] of files) expect(contents === alone.files.get(path), path).toBe(true);
    }
  });
});
