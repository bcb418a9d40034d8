import type { Failure, Obstacle } from "../../core/findings/failure.ts";
import { BOUNDS, type Bounds } from "../../core/kit/bounds.ts";
import type { Level } from "../../core/kit/kit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { angleText } from "../angles.ts";
import { sayLength } from "../lengths.ts";
import type { Word } from "../message.ts";
import * as say from "../messages.ts";

/** How a finding is told: in which units, with the names of the kit's levels. */
export interface Telling {
  readonly units: UnitSystem;
  readonly levels: readonly Pick<Level, "name">[];
}

export type FailureKind = Failure["kind"];

type Of<K extends FailureKind> = Extract<Failure, { readonly kind: K }>;

/** Says each kind of failure from its figures. */
export type FailureMessages = {
  readonly [K in FailureKind]: (figures: ReturnType<(typeof FIGURES)[K]>) => string;
};

/** A failure in the words of a table of messages. */
export function sayFailure(messages: FailureMessages, failure: Failure, telling: Telling): string {
  return messages[failure.kind](figuresOf(failure, telling) as never);
}

/** The figures of a failure as its messages take them. */
export function figuresOf(failure: Failure, telling: Telling): Readonly<Record<string, Word>> {
  return FIGURES[failure.kind](failure as never, telling);
}

/** Figures of each kind as text. Bounds are rounded to their safe side. */
const FIGURES = {
  "pages-need-more-leaves": ({ lastPage, pageOneLeaf, leaves, needed }: Of<"pages-need-more-leaves">) => ({
    lastPage,
    pageOneLeaf,
    leaves,
    needed,
  }),
  "no-page": ({ pageOneLeaf, plates, leaves }: Of<"no-page">) => ({ pageOneLeaf, plates, leaves }),
  "plates-after-last-page": ({ afterPage, lastPage }: Of<"plates-after-last-page">) => ({ afterPage, lastPage }),
  "too-few-leaves": ({ before, picture, after, leaves, most }: Of<"too-few-leaves">) => ({
    before,
    picture,
    after,
    leaves,
    most,
    sum: before + picture + after,
    room: most < 2 ? "none" : "some",
  }),
  "levels-out-of-order": ({ level, depth, before }: Of<"levels-out-of-order">, { units, levels }: Telling) => ({
    level: levels[level - 1]!.name,
    depth: sayLength(depth, units, undefined, 2),
    ahead: levels[level - 2]!.name,
    before: sayLength(before, units, undefined, 2),
  }),
  "flap-in-gutter": (failure: Of<"flap-in-gutter">, { units, levels }: Telling) => ({
    level: levels[failure.level - 1]!.name,
    depth: sayLength(failure.depth, units, undefined, 2),
    reach: sayLength(failure.reach, units, undefined, 2),
    leafWidth: sayLength(failure.leafWidth, units, undefined, 2),
    clearance: sayLength(failure.clearance, units, undefined, 2),
    deepest: sayLength(failure.deepest, units, "floor"),
    room: roomFor(failure.deepest, BOUNDS.depth),
    style: failure.foldStyle,
  }),
  "needs-knife": ({ part }: Of<"needs-knife">) => ({ part }),
  "background-shown": ({ level }: Of<"background-shown">, { levels }: Telling) => ({ level: levels[level - 1]!.name }),
  "no-room-for-corners": (failure: Of<"no-room-for-corners">, { units }: Telling) => ({
    leafWidth: sayLength(failure.leafWidth, units, undefined, 2),
    clearance: sayLength(failure.clearance, units, undefined, 2),
    least: sayLength(failure.least, units),
  }),
  "nothing-to-show": ({ height, leastTab }: Of<"nothing-to-show">, { units }: Telling) => ({
    height: sayLength(height, units, undefined, 2),
    leastTab: sayLength(leastTab, units, undefined, 2),
  }),
  "opening-too-wide": ({ opening, widest }: Of<"opening-too-wide">) => ({
    opening: angleText(opening),
    widest: angleText(widest),
  }),
  "picture-off-leaf": (failure: Of<"picture-off-leaf">, { units }: Telling) => ({
    head: sayLength(failure.head, units, undefined, 2),
    height: sayLength(failure.height, units, undefined, 2),
    end: sayLength(failure.head + failure.height, units, undefined, 2),
    leafHeight: sayLength(failure.leafHeight, units, undefined, 2),
    room: sayLength(failure.room, units, "floor", 2),
    solved: failure.heightSolved ? "yes" : "no",
    place:
      failure.heightSolved && roomFor(failure.room, BOUNDS.pictureHeight) === "some"
        ? "solved"
        : roomFor(failure.room, BOUNDS.pictureHeight),
    stated: failure.headStated ? "yes" : "no",
  }),
  "picture-too-narrow": (failure: Of<"picture-too-narrow">, { units }: Telling) => ({
    height: sayLength(failure.height, units),
    width: sayLength(failure.width, units),
    leaves: failure.leaves,
    least: sayLength(failure.least, units),
    leastHeight: Number.isFinite(failure.leastHeight) ? heightBound(failure.leastHeight, units, "ceil") : "",
    room: roomFor(failure.leastHeight, BOUNDS.pictureHeight),
  }),
  "picture-too-wide": (failure: Of<"picture-too-wide">, { units }: Telling) => ({
    height: sayLength(failure.height, units),
    width: sayLength(failure.width, units),
    leaves: failure.leaves,
    widest: angleText(failure.widest),
    most: sayLength(failure.most, units),
    mostHeight: heightBound(failure.mostHeight, units, "floor"),
    enough: failure.enough ?? 0,
    help: helpBeside(failure.mostHeight, failure.enough === undefined ? "book" : "leaves"),
  }),
  "leaves-show-too-little": (failure: Of<"leaves-show-too-little">, { units }: Telling) => ({
    height: sayLength(failure.height, units),
    width: sayLength(failure.width, units),
    opening: angleText(failure.opening),
    leaves: failure.leaves,
    most: sayLength(failure.most, units),
    mostHeight: heightBound(failure.mostHeight, units, "floor"),
    openingNeeded: failure.openingNeeded === undefined ? "" : angleText(failure.openingNeeded, "ceil"),
    help: helpBeside(failure.mostHeight, failure.openingNeeded === undefined ? "book" : "opening"),
  }),
  "lost-leaf-outside": ({ leaf, first, last }: Of<"lost-leaf-outside">) => ({ leaf, first, last }),
  "too-few-remain": ({ lost, leaves }: Of<"too-few-remain">) => ({ lost, leaves }),
  "picture-flat": ({ height, leastTab }: Of<"picture-flat">, { units }: Telling) => ({
    height: sayLength(height, units, undefined, 2),
    leastTab: sayLength(leastTab, units, undefined, 2),
  }),
  "no-room-for-light": (failure: Of<"no-room-for-light">, telling: Telling) => ({
    level: telling.levels[failure.level - 1]!.name,
    diameter: sayLength(failure.diameter, telling.units),
    height: sayLength(failure.height, telling.units),
    clearance: sayLength(failure.clearance, telling.units),
    obstacle: obstacleText(failure.obstacle, failure, telling),
    mostDiameter: sayLength(failure.largest.diameter, telling.units, "floor"),
    mostHeight: sayLength(failure.largest.height, telling.units, "floor"),
    choice: lightChoice(failure.largest),
  }),
  "light-near-window": (failure: Of<"light-near-window">, { units }: Telling) => ({
    free: sayLength(failure.free, units),
    clearance: sayLength(failure.clearance, units),
    more: sayLength(failure.more, units, "ceil"),
    room: roomFor(failure.more, { ...BOUNDS.lightSetback, least: 0 }),
    panel: failure.panel,
  }),
  "outline-hidden": ({ level }: Of<"outline-hidden">, { levels }: Telling) => ({ level: levels[level - 1]!.name }),
  "hole-breaks": (failure: Of<"hole-breaks">, { units, levels }: Telling) => ({
    level: levels[failure.level - 1]!.name,
    lip: sayLength(failure.lip, units, undefined, 2),
    most: sayLength(Math.max(0, failure.most), units, "floor"),
    least: sayLength(failure.least, units, "ceil"),
    fate: failure.closes ? "closes" : "breaks",
    holds: failure.most >= failure.least ? "yes" : "no",
  }),
  "no-hinge": (failure: Of<"no-hinge">, { units, levels }: Telling) => ({
    level: levels[failure.level - 1]!.name,
    side: failure.side,
    shortest: sayLength(failure.shortest, units),
    bulge: sayLength(failure.bulge, units, "floor"),
  }),
  "glazing-too-small": (failure: Of<"glazing-too-small">, { units }: Telling) => ({
    lip: sayLength(failure.lip, units, undefined, 2),
    overlap: sayLength(failure.overlap, units),
  }),
} satisfies { readonly [K in FailureKind]: (failure: Of<K>, telling: Telling) => Readonly<Record<string, Word>> };

function obstacleText(obstacle: Obstacle, light: Of<"no-room-for-light">, { units, levels }: Telling): string {
  const level = levels[light.level - 1]!.name;
  switch (obstacle.kind) {
    case "nowhere-wide":
      return say.obstacleNowhereWide({
        level,
        need: sayLength(obstacle.need, units),
        height: sayLength(light.height, units),
      });
    case "level-absent":
      return say.obstacleLevelAbsent({ level, floor: sayLength(obstacle.floor, units) });
    case "above-head":
      return say.obstacleAboveHead({ by: sayLength(obstacle.by, units) });
    case "little-paper":
      return say.obstacleLittlePaper({
        leaf: obstacle.leaf,
        remaining: sayLength(obstacle.remaining, units),
        least: sayLength(obstacle.least, units, "ceil"),
      });
  }
}

function lightChoice({ diameter, height }: Of<"no-room-for-light">["largest"]): string {
  const tall = height >= BOUNDS.lightHeight.least;
  if (diameter >= BOUNDS.lightDiameter.least) return tall ? "both" : "width";
  return tall ? "height" : "none";
}

/** Whether a figure that is advised can be stated at all. */
function roomFor(figure: number, { least, most }: Pick<Bounds<"length">, "least" | "most">): "some" | "none" {
  return figure >= least && figure <= most ? "some" : "none";
}

/** What helps beside a lower height, or alone where no height can be stated that is low enough. */
function helpBeside(mostHeight: number, help: "leaves" | "book" | "opening"): string {
  return roomFor(mostHeight, BOUNDS.pictureHeight) === "some" ? help : `${help}-only`;
}

/** Heights in millimetres are named in halves; inches are rounded where they are written. */
function heightBound(mm: number, units: UnitSystem, bound: "floor" | "ceil"): string {
  return sayLength(units === "mm" ? Math[bound](mm * 2) / 2 : mm, units, bound);
}
