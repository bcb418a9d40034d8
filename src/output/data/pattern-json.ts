import type { LeafPoint } from "../../core/corner/crease.ts";
import { creasesOf } from "../../core/corner/leaf-fold.ts";
import type { Doubt } from "../../core/findings/doubt.ts";
import type { Kit, Level } from "../../core/kit/kit.ts";
import type { Pocket } from "../../core/light/light.ts";
import type { CornerFacts, CornerLeaf, CornerPattern } from "../../core/pattern/corner-pattern.ts";
import type { Pattern, PatternBase, PatternLeaf, PatternLeafBase } from "../../core/pattern/pattern.ts";
import { countsOf, type Effort } from "../../core/plan/effort.ts";
import { dryingOf, workOf } from "../../core/steps/work.ts";
import type { Supply } from "../../core/supplies/supply.ts";
import { tidy, type UnitSystem } from "../../core/units/length.ts";
import { doubtText } from "../../words/findings/doubts.ts";
import { supplyName, supplyNote, supplyUnit } from "../../words/supplies.ts";
import { jsonLines } from "./json-lines.ts";
import { windowJson } from "./window-json.ts";

/**
 * The published pattern (`leaflight/pattern/2`): mm and radians; marks exact to 1e-5 mm, derived lengths to 0.001 mm,
 * angles to 1e-6. A line a leaf, so that a diff reads. Keys and tokens are fixed; sentences are in the site's language.
 */
export function patternJson(
  kit: Kit,
  pattern: Pattern,
  findings: readonly Doubt[],
  supplies: readonly Supply[],
  effort: Effort,
): string {
  const { pocket, window } = pattern;
  const drying = dryingOf(workOf(kit, pattern, countsOf(pattern)));
  return recordJson(
    kit,
    pattern,
    { findings, supplies, effort, drying },
    {
      leaves: pattern.leaves.map(leafJson),
      absorbed: pattern.merged,
      ...(pocket ? { light: lightJson(pocket) } : {}),
      ...(window ? { insert: windowJson(window) } : {}),
    },
  );
}

/**
 * The same of a kit that is folded by corners: `spans` hold the one strip that a leaf shows, `creases` what is folded; nothing
 * is cut and nothing dries.
 */
export function cornerJson(
  kit: Kit,
  pattern: CornerPattern,
  findings: readonly Doubt[],
  supplies: readonly Supply[],
  effort: Effort,
): string {
  return recordJson(
    kit,
    pattern,
    { findings, supplies, effort, drying: 0 },
    {
      corner: cornerFactsJson(pattern.corner),
      leaves: pattern.leaves.map(cornerLeafJson),
      absorbed: pattern.merged,
    },
  );
}

/** What is told of a kit beside its pattern; `drying` in minutes. */
interface Told {
  readonly findings: readonly Doubt[];
  readonly supplies: readonly Supply[];
  readonly effort: Effort;
  readonly drying: number;
}

/** A published pattern; `own` is what the way of folding decides. */
function recordJson(kit: Kit, pattern: PatternBase, told: Told, own: Readonly<Record<string, unknown>>): string {
  const { findings, supplies } = told;
  return jsonLines({
    schema: "leaflight/pattern/2",
    kit: kit.slug,
    title: kit.title,
    ...(kit.versions[0] ? { version: kit.versions[0].version } : {}),
    unit: "mm",
    book: { ...pattern.book },
    levels: pattern.levels.map(levelJson),
    fit: fitJson(pattern.fit),
    ...own,
    lostLeaves: pattern.lostLeaves,
    supplies: supplies.map((supply) => supplyJson(supply, kit.units)),
    time: timeJson(kit, told),
    findings: findings.map(findingJson),
    warnings: findings.map((doubt) => doubtText(doubt, kit)),
  });
}

function timeJson(kit: Kit, { effort: { minutes, byStage }, drying }: Told): Record<string, unknown> {
  return {
    minutes: Math.round(minutes),
    first: Math.round(minutes * kit.rates.first),
    drying,
    byStage: Object.fromEntries(Object.entries(byStage).map(([stage, spent]) => [stage, tidy(spent, 1)])),
  };
}

function levelJson({ name, depth, line, background }: Level): Record<string, unknown> {
  return { name, depth: tidy(depth), ...(line ? { line } : {}), ...(background ? { background } : {}) };
}

function fitJson(fit: PatternBase["fit"]): Record<string, unknown> {
  return {
    firstLeaf: fit.firstLeaf,
    lastLeaf: fit.lastLeaf,
    opening: tidy(fit.opening, 6),
    spine: fit.spine,
    view: fit.view,
    head: tidy(fit.head),
    height: tidy(fit.height, 3),
    width: tidy(fit.width, 3),
    stretch: tidy(fit.stretch, 6),
    tipWidth: tidy(fit.tipWidth, 3),
    holdWidth: tidy(fit.holdWidth, 3),
    boardWidth: tidy(fit.boardWidth, 3),
    restingOpening: tidy(fit.restingOpening, 6),
    foldStyle: fit.foldStyle,
    markStep: tidy(fit.markStep),
    leastTab: tidy(fit.leastTab),
  };
}

function leafNameJson({ leaf, patternPage, bookPage, name }: PatternLeafBase): Record<string, unknown> {
  return { leaf, patternPage, bookPage, ...(name.kind === "numbered" ? {} : { unnumbered: name }) };
}

function cornerFactsJson({ levels, leftOut, empty, emptyDepth, turns, turned }: CornerFacts): Record<string, unknown> {
  const depth = emptyDepth === undefined ? {} : { emptyDepth: tidy(emptyDepth) };
  return { levels, leftOut, empty, ...depth, turns: { ...turns }, turned };
}

function cornerLeafJson(leaf: CornerLeaf): Record<string, unknown> {
  const { fold } = leaf;
  const point = ({ at, depth }: LeafPoint): LeafPoint => ({ at: tidy(at), depth: tidy(depth) });
  return {
    ...leafNameJson(leaf),
    x: [tidy(leaf.x, 3)],
    spans: fold.kind === "corners" ? [{ from: tidy(fold.shown.from), to: tidy(fold.shown.to), level: 1 }] : [],
    ...(fold.kind === "corners" && fold.turn ? { turn: { ...fold.turn } } : {}),
    ...(fold.kind === "straight" ? { straight: tidy(fold.depth) } : {}),
    creases: creasesOf(fold).map(({ corner, from, to }) => ({ corner, from: point(from), to: point(to) })),
    cuts: [],
    tacks: [],
  };
}

function leafJson(leaf: PatternLeaf): Record<string, unknown> {
  return {
    ...leafNameJson(leaf),
    x: leaf.x.map((x) => tidy(x, 3)),
    spans: leaf.spans.map((span) => ({ from: tidy(span.from), to: tidy(span.to), level: span.level })),
    cuts: leaf.cuts.map((cut) => ({ at: tidy(cut.at), depth: tidy(cut.depth) })),
    tacks: leaf.tacks.map((tack) => ({ from: tidy(tack.from), to: tidy(tack.to) })),
  };
}

function lightJson(pocket: Pocket): Record<string, unknown> {
  const { light, centre } = pocket;
  return {
    in: light.level,
    diameter: tidy(light.diameter),
    height: tidy(light.height),
    clearance: tidy(light.clearance),
    setback: tidy(light.setback),
    floor: tidy(pocket.floor),
    centre: { x: tidy(centre.x, 3), z: tidy(centre.z, 3) },
    largest: pocket.largest,
    notches: pocket.notches,
  };
}

function supplyJson(supply: Supply, units: UnitSystem): Record<string, unknown> {
  const { kind, id, quantity, price } = supply;
  return {
    kind,
    ...(id === undefined ? {} : { id }),
    item: supplyName(supply),
    quantity,
    unit: supplyUnit(supply),
    note: supplyNote(supply, units),
    ...(price === undefined ? {} : { price }),
  };
}

/** A finding's kind and figures: lengths mm, angles radians. */
function findingJson(doubt: Doubt): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(doubt).map(([key, value]) => [key, typeof value === "number" ? tidy(value) : value]),
  );
}
