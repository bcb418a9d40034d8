import * as z from "zod/mini";
import type { Tick } from "../../core/bench/progress.ts";
import type { ProgressValue } from "../../core/bench/progress-failure.ts";
import { type LeafNumber, leafNumber } from "../../core/book/leaf-number.ts";
import { BOUNDS } from "../../core/kit/bounds.ts";

/** The schema's name in a progress file; its number grows when old files can no longer be read. */
export const PROGRESS_SCHEMA = "leaflight/progress/1";

/** The message of an issue is what is allowed there; see `ProgressValue`. */
const allowed = (error: ProgressValue): { readonly error: ProgressValue } => ({ error });

const text = z.string(allowed("text"));
const leaves = z
  .int(allowed("leaf"))
  .check(z.minimum(BOUNDS.leaf.least, allowed("leaf")), z.maximum(BOUNDS.leaf.most, allowed("leaf")));
const leaf = z.pipe(leaves, z.transform(leafNumber));
const amount = z.number(allowed("amount")).check(z.minimum(0, allowed("amount")));
const thickness = z.number(allowed("amount")).check(z.minimum(0, allowed("amount")), z.gt(0, allowed("thickness")));

/** An issue of this code is a leaf that stands twice in a list; its parameter says which. */
function eachLeafOnce<T extends { readonly leaf: LeafNumber }>(): z.core.CheckFn<T[]> {
  return ({ value, issues }) => {
    const seen = new Set<LeafNumber>();
    const twice = value.find((one) => seen.size === seen.add(one.leaf).size);
    if (twice) issues.push({ code: "custom", input: value, params: { twice: twice.leaf } });
  };
}

const tick = z.pipe(
  z.tuple([leaf, amount], z.unknown(), allowed("list")),
  z.transform(([at, took]): Tick => ({ leaf: at, took })),
);

const ticks = z.pipe(
  z.array(tick, allowed("list")).check(eachLeafOnce()),
  z.transform((list) => list.toSorted((a, b) => a.leaf - b.leaf)),
);

const names = z.array(text, allowed("list"));

const lost = z
  .array(z.object({ leaf, cleared: ticks, undone: z.optional(names) }, allowed("object")), allowed("list"))
  .check(eachLeafOnce());

/** Files once told of what was glued last alone. */
const glued = z.pipe(
  z.transform((value: unknown) => (Array.isArray(value) ? value : [value])),
  z.array(z.object({ item: text, at: amount }, allowed("object")), allowed("list")),
);

/** What says whose progress a file is. */
export const headingSchema = z.object({ schema: z.literal(PROGRESS_SCHEMA), kit: text, fit: text }, allowed("object"));

/** A whole progress file. */
export const progressSchema = z.object(
  {
    kit: text,
    fit: text,
    revision: text,
    at: leaf,
    item: z.optional(text),
    ticks,
    passed: names,
    lost,
    measured: z.optional(z.object({ thickness, leaves, flaps: z.optional(leaves) }, allowed("object"))),
    glued: z.optional(glued),
    sitting: z.optional(z.object({ began: amount, worked: amount, until: z.optional(amount) }, allowed("object"))),
    clock: z.object({ worked: amount, seen: amount, ticked: amount }, allowed("object")),
  },
  allowed("object"),
);
