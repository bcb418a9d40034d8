import { globSync, statSync } from "node:fs";
import { join } from "node:path";
import { FIXTURE_KITS } from "../../input/kit/kit-folders.ts";
import type { Figure } from "../figure.ts";
import type { FixturesSite } from "../fixtures-site.ts";
import type { Scale } from "../scale.ts";
import { bytesOf } from "../sizes.ts";

/** What a kit weighs on the disk and on the line. */
export async function measureBytes(_: Scale, site: FixturesSite): Promise<Figure[]> {
  const dist = await site.dist();
  const files = globSync("kits/**", { cwd: dist }).map((path) => statSync(join(dist, path)));
  const total = files.reduce((sum, file) => sum + (file.isFile() ? file.size : 0), 0);
  return [
    { line: "kit-bytes", value: total / FIXTURE_KITS.length / 1_000_000 },
    // A book of 204 leaves.
    { line: "page-bytes", value: bytesOf(dist, "kits/harbour-moon/index.html") / 1000 },
    { line: "data-bytes", value: bytesOf(dist, "kits/little-gull/kit-data.js") / 1000 },
    { line: "window-bytes", value: bytesOf(dist, "kits/harbour-moon/kit-data.js") / 1000 },
  ];
}
