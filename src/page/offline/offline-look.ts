import type { HostState } from "../../output/offline/messages.ts";
import { WORKER } from "../../output/offline/site-list.ts";

/** What stands in each of our workers: the beginning of its cache's name. */
export const OURS = "leaflight ";

/** Asks a site's host for its worker, which says what version of the site stands there. */
export async function lookAtHost(site: string, version: string): Promise<HostState> {
  try {
    // A host that sends elsewhere, as the gates of open networks do, is not this site's.
    const response = await fetch(new URL(WORKER, site), { cache: "no-store", redirect: "manual" });
    if (response.status === 404 || response.status === 410) return "gone";
    const text = response.ok ? await response.text() : "";
    if (text.includes(version)) return "same";
    return text.includes(OURS) ? "newer" : "wrong";
  } catch {
    return "unreachable";
  }
}
