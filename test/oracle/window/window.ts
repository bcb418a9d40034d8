import { type Point, type Ring, rimAndHoles } from "../../core/geometry/plane.ts";
import type { Changes } from "../../core/light/disc-kit.ts";
import type { PublishedPart, PublishedWindow } from "../../core/light/published-window.ts";
import { discPattern } from "../../core/light/read-disc-kit.ts";
import { frontTips, pictureSides } from "../../core/light/standing.ts";
import { publishedText } from "../../core/pattern/published.ts";
import { FIXTURES, fixtureFolder, readKit } from "../../input/kit/kit-folders.ts";

/** A window made of discs; without a light unless the changes give one. */
export function discWindow(changes: Changes = {}): PublishedWindow {
  return discPattern({ light: false, ...changes, insert: { lip: 3, ...changes.insert } });
}

/** The demo kit with a light and a window, motifs included. */
export function harbourMoon(): PublishedWindow {
  return JSON.parse(publishedText(readKit(fixtureFolder("harbour-moon"), FIXTURES))) as PublishedWindow;
}

export function partOf(pattern: PublishedWindow, name: string): PublishedPart {
  const part = pattern.insert.parts.find((one) => one.name === name);
  if (!part) throw new Error(`no part ${name}`);
  return part;
}

/** Outer outline and the one hole of a frame. */
export function frameOf(part: PublishedPart): { readonly rim: Ring; readonly window: Ring } {
  const { rim, holes } = rimAndHoles(part.outlines);
  if (holes.length !== 1) throw new Error(`${part.name} has ${holes.length} holes`);
  return { rim, window: holes[0]! };
}

/** Distance along the front tips from the fan's middle, by adding up the straight pieces between them. */
export function alongTips(pattern: PublishedWindow, x: number): number {
  const tips = frontTips(pattern);
  const signed = (to: number): number => {
    let sum = 0;
    for (let i = 0; i + 1 < tips.length; i += 1) {
      const [a, b] = [tips[i]!, tips[i + 1]!];
      const from = i === 0 ? Number.NEGATIVE_INFINITY : a.x;
      const end = i + 2 === tips.length ? Number.POSITIVE_INFINITY : b.x;
      const [low, high] = [Math.max(Math.min(0, to), from), Math.min(Math.max(0, to), end)];
      if (high > low) sum += ((high - low) / (b.x - a.x)) * Math.hypot(b.x - a.x, b.z - a.z);
    }
    return to < 0 ? -sum : sum;
  };
  return signed(x);
}

/** A ring of the picture (its own units, box `width` × `height`) where it stands in the panel. */
export function onPanel(pattern: PublishedWindow, ring: Ring, width = 200, height = 200): Ring {
  const { left, right } = pictureSides(pattern);
  const { head, height: shown } = pattern.fit;
  const wrap = pattern.insert.panel === "wrap";
  const placeX = wrap ? tableOf(pattern, left, right) : (x: number): number => x;
  return ring.map(([x, y]): Point => [placeX(left + ((right - left) * x) / width), head + (shown * y) / height]);
}

/** `alongTips` at fine steps, straight between: it is straight between tips anyway. */
function tableOf(pattern: PublishedWindow, left: number, right: number): (x: number) => number {
  const xs = [left, ...frontTips(pattern).map((one) => one.x), right].sort((a, b) => a - b);
  const arcs = xs.map((x) => alongTips(pattern, x));
  return (x) => {
    const i = Math.min(
      xs.length - 2,
      Math.max(
        0,
        xs.findLastIndex((one) => one <= x),
      ),
    );
    return arcs[i]! + ((x - xs[i]!) / (xs[i + 1]! - xs[i]!)) * (arcs[i + 1]! - arcs[i]!);
  };
}
