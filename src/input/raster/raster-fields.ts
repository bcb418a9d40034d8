import type { z } from "zod";
import * as say from "../../words/messages.ts";
import { choice, count, leftOut, length, list } from "../files/schema-fields.ts";
import { RASTER_USUAL } from "./raster-plan.ts";

const TOLERANCE = { kind: "length", least: 0.02, most: 5 } as const;
const LEAST = { kind: "length", least: 0, most: 50 } as const;
const LIMIT = { kind: "count", least: 0, most: 254 } as const;
/** Limits between the most levels that a kit may have. */
const MOST_LIMITS = 8;

/** Keys of a picture that is a raster file. */
export const rasterFields = {
  trace: leftOut(choice(say.fieldRasterTrace, ["silhouette", "tones", "depth", "colours"]), say.fieldRasterTraceUsual),
  near: leftOut(choice(say.fieldRasterNear, ["dark", "light"]), say.fieldRasterNearUsual),
  limits: leftOut(
    list(say.fieldRasterLimits, count(say.fieldRasterLimit, LIMIT), 1, MOST_LIMITS),
    say.fieldRasterLimitsUsual,
  ),
  tolerance: leftOut(length(say.fieldRasterTolerance, TOLERANCE), () =>
    say.fieldRasterMm({ mm: String(RASTER_USUAL.tolerance) }),
  ),
  least: leftOut(length(say.fieldRasterLeast, LEAST), () => say.fieldRasterMm({ mm: String(RASTER_USUAL.least) })),
} satisfies z.ZodRawShape;
