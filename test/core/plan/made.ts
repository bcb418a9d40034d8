import type { PatternedKit } from "../../../src/core/pattern/patterned-kit.ts";
import { FIXTURE_KITS, FIXTURES, fixtureFolder, readKit, readMadeKit } from "../../input/kit/kit-folders.ts";
import { randomKits } from "../../oracle/random-kits.ts";

/** The fixture kits and the random ones, read: single and stepped folds, two to five levels. */
export const KITS: readonly (readonly [name: string, folder: PatternedKit])[] = [
  ...FIXTURE_KITS.map((slug) => [slug, readKit(fixtureFolder(slug), FIXTURES)] as const),
  ...randomKits().map((kit) => [kit.slug, readMadeKit(kit.frontMatter, kit.svg)] as const),
];
