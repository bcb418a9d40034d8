import { describe, expect, it } from "vitest";
import { kitOf, type PartManifest, partManifest } from "../../../src/input/part/part-manifest.ts";

const sha256 = "0".repeat(64);

function manifest(files: readonly string[], shared: readonly string[] = []): PartManifest {
  const file = (path: string) => ({ path, size: 1, sha256 });
  return {
    schema: "leaflight/part/1",
    shard: { number: 1, of: 2 },
    inputs: { content: "c0", program: "b0", address: "", browser: "", kits: "a0" },
    kits: [{ slug: "moon", key: "01", files: files.map(file) }],
    shared: shared.map(file),
  };
}

describe("a part's manifest", () => {
  const isRead = (given: unknown): boolean => partManifest.safeParse(given).success;
  const good = manifest(["known/moon", "site/kits/moon/cut/frame-mm.svg"], ["site/bundle/a.css"]);

  it("is read, with a count of parts or without", () => {
    expect(isRead(good)).toBe(true);
    expect(isRead({ ...good, shard: undefined })).toBe(true);
    expect(isRead(JSON.parse(JSON.stringify(good)))).toBe(true);
  });

  it.each([
    "../moon/index.html",
    "/site/kits/moon/index.html",
    "site/kits/moon/../../../index.html",
    "site/kits/moon/./index.html",
    "site/kits/moon//index.html",
    "site\\kits\\moon\\index.html",
    "site/kits/gull/index.html",
    "site/kits/moonlight/index.html",
    "site/index.html",
    "part.json",
    "",
  ])("names no file of a kit outside the kit's own folders: %j", (path) => {
    expect(isRead(manifest([path]))).toBe(false);
  });

  it.each(["site/kits/moon/index.html", "known/moon", "bundle/a.css", "site/../a.css"])(
    "names no file as shared that is of a kit or outside the site: %j",
    (path) => {
      expect(isRead(manifest([], [path]))).toBe(false);
    },
  );

  it.each([
    { ...good, schema: "leaflight/part/2" },
    { ...good, shard: { number: 3, of: 2 } },
    { ...good, more: true },
    { ...good, kits: [{ slug: "../moon", key: "01", files: [] }] },
    { ...good, shared: [{ path: "site/bundle/a.css", size: -1, sha256 }] },
    { ...good, shared: [{ path: "site/bundle/a.css", size: 1, sha256: "abc" }] },
    null,
  ])("is not read otherwise", (given) => {
    expect(isRead(given)).toBe(false);
  });

  it("says of a file which kit it belongs to", () => {
    expect(["known/moon", "site/kits/moon/index.html", "site/bundle/a.css", "site/index.html"].map(kitOf)).toEqual([
      "moon",
      "moon",
      undefined,
      undefined,
    ]);
  });
});
