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
  /** More than half of the leaves that could show the picture, `of` them, share it out in turns: between the strips the ground is seen. */
  | { readonly kind: "striped"; readonly leaves: number; readonly of: number }
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
  | {
      /** A kit that is cut otherwise is folded by corners, so it has no room for these. */
      readonly kind: "left-without-knife";
      readonly light: boolean;
      readonly window: boolean;
    }
  /** Levels that a kit folded by corners does not show. */
  | { readonly kind: "levels-left-out"; readonly levels: readonly number[] }
  | {
      /** Leaves meet the picture several times, and take turns. */
      readonly kind: "turns";
      readonly leaves: number;
      readonly most: number;
      /** Each part is shown at least by every so-many-th leaf. */
      readonly every: number;
    }
  /** Parts of the picture so narrow that no leaf had a turn for them. */
  | { readonly kind: "unseen-parts"; readonly parts: number }
  /** Corners longer than the leaf has room for at 45°. */
  | { readonly kind: "steep-creases"; readonly leaves: number; readonly reach: number }
  | { readonly kind: "off-centre"; readonly unfolded: number; readonly before: number; readonly after: number };

const GRAVE: readonly Doubt["kind"][] = [
  "caliper",
  "unnumbered-leaves",
  "springs-open",
  "coarse",
  "out-of-shape",
  "striped",
  "narrow-floor",
  "light-wider-than-hole",
];

export function isGrave(doubt: Doubt): doubt is GraveDoubt {
  return GRAVE.includes(doubt.kind);
}
