import { create, type Font as ReadFont } from "fontkit";
import {
  Blob,
  Direction,
  DrawFuncs,
  Face,
  Feature,
  Font,
  Buffer as Letters,
  shape as shapeLetters,
  Variation,
} from "harfbuzzjs";
import type { Point } from "../../core/geometry/point.ts";
import { openFont } from "../fonts/font-file.ts";
import type { PathSegment } from "../svg/path-segment.ts";
import { sfntOf } from "./sfnt.ts";

/** A letter, or several as one, where it stands in its run; all as a share of the letters' height, y upward. */
export interface Glyph {
  readonly id: number;
  /** Where the text begins that it stands for: glyphs of one place belong together. */
  readonly cluster: number;
  readonly advance: number;
  readonly x: number;
  readonly y: number;
}

/** How letters of a run are shaped. */
export interface Shaping {
  readonly rightToLeft: boolean;
  /** Without ligatures, where letters are spaced. */
  readonly apart: boolean;
}

/** A font whose letters can be set and drawn. */
export interface Typeface {
  readonly covers: (codePoint: number) => boolean;
  /** From light to bold; both the same where it has one weight. */
  readonly weights: readonly [least: number, most: number];
  /** The glyphs of a text of one direction and script, from left to right. */
  readonly shape: (text: string, shaping: Shaping) => Glyph[];
  /** The outline of a glyph, y upward, as a share of the letters' height. */
  readonly outline: (id: number) => readonly PathSegment[];
}

/** Opens a font file in the weight that is nearest to the one wished. Undefined for what is no font of one face. */
export function openTypeface(file: Uint8Array, weight: number): Typeface | undefined {
  const bytes = Buffer.from(file);
  const known = openFont(bytes);
  if (!known) return undefined;
  try {
    const face = new Face(new Blob(sfntOf(bytes)));
    if (face.upem < 16 || face.collectUnicodes().length === 0) return undefined;
    const font = new Font(face);
    const [least, most] = known.weights;
    const bold = Math.min(most, Math.max(least, weight));
    if (least < most) font.setVariations([new Variation("wght", bold)]);
    const outline = known.kind === "woff2" ? readOutlines(bytes, least < most ? bold : undefined) : outlinesOf(font);
    return {
      covers: known.covers,
      weights: known.weights,
      shape: (text, shaping) => shaped(font, text, shaping),
      outline,
    };
  } catch {
    // Unpacking and the readers throw errors of many kinds at a broken file.
    return undefined;
  }
}

function shaped(font: Font, text: string, { rightToLeft, apart }: Shaping): Glyph[] {
  const letters = new Letters();
  letters.addText(text);
  // Otherwise the language of this computer would be taken.
  letters.setLanguage("und");
  letters.guessSegmentProperties();
  letters.setDirection(rightToLeft ? Direction.RTL : Direction.LTR);
  shapeLetters(font, letters, apart ? ["liga", "clig"].map((tag) => new Feature(tag, 0)) : []);
  const unit = 1 / font.face.upem;
  return letters.getGlyphInfosAndPositions().map(({ codepoint, cluster, xAdvance, xOffset, yOffset }) => ({
    id: codepoint,
    cluster,
    advance: (xAdvance ?? 0) * unit,
    x: (xOffset ?? 0) * unit,
    y: (yOffset ?? 0) * unit,
  }));
}

function outlinesOf(font: Font): Typeface["outline"] {
  let drawn: PathSegment[] = [];
  const unit = 1 / font.face.upem;
  const at = (x: number, y: number): Point => [x * unit, y * unit];
  const pen = new DrawFuncs();
  pen.setMoveToFunc((x, y) => drawn.push({ kind: "move", to: at(x, y) }));
  pen.setLineToFunc((x, y) => drawn.push({ kind: "line", to: at(x, y) }));
  pen.setQuadraticToFunc((cx, cy, x, y) => drawn.push({ kind: "curve", controls: [at(cx, cy)], to: at(x, y) }));
  pen.setCubicToFunc((ax, ay, bx, by, x, y) => {
    drawn.push({ kind: "curve", controls: [at(ax, ay), at(bx, by)], to: at(x, y) });
  });
  pen.setClosePathFunc(() => drawn.push({ kind: "close" }));
  return (id) => {
    drawn = [];
    font.drawGlyph(id, pen);
    return drawn;
  };
}

/** Outlines in the form in which WOFF2 stores them, by the reader that knows it. */
function readOutlines(file: Buffer, weight: number | undefined): Typeface["outline"] {
  const whole = create(file) as ReadFont;
  const font = weight === undefined ? whole : whole.getVariation({ wght: weight });
  const unit = 1 / font.unitsPerEm;
  return (id) =>
    font.getGlyph(id).path.commands.map(({ command, args }): PathSegment => {
      const points = args.reduce<Point[]>((all, x, i) => {
        if (i % 2 === 0) all.push([x * unit, args[i + 1]! * unit]);
        return all;
      }, []);
      const to = points.at(-1)!;
      if (command === "closePath") return { kind: "close" };
      if (command === "moveTo") return { kind: "move", to };
      return command === "lineTo" ? { kind: "line", to } : { kind: "curve", controls: points.slice(0, -1), to };
    });
}
