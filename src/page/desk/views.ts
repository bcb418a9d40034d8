import type { View } from "./view.ts";

/** The views of the desk by what their addresses begin with; each is fetched when it is first gone to. */
export const VIEWS: readonly { readonly address: RegExp; readonly load: () => Promise<View> }[] = [
  { address: /^\/$/, load: async () => (await import("./list-view.ts")).listView },
  { address: /^\/kits\/([^/]+)$/, load: async () => (await import("./table/table-view.ts")).tableView },
  { address: /^\/classes\/([^/]+)$/, load: async () => (await import("./seats/seats-view.ts")).seatsView },
  { address: /^\/new$/, load: async () => (await import("./new-view.ts")).newView },
];

/** The view at an address and the name in it; undefined where there is none. */
export function viewAt(path: string): { readonly load: () => Promise<View>; readonly name: string } | undefined {
  for (const { address, load } of VIEWS) {
    const found = address.exec(path);
    if (found) return { load, name: found[1] ?? "" };
  }
  return undefined;
}
