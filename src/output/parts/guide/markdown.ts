import MarkdownIt from "markdown-it";

/** A heading that a page's contents list. */
export interface Heading {
  readonly id: string;
  readonly text: string;
}

export interface RenderedMarkdown {
  readonly html: string;
  /** The headings of the second level, in order. */
  readonly headings: readonly Heading[];
}

/** The ids that stand on a page, and how often each was wanted. */
export type UsedIds = Map<string, number>;

/** Between the names of pages of the guide, as their files link to each other: `bench.md#ticks`. */
const TO_PAGE = /^([a-z0-9-]+)\.md(#.*)?$/;

/**
 * Markdown of the guide as markup: headings carry ids made of their words, links to other pages' files lead to the pages, and
 * what may be wider than a phone can be scrolled from the keyboard. `page` gives the address of a page of the guide; `used` are
 * the ids that its page has already.
 */
export function renderMarkdown(
  text: string,
  page: (name: string) => string,
  used: UsedIds = new Map(),
): RenderedMarkdown {
  const markdown = new MarkdownIt({ typographer: true });
  const tokens = markdown.parse(text, {});
  const headings: Heading[] = [];
  for (const [i, token] of tokens.entries()) {
    if (token.type === "heading_open") {
      const content = tokens[i + 1]!.content.replaceAll("`", "");
      const id = idOf(content, used);
      token.attrSet("id", id);
      if (token.tag === "h2") headings.push({ id, text: content });
    }
    for (const child of token.children ?? []) {
      const target = TO_PAGE.exec(child.type === "link_open" ? String(child.attrGet("href") ?? "") : "");
      if (target) child.attrSet("href", page(target[1]!) + (target[2] ?? ""));
    }
  }
  const html = markdown.renderer
    .render(tokens, markdown.options, {})
    .replaceAll("<pre>", '<pre tabindex="0">')
    .replaceAll("<table>", '<table class="keys">');
  return { html, headings };
}

/** Letters without their accents, digits and hyphens; a number where it is there already or nothing is left. */
function idOf(heading: string, used: UsedIds): string {
  const plain = heading.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
  const id = plain.replace(/[^a-z0-9]+/g, "-").replace(/^[^a-z]+|-+$/g, "") || "part";
  const times = used.get(id) ?? 0;
  used.set(id, times + 1);
  return times === 0 ? id : `${id}-${times + 1}`;
}
