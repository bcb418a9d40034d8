import { type PatternLeafBase, pictureLeaves } from "../../../core/pattern/pattern.ts";
import { countsOfAny } from "../../../core/plan/any-effort.ts";
import { effortOf } from "../../../core/plan/effort.ts";
import type { Edit } from "../../../input/desk/edit.ts";
import { type SlipShown, type SlipWay, slip, type Verdict } from "../../../output/parts/desk/slip.ts";
import { angleText } from "../../../words/angles.ts";
import { hoursText } from "../../../words/hours.ts";
import { formatByHand } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import type { AnyShown, Hands } from "./shown.ts";

/** A way out in words, and what it changes; undefined where it cannot be done here. */
export interface Way {
  readonly text: string;
  readonly edits: readonly Edit[] | undefined;
}

/** What the slip says of a kit beside its figures. */
export interface Judged {
  readonly verdict: Verdict;
  readonly findings: readonly string[];
  /** Undefined while they are sought. */
  readonly ways: readonly Way[] | undefined;
}

/** The slip with the numbers that matter; a way out is taken with a press. */
export class SlipView {
  readonly #place: HTMLElement;
  #ways: readonly Way[] = [];
  #markup = "";

  constructor(place: HTMLElement, hands: Hands) {
    this.#place = place;
    place.addEventListener("click", ({ target }) => {
      const taken = (target as HTMLElement).closest<HTMLElement>("[data-way]")?.dataset.way;
      const edits = taken === undefined ? undefined : this.#ways[Number(taken)]?.edits;
      if (edits) hands.change(edits);
    });
  }

  /** `shown` is the last state that could be made. */
  show(shown: AnyShown | undefined, { verdict, findings, ways }: Judged): void {
    this.#ways = ways ?? [];
    const told: SlipShown = {
      verdict,
      findings,
      ways: ways?.map(({ text, edits }, i): SlipWay => ({ text, taken: edits ? i : undefined })),
      figures: shown && verdict !== "unfit" ? figuresOf(shown) : [],
    };
    const markup = String(slip(told));
    if (markup === this.#markup) return;
    this.#markup = markup;
    const isOpen = this.#place.querySelector("details")?.open ?? false;
    const way = (document.activeElement as HTMLElement | null)?.dataset.way;
    this.#place.innerHTML = markup;
    const more = this.#place.querySelector("details");
    if (more) more.open = isOpen;
    if (way !== undefined) this.#place.querySelector<HTMLElement>("[data-way]")?.focus();
  }
}

function figuresOf({ kit, pattern }: AnyShown): SlipShown["figures"] {
  const counts = countsOfAny(pattern);
  const { minutes } = effortOf(counts, kit.rates);
  const { fit } = pattern;
  return [
    ...(pattern.corner ? [] : [[say.deskKitCuts(), String(counts.cuts)] as const]),
    [say.deskKitTime(), hoursText(minutes)],
    [say.deskKitMerged(), String(pattern.merged.length)],
    [say.deskKitHold(), formatByHand(fit.holdWidth, kit.units)],
    [say.deskKitAngle(), angleText(fit.opening)],
    [say.deskKitLeaves(), String(pictureLeaves<PatternLeafBase>(pattern).length)],
  ];
}
