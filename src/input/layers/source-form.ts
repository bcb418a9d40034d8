import * as say from "../../words/messages.ts";
import { isRasterName } from "../files/photo-kinds.ts";
import type { FieldPath, Problem } from "../files/problem.ts";
import { OUTLINES, type OutlineName } from "../outlines/schema.ts";
import type { SourceMatter } from "./schema.ts";

/** What draws a layer, by the key that says so. */
export type SourceKey = "file" | "text" | "layers" | "motif" | OutlineName;

/** What has a source: a picture, one of its layers, what is joined or cut, or a motif of the window. */
export type Host = "picture" | "layer" | "piece" | "motif";

interface Fields extends SourceMatter {
  readonly level?: unknown;
  readonly levels?: unknown;
  readonly layers?: unknown;
  readonly motif?: unknown;
}

/** Keys that steer one kind of source: drawings, pictures made of pixels, and words. */
const OF_DRAWING = ["names"];
const OF_PIXELS = ["trace", "near", "limits", "tolerance", "least"];
const OF_TEXT = ["font", "weight", "align", "lineHeight", "spacing", "arc"];
const OF_LEVELS = ["level", "levels"];

/** What is wrong with the keys of something that has a source: no source, several, or keys of another one. */
export function formProblems(fields: Fields, at: FieldPath, host: Host): Problem[] {
  const sources = SOURCES[host];
  const found = sources.filter((key) => fields[key] !== undefined);
  const [source, ...more] = found;
  const allowed = say.layerOneSource({ sources: sources.join(", ") });
  if (source === undefined) return [{ at, given: say.layerNoSource(), allowed, remedy: say.layerAddSource() }];
  if (more.length > 0)
    return [
      {
        at,
        given: say.layerTwoSources({ sources: found.join(", ") }),
        allowed,
        remedy: host === "motif" ? say.motifSplit() : say.layerSplit(),
      },
    ];
  const keys = keysOf(fields, source).filter((key) => isLevelled(host) || !OF_LEVELS.includes(key));
  return foreignKeys(fields, keys).map((key) => ({
    at: [...at, key],
    given: say.layerForeignKey({ key, owner: ownerOf(key) }),
    allowed:
      keys.length > 0 ? say.layerForeignAllowed({ source, keys: keys.join(", ") }) : say.layerForeignNone({ source }),
    remedy: say.layerRemoveKey(),
  }));
}

/** The source of fields that have the right form. */
export function sourceKeyOf(fields: Fields): SourceKey {
  return DRAWN.find((key) => fields[key] !== undefined) ?? "layers";
}

/** Sources that are drawn by themselves; a picture may have layers, too, and a motif may come from the shelf. */
const DRAWN: readonly SourceKey[] = ["file", "text", ...OUTLINES];
const SOURCES: Readonly<Record<Host, readonly SourceKey[]>> = {
  picture: ["layers", ...DRAWN],
  layer: DRAWN,
  piece: DRAWN,
  motif: ["motif", ...DRAWN],
};

function isLevelled(host: Host): boolean {
  return host === "picture" || host === "layer";
}

function foreignKeys(fields: Fields, own: readonly string[]): string[] {
  const steering = [...OF_DRAWING, ...OF_PIXELS, "crop", ...OF_TEXT, ...OF_LEVELS];
  return steering.filter((key) => fields[key as keyof Fields] !== undefined && !own.includes(key));
}

function keysOf({ file }: Fields, source: SourceKey): readonly string[] {
  if (source === "layers") return ["width", "height"];
  if (source === "motif") return [];
  if (source === "file") return [...OF_LEVELS, ...(isRasterName(file ?? "") ? OF_PIXELS : OF_DRAWING), "crop"];
  return source === "text" ? [...OF_LEVELS, ...OF_TEXT] : ["level"];
}

function ownerOf(key: string): "text" | "drawing" | "pixels" | "file" | "level" {
  if (OF_TEXT.includes(key)) return "text";
  if (OF_DRAWING.includes(key)) return "drawing";
  if (OF_PIXELS.includes(key)) return "pixels";
  return key === "crop" ? "file" : "level";
}
