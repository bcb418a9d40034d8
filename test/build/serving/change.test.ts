import { describe, expect, it } from "vitest";
import { changeOf } from "../../../src/build/serving/change.ts";

describe("changeOf()", () => {
  it.each([
    ["content/kits/moon/index.md", { kind: "kit", slug: "moon" }],
    ["content/kits/moon/photos/one.jpg", { kind: "kit", slug: "moon" }],
    ["content/kits/moon", { kind: "shared" }],
    ["content/kits/kit.schema.json", { kind: "shared" }],
    ["content/site.yaml", { kind: "shared" }],
    ["content/words/en/site.ftl", { kind: "shared" }],
    ["layouts/kit.njk", { kind: "shared" }],
    ["src/page/kit/kit-entry.ts", { kind: "scripts" }],
    ["src/core/fan/fan.ts", { kind: "program" }],
    [".eleventy.js", { kind: "program" }],
  ])("%s", (path, change) => expect(changeOf(path, "content")).toEqual(change));

  it("knows kits of content that lies elsewhere", () => {
    expect(changeOf("sites/town/kits/moon/index.md", "sites/town")).toEqual({ kind: "kit", slug: "moon" });
    expect(changeOf("content/kits/moon/index.md", "sites/town")).toEqual({ kind: "shared" });
  });
});
