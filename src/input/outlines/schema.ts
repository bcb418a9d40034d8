import { z } from "zod";
import * as say from "../../words/messages.ts";
import { choice, count, described, leftOut, number } from "../files/schema-fields.ts";
import { span } from "../files/span.ts";

/** Corners, rises and waves: in mm, or as a share of the outline's own side. */
const PART = { least: 0, most: 2000, mostShare: 1 } as const;

/** Of a band or of ground, of which some must be there. */
const BAND = { ...PART, least: 0.1 } as const;

const corner = leftOut(span(say.outlineCorner, PART), say.outlineCornerUsual);

/** Outlines by numbers, each under its key. */
export const outlineFields = {
  ring: z
    .strictObject({ width: span(say.outlineRingWidth, BAND) })
    .meta(described(say.outlineRing))
    .optional(),
  oval: z.strictObject({}).meta(described(say.outlineOval)).optional(),
  arch: z
    .strictObject({
      rise: leftOut(span(say.outlineArchRise, PART), say.outlineArchRiseUsual),
      top: choice(say.outlineArchTop, ["round", "pointed"]).default("round"),
    })
    .meta(described(say.outlineArch))
    .optional(),
  heart: z.strictObject({}).meta(described(say.outlineHeart)).optional(),
  star: z
    .strictObject({
      points: count(say.outlineStarPoints, { kind: "count", least: 3, most: 60 }).default(5),
      inner: number(say.outlineStarInner, 0.05, 0.95).default(0.45),
    })
    .meta(described(say.outlineStar))
    .optional(),
  moon: z
    .strictObject({
      lit: number(say.outlineMoonLit, 0.02, 1).default(0.25),
      side: choice(say.outlineMoonSide, ["left", "right"]).default("right"),
    })
    .meta(described(say.outlineMoon))
    .optional(),
  rectangle: z.strictObject({ corner }).meta(described(say.outlineRectangle)).optional(),
  ground: z
    .strictObject({
      height: span(say.outlineGroundHeight, BAND),
      wave: leftOut(span(say.outlineGroundWave, PART), say.outlineGroundWaveUsual),
      waves: number(say.outlineGroundWaves, 0.25, 40).default(2),
    })
    .meta(described(say.outlineGround))
    .optional(),
  border: z
    .strictObject({ width: span(say.outlineBorderWidth, BAND), corner })
    .meta(described(say.outlineBorder))
    .optional(),
};

export type OutlineName = keyof typeof outlineFields;

export const OUTLINES = Object.keys(outlineFields) as readonly OutlineName[];

/** The numbers of each outline. */
export type OutlineFields = { readonly [Name in OutlineName]?: z.output<(typeof outlineFields)[Name]> };
export type FieldsOf<Name extends OutlineName> = NonNullable<OutlineFields[Name]>;
