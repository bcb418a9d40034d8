import { deskStyle } from "../../core/bench/desk.ts";
import { placeNow } from "../../core/bench/moving.ts";
import type { LeafNumber } from "../../core/book/leaf-number.ts";
import { linesAt } from "../../core/units/graduations.ts";
import { rulerStep } from "../../core/units/ruler.ts";
import { type Ruler, rulerStrip } from "../../output/drawing/bench/ruler-strip.ts";
import { formatLength, formatNumber } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { part } from "./bench-dom.ts";
import type { BenchHost } from "./bench-host.ts";
import { rulerChoice } from "./bench-ruler-choice.ts";
import { faceOf } from "./face-of.ts";

/** The mark at hand: strong in the drawing, shown on her ruler, told by the voice. */
export interface Marks {
  /** Shows it for the leaf on the bench, from its first mark on. */
  show(): void;
  /** Goes to the next mark (1) or the one before (−1), round and round. */
  step(side: 1 | -1): void;
}

export function bindMarks(root: HTMLElement, host: BenchHost, tell: (phrases: readonly string[]) => void): Marks {
  let leaf: LeafNumber | undefined;
  let now = 0;
  const marks = (): readonly number[] => {
    const { plan, progress } = host.desk;
    if (placeNow(plan, progress).item) return [];
    return faceOf(plan).marks(plan, progress.at);
  };
  const show = (): void => {
    const { at } = host.desk.progress;
    if (leaf !== at || now >= marks().length) now = 0;
    leaf = at;
    showNow(root, host, marks(), now);
  };
  const step = (side: 1 | -1): void => {
    const count = marks().length;
    if (count === 0) return;
    now = (now + side + count) % count;
    show();
    part(root, "say").textContent = part(root, "ruler-words").textContent;
    const { plan, progress } = host.desk;
    tell(faceOf(plan).markHeard(plan, progress.at, now, deskStyle(host.desk)));
  };
  part(root, "mark-before").addEventListener("click", () => step(-1));
  part(root, "mark-next").addEventListener("click", () => step(1));
  new ResizeObserver(show).observe(part(root, "ruler-strip"));
  return { show, step };
}

function showNow(root: HTMLElement, host: BenchHost, marks: readonly number[], now: number): void {
  const choice = rulerChoice();
  const place = part(root, "ruler");
  place.hidden = choice === "off" || marks.length === 0;
  for (const name of ["edge-label", "edge-cut"])
    root.querySelectorAll(`.${name}`).forEach((one, i) => {
      one.classList.toggle("now", i === now && !place.hidden);
    });
  if (choice === "off" || place.hidden) return;
  const { units } = host.desk;
  const ruler = { units, step: rulerStep(units, choice) };
  const strip = part(root, "ruler-strip");
  part(root, "ruler-words").textContent = rulerWords(host, ruler, marks, now);
  strip.innerHTML = rulerStrip(ruler, marks, now, Math.floor(strip.clientWidth));
}

function rulerWords({ desk }: BenchHost, { units, step }: Ruler, marks: readonly number[], now: number): string {
  const { below, above } = linesAt(marks[now]!, step);
  const line = (mm: number): string => formatNumber(mm, { units, step });
  return say.benchRulerMark({
    mark: now + 1,
    count: marks.length,
    at: formatLength(marks[now]!, deskStyle(desk)),
    where: below === above ? "line" : "between",
    below: line(below),
    above: line(above),
  });
}
