import type { Misfit } from "../../../core/class/fit-seats.ts";
import { toAddress } from "../../../core/refit/address.ts";
import type { Refit } from "../../../core/refit/refit.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import { whyText } from "../../../words/findings/failure-why.ts";
import { offerText } from "../../../words/findings/offers.ts";
import { readerRemedy } from "../../../words/findings/reader-remedy.ts";
import { teacherRemedy } from "../../../words/findings/teacher-remedy.ts";
import * as say from "../../../words/messages.ts";
import { otherKitText } from "../../../words/seats.ts";

/** Why a seat's book does not carry its kit, and what would help. */
export interface MisfitView {
  /** In whole sentences. */
  readonly why: string;
  readonly offers: readonly { readonly words: string; readonly address: string }[];
  readonly otherKits: readonly OtherKit[];
  /** Substitute books that carry the kit. */
  readonly spares: readonly SpareView[];
  /** What the one who sits there can do, and what the teacher can change, each in a sentence. */
  readonly reader: string;
  readonly teacher: string;
}

/** A substitute book. */
export interface SpareView {
  readonly words: string;
  readonly address: string;
}

/** Another kit of the class that the book carries. */
export interface OtherKit {
  readonly title: string;
  /** Its page for the seat's book, below the site. */
  readonly path: string;
  /** The change that makes it fit; undefined where it fits as it is. */
  readonly change: string | undefined;
}

/** Told in the class's units. */
export function misfitView({ seat, failure, offers, otherKits, spares }: Misfit, units: UnitSystem): MisfitView {
  const telling = { units, levels: seat.kit.levels };
  const carried = (refit: Refit): string => `?${toAddress(refit)}`;
  return {
    why: whyText(failure, telling),
    offers: offers.map((offer) => ({ words: offerText(offer, units), address: carried(offer.refit) })),
    otherKits: otherKits.map(({ kit, offer }) => ({
      title: kit.title,
      path: `/kits/${kit.slug}/index.html${carried(offer?.refit ?? seat.book)}`,
      change: offer && offerText(offer, units),
    })),
    spares: spares.map(({ label, book }) => ({ words: say.seatSpare({ book: label }), address: carried(book) })),
    reader: readerRemedy(failure, telling),
    teacher: teacherRemedy(failure, telling),
  };
}

/** What would help, each in a sentence: ways that were tried; where there is none, what the failure itself tells a teacher. */
export function helpsOf({ offers, spares, otherKits, teacher }: MisfitView): string[] {
  const ways = [...[...offers, ...spares].map(({ words }) => words), ...otherKits.map(otherKitText)];
  return ways.length > 0 ? ways : [teacher];
}
