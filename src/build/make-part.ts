import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { PART_SITE } from "../input/part/part-manifest.ts";
import { Gathering } from "./library/gathering.ts";
import { currentLibrary } from "./library/held-library.ts";
import { kitFolders } from "./library/kit-folders.ts";
import { readFacts } from "./library/site-facts.ts";
import type { AskedPart } from "./shards/asked-part.ts";
import { finishPart } from "./shards/finish-part.ts";
import { kitsOfPart } from "./shards/kits-of-part.ts";
import { partInputs } from "./shards/part-inputs.ts";
import { wholeSite } from "./shards/whole-site.ts";
import { PART_STAGES, type Run, runBuild } from "./stages.ts";
import { Store } from "./store/store.ts";

/** What pages are printed with, and the whole site has of its own. */
const PRINTED_WITH = "assets/fonts";

/** Makes a part of a site; gives back of how many kits. @throws KitError, BuildError */
export async function makePart(part: AskedPart, run: Run): Promise<number> {
  const { base, output, packets } = run;
  const facts = readFacts(base, new Gathering("stop"), new Store());
  const { folders } = kitFolders(base, {});
  const kits = kitsOfPart(base, part, folders);
  const whole = wholeSite(facts, folders);
  const inputs = await partInputs({ facts, whole, folders, packets });
  const site = join(output, PART_SITE);
  mkdirSync(site, { recursive: true });
  if (kits.length > 0) await runBuild({ ...run, output: site, kits, whole }, PART_STAGES);
  rmSync(join(site, PRINTED_WITH), { recursive: true, force: true });
  const made = kits.length > 0 ? currentLibrary().kits : [];
  finishPart(output, made, { shard: "shard" in part ? part.shard : undefined, inputs });
  return made.length;
}
