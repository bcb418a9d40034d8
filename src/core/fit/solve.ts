import { sayLength } from "../../words/lengths.ts";
import type { Fan } from "../fan/fan.ts";
import { frontWidth, type LeafRange, type View } from "../fan/front.ts";
import { bisect } from "../geometry/bisect.ts";
import { Problem } from "../problem.ts";
import { toDegrees } from "../units/angle.ts";
import type { UnitSystem } from "../units/length.ts";

/** What a maker states of a fit; one of the three may be "solve". Lengths mm, opening radians. */
export interface Wish {
  readonly pictureLeaves: "fill" | "solve" | number;
  readonly height: "solve" | number;
  readonly opening: "solve" | number;
}

/** What stays the same while one quantity is solved. */
export interface Frame {
  readonly fan: Omit<Fan, "opening">;
  readonly frontDepth: number;
  readonly view: View;
  /** 0-based leaf that carries the picture's first column. */
  readonly firstLeaf: number;
  /** Greatest number of picture leaves: leaves less borders. */
  readonly mostLeaves: number;
  /** Units of messages. */
  readonly units: UnitSystem;
  /** Picture width / height. */
  readonly aspect: number;
}

export interface Solution {
  readonly pictureLeaves: number;
  readonly height: number;
  readonly opening: number;
  /** Displayed width, mm. */
  readonly width: number;
  /** width / (height · aspect): 1 is true shape, above 1 is wider than drawn. */
  readonly stretch: number;
}

/** The widest opening that a fit may ask for: flat on the table seen from the front; once round for pieces read walking round. */
export function widestOpening(view: View): number {
  return view === "front" ? Math.PI : 2 * Math.PI;
}

/**
 * Solves the free one of opening, height and picture leaves so that the picture keeps its shape.
 * @throws Problem when none fits, saying what would.
 */
export function solveFit(wish: Wish, frame: Frame): Solution {
  const count = wish.pictureLeaves === "fill" ? frame.mostLeaves : wish.pictureLeaves;
  if (count === "solve") return solveLeaves(wish.height as number, wish.opening as number, frame);
  if (wish.opening === "solve") return solveOpening(wish.height as number, count, frame);
  const width = widthAt(frame, wish.opening, count);
  return solution(frame, count, wish.height === "solve" ? width / frame.aspect : wish.height, wish.opening);
}

function solveOpening(height: number, count: number, frame: Frame): Solution {
  const wanted = height * frame.aspect;
  const widest = widestOpening(frame.view);
  const most = widthAt(frame, widest, count);
  const least = widthAt(frame, CLOSED, count);
  if (wanted > most) throw tooWide(height, count, frame, most);
  if (wanted < least) {
    throw new Problem("fit.height", {
      given: `a picture ${say(height, frame)} high is ${say(wanted, frame)} wide`,
      allowed: `even closed, ${count} picture leaves of this book are ${say(least, frame)} thick`,
      remedy: `raise the height to at least ${say(halfMillimetre(least / frame.aspect, frame, Math.ceil), frame, "ceil")} or use fewer picture leaves`,
    });
  }
  return solution(
    frame,
    count,
    height,
    bisect((opening) => widthAt(frame, opening, count), wanted, CLOSED, widest),
  );
}

function solveLeaves(height: number, opening: number, frame: Frame): Solution {
  const wanted = height * frame.aspect;
  const most = widthAt(frame, opening, frame.mostLeaves);
  const last = frame.mostLeaves > 2 ? most - widthAt(frame, opening, frame.mostLeaves - 1) : 0;
  if (wanted > most + last / 2) {
    const openingNeeded =
      wanted <= widthAt(frame, widestOpening(frame.view), frame.mostLeaves)
        ? `open the book to ${degrees(solveOpening(height, frame.mostLeaves, frame).opening, Math.ceil)}, or `
        : "";
    throw new Problem("fit.pictureLeaves", {
      given: `a picture ${say(height, frame)} high and ${say(wanted, frame)} wide at ${degrees(opening)}`,
      allowed: `all ${frame.mostLeaves} leaves between the borders show ${say(most, frame)}`,
      remedy: `${openingNeeded}lower the height to ${say(halfMillimetre(most / frame.aspect, frame, Math.floor), frame, "floor")}, or choose a book with more leaves`,
    });
  }
  let best = 2;
  for (let count = 3; count <= frame.mostLeaves; count += 1) {
    const nearer = Math.abs(widthAt(frame, opening, count) - wanted) < Math.abs(widthAt(frame, opening, best) - wanted);
    if (nearer) best = count;
  }
  return solution(frame, best, height, opening);
}

function solution(frame: Frame, pictureLeaves: number, height: number, opening: number): Solution {
  const width = widthAt(frame, opening, pictureLeaves);
  return { pictureLeaves, height, opening, width, stretch: width / (height * frame.aspect) };
}

function tooWide(height: number, count: number, frame: Frame, most: number): Problem {
  const widest = widestOpening(frame.view);
  const enough = fewestLeaves(height * frame.aspect, count, frame);
  const more =
    enough === undefined ? "choose a book with more or wider leaves" : `use ${enough} picture leaves (smaller borders)`;
  return new Problem("fit.height", {
    given: `a picture ${say(height, frame)} high is ${say(height * frame.aspect, frame)} wide`,
    allowed: `at ${degrees(widest)} this book can show at most ${say(most, frame)} with ${count} picture leaves`,
    remedy: `lower the height to ${say(halfMillimetre(most / frame.aspect, frame, Math.floor), frame, "floor")}, or ${more}`,
  });
}

/** Fewest picture leaves of the whole book that show `wanted` at the widest opening, starting at its middle. */
function fewestLeaves(wanted: number, more: number, frame: Frame): number | undefined {
  for (let count = more + 1; count <= frame.fan.leaves; count += 1) {
    const firstLeaf = Math.floor((frame.fan.leaves - count) / 2);
    if (widthAt({ ...frame, firstLeaf }, widestOpening(frame.view), count) >= wanted) return count;
  }
  return undefined;
}

function widthAt(frame: Frame, opening: number, count: number): number {
  const range: LeafRange = { first: frame.firstLeaf, count };
  return frontWidth({ ...frame.fan, opening }, range, frame.frontDepth, frame.view);
}

/** An opening as good as closed; 0 itself has no rounded spine. */
const CLOSED = 1e-6;

function say(value: number, frame: Frame, bound?: "floor" | "ceil"): string {
  return sayLength(value, frame.units, bound);
}

/** Heights in millimetres are named in halves; inches are rounded where they are written. */
function halfMillimetre(value: number, frame: Frame, round: (value: number) => number): number {
  return frame.units === "mm" ? round(value * 2) / 2 : value;
}

function degrees(opening: number, round: (value: number) => number = (value) => Math.round(value * 10) / 10): string {
  return `${round(toDegrees(opening))}°`;
}
