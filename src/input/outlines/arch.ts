import type { Size } from "../../core/geometry/box.ts";
import type { Point, Ring } from "../../core/geometry/point.ts";
import { tidy } from "../../core/units/length.ts";
import * as say from "../../words/messages.ts";
import { type FieldPath, problem } from "../files/problem.ts";
import { mmOf } from "../files/span.ts";
import { bow, toleranceOf } from "./bow.ts";
import { room } from "./room.ts";
import type { FieldsOf } from "./schema.ts";

/**
 * Straight sides under a bow: half an ellipse, or two circles that meet in a point and leave the sides upright, each with its
 * centre at the height where the bow begins. @throws ProblemError where the bow has no room
 */
export function arch({ rise, top }: FieldsOf<"arch">, size: Size, at: FieldPath): Ring[] {
  const { width, height } = size;
  const usual = Math.min(height, top === "round" ? width / 2 : (width * Math.sqrt(3)) / 2);
  const risen = room(rise ? mmOf(rise, height) : usual, height, { at: [...at, "rise"], size });
  const bowed = top === "round" ? roundTop(size, risen) : pointedTop(size, risen, [...at, "rise"]);
  return [[...bowed, [width, height], [0, height]]];
}

function roundTop(size: Size, rise: number): Point[] {
  const half = size.width / 2;
  return bow([half, rise], [half, rise], { from: 180, to: 360, tolerance: toleranceOf(size) });
}

function pointedTop(size: Size, rise: number, at: FieldPath): Point[] {
  const half = size.width / 2;
  if (rise < half - 1e-9) {
    const least = String(tidy(Math.ceil(half * 100) / 100, 2));
    const given = say.outlineGiven({ length: String(tidy(rise, 2)) });
    throw problem(at, { given, allowed: say.outlinePointed({ least }), remedy: say.outlineRoundArch() });
  }
  // From the ends of the bow over its point: r² = (r − half)² + rise².
  const radius = (half * half + rise * rise) / (2 * half);
  const tolerance = toleranceOf(size);
  const reach = (Math.asin(Math.min(1, rise / radius)) * 180) / Math.PI;
  const left = bow([radius, rise], [radius, radius], { from: 180, to: 180 + reach, tolerance });
  const right = bow([size.width - radius, rise], [radius, radius], { from: 360 - reach, to: 360, tolerance });
  return [...left.slice(0, -1), ...right];
}
