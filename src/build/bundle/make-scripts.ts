import { mkdtempSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { SiteFacts } from "../library/site-facts.ts";
import { writeLicences } from "../licences/write-licences.ts";
import { codeKey } from "../store/code-keys.ts";
import { gatherFiles } from "../store/gather.ts";
import { keyOf, type Store } from "../store/store.ts";
import { type NamedFile, writeMade } from "../store/write-made.ts";
import { bundleScripts, scriptEntries } from "./scripts.ts";

/** Makes the site's scripts, and the terms of what is in them, or takes them from the store. */
export async function makeScripts(
  store: Store,
  facts: SiteFacts,
  { output, aside }: { readonly output: string; readonly aside: string },
): Promise<readonly NamedFile[]> {
  const key = keyOf("scripts", codeKey([import.meta.filename, ...scriptEntries()]), facts.key);
  const kept = store.take(key);
  const files = kept?.files ?? (await made(facts, aside));
  if (!kept) store.put(key, { files, data: undefined });
  writeMade(output, files);
  return files;
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
