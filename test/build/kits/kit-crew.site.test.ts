import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { makeProject } from "../../site/project.ts";
import { writeStrangers } from "../../site/strangers.ts";

/** More than are made without threads where there are some. */
const KITS = 7;

const project = makeProject({ kits: [] });
writeStrangers(join(project.folder, "content"), KITS);
afterAll(() => project.remove());

/** Files that some threads make of all kits, with their contents, and the order of the kits. */
function madeBy(threads: number): { readonly files: ReadonlyMap<string, string>; readonly slugs: readonly string[] } {
  const folder = join(project.folder, `by-${threads}`);
  const command = join(import.meta.dirname, "make-by-threads.ts");
  const { code, stdout, stderr } = project.run(command, {}, [String(threads), `by-${threads}`]);
  expect(code, stderr).toBe(0);
  const site = join(folder, "site");
  const files = readdirSync(site, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort()
    .map((file) => [file.slice(site.length), readFileSync(file, "latin1")] as const);
  return { files: new Map(files), slugs: stdout.trim().split(" ") };
}

describe("KitCrew", () => {
  it("makes the same files by two threads, by three, and by none", () => {
    const alone = madeBy(0);
    expect(alone.slugs).toHaveLength(KITS);
    for (const threads of [2, 3]) {
      const { files, slugs } = madeBy(threads);
      expect(slugs).toEqual(alone.slugs);
      expect([...files.keys()]).toEqual([...alone.files.keys()]);
      for (const [path, contents] of files) expect(contents === alone.files.get(path), path).toBe(true);
    }
  });
});
