import * as say from "../../words/messages.ts";
import { contentKind } from "../files/content-kind.ts";
import { PHOTO_ENDINGS, PHOTO_KINDS } from "../files/photo-kinds.ts";
import { type FieldPath, type Problem, ProblemError, problem } from "../files/problem.ts";
import type { Drawn } from "../picture/drawn.ts";
import { colourLayers } from "./colour-layers.ts";
import type { Layers, Source } from "./layers.ts";
import type { PixelFault, Pixels } from "./pixels.ts";
import { MOST_PIXELS } from "./raster-bounds.ts";
import type { RasterPlan } from "./raster-plan.ts";
import { readPixels } from "./read-pixels.ts";
import { silhouetteLayers, toneLayers } from "./tone-layers.ts";
import { traceLayers } from "./trace-layers.ts";

/** A raster file of a kit, and where the front matter names it: steps to the source that holds `file`. */
export interface RasterFile {
  readonly name: string;
  readonly bytes: Buffer;
  readonly at: FieldPath;
}

const MEGA = 1_000_000;

/**
 * Draws a raster picture as areas at levels, in pixels as it was saved, turned upright. Later shapes cover earlier ones: each
 * holds all that lies in front of it. Nothing of the file but its pixels is kept.
 * @throws ProblemError at the fields of the source
 */
export function drawRaster({ name, bytes, at }: RasterFile, plan: RasterPlan): Drawn {
  checkKeys(plan, at);
  const pixels = decoded(name, bytes, [...at, "file"]);
  const source: Source = { name, at, pixels, plan };
  const { layers, notes } = layersOf(source);
  const { shapes, specks } = traceLayers(source, layers);
  if (shapes.length === 0)
    throw problem([...at, "file"], {
      given: say.rasterNothing({ file: name, trace: plan.trace }),
      allowed: say.rasterSomething({ least: plan.least }),
      remedy: say.rasterShowMore(),
    });
  const told = [
    ...notesOnFile(pixels),
    ...notes,
    ...(specks > 0 ? [say.rasterSpecks({ specks, least: plan.least })] : []),
  ];
  return { ...pixels.saved, shapes, notes: told.map((message) => ({ line: undefined, message })) };
}

/** What goes with one kind of tracing only. */
function checkKeys({ trace, limits, near }: RasterPlan, at: FieldPath): void {
  if (trace !== "colours") return;
  const stray = Object.entries({ limits, near }).filter(([, value]) => value !== undefined);
  if (stray.length === 0) return;
  const advice = { allowed: say.rasterKeyAllowed(), remedy: say.rasterRemoveKey() };
  throw new ProblemError(
    stray.map(([key]): Problem => ({ at: [...at, key], given: say.rasterKeyOfTones({ key }), ...advice })),
  );
}

/** The pixels of a file that the field `at` names. @throws ProblemError */
export function decoded(name: string, bytes: Buffer, at: FieldPath): Pixels {
  const is = contentKind(bytes);
  if (!is || !PHOTO_KINDS.includes(is))
    throw problem(at, {
      given: say.frontFileIs({ file: name, what: say.fileOtherContent({ is: is ?? "unknown" }) }),
      allowed: say.rasterKinds({ kinds: PHOTO_ENDINGS.join(", ") }),
      remedy: say.rasterSaveAs(),
    });
  const result = readPixels(bytes);
  if ("fault" in result) throw problem(at, faultAdvice(name, result.fault));
  return result.pixels;
}

function faultAdvice(file: string, fault: PixelFault): Omit<Problem, "at"> {
  if (fault.kind === "pixels")
    return {
      given: say.rasterPixels({ file, megapixels: Math.ceil(fault.count / MEGA) }),
      allowed: say.rasterMostPixels({ most: MOST_PIXELS / MEGA }),
      remedy: say.rasterSaveSmaller(),
    };
  return {
    given: say.rasterUnreadable({ file, fault: fault.words }),
    allowed: say.rasterKinds({ kinds: PHOTO_ENDINGS.join(", ") }),
    remedy: say.rasterSaveAgain(),
  };
}

function layersOf(source: Source): Layers {
  switch (source.plan.trace) {
    case "silhouette":
      return silhouetteLayers(source);
    case "tones":
    case "depth":
      return toneLayers(source);
    case "colours":
      return colourLayers(source);
  }
}

function notesOnFile({ width, height, saved, frames }: Pixels): string[] {
  const notes: string[] = [];
  if (frames > 1) notes.push(say.rasterFrames({ frames }));
  if (width < saved.width)
    notes.push(say.rasterReduced({ width, height, savedWidth: saved.width, savedHeight: saved.height }));
  return notes;
}
