import type { FittingSeat, Misfit } from "../../../core/class/fit-seats.ts";
import type { KitClass, Seat } from "../../../core/class/kit-class.ts";
import type { SeatSchedule } from "../../../core/class/schedule.ts";
import { toAddress } from "../../../core/refit/address.ts";
import type { Refit } from "../../../core/refit/refit.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import { formatDepth, formatSize } from "../../../words/lengths.ts";
import { seatCode } from "../../drawing/class/seat-code.ts";
import type { Figure } from "../../drawing/figure.ts";
import type { Caution } from "../cautions.ts";
import { hoursText } from "../figures.ts";
import { viewKit } from "../kit-view.ts";
import { type PrintedKit, withPacket } from "../packet-view.ts";

/** A seat as its pages show it. */
export interface SeatView {
  readonly key: string;
  readonly number: number;
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
  readonly view: PrintedKit | undefined;
  readonly misfit: MisfitView | undefined;
  /** Hours at the seat's pace, with what the teacher has ready. */
  readonly hours: string;
  readonly holdWidth: string;
}

export interface MisfitView {
  readonly why: string;
  readonly todo: string;
  readonly offers: readonly { readonly words: string; readonly address: string }[];
  readonly otherKits: readonly { readonly title: string; readonly path: string; readonly words: string }[];
}

interface Setting {
  readonly plan: KitClass;
  readonly siteUrl: string | undefined;
  readonly cautions: readonly Caution[];
}

export function fittingSeatView(fit: FittingSeat, schedule: SeatSchedule, setting: Setting): SeatView {
  const { seat, kit, pattern } = fit;
  const view = withPacket(viewKit({ kit, pattern, body: "", pictureNotes: [] }, setting.cautions));
  return {
    ...seatBasics(seat, setting),
    view,
    misfit: undefined,
    hours: hoursText(schedule.minutes),
    holdWidth: formatSize(pattern.fit.edgeWidth, setting.plan.units),
  };
}

export function misfitSeatView(misfit: Misfit, setting: Setting): SeatView {
  const { seat, problem } = misfit;
  const carried = (refit: Refit): string => `?${toAddress(refit)}`;
  return {
    ...seatBasics(seat, setting),
    view: undefined,
    hours: "",
    holdWidth: "",
    misfit: {
      why: sentence(`${problem.given}; ${problem.allowed}`),
      todo: problem.remedy,
      offers: misfit.offers.map((offer) => ({ words: offer.words, address: carried(offer.refit) })),
      otherKits: misfit.otherKits.map(({ kit, offer }) => ({
        title: kit.title,
        path: `/kits/${kit.slug}/index.html${carried(offer?.refit ?? seat.book)}`,
        words: offer === undefined ? "fits as it is" : `fits if you ${offer.words}`,
      })),
    },
  };
}

function seatBasics(seat: Seat, { plan, siteUrl }: Setting): Omit<SeatView, "view" | "misfit" | "hours" | "holdWidth"> {
  const path = `/classes/${plan.slug}/seat-${seat.number}/`;
  const url = siteUrl === undefined ? undefined : `${siteUrl.replace(/\/$/, "")}${path}`;
  return {
    key: `${plan.slug}/${seat.number}`,
    number: seat.number,
    kitSlug: seat.kit.slug,
    kitTitle: seat.kit.title,
    book: bookText(seat.book, plan.units),
    address: `?${toAddress(seat.refit)}`,
    path,
    url,
    code: url === undefined ? undefined : seatCode(url, `Code for seat ${seat.number}: ${url}`),
  };
}

/** With a capital, as a sentence begins. */
function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** `178 × 110 mm, 96 leaves, 9.5 mm thick, pages 1 to 186`, and what is unusual. */
export function bookText(book: Refit, units: UnitSystem): string {
  const plates = (book.plates ?? []).reduce((sum, plate) => sum + plate.leaves, 0);
  return [
    `${formatDepth(book.leafHeight!, units)} × ${formatSize(book.leafWidth!, units)}`,
    `${book.leaves} leaves`,
    `${formatSize(book.blockThickness!, units)} thick`,
    ...(book.direction === "rtl" ? ["reads right to left"] : []),
    ...(plates > 0 ? [`${plates} plates`] : []),
  ].join(", ");
}
