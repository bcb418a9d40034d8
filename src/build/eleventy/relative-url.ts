import { posix } from "node:path";

/** The page that hosts serve, as it is, wherever an address leads nowhere. */
export const NOT_FOUND = "/404.html";

/** A link from a page: relative, but for the page that may stand at any depth, which links from the host's root through the site's folder `root` (`/folder/`). */
export function linkFrom(pageUrl: string, target: string, root: string): string {
  return pageUrl === NOT_FOUND ? root + target.slice(1) : relativeUrl(target, pageUrl);
}

/** A site address as seen from a page, so that the site works under any folder and from the disk: `../../assets/x.css`. */
export function relativeUrl(target: string, pageUrl: string): string {
  const from = pageUrl.endsWith("/") ? pageUrl : posix.dirname(pageUrl);
  const path = posix.relative(from, target) || ".";
  return target.endsWith("/") && path !== "." ? `${path}/index.html` : target.endsWith("/") ? "index.html" : path;
}
