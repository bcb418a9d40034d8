import type { DeskEntry, DeskMessage, DeskState, PrintAsk } from "../../input/desk/protocol.ts";

/** What a page of the served site belongs to, by its path below the site. */
const OF_PAGE = /^\/(?:(kits|author)|(?:private\/)?(classes))\/([^/]+)\//;

/** A kit or a class that a page belongs to. */
export interface PageOwner extends PrintAsk {
  readonly entry: DeskEntry;
}

/** The kit or class that the page at a path belongs to; undefined for other pages. */
export function ownerOf(state: DeskState, path: string): PageOwner | undefined {
  const [, kit, , slug] = OF_PAGE.exec(path) ?? [];
  if (slug === undefined) return undefined;
  const kind = kit === undefined ? "class" : "kit";
  const entry = (kind === "kit" ? state.kits : state.classes).find((one) => one.slug === slug);
  return entry && { kind, slug, entry };
}

/** What is wrong with what a page shows: with what all pages share, and with the kit or class that it belongs to. */
export function wrongOnPage(state: DeskState, owner: PageOwner | undefined): readonly DeskMessage[] {
  return [...state.messages, ...(owner?.entry.messages ?? [])];
}
