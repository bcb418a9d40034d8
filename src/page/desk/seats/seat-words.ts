import type { Verdict } from "../../../core/finder/verdict.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import type { Offer } from "../../../core/refit/offer.ts";
import { refitKit } from "../../../core/refit/refit.ts";
import type { SeatMark, SeatTold } from "../../../output/parts/desk/seats.ts";
import { whyText } from "../../../words/findings/failure-why.ts";
import { offerFacts, offerText } from "../../../words/findings/offers.ts";
import { reasonText } from "../../../words/findings/reasons.ts";
import { teacherRemedy } from "../../../words/findings/teacher-remedy.ts";
import { hoursText } from "../../../words/hours.ts";
import * as say from "../../../words/messages.ts";
import type { GridRow } from "./seat-grid.ts";

/** How a row stands; `verdict` undefined while its seat is being judged. */
export function markOf({ wrong, seat }: GridRow, verdict: Verdict | undefined): SeatMark {
  if (Object.keys(wrong).length > 0) return "wrong";
  if (!seat) return "awaiting";
  return verdict?.kind ?? "working";
}

/** What is told of a seat. */
export function seatWords(row: GridRow, verdict: Verdict | undefined): SeatTold {
  const mark = markOf(row, verdict);
  return { title: titleOf(row), mark, ...told(row, mark, verdict) };
}

/** The changes that a verdict offers. */
export function offersOf(verdict: Verdict | undefined): readonly Offer[] {
  return verdict?.kind === "change" ? verdict.offers : [];
}

function titleOf({ number, seat }: GridRow): string {
  if (number === undefined) return say.deskClassSeatUnnumbered();
  return seat ? say.deskClassSeatKit({ seat: number, kit: seat.kit.title }) : say.deskClassSeat({ seat: number });
}

function told(row: GridRow, mark: SeatMark, verdict: Verdict | undefined): Pick<SeatTold, "lines" | "offers"> {
  if (mark === "wrong") return { lines: wrongLines(row), offers: [] };
  if (!row.seat || !verdict) return { lines: mark === "awaiting" ? [say.deskClassToldAwaiting()] : [], offers: [] };
  const telling = refitKit(row.seat.kit, row.seat.refit);
  const takes = (minutes: number): string => say.deskClassTakes({ hours: hoursText(minutes * row.seat!.pace) });
  switch (verdict.kind) {
    case "no":
      return {
        lines: [say.deskClassToldNo(), whyText(verdict.failure, telling), teacherRemedy(verdict.failure, telling)],
        offers: [],
      };
    case "change":
      return { lines: [say.deskClassToldChange()], offers: verdict.offers.map((offer) => offerWords(offer, telling)) };
    default:
      return {
        lines: [
          LEADS[verdict.kind](),
          ...verdict.reasons.map((reason) => reasonText(reason, telling)),
          takes(verdict.minutes),
        ],
        offers: [],
      };
  }
}

const LEADS = {
  fits: say.deskClassToldFits,
  check: say.deskClassToldCheck,
  poor: say.deskClassToldPoor,
} as const;

function offerWords(offer: Offer, { units }: Kit): SeatTold["offers"][number] {
  return { text: offerText(offer, units), facts: offerFacts(offer, units) };
}

function wrongLines({ wrong }: GridRow): string[] {
  return Object.entries(wrong).flatMap(([column, messages]) =>
    messages.map(({ given, allowed, remedy }) =>
      say.deskClassCell({ column: say.deskClassColumn({ column }), given, allowed, remedy }),
    ),
  );
}
