import { type Doubt, isGrave } from "../../../core/findings/doubt.ts";
import type { Failure } from "../../../core/findings/failure.ts";
import type { Makeability, TroubleWithWays } from "../../../core/makeability/makeability.ts";
import { outcomeOf } from "../../../core/makeability/outcome.ts";
import { isSlight, type Trouble } from "../../../core/makeability/trouble.ts";
import type { Offer } from "../../../core/refit/offer.ts";
import { authorDoubt } from "../../../words/findings/doubts.ts";
import { whyText } from "../../../words/findings/failure-why.ts";
import { troubleText, wayTexts } from "../../../words/findings/makeability.ts";
import { offerText } from "../../../words/findings/offers.ts";
import type { AnyShown, CornerShown, Shown } from "./shown.ts";
import type { Judged, Way } from "./slip-view.ts";
import { refitEdits, wayEdits } from "./way-edits.ts";

/** Doubts that a trouble of the same kind tells better. */
const TOLD_BY: Readonly<Partial<Record<Doubt["kind"], Trouble["kind"]>>> = {
  "springs-open": "springs-open",
  "level-out-of-reach": "out-of-reach",
  "merged-spans": "slivers",
};

/**
 * What the slip says of a kit that can be made: the gravest first, with what helps against it; `ways` undefined while they are
 * sought.
 */
export function judgedFit(
  shown: Shown,
  { seen }: Pick<Makeability, "seen">,
  all: readonly Trouble[],
  ways: readonly TroubleWithWays[] | undefined,
): Judged {
  const { kit, findings } = shown;
  const troubles = all.filter((trouble) => !isSlight(trouble));
  const told = new Set(troubles.map((trouble) => trouble.kind));
  const doubts = findings.filter((doubt) => !told.has(TOLD_BY[doubt.kind]!));
  const grave = doubts.filter(isGrave);
  const first = ways?.find(({ trouble }) => !isSlight(trouble));
  const hasWays = grave.length === 0 && troubles.length > 0;
  return {
    verdict: outcomeOf(kit, shown, troubles),
    findings: [
      ...grave.map((doubt) => authorDoubt(doubt, kit)),
      ...troubles.map((trouble) => troubleText(trouble, { seen }, kit)),
      ...doubts.filter((doubt) => !isGrave(doubt)).map((doubt) => authorDoubt(doubt, kit)),
    ],
    ways: hasWays && !ways ? undefined : hasWays && first ? waysOf(shown, first) : [],
  };
}

/** What it says of a kit whose corners are folded. */
export function judgedCorner({ kit, pattern, findings }: CornerShown): Judged {
  const graveFirst = findings.toSorted((one, other) => Number(isGrave(other)) - Number(isGrave(one)));
  return {
    verdict: outcomeOf(kit, { pattern, findings }, []),
    findings: graveFirst.map((doubt) => authorDoubt(doubt, kit)),
    ways: [],
  };
}

/** What it says of a kit that cannot be made; `offers` undefined while they are sought. */
export function judgedUnfit(
  of: Pick<AnyShown, "kit" | "stated">,
  failure: Failure,
  offers: readonly Offer[] | undefined,
): Judged {
  return {
    verdict: "unfit",
    findings: [whyText(failure, of.kit)],
    ways: offers?.map((offer): Way => ({ text: offerText(offer, of.kit.units), edits: refitEdits(of, offer.refit) })),
  };
}

function waysOf(shown: Shown, { trouble, ways }: TroubleWithWays): Way[] {
  const { kit } = shown;
  return ways.flatMap((way) => {
    const [text] = wayTexts(trouble, [way], kit);
    return text === undefined ? [] : [{ text, edits: wayEdits(shown, way.change) }];
  });
}
