import type { Kit } from "../kit/kit.ts";
import { revisionOf } from "../revision.ts";

/** Names the state of a kit that a pattern is made from: another name may mean another pattern, or other words. */
export function editionOf(kit: Kit): string {
  return `${kit.slug}/${revisionOf(kit)}`;
}
