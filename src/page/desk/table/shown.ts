import type { Doubt } from "../../../core/findings/doubt.ts";
import type { CutKit } from "../../../core/kit/cut-kit.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import type { PicturePlace } from "../../../core/makeability/picture-place.ts";
import type { CornerPattern } from "../../../core/pattern/corner-pattern.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import type { Edit } from "../../../input/desk/edit.ts";
import type { FrontMatter } from "../../../input/kit/schema.ts";

/** A kit that can be made, as all things on the table show it. */
export interface Shown {
  readonly kit: CutKit;
  /** What its front matter states, by its schema: which keys are there. */
  readonly stated: FrontMatter;
  readonly pattern: Pattern;
  readonly findings: readonly Doubt[];
  /** Where the picture and its leaves' columns lie on the front. */
  readonly place: PicturePlace;
  /** Names of the motifs that any kit may set. */
  readonly shelf: readonly string[];
}

/** A kit whose corners are folded: it has neither a sheet of strips nor light and window. */
export interface CornerShown extends Pick<Shown, "stated" | "findings"> {
  readonly kit: Kit;
  readonly pattern: CornerPattern;
}

/** A kit that can be made, whichever way its leaves are made. */
export type AnyShown = Shown | CornerShown;

/** What a thing on the table may do. */
export interface Hands {
  /** Changes keys of the front matter. Changes of one name that follow each other are one for undo: a handle that is dragged. */
  readonly change: (edits: readonly Edit[], name?: string) => void;
  /** Ends what belongs together: the next change is one of its own. */
  readonly rest: () => void;
}
