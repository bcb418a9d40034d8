import * as say from "../../words/messages.ts";
import { type Problem, ProblemError, problem } from "../files/problem.ts";
import { shortValue } from "../files/short.ts";
import { ColourDistances } from "./colour-distances.ts";
import { clearFringe } from "./colour-fringe.ts";
import { isCutOut, type Layer, type Layers, opaque, type Source, withinOpaque } from "./layers.ts";
import { distance, type Lab, labOf } from "./oklab.ts";
import type { StatedColour } from "./raster-plan.ts";

/** Colours nearer to each other are hardly told apart: about twice what the eye just sees. */
const NEAR = 0.04;
/** Colours that are the same but for rounding. */
const SAME = 0.002;
/** A pixel further than this from every stated colour is of another one. */
const FAR = 0.2;
/** So large a share of such pixels is told. */
const TOLD = 0.05;
/** Distances of colours, as far from 0 as values of alpha. */
const SCALE = 255;

interface Known {
  readonly stated: StatedColour;
  readonly lab: Lab;
}

/** Levels by the nearest of the stated colours. @throws ProblemError */
export function colourLayers(source: Source): Layers {
  const { pixels, plan } = source;
  const known = knownColours(source);
  const levels = [...new Set(known.map(({ stated }) => stated.level))].sort((a, b) => a - b);
  const palettes = levels.map((level) => known.filter(({ stated }) => stated.level === level).map(({ lab }) => lab));
  const distances = new ColourDistances(palettes);
  const fringe = clearFringe(pixels, distances);
  const far = farShare(pixels.data, distances);
  const layers = levels.map((level, k): Layer => {
    if (k === levels.length - 1) return { level, values: () => opaque(pixels) };
    return { level, values: () => withinOpaque(distances.between(pixels, k, SCALE, fringe), pixels) };
  });
  const notes = nearPairs(known).map(([a, b]) => say.rasterColoursNear({ a: a.colour, b: b.colour }));
  if (far > TOLD) notes.push(say.rasterColoursFar({ percent: Math.round(100 * far) }));
  if (levels.length === 1 && !isCutOut(pixels)) throw oneColour(source, plan.colours ?? []);
  return { layers, notes };
}

function knownColours({ at, plan }: Source): Known[] {
  const colours = plan.colours ?? [];
  if (colours.length === 0) throw oneColour({ at }, colours);
  const read = colours.map((stated) => ({ stated, lab: labOf(stated.colour) }));
  const wrong = read.filter(({ lab }) => lab === undefined);
  const strange = wrong.map(({ stated }): Problem => {
    const given = say.rasterNoColour({ colour: shortValue(stated.colour) });
    return { at: stated.at, given, allowed: say.rasterColourAllowed(), remedy: say.rasterCorrectColour() };
  });
  if (strange.length > 0) throw new ProblemError(strange);
  const known = read.map(({ stated, lab }) => ({ stated, lab: lab! }));
  const twice = known.flatMap((one, i): Problem[] => {
    const twin = known
      .slice(0, i)
      .find((other) => other.stated.level !== one.stated.level && distance(other.lab, one.lab) < SAME);
    if (!twin) return [];
    const given = say.rasterColourTwice({ colour: one.stated.colour });
    return [{ at: one.stated.at, given, allowed: say.rasterColourOnce(), remedy: say.rasterOneColour() }];
  });
  if (twice.length > 0) throw new ProblemError(twice);
  return known;
}

function oneColour({ at }: Pick<Source, "at">, colours: readonly StatedColour[]): ProblemError {
  return problem([...at, "levels"], {
    given: say.rasterColourCount({ count: colours.length }),
    allowed: say.rasterColoursAllowed(),
    remedy: say.rasterAddColour(),
  });
}

function nearPairs(known: readonly Known[]): (readonly [StatedColour, StatedColour])[] {
  return known.flatMap((one, i) =>
    known
      .slice(0, i)
      .filter((other) => other.stated.level !== one.stated.level && distance(other.lab, one.lab) < NEAR)
      .map((other) => [other.stated, one.stated] as const),
  );
}

/** The share of pixels that no stated colour is near to, transparent ones aside. */
function farShare(data: Uint8Array, distances: ColourDistances): number {
  let [far, all] = [0, 0];
  for (let at = 0; at < data.length; at += 4) {
    if (data[at + 3]! < 128) continue;
    all += 1;
    if (distances.least(data, at) > FAR) far += 1;
  }
  return all === 0 ? 0 : far / all;
}
