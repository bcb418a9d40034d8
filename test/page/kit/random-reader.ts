import { fc } from "../../seed.ts";

/** One figure, as a reader writes it into a field of the panel, and as an author writes it at a place of the front matter. */
export interface Written {
  readonly field: string;
  readonly text: string;
  readonly path: readonly (string | number)[];
  readonly yaml: unknown;
}

/** A kit of the fixtures on a book of somebody's own. */
export interface Reader {
  readonly slug: string;
  readonly written: readonly Written[];
}

/** Kits that state their height: one is in inches, and one, which takes longest, has a light and a window. */
export const SLUGS = ["little-gull", "evening-boat", "tide-and-lamp", "harbour-moon"] as const;

type Figure = fc.Arbitrary<Written>;

/** Mostly a figure near the kit's own; now and then any, within or beyond what the guide allows. */
const near = (own: number, any: fc.Arbitrary<number>) =>
  fc.oneof({ weight: 6, arbitrary: fc.double({ min: 0.7, max: 1.4, noNaN: true }).map((share) => own * share) }, any);

/** Lengths are written with their unit, in millimetres to the hundredth or in 16ths of an inch: that is the same on page and paper. */
function length(field: string, path: Written["path"], own: number, least: number, most: number): Figure {
  const any = fc.oneof(
    fc.constantFrom(least, most, least - 0.01, most + 0.01, -own),
    fc.double({ min: 0, max: most * 1.2, noNaN: true }),
  );
  return fc.tuple(near(own, any), fc.boolean()).map(([mm, inches]) => {
    const sixteenths = Math.round((mm * 16) / 25.4);
    const text =
      inches && sixteenths > 15 ? `${Math.floor(sixteenths / 16)} ${sixteenths % 16}/16 in` : `${mm.toFixed(2)} mm`;
    return { field, text, path, yaml: text };
  });
}

function count(field: string, path: Written["path"], own: number, least: number, most: number): Figure {
  const any = fc.oneof(fc.constantFrom(least, most, least - 1, most + 1), fc.integer({ min: -3, max: most + 3 }));
  return fc
    .oneof({ weight: 6, arbitrary: near(own, any).map(Math.round) }, fc.constant(own + 0.5))
    .map((value) => ({ field, text: String(value), path, yaml: value }));
}

function word(field: string, path: Written["path"], words: readonly string[]): Figure {
  return fc.constantFrom(...words, "neither").map((text) => ({ field, text, path, yaml: text }));
}

/** Up to two plates, after pages near the kit's own or anywhere, and now and then none of the form. */
function plates(last: number): Figure {
  const plate = fc.record({
    afterPage: near(last, fc.integer({ min: 0, max: 10_001 })).map(Math.round),
    leaves: fc.oneof({ weight: 5, arbitrary: fc.integer({ min: 1, max: 8 }) }, fc.integer({ min: 0, max: 501 })),
  });
  return fc.array(plate, { maxLength: 2 }).map((yaml) => ({
    field: "plates",
    text: yaml.map(({ afterPage, leaves }) => `${afterPage} × ${leaves}`).join(", "),
    path: ["book", "plates"],
    yaml,
  }));
}

function borders(): Figure {
  const border = fc.oneof(
    { weight: 9, arbitrary: fc.integer({ min: 0, max: 40 }) },
    fc.integer({ min: -1, max: 1001 }),
  );
  return fc
    .tuple(border, border)
    .map((yaml) => ({ field: "borderLeaves", text: yaml.join(", "), path: ["fit", "borderLeaves"], yaml }));
}

/** Own measures of the kits, mm: of a book of each, of its picture and its levels. Bounds are those that the guide states. */
const OWN = {
  "little-gull": { book: [178, 108, 12.5, 112, 3, 218], height: 125, depths: [12, 24] },
  "evening-boat": { book: [234, 153, 22, 208, 4, 408], height: 144, depths: [15, 27, 39] },
  "tide-and-lamp": { book: [203.2, 133.35, 25.4, 232, 5, 436], height: 127, depths: [12.7, 19.05, 25.4, 34.925] },
  "harbour-moon": { book: [216, 140, 24, 204, 5, 399], height: 130, depths: [18, 26, 42] },
} as const;

function figuresOf(slug: (typeof SLUGS)[number]): Figure[] {
  const { book, height, depths } = OWN[slug];
  const light = slug === "harbour-moon";
  return [
    length("leafHeight", ["book", "leafHeight"], book[0], 40, 600),
    length("leafWidth", ["book", "leafWidth"], book[1], 30, 500),
    length("blockThickness", ["book", "blockThickness"], book[2], 1, 200),
    count("leaves", ["book", "leaves"], book[3], 4, 3000).filter(
      ({ yaml }) => (yaml as number) < 400 || (yaml as number) > 2999,
    ),
    count("pageOneLeaf", ["book", "pageOneLeaf"], book[4], 1, 3000),
    count("lastPage", ["book", "lastPage"], book[5], 1, 10_000),
    plates(book[5]),
    word("direction", ["book", "direction"], ["ltr", "rtl"]),
    borders(),
    length("height", ["fit", "height"], height, 5, 600),
    ...depths.map((depth, i) => length(`depth${i}`, ["levels", i, "depth"], depth, 1, 200)),
    word("foldStyle", ["fit", "foldStyle"], ["single", "stepped"]),
    length("markStep", ["fit", "markStep"], 0.5, 0.1, 5),
    ...(light ? [length("lightDiameter", ["light", "diameter"], 38, 5, 150)] : []),
    ...(light ? [length("lightHeight", ["light", "height"], 45, 5, 300)] : []),
  ];
}

/** A reader who writes some figures of her book and leaves the rest as the kit has them. */
export const anyReader: fc.Arbitrary<Reader> = fc
  .constantFrom(...SLUGS)
  .chain((slug) =>
    fc
      .tuple(...figuresOf(slug).map((figure) => fc.oneof({ weight: 2, arbitrary: fc.constant(undefined) }, figure)))
      .map((written) => ({ slug, written: written.filter((one) => one !== undefined) })),
  );
