import { once } from "../../../../src/core/lazily.ts";
import { computePattern } from "../../../../src/core/pattern/compute.ts";
import { type ClassView, viewClass } from "../../../../src/output/views/class/class-view.ts";
import { type KitView, viewKit } from "../../../../src/output/views/kit-view.ts";
import { KITS, readFixtureClass } from "../../../core/class/made-class.ts";

const CAUTION = {
  id: "blades",
  title: "Blades",
  text: "Cut away from yourself.",
  short: "Cut away.",
  when: "always",
} as const;

/** The class's address in tests. */
export const SITE = "https://folds.example.org/quay/";

/** The demo class, changed as a test wishes; without an address where `siteUrl` is not given. */
export function fixtureClassView(
  changes: object = {},
  { siteUrl }: { siteUrl?: string } = { siteUrl: SITE },
): ClassView {
  return viewClass({ ...readFixtureClass(), ...changes }, kitViews(), [CAUTION], siteUrl);
}

const kitViews = once((): KitView[] =>
  KITS.map((kit) => {
    const result = computePattern(kit);
    if (!result.fits) throw new Error(result.finding.kind);
    return viewKit({ kit, ...result, pictureNotes: [] }, [CAUTION]);
  }),
);
