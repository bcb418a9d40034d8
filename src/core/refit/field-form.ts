import type { Plate } from "../book/book.ts";
import type { LeafNumber } from "../book/leaf-number.ts";
import type { Kit } from "../kit/kit.ts";
import type { Refit } from "./refit.ts";

/** In which form a figure of the refit is written, within which bounds (inclusive), and what it makes of the refit. */
export type FieldForm =
  | LengthForm
  | NumberForm<"count">
  | NumberForm<"degrees">
  | NumberForm<"number">
  | ChoiceForm
  | PlatesForm
  | BordersForm
  | LeavesForm;

interface Bounded {
  readonly least: number;
  readonly most: number;
}

/** A length in mm. */
export interface LengthForm extends Bounded {
  readonly form: "length";
  /** Number of the level whose depth it is, from 1. */
  readonly level?: number;
  readonly refit: (mm: number, kit: Pick<Kit, "levels">) => Partial<Refit>;
}

/** A whole number (`count`), an angle in degrees, or any number. */
export interface NumberForm<Name extends "count" | "degrees" | "number"> extends Bounded {
  readonly form: Name;
  readonly refit: (value: number) => Partial<Refit>;
}

/** One of some words. */
export interface ChoiceForm {
  readonly form: "choice";
  readonly options: readonly string[];
  readonly refit: (option: string) => Partial<Refit>;
}

export interface PlatesForm {
  readonly form: "plates";
  readonly refit: (plates: readonly Plate[]) => Partial<Refit>;
}

/** Whole leaves before and after the picture. */
export interface BordersForm {
  readonly form: "borders";
  readonly refit: (borderLeaves: readonly [number, number]) => Partial<Refit>;
}

/** Numbers of leaves, each once. */
export interface LeavesForm {
  readonly form: "leaves";
  readonly refit: (lostLeaves: readonly LeafNumber[]) => Partial<Refit>;
}
