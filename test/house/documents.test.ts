import { execFileSync } from "node:child_process";
import { globSync, readdirSync, readFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { FILE_LIMITS } from "../../src/input/files/site-file.ts";
import * as bounds from "../benchmark/bounds.ts";
import { MEASURED_PAGE, measuredPart, writtenByHand } from "../benchmark/guide-part.ts";
import { readKept } from "../benchmark/kept.ts";
import { FIXTURES } from "../input/kit/kit-folders.ts";

const ROOT = join(import.meta.dirname, "../..");
const GUIDE = "content/guide/en";

const read = (file: string): string => readFileSync(join(ROOT, file), "utf8");
const { scripts, version } = JSON.parse(read("package.json"));
const guide = readdirSync(join(ROOT, GUIDE)).map((file) => `${GUIDE}/${file}`);

/** What stands between back-ticks, or in a node of a picture, and begins like a path of the project. */
const PATH = /^(src|test|content|layouts|\.github)\/\S*$|^[\w-]+\.(md|json)$/;

/** Written by a build, and named without a folder. */
const MADE = /^(kit-data|round-data|pattern|makeability|offline|index|part)\.(js|json|md)$/;

/** Examples that a maker or translator follows, and files that they may add. */
const EXAMPLES =
  /^content\/(kits\/(first-moon|ahoy|gull|evening)|classes\/winter-evenings\/index\.md|words\/cautions\.yaml|fonts$)/;

/** What a document names between back-ticks, outside its blocks of code. */
function named(text: string): string[] {
  return [...text.replace(/^```.*?^```/gms, "").matchAll(/`([^`\n]+)`/g)].map(([, code]) => code!);
}

/** The labels of a document's pictures (Mermaid), a line each. */
function labels(text: string): string[] {
  const pictures = [...text.matchAll(/^```mermaid\n(.*?)^```/gms)].map(([, picture]) => picture!);
  return pictures.flatMap((picture) =>
    [...picture.matchAll(/\["([^"]+)"\]/g)].flatMap(([, label]) => label!.split("<br>")),
  );
}

/** Of paths, those that are not there; a name in angle brackets stands for any. */
const missing = (paths: readonly string[]): string[] =>
  paths.filter((path) =>
    [ROOT, FIXTURES].every((cwd) => globSync(path.replace(/<[^>]+>/g, "*"), { cwd }).length === 0),
  );

const pathsIn = (names: readonly string[]): string[] =>
  names.filter((code) => PATH.test(code) && !MADE.test(code) && !EXAMPLES.test(code));

/** Bounds of scripts, visits, what is kept, and the finder's index. */
const BYTES = [
  bounds.MOST_SCRIPT,
  bounds.MOST_AT_FIRST,
  bounds.MOST_CATALOGUE,
  bounds.MOST_VISIT,
  bounds.MOST_KEPT,
  bounds.MOST_OUTLINE,
];

describe.each(["README.md", "DEVELOPERS.md", "CHANGELOG.md", ...guide])("%s", (document) => {
  const text = read(document);

  it("names paths that exist", () => {
    expect(missing(pathsIn([...named(text), ...labels(text)]))).toEqual([]);
  });

  it("names commands that exist", () => {
    const commands = [...text.matchAll(/npm run (?!-)([a-z][\w:-]*)/g)].map(([, name]) => name!);
    expect(commands.filter((name) => !(name in scripts))).toEqual([]);
  });

  it("links to files that exist, and to headings in them", () => {
    const links = [...text.replace(/`[^`]*`/g, "").matchAll(/\]\((?!https?:)([^)#]*)(#[^)]*)?\)/g)];
    const dead = links.filter(([, file, anchor]) => {
      const target = file === "" ? document : join(dirname(document), file!);
      if (missing([target]).length > 0) return true;
      const ids = [...read(target).matchAll(/^#+ (.*)$/gm)].map(([, heading]) =>
        heading!.toLowerCase().replace(/[^a-z0-9]+/g, "-"),
      );
      return anchor !== undefined && !ids.includes(anchor.slice(1));
    });
    expect(dead.map(([link]) => link)).toEqual([]);
  });

  it("names no time and no size but the bounds that tests hold", () => {
    const held = new Map<string, readonly number[]>([
      ["ms", [bounds.FRAME, bounds.AT_ONCE]],
      ["bytes", BYTES],
      ["MB", Object.values(FILE_LIMITS)],
    ]);
    const byHand = document === MEASURED_PAGE ? writtenByHand(text) : text;
    const figures = [...byHand.matchAll(/(\d[\d., ]*)\s?(ms|s|min|kB|KB|MB|bytes|seconds|minutes)\b/g)];
    const loose = figures.filter(
      ([, figure, unit]) => !held.get(unit!)?.includes(Number(figure!.replace(/[, ]/g, ""))),
    );
    expect(loose.map(([figure]) => figure)).toEqual([]);
  });
});

describe("the documents", () => {
  it("name many paths and commands", () => {
    for (const document of ["README.md", "DEVELOPERS.md"]) {
      expect(pathsIn(named(read(document))).length).toBeGreaterThan(5);
      expect(read(document)).toMatch(/npm run /);
    }
    expect(labels(read("DEVELOPERS.md")).filter((label) => PATH.test(label)).length).toBeGreaterThan(20);
  });

  it("README: is read in a few minutes, leads to every chapter of the guide, and names every script", () => {
    const readme = read("README.md");
    expect(readme.split("\n").length).toBeLessThanOrEqual(120);
    const chapters = guide.filter((file) => !/^kind: reference$/m.test(read(file)));
    expect(chapters.length).toBeGreaterThan(5);
    expect(chapters.filter((file) => !readme.includes(`(${file})`))).toEqual([]);
    const references = guide.filter((file) => !chapters.includes(file)).map((file) => basename(file, ".md"));
    expect(
      references.filter((name) => !readme.includes(`${GUIDE}/${name}.md`) && !readme.includes(`dist/guide/${name}/`)),
    ).toEqual([]);
    const told = Object.keys(scripts).filter(
      (name) => readme.includes(`npm ${name}`) || readme.includes(`npm run ${name}`),
    );
    expect(told).toEqual(
      expect.arrayContaining([
        "build",
        "check",
        "start",
        "test",
        "test:unit",
        "words",
        "schema",
        "benchmark",
        "equality",
      ]),
    );
  });

  it("the guide: has what the benchmark measured as it was kept, and nothing else in its place", () => {
    const page = read(MEASURED_PAGE);
    expect(page).toBe(`${writtenByHand(page)}${measuredPart(readKept())}`);
  });

  it("DEVELOPERS: shows the rooms as the fence draws them", () => {
    const drawn = execFileSync(process.execPath, ["test/house/fence.ts", "--draw"], { cwd: ROOT, encoding: "utf8" });
    expect(/^```mermaid\n(.*?)^```/ms.exec(read("DEVELOPERS.md"))![1]).toBe(drawn);
  });

  it("DEVELOPERS: names the bounds that tests hold", () => {
    const text = read("DEVELOPERS.md");
    for (const figure of [`${bounds.FRAME} ms`, `${bounds.AT_ONCE} ms`]) expect(text).toContain(figure);
    for (const bytes of BYTES) expect(text).toContain(`${bytes.toLocaleString("en")} bytes`);
  });
});

describe("CHANGELOG.md", () => {
  const headings = [...read("CHANGELOG.md").matchAll(/^## (.*)$/gm)].map(([, heading]) => heading!);
  // Semantic Versioning 2.0.0, without labels; ISO 8601 days.
  const FORM = /^(\d+)\.(\d+)\.(\d+) - (\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01]))$/;

  it("has a version and its day in every heading, the newest first, which is the package's", () => {
    expect(headings.length).toBeGreaterThan(1);
    const read = headings.map((heading) => FORM.exec(heading)!);
    expect(headings.filter((_, i) => !read[i])).toEqual([]);
    const numbers = read.map(([, ...parts]) => parts.slice(0, 3).reduce((sum, part) => sum * 1000 + Number(part), 0));
    expect(numbers).toEqual(numbers.toSorted((a, b) => b - a));
    expect(new Set(numbers).size).toBe(numbers.length);
    const days = read.map((parts) => parts[4]!);
    expect(days).toEqual(days.toSorted().reverse());
    expect(headings[0]).toMatch(new RegExp(`^${version.replaceAll(".", "\\.")} - `));
  });
});
