import { cpSync, existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ADDRESS } from "../../site/address.ts";
import { type Built, makeProject, type Project } from "../../site/project.ts";
import { keptByAll } from "../../site/shared-site.ts";

const KITS = ["little-gull", "harbour-moon", "evening-boat"];
const AT = { LEAFLIGHT_SITE_URL: ADDRESS };

/** Every file below a folder, with its contents. */
function contents(project: Project, path: string): Map<string, Buffer> {
  const folder = join(project.folder, path);
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
  return new Map(files.toSorted().map((file) => [relative(folder, file), readFileSync(file)]));
}

describe("a site that is made in parts and joined", { timeout: 900_000 }, () => {
  const machines: Project[] = [];
  const machine = (): Project => {
    const project = makeProject({ kits: KITS, classes: true });
    machines.push(project);
    return project;
  };
  let here: Project;
  let whole: Map<string, Buffer>;
  const merge = (parts: readonly string[], options: readonly string[] = ["--no-packets"]): Built =>
    here.run("src/build/merge.ts", AT, [...parts, ...options]);

  /** Makes parts, each on a machine of its own, and copies them here; gives back where they are. */
  const madeParts = (of: number): string[] =>
    Array.from({ length: of }, (_, i) => {
      const part = `parts/${i + 1}-of-${of}`;
      const away = machines[i + 1] ?? machine();
      const made = away.build(AT, ["--shard", `${i + 1}/${of}`, "--no-packets"]);
      expect(made.code, made.stderr).toBe(0);
      cpSync(join(away.folder, part), join(here.folder, part), { recursive: true });
      return part;
    });

  beforeAll(() => {
    const other = makeProject({ kits: KITS, classes: true, kept: keptByAll() });
    const built = other.build(AT, ["--no-packets"]);
    expect(built.code, built.stderr).toBe(0);
    whole = contents(other, "dist");
    other.remove();
    here = machine();
  }, 900_000);
  afterAll(() => {
    for (const one of machines) one.remove();
  });

  it.each([2, 3])("is the same of %i parts as at once, byte for byte", (of) => {
    const joined = merge(madeParts(of));
    expect(joined.code, joined.stderr).toBe(0);
    const made = contents(here, "dist");
    expect([...made.keys()]).toEqual([...whole.keys()]);
    expect([...whole].filter(([path, bytes]) => !made.get(path)?.equals(bytes)).map(([path]) => path)).toEqual([]);
  });

  it("says in each part's manifest what every file of it is", () => {
    const part = JSON.parse(here.read("parts/1-of-2/part.json"));
    expect(part.shard).toEqual({ number: 1, of: 2 });
    const stated = [...part.kits.flatMap((kit: { files: unknown[] }) => kit.files), ...part.shared];
    const files = contents(here, "parts/1-of-2");
    files.delete("part.json");
    expect(stated.map(({ path }) => path).toSorted()).toEqual(
      [...files.keys()].map((path) => path.replaceAll(sep, "/")).toSorted(),
    );
    for (const { path, size } of stated) expect(files.get(path.replaceAll("/", sep))?.length).toBe(size);
  });

  describe("is not joined", () => {
    const parts = ["parts/1-of-2", "parts/2-of-2"] as const;
    const refused = (named: readonly string[], options?: readonly string[]): string => {
      const before = here.list("dist");
      const { code, stderr, stdout } = merge(named, options);
      expect([code, stdout]).toEqual([1, ""]);
      expect(here.list("dist")).toEqual(before);
      const [line, empty, end, ...more] = stderr.trimEnd().split("\n");
      expect([empty, end, more]).toEqual(["", "Nothing was built; dist is as it was.", []]);
      return line!;
    };
    const changed = (path: string, change: () => void, named: readonly string[] = parts): string => {
      const before = readFileSync(join(here.folder, path));
      change();
      try {
        return refused(named);
      } finally {
        writeFileSync(join(here.folder, path), before);
      }
    };
    const rewritten = (path: string, text: string): string => changed(path, () => here.write(path, text));

    it("without parts, with one missing, one twice, or what is none", () => {
      expect(refused([])).toContain("No part was named.");
      expect(refused([parts[0]])).toBe("Part 2 of 2 is missing. Name the folders of all parts.");
      expect(refused([...parts, parts[0]])).toContain("parts/1-of-2 and parts/1-of-2 are the same part.");
      expect(refused([...parts, "content"])).toContain("content is no part of a site: it has no part.json.");
      expect(refused([parts[0], "parts/2-of-3"])).toContain(
        "parts/2-of-3 is one of 3 parts, and parts/1-of-2 one of 2.",
      );
    });

    it("from other content, another address or with packets that were not printed", () => {
      const kit = "content/kits/little-gull/index.md";
      expect(rewritten(kit, here.read(kit).replace(/^title: .*$/m, "title: Another gull"))).toMatch(
        /^little-gull in parts\/\d-of-2 was made from another folder little-gull than the one here\./,
      );
      const settings = "content/site.yaml";
      expect(rewritten(settings, `${here.read(settings)}\n# changed\n`)).toContain("was made from other content");
      expect(refused(parts, ["--no-packets", "--url", "https://other.test/"])).toContain("from another address");
      expect(refused(parts, [])).toContain("from another browser, or without packets");
    });

    it("where a file is not what the manifest says, or the manifest is damaged", () => {
      const file = "parts/1-of-2/part.json";
      const { path } = JSON.parse(here.read(file)).kits[0].files.at(-1);
      const told = rewritten(`parts/1-of-2/${path}`, "another");
      expect(told).toBe(
        `parts/1-of-2/${path} is not what parts/1-of-2/part.json says: it has other contents. Copy the part again, or make it again.`,
      );
      expect(rewritten(file, here.read(file).slice(0, -100))).toContain(
        "parts/1-of-2 is no part of a site: its part.json is damaged.",
      );
      expect(rewritten(file, here.read(file).replace("part/1", "part/9"))).toContain("of another version of Leaflight");
    });

    it("into a folder that holds something else", () => {
      expect(here.run("src/build/merge.ts", AT, [...parts, "--no-packets", "--output", "parts"]).code).toBe(1);
      expect(existsSync(join(here.folder, "parts/1-of-2/part.json"))).toBe(true);
    });
  });

  it("takes the place of no site, and no site takes a part's", () => {
    const part = here.build(AT, ["--shard", "1/2", "--no-packets", "--output", "dist"]);
    expect([part.code, part.stderr]).toEqual([1, expect.stringContaining("The part cannot be made in dist")]);
    const site = here.build(AT, ["--no-packets", "--output", "parts/1-of-2"]);
    expect([site.code, site.stderr]).toEqual([1, expect.stringContaining("it holds something else than a site")]);
  });
});
