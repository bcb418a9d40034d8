import type { Kit } from "../../core/kit/kit.ts";
import * as say from "../../words/messages.ts";
import { type FieldPath, problem } from "../files/problem.ts";
import { nameList, shortValue } from "../files/short.ts";

/** The kits that classes may name: those of the site, and the names of those that cannot be built at present, or are drafts. */
export interface OfferedKits {
  readonly kits: readonly Kit[];
  readonly broken: readonly string[];
  readonly drafts: readonly string[];
}

/** @throws ProblemError where no kit has the name, it cannot be built, or it is a draft. */
export function kitNamed(name: string, { kits, broken, drafts }: OfferedKits, at: FieldPath): Kit {
  const kit = kits.find((one) => one.slug === name);
  if (kit) return kit;
  const allowed = say.frontAKit({ kits: nameList(kits.map((one) => one.slug)) });
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
