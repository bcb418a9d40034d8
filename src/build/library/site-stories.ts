import type { Story } from "../../core/story/story.ts";
import type { Catalogue } from "../../input/catalogue/read-catalogue.ts";
import type { StatedClass } from "../../input/class/read-classes.ts";
import type { StatedKit } from "../../input/kit/read-kit.ts";

/** What is told on pages, by their addresses below the site: `/kits/moon/`. */
export type Stories = ReadonlyMap<string, Story>;

export function siteStories(
  catalogue: Catalogue,
  kits: readonly StatedKit[],
  classes: readonly StatedClass[],
): Stories {
  return new Map([
    ["/", catalogue.story],
    ...kits.map(({ kit, story }) => [`/kits/${kit.slug}/`, story] as const),
    ...classes.map(({ plan, story }) => [`/classes/${plan.slug}/`, story] as const),
  ]);
}
