import { readFileSync } from "node:fs";
import { join } from "node:path";
import { minVersion, subset } from "semver";
import { describe, expect, it } from "vitest";

const ROOT = join(import.meta.dirname, "../..");
const json = (file: string) => JSON.parse(readFileSync(join(ROOT, file), "utf8"));

interface Locked {
  readonly optional?: boolean;
  readonly engines?: { readonly node?: string } | readonly string[];
}

/** The oldest version of each side of a range. */
const oldestOf = (range: string): string[] => range.split("||").map((side) => minVersion(side)!.version);

describe("the engines that package.json states", () => {
  const { engines, version } = json("package.json");
  const { packages } = json("package-lock.json");

  it("are none that an installed package cannot run on", () => {
    const wants = Object.entries(packages as Record<string, Locked>).flatMap(([path, { engines: own, optional }]) =>
      path !== "" && !optional && own && "node" in own ? [{ path, range: own.node! }] : [],
    );
    expect(wants.length).toBeGreaterThan(100);
    const refused = wants.filter(({ range }) => !subset(engines.node, range));
    expect(refused).toEqual([]);
  });

  it("stand in the lock, too, and so does the version", () => {
    expect(packages[""].engines.node).toBe(engines.node);
    expect([packages[""].version, json("package-lock.json").version]).toEqual([version, version]);
  });

  it("are those that README names", () => {
    const readme = readFileSync(join(ROOT, "README.md"), "utf8");
    const [first, second] = oldestOf(engines.node).map((one) => one.replace(/\.0$/, ""));
    expect(readme).toContain(`Node ${first} or newer (of Node 22, ${second} or newer)`);
  });
});
