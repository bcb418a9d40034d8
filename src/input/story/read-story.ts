import type { Token } from "markdown-it";
import type { Story, StoryPicture } from "../../core/story/story.ts";
import { authorMarkdown } from "../../words/markdown.ts";
import * as say from "../../words/messages.ts";
import { afterFrontMatter } from "../files/front-matter.ts";
import type { KitFolder } from "../files/named-files.ts";
import { type Problem, ProblemError, stopAt } from "../files/problem.ts";
import { photoInside } from "./photo-inside.ts";

/** A piece of a line of Markdown, with its line in the file. */
interface Piece {
  readonly type: string;
  readonly text: string;
  /** Where a link leads, what a picture shows. */
  readonly target: string;
  readonly line: number;
}

/** What looks like a link or a picture but is shown as it is typed. */
const SPACED = /!?\[[^\]]*\]\([^()<>]* [^()<>]*\)/;

/**
 * Reads what is told in the text of a file of a folder, below its front matter. Its pictures are photos beside it.
 * @throws ProblemError with each picture that cannot be shown
 */
export function readStory(kit: KitFolder, file: string, text: string): Story {
  const { body, above } = afterFrontMatter(text);
  const pieces = piecesOf(body, above);
  const problems = [...pieces.flatMap((piece) => spacedIn(piece, file))];
  const pictures = new Map<string, StoryPicture>();
  for (const { text: alt, target, line } of pieces.filter(({ type }) => type === "image")) {
    try {
      const name = photoInside(kit, target, { file, line, field: say.storyPicture() });
      pictures.set(name, { file: name, alt, line });
    } catch (error) {
      if (!(error instanceof ProblemError)) throw error;
      problems.push(...error.problems);
    }
  }
  stopAt(problems);
  const links = pieces.filter(({ type }) => type === "link_open").map(({ target, line }) => ({ target, line }));
  return { file, markdown: body, pictures: [...pictures.values()], links };
}

function spacedIn({ type, text, line }: Piece, file: string): Problem[] {
  const [link] = type === "text" ? (SPACED.exec(text) ?? []) : [];
  if (link === undefined) return [];
  const at = { file, line, field: say.storyLink() };
  return [{ at, given: say.checkGiven({ value: link }), allowed: say.storyBrackets(), remedy: say.storyPutBrackets() }];
}

/** The pieces of a text's paragraphs, headings and lists. */
function piecesOf(body: string, above: number): Piece[] {
  return authorMarkdown()
    .parse(body, {})
    .flatMap((block) => lineByLine(block, above + 1));
}

function lineByLine({ children, map }: Token, first: number): Piece[] {
  let line = first + (map?.[0] ?? 0);
  return (children ?? []).map((child) => {
    if (child.type === "softbreak" || child.type === "hardbreak") line += 1;
    const target = String(child.attrGet("href") ?? child.attrGet("src") ?? "");
    return { type: child.type, text: child.content, target, line };
  });
}
