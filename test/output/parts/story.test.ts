import { describe, expect, it } from "vitest";
import type { Story } from "../../../src/core/story/story.ts";
import { storyPart } from "../../../src/output/parts/story.ts";

function shown(markdown: string, pictures: Story["pictures"] = []): string {
  const story: Story = { file: "content/kits/moon/index.md", markdown, pictures, links: [] };
  return String(storyPart(story, "/kits/moon/", (target) => `LINK${target}`));
}

describe("storyPart(story, page, link)", () => {
  it("links within the site as its page does, and leaves others alone", () => {
    expect(shown("[a](../gull/index.html#book) [b](https://example.org/)")).toBe(
      '<p><a href="LINK/kits/gull/#book">a</a> <a href="https://example.org/">b</a></p>\n',
    );
  });

  it("shows pictures as the page's photos, with their words", () => {
    const html = shown('![a "lamp"](the%20lamp.jpg)', [{ file: "the lamp.jpg", alt: "", line: 1 }]);
    expect(html).toContain('srcset="pictures/the-lamp-480.webp 480w, ');
    expect(html).toContain('alt="a &quot;lamp&quot;"');
  });

  it("shows HTML as it is typed, and never links to a script", () => {
    const html = shown("<script>alert(1)</script> [x](javascript:alert(1)) <img src=x onerror=alert(1)>");
    expect(html).not.toMatch(/<(script|img)/);
    expect(html).not.toMatch(/href="javascript/);
  });
});
