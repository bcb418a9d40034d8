import type { SiteFacts } from "../library/site-facts.ts";
import { writeLicences } from "../licences/write-licences.ts";
import { codeKey } from "../store/code-keys.ts";
import { gatherMade } from "../store/gather.ts";
import type { Placing } from "../store/placing.ts";
import { keyOf, type Store } from "../store/store.ts";
import { bundleScripts, scriptEntries } from "./scripts.ts";

/** Puts the site's scripts, and the terms of what is in them, in place in a site: made, or taken from the store. */
export async function makeScripts(
  store: Store,
  facts: SiteFacts,
  { placing, aside }: { readonly placing: Placing; readonly aside: string },
): Promise<void> {
  const key = keyOf("scripts", codeKey([import.meta.filename, ...scriptEntries()]), facts.key);
  if (placing.stands("scripts", key)) return;
  const kept = store.take(key);
  const make = async (folder: string): Promise<void> => writeLicences(folder, await bundleScripts(folder, facts));
  const files = kept?.files ?? (await gatherMade(aside, make));
  if (!kept) store.put(key, { files, data: undefined });
  placing.put("scripts", key, files);
}
