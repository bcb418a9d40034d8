import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Tally } from "../../hostile/check-equals-build.ts";

const ROOT = join(import.meta.dirname, "../../..");

describe("check and build", () => {
  it("agree on random sites: what passes the one is built by the other, what does not is told", () => {
    const told = execFileSync(process.execPath, ["test/hostile/compare.ts", "26", "1"], {
      cwd: ROOT,
      encoding: "utf8",
    });
    const { tried, built }: Tally = JSON.parse(told.trim().split("\n").at(-1)!);
    expect(tried).toBe(26);
    // Neither all nor none of them can be built.
    expect(built).toBeGreaterThan(3);
    expect(built).toBeLessThan(23);
  });
});
