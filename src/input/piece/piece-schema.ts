import * as z from "zod/mini";
import type { ProgressValue } from "../../core/bench/progress-failure.ts";
import { leafNumber } from "../../core/book/leaf-number.ts";
import { BOUNDS } from "../../core/kit/bounds.ts";
import { PIECE_LENGTHS } from "../../core/piece/piece.ts";
import { progressSchema } from "../progress/progress-schema.ts";

/** The schema's name in a file of pieces; its number grows when old files can no longer be read. */
export const PIECES_SCHEMA = "leaflight/pieces/1";

/** The message of an issue is what is allowed there; see `ProgressValue`. */
const allowed = (error: ProgressValue): { readonly error: ProgressValue } => ({ error });

const text = (error: ProgressValue, most: number) => z.string(allowed(error)).check(z.maxLength(most, allowed(error)));
const named = (error: ProgressValue, form: RegExp) => z.string(allowed(error)).check(z.regex(form, allowed(error)));
const whole = (error: ProgressValue, least: number, most: number) =>
  z.int(allowed(error)).check(z.minimum(least, allowed(error)), z.maximum(most, allowed(error)));

const id = named("id", /^[0-9a-z-]{1,64}$/i);
const slug = named("slug", /^[a-z0-9-]{1,100}$/);
const count = whole("count", 0, 1e9);
const instant = named("instant", /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?Z$/).check(
  z.refine((one) => !Number.isNaN(Date.parse(one)), allowed("instant")),
);

const summary = z.object(
  {
    done: count,
    of: z.optional(count),
    percent: z.optional(whole("percent", 0, 100)),
    leaf: z.optional(
      z.pipe(
        z
          .int(allowed("leaf"))
          .check(z.minimum(BOUNDS.leaf.least, allowed("leaf")), z.maximum(BOUNDS.leaf.most, allowed("leaf"))),
        z.transform(leafNumber),
      ),
    ),
    page: z.optional(count),
  },
  allowed("object"),
);

/** A piece as it stands in a file and in a device's storage. */
export const pieceSchema = z.object(
  {
    id,
    kit: slug,
    title: text("short", PIECE_LENGTHS.title),
    number: whole("count", 1, 1e6),
    name: text("short", PIECE_LENGTHS.name),
    address: named("address", /^[\w.~=&-]{0,2000}$/),
    notes: text("notes", PIECE_LENGTHS.notes),
    begun: instant,
    last: instant,
    edition: text("short", PIECE_LENGTHS.title),
    declined: z.optional(text("short", PIECE_LENGTHS.title)),
    versions: z.record(id, count, allowed("object")),
    summary,
    progress: progressSchema,
  },
  allowed("object"),
);

/** A whole file of pieces. */
export const piecesSchema = z.object(
  { schema: z.literal(PIECES_SCHEMA), pieces: z.array(pieceSchema, allowed("list")) },
  allowed("object"),
);
