import type { SupplyId } from "../../core/kit/supply-id.ts";
import type { Caution } from "../../core/plan/caution.ts";
import type { WorkStep } from "../../core/steps/work-step.ts";

const GLUING: readonly SupplyId[] = ["glue", "glueDots"];

/** The cautions that a kit's work calls for. */
export function cautionsFor(cautions: readonly Caution[], work: readonly WorkStep[]): Caution[] {
  const used = new Set(work.flatMap((step) => step.supplies));
  const called = {
    always: true,
    cuts: used.has("knife"),
    glue: GLUING.some((id) => used.has(id)),
    light: used.has("light"),
  };
  return cautions.filter((caution) => called[caution.when]);
}

/** The ids of the cautions beside each step: of a knife wherever it is used, of all else where it first matters. */
export function cautionsOfSteps(work: readonly WorkStep[]): string[][] {
  const firstGluing = work.find(({ supplies }) => supplies.some((id) => GLUING.includes(id)));
  return work.map((step) => {
    const { id, supplies } = step;
    return [
      ...(id === "check" ? ["who"] : []),
      ...(supplies.includes("knife") ? ["blade"] : []),
      ...(id === "fold" || id === "corners" ? ["bench"] : []),
      ...(step === firstGluing ? ["glue"] : []),
      ...(step === work.at(-1) ? ["flame"] : []),
      ...(supplies.includes("cells") ? ["cell"] : []),
    ];
  });
}
