import { seenBothWays } from "../../core/makeability/silhouette-seen.ts";
import { computeCorner } from "../../core/pattern/compute-corner.ts";
import { makeAny } from "../../core/refit/any-making.ts";
import { cornerCsv } from "../../output/data/pattern-csv.ts";
import { cornerJson } from "../../output/data/pattern-json.ts";
import { cornerFront } from "../../output/drawing/corner/corner-front.ts";
import { CORNER_PARTS } from "../../output/parts/corner-kit-parts.ts";
import { CORNER_PACKET_PAGES } from "../../output/parts/corner-packet.ts";
import type { KitPart } from "../../output/parts/kit-parts.ts";
import { withCornerPacket } from "../../output/views/corner-packet.ts";
import { type CornerView, viewCorner } from "../../output/views/corner-view.ts";
import { seenWords } from "../../words/seen.ts";
import type { CornerWay } from "./corner-way.ts";

/** Script that a kit's page, its worker and its packet fetch where corners are folded. */
self.leaflightCorner = {
  make: makeAny,
  view: ({ cautions }, kit) => {
    const result = computeCorner(kit);
    if (!result.fits) return { failure: result.finding };
    const { pattern, findings } = result;
    return { view: viewCorner({ kit, pattern, findings, pictureNotes: [] }, cautions) };
  },
  part: (name, view) => String(CORNER_PARTS[name as KitPart](view)),
  packet: (page, view) => String(CORNER_PACKET_PAGES[page](withCornerPacket(view))),
  match: ({ kit, pattern }) => {
    const seen = seenBothWays(kit, pattern);
    return seen && seenWords(seen);
  },
  file: fileOf,
} satisfies CornerWay;

function fileOf(address: string, { kit, pattern, findings, supplies, effort, slug }: CornerView): string | undefined {
  if (address === "pattern.json") return cornerJson(kit, pattern, findings, supplies, effort);
  if (address === "pattern.csv") return cornerCsv(pattern);
  if (address === "front.svg") return cornerFront(pattern, { slug, title: kit.title, mood: "day" });
  return undefined;
}
