import { describe, expect, it } from "vitest";
import { deadLinks } from "../../../src/build/library/dead-links.ts";
import type { Story } from "../../../src/core/story/story.ts";

const ADDRESSES = new Set(["/", "/kits/moon/", "/kits/gull/", "/kits/gull/packet-a4.pdf"]);

function told(page: string, ...targets: string[]): string[] {
  return toldOf(false, page, targets);
}

function toldOf(isPart: boolean, page: string, targets: readonly string[]): string[] {
  const links = targets.map((target, i) => ({ target, line: i + 1 }));
  const story: Story = { file: "content/kits/moon/index.md", markdown: "", pictures: [], links };
  return deadLinks(new Map([[page, story]]), ADDRESSES, isPart).map(({ line, given }) => `${line} ${given}`);
}

describe("deadLinks(stories, addresses)", () => {
  it("lets pass what leads to a page of the site, to its files, or away", () => {
    const links = ["../gull/", "/kits/gull/index.html#book", "../gull/packet-a4.pdf", "../../", "https://example.org"];
    expect(told("/kits/moon/", ...links)).toEqual([]);
  });

  it("tells of each link that leads nowhere, with its line", () => {
    expect(told("/kits/moon/", "../gul/", "https://example.org", "notes.pdf", "javascript:alert(1)")).toEqual([
      "1 given ../gul/, which leads to no page of this site",
      "3 given notes.pdf, which leads to no page of this site",
      "4 given javascript:alert(1), which leads to no page of this site",
    ]);
  });

  it("of a part of a site lets pass what may be in the whole", () => {
    const links = ["../lantern/", "/classes/winter/", "../../glosary/"];
    expect(toldOf(true, "/kits/moon/", links)).toEqual(["3 given ../../glosary/, which leads to no page of this site"]);
  });
});
