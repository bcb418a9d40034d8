import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type RoundData, roundData } from "../../../src/output/data/round-data.ts";
import { published } from "../../core/pattern/published.ts";
import { FIXTURES, fixtureFolder, fixtureFrontMatter, readKit, readMadeKit } from "../../input/kit/kit-folders.ts";

/** A fixture’s published pattern, its front matter changed before where a change is given. */
// biome-ignore lint/suspicious/noExplicitAny: tests read the published JSON freely
export function publishedDemo(slug: string, change?: (frontMatter: any) => void): any {
  if (!change) return published(readKit(fixtureFolder(slug), FIXTURES));
  const frontMatter = fixtureFrontMatter(slug);
  const svg = readFileSync(join(fixtureFolder(slug), frontMatter.picture.file), "utf8");
  frontMatter.picture.file = "picture.svg";
  change(frontMatter);
  return published(readMadeKit(frontMatter, svg, slug));
}

export function dataOf(pattern: unknown): RoundData {
  return roundData(pattern as RoundData);
}
