import type { Kit } from "../../core/kit/kit.ts";
import { type Field, fieldsOf } from "../../core/refit/fields.ts";
import * as say from "../../words/messages.ts";

/** Fields of the fit panel that stand together, with what the kit says. */
export interface RefitGroup {
  readonly title: string;
  readonly fields: readonly (Pick<Field, "name" | "label" | "help" | "options"> & { readonly value: string })[];
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
      fields: fields
        .filter((field) => field.group === group)
        .map(({ name, label, help, options, write }) => ({ name, label, help, options, value: write(kit) })),
    }))
    .filter((group) => group.fields.length > 0);
}
