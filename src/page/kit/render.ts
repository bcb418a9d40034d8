import { templates } from "leaflight:templates";
import type { KitView } from "../../output/views/kit-view.ts";

/** Fills a template with a kit's view, as the build does. */
export function renderPart(template: string, view: KitView): string {
  return templates[template]!({
    slug: view.slug,
    view,
    kit: view.kit,
    pattern: view.pattern,
    prep: view.preparation,
  });
}
