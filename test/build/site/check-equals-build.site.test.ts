import { describe, expect, it } from "vitest";
import { compareCheckAndBuild } from "../../hostile/check-equals-build.ts";
import { SOUND_SITE } from "../../hostile/random-site.ts";

describe("check and build", () => {
  it("agree on random sites: what passes the one is built by the other, what does not is told", async () => {
    expect(Object.keys(SOUND_SITE)).toHaveLength(6);
    const { tried, built } = await compareCheckAndBuild({ sites: 40, print: 1 });
    expect(tried).toBe(40);
    // Neither all nor none of them can be built.
    expect(built).toBeGreaterThan(5);
    expect(built).toBeLessThan(35);
  });
});
