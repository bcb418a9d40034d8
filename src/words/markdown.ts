import MarkdownIt, { type MarkdownIt as Markdown } from "markdown-it";

/** Markdown as authors write it. HTML in it is shown as it is typed. Its readers judge what it links to, so that nothing is dropped silently. */
export function authorMarkdown(): Markdown {
  const markdown = new MarkdownIt({ typographer: true });
  markdown.validateLink = () => true;
  return markdown;
}
