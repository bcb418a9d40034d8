import type { Caution } from "../../core/plan/caution.ts";
import type { Counts } from "../../core/plan/effort.ts";

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
