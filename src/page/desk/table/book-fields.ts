import { BOUNDS } from "../../../core/kit/bounds.ts";
import { optionText } from "../../../words/fields.ts";
import * as say from "../../../words/messages.ts";
import type { FigureField } from "./figure-field.ts";
import { lengthAt } from "./length-at.ts";
import type { AnyShown } from "./shown.ts";

/** The figures of the kit's own book. */
export function bookFields({ kit: { book } }: AnyShown): FigureField[] {
  const length = (key: "leafHeight" | "leafWidth" | "blockThickness", label: string): FigureField => ({
    name: key,
    label,
    bounds: BOUNDS[key],
    figure: book[key],
    edits: (mm) => [lengthAt(["book", key], mm)],
  });
  const count = (
    key: "leaves" | "pageOneLeaf" | "lastPage",
    label: string,
    bounds: typeof BOUNDS.leaves | typeof BOUNDS.leaf | typeof BOUNDS.page,
  ): FigureField => ({
    name: key,
    label,
    bounds,
    figure: book[key],
    edits: (value) => [{ at: ["book", key], value }],
  });
  return [
    length("leafHeight", say.fitFieldLeafHeight()),
    length("leafWidth", say.fitFieldLeafWidth()),
    length("blockThickness", say.fitFieldBlockThickness()),
    count("leaves", say.fitFieldLeaves(), BOUNDS.leaves),
    count("pageOneLeaf", say.fitFieldPageOneLeaf(), BOUNDS.leaf),
    count("lastPage", say.fitFieldLastPage(), BOUNDS.page),
    {
      name: "direction",
      label: say.fitFieldDirection(),
      options: ["ltr", "rtl"].map((value) => ({ value, label: optionText(value) })),
      chosen: book.direction,
      edits: (value) => [{ at: ["book", "direction"], value }],
    },
  ];
}
