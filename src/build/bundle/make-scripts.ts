import { mkdtempSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { SiteFacts } from "../library/site-facts.ts";
import { writeLicences } from "../licences/write-licences.ts";
import { codeKey } from "../store/code-keys.ts";
import { gatherFiles } from "../store/gather.ts";
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
  const files = kept?.files ?? (await made(facts, aside));
  if (!kept) store.put(key, { files, data: undefined });
  placing.put("scripts", key, files);
}

async function made(facts: SiteFacts, aside: string): Promise<ReturnType<typeof gatherFiles>> {
  const scratch = mkdtempSync(join(aside, "scripts-"));
  try {
    writeLicences(scratch, await bundleScripts(scratch, facts));
    return gatherFiles(scratch);
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}
