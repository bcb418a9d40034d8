import { escapeXml } from "../../xml.ts";
import { num, tag, text } from "../svg-text.ts";
import { type At, TEXT, wordsWidth } from "./ink.ts";

export interface WordsStyle {
  readonly anchor?: "start" | "middle" | "end";
  readonly size?: number;
  readonly bold?: boolean;
}

/** Distance of two lines of words from baseline to baseline, as a share of the letters' height. */
const LINE = 1.2;

/** Words on one line; `flip` where the field is mirrored, so that words run the other way from their place. */
export function levelWords([x, y]: At, content: string, style: WordsStyle, flip: boolean): string {
  return text(x, y, content, { ...letters(style), "text-anchor": anchorOf(style, flip) });
}

/** Words over several lines no wider than `width`, the first at `at`. One text, so that it is read as one. */
export function wrappedWords([x, y]: At, content: string, width: number, style: WordsStyle, flip: boolean): string {
  const { size = TEXT } = style;
  const lines = linesOf(content, width, size).map((line, i) =>
    tag("tspan", { x, y: y + i * LINE * size }, escapeXml(line)),
  );
  return tag("text", { ...letters(style), "text-anchor": anchorOf(style, flip) }, lines.join(" "));
}

/** Words that run upward; `at` is their middle. */
export function uprightWords([x, y]: At, content: string, style: WordsStyle): string {
  const { size = TEXT, anchor = "middle" } = style;
  return text(0, 0, content, {
    ...letters(style),
    "text-anchor": anchor,
    transform: `translate(${num(x + 0.35 * size)} ${num(y)}) rotate(-90)`,
  });
}

/** As many words on a line as it has room for; a longer word stands alone. */
function linesOf(content: string, width: number, size: number): string[] {
  const lines: string[] = [];
  for (const word of content.split(" ")) {
    const longer = `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && wordsWidth(longer, size) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

function anchorOf({ anchor = "start" }: WordsStyle, flip: boolean): string {
  const turned = { start: "end", middle: "middle", end: "start" } as const;
  return flip ? turned[anchor] : anchor;
}

function letters({ size = TEXT, bold = false }: WordsStyle): Record<string, string | number | undefined> {
  return { "font-size": size, "font-weight": bold ? 700 : undefined, fill: "#000" };
}
