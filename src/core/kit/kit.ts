import type { Book } from "../book/book.ts";
import type { LeafNumber } from "../book/leaf-number.ts";
import type { Viewpoint } from "../fan/front.ts";
import type { Shape } from "../fit/shape.ts";
import type { LightWish } from "../light/light.ts";
import type { LevelMap } from "../picture/level-map.ts";
import type { FoldStyle } from "../spans/fold-style.ts";
import type { UnitSystem } from "../units/length.ts";
import type { MotifWish } from "../window/motif.ts";
import type { WindowWish } from "../window/window.ts";
import type { CornerWish } from "./corner-wish.ts";
import type { Priced, SupplyId, SupplyUnit } from "./supply-id.ts";

/** A depth of the picture. Kits list levels front to back; level 1 is the first. */
export interface Level {
  readonly name: string;
  /** mm from the fore-edge. */
  readonly depth: number;
  /** Gauge line number (1-based) that the kit named, or that stands at this depth. */
  readonly line: number | undefined;
  readonly background: boolean;
}

/** What the kit asks of the fit. Lengths mm, opening radians. */
export interface FitWish {
  readonly borderLeaves: readonly [number, number];
  readonly shape: Shape;
  /** Head edge to the picture's top; undefined centres the picture on the leaf. */
  readonly head: number | undefined;
  readonly view: Viewpoint;
  readonly spine: "flat" | "rounded";
  readonly markStep: number;
  readonly leastTab: number;
  readonly foldStyle: FoldStyle;
  /** How leaves are folded where the style is by corners. */
  readonly corner: CornerWish;
  /** What leaves are cut with. */
  readonly cutWith: "knife" | "scissors";
  /** What holds a loose flap: a pin-head of wet glue, or a glue dot. */
  readonly tackWith: "glue" | "dots";
  /** Paper to leave between the end of a flap and the gutter. */
  readonly gutterClearance: number;
  /** Leaf thicknesses that a springy flap counts, κ. */
  readonly flapBulk: number;
  /** Most leaves worked before a pause. */
  readonly batch: number;
  /** Leaves that were skipped or torn; the picture closes over the ones after. */
  readonly lostLeaves: readonly LeafNumber[];
}

/** Seconds of work for one of each, for a practised hand; estimates of the kit's author. */
export interface Rates {
  readonly leaf: number;
  readonly score: number;
  readonly mark: number;
  readonly cut: number;
  readonly fold: number;
  readonly check: number;
  readonly tack: number;
  readonly notch: number;
  readonly part: number;
  /** How many times as long a first piece takes. */
  readonly first: number;
}

/** Minutes that glued things lie still. */
export interface Drying {
  readonly glue: number;
  /** The base frame on the book. */
  readonly frame: number;
}

/** A sheet that parts are laid on, upright, mm. */
export interface SheetSize {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/** A supply that the author states; `id` and `unitId` where it is one that the program counts, too. */
export interface OwnSupply {
  readonly id: SupplyId | undefined;
  readonly item: string;
  readonly quantity: number;
  readonly unit: string;
  readonly unitId: SupplyUnit | undefined;
  readonly price: number | undefined;
}

/** Whose picture it is, shown with the kit. */
export interface Credit {
  readonly work: string;
  readonly licence: string;
  readonly source: string;
  readonly url: string | undefined;
}

/** A version that was published; the day is an ISO date, `2026-10-03`. */
export interface Version {
  readonly version: string;
  readonly date: string;
  /** What changed. */
  readonly note: string | undefined;
}

/** What others may do with the kit. */
export interface Licence {
  readonly name: string;
  readonly url: string | undefined;
}

/** A link of the author's own. */
export interface Link {
  readonly label: string;
  readonly url: string;
  /** Where the address leads, with its port where it states one. */
  readonly host: string;
}

/** A kit as its author states it, every length in mm, every default filled in. */
export interface Kit {
  readonly slug: string;
  readonly title: string;
  readonly summary: string;
  readonly units: UnitSystem;
  /** Newest first. */
  readonly versions: readonly Version[];
  readonly licence: Licence | undefined;
  readonly links: readonly Link[];
  readonly credit: Credit | undefined;
  readonly levels: readonly Level[];
  readonly gaugeLines: readonly number[];
  /** Thickness of one of the maker's own packing tiles, mm. */
  readonly gaugeTile: number | undefined;
  readonly book: Book;
  readonly fit: FitWish;
  readonly light: LightWish | undefined;
  /** Which cells the light takes, in the author's words. */
  readonly cells: string | undefined;
  readonly insert: WindowWish | undefined;
  readonly sheets: readonly SheetSize[];
  /** Silhouettes that are set on the window. */
  readonly motifs: readonly MotifWish[];
  /** Share added to lengths. */
  readonly waste: number;
  readonly prices: Readonly<Partial<Record<Priced, number>>>;
  readonly currency: string;
  readonly rates: Rates;
  readonly drying: Drying;
  readonly supplies: readonly OwnSupply[];
  readonly picture: LevelMap;
  readonly photos: readonly Photo[];
}

/** A photo of the piece; `file` is a path inside the kit folder. */
export interface Photo {
  readonly file: string;
  readonly alt: string;
}

/** Index of the first level that does not lie deeper than the one before it; −1 where all do. */
export function misplacedLevel(levels: readonly Pick<Level, "depth">[]): number {
  return levels.findIndex(({ depth }, i) => i > 0 && depth <= levels[i - 1]!.depth);
}

/** Number (1-based) of the background level. */
export function backgroundLevel(levels: readonly Level[]): number {
  return levels.findIndex((level) => level.background) + 1;
}
