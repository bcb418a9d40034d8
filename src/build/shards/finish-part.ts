import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { serialize } from "node:v8";
import {
  kitOf,
  knownPath,
  PART_FILE,
  PART_KNOWN,
  PART_SCHEMA,
  type PartInputs,
  type PartManifest,
} from "../../input/part/part-manifest.ts";
import type { KitEntry, KitNews } from "../library/kit-entry.ts";
import type { Shard } from "./deal.ts";
import { listFiles } from "./part-files.ts";

/** What is stated of a part beside its files. */
export interface StatedPart {
  readonly shard: Shard | undefined;
  readonly inputs: PartInputs;
}

/** Puts beside the site's files of a part what the rest of the site has to know of its kits, and says in a manifest what the part holds. */
export function finishPart(folder: string, kits: readonly KitEntry[], { shard, inputs }: StatedPart): void {
  mkdirSync(join(folder, PART_KNOWN), { recursive: true });
  for (const entry of kits) {
    const news: KitNews = { entry, broken: [], letters: [], photos: [] };
    writeFileSync(join(folder, knownPath(entry.slug)), serialize(news));
  }
  const files = Map.groupBy(listFiles(folder), ({ path }) => kitOf(path));
  const manifest: PartManifest = {
    schema: PART_SCHEMA,
    shard,
    inputs,
    kits: kits.map(({ slug, key }) => ({ slug, key, files: files.get(slug) ?? [] })),
    shared: files.get(undefined) ?? [],
  };
  writeFileSync(join(folder, PART_FILE), `${JSON.stringify(manifest, null, 1)}\n`);
}
