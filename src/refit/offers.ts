import type { Kit } from "../kit/kit.ts";
import { computePattern, tryFit } from "../pattern/compute.ts";
import { Problem } from "../problem.ts";
import { formatSize } from "../units/length.ts";
import type { Refit } from "./refit.ts";
import { refitKit } from "./refit.ts";

/** A change that makes a kit fit after all. */
export interface Offer {
  readonly words: string;
  readonly refit: Refit;
}

/**
 * The nearest changes with which the kit fits the reader's book, each by itself: a lower picture, narrower borders,
 * shallower levels, the other fold style, a smaller light. Empty where nothing of these helps.
 */
export function offersFor(kit: Kit, refit: Refit): Offer[] {
  const fits = (change: Partial<Refit>): boolean => tryFit(refitKit(kit, { ...refit, ...change })) === undefined;
  const fitted = refitKit(kit, refit);
  const single = [
    ...heightOffer(fitted, fits),
    ...borderOffer(fitted, fits),
    ...depthOffer(fitted, fits),
    ...foldOffer(fitted, fits),
  ];
  const offers = single.length > 0 ? single : shallowerAndLower(fitted, fits);
  return offers.map((offer) => ({ words: offer.words, refit: { ...refit, ...offer.refit } }));
}

type Fits = (change: Partial<Refit>) => boolean;

function heightOffer(kit: Kit, fits: Fits): Offer[] {
  const { units } = kit;
  if (kit.fit.height === "solve") return [];
  const step = units === "mm" ? 1 : 25.4 / 8;
  const top = Math.floor(Math.min(kit.fit.height, kit.book.leafHeight) / step);
  for (let count = top; count * step >= 10; count -= 1) {
    const height = count * step;
    const head = Math.max(0, (kit.book.leafHeight - height) / 2);
    const placed = Math.floor(head / kit.fit.markStep) * kit.fit.markStep;
    const change =
      kit.fit.head !== undefined && kit.fit.head + height <= kit.book.leafHeight
        ? { height }
        : { height, head: placed };
    if (fits(change))
      return height < kit.fit.height
        ? [{ words: `make the picture ${formatSize(height, units)} high`, refit: change }]
        : [];
  }
  return [];
}

function borderOffer(kit: Kit, fits: Fits): Offer[] {
  const [before, after] = kit.fit.borderLeaves;
  for (let less = 1; less <= Math.max(before, after); less += 1) {
    const borderLeaves = [Math.max(0, before - less), Math.max(0, after - less)] as const;
    if (fits({ borderLeaves }))
      return [
        { words: `fold ${borderLeaves[0]} border leaves before and ${borderLeaves[1]} after`, refit: { borderLeaves } },
      ];
  }
  return [];
}

/** All depths less by one share, so that the deepest flap clears the gutter. */
function depthOffer(kit: Kit, fits: Fits): Offer[] {
  const depths = shallower(kit).find((one) => fits({ depths: one }));
  return depths ? [{ words: depthWords(kit, depths), refit: { depths } }] : [];
}

/** Where no single change helps: shallower levels and a lower picture together. */
function shallowerAndLower(kit: Kit, fits: Fits): Offer[] {
  for (const depths of shallower(kit)) {
    const [lower] = heightOffer(kit, (change) => fits({ ...change, depths }));
    if (lower) return [{ words: `${depthWords(kit, depths)}, and ${lower.words}`, refit: { ...lower.refit, depths } }];
  }
  return [];
}

/** The levels' depths less by 5 %, 10 % … 60 %, on a step that a ruler shows, still one behind the other. */
function shallower(kit: Kit): number[][] {
  const step = kit.units === "mm" ? 0.5 : 25.4 / 32;
  const shares = Array.from({ length: 12 }, (_, i) => 0.95 - i * 0.05);
  const all = shares.map((share) =>
    kit.levels.map((level) => Math.max(step, Math.round((level.depth * share) / step) * step)),
  );
  return all.filter((depths) => depths.every((depth, i) => i === 0 || depth > depths[i - 1]!));
}

function depthWords(kit: Kit, depths: readonly number[]): string {
  return `make the levels shallower: ${depths.map((depth) => formatSize(depth, kit.units)).join(", ")}`;
}

function foldOffer(kit: Kit, fits: Fits): Offer[] {
  const foldStyle = kit.fit.foldStyle === "single" ? "stepped" : "single";
  return fits({ foldStyle }) ? [{ words: `use ${foldStyle} folds`, refit: { foldStyle } }] : [];
}

/** Smaller lights that stand in the reader's book: narrower at this height, or lower at this width. Shares are tried in steps of a tenth. */
export function lightOffers(kit: Kit, refit: Refit): Offer[] {
  const { light, units } = refitKit(kit, refit);
  if (!light) return [];
  const stands = (change: Partial<Refit>): boolean => {
    try {
      computePattern({ ...refitKit(kit, { ...refit, ...change }), insert: undefined });
      return true;
    } catch (error) {
      if (error instanceof Problem) return false;
      throw error;
    }
  };
  const shares = Array.from({ length: 7 }, (_, i) => 0.9 - i * 0.1);
  const step = units === "mm" ? 1 : 25.4 / 16;
  const smaller = (of: number): number[] => shares.map((share) => Math.floor((of * share) / step) * step);
  const narrow = smaller(light.diameter).find((lightDiameter) => lightDiameter >= 5 && stands({ lightDiameter }));
  const low = smaller(light.height).find((lightHeight) => lightHeight >= 5 && stands({ lightHeight }));
  return [
    ...(narrow === undefined
      ? []
      : [{ words: `use a light ${formatSize(narrow, units)} wide`, refit: { ...refit, lightDiameter: narrow } }]),
    ...(low === undefined
      ? []
      : [{ words: `use a light ${formatSize(low, units)} high`, refit: { ...refit, lightHeight: low } }]),
  ];
}
