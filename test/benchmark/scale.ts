import type { Figure } from "./figure.ts";
import type { FixturesSite } from "./fixtures-site.ts";

/** How much is measured. */
export interface Scale {
  /** As on a machine that checks each change: few kits, few turns. */
  readonly quick: boolean;
  /** Also a thousand kits. */
  readonly full: boolean;
}

/** Measures some lines of the table. */
export type Part = (scale: Scale, site: FixturesSite) => Promise<Figure[]>;
