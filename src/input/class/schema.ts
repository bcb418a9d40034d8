import { z } from "zod";
import { choice, count, length, words } from "../files/schema-fields.ts";
import type { JsonSchema } from "../files/schema-messages.ts";
import { bookFields, priceList, sheetSizes } from "../kit/schema.ts";

/** The front matter of a class, as teachers write it. */

/** Columns of the books table that say how the kit is matched to it. */
export const FIT_COLUMNS = ["height", "head", "borderBefore", "borderAfter", "foldStyle"] as const;

const date = (description: string) =>
  z.iso.date().meta({ description: `${description} A day of the calendar as YYYY-MM-DD: 2027-01-14.` });

const minutes = (description: string, least = 0) =>
  z
    .number()
    .min(least)
    .max(1440)
    .meta({ description: `${description} Minutes, ${least} to 1440.` });

const share = (description: string) =>
  z
    .number()
    .min(0)
    .max(1)
    .meta({ description: `${description} A number, 0 to 1.` });

const pace = (description: string) =>
  z
    .number()
    .min(0.2)
    .max(5)
    .meta({ description: `${description} A number, 0.2 to 5; 1 is the kit's own estimate.` });

const seatBook = bookFields
  .omit({ square: true, boardThickness: true })
  .meta({ description: "The book of this seat, measured as in a kit." });

const seatFit = z
  .strictObject({
    height: length("Picture height on this seat's book.", 5, 600).optional(),
    head: length("Head edge to the picture's top.", 0, 600).optional(),
    borderLeaves: z
      .tuple([count("Whole leaves before the picture.", 0, 1000), count("Whole leaves after the picture.", 0, 1000)])
      .optional()
      .meta({ description: "Whole leaves before and after the picture: [8, 8]." }),
    foldStyle: choice("How flaps are folded.", ["single", "stepped"]).optional(),
    depths: z
      .array(length("Depth of a level.", 1, 200))
      .min(2)
      .max(9)
      .optional()
      .meta({ description: "Depths of all levels, front to back: [16, 24, 36]." }),
  })
  .meta({ description: "How the kit is matched to this seat's book; what is left out stays as the kit has it." });

const seatLight = z
  .strictObject({
    diameter: length("Diameter of this seat's light.", 5, 150).optional(),
    height: length("Height of this seat's light.", 5, 300).optional(),
  })
  .meta({ description: "This seat's own light, where it is not the kit's." });

const seat = z
  .strictObject({
    seat: count("The seat's number; never a name.", 1, 200),
    kit: words("The kit of this seat; left out: the class's first.").optional(),
    book: seatBook.optional(),
    fit: seatFit.optional(),
    light: seatLight.optional(),
    pace: pace("This seat's own pace instead of the group's.").optional(),
  })
  .meta({ description: "A seat: its number, and its book here or in the books table." });

const session = z
  .strictObject({
    title: words("What the session is called.").optional(),
    date: date("Day of the session.").optional(),
    starts: z
      .string()
      .regex(/^([01]\d|2[0-3]):[0-5]\d$/)
      .optional()
      .meta({ description: 'When it starts: "18:30", in quotes.' }),
    minutes: minutes("How long the session is.", 5),
    aside: minutes("Of these, not spent on the work: welcome, cautions, clearing away.").default(15),
  })
  .refine((one) => one.aside < one.minutes, { path: ["aside"], message: "is as long as the session" })
  .meta({ description: "An evening or a morning of the class." });

const stock = z
  .strictObject({
    item: words("A supply as the shopping list names it."),
    quantity: z.number().positive().meta({ description: "How much is at hand, in the list's unit. A number above 0." }),
  })
  .meta({ description: "Something that is at hand and need not be bought." });

export const classMatter = z
  .strictObject({
    title: words("The class's name."),
    summary: words("One line for the list of classes.").optional(),
    date: date("Day of the class, or of its first session."),
    place: words("Where it is held."),
    units: choice("Units of page and packet.", ["mm", "in"]).default("mm"),
    paper: choice("Paper that the packets are printed on.", ["a4", "letter"]).default("a4"),
    kits: z.array(words("A kit's folder name.")).min(1).max(12).meta({
      description:
        "Folder names of the kits that the class offers; seats take the first unless they say: [harbour-moon].",
    }),
    books: words("A table of the seats' books (CSV) beside index.md.").optional(),
    seats: z.array(seat).max(200).default([]).meta({ description: "The seats, each with a number and a book." }),
    sessions: z.array(session).min(1).max(40).meta({ description: "The sessions in order, each with its minutes." }),
    pace: pace("How many times the kits' estimate this group takes.").default(1),
    ready: z
      .array(choice("A stage that the teacher does before the class.", ["scores", "parts"]))
      .max(2)
      .default([])
      .meta({
        description: "What the teacher has ready: scores (all lines pressed), parts (window parts cut out): [parts].",
      }),
    fittingShare: share("Share of a window part's time that is left when it is cut out already.").default(0.5),
    sheets: sheetSizes.optional(),
    waste: share("Share added to tape and string for waste.").default(0.1),
    prices: priceList.default({}),
    currency: words("Currency of the prices.").optional(),
    stock: z.array(stock).default([]).meta({ description: "What is at hand: [{ item: card, quantity: 4 }]." }),
    bring: z
      .array(words("Something to bring."))
      .default([])
      .meta({ description: "What students bring beside their book." }),
  })
  .meta({ title: "Leaflight class", description: "Front matter of content/classes/<slug>/index.md." });

export type ClassMatter = z.output<typeof classMatter>;

/** A row of the books table after its texts were read. */
export const bookRow = z.strictObject({ ...seat.shape, fit: seatFit.optional() });

/** The JSON Schema (draft 2020-12) of what teachers write. */
export function classJsonSchema(): JsonSchema & Record<string, unknown> {
  return z.toJSONSchema(classMatter, { io: "input", target: "draft-2020-12" }) as JsonSchema & Record<string, unknown>;
}

export function classSchemaText(): string {
  return `${JSON.stringify(classJsonSchema(), null, 2)}\n`;
}
