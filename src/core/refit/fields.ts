import { formatSize } from "../../words/lengths.ts";
import type { Plate } from "../book/book.ts";
import { widestOpening } from "../fit/solve.ts";
import type { Kit } from "../kit/kit.ts";
import { toDegrees } from "../units/angle.ts";
import { LengthError, parseLength, tidy } from "../units/length.ts";
import type { Refit } from "./refit.ts";

/** One line of the fit panel: what is asked, how it is measured, and how its text becomes a figure of the refit. */
export interface Field {
  readonly name: string;
  readonly group: "book" | "fold" | "light";
  readonly label: string;
  readonly help: string;
  /** Choices of a select; undefined for a text. */
  readonly options: readonly { readonly value: string; readonly label: string }[] | undefined;
  /** The text that stands for a refit of the kit. */
  readonly write: (kit: Kit) => string;
  /** The part of the refit that a text asks for. @throws FieldError */
  readonly read: (text: string, kit: Pick<Kit, "units" | "levels">) => Partial<Refit>;
}

/** Why a text cannot be taken. */
export class FieldError extends Error {}

/** All fields of a kit's panel, in order. Lengths without a unit are in the kit's units. */
export function fieldsOf(kit: Kit): Field[] {
  return [...bookFields(), ...foldFields(kit), ...lightFields(kit)];
}

/** The fields of a book, the same for every kit. */
export function bookFields(): Field[] {
  return [
    length(
      "leafHeight",
      "book",
      "Leaf height",
      "Lay the ruler along the fore-edge: head to tail of one leaf, not of the cover.",
      (kit) => kit.book.leafHeight,
      40,
      600,
    ),
    length(
      "leafWidth",
      "book",
      "Leaf width",
      "From the fore-edge to where the leaf disappears in the gutter.",
      (kit) => kit.book.leafWidth,
      30,
      500,
    ),
    length(
      "blockThickness",
      "book",
      "Thickness",
      "All leaves pressed together between two fingers, without the covers.",
      (kit) => kit.book.blockThickness,
      1,
      200,
    ),
    count(
      "leaves",
      "Leaves",
      "Sheets, not pages: half the page count. Count a bundle and measure, or take last page ÷ 2 and add the unnumbered leaves.",
      (kit) => kit.book.leaves,
      4,
      3000,
    ),
    count(
      "pageOneLeaf",
      "Leaf with page 1",
      "Count leaves from the front until the one whose front is page 1.",
      (kit) => kit.book.pageOneLeaf,
      1,
      3000,
    ),
    count("lastPage", "Last page", "The last printed page number.", (kit) => kit.book.lastPage, 1, 10000),
    platesField(),
    select(
      "direction",
      "book",
      "Reads",
      "From which side the book is read.",
      [
        ["ltr", "left to right"],
        ["rtl", "right to left"],
      ],
      (kit) => kit.book.direction,
      (value) => ({ direction: value as "ltr" | "rtl" }),
    ),
  ];
}

function foldFields(kit: Kit): Field[] {
  const depths = kit.levels.map((level, i) =>
    length(
      `depth${i}`,
      "fold",
      `Depth of ${level.name}`,
      "From the fore-edge to your gauge's line.",
      (one) => one.levels[i]!.depth,
      1,
      200,
      (depth, one) => ({ depths: one.levels.map((other, j) => (j === i ? depth : other.depth)) }),
    ),
  );
  const height =
    kit.fit.height === "solve"
      ? []
      : [
          length(
            "height",
            "fold",
            "Picture height",
            "How high the picture shall stand on the front.",
            (one) => one.fit.height as number,
            5,
            600,
          ),
        ];
  return [
    borderField(),
    ...height,
    ...openingField(kit),
    ...depths,
    select(
      "foldStyle",
      "fold",
      "Folds",
      "single: each span once; stepped: the whole leaf at the front line first.",
      [
        ["single", "single"],
        ["stepped", "stepped"],
      ],
      (one) => one.fit.foldStyle,
      (value) => ({ foldStyle: value as "single" | "stepped" }),
    ),
    length(
      "markStep",
      "fold",
      "Mark step",
      "What your ruler shows: 0.5 mm, 1 mm, 1/32 in, 1/16 in.",
      (one) => one.fit.markStep,
      0.1,
      5,
    ),
  ];
}

/** Degrees, where the kit states its opening. */
function openingField(kit: Kit): Field[] {
  if (kit.fit.opening === "solve") return [];
  const most = Math.round(toDegrees(widestOpening(kit.fit.view)));
  return [
    {
      name: "opening",
      group: "fold",
      label: "Opening",
      help: "Degrees between the first and the last leaf of the opened book.",
      options: undefined,
      write: (one) => String(tidy(toDegrees(one.fit.opening as number), 1)),
      read: (text) => {
        const opening = Number(text.replace("°", "").trim());
        if (!(opening >= 1 && opening <= most)) throw new FieldError(`degrees, 1 to ${most}`);
        return { opening };
      },
    },
  ];
}

function lightFields(kit: Kit): Field[] {
  if (!kit.light) return [];
  return [
    length(
      "lightDiameter",
      "light",
      "Light width",
      "Your LED light at its widest.",
      (one) => one.light!.diameter,
      5,
      150,
    ),
    length("lightHeight", "light", "Light height", "With its tip.", (one) => one.light!.height, 5, 300),
  ];
}

function length(
  name: string,
  group: Field["group"],
  label: string,
  help: string,
  value: (kit: Kit) => number,
  least: number,
  most: number,
  refit: (mm: number, kit: Pick<Kit, "levels">) => Partial<Refit> = (mm) => ({ [name]: mm }),
): Field {
  const read = (text: string, kit: Pick<Kit, "units" | "levels">): Partial<Refit> => {
    const mm = readLength(text, kit);
    if (mm < least || mm > most)
      throw new FieldError(`${formatSize(least, kit.units)} to ${formatSize(most, kit.units)}`);
    return refit(mm, kit);
  };
  return {
    name,
    group,
    label,
    help,
    options: undefined,
    write: (kit) => formatSize(value(kit), kit.units).replace("\u00a0", " "),
    read,
  };
}

/** Readers may write a decimal comma, which no length needs for anything else. */
function readLength(given: string, kit: Pick<Kit, "units">): number {
  const text = given
    .trim()
    .replace(/^(\d*),(\d+)/, "$1.$2")
    .replace(/^(\d+)-(?=\d+\/)/, "$1 ")
    .replace(/\s*inch(es)?$/i, " in");
  const bare = /[\d½¼¾⅛⅜⅝⅞]$/.test(text);
  try {
    return parseLength(bare ? `${text} ${kit.units}` : text);
  } catch (error) {
    if (error instanceof LengthError)
      throw new FieldError(
        `a length like ${kit.units === "mm" ? "216, 21.6 cm or 8 1/2 in" : "8 1/2, 8.5 in or 216 mm"}`,
      );
    throw error;
  }
}

function count(
  name: "leaves" | "pageOneLeaf" | "lastPage",
  label: string,
  help: string,
  value: (kit: Kit) => number,
  least: number,
  most: number,
): Field {
  const read = (text: string): Partial<Refit> => {
    const number = Number(text.trim());
    if (!Number.isInteger(number) || number < least || number > most)
      throw new FieldError(`a whole number, ${least} to ${most}`);
    return { [name]: number };
  };
  return { name, group: "book", label, help, options: undefined, write: (kit) => String(value(kit)), read };
}

function select(
  name: string,
  group: Field["group"],
  label: string,
  help: string,
  options: readonly (readonly [string, string])[],
  value: (kit: Kit) => string,
  refit: (value: string) => Partial<Refit>,
): Field {
  return {
    name,
    group,
    label,
    help,
    options: options.map(([one, words]) => ({ value: one, label: words })),
    write: value,
    read: refit,
  };
}

function platesField(): Field {
  return {
    name: "plates",
    group: "book",
    label: "Plates",
    help: "Unnumbered leaves between the pages, as page × leaves: 192 × 4, 300 × 2. Empty where there are none.",
    options: undefined,
    write: (kit) => kit.book.plates.map((plate) => `${plate.afterPage} × ${plate.leaves}`).join(", "),
    read: (text) => ({ plates: readPlates(text) }),
  };
}

function readPlates(text: string): Plate[] {
  const parts = text.split(",").filter((part) => part.trim() !== "");
  return parts.map((part) => {
    const match = /^\s*(\d+)\s*[×x*]\s*(\d+)\s*$/i.exec(part);
    if (!match) throw new FieldError("page × leaves, separated by commas: 192 × 4, 300 × 2");
    return { afterPage: Number(match[1]), leaves: Number(match[2]) };
  });
}

function borderField(): Field {
  return {
    name: "borderLeaves",
    group: "fold",
    label: "Border leaves",
    help: "Whole leaves before and after the picture: 12, 12.",
    options: undefined,
    write: (kit) => kit.fit.borderLeaves.join(", "),
    read: (text) => {
      const match = /^\s*(\d+)\s*,\s*(\d+)\s*$/.exec(text);
      if (!match) throw new FieldError("two whole numbers: 12, 12");
      return { borderLeaves: [Number(match[1]), Number(match[2])] };
    },
  };
}
