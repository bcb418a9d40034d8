import type { Assessment } from "./assessment.ts";
import { COMFORTABLE_CUTS } from "./full-leaves.ts";

/**
 * What makes a picture hard to make or to see. `figure` is what a way out is measured by: the greater the worse, 0 where
 * there is nothing of it. Lengths mm, angles radians, levels from 1.
 */
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
      /** Strips too short to fold. Figure: the share of the picture's area that changes its level, as they are merged. */
      readonly kind: "slivers";
      readonly figure: number;
      readonly strips: number;
      /** Places where they lie side by side. */
      readonly places: number;
      /** The level that loses the greatest share of its area, and this share. */
      readonly most: number;
      readonly share: number;
    }
  | {
      /** Parts of the picture that fewer than two leaves show. Figure: how many, and of these without any leaf. */
      readonly kind: "narrow";
      readonly figure: number;
      readonly unseen: number;
      /** Width of a leaf's column, mm. */
      readonly pitch: number;
    }
  | {
      /** Leaves with more cuts than is comfortable. Figure: how many leaves, and the cuts of the one that has most. */
      readonly kind: "many-cuts";
      readonly figure: number;
      readonly most: number;
    }
  | {
      /** The flaps push the book open beyond its opening. Figure: by how much. */
      readonly kind: "springs-open";
      readonly figure: number;
      readonly opening: number;
      readonly resting: number;
    };

/** A level of which less than this share or area (mm²) is hidden looks as drawn; both are estimates. */
const HIDDEN_SHARE = 0.1;
const HIDDEN_AREA = 20;

/** Where less than this share of the picture changes its level, nobody sees it; an estimate. */
const SEEN_SHARE = 0.005;

/** Whether a trouble is too small to see, so that nothing need be changed for it. */
export function isSlight({ kind, figure }: Trouble): boolean {
  return kind === "slivers" && figure < SEEN_SHARE;
}

/** From here on a trouble is to be looked at before any leaf is folded; all are estimates. */
const GRAVE = { hidden: 1 / 3, reach: 5, merged: 0.02, level: 0.1, cuts: 2 * COMFORTABLE_CUTS } as const;

/** Whether a trouble leaves another picture than is drawn, or leaves that hardly hold. */
export function isGraveTrouble(trouble: Trouble): boolean {
  switch (trouble.kind) {
    case "hidden":
      return trouble.figure > GRAVE.hidden;
    case "out-of-reach":
      return trouble.figure > GRAVE.reach;
    case "slivers":
      return trouble.figure > GRAVE.merged || (trouble.share > GRAVE.level && !isSlight(trouble));
    case "narrow":
      return trouble.unseen > 0;
    case "many-cuts":
      return trouble.most > GRAVE.cuts;
    case "springs-open":
      return true;
  }
}

/** The kinds of trouble in the order in which they are told. */
const KINDS = ["hidden", "out-of-reach", "slivers", "narrow", "many-cuts", "springs-open"] as const;

/** The same, first those that are looked at quickly: before any leaf is folded, and without rays. */
const QUICK_FIRST: readonly Trouble["kind"][] = [
  "out-of-reach",
  "narrow",
  "springs-open",
  "many-cuts",
  "slivers",
  "hidden",
];

/** The kinds that are looked at more quickly than one, and the others with it. */
export function aroundKind(kind: Trouble["kind"]): readonly [quicker: Kinds, slower: Kinds] {
  const at = QUICK_FIRST.indexOf(kind);
  return [QUICK_FIRST.slice(0, at), QUICK_FIRST.slice(at)];
}

export type Kinds = readonly Trouble["kind"][];

/** The troubles of an assessment: of levels from front to back, then of strips, parts, leaves and the book. */
export function troublesOf(assessment: Assessment): Trouble[] {
  return KINDS.flatMap((kind) => troublesOfKind(assessment, kind));
}

/** Whether the troubles of one of some kinds, taken together, are more than so many times what they were. */
export function hasWorse(assessment: Assessment, kinds: Kinds, times: number, before: readonly Trouble[]): boolean {
  return kinds.some((kind) => {
    const same = before.filter((one) => one.kind === kind);
    return sumOf(figuresOf(assessment, kind)) > times * sumOf(same.map(({ figure }) => figure));
  });
}

/** Whether nothing is left of a kind of trouble, of a level where the kind has one, but what is too little to be one. */
export function isEnded(assessment: Assessment, kind: Trouble["kind"], level: number | undefined): boolean {
  if (level === undefined) return figureOf(assessment, kind) === 0;
  return !troublesOfKind(assessment, kind).some((one) => "level" in one && one.level === level);
}

/** The figures of the troubles of one kind. */
function figuresOf(assessment: Assessment, kind: Trouble["kind"]): number[] {
  if (kind === "hidden" || kind === "out-of-reach") return troublesOfKind(assessment, kind).map(({ figure }) => figure);
  return [figureOf(assessment, kind)];
}

function sumOf(figures: readonly number[]): number {
  return figures.reduce((sum, figure) => sum + figure, 0);
}

/** The troubles of one kind. */
export function troublesOfKind(assessment: Assessment, kind: Trouble["kind"]): Trouble[] {
  const figure = (level?: number): number => figureOf(assessment, kind, level);
  switch (kind) {
    case "hidden":
      return (assessment.seen?.levels ?? [])
        .filter(({ wanted, hidden }) => isHidden(hidden, wanted))
        .map(({ level, share }) => ({ kind, level, figure: figure(level), share }));
    case "out-of-reach":
      return assessment.reach
        .filter(({ missing }) => missing > 0)
        .map(({ level, missing }) => ({ kind, level, figure: missing }));
    case "slivers":
      return figure() > 0 ? [{ kind, figure: figure(), ...stripsOf(assessment), ...mostLost(assessment) }] : [];
    case "narrow": {
      const unseen = assessment.narrow.filter(({ leaves }) => leaves === 0).length;
      return present({ kind, figure: figure(), unseen, pitch: assessment.pitch });
    }
    case "many-cuts":
      return present({ kind, figure: figure(), most: Math.max(0, ...assessment.full.map(({ most }) => most)) });
    case "springs-open":
      return present({ kind, figure: figure(), opening: assessment.opening, resting: assessment.resting });
  }
}

/** The figure of a kind of trouble in an assessment, of a level where the kind has one; also where it is too small to be a trouble. Nothing else of the assessment is looked at. */
export function figureOf(assessment: Assessment, kind: Trouble["kind"], level = 1): number {
  switch (kind) {
    case "hidden": {
      const { hidden, wanted } = assessment.seen?.levels[level - 1] ?? { hidden: 0, wanted: 0 };
      return wanted > 0 ? hidden / wanted : 0;
    }
    case "out-of-reach":
      return assessment.reach[level - 1]!.missing;
    case "slivers": {
      const { place, slivers } = assessment;
      // A strip that was merged may be merged again with what it was merged with.
      return Math.min(1, slivers.reduce((sum, { area }) => sum + area, 0) / (place.width * place.height));
    }
    case "narrow":
      return assessment.narrow.length;
    case "many-cuts":
      return assessment.full.reduce((sum, { leaves }) => sum + leaves, 0);
    case "springs-open":
      return Math.max(0, assessment.resting - assessment.opening);
  }
}

function isHidden(area: number, wanted: number): boolean {
  return area >= HIDDEN_AREA && area >= HIDDEN_SHARE * wanted;
}

function present(trouble: Trouble): Trouble[] {
  return trouble.figure > 0 ? [trouble] : [];
}

function stripsOf({ slivers }: Assessment): { readonly strips: number; readonly places: number } {
  return { strips: slivers.reduce((sum, sliver) => sum + sliver.strips, 0), places: slivers.length };
}

/** A strip may be merged more than once, so no level loses more by it than what is seen as another level. */
function mostLost({ areas, slivers, seen }: Assessment): { readonly most: number; readonly share: number } {
  const shares = areas.map((_, k) => {
    const merged = slivers.filter(({ level }) => level === k + 1).reduce((sum, { share }) => sum + share, 0);
    const { changed, wanted } = seen?.levels[k] ?? { changed: 1, wanted: 1 };
    return Math.min(merged, wanted > 0 ? changed / wanted : 0);
  });
  const share = Math.max(...shares);
  return { most: shares.indexOf(share) + 1, share: Math.min(1, share) };
}
