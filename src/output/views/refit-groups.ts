import { backgroundLevel, type Kit } from "../../core/kit/kit.ts";
import type { Field } from "../../core/refit/field.ts";
import { fieldsOf } from "../../core/refit/fields.ts";
import { fieldHelp, fieldLabel, fieldText, optionText } from "../../words/fields.ts";
import * as say from "../../words/messages.ts";

/** A field of the fit panel with what the kit says; choices have options. */
export interface RefitField {
  readonly name: string;
  readonly label: string;
  readonly help: string;
  readonly options: readonly { readonly value: string; readonly label: string }[] | undefined;
  readonly value: string;
  /** The keys that a phone shows for it. */
  readonly keys: "numeric" | "decimal" | "text";
  /** What stands in it while it is empty; undefined where the other figures decide that. */
  readonly hint: string | undefined;
  /** Whether it counts for nothing where corners are folded: the depth of a level that is not the ground. */
  readonly cutOnly: boolean;
}

/** Fields of the fit panel that stand together, with what the kit says. */
export interface RefitGroup {
  readonly title: string;
  readonly fields: readonly RefitField[];
}

/** The fit panel's fields; a group that has none is left out. */
export function refitGroups(kit: Kit): RefitGroup[] {
  const fields = fieldsOf(kit);
  const groups = [
    { group: "book", title: say.kitRefitBook() },
    { group: "fold", title: say.kitRefitFold() },
    { group: "light", title: say.kitRefitLight() },
  ] as const;
  return groups
    .map(({ group, title }) => ({
      title,
      fields: fields.filter((field) => field.group === group).map((field) => refitField(field, kit)),
    }))
    .filter((group) => group.fields.length > 0);
}

function refitField(field: Field, kit: Kit): RefitField {
  return {
    name: field.name,
    label: fieldLabel(field, kit),
    help: fieldHelp(field),
    options: field.form === "choice" ? field.options.map((value) => ({ value, label: optionText(value) })) : undefined,
    value: fieldText(field, kit),
    keys: keysFor(field, kit),
    hint:
      EMPTY_IS_OWN.includes(field.form) && field.key !== "lastPage"
        ? say.measureHintKit({ figure: fieldText(field, kit) })
        : undefined,
    cutOnly: "level" in field && field.level !== backgroundLevel(kit.levels),
  };
}

/** Forms of fields that stand for the kit's own figure while they are empty. */
const EMPTY_IS_OWN: readonly Field["form"][] = ["length", "count", "degrees", "borders"];

/** Inches are written with fractions, which the pads for numbers do not have. */
function keysFor({ form }: Field, { units }: Kit): RefitField["keys"] {
  if (form === "count") return "numeric";
  return form === "degrees" || (form === "length" && units === "mm") ? "decimal" : "text";
}
