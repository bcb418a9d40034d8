import { readPlates } from "../book/plates.ts";
import type { Kit } from "../kit/kit.ts";
import { LengthError, parseLength, type UnitSystem } from "../units/length.ts";
import type { Field } from "./field.ts";
import type { Refit } from "./refit.ts";

/** Why a field's text cannot be taken: it is not what the form asks for, or is outside the bounds. */
export type FieldFault =
  | { readonly kind: "no-length" }
  | { readonly kind: "length-outside"; readonly least: number; readonly most: number }
  | { readonly kind: "count-outside"; readonly least: number; readonly most: number }
  | { readonly kind: "degrees-outside"; readonly least: number; readonly most: number }
  | { readonly kind: "no-plates" }
  | { readonly kind: "no-borders" };

/** What a text asks for of the refit, or why it cannot be taken. Lengths without a unit are in the kit's. */
export function readField(
  field: Field,
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
    case "degrees": {
      const { least, most, form } = field;
      const value = Number(text.replace(form === "degrees" ? "°" : "", "").trim());
      const sensible = value >= least && value <= most && (form === "degrees" || Number.isInteger(value));
      return sensible ? { refit: field.refit(value) } : { fault: { kind: `${form}-outside`, least, most } };
    }
    case "choice":
      return { refit: field.refit(text) };
    case "plates": {
      const plates = readPlates(text);
      return plates ? { refit: field.refit(plates) } : { fault: { kind: "no-plates" } };
    }
    case "borders": {
      const match = /^\s*(\d+)\s*,\s*(\d+)\s*$/.exec(text);
      return match ? { refit: field.refit([Number(match[1]), Number(match[2])]) } : { fault: { kind: "no-borders" } };
    }
  }
}

/** Readers may write a decimal comma, which no length needs for anything else; mm, undefined where it is no length. */
function readLength(given: string, units: UnitSystem): number | undefined {
  const text = given
    .trim()
    .replace(/^(\d*),(\d+)/, "$1.$2")
    .replace(/^(\d+)-(?=\d+\/)/, "$1 ")
    .replace(/\s*inch(es)?$/i, " in");
  const bare = /[\d½¼¾⅛⅜⅝⅞]$/.test(text);
  try {
    return parseLength(bare ? `${text} ${units}` : text);
  } catch (error) {
    if (error instanceof LengthError) return undefined;
    throw error;
  }
}
