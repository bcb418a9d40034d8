import { z } from "zod";
import * as say from "../../words/messages.ts";
import { described, number } from "../files/schema-fields.ts";

/** Further than canvases reach. */
const MOST = 1_000_000;

/** A crop as authors write it. */
export const cropSchema = z
  .union([
    z.enum(["canvas", "drawing"]),
    z.strictObject({
      x: number(say.cropXField, -MOST, MOST),
      y: number(say.cropYField, -MOST, MOST),
      width: number(say.cropWidthField, 1e-6, MOST),
      height: number(say.cropHeightField, 1e-6, MOST),
    }),
  ])
  .meta(described(() => say.cropField()));
