import type { Plate } from "../book/book.ts";
import type { Kit } from "../kit/kit.ts";
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

interface BoundedField extends FieldBase {
  readonly least: number;
  readonly most: number;
  readonly figure: (kit: Kit) => number;
}

/** A length in mm. */
export interface LengthField extends BoundedField {
  readonly form: "length";
  /** Number of the level whose depth it is, from 1. */
  readonly level?: number;
  readonly refit: (mm: number, kit: Pick<Kit, "levels">) => Partial<Refit>;
}

/** A whole number. */
export interface CountField extends BoundedField {
  readonly form: "count";
  readonly refit: (count: number) => Partial<Refit>;
}

/** An angle in degrees. */
export interface DegreesField extends BoundedField {
  readonly form: "degrees";
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
