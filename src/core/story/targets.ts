/** Where a link of a page leads. */
export type Target =
  /** To another site, or to a place on the page itself. */
  | { readonly kind: "away" }
  /** To an address below the site, `/kits/moon/`, with what follows it. */
  | { readonly kind: "site"; readonly address: string; readonly rest: string }
  /** Nowhere that can be told: another scheme, or out of the site. */
  | { readonly kind: "unknown" };

const AWAY = /^(https?:\/\/[^/\s]+|mailto:\S+@|tel:\+?[\d])/i;
const SCHEME = /^[a-z][a-z0-9+.-]*:|^\/\/|\\/i;

/** Reads a link of the page at `page` (`/kits/moon/`), as a browser does from there. */
export function targetOf(link: string, page: string): Target {
  if (link.startsWith("#") || AWAY.test(link)) return { kind: "away" };
  if (SCHEME.test(link)) return { kind: "unknown" };
  const end = link.search(/[?#]/);
  const [path, rest] = end < 0 ? [link, ""] : [link.slice(0, end), link.slice(end)];
  const steps = path.startsWith("/") ? [] : page.split("/").slice(1, -1);
  for (const step of path.replace(/^\//, "").split("/").slice(0, -1)) {
    if (step === "..") {
      if (steps.pop() === undefined) return { kind: "unknown" };
    } else if (step !== "." && step !== "") steps.push(step);
  }
  const last = path.split("/").at(-1)!;
  const folder = ["", ...steps, ""].join("/");
  if (last === "..") return targetOf(`${link.slice(0, path.length)}/${rest}`, page);
  return { kind: "site", address: last === "index.html" || last === "." ? folder : folder + last, rest };
}
