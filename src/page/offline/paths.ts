import { REASONS, type Reason } from "../../output/offline/messages.ts";

/** A file of the site behind an address, below the site's folder; undefined for addresses outside it. Parameters do not count. */
export function pathIn(site: string, address: string): string | undefined {
  const url = new URL(address);
  const folder = new URL(site);
  if (url.origin !== folder.origin || !url.pathname.startsWith(folder.pathname)) return undefined;
  const path = decoded(url.pathname.slice(folder.pathname.length));
  return path === "" || path.endsWith("/") ? `${path}index.html` : path;
}

/** The kit that a path belongs to. */
export function kitOf(path: string): string | undefined {
  return /^kits\/([a-z0-9-]+)\//.exec(path)?.[1];
}

/** The address under which a file's contents are kept: another content never stands under it. */
export function keptAddress(site: string, path: string, name: string): string {
  return `${addressOf(site, path)}?${name}`;
}

/** The address of a file of the site. */
export function addressOf(site: string, path: string): string {
  return new URL(path.split("/").map(encodeURIComponent).join("/"), site).href;
}

/** Where an address leads that cannot be opened now; the page there says so, with the reason where there is one, and offers to try again. */
export function absentAddress(site: string, path: string, why?: Reason): string {
  const reason = why === undefined ? "" : `&why=${why}`;
  return `${new URL("offline.html", site).href}?page=${encodeURIComponent(path)}${reason}`;
}

/** The reason in the address of the page that says that another is absent. */
export function askedReason(search: string): Reason | undefined {
  const why = new URLSearchParams(search).get("why");
  return REASONS.find((one) => one === why);
}

/** The page that was asked for, from the address of the page that says it is absent; undefined where it names none of this site. */
export function askedPage(search: string): string | undefined {
  const page = new URLSearchParams(search).get("page");
  return page !== null && /^[a-z0-9][a-z0-9-]*(\/[a-z0-9][a-z0-9.-]*)*$/i.test(page) ? page : undefined;
}

function decoded(path: string): string {
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}
