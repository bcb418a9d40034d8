import { leafNumber } from "../book/leaf-number.ts";
import { readPlates } from "../book/plates.ts";
import { BOUNDS, type Bounds } from "../kit/bounds.ts";
import type { Kit } from "../kit/kit.ts";
import { readLength } from "../units/written-length.ts";
import { readNumber } from "../units/written-number.ts";
import type { FieldForm } from "./field-form.ts";
import type { Refit } from "./refit.ts";

/** Why a field's text cannot be taken: it is not what the form asks for, or is outside the bounds. */
export type FieldFault =
  | { readonly kind: "no-length" | "no-plates" | "no-borders" | "no-leaves" }
  /** One length for each level is asked for. */
  | { readonly kind: "no-depths"; readonly count: number }
  | { readonly kind: "no-option"; readonly options: readonly string[] }
  | {
      readonly kind: "length-outside" | "count-outside" | "degrees-outside" | "number-outside";
      readonly least: number;
      readonly most: number;
    };

/** What a text asks for of the refit, or why it cannot be taken. Lengths without a unit are in the kit's. */
export function readField(
  field: FieldForm,
  text: string,
  kit: Pick<Kit, "units" | "levels">,
): { readonly refit: Partial<Refit> } | { readonly fault: FieldFault } {
  switch (field.form) {
    case "length": {
      const mm = readLength(text, kit.units);
      if (mm === undefined) return { fault: { kind: "no-length" } };
      const { least, most } = field;
      if (mm < least || mm > most) return { fault: { kind: "length-outside", least, most } };
      return { refit: field.refit(mm, kit) };
    }
    case "count":
    case "degrees":
    case "number": {
      const { least, most, form } = field;
      const value = readNumber(form === "degrees" ? text.replace("°", "") : text);
      const sensible = value >= least && value <= most && (form !== "count" || Number.isInteger(value));
      return sensible ? { refit: field.refit(value) } : { fault: { kind: `${form}-outside`, least, most } };
    }
    case "choice": {
      const { options } = field;
      return options.includes(text) ? { refit: field.refit(text) } : { fault: { kind: "no-option", options } };
    }
    case "plates": {
      const plates = readPlates(text);
      return plates?.every((plate) => within(plate.afterPage, BOUNDS.page) && within(plate.leaves, BOUNDS.plateLeaves))
        ? { refit: field.refit(plates) }
        : { fault: { kind: "no-plates" } };
    }
    case "borders": {
      const [before, after, more] = text.split(/[,_]/).map(readNumber);
      return within(before, BOUNDS.borderLeaves) && within(after, BOUNDS.borderLeaves) && more === undefined
        ? { refit: field.refit([before!, after!]) }
        : { fault: { kind: "no-borders" } };
    }
    case "leaves": {
      const leaves = text === "" ? [] : text.split("_").map(readNumber);
      return leaves.every((leaf) => within(leaf, BOUNDS.leaf)) && new Set(leaves).size === leaves.length
        ? { refit: field.refit(leaves.map(leafNumber)) }
        : { fault: { kind: "no-leaves" } };
    }
  }
}

/** Whether a number is whole and within bounds. */
function within(value: number | undefined, { least, most }: Bounds<"count">): boolean {
  return Number.isInteger(value) && value! >= least && value! <= most;
}
