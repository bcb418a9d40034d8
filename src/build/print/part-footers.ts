import { MM_PER_INCH, tidy } from "../../core/units/length.ts";
import { FOOTER_WIDTH, type Paper, pageMargins } from "../../output/views/paper.ts";

const PIXELS_PER_MM = 96 / MM_PER_INCH;

/** Footers stand in the first part of a page's contents; it is shorter than this, letters. */
const LONGEST = 40_000;

/** The page's own scale, and the first group, in CSS pixels: what stands in the margins. */
const HEAD = /^(\S+ 0 0 -\S+) (\S+) (\S+) cm\nq\n(3\.125 0 0 3\.125 0 0 cm\n.*?\n)Q\n/s;
const BLOCK = /BT\n.*?\nET\n/gs;
const PLACE = /\n1 0 0 -1 (\S+) (\S+) Tm\n/;

/** A page's contents, parted: the beginning for each paper, and all that both have. */
export interface PartedContents {
  readonly own: string;
  readonly other: string;
  readonly rest: Buffer;
}

/** A text of the margins, and where it begins: CSS pixels from the left and the head. */
interface Block {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

/**
 * Parts a page's contents that has another paper's footer at its head: one beginning has its own footer alone; the other has that
 * footer in its place, and moves the page by `way` (points). Undefined where it is not written so.
 */
export function partFooters(
  contents: Buffer,
  paper: Paper,
  way: { readonly x: number; readonly y: number },
): PartedContents | undefined {
  const [head, scale, left, foot, group] = HEAD.exec(contents.toString("latin1", 0, LONGEST)) ?? [];
  if (head === undefined || group === undefined || /^q$/m.test(group)) return undefined;
  const blocks = (group.match(BLOCK) ?? []).map(readBlock);
  const isAtHead = ({ y }: Block): boolean => y < (paper.height * PIXELS_PER_MM) / 2;
  const numberFrom = (pageMargins(paper)[1] + FOOTER_WIDTH) * PIXELS_PER_MM;
  const [atHead, footer] = [blocks.filter(isAtHead), blocks.filter((one) => !isAtHead(one) && one.x < numberFrom - 1)];
  if (blocks.some(({ y }) => Number.isNaN(y)) || atHead.length === 0 || footer.length === 0) return undefined;
  const down = Math.min(...footer.map(({ y }) => y)) - Math.min(...atHead.map(({ y }) => y));
  const own = atHead.reduce((text, block) => text.replace(block.text, ""), group);
  const lowered = atHead.map((block) => atHeight(block, down)).join("");
  const other = footer.reduce((text, block, i) => text.replace(block.text, () => (i === 0 ? lowered : "")), own);
  const place = `${tidy(Number(left) + way.x, 4)} ${tidy(Number(foot) + way.y, 4)}`;
  return {
    own: `${scale} ${left} ${foot} cm\nq\n${own}Q\n`,
    other: `${scale} ${place} cm\nq\n${other}Q\n`,
    rest: contents.subarray(head.length),
  };
}

function readBlock(text: string): Block {
  const [, x, y] = PLACE.exec(text) ?? [];
  return { text, x: Number(x), y: Number(y) };
}

function atHeight({ text, x, y }: Block, down: number): string {
  return text.replace(PLACE, `\n1 0 0 -1 ${x} ${tidy(y + down, 4)} Tm\n`);
}
