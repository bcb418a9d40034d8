import { nameList } from "../../input/files/short.ts";
import type { PartInputs } from "../../input/part/part-manifest.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import type { Part } from "./read-part.ts";

/** What a site is joined from here: what its parts must have been made from. */
export interface Joined {
  readonly inputs: PartInputs;
  /** What names all that each kit of the site is read from, by the kits' names. */
  readonly kits: ReadonlyMap<string, string>;
}

/** In the order in which they are told: where the program is another, so is all that it names. */
const INPUTS = ["program", "browser", "address", "kits", "content"] as const satisfies (keyof PartInputs)[];

/** Checks that parts are all of a site and of nothing else. @throws BuildError for the first that is not so */
export function checkParts(parts: readonly Part[], joined: Joined): void {
  for (const part of parts) checkInputs(part, joined);
  checkNumbers(parts);
  const found = checkKits(parts);
  const missing = [...joined.kits.keys()].filter((slug) => !found.has(slug));
  checkAllThere(parts, missing);
}

function checkInputs({ folder, inputs, kits }: Part, joined: Joined): void {
  for (const what of INPUTS)
    if (inputs[what] !== joined.inputs[what]) throw new BuildError(say.sitePartDiffers({ folder, what }));
  for (const { slug, key } of kits)
    if (joined.kits.get(slug) !== key) throw new BuildError(say.sitePartKitDiffers({ folder, kit: slug }));
}

/** Parts of one site are counted alike, and each is there once. */
function checkNumbers(parts: readonly Part[]): void {
  const [first, ...others] = parts.flatMap(({ folder, shard }) => (shard ? [{ folder, ...shard }] : []));
  if (!first) return;
  const seen = new Map([[first.number, first.folder]]);
  for (const { folder, number, of } of others) {
    if (of !== first.of)
      throw new BuildError(say.sitePartCounts({ folder, of, other: first.folder, others: first.of }));
    const other = seen.get(number);
    if (other !== undefined) throw new BuildError(say.sitePartTwice({ folder, other }));
    seen.set(number, folder);
  }
}

/** The folders in which kits are, by their names. */
function checkKits(parts: readonly Part[]): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const { folder, kits } of parts)
    for (const { slug } of kits) {
      const other = found.get(slug);
      if (other !== undefined) throw new BuildError(say.sitePartKitTwice({ kit: slug, folder, other }));
      found.set(slug, folder);
    }
  return found;
}

/** Kits that were picked by hand may stand in for a part. */
function checkAllThere(parts: readonly Part[], missing: readonly string[]): void {
  const numbers = new Set(parts.flatMap(({ shard }) => shard?.number ?? []));
  const of = parts.find(({ shard }) => shard)?.shard?.of ?? 0;
  const number = Array.from({ length: of }, (_, i) => i + 1).find((one) => !numbers.has(one));
  const isPicked = parts.some(({ shard }) => !shard);
  if (number !== undefined && (missing.length > 0 || !isPicked))
    throw new BuildError(say.sitePartMissing({ number, of }));
  if (missing.length > 0) throw new BuildError(say.sitePartKitsMissing({ names: nameList(missing) }));
}
