import type { Story } from "../../core/story/story.ts";
import { targetOf } from "../../core/story/targets.ts";
import { authorMarkdown } from "../../words/markdown.ts";
import { photoViews } from "../views/photo-files.ts";
import type { LinkTo } from "./cards.ts";
import { type Html, raw } from "./markup.ts";
import { pictureOf } from "./photos.ts";

/** What an author tells, as markup of the page at `page`: links within the site are as the page links, pictures are its photos. */
export function storyPart({ markdown: text, pictures }: Story, page: string, link: LinkTo): Html {
  const markdown = authorMarkdown();
  const views = photoViews(pictures, "pictures");
  markdown.renderer.rules.image = (tokens, i) => {
    const token = tokens[i]!;
    const file = decodeURI(String(token.attrGet("src")));
    const shown = views[pictures.findIndex((one) => one.file === file)];
    return shown === undefined ? "" : String(pictureOf({ ...shown, alt: token.content }));
  };
  const tokens = markdown.parse(text, {});
  for (const child of tokens.flatMap(({ children }) => children ?? [])) {
    const target = child.type === "link_open" ? targetOf(String(child.attrGet("href")), page) : undefined;
    if (target?.kind === "site") child.attrSet("href", link(target.address) + target.rest);
    // The check stops at such a link; while serving, its page is shown without it.
    if (target?.kind === "unknown") child.attrs = [];
  }
  return raw(markdown.renderer.render(tokens, markdown.options, {}));
}
