import type { Level } from "../../core/kit/kit.ts";
import type { LevelMap } from "../../core/picture/level-map.ts";
import * as say from "../../words/messages.ts";
import { type KitFolder, pictureBytes } from "../files/named-files.ts";
import { problem } from "../files/problem.ts";
import { drawRaster } from "../raster/draw-raster.ts";
import { RASTER_USUAL } from "../raster/raster-plan.ts";
import type { FrontMatter } from "./schema.ts";

/** The picture of a kit whose file is a photograph or a scan, with notes. @throws ProblemError */
export function rasterPicture(
  folder: KitFolder,
  { picture, fit, book }: FrontMatter,
  levels: readonly Level[],
): { map: LevelMap; notes: string[] } {
  const { trace, near, limits, tolerance = RASTER_USUAL.tolerance, least = RASTER_USUAL.least } = picture;
  if (trace === undefined)
    throw problem(["picture", "trace"], {
      given: say.rasterNoTrace({ file: picture.file }),
      allowed: say.rasterTraceAllowed(),
      remedy: say.rasterAddTrace(),
    });
  const { file, bytes } = pictureBytes(folder, picture.file);
  const background = levels.findIndex((level) => level.background) + 1;
  const height = fit.height === "solve" ? book.leafHeight : fit.height;
  const { notes, ...drawn } = drawRaster(
    { name: picture.file, bytes, at: ["picture"] },
    {
      trace,
      near,
      limits,
      tolerance,
      least,
      levels: levels.map((_, i) => i + 1),
      background,
      mmPerUnit: (saved) => height / saved.height,
    },
  );
  return {
    map: { ...drawn, background },
    notes: notes.map(({ message }) => say.frontPictureNote({ place: file, note: message })),
  };
}
