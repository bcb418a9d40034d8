import type { Assessment } from "./assessment.ts";

/** What makes a picture hard to make or to see. The figure is what a way out is measured by. Lengths mm, angles radians. */
export type Trouble =
  | {
      /** Sides of prouder leaves stand before a level. Figure: the share of its area that is hidden. */
      readonly kind: "hidden";
      readonly level: number;
      readonly figure: number;
      /** The share that is seen. */
      readonly share: number;
    }
  | {
      /** A level goes on beyond its outermost folded edge. Figure: by how many mm. */
      readonly kind: "out-of-reach";
      readonly level: number;
      readonly figure: number;
    }
  | {
      /** Strips too short to fold. Figure: how many were merged. */
      readonly kind: "slivers";
      readonly figure: number;
      readonly leaves: number;
      /** Places where they lie side by side. */
      readonly places: number;
      /** The level that loses the greatest share of its area, and this share. */
      readonly level: number;
      readonly share: number;
    }
  | {
      /** Parts of the picture that fewer than two leaves show. Figure: how many; of them without any leaf. */
      readonly kind: "narrow";
      readonly figure: number;
      readonly unseen: number;
      /** Width of a leaf's column, mm. */
      readonly pitch: number;
    }
  | {
      /** Leaves with more cuts than is comfortable. Figure: how many leaves. */
      readonly kind: "many-cuts";
      readonly figure: number;
      /** Cuts of the leaf that has most. */
      readonly most: number;
    }
  | {
      /** The flaps push the book open beyond its opening. Figure: by how much. */
      readonly kind: "springs-open";
      readonly figure: number;
      readonly opening: number;
      readonly resting: number;
    };

/** A level of which less than this share is hidden looks as drawn; less than this area is not seen at all, mm² (estimates). */
const HIDDEN_SHARE = 0.1;
const HIDDEN_AREA = 20;

/** The troubles of an assessment: of levels from front to back, then of strips, parts, leaves and the book. */
export function troublesOf(assessment: Assessment): Trouble[] {
  return [
    ...hiddenLevels(assessment),
    ...assessment.reach
      .filter(({ missing }) => missing > 0)
      .map(({ level, missing }): Trouble => ({ kind: "out-of-reach", level, figure: missing })),
    ...slivers(assessment),
    ...narrow(assessment),
    ...manyCuts(assessment),
    ...springs(assessment),
  ];
}

function hiddenLevels({ seen }: Assessment): Trouble[] {
  return (seen?.levels ?? []).flatMap(({ level, wanted, hidden, share }): Trouble[] => {
    if (hidden < HIDDEN_AREA || hidden < HIDDEN_SHARE * wanted) return [];
    return [{ kind: "hidden", level, figure: hidden / wanted, share }];
  });
}

function slivers({ slivers: places, areas }: Assessment): Trouble[] {
  if (places.length === 0) return [];
  const lost = areas.map((area, k) => {
    const own = places.filter(({ level }) => level === k + 1).reduce((sum, sliver) => sum + sliver.area, 0);
    return area > 0 ? Math.min(1, own / area) : 0;
  });
  const share = Math.max(...lost);
  const figure = places.reduce((sum, { strips }) => sum + strips, 0);
  const leaves = new Set(places.flatMap(({ firstLeaf, lastLeaf }) => numbers(firstLeaf, lastLeaf))).size;
  return [{ kind: "slivers", figure, leaves, places: places.length, level: lost.indexOf(share) + 1, share }];
}

function narrow({ narrow: details, pitch }: Assessment): Trouble[] {
  if (details.length === 0) return [];
  const unseen = details.filter(({ leaves }) => leaves === 0).length;
  return [{ kind: "narrow", figure: details.length, unseen, pitch }];
}

function manyCuts({ full }: Assessment): Trouble[] {
  if (full.length === 0) return [];
  const figure = full.reduce((sum, { leaves }) => sum + leaves, 0);
  return [{ kind: "many-cuts", figure, most: Math.max(...full.map(({ most }) => most)) }];
}

function springs({ opening, resting }: Assessment): Trouble[] {
  return opening >= resting ? [] : [{ kind: "springs-open", figure: resting - opening, opening, resting }];
}

function numbers(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, i) => from + i);
}
