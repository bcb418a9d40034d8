import { cutFile } from "../../output/cut/cut-files.ts";
import { patternCsv } from "../../output/data/pattern-csv.ts";
import { patternJson } from "../../output/data/pattern-json.ts";
import { frontPicture } from "../../output/drawing/front/picture.ts";
import type { KitView } from "../../output/views/kit-view.ts";

/** The text of a file beside this page for the book of a view, also in forms that no build writes; undefined for another address. */
export function fittedFile(address: string, view: KitView): string | undefined {
  if (address === "pattern.json") return patternJson(view.kit, view.pattern, view.findings, view.supplies, view.effort);
  if (address === "pattern.csv") return patternCsv(view.pattern);
  if (address === "front.svg") return frontOf(view, "day");
  if (address === "front-lit.svg") return frontOf(view, "lit");
  return cutFile(view.kit, view.pattern, address.replace(/^cut\//, ""))?.text;
}

function frontOf({ pattern, slug, kit }: KitView, mood: "day" | "lit"): string {
  return frontPicture(pattern, { slug, title: kit.title, mood });
}
