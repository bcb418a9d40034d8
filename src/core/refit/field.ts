import type { Plate } from "../book/book.ts";
import type { Kit } from "../kit/kit.ts";
import type { FieldForm } from "./field-form.ts";
import type { Refit } from "./refit.ts";

/** A line of the fit panel: which figure of the refit it asks for, in which form, within which bounds. */
export type Field =
  | FieldOf<"length" | "count" | "degrees", number>
  | FieldOf<"choice", string>
  | FieldOf<"plates", readonly Plate[]>
  | FieldOf<"borders", readonly [number, number]>;

/** A figure that only an address carries: of the bench, or of an offer. */
export type CarriedField = FieldForm & { readonly key: CarriedKey };

/** The figures of a refit that only an address carries. */
export type CarriedKey = "head" | "pictureLeaves" | "units" | "flapBulk" | "lostLeaves";

/** The figures of a refit that a panel asks for. */
export type FieldKey = Exclude<keyof Refit, CarriedKey>;

export type FieldGroup = "book" | "fold" | "light";

type FieldOf<Name extends FieldForm["form"], Figure> = Extract<FieldForm, { readonly form: Name }> & {
  /** Unique in a panel; `depth0` and so on for the levels. */
  readonly name: string;
  /** The figure of the refit that it asks for. */
  readonly key: FieldKey;
  readonly group: FieldGroup;
  readonly figure: (kit: Kit) => Figure;
};
