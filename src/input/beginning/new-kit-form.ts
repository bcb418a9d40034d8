import { z } from "zod";
import { OUTLINES } from "../../core/beginning/answers.ts";
import { MOST_PARTED } from "../../core/beginning/picture-wish.ts";
import type { LeafNumber } from "../../core/book/leaf-number.ts";
import { BOUNDS, type Bounds } from "../../core/kit/bounds.ts";
import { TEXT } from "../files/text-bounds.ts";
import { selectorSchema } from "../picture/selection.ts";
import { LEAST, LIMIT, NEARS, TOLERANCE, TRACES } from "../raster/raster-bounds.ts";

/** What the desk's page asks of a new kit. It is the page's own, so what is not of this form has no words. */

const within = ({ least, most }: Bounds<"length" | "count">): z.ZodNumber => z.number().min(least).max(most);
const whole = (bounds: Bounds<"count">): z.ZodNumber => within(bounds).int();

const FAR = 1_000_000;
const place = z.number().min(-FAR).max(FAR);
const side = z.number().min(1e-6).max(FAR);

const wish = z.strictObject({
  crop: z
    .union([z.enum(["canvas", "drawing"]), z.strictObject({ x: place, y: place, width: side, height: side })])
    .optional(),
  marks: z
    .array(
      z.strictObject({
        name: z.string().min(1).max(TEXT.name),
        selector: selectorSchema,
        level: z.int().min(0).max(BOUNDS.levels.most),
      }),
    )
    .max(60)
    .readonly()
    .optional(),
  parting: z
    .strictObject({
      trace: z.enum(TRACES),
      near: z.enum(NEARS).optional(),
      limits: z.array(whole(LIMIT)).min(1).max(MOST_PARTED).readonly().optional(),
      tolerance: within(TOLERANCE).optional(),
      least: within(LEAST).optional(),
      levels: z.int().min(2).max(MOST_PARTED).optional(),
    })
    .optional(),
});

/** Names a picture that was brought, for as long as the desk runs. */
export const uploadName = z.string().regex(/^[0-9a-f-]{36}$/);

const picture = z.discriminatedUnion("from", [
  z.strictObject({ from: z.literal("brought"), upload: uploadName, wish }),
  z.strictObject({
    from: z.literal("word"),
    text: z.string().min(1).max(1440),
    font: z.string().min(1).max(TEXT.name).optional(),
  }),
  z.strictObject({ from: z.literal("outline"), name: z.enum(OUTLINES) }),
  z.strictObject({ from: z.literal("icon"), name: z.string().min(1).max(TEXT.name) }),
]);

const leaf = whole(BOUNDS.leaf) as z.ZodType<number> as z.ZodType<LeafNumber>;

export const newKitForm = z.strictObject({
  slug: z.string().max(200),
  title: z.string().trim().min(1).max(TEXT.title),
  picture,
  book: z.strictObject({
    leafHeight: within(BOUNDS.leafHeight),
    leafWidth: within(BOUNDS.leafWidth),
    blockThickness: within(BOUNDS.blockThickness),
    leaves: whole(BOUNDS.leaves),
    pageOneLeaf: leaf.optional(),
    lastPage: whole(BOUNDS.page).optional(),
  }),
  light: z.strictObject({ diameter: within(BOUNDS.lightDiameter), height: within(BOUNDS.lightHeight) }).optional(),
  relief: z.enum(["raised", "hollow"]).optional(),
  units: z.enum(["mm", "in"]),
  draft: z.boolean(),
  /** The height that fitted last, mm: the picture is drawn for it first. */
  near: z.number().positive().max(BOUNDS.pictureHeight.most).optional(),
});

export type NewKitForm = z.output<typeof newKitForm>;
