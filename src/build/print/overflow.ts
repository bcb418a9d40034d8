import { MM_PER_INCH, tidy } from "../../core/units/length.ts";
import * as say from "../../words/messages.ts";

/** A box whose content is larger than itself; sizes in CSS pixels. */
export interface Overflow {
  /** The whole page, a box too wide, or a sheet too high. */
  readonly kind: "page" | "wide" | "high";
  /** The heading of the box; empty where it has none. */
  readonly heading: string;
  /** What stands in the thing that reaches furthest out; empty where that is no text. */
  readonly text: string;
  readonly size: number;
  readonly room: number;
}

/**
 * Runs in the page under print media: finds every box whose content is larger than itself, because Chromium would shrink
 * the whole document to fit, and a true-scale sheet would come out small. Empty when all is well.
 */
export function findOverflow(): Overflow[] {
  const found: Overflow[] = [];
  const textOf = (element: Element | null | undefined): string => element?.textContent?.trim().slice(0, 600) ?? "";
  /** What text reaches furthest out, in the smallest thing; a table's own border may stand out by some pixels. */
  const furthest = (box: Element, side: "right" | "bottom"): Element | undefined => {
    const edge = box.getBoundingClientRect()[side];
    const out = [...box.querySelectorAll("*")]
      .map((thing) => ({ thing, place: thing.getBoundingClientRect() }))
      .filter(({ thing, place }) => place[side] > edge + 0.5 && textOf(thing) !== "");
    const most = Math.max(...out.map(({ place }) => place[side]));
    const across = ({ width, height }: DOMRect): number => (side === "right" ? width : height);
    const [smallest] = out
      .filter(({ place }) => place[side] > most - 4)
      .toSorted((a, b) => across(a.place) - across(b.place));
    return smallest?.thing;
  };
  const check = (kind: Overflow["kind"], element: Element): void => {
    const [size, room] =
      kind === "high" ? [element.scrollHeight, element.clientHeight] : [element.scrollWidth, element.clientWidth];
    if (size <= room) return;
    const heading = textOf(element.closest("[data-sheet], [data-flow]")?.querySelector("h1, h2, h3"));
    const thing = furthest(element, kind === "high" ? "bottom" : "right");
    found.push({ kind, heading, text: textOf(thing ?? element), size, room });
  };
  check("page", document.documentElement);
  for (const box of document.querySelectorAll("[data-sheet], [data-flow]")) {
    check("wide", box);
    if (box.hasAttribute("data-sheet")) check("high", box);
  }
  for (const cell of document.querySelectorAll("[data-sheet] .table i, [data-sheet] td")) check("wide", cell);
  return found;
}

/** Letters of a text that are enough to find it. */
const TELLING = 60;

/** An overflow in words. */
export function sayOverflow({ kind, heading, text, size, room }: Overflow): string {
  const lengths = { size: inMm(size), room: inMm(room) };
  const box = { heading, text: text.length > TELLING ? `${text.slice(0, TELLING)}…` : text };
  if (kind === "page") return say.printPageWide({ text: box.text, ...lengths });
  return kind === "wide" ? say.printBoxWide({ ...box, ...lengths }) : say.printBoxHigh({ ...box, ...lengths });
}

function inMm(pixels: number): number {
  return tidy((pixels / 96) * MM_PER_INCH, 1);
}
