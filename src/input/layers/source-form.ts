import * as say from "../../words/messages.ts";
import { isRasterName } from "../files/named-files.ts";
import type { FieldPath, Problem } from "../files/problem.ts";
import { OUTLINES, type OutlineName } from "../outlines/schema.ts";
import type { LayerMatter, PictureMatter, PieceMatter } from "./schema.ts";

/** What draws a layer, by the key that says so. */
export type SourceKey = "file" | "text" | "layers" | OutlineName;

type Fields = PictureMatter | LayerMatter | PieceMatter;

/** Keys that steer one kind of source: drawings, pictures made of pixels, and words. */
const OF_DRAWING = ["names"];
const OF_PIXELS = ["trace", "near", "limits", "tolerance", "least"];
const OF_TEXT = ["font", "weight", "align", "lineHeight", "spacing", "arc"];
const OF_LEVELS = ["level", "levels"];

/** What is wrong with the keys of a picture, a layer or a piece: no source, several, or keys of another one. */
export function formProblems(fields: Fields, at: FieldPath, sources: readonly SourceKey[]): Problem[] {
  const found = sources.filter((key) => key in fields && fields[key as keyof Fields] !== undefined);
  const [source, ...more] = found;
  const allowed = say.layerOneSource({ sources: sources.join(", ") });
  if (source === undefined) return [{ at, given: say.layerNoSource(), allowed, remedy: say.layerAddSource() }];
  if (more.length > 0)
    return [{ at, given: say.layerTwoSources({ sources: found.join(", ") }), allowed, remedy: say.layerSplit() }];
  return foreignKeys(fields, source).map((key) => ({
    at: [...at, key],
    given: say.layerForeignKey({ key, owner: ownerOf(key) }),
    allowed: say.layerForeignAllowed({ source, keys: keysOf(fields, source).join(", ") }),
    remedy: say.layerRemoveKey(),
  }));
}

/** The source of fields that have the right form. */
export function sourceKeyOf(fields: Fields): SourceKey {
  return LAYER_SOURCES.find((key) => fields[key as keyof Fields] !== undefined) ?? "layers";
}

/** The sources that a layer may have; a picture may have layers, too. */
export const LAYER_SOURCES: readonly SourceKey[] = ["file", "text", ...OUTLINES];
export const PICTURE_SOURCES: readonly SourceKey[] = ["layers", ...LAYER_SOURCES];

function foreignKeys(fields: Fields, source: SourceKey): string[] {
  const own = keysOf(fields, source);
  const steering = [...OF_DRAWING, ...OF_PIXELS, "crop", ...OF_TEXT, ...OF_LEVELS];
  return steering.filter((key) => fields[key as keyof Fields] !== undefined && !own.includes(key));
}

function keysOf({ file }: Fields, source: SourceKey): readonly string[] {
  if (source === "layers") return ["width", "height"];
  if (source === "file") return [...OF_LEVELS, ...(isRasterName(file ?? "") ? OF_PIXELS : OF_DRAWING), "crop"];
  return source === "text" ? [...OF_LEVELS, ...OF_TEXT] : ["level"];
}

function ownerOf(key: string): "text" | "drawing" | "pixels" | "file" | "level" {
  if (OF_TEXT.includes(key)) return "text";
  if (OF_DRAWING.includes(key)) return "drawing";
  if (OF_PIXELS.includes(key)) return "pixels";
  return key === "crop" ? "file" : "level";
}
