import type { KitOutline } from "../../core/finder/outline.ts";
import type { AnyPatternedKit } from "../../core/pattern/patterned-kit.ts";
import type { Quality } from "../../core/refit/quality.ts";
import type { Story } from "../../core/story/story.ts";
import type { KitMessage } from "../../input/files/message.ts";
import type { Strays } from "../../input/files/strays.ts";
import type { KitCard } from "../../output/views/kit-card.ts";
import type { SitePhoto } from "./site-photos.ts";

/** How a kit comes out on its own book; `troubles` are what of its picture is to be looked at first, in sentences that are no warnings. */
export interface KitOutcome {
  readonly quality: Quality;
  readonly troubles: readonly string[];
}

/** What the site knows of a kit beside the kit's own pages: little enough to hold of a thousand kits at once. */
export interface KitEntry {
  readonly slug: string;
  /** Names all that the kit is read and computed from. */
  readonly key: string;
  readonly card: KitCard;
  readonly outline: KitOutline;
  readonly outcome: KitOutcome;
  /** What may disappoint, and what does not count, in sentences for the author. */
  readonly warnings: readonly string[];
  readonly notes: readonly string[];
  /** Texts of the kit that may disappoint, in sentences with their places. */
  readonly letters: readonly string[];
  readonly photos: readonly SitePhoto[];
  readonly story: Story;
  readonly strays: readonly Strays[];
}

/** A kit that was read and computed, or the messages about what is wrong with it. Plain data, for threads and stores. */
export interface KitReading {
  /** With the kit itself; undefined where it cannot be read or computed. */
  readonly read: { readonly entry: KitEntry; readonly kit: AnyPatternedKit } | undefined;
  /** Why it cannot be read or computed. */
  readonly broken: readonly KitMessage[];
  /** Letters that its packets could not print, and photos that cannot be published. */
  readonly letters: readonly KitMessage[];
  readonly photos: readonly KitMessage[];
}

/** What of a reading the rest of the site needs. */
export interface KitNews extends Omit<KitReading, "read"> {
  readonly entry: KitEntry | undefined;
  /** Not read yet: nothing is known of it. */
  readonly isWaiting?: true;
}

/** Reads kits' folders, each in their order; one that cannot be read stops none of the others. */
export type ReadKits = (folders: readonly string[]) => Promise<readonly KitNews[]>;
