import { posix } from "node:path";

/** A site address as seen from a page, so that the site works under any folder and from the disk: `../../assets/x.css`. */
export function relativeUrl(target: string, pageUrl: string): string {
  const from = pageUrl.endsWith("/") ? pageUrl : posix.dirname(pageUrl);
  const path = posix.relative(from, target) || ".";
  return target.endsWith("/") && path !== "." ? `${path}/index.html` : target.endsWith("/") ? "index.html" : path;
}
