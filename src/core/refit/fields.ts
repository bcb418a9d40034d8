import { heightOf, openingOf } from "../fit/shape.ts";
import { BOUNDS, type Bounds, openingBounds } from "../kit/bounds.ts";
import type { Kit } from "../kit/kit.ts";
import { FOLD_STYLES, type FoldStyle } from "../spans/fold-style.ts";
import { toDegrees } from "../units/angle.ts";
import type { Field, FieldGroup, FieldKey } from "./field.ts";

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
      options: FOLD_STYLES,
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
  const { least, most } = openingBounds(kit.fit.view);
  return [
    {
      name: "openingDegrees",
      key: "openingDegrees",
      group: "fold",
      form: "degrees",
      least,
      most,
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
