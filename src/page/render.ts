import "leaflight:templates";
import nunjucks from "nunjucks/browser/nunjucks-slim.js";
import type { KitView } from "../site/kit-view.ts";

const environment = new nunjucks.Environment([new nunjucks.PrecompiledLoader()], { autoescape: true });

/** Fills a template with a kit's view, as the build does. */
export function renderPart(template: string, view: KitView): string {
  return environment.render(template, {
    slug: view.slug,
    view,
    kit: view.kit,
    pattern: view.pattern,
    prep: view.preparation,
  });
}
