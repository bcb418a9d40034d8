import type { Counts } from "../../core/plan/effort.ts";

/** Which kits show a caution: all, those cut with a knife, glued, or lit. */
export const OCCASIONS = ["always", "cuts", "glue", "light"] as const;

export interface Caution {
  readonly id: string;
  readonly title: string;
  /** For the list of cautions. */
  readonly text: string;
  /** For the step that needs it. */
  readonly short: string;
  readonly when: (typeof OCCASIONS)[number];
}

/** The cautions that a kit's work calls for. */
export function cautionsFor(cautions: readonly Caution[], counts: Counts, hasLight: boolean): Caution[] {
  const called = {
    always: true,
    cuts: counts.cuts + counts.notches + counts.parts > 0,
    glue: counts.tacks + counts.parts > 0,
    light: hasLight,
  };
  return cautions.filter((caution) => called[caution.when]);
}
