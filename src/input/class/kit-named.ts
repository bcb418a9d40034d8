import type { Kit } from "../../core/kit/kit.ts";
import * as say from "../../words/messages.ts";
import { type FieldPath, problem } from "../files/problem.ts";
import { nameList, shortValue } from "../files/short.ts";

/** The kits that classes may name: those of the site, and the names of those that cannot be built at present, or are drafts. */
export interface OfferedKits {
  readonly names: readonly string[];
  readonly kit: (name: string) => Kit;
  readonly broken: readonly string[];
  readonly drafts: readonly string[];
}

/** Kits that are at hand, as they are offered. */
export function offeredOf(kits: readonly Kit[]): Pick<OfferedKits, "names" | "kit"> {
  return { names: kits.map(({ slug }) => slug), kit: (name) => kits.find(({ slug }) => slug === name)! };
}

/** @throws ProblemError where no kit has the name, it cannot be built, or it is a draft. */
export function kitNamed(name: string, { names, kit, broken, drafts }: OfferedKits, at: FieldPath): Kit {
  if (names.includes(name)) return kit(name);
  const allowed = say.frontAKit({ kits: nameList(names) });
  if (broken.includes(name))
    throw problem(at, { given: say.frontKitBroken({ kit: name }), allowed, remedy: say.frontKitCorrectFirst() });
  if (drafts.includes(name))
    throw problem(at, { given: say.frontKitDraft({ kit: name }), allowed, remedy: say.frontKitPublish() });
  throw problem(at, {
    given: say.frontGivenText({ value: shortValue(name) }),
    allowed,
    remedy: say.frontCorrectName(),
  });
}
