import type { Level } from "../../core/kit/kit.ts";
import { isRasterName } from "../files/photo-kinds.ts";
import { drawWords } from "../lettering/draw-words.ts";
import { drawOutline, outlineShape } from "../outlines/draw-outline.ts";
import { type AskedFile, type DrawnSource, drawFile } from "./draw-file.ts";
import { drawPixels } from "./draw-pixels.ts";
import { type LevelChoice, levelOfLine, linesOf } from "./level-choice.ts";
import { placedSize } from "./place.ts";
import type { SourceMatter } from "./schema.ts";
import { type SourceKey, sourceKeyOf } from "./source-form.ts";
import type { Commission, Studio } from "./studio.ts";

/** Draws the source of a layer or of a piece, on a canvas of its own. @throws ProblemError, KitError */
export function drawSource(fields: SourceMatter, commission: Commission, studio: Studio): DrawnSource {
  const { allowance } = studio.files;
  allowance.begin(fields.file !== undefined && isRasterName(fields.file), commission.at);
  const drawn = drawnBy(fields, commission, studio);
  allowance.spend(drawn.shapes, commission.at);
  return drawn;
}

function drawnBy(fields: SourceMatter, { at, place, choice }: Commission, studio: Studio): DrawnSource {
  const key = sourceKeyOf(fields) as Exclude<SourceKey, "layers" | "motif">;
  if (key === "file" && isRasterName(fields.file!)) return drawPixels(fields, { at, place, choice }, studio);
  if (key === "file") {
    const read = studio.files.read(fields.file!, [...at, "file"]);
    return drawFile(read, askedOf(fields, choice, studio.levels), { at, levels: studio.levels });
  }
  if (key === "text") {
    const lines = linesOf(fields.text).map((text, i) => ({ text, level: levelOfLine(choice, i) }));
    return {
      ...drawWords(lines, fields, { at, kit: studio.files.kit, fonts: studio.files.fonts }),
      notes: [],
      file: undefined,
    };
  }
  const box = studio.box!;
  const size = placedSize(outlineShape(key, fields, box), place, box);
  const level = choice.kind === "one" ? choice.level : 1;
  return { ...drawOutline(key, fields, { size, level, at }), file: undefined };
}

/** What a source asks of its file. */
export function askedOf({ names, crop }: SourceMatter, choice: LevelChoice, levels: readonly Level[]): AskedFile {
  if (choice.kind === "shapes") return { levels: choice.of, crop };
  const level = levels[levelOfLine(choice, 0) - 1]!.name;
  return { level, names, crop };
}
