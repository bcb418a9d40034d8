import { describe, expect, it } from "vitest";
import type { GuidePage } from "../../../../src/core/guide/guide-page.ts";
import { REFERENCES } from "../../../../src/core/guide/reference.ts";
import { referenceOf } from "../../../../src/input/guide/references.ts";
import { guideContents } from "../../../../src/output/parts/guide/guide-contents.ts";
import { guidePagePart } from "../../../../src/output/parts/guide/guide-page.ts";
import { renderMarkdown } from "../../../../src/output/parts/guide/markdown.ts";
import { viewKit } from "../../../../src/output/views/kit-view.ts";
import { FIXTURES, fixtureFolder, readKit } from "../../../input/kit/kit-folders.ts";

const made = (name: string, more: Partial<GuidePage> = {}): GuidePage => ({
  name,
  title: `About ${name}`,
  summary: "A line.",
  kind: "chapter",
  language: "en",
  passages: [{ markdown: "## One\n\nA leaf.\n\n## Two\n\nSee [the other](b.md#two)." }],
  ...more,
});
const tables = made("c", {
  kind: "reference",
  passages: [...REFERENCES.map((reference) => ({ reference })), { markdown: "## One" }, { markdown: "## One" }],
});
const GUIDE = [made("a"), made("b"), tables];

const gull = viewKit(readKit(fixtureFolder("little-gull"), FIXTURES), []);

const shown = (page: GuidePage) =>
  guidePagePart({
    page,
    guide: GUIDE,
    kit: gull,
    reference: referenceOf,
    link: (target) => `..${target.replace(/\/$/, "/index.html")}`,
  }).toString();
const all = (html: string, pattern: RegExp) => [...html.matchAll(pattern)].map((match) => match[1]!);

describe("guidePagePart(view)", () => {
  it.each(REFERENCES)("shows each key of %j in one row, with its path", (name) => {
    const html = shown(made("d", { passages: [{ reference: name }] }));
    const keys = referenceOf(name).flatMap(({ keys }) => keys.map(({ path }) => path));
    expect(all(html, /<th scope="row"><code>(.*?)<\/code>/g)).toEqual(keys);
    for (const [, cells] of html.matchAll(/<th scope="row">.*?<\/th>(.*?)<\/tr>/gs))
      expect(cells).not.toMatch(/<td[^>]*>\s*<\/td>/);
  });

  it("has ids of their own, and no link to one that is not there", () => {
    for (const page of GUIDE) {
      const html = shown(page);
      const ids = all(html, / id="([^"]+)"/g);
      expect(new Set(ids).size).toBe(ids.length);
      expect(all(html, /href="#([^"]+)"/g).filter((id) => !ids.includes(id))).toEqual([]);
    }
  });

  it("lists its sections, and leads to the pages before and after", () => {
    expect(all(shown(GUIDE[0]!), /<li><a href="(#[^"]+)"/g)).toEqual(["#one", "#two"]);
    expect(shown(GUIDE[0]!)).not.toContain('rel="prev"');
    expect(shown(GUIDE[1]!)).toContain('<a rel="prev" href="../guide/a/index.html">');
    expect(shown(GUIDE[1]!)).toContain('<a rel="next" href="../guide/c/index.html">');
    expect(shown(GUIDE[1]!)).toContain('<a href="../guide/b/index.html" aria-current="page">');
    expect(shown(tables)).not.toContain('rel="next"');
  });

  it("links a chapter's terms to the glossary, and none of another language's", () => {
    expect(shown(GUIDE[0]!)).toContain('href="../glossary/index.html#leaf"');
    const foreign = shown(made("a", { language: "nl" }));
    expect(foreign).toContain('<div class="intro" lang="nl">');
    expect(foreign).toContain('<div lang="nl"><h2');
    expect(foreign).not.toContain("#leaf");
  });
});

describe("a drawing of the guide", () => {
  // The fixture's book: leaves 178 mm tall.
  it("is the first kit's, and says whose it is", () => {
    const html = shown(made("a", { passages: [{ figure: "measure" }] }));
    expect(html).toMatch(/<figure><svg .*178\smm.*<figcaption>Drawn for the book of Little Gull\.<\/figcaption>/s);
  });

  it("is left out of a site without kits", () => {
    const page = made("a", { passages: [{ figure: "leaf" }] });
    const view = { page, guide: GUIDE, kit: undefined, reference: referenceOf, link: String };
    const html = guidePagePart(view).toString();
    expect(html).not.toContain("<figure");
  });
});

describe("guideContents(guide, link)", () => {
  it("leads to every page, chapters first", () => {
    const html = guideContents(GUIDE, (target) => `.${target}`).toString();
    expect(all(html, /<a href="([^"]+)"/g)).toEqual(["./guide/a/", "./guide/b/", "./guide/c/"]);
  });
});

describe("renderMarkdown(text, page)", () => {
  const page = (name: string) => `../${name}/index.html`;

  it("leads to pages by their files, with anchors, and leaves other links alone", () => {
    const { html } = renderMarkdown("[a](b.md) [c](b.md#two) [d](https://example.org/x.md)", page);
    expect(all(html, /href="([^"]+)"/g)).toEqual([
      "../b/index.html",
      "../b/index.html#two",
      "https://example.org/x.md",
    ]);
  });

  // By hand: letters without accents, digits and hyphens; a number from the second on.
  it.each([
    ["## Write index.md", "write-index-md"],
    ["## Écrire à la main", "ecrire-a-la-main"],
    ["## 3 steps", "steps"],
    ["## 本", "part"],
  ])("%s has the id %s", (text, id) => {
    expect(renderMarkdown(text, page).headings[0]!.id).toBe(id);
    expect(renderMarkdown(`${text}\n\n${text}`, page).headings[1]!.id).toBe(`${id}-2`);
  });

  it("lets code be scrolled from the keyboard, and takes no markup from the text", () => {
    expect(renderMarkdown("```sh\nnpm ci\n```", page).html).toContain('<pre tabindex="0"><code class="language-sh">');
    expect(renderMarkdown("<b>bold</b>", page).html).toContain("&lt;b&gt;");
  });
});
