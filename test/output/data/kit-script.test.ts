import { gzipSync } from "node:zlib";
import { expect, it } from "vitest";
import { kitScript } from "../../../src/output/data/kit-script.ts";
import { FIXTURE_KITS, FIXTURES, fixtureFolder, readKit } from "../../input/kit/kit-folders.ts";

/** Most bytes that a page fetches, packed (gzip 9), without a window and with one. */
const MOST = { without: 30_000, with: 60_000 };

it.each(FIXTURE_KITS)("hands %s to a page as the build has it, in few bytes", (slug) => {
  const { kit } = readKit(fixtureFolder(slug), FIXTURES);
  const script = kitScript({ kit, cautions: [] });
  const page: { leaflightKits?: Record<string, unknown>; leaflightKit?: unknown } = {};
  new Function("self", script)(page);
  expect(JSON.stringify(page.leaflightKit)).toBe(JSON.stringify({ kit, cautions: [] }));
  expect(page.leaflightKits![slug]).toBe(page.leaflightKit);
  expect(gzipSync(script, { level: 9 }).length).toBeLessThan(kit.insert ? MOST.with : MOST.without);
});
