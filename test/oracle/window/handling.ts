import { extentOf, type Point, type Ring, stretchesAt } from "../../core/geometry/plane.ts";
import type { PublishedPart, PublishedWindow } from "../../core/light/published-window.ts";
import { tip } from "../fan.ts";

/** What the closed, the opened and the held piece ask of the window's parts, worked out from the published pattern alone; mm. */

/** The string's shortest loop: from the tab's hole over the rim to the button's far side, and back. */
export function loopOf(pattern: PublishedWindow): number {
  const tab = partNamed(pattern, "closure tab");
  const [outline, hole] = bySize(tab.outlines);
  const holeBox = extentOf([hole!]);
  const glued = extentOf(tab.marks.map((mark) => mark.line)).left - extentOf([outline!]).left;
  // The tab's glued end lies behind the base frame up to the rim; from there on it is free.
  const free = (holeBox.left + holeBox.right) / 2 - extentOf([outline!]).left - glued;
  return 2 * (free + rimToButton(pattern));
}

/** From the button to the rim on the side away from the hinge. */
export function rimToButton(pattern: PublishedWindow): number {
  const door = partNamed(pattern, "door");
  const cross = extentOf(door.marks.map((mark) => mark.line));
  const button: Point = [(cross.left + cross.right) / 2, (cross.top + cross.bottom) / 2];
  const card = stretchesAt(partNamed(pattern, "base frame").outlines, button[1] + 1e-3);
  return pattern.insert.hinge === "left" ? card.at(-1)![1] - button[0] : button[0] - card[0]![0];
}

/** The base frame and the door when it is opened by half a turn: mirrored about its hinge, without its flap. */
export function swing(pattern: PublishedWindow): {
  readonly closed: Ring;
  readonly opened: Ring;
  readonly hinge: number;
} {
  const door = partNamed(pattern, "door");
  const hinge = door.scores[0]![0]![0];
  const side = pattern.insert.hinge === "left" ? 1 : -1;
  const [outline] = bySize(door.outlines);
  const closed = outline!.filter(([x]) => side * (x - hinge) > -1e-3);
  return { closed, opened: closed.map(([x, y]): Point => [2 * hinge - x, y]), hinge };
}

/** The holder's slots: middle, width and depth of each, and the card that is left above them and beyond them. */
export function slotsOf(pattern: PublishedWindow) {
  const holder = partNamed(pattern, "holder");
  const box = extentOf(holder.outlines);
  const inside = stretchesAt(holder.outlines, box.bottom - 0.5);
  const gaps = inside.slice(1).map(([from], i) => [inside[i]![1], from] as const);
  const narrow = gaps.filter(([from, to]) => to - from < 5);
  return {
    middles: narrow.map(([from, to]) => (from + to) / 2),
    widths: narrow.map(([from, to]) => to - from),
    depths: narrow.map(([from, to]) => box.bottom - topOfGap(holder, (from + to) / 2)),
    above: topOfGap(holder, (narrow[0]![0] + narrow[0]![1]) / 2) - box.top,
    beyond: [narrow[0]![0] - box.left, box.right - narrow.at(-1)![1]],
    tongues: [gaps[1]![0] - narrow[0]![1], narrow.at(-1)![0] - gaps[1]![1]],
  };
}

/** Straight distance between the head edges of the outermost picture leaves that are there. */
export function headsApart(pattern: PublishedWindow): number {
  const { leafWidth, blockThickness, leaves, direction } = pattern.book;
  const { opening, spine, firstLeaf, lastLeaf } = pattern.fit;
  const fan = { leafWidth, blockThickness, leaves, opening, spine, direction };
  const there = pattern.leaves.filter(({ leaf }) => leaf >= firstLeaf && leaf <= lastLeaf);
  const [a, b] = [there[0]!, there.at(-1)!].map(({ leaf, spans }) =>
    tip(fan, leaf, pattern.levels[spans[0]!.level - 1]!.depth),
  );
  return Math.hypot(a!.x - b!.x, a!.z - b!.z);
}

/** Lowest height above the bottom edge at which an upright line inside the outline begins: the top of a slot. */
function topOfGap(holder: PublishedPart, x: number): number {
  const { top, bottom } = extentOf(holder.outlines);
  let [inside, outside] = [top + 1e-3, bottom - 1e-3];
  while (outside - inside > 1e-4) {
    const y = (inside + outside) / 2;
    if (stretchesAt(holder.outlines, y).some(([from, to]) => from <= x && x <= to)) inside = y;
    else outside = y;
  }
  return inside;
}

function partNamed(pattern: PublishedWindow, name: string): PublishedPart {
  return pattern.insert.parts.find((part) => part.name === name)!;
}

/** Outlines from the widest to the narrowest. */
function bySize(rings: readonly Ring[]): Ring[] {
  const width = (ring: Ring): number => extentOf([ring]).width;
  return [...rings].sort((a, b) => width(b) - width(a));
}
