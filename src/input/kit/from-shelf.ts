import leven from "leven";
import type { Motif } from "../../core/window/motif.ts";
import * as say from "../../words/messages.ts";
import { type FieldPath, problem } from "../files/problem.ts";
import { nameList, shortValue } from "../files/short.ts";

/** The motif of the site's shelf that a field names. @throws ProblemError where there is none of that name */
export function fromShelf(name: string, at: FieldPath, shelf: readonly Motif[]): Motif {
  const found = shelf.find((motif) => motif.name === name);
  if (found) return found;
  const names = shelf.map((motif) => motif.name);
  const nearest = names.toSorted((a, b) => leven(a, name) - leven(b, name))[0];
  throw problem(at, {
    given: say.frontGivenText({ value: shortValue(name) }),
    allowed: names.length > 0 ? say.motifOnShelf({ names: nameList(names) }) : say.motifShelfEmpty(),
    remedy: nearest === undefined ? say.motifShelfRemedy() : say.motifWriteName({ name: nearest }),
  });
}
