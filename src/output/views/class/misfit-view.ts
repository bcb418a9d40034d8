import { type Misfit, onKit } from "../../../core/class/fit-seats.ts";
import type { KitClass } from "../../../core/class/kit-class.ts";
import { changeEntry, type SeatEntry, spareEntry } from "../../../core/class/seat-line.ts";
import { wayOfSeat } from "../../../core/class/seat-way.ts";
import { toAddress } from "../../../core/refit/address.ts";
import type { Offer } from "../../../core/refit/offer.ts";
import type { Refit } from "../../../core/refit/refit.ts";
import { whyText } from "../../../words/findings/failure-why.ts";
import { offerFacts, offerText } from "../../../words/findings/offers.ts";
import { readerRemedy } from "../../../words/findings/reader-remedy.ts";
import { teacherRemedy } from "../../../words/findings/teacher-remedy.ts";
import * as say from "../../../words/messages.ts";
import { otherKitText } from "../../../words/seats.ts";

/** Why a seat's book does not carry its kit, and what would help. */
export interface MisfitView {
  /** In whole sentences. */
  readonly why: string;
  readonly offers: readonly WayView[];
  readonly otherKits: readonly OtherKit[];
  /** Substitute books that carry the kit. */
  readonly spares: readonly WayView[];
  /** What the one who sits there can do, and what the teacher can change, each in a sentence. */
  readonly reader: string;
  readonly teacher: string;
}

/** A way out for a seat: a change, or a substitute book. */
export interface WayView {
  readonly words: string;
  readonly address: string;
  /** How well it comes out, how long it takes and what paper stays free, as on the kit's page; empty for a substitute book. */
  readonly facts: string;
  /** What the teacher enters; undefined where it asks for a book that nobody has measured yet. */
  readonly entry: SeatEntry | undefined;
}

/** Another kit of the class that the book carries. */
export interface OtherKit {
  readonly title: string;
  /** Its page for the seat's book, below the site. */
  readonly path: string;
  /** The change that makes it fit; undefined where it fits as it is. */
  readonly change: string | undefined;
  readonly facts: string;
  readonly entry: SeatEntry;
}

/** Told in the class's units, with hours at the seat's pace. */
export function misfitView(
  { seat, failure, offers, otherKits, spares }: Misfit,
  { units, pace }: Pick<KitClass, "units" | "pace">,
): MisfitView {
  const telling = { units, levels: seat.kit.levels };
  const factsOf = (offer: Offer): string => offerFacts({ ...offer, minutes: offer.minutes * seat.pace }, units);
  const carried = (refit: Refit): string => `?${toAddress(refit)}`;
  return {
    why: whyText(failure, telling),
    offers: offers.map((offer) => ({
      words: offerText(offer, units),
      address: carried(offer.refit),
      facts: factsOf(offer),
      entry: offer.otherBook ? undefined : changeEntry(seat, { kit: seat.kit.slug, refit: offer.refit }, pace),
    })),
    otherKits: otherKits.map(({ kit, offer }) => ({
      title: kit.title,
      path: `/kits/${kit.slug}/index.html${carried(offer?.refit ?? onKit(seat, kit).refit)}`,
      change: offer && offerText(offer, units),
      facts: offer ? factsOf(offer) : "",
      entry: changeEntry(seat, { kit: kit.slug, refit: offer?.refit ?? wayOfSeat(seat, kit) }, pace),
    })),
    spares: spares.map(({ label, book }) => ({
      words: say.seatSpare({ book: label }),
      address: carried({ ...book, ...wayOfSeat(seat, seat.kit) }),
      facts: "",
      entry: spareEntry(seat, book, pace),
    })),
    reader: readerRemedy(failure, telling),
    teacher: teacherRemedy(failure, telling),
  };
}

/** What would help a seat: in a sentence, with its facts, and what the teacher enters for it. */
export interface Help {
  readonly words: string;
  readonly facts: string;
  readonly entry: SeatEntry | undefined;
}

/** Ways that were tried; where there is none, what the failure itself tells a teacher. */
export function helpsOf({ offers, spares, otherKits, teacher }: MisfitView): Help[] {
  const others = otherKits.map((one) => ({ words: otherKitText(one), facts: one.facts, entry: one.entry }));
  const ways = [...offers, ...spares, ...others];
  return ways.length > 0 ? ways : [{ words: teacher, facts: "", entry: undefined }];
}
