import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readKitEntry } from "../../../src/build/kits/read-kit-entry.ts";
import { Gathering } from "../../../src/build/library/gathering.ts";
import { readFacts } from "../../../src/build/library/site-facts.ts";
import { Store } from "../../../src/build/store/store.ts";
import { inFolder } from "../../input/kit/kit-folders.ts";

/** The project's own kits. */
const BASE = join(import.meta.dirname, "../../..");
const KITS = join(BASE, "content/kits");
const slugs = readdirSync(KITS, { withFileTypes: true })
  .filter((one) => one.isDirectory())
  .map(({ name }) => name);

describe("readKitEntry(folder, facts)", () => {
  const facts = inFolder((folder) => readFacts(BASE, new Gathering("stop"), new Store(folder)));

  it.each(slugs)("knows that %s comes out well, as its page says", async (slug) => {
    const { read, broken } = await readKitEntry(join(KITS, slug), facts);
    expect([broken, read!.entry.outcome]).toEqual([[], { quality: "fits", troubles: [] }]);
  });
});
