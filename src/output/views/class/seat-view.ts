import type { FittingSeat, Misfit } from "../../../core/class/fit-seats.ts";
import type { AwaitingSeat, KitClass, Seat } from "../../../core/class/kit-class.ts";
import type { SeatSchedule } from "../../../core/class/schedule.ts";
import { awaitsNoKnife, isKnifeFree } from "../../../core/class/seat-way.ts";
import { patternedAs } from "../../../core/pattern/patterned-kit.ts";
import type { Caution } from "../../../core/plan/caution.ts";
import { toAddress } from "../../../core/refit/address.ts";
import { bookText } from "../../../words/books.ts";
import { doubtText } from "../../../words/findings/doubts.ts";
import { hoursText } from "../../../words/hours.ts";
import { formatByHand } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { seatCode } from "../../drawing/class/seat-code.ts";
import type { Figure } from "../../drawing/figure.ts";
import { type AnyPrintedKit, printedKit, viewAnyKit } from "../any-kit-view.ts";
import { type MisfitView, misfitView } from "./misfit-view.ts";
import { seatKitView } from "./seat-kit-view.ts";

/** A seat as its pages show it. */
export interface SeatView {
  readonly key: string;
  readonly number: number;
  /** Whether its book is still to come: then book and address are empty. */
  readonly awaits: boolean;
  /** Whether its leaves are folded by corners, without a knife. */
  readonly knifeFree: boolean;
  /** Both empty where the kit is not settled yet. */
  readonly kitSlug: string;
  readonly kitTitle: string;
  readonly book: string;
  /** `?height=…`: the book for the kit's page, bench and packet page. */
  readonly address: string;
  /** Path below the site: `/classes/x/seat-3/`. */
  readonly path: string;
  /** The seat's whole address where the site's is known, and the code for it. */
  readonly url: string | undefined;
  readonly code: Figure | undefined;
  /** The kit on this book; undefined where it does not fit. */
  readonly view: AnyPrintedKit | undefined;
  /** The same as the class arranges it: with what is ready, at the seat's pace; what its packet is filled from. */
  readonly inClass: AnyPrintedKit | undefined;
  readonly misfit: MisfitView | undefined;
  /** What may disappoint, in sentences. */
  readonly doubts: readonly string[];
  /** Hours at the seat's pace, with what the teacher has ready. */
  readonly hours: string;
  readonly holdWidth: string;
}

interface Setting {
  readonly plan: KitClass;
  readonly siteUrl: string | undefined;
  readonly cautions: readonly Caution[];
}

type OfFit = "view" | "inClass" | "misfit" | "doubts" | "hours" | "holdWidth";

export function fittingSeatView(fit: FittingSeat, schedule: SeatSchedule, setting: Setting): SeatView {
  const { seat, kit, pattern, findings } = fit;
  const { units } = setting.plan;
  return {
    ...seatBasics(seat, setting),
    view: printedKit(viewAnyKit(patternedAs(kit, pattern, findings), setting.cautions)),
    inClass: seatKitView(fit, setting.plan, setting.cautions),
    misfit: undefined,
    doubts: findings.map((doubt) => doubtText(doubt, { units, levels: kit.levels })),
    hours: hoursText(schedule.minutes),
    holdWidth: formatByHand(pattern.fit.holdWidth, units),
  };
}

export function misfitSeatView(misfit: Misfit, setting: Setting): SeatView {
  return {
    ...seatBasics(misfit.seat, setting),
    view: undefined,
    inClass: undefined,
    misfit: misfitView(misfit, setting.plan),
    doubts: [],
    hours: "",
    holdWidth: "",
  };
}

export function awaitingSeatView(seat: AwaitingSeat, setting: Setting): SeatView {
  const { number, kit } = seat;
  return {
    ...placeOf(number, setting),
    knifeFree: awaitsNoKnife(seat),
    ...{ awaits: true, kitSlug: kit?.slug ?? "", kitTitle: kit?.title ?? "", book: "", address: "" },
    ...{ view: undefined, inClass: undefined, misfit: undefined, doubts: [], hours: "", holdWidth: "" },
  };
}

function seatBasics(seat: Seat, setting: Setting): Omit<SeatView, OfFit> {
  return {
    ...placeOf(seat.number, setting),
    awaits: false,
    knifeFree: isKnifeFree(seat),
    kitSlug: seat.kit.slug,
    kitTitle: seat.kit.title,
    book: bookText(seat.book, setting.plan.units),
    address: `?${toAddress(seat.refit)}`,
  };
}

function placeOf(
  number: number,
  { plan, siteUrl }: Setting,
): Pick<SeatView, "key" | "number" | "path" | "url" | "code"> {
  const path = `/classes/${plan.slug}/seat-${number}/`;
  const url = siteUrl === undefined ? undefined : `${siteUrl.replace(/\/$/, "")}${path}`;
  return {
    key: `${plan.slug}/${number}`,
    number,
    path,
    url,
    code: url === undefined ? undefined : seatCode(url, say.seatCode({ seat: number, url })),
  };
}
