import { z } from "zod";
import { SHARED_TOOLS } from "../../core/class/kit-class.ts";
import { BOUNDS } from "../../core/kit/bounds.ts";
import * as say from "../../words/messages.ts";
import { FACTS } from "../files/schema-facts.ts";
import { amount, choice, count, described, leftOut, list, number, reference, words } from "../files/schema-fields.ts";
import type { JsonSchema } from "../files/schema-messages.ts";
import { TEXT } from "../files/text-bounds.ts";
import { sheetSizes } from "../kit/schema-window.ts";
import { classPrices, packList, sheetPriceList } from "./schema-prices.ts";
import { pace, seatBook, seatSchema } from "./schema-seat.ts";

/** The front matter of a class, as teachers write it. */

const date = (about: () => string) =>
  z.iso
    .date()
    .meta(described(() => say.fieldDate({ about: about() })))
    .register(FACTS, { about });

const minutes = (about: () => string, least = 0) =>
  z
    .number()
    .min(least)
    .max(1440)
    .meta(described(() => say.fieldMinutes({ about: about(), least: String(least), most: "1440" })))
    .register(FACTS, { about, measure: "minutes" });

const session = z
  .strictObject({
    title: words(say.fieldSessionTitle, TEXT.name).optional(),
    date: leftOut(date(say.fieldSessionDate), say.fieldSessionDateUsual),
    starts: z
      .string()
      .regex(/^([01]\d|2[0-3]):[0-5]\d$/)
      .optional()
      .meta(described(say.fieldSessionStarts)),
    minutes: minutes(say.fieldSessionMinutes, 5),
    aside: minutes(say.fieldSessionAside).default(15),
    buffer: minutes(say.fieldSessionBuffer).default(0),
  })
  .refine((one) => one.aside + one.buffer < one.minutes, {
    path: ["aside"],
    params: { fault: { kind: "whole-session" } },
  })
  .meta(described(say.fieldSession));

/** Turns at fewer tools than seats. */
const tools = z
  .partialRecord(z.enum(SHARED_TOOLS), count(say.fieldTool, BOUNDS.seat))
  .meta(described(() => say.fieldTools({ keys: SHARED_TOOLS.join(", ") })));

const spare = z
  .strictObject({
    label: words(say.fieldSpareLabel, TEXT.name),
    book: seatBook,
  })
  .meta(described(say.fieldSpare));

const stock = z
  .strictObject({
    item: words(say.fieldStockItem, TEXT.line),
    quantity: amount(say.fieldStockQuantity),
  })
  .meta(described(say.fieldStockEntry));

export const classMatter = z
  .strictObject({
    from: leftOut(reference(say.fieldClassFrom), say.fieldClassFromUsual),
    title: words(say.fieldClassTitle, TEXT.title),
    summary: words(say.fieldClassSummary, TEXT.summary).optional(),
    date: date(say.fieldClassDate),
    announced: leftOut(date(say.fieldClassAnnounced), say.fieldClassAnnouncedUsual),
    place: words(say.fieldClassPlace, TEXT.line),
    units: choice(say.fieldUnits, ["mm", "in"]).default("mm"),
    paper: choice(say.fieldClassPaper, ["a4", "letter"]).default("a4"),
    kits: z.array(reference(say.fieldClassKit)).min(1).max(12).meta(described(say.fieldClassKits)),
    books: reference(say.fieldClassBooks).optional(),
    places: leftOut(count(say.fieldClassPlaces, BOUNDS.seat), say.fieldClassPlacesUsual),
    seats: z.array(seatSchema).max(BOUNDS.seat.most).default([]).meta(described(say.fieldClassSeats)),
    state: leftOut(choice(say.fieldClassState, ["held", "closed"]), say.fieldClassStateUsual),
    sessions: z.array(session).min(1).max(40).meta(described(say.fieldClassSessions)),
    tools: tools.default({}),
    pace: pace(say.fieldClassPace).default(1),
    packet: choice(say.fieldClassPacket, ["compact", "whole", "bench"]).default("compact"),
    ready: z
      .array(choice(say.fieldReadyStage, ["scores", "parts"]))
      .max(2)
      .default([])
      .meta(described(say.fieldReady)),
    fittingShare: number(say.fieldFittingShare, 0, 1).default(0.5),
    sheets: leftOut(sheetSizes, say.fieldSheetsUsual),
    waste: number(say.fieldClassWaste, 0, 1).default(0.1),
    prices: classPrices.default({}),
    sheetPrices: sheetPriceList.default([]),
    packs: packList.default({}),
    currency: words(say.fieldCurrency, TEXT.currency).optional(),
    stock: list(say.fieldStock, stock, 0, 200).default([]),
    spares: list(say.fieldSpares, spare, 0, 40).default([]),
    bring: list(say.fieldBring, words(say.fieldBringItem, TEXT.line), 0, 40).default([]),
  })
  .meta({
    title: "Leaflight class",
    get description() {
      return say.fieldClass();
    },
  });

export type ClassMatter = z.output<typeof classMatter>;

/** The JSON Schema (draft 2020-12) of what teachers write, in the language that is spoken. */
export function classJsonSchema(): JsonSchema & Record<string, unknown> {
  const { required, ...schema } = z.toJSONSchema(classMatter, { io: "input", target: "draft-2020-12" });
  // What another class states is taken over, but for the day.
  const either = [{ required }, { required: ["from", "date"] }];
  return { ...schema, anyOf: either } as JsonSchema & Record<string, unknown>;
}

export function classSchemaText(): string {
  return `${JSON.stringify(classJsonSchema(), null, 2)}\n`;
}
