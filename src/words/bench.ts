import type { Calibration, ThicknessBounds } from "../core/bench/calibration.ts";
import type { Gate } from "../core/bench/gates.ts";
import type { Jump } from "../core/bench/jump.ts";
import type { LeafNumber } from "../core/book/leaf-number.ts";
import { type LeafName, numberLeaves } from "../core/book/numbering.ts";
import type { PatternBase } from "../core/pattern/pattern.ts";
import { toDegrees } from "../core/units/angle.ts";
import { MM_PER_INCH, stepFor, type UnitSystem } from "../core/units/length.ts";
import { formatLength } from "./lengths.ts";
import * as say from "./messages.ts";
import { fixed } from "./numbers.ts";

/** A leaf of the plan's book by its number: `p. 137 (leaf 80)`, `front leaf 3 of 4 (leaf 3)`. */
export function leafWords({ pattern }: { readonly pattern: Pick<PatternBase, "book"> }, leaf: LeafNumber): string {
  return say.benchLeaf(leafArguments(leaf, numberLeaves(pattern.book).nameOf(leaf)));
}

/** What a message that names a leaf is filled with. */
export function leafArguments(leaf: LeafNumber, name: LeafName) {
  const { index, of } = name.kind === "numbered" ? { index: 0, of: 0 } : name;
  const page = name.kind === "numbered" ? name.recto : name.kind === "plate" ? name.afterPage : 0;
  return { kind: name.kind, leaf, index, count: of, page };
}

/** Why a jump leads nowhere; empty where it does not. */
export function jumpAnswer(jump: Jump): string {
  if (!("obstacle" in jump)) return "";
  const why = obstacleWords(jump.obstacle);
  if (jump.page === undefined || jump.obstacle.kind === "no-page") return why;
  return `${say.benchJumpPageOnLeaf({ page: jump.page, leaf: jump.obstacle.leaf })} ${why}`;
}

function obstacleWords(obstacle: Extract<Jump, { obstacle: unknown }>["obstacle"]): string {
  switch (obstacle.kind) {
    case "no-page":
      return say.benchJumpNoPage(obstacle);
    case "no-leaf":
      return say.benchJumpNoLeaf(obstacle);
    case "left-out":
      return say.benchJumpLeftOut(obstacle);
    case "unfolded":
      return say.benchJumpUnfolded(obstacle);
  }
}

/** What the main button says to the question before a leaf. */
export function gateAnswer(kind: Gate["kind"]): string {
  if (kind === "batch") return say.benchBatchBegin();
  return kind === "check" ? say.benchCheckYes() : say.benchMeasureNow();
}

/** A hold width as a ruler is laid to it: whole millimetres, or sixteenths of an inch. */
export function holdWidthWords(mm: number, units: UnitSystem): string {
  return formatLength(mm, { units, step: stepFor(units, 1) });
}

/** What a measured batch says of the finished book: how bulky flaps are, where it rests, and whether the picture's opening can be held. */
export function calibrationWords(result: Calibration, units: UnitSystem): string {
  const degrees = (angle: number): number => Math.round(toDegrees(angle));
  return [
    say.benchFlapBulk({ bulk: fixed(result.flapBulk, 1) }),
    say.benchRests({
      rest: degrees(result.restingOpening),
      opening: degrees(result.opening),
      width: holdWidthWords(result.holdWidth, units),
    }),
    say.benchHoldWidthMeaning(),
    result.holds ? say.benchHolds() : say.benchPushes({ width: holdWidthWords(result.restingWidth, units) }),
  ].join(" ");
}

/** What a batch's thickness may be. */
export function thicknessAllowed({ leaves, least, most }: ThicknessBounds, units: UnitSystem): string {
  const size = (mm: number): string => formatLength(mm, { units, step: units === "mm" ? 0.1 : MM_PER_INCH / 32 });
  return say.benchMeasureThicknessAllowed({ least: size(least), most: size(most), count: leaves });
}

/** `3 min`, `1 h 05 min`; `about`: from an hour on to 5 minutes. */
export function timeWords(ms: number, round: "exact" | "about"): string {
  const exact = Math.round(ms / 60_000);
  const minutes = round === "about" && exact >= 60 ? Math.round(exact / 5) * 5 : exact;
  const hours = Math.floor(minutes / 60);
  return hours === 0
    ? say.benchMinutes({ minutes })
    : say.benchHoursMinutes({ hours, minutes: String(minutes % 60).padStart(2, "0") });
}
