import { type KitFolder, readKit } from "../../../src/input/kit/read-kit.ts";
import { DEMO_KITS, demoFolder, readMadeKit } from "../../input/kit/kit-folders.ts";
import { randomKits } from "../../oracle/random-kits.ts";

/** The demo kits and the random ones, read: single and stepped folds, two to five levels. */
export const KITS: readonly (readonly [name: string, folder: KitFolder])[] = [
  ...DEMO_KITS.map((slug) => [slug, readKit(demoFolder(slug), demoFolder("../.."))] as const),
  ...randomKits().map((kit) => [kit.slug, readMadeKit(kit.frontMatter, kit.svg)] as const),
];
