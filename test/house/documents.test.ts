import { globSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";

const ROOT = join(import.meta.dirname, "../..");

/** What stands between back-ticks and begins like a path of the project. */
const PATH = /^(src|test|content|layouts|\.github)\/\S*$|^[\w-]+\.(md|json)$/;

/** Written beside a page by a build, and named without a folder. */
const MADE = /^(kit-data|round-data|pattern|offline|index)\.(js|json|md)$/;

const { scripts } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8"));

describe.each(["README.md", "DEVELOPERS.md"])("%s", (document) => {
  const text = readFileSync(join(ROOT, document), "utf8");
  const named = [...text.replace(/^```.*?^```/gms, "").matchAll(/`([^`\n]+)`/g)].map(([, code]) => code!);

  it("names paths that exist", () => {
    const paths = named.filter((code) => PATH.test(code) && !MADE.test(code));
    expect(paths.length).toBeGreaterThan(5);
    // A name in angle brackets stands for any.
    const missing = paths.filter((path) => globSync(path.replace(/<[^>]+>/g, "*"), { cwd: ROOT }).length === 0);
    expect(missing).toEqual([]);
  });

  it("names commands that exist", () => {
    const commands = [...text.matchAll(/npm run ([a-z][\w:-]*)/g)].map(([, name]) => name!);
    expect(commands.length).toBeGreaterThan(2);
    expect(commands.filter((name) => !(name in scripts))).toEqual([]);
  });
});
