import type { LinkTo } from "../../output/parts/cards.ts";
import { stated } from "./stated.ts";

/** What leads from a page, by its address, to others. @throws Error where a frame names no page */
export function linkFromPage(link: (from: string, target: string) => string): (page: string) => LinkTo {
  return (page) => {
    stated(page);
    return (target) => link(page, target);
  };
}
