import { describe, expect, it } from "vitest";
import { editionOf } from "../../../src/output/views/edition.ts";
import { packetFooter } from "../../../src/output/views/packet-footer.ts";
import { fixtureView, kitWith, version } from "../feeds/made-kits.ts";

describe("editionOf(kit)", () => {
  it("writes days as people do, and names the newest version first", () => {
    const { versions, current } = editionOf(
      kitWith("moon", { links: [], versions: [version("2", "2026-10-03"), version("1", "2024-02-29", "First.")] }),
    );
    expect(versions.map((one) => one.day)).toEqual(["3 October 2026", "29 February 2024"]);
    expect(current?.version).toBe("2");
  });

  it("has no current version where a kit states none", () => {
    expect(editionOf(kitWith("moon", {})).current).toBeUndefined();
  });
});

describe("packetFooter(kit, title, paper)", () => {
  const paper = { name: "a4" } as const;

  it("names the version that was printed, where there is one", () => {
    const { kit } = fixtureView("little-gull", { versions: [version("1.1", "2026-09-12")] });
    expect(packetFooter(kit, "Little Gull: packet", paper)).toMatch(
      /^Little Gull: packet · version 1\.1 · 112 leaves of .* · A4$/,
    );
    expect(packetFooter({ ...kit, versions: [] }, "Little Gull: packet", paper)).toMatch(/^Little Gull: packet · 112/);
  });
});
