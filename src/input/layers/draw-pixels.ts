import type { Size } from "../../core/geometry/box.ts";
import * as say from "../../words/messages.ts";
import { type FieldPath, problem } from "../files/problem.ts";
import { cropDrawn } from "../picture/crop.ts";
import { selectorsOf } from "../picture/selection.ts";
import { drawRaster } from "../raster/draw-raster.ts";
import { RASTER_USUAL, type RasterPlan, type StatedColour } from "../raster/raster-plan.ts";
import type { DrawnSource } from "./draw-file.ts";
import type { LevelChoice } from "./level-choice.ts";
import { placedSize } from "./place.ts";
import type { SourceMatter } from "./schema.ts";
import type { Commission, Studio } from "./studio.ts";

/** A photograph or a scan as areas at levels. @throws ProblemError */
export function drawPixels(fields: SourceMatter, commission: Commission, studio: Studio): DrawnSource {
  const { at, choice } = commission;
  const {
    trace = usualTrace(choice),
    tolerance = RASTER_USUAL.tolerance,
    least = RASTER_USUAL.least,
    near,
    limits,
    crop,
  } = fields;
  const name = fields.file!;
  const { file, bytes } = studio.files.bytes(name, [...at, "file"]);
  const numbers = studio.levels.map((_, i) => i + 1);
  const plan: RasterPlan = {
    trace,
    near,
    limits,
    tolerance,
    least,
    colours: coloursIn(choice, trace, { at, studio }),
    levels: choice.kind === "one" ? [choice.level] : numbers,
    background: studio.levels.findIndex((level) => level.background) + 1,
    mmPerUnit: (saved) => scaleOf(saved, crop, commission, studio),
  };
  const { notes, ...drawn } = cropDrawn(drawRaster({ name, bytes, at }, plan), crop, [...at, "crop"]);
  return { ...drawn, file, notes: notes.map(({ message }) => ({ line: undefined, message })) };
}

/** How a picture is traced that does not say it: by the levels that it is drawn at. */
function usualTrace(choice: LevelChoice): RasterPlan["trace"] {
  if (choice.kind === "shapes") return "colours";
  return choice.kind === "all" ? "tones" : "silhouette";
}

/** Millimetres on the book of a pixel, as the picture is placed. */
function scaleOf(saved: Size, crop: SourceMatter["crop"], { place }: Commission, { box, tall }: Studio): number {
  const shown = typeof crop === "object" ? crop : saved;
  if (!box) return tall / shown.height;
  const placed = placedSize(shown, place, box);
  return (Math.min(placed.width / shown.width, placed.height / shown.height) * tall) / box.height;
}

/** Colours and their levels. @throws ProblemError where they are missing, or none are asked for */
function coloursIn(
  choice: LevelChoice,
  trace: RasterPlan["trace"],
  { at, studio }: { readonly at: FieldPath; readonly studio: Studio },
): StatedColour[] | undefined {
  const field = [...at, "levels"];
  if (trace !== "colours") {
    if (choice.kind !== "shapes") return undefined;
    const advice = { given: say.layerLevelsMap(), allowed: say.layerSilhouetteLevel() };
    throw problem(field, { ...advice, remedy: say.layerNameLevel() });
  }
  if (choice.kind !== "shapes" || !choice.of) {
    const advice = { given: say.checkNotGiven(), allowed: say.layerColourLevels(), remedy: say.layerStateColours() };
    throw problem(field, advice);
  }
  return Object.entries(choice.of).flatMap(([name, selection]) => {
    const level = studio.levels.findIndex((one) => one.name === name) + 1;
    if (level === 0) throw strangeLevel([...field, name], name, studio);
    return selectorsOf(selection).map(({ selector, place }): StatedColour => {
      const where = [...field, name, ...place];
      if (typeof selector === "string" || !("fill" in selector)) {
        const advice = { given: say.checkGiven({ value: JSON.stringify(selector) }), allowed: say.layerOnlyFill() };
        throw problem(where, { ...advice, remedy: say.layerStateColours() });
      }
      return { colour: selector.fill, level, at: where };
    });
  });
}

function strangeLevel(at: FieldPath, level: string, { levels }: Studio) {
  const names = levels.map(({ name }) => name).join(", ");
  const advice = { given: say.frontShapesOfNoLevel({ level }), allowed: say.frontTheLevels({ levels: names }) };
  return problem(at, { ...advice, remedy: say.frontAddLevel() });
}
