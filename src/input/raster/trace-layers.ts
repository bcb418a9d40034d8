import type { Point, Ring } from "../../core/geometry/point.ts";
import type { LevelShape } from "../../core/picture/level-map.ts";
import * as say from "../../words/messages.ts";
import { problem } from "../files/problem.ts";
import { fieldRings } from "./field-rings.ts";
import type { Layers, Source } from "./layers.ts";
import type { Pixels } from "./pixels.ts";
import { MOST_PARTS, MOST_SIDES } from "./raster-bounds.ts";
import type { Field } from "./runs.ts";
import { smoothOutline } from "./smooth-outline.ts";
import { leaveOutSpecks, type Parts, sidesOf } from "./specks.ts";

/** Outlines follow a grid of pixels, so they are smoothed by at least so much of one. */
const LEAST_TOLERANCE = 0.7;

/** The layers as shapes, the furthest first. A layer that adds nothing to the one in front of it is left out. @throws ProblemError */
export function traceLayers(
  source: Source,
  layers: Layers["layers"],
): { readonly shapes: LevelShape[]; readonly specks: number } {
  const { pixels, plan } = source;
  const { width, height, saved } = pixels;
  const mmPerPixel = (plan.mmPerUnit(saved) * saved.width) / width;
  const least = (Math.PI / 4) * (plan.least / mmPerPixel) ** 2;
  const tolerance = Math.max(LEAST_TOLERANCE, plan.tolerance / mmPerPixel);
  const shapes: LevelShape[] = [];
  let [specks, before] = [0, 0];
  for (const [k, { level, values }] of layers.entries()) {
    if (k === layers.length - 1 && level === plan.background) break;
    const field: Field = { width, height, values: values() };
    const found = leaveOutSpecks(field, least);
    specks += found.specks;
    if (found.inside === before) continue;
    before = found.inside;
    checkBusy(source, field, found);
    const rings = fieldRings(field).map((ring) => placed(smoothOutline(ring, tolerance), pixels));
    shapes.unshift({ level, rule: "evenodd", rings: rings.filter((ring) => ring.length >= 3) });
  }
  return { shapes, specks };
}

/** Outlines that would take minutes to follow are of no use on paper. @throws ProblemError */
function checkBusy({ name, at }: Source, field: Field, { parts, holes }: Parts): void {
  const sides = sidesOf(field);
  const isBusy = Math.max(parts, holes) > MOST_PARTS;
  if (!isBusy && sides <= MOST_SIDES) return;
  const times = (length: number): number => Math.round(length / (2 * (field.width + field.height)));
  throw problem([...at, "file"], {
    given: isBusy
      ? say.rasterBusy({ file: name, parts: parts + holes })
      : say.rasterLong({ file: name, times: times(sides) }),
    allowed: isBusy ? say.rasterMostParts({ most: MOST_PARTS }) : say.rasterMostLong({ most: times(MOST_SIDES) }),
    remedy: say.rasterRaiseLeast(),
  });
}

/** From working pixels to saved ones, inside the picture; finer than a thousandth of a pixel nothing is known. */
function placed(ring: Ring, { width, height, saved }: Pixels): Ring {
  const tidy = (share: number, side: number): number =>
    Math.round(Math.min(1, Math.max(0, share)) * side * 1000) / 1000;
  return ring.map(([x, y]): Point => [tidy(x / width, saved.width), tidy(y / height, saved.height)]);
}
