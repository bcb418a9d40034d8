import { cutFiles } from "../../output/cut/cut-files.ts";
import { patternCsv } from "../../output/data/pattern-csv.ts";
import { patternJson } from "../../output/data/pattern-json.ts";
import { frontPicture } from "../../output/drawing/front/picture.ts";
import type { KitView } from "../../output/views/kit-view.ts";

/** The text of a file that the build would put beside this page, for the reader's own book; undefined for another address. */
export function fittedFile(address: string, view: KitView): string | undefined {
  if (address === "pattern.json") return patternJson(view.kit, view.pattern, view.findings, view.supplies, view.effort);
  if (address === "pattern.csv") return patternCsv(view.pattern);
  if (address === "front.svg") return frontOf(view, "day");
  if (address === "front-lit.svg") return frontOf(view, "lit");
  return cutFiles(view.kit, view.pattern).find((file) => `cut/${file.name}` === address)?.text;
}

function frontOf({ pattern, slug, kit }: KitView, mood: "day" | "lit"): string {
  return frontPicture(pattern, { slug, title: kit.title, mood });
}
