/**
 * What can be made but may disappoint. Lengths mm, angles radians, levels by number from 1; said by words/findings/doubts.ts.
 */
export type Doubt = GraveDoubt | SlightDoubt;

/** Says that a book was measured wrong or will not carry the piece well: to look at before beginning. */
export type GraveDoubt =
  | {
      readonly kind: "caliper";
      readonly caliper: number;
      readonly least: number;
      readonly most: number;
      readonly leaves: number;
    }
  | {
      readonly kind: "unnumbered-leaves";
      readonly lastPage: number;
      readonly unnumbered: number;
      readonly leaves: number;
    }
  | { readonly kind: "springs-open"; readonly opening: number; readonly resting: number }
  | { readonly kind: "coarse"; readonly leaves: number; readonly column: number }
  | { readonly kind: "out-of-shape"; readonly stretch: number }
  | { readonly kind: "narrow-floor"; readonly level: number; readonly width: number; readonly need: number }
  | {
      readonly kind: "light-wider-than-hole";
      readonly diameter: number;
      readonly width: number;
      readonly height: number;
    };

/** Says what will look a little different from the drawing. */
export type SlightDoubt =
  | { readonly kind: "level-out-of-reach"; readonly level: number; readonly missing: number }
  | { readonly kind: "merged-spans"; readonly spans: number; readonly leaves: number; readonly leastTab: number }
  | { readonly kind: "off-centre"; readonly unfolded: number; readonly before: number; readonly after: number };

const GRAVE: readonly Doubt["kind"][] = [
  "caliper",
  "unnumbered-leaves",
  "springs-open",
  "coarse",
  "out-of-shape",
  "narrow-floor",
  "light-wider-than-hole",
];

export function isGrave(doubt: Doubt): doubt is GraveDoubt {
  return GRAVE.includes(doubt.kind);
}
