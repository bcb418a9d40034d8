import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { lowest, satisfies } from "./engines.ts";

const ROOT = join(import.meta.dirname, "../..");
const json = (file: string) => JSON.parse(readFileSync(join(ROOT, file), "utf8"));

interface Locked {
  readonly optional?: boolean;
  readonly engines?: { readonly node?: string } | readonly string[];
}

describe("satisfies(version, range)", () => {
  // By hand, from the ranges' grammar (node-semver).
  it.each([
    ["20.19.0", "^20.19.0 || ^22.16.0 || >=24.0.0", true],
    ["20.18.9", "^20.19.0 || ^22.16.0 || >=24.0.0", false],
    ["21.0.0", "^20.19.0 || ^22.16.0 || >=24.0.0", false],
    ["22.16.0", "^20.19 || ^22.12 || >= 24.0", true],
    ["26.1.0", ">= 24.0", true],
    ["20.1.0", "18 || 20 || >=22", true],
    ["21.1.0", "18 || 20 || >=22", false],
    ["12.0.0", "6.* || 8.* || >= 10.*", true],
    ["24.0.0", "*", true],
    ["14.2.0", ">=16 || 14 >=14.17", false],
    ["14.18.0", ">=16 || 14 >=14.17", true],
  ])("%s in %s: %s", (version, range, is) => {
    expect(satisfies(version, range)).toBe(is);
  });
});

describe("the engines that package.json states", () => {
  const { engines, version } = json("package.json");
  const { packages } = json("package-lock.json");

  it("are none that an installed package cannot run on", () => {
    const wants = Object.entries(packages as Record<string, Locked>).flatMap(([path, { engines: own, optional }]) =>
      path !== "" && !optional && own && "node" in own ? [{ path, range: own.node! }] : [],
    );
    expect(wants.length).toBeGreaterThan(100);
    const oldest = lowest(engines.node);
    expect(oldest.length).toBeGreaterThan(1);
    const refused = wants.flatMap(({ path, range }) =>
      oldest.filter((one) => !satisfies(one, range)).map((one) => `${path} wants ${range}, not ${one}`),
    );
    expect(refused).toEqual([]);
  });

  it("stand in the lock, too, and so does the version", () => {
    expect(packages[""].engines.node).toBe(engines.node);
    expect([packages[""].version, json("package-lock.json").version]).toEqual([version, version]);
  });

  it("are those that README names", () => {
    const readme = readFileSync(join(ROOT, "README.md"), "utf8");
    const [first, second] = lowest(engines.node).map((one) => one.replace(/\.0$/, ""));
    expect(readme).toContain(`Node ${first} or newer (of Node 22, ${second} or newer)`);
  });
});
