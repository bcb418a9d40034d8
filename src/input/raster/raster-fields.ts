import type { z } from "zod";
import * as say from "../../words/messages.ts";
import { choice, count, leftOut, length, list } from "../files/schema-fields.ts";
import { LEAST, LIMIT, NEARS, TOLERANCE, TRACES } from "./raster-bounds.ts";
import { RASTER_USUAL } from "./raster-plan.ts";

/** Limits between the most levels that a kit may have. */
const MOST_LIMITS = 8;

/** Keys of a picture that is a raster file. */
export const rasterFields = {
  trace: leftOut(choice(say.fieldRasterTrace, TRACES), say.fieldRasterTraceUsual),
  near: leftOut(choice(say.fieldRasterNear, NEARS), say.fieldRasterNearUsual),
  limits: leftOut(
    list(say.fieldRasterLimits, count(say.fieldRasterLimit, LIMIT), 1, MOST_LIMITS),
    say.fieldRasterLimitsUsual,
  ),
  tolerance: leftOut(length(say.fieldRasterTolerance, TOLERANCE), () =>
    say.fieldRasterMm({ mm: String(RASTER_USUAL.tolerance) }),
  ),
  least: leftOut(length(say.fieldRasterLeast, LEAST), () => say.fieldRasterMm({ mm: String(RASTER_USUAL.least) })),
} satisfies z.ZodRawShape;
