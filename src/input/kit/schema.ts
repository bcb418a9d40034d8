import { z } from "zod";
import { LENGTH_HELP } from "../../core/units/length.ts";
import { choice, count, length, seconds, words } from "../files/schema-fields.ts";

/**
 * The front matter of a kit, as authors write it. Descriptions say what is allowed: they appear in error messages,
 * in the published JSON Schema and so in editors.
 */

/** Computed supplies that a kit may price. */
export const PRICED = [
  "book",
  "card",
  "acetate",
  "tape",
  "glueDots",
  "string",
  "button",
  "light",
  "cells",
  "blades",
] as const;

const solvable = z.literal("solve");

const picture = z
  .strictObject({
    file: words("The SVG picture beside index.md, as a path inside the kit folder."),
    levels: z
      .record(
        z.string(),
        z
          .array(
            z
              .string()
              .regex(/^#\S+$/)
              .meta({ description: "The id of a shape or group, with its #." }),
          )
          .min(1)
          .meta({ description: 'Ids of shapes or groups, each with its #: ["#rim", "#wave"].' }),
      )
      .meta({ description: "Which shapes belong to which level: a level's name and the ids under it." }),
  })
  .meta({ description: "Where the picture is and which of its shapes lie at which level." });

const level = z
  .strictObject({
    name: words("The level's name, used on page and packet."),
    depth: length("Distance of the fold from the fore-edge.", 1, 200).optional(),
    line: count("Number of a gauge line, 1 for the first of gauge.lines.", 1, 40).optional(),
    background: z
      .boolean()
      .optional()
      .meta({ description: "true on the level that stands where no shape is. true or false." }),
  })
  .meta({ description: "A depth of the picture: name, and either depth or line." });

const gauge = z
  .strictObject({
    lines: z
      .array(length("Distance of a gauge line from the fore-edge.", 1, 200))
      .min(1)
      .max(40)
      .meta({ description: "Distances of the gauge's lines from the fore-edge, line 1 first, increasing." }),
    tile: length("Thickness of one of your own packing tiles, for the support table.", 0.1, 50).optional(),
  })
  .meta({ description: "The scoring gauge: its lines, and the tiles that support the working side." });

export const plate = z
  .strictObject({
    afterPage: count("Printed page that the plates follow.", 1, 10000),
    leaves: count("How many unnumbered leaves.", 1, 500),
  })
  .meta({ description: "Unnumbered leaves bound in after a printed page." });

export const bookFields = z
  .strictObject({
    leafHeight: length("Head to tail of a leaf.", 40, 600),
    leafWidth: length("Fore-edge to gutter, as far as the leaf can be used.", 30, 500),
    blockThickness: length("All leaves pressed together, without the boards.", 1, 200),
    leaves: count("Leaves of the book (a leaf is two pages).", 4, 3000),
    pageOneLeaf: count("The leaf whose front carries printed page 1, counted from 1.", 1, 3000).default(1),
    lastPage: count("The last printed page number.", 1, 10000).optional(),
    plates: z
      .array(plate)
      .default([])
      .meta({ description: "Unnumbered leaves between the pages; [] where there are none." }),
    direction: choice("Reading direction.", ["ltr", "rtl"]).default("ltr"),
    square: length("How far a board stands beyond the leaves.", 0, 20).default(3),
    boardThickness: length("Thickness of one board.", 0, 10).default(2.5),
  })
  .meta({ description: "The closed book's measurements." });

const fit = z
  .strictObject({
    borderLeaves: z
      .tuple([count("Whole leaves before the picture.", 0, 1000), count("Whole leaves after the picture.", 0, 1000)])
      .default([10, 10])
      .meta({ description: "Whole leaves before and after the picture, folded at the background depth: [12, 12]." }),
    pictureLeaves: z
      .union([
        choice("fill: all between the borders; solve: as many as the shape needs.", ["fill", "solve"]),
        count("Picture leaves.", 2, 3000),
      ])
      .default("fill")
      .meta({ description: "Leaves that carry the picture: fill, solve, or a whole number from 2." }),
    head: length(
      "Head edge to the picture's top, on the front level. Left out: the picture is centred.",
      0,
      600,
    ).optional(),
    height: z
      .union([solvable, length("Displayed height of the picture.", 5, 600)])
      .meta({ description: `Displayed height of the picture: solve, or ${LENGTH_HELP}.` }),
    opening: z
      .union([solvable, z.number().min(5).max(360)])
      .optional()
      .meta({ description: "Opening of the book in degrees, 5 to 180 (to 360 with view: along), or solve." }),
    view: choice("front: true shape as seen from the front; along: for pieces read while walking round.", [
      "front",
      "along",
    ]).default("front"),
    spine: choice("How the spine lies in the opened book.", ["flat", "rounded"]).default("flat"),
    markStep: length("Marks are rounded to this step (0.5, 1, 1/32 in, 1/16 in).", 0.1, 5).optional(),
    leastTab: length("Spans shorter than this are absorbed into a neighbour.", 0, 30).default(3),
    foldStyle: choice("single: each span is folded once; stepped: the whole leaf at the front line first.", [
      "single",
      "stepped",
    ]).default("single"),
    gutterClearance: length("Paper to leave between a flap and the gutter.", 0, 100).default(5),
    flapBulk: z
      .number()
      .min(0)
      .max(20)
      .default(2)
      .meta({ description: "How many leaf thicknesses a springy flap counts. A number, 0 to 20." }),
    batch: count("Most leaves worked before a pause.", 5, 60).default(20),
    lostLeaves: z
      .array(count("A leaf of the book.", 1, 3000))
      .default([])
      .meta({
        description: "Leaves that were skipped or torn: the picture is closed over the leaves after each. [87].",
      }),
  })
  .meta({
    description: "How the picture is matched to the book. At most one of pictureLeaves, height and opening is solve.",
  });

const light = z
  .strictObject({
    in: words("Level in whose region the light stands; left out: the deepest.").optional(),
    diameter: length("Diameter of the light, measured at its widest.", 5, 150),
    height: length("Height of the light with its tip.", 5, 300),
    clearance: length("Free space all round.", 0, 20).default(1),
    setback: length("How far the light stands behind the front.", 0, 100).default(4),
    floor: z
      .union([z.literal("auto"), length("Height of the floor it stands on, from the head.", 0, 600)])
      .default("auto")
      .meta({ description: `Floor of the pocket, measured from the head: auto, or ${LENGTH_HELP}.` }),
    cells: words("The cells it takes, for the supplies: CR2032, 2 × AAA …").optional(),
  })
  .meta({ description: "A battery LED light that stands inside the book: an upright cylinder." });

const insert = z
  .strictObject({
    outline: words("Level whose outline the window's frame follows."),
    lip: length("How far the frame reaches beyond the outline, and into the opening.", 2, 30).default(3),
    hinge: choice("Side of the door's hinge.", ["left", "right"]).default("left"),
    panel: choice("wrap: parts are unrolled along the front, for card that bends; flat: as seen from the front.", [
      "wrap",
      "flat",
    ]).default("wrap"),
  })
  .meta({ description: "The window that closes the opening: base frame, glazing, door." });

const sheet = z
  .strictObject({
    name: words("The sheet's name."),
    width: length("Width of the sheet.", 50, 2000),
    height: length("Height of the sheet.", 50, 2000),
  })
  .meta({ description: "A sheet of your own size." });

export const sheetSizes = z
  .array(z.union([z.enum(["a4", "letter", "12x12"]), sheet]))
  .min(1)
  .max(6)
  .meta({
    description:
      "Sheets that parts are laid on; supplies are counted with the first. a4, letter, 12x12, or { name, width, height }.",
  });

export const priceList = z
  .partialRecord(
    z.enum(PRICED),
    z.number().min(0).meta({ description: "A price for one of it. A number, 0 or more, with a point: 0.35." }),
  )
  .meta({ description: `Your prices for one of each. Keys: ${PRICED.join(", ")}.` });

const rates = z
  .strictObject({
    leaf: seconds("Turning to a leaf and reading its row.").default(12),
    score: seconds("Pressing one score line.").default(6),
    mark: seconds("Making one mark.").default(4),
    cut: seconds("Making one cut.").default(6),
    fold: seconds("Folding and tucking one span.").default(10),
    check: seconds("Checking at a checkpoint.").default(20),
    tack: seconds("Glueing one tack.").default(15),
    notch: seconds("Cutting one notch of the light's pocket.").default(25),
    part: seconds("Cutting out and fitting one part of the window.").default(420),
  })
  .meta({ description: "Your own working times; the hours of the kit follow from them." });

const supply = z
  .strictObject({
    item: words("What it is."),
    quantity: z.number().positive().default(1).meta({ description: "How much. A number above 0." }),
    unit: words("Of what: pieces, sheets, mm …").default("pieces"),
    price: z.number().min(0).optional().meta({ description: "Your price for all of it. A number, 0 or more." }),
  })
  .meta({ description: "A supply of the kit's own, beside the computed ones." });

const credit = z
  .strictObject({
    work: words("What the picture is taken from."),
    licence: words("Licence of that work."),
    source: words("Where it comes from."),
    url: z
      .url({ protocol: /^https?$/ })
      .optional()
      .meta({ description: "Address of the source: https://…" }),
  })
  .meta({ description: "Whose picture it is and under which licence; shown on page and packet." });

/** Address on the web. */
const address = (description: string) =>
  z.url({ protocol: /^https?$/ }).meta({ description: `${description} https://… or http://…` });

const licence = z
  .strictObject({
    name: words("Name of the licence, as people know it."),
    url: address("Where the licence can be read.").optional(),
  })
  .meta({ description: "Licence of the kit itself: what others may do with it." });

const link = z
  .strictObject({ label: words("What stands there."), url: address("Where it leads.") })
  .meta({ description: "A link of the author's own: label and url." });

const version = z
  .strictObject({
    version: z
      .string()
      .regex(/^[0-9A-Za-z][0-9A-Za-z.+-]*$/)
      .meta({ description: 'The version\'s name, in quotes so that 1.10 stays 1.10: "1.1"' }),
    date: z.iso.date().meta({ description: "The day it was published: year-month-day, 2026-10-03" }),
    note: words("What changed.").optional(),
  })
  .meta({ description: "A version that was published: version, date, note." });

const photo = z
  .strictObject({
    file: words("A JPEG, PNG, WebP or AVIF photo, as a path inside the kit folder."),
    alt: words("What the photo shows, for those who do not see it."),
  })
  .meta({ description: "A photo of the finished piece or the work." });

export const frontMatter = z
  .strictObject({
    title: words("The kit's name."),
    summary: words("One line for the catalogue."),
    units: choice("Units of page and packet.", ["mm", "in"]).default("mm"),
    versions: z
      .array(version)
      .max(200)
      .default([])
      .meta({ description: "Published versions, newest first; the first is the current one." }),
    licence: licence.optional(),
    links: z.array(link).max(12).default([]).meta({ description: "Links of the author's own, up to 12." }),
    credit: credit.optional(),
    picture,
    photos: z.array(photo).max(12).default([]).meta({ description: "Photos shown with the kit, up to 12." }),
    levels: z.array(level).min(2).max(9).meta({ description: "The depths, front (proudest) to back; 2 to 9 of them." }),
    gauge: gauge.optional(),
    book: bookFields,
    fit,
    light: light.optional(),
    insert: insert.optional(),
    sheets: sheetSizes.optional(),
    waste: z
      .number()
      .min(0)
      .max(1)
      .default(0.1)
      .meta({ description: "Share added to lengths for waste. A number, 0 to 1." }),
    prices: priceList.default({}),
    currency: words("Currency of the prices.").optional(),
    rates: rates.prefault({}),
    supplies: z.array(supply).default([]).meta({ description: "Supplies of the kit's own." }),
  })
  .meta({ title: "Leaflight kit", description: "Front matter of content/kits/<slug>/index.md." });

export type FrontMatter = z.output<typeof frontMatter>;

/** The JSON Schema (draft 2020-12) of what authors write. */
export function kitJsonSchema(): Record<string, unknown> {
  return z.toJSONSchema(frontMatter, { io: "input", target: "draft-2020-12" }) as Record<string, unknown>;
}

/** The JSON Schema as the file that is published and that stands beside the kits. */
export function schemaText(): string {
  return `${JSON.stringify(kitJsonSchema(), null, 2)}\n`;
}
