import type { Plate } from "../book/book.ts";
import { heightOf, openingOf } from "../fit/shape.ts";
import { widestOpening } from "../fit/solve.ts";
import { BOUNDS, type Bounds } from "../kit/bounds.ts";
import type { Kit } from "../kit/kit.ts";
import type { FoldStyle } from "../spans/fold-style.ts";
import { toDegrees } from "../units/angle.ts";
import type { Refit } from "./refit.ts";

/** A line of the fit panel: which figure of the refit it asks for, in which form, within which bounds (inclusive). */
export type Field = LengthField | CountField | DegreesField | ChoiceField | PlatesField | BordersField;

interface FieldBase {
  /** Unique in a panel; `depth0` and so on for the levels. */
  readonly name: string;
  /** The figure of the refit that it asks for. */
  readonly key: FieldKey;
  readonly group: FieldGroup;
}

/** The figures of a refit that a panel asks for. */
export type FieldKey = Exclude<keyof Refit, "head" | "units" | "flapBulk" | "lostLeaves">;

export type FieldGroup = "book" | "fold" | "light";

/** A length in mm. */
export interface LengthField extends FieldBase {
  readonly form: "length";
  readonly least: number;
  readonly most: number;
  /** Number of the level whose depth it is, from 1. */
  readonly level?: number;
  readonly figure: (kit: Kit) => number;
  readonly refit: (mm: number, kit: Pick<Kit, "levels">) => Partial<Refit>;
}

/** A whole number. */
export interface CountField extends FieldBase {
  readonly form: "count";
  readonly least: number;
  readonly most: number;
  readonly figure: (kit: Kit) => number;
  readonly refit: (count: number) => Partial<Refit>;
}

/** An angle in degrees. */
export interface DegreesField extends FieldBase {
  readonly form: "degrees";
  readonly least: number;
  readonly most: number;
  readonly figure: (kit: Kit) => number;
  readonly refit: (degrees: number) => Partial<Refit>;
}

/** One of some words. */
export interface ChoiceField extends FieldBase {
  readonly form: "choice";
  readonly options: readonly string[];
  readonly figure: (kit: Kit) => string;
  readonly refit: (option: string) => Partial<Refit>;
}

export interface PlatesField extends FieldBase {
  readonly form: "plates";
  readonly figure: (kit: Kit) => readonly Plate[];
  readonly refit: (plates: readonly Plate[]) => Partial<Refit>;
}

/** Whole leaves before and after the picture. */
export interface BordersField extends FieldBase {
  readonly form: "borders";
  readonly figure: (kit: Kit) => readonly [number, number];
  readonly refit: (borderLeaves: readonly [number, number]) => Partial<Refit>;
}

/** All fields of a kit's panel, in order. */
export function fieldsOf(kit: Kit): Field[] {
  return [...bookFields(), ...foldFields(kit), ...lightFields(kit)];
}

/** The fields of a book, the same for every kit. */
export function bookFields(): Field[] {
  return [
    bookLength("leafHeight"),
    bookLength("leafWidth"),
    bookLength("blockThickness"),
    bookCount("leaves", BOUNDS.leaves),
    bookCount("pageOneLeaf", BOUNDS.leaf),
    bookCount("lastPage", BOUNDS.page),
    {
      name: "plates",
      key: "plates",
      group: "book",
      form: "plates",
      figure: (kit) => kit.book.plates,
      refit: (plates) => ({ plates }),
    },
    {
      name: "direction",
      key: "direction",
      group: "book",
      form: "choice",
      options: ["ltr", "rtl"],
      figure: (kit) => kit.book.direction,
      refit: (direction) => ({ direction: direction as "ltr" | "rtl" }),
    },
  ];
}

function foldFields(kit: Kit): Field[] {
  return [
    {
      name: "borderLeaves",
      key: "borderLeaves",
      group: "fold",
      form: "borders",
      figure: (one) => one.fit.borderLeaves,
      refit: (borderLeaves) => ({ borderLeaves }),
    },
    ...heightField(kit),
    ...openingField(kit),
    ...kit.levels.map((_, i) => depthField(i)),
    {
      name: "foldStyle",
      key: "foldStyle",
      group: "fold",
      form: "choice",
      options: ["single", "stepped"],
      figure: (one) => one.fit.foldStyle,
      refit: (foldStyle) => ({ foldStyle: foldStyle as FoldStyle }),
    },
    length("markStep", "fold", (one) => one.fit.markStep, BOUNDS.markStep),
  ];
}

/** Where the kit states its height. */
function heightField(kit: Kit): Field[] {
  return kit.fit.shape.solve === "height"
    ? []
    : [length("height", "fold", (one) => heightOf(one.fit.shape)!, BOUNDS.pictureHeight)];
}

/** Where the kit states its opening. */
function openingField(kit: Kit): Field[] {
  if (kit.fit.shape.solve === "opening") return [];
  return [
    {
      name: "openingDegrees",
      key: "openingDegrees",
      group: "fold",
      form: "degrees",
      least: BOUNDS.opening.least,
      most: Math.round(toDegrees(widestOpening(kit.fit.view))),
      figure: (one) => toDegrees(openingOf(one.fit.shape)!),
      refit: (openingDegrees) => ({ openingDegrees }),
    },
  ];
}

function depthField(i: number): Field {
  return {
    name: `depth${i}`,
    key: "depths",
    group: "fold",
    form: "length",
    least: BOUNDS.depth.least,
    most: BOUNDS.depth.most,
    level: i + 1,
    figure: (kit) => kit.levels[i]!.depth,
    refit: (depth, kit) => ({ depths: kit.levels.map((other, j) => (j === i ? depth : other.depth)) }),
  };
}

function lightFields(kit: Kit): Field[] {
  if (!kit.light) return [];
  return [
    length("lightDiameter", "light", (one) => one.light!.diameter, BOUNDS.lightDiameter),
    length("lightHeight", "light", (one) => one.light!.height, BOUNDS.lightHeight),
  ];
}

function bookLength(name: "leafHeight" | "leafWidth" | "blockThickness"): Field {
  return length(name, "book", (kit) => kit.book[name], BOUNDS[name]);
}

function bookCount(name: "leaves" | "pageOneLeaf" | "lastPage", { least, most }: Bounds<"count">): Field {
  return {
    name,
    key: name,
    group: "book",
    form: "count",
    least,
    most,
    figure: (kit) => kit.book[name],
    refit: (count) => ({ [name]: count }),
  };
}

function length(
  name: FieldKey,
  group: FieldGroup,
  figure: (kit: Kit) => number,
  { least, most }: Bounds<"length">,
): Field {
  return { name, key: name, group, form: "length", least, most, figure, refit: (mm) => ({ [name]: mm }) };
}
