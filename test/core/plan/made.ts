import type { PatternedKit } from "../../../src/core/pattern/patterned-kit.ts";
import { DEMO_KITS, demoFolder, readKit, readMadeKit } from "../../input/kit/kit-folders.ts";
import { randomKits } from "../../oracle/random-kits.ts";

/** The demo kits and the random ones, read: single and stepped folds, two to five levels. */
export const KITS: readonly (readonly [name: string, folder: PatternedKit])[] = [
  ...DEMO_KITS.map((slug) => [slug, readKit(demoFolder(slug), demoFolder("../.."))] as const),
  ...randomKits().map((kit) => [kit.slug, readMadeKit(kit.frontMatter, kit.svg)] as const),
];
