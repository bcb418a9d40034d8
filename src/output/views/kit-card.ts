import { foldedMinutes } from "../../core/finder/without-knife.ts";
import type { Kit } from "../../core/kit/kit.ts";
import { closingOf } from "../../core/pattern/corner-pattern.ts";
import type { KitViewBase } from "./kit-view.ts";

/** A kit without what is drawn and computed of it. */
export type KitFacts = Omit<Kit, "picture" | "motifs">;

/** What pages beside a kit's own tell of it. */
export interface KitCard {
  readonly slug: string;
  readonly kit: KitFacts;
  /** How many levels the pattern has. */
  readonly levels: number;
  readonly hasLight: boolean;
  /** Whether it is made for folding without a knife, and minutes of work where it is folded so; undefined where it cannot be. */
  readonly madeToFold: boolean;
  readonly foldedMinutes: number | undefined;
  /** Of work, for a practised hand. */
  readonly minutes: number;
  readonly leaves: number;
  readonly hours: string;
  readonly difficulty: string;
}

export function kitCard({ slug, kit, pattern, effort, counts, figures, difficulty }: KitViewBase): KitCard {
  const { picture: _picture, motifs: _motifs, ...facts } = kit;
  return {
    slug,
    kit: facts,
    levels: pattern.corner ? pattern.corner.levels.length : pattern.levels.length,
    hasLight: closingOf(pattern).pocket !== undefined,
    madeToFold: pattern.corner !== undefined,
    foldedMinutes: pattern.corner ? effort.minutes : foldedMinutes(kit),
    minutes: effort.minutes,
    leaves: counts.leaves,
    hours: figures.hours,
    difficulty,
  };
}
