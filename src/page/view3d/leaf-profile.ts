/** A corner of a leaf's section, seen from the head: `aside` in leaves toward the next leaf, `radius` from the root in mm. */
export interface Corner {
  readonly aside: number;
  readonly radius: number;
  /** The surface's direction there: toward the next leaf, and out of the book. */
  readonly side: number;
  readonly out: number;
  /** How much light reaches it, 0 to 1: paper between leaves lies in the dark. */
  readonly light: number;
}

/** A leaf's section, once round: out along the face toward the leaf before, round the tip, back along the other. */
export interface Profile {
  readonly before: readonly Corner[];
  readonly after: readonly Corner[];
}

/** What of a leaf stands at some heights; radii in mm from the root. */
export interface Piece {
  /** Where the paper ends: the folded tip, or the notch's bottom where that is less. */
  readonly end: number;
  /** The folded tip, W − d; the leaf's width where it is not folded. */
  readonly tip: number;
  /** Where the flap ends, W − 2d; none on an unfolded leaf. */
  readonly flapEnd: number | undefined;
}

/** Half the thickness that a leaf is drawn with, and how far a flap stands off behind it, as shares of the way to the next leaf. */
const HALF = 0.12;
const SHOULDER = 0.76;
const LIFT = 0.6;

/** How far behind the tip the fold's round nose ends and the dark between the leaves begins, mm. */
const NOSE = 1.8;
const DUSK = 12;

/** The section of a leaf: the body, and behind it (toward the next leaf) the flap from the tip inward, slightly lifted. */
export function profileOf({ end, tip, flapEnd }: Piece): Profile {
  const dusk = Math.max(0, end - DUSK);
  const whole = end === tip;
  const nose = Math.max(0, end - NOSE);
  const before = [
    corner(-HALF, 0, -1, 0.1, 0.16),
    corner(-HALF, dusk, -1, 0.2, 0.42),
    corner(-HALF, whole ? nose : end, -0.85, 0.55, 0.86),
  ];
  const inside = [corner(HALF, 0, 1, 0.1, 0.16)];
  if (!whole) return { before, after: [...cutFlap(end, flapEnd), ...inside] };
  const fore = corner(0, tip, 0, 1, 1);
  if (flapEnd === undefined) return { before, after: [fore, corner(HALF, nose, 0.85, 0.55, 0.86), ...inside] };
  const flap = [
    corner(SHOULDER, Math.max(nose, flapEnd), 0.8, 0.65, 0.93),
    corner(LIFT + 0.05, Math.max(dusk, flapEnd), 1, 0.2, 0.5),
    corner(LIFT, flapEnd, 1, 0.1, 0.3),
    corner(HALF, flapEnd, 1, 0.1, 0.2),
  ];
  return { before, after: [fore, ...flap, ...inside] };
}

/** A notch leaves straight cut ends: of the body, and of the flap where the notch does not take all of it. */
function cutFlap(end: number, flapEnd: number | undefined): Corner[] {
  if (flapEnd === undefined || end <= flapEnd) return [corner(HALF, end, 0.7, 0.7, 0.8)];
  return [corner(LIFT, end, 0.7, 0.7, 0.8), corner(LIFT, flapEnd, 1, 0.1, 0.35), corner(HALF, flapEnd, 1, 0.1, 0.2)];
}

function corner(aside: number, radius: number, side: number, out: number, light: number): Corner {
  return { aside, radius, side, out, light };
}
