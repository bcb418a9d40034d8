import { escapeXml } from "../../xml.ts";
import { num, tag, text } from "../svg-text.ts";
import { lettersWithin, linesWithin } from "../words-width.ts";
import { type At, MARGIN, TEXT, WIDTH } from "./ink.ts";

type Anchor = "start" | "middle" | "end";

export interface WordsStyle {
  readonly anchor?: Anchor;
  readonly size?: number;
  readonly bold?: boolean;
  /** White, on a dark ground. */
  readonly light?: boolean;
  /** What the words may take at most; otherwise the room to the diagram's edge. */
  readonly room?: number;
}

/** Distance of two lines of words from baseline to baseline, as a share of the letters' height. */
export const LINE = 1.2;

/** Words on one line, smaller where the room is short of them; `flip` where the field is mirrored, so that words run the other way from their place. */
export function levelWords([x, y]: At, content: string, style: WordsStyle, flip: boolean): string {
  const anchor = anchorOf(style, flip);
  const room = style.room ?? roomAt(x, anchor);
  const { "font-size": size, ...narrower } = lettersWithin(room, content, style.size ?? TEXT);
  return text(x, y, content, { ...letters({ ...style, size }, anchor), ...narrower });
}

/** Words over several lines no wider than `width`, the first at `at`. One text, so that it is read as one. */
export function wrappedWords([x, y]: At, content: string, width: number, style: WordsStyle, flip: boolean): string {
  const { size = TEXT } = style;
  const lines = linesWithin(width, content, size).map((line, i) =>
    tag("tspan", { x, y: y + i * LINE * size }, escapeXml(line)),
  );
  return tag("text", letters(style, anchorOf(style, flip)), lines.join(" "));
}

/** Words that run upward; `at` is their middle. */
export function uprightWords([x, y]: At, content: string, style: WordsStyle): string {
  const { size = TEXT, anchor = "middle" } = style;
  return text(0, 0, content, {
    ...letters(style, anchor),
    transform: `translate(${num(x + 0.35 * size)} ${num(y)}) rotate(-90)`,
  });
}

/** Room from a place to the diagram's edge, on the side or sides that words run to. */
function roomAt(x: number, anchor: Anchor): number {
  const [left, right] = [x + MARGIN.side, WIDTH + MARGIN.side - x];
  if (anchor === "middle") return 2 * Math.min(left, right);
  return anchor === "start" ? right : left;
}

function anchorOf({ anchor = "start" }: WordsStyle, flip: boolean): Anchor {
  const turned = { start: "end", middle: "middle", end: "start" } as const;
  return flip ? turned[anchor] : anchor;
}

/** How letters are set; what is usual is the diagram’s. */
function letters(
  { size = TEXT, bold = false, light = false }: WordsStyle,
  anchor: Anchor,
): Record<string, string | number | undefined> {
  return {
    "font-size": size === TEXT ? undefined : size,
    "font-weight": bold ? 700 : undefined,
    fill: light ? "#fff" : undefined,
    "text-anchor": anchor === "start" ? undefined : anchor,
  };
}
