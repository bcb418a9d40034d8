import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Hono } from "hono";
import { deskPage } from "../../output/parts/desk/desk-page.ts";
import { COVER, coverPath } from "./cover.ts";
import type { Desk } from "./desk.ts";

/** Addresses of the desk's one page: what is seen there is chosen by its script. */
const VIEWS = ["/", "/kits/:slug", "/classes/:slug", "/new"];

/** The desk's page with its scripts, styles and fonts, and covers of kits. */
export function pageRoutes(
  app: Hono,
  { files, state, output, visit }: Pick<Desk, "files" | "state" | "output" | "visit">,
): void {
  for (const view of VIEWS) app.get(view, (context) => context.html(deskPage(state().site.title)));
  app.get("/assets/:name{[\\w-]+\\.js}", async (context, next) => {
    const script = await files.script(context.req.param("name"));
    if (script === undefined) return next();
    return context.body(script, 200, { "Content-Type": "text/javascript; charset=utf-8" });
  });
  app.get("/assets/desk.css", (context) =>
    context.body(files.style(), 200, { "Content-Type": "text/css; charset=utf-8" }),
  );
  app.get("/assets/fonts/:name{[\\w.-]+}", (context, next) => {
    const font = files.font(context.req.param("name"));
    return font ? context.body(font, 200, { "Content-Type": "font/woff2" }) : next();
  });
  app.get("/covers/:slug", async (context, next) => {
    const known = state().kits.find(({ slug }) => slug === context.req.param("slug"));
    if (known?.cover === undefined) return next();
    const folder = join(output, "kits", known.slug);
    if (!existsSync(join(folder, COVER))) await visit(`/${coverPath(known.slug)}`);
    const cover = coverIn(folder);
    return cover ? context.body(cover, 200, { "Content-Type": "image/webp" }) : next();
  });
}

/** The cover in a kit's folder; undefined where it could not be made. */
function coverIn(folder: string): Uint8Array<ArrayBuffer> | undefined {
  try {
    return new Uint8Array(readFileSync(join(folder, COVER)));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return undefined;
    throw error;
  }
}
