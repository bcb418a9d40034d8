import type { Point } from "../../core/geometry/point.ts";
import { thinOut } from "../../core/geometry/simplify.ts";
import type { Card } from "../../core/window/card.ts";
import type { PartKind } from "../../core/window/part.ts";

/** The part of a published pattern (pattern.json) that the turning view is made from: same keys, same meanings. */
export interface RoundData {
  readonly kit: string;
  readonly title: string;
  readonly book: {
    readonly leafHeight: number;
    readonly leafWidth: number;
    readonly blockThickness: number;
    readonly leaves: number;
    readonly direction: "ltr" | "rtl";
    readonly square: number;
    readonly boardThickness: number;
  };
  readonly levels: readonly RoundLevel[];
  readonly fit: {
    readonly firstLeaf: number;
    readonly lastLeaf: number;
    readonly opening: number;
    readonly spine: "flat" | "rounded";
    readonly view: "front" | "along";
    readonly stretch: number;
    readonly restingOpening: number;
  };
  readonly leaves: readonly RoundLeaf[];
  readonly light?: RoundLight;
  readonly insert?: RoundInsert;
  readonly lostLeaves: readonly number[];
}

export interface RoundLeaf {
  readonly leaf: number;
  readonly spans: readonly RoundSpan[];
  /** Where its corners are folded; then it has no spans. */
  readonly corners?: RoundCorners;
}

/** Marks of the upper and the lower crease, mm from the head, and how deep each ends at its edge, mm from the fore-edge; 0 where there is none. */
export type RoundCorners = readonly [from: number, to: number, head: number, tail: number];

/** A published pattern as the view reads it, whichever way its leaves are made. */
export interface PublishedRound extends Omit<RoundData, "leaves" | "levels"> {
  readonly levels: readonly (RoundLevel & { readonly background?: boolean })[];
  /** There where corners are folded. */
  readonly corner?: object;
  readonly leaves: readonly PublishedLeaf[];
}

interface PublishedLeaf extends RoundLeaf {
  readonly straight?: number;
  readonly creases?: readonly PublishedCrease[];
}

interface PublishedCrease {
  readonly corner: "head" | "tail";
  readonly from: { readonly at: number };
  readonly to: { readonly depth: number };
}

export interface RoundLevel {
  readonly name: string;
  readonly depth: number;
}

export interface RoundSpan {
  readonly from: number;
  readonly to: number;
  readonly level: number;
}

export interface RoundLight {
  readonly diameter: number;
  readonly height: number;
  readonly floor: number;
  readonly centre: { readonly x: number; readonly z: number };
  readonly notches: readonly {
    readonly leaf: number;
    readonly from: number;
    readonly to: number;
    readonly depth: number;
  }[];
}

export interface RoundInsert {
  readonly hinge: "left" | "right";
  readonly panel: "wrap" | "flat";
  readonly parts: readonly RoundPart[];
}

export interface RoundPart {
  readonly kind: PartKind;
  readonly outlines: readonly (readonly Point[])[];
  readonly scores: readonly (readonly Point[])[];
  /** Colour of its card, where the kit states it. */
  readonly card?: Card;
  /** Of a motif: the upper left corner of its box in the frame of the parts on the book, and the spacers below it. */
  readonly seat?: Point;
  readonly spacers?: number;
}

/** Parts of the window that the view shows in place. */
const SHOWN_PARTS: readonly PartKind[] = ["base-frame", "glazing", "door", "largest-motif", "motif"];

/** How far the view's outlines may run beside those that are cut, mm: less than is seen. */
const ROUGH = 0.03;

/** Takes from a published pattern what the view needs. */
export function roundData(published: PublishedRound): RoundData {
  const { kit, title, book, fit, light, insert, lostLeaves } = published;
  return {
    kit,
    title,
    book: {
      leafHeight: book.leafHeight,
      leafWidth: book.leafWidth,
      blockThickness: book.blockThickness,
      leaves: book.leaves,
      direction: book.direction,
      square: book.square,
      boardThickness: book.boardThickness,
    },
    levels: published.corner ? foldedLevels(published) : published.levels.map(levelOf),
    fit: {
      firstLeaf: fit.firstLeaf,
      lastLeaf: fit.lastLeaf,
      opening: fit.opening,
      spine: fit.spine,
      view: fit.view,
      stretch: fit.stretch,
      restingOpening: fit.restingOpening,
    },
    leaves: published.leaves.map((leaf) => (published.corner ? foldedLeaf(leaf, book.leafHeight) : cutLeaf(leaf))),
    ...(light ? { light: lightOf(light) } : {}),
    ...(insert ? { insert: insertOf(insert) } : {}),
    lostLeaves: [...lostLeaves],
  };
}

function levelOf({ name, depth }: RoundLevel): RoundLevel {
  return { name, depth };
}

function cutLeaf({ leaf, spans }: PublishedLeaf): RoundLeaf {
  return { leaf, spans: spans.map(({ from, to, level }) => ({ from, to, level })) };
}

/** Where corners are folded, the picture is at the fore-edge; all else is the background, as deep as leaves are folded straight. */
function foldedLevels({ levels, leaves }: PublishedRound): RoundLevel[] {
  const background = levels.find((level) => level.background) ?? levels.at(-1)!;
  const straight = leaves.find((leaf) => leaf.straight !== undefined)?.straight;
  return [
    { name: levels[0]!.name, depth: 0 },
    { name: background.name, depth: straight ?? background.depth },
  ];
}

function foldedLeaf({ leaf, straight, creases = [] }: PublishedLeaf, leafHeight: number): RoundLeaf {
  if (straight !== undefined) return { leaf, spans: [{ from: 0, to: leafHeight, level: 2 }] };
  const of = (corner: PublishedCrease["corner"]): PublishedCrease | undefined =>
    creases.find((crease) => crease.corner === corner);
  const [head, tail] = [of("head"), of("tail")];
  const marks = [head?.from.at ?? 0, tail?.from.at ?? leafHeight] as const;
  return { leaf, spans: [], corners: [...marks, head?.to.depth ?? 0, tail?.to.depth ?? 0] };
}

function lightOf({ diameter, height, floor, centre, notches }: RoundLight): RoundLight {
  return {
    diameter,
    height,
    floor,
    centre: { x: centre.x, z: centre.z },
    notches: notches.map(({ leaf, from, to, depth }) => ({ leaf, from, to, depth })),
  };
}

function insertOf({ hinge, panel, parts }: RoundInsert): RoundInsert {
  return {
    hinge,
    panel,
    parts: parts
      .filter(({ kind }) => SHOWN_PARTS.includes(kind))
      .map(({ kind, outlines, scores, card, seat, spacers }) => ({
        kind,
        outlines: thinOut(outlines, ROUGH),
        scores,
        ...(card ? { card } : {}),
        ...(seat ? { seat, spacers: spacers ?? 0 } : {}),
      })),
  };
}
