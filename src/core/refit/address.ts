import type { Plate } from "../book/book.ts";
import { writePlates } from "../book/plates.ts";
import { BOUNDS } from "../kit/bounds.ts";
import type { Kit } from "../kit/kit.ts";
import { tidy, type UnitSystem } from "../units/length.ts";
import type { CarriedField, Field } from "./field.ts";
import { bookFields, fieldsOf } from "./fields.ts";
import { type FieldFault, readField } from "./read-field.ts";
import type { Refit } from "./refit.ts";

/** How each figure is written in the address, in the order in which they stand there. */
const NAMES = {
  leafHeight: "height",
  leafWidth: "width",
  blockThickness: "thick",
  leaves: "leaves",
  pageOneLeaf: "page-one",
  lastPage: "last",
  plates: "plates",
  direction: "read",
  borderLeaves: "border",
  pictureLeaves: "shown",
  head: "head",
  height: "picture",
  openingDegrees: "open",
  depths: "depths",
  units: "units",
  markStep: "step",
  foldStyle: "folds",
  lightDiameter: "light-wide",
  lightHeight: "light-high",
  flapBulk: "bulk",
  lostLeaves: "lost",
} as const satisfies Record<keyof Refit, string>;

/** What an address says, by name; `URLSearchParams` is one. */
export interface AddressParameters {
  getAll(name: string): string[];
}

/** A figure of an address that is not taken: outside what the panel allows, or not to be read. */
export interface Ignored {
  /** The figure's field; of the levels' depths, the first that is wrong. */
  readonly field: Field | CarriedField;
  /** As it stands in the address; where the figure stands twice, both. */
  readonly given: string;
  readonly fault: FieldFault;
}

/** What an address asks for, and what it asks for in vain. */
export interface AddressRead {
  readonly refit: Refit;
  readonly ignored: readonly Ignored[];
}

/** Writes a refit as address parameters: `height=210&leaves=180`. Empty where nothing is changed. Nothing in it needs an escape. */
export function toAddress(refit: Refit): string {
  const keys = (Object.keys(NAMES) as (keyof Refit)[]).filter((key) => refit[key] !== undefined);
  return keys.map((key) => `${NAMES[key]}=${writeValue(key, refit[key]!)}`).join("&");
}

/**
 * Reads address parameters as the fields of a kit's panel read what is typed, in mm; without a kit only the book. Each figure
 * that cannot be taken is left out and named once, so an old or damaged link still opens the kit. What the kit has no field
 * for, and names that are none of ours, are passed over.
 */
export function fromAddress(address: AddressParameters, kit?: Kit): AddressRead {
  const fields = kit ? [...fieldsOf(kit), ...carriedFields()] : bookFields();
  let refit: Refit = {};
  const ignored: Ignored[] = [];
  for (const key of Object.keys(NAMES) as (keyof Refit)[]) {
    const asked = fields.filter((field) => field.key === key);
    const given = [...new Set(address.getAll(NAMES[key]))].join(" & ");
    if (asked.length === 0 || address.getAll(NAMES[key]).length === 0) continue;
    const read = readFigure(asked, given, kit?.levels ?? []);
    if ("fault" in read) ignored.push({ ...read, given });
    else refit = { ...refit, ...read.refit };
  }
  return { refit, ignored };
}

/** Figures without a line in the panel: where an offer puts the picture, and what the bench adds. */
const carriedFields = (): readonly CarriedField[] => [
  { key: "head", form: "length", ...BOUNDS.head, refit: (head) => ({ head }) },
  { key: "pictureLeaves", form: "count", ...BOUNDS.pictureLeaves, refit: (pictureLeaves) => ({ pictureLeaves }) },
  { key: "units", form: "choice", options: ["mm", "in"], refit: (units) => ({ units: units as UnitSystem }) },
  { key: "flapBulk", form: "number", ...BOUNDS.flapBulk, refit: (flapBulk) => ({ flapBulk }) },
  { key: "lostLeaves", form: "leaves", refit: (lostLeaves) => ({ lostLeaves }) },
];

/** A figure has one field, the levels' depths have one each: the address holds them in one text. */
function readFigure(
  fields: readonly (Field | CarriedField)[],
  given: string,
  ofKit: Kit["levels"],
): { readonly refit: Partial<Refit> } | Omit<Ignored, "given"> {
  const texts = fields.length > 1 ? given.split("_") : [given];
  let refit: Partial<Refit> = {};
  for (const [i, field] of fields.entries()) {
    if (texts.length !== fields.length) return { field, fault: { kind: "no-depths", count: fields.length } };
    const levels = ofKit.map((level, j) => ({ ...level, depth: refit.depths?.[j] ?? level.depth }));
    const read = readField(field, texts[i]!, { units: "mm", levels });
    if ("fault" in read) return { field, ...read };
    refit = read.refit;
  }
  return { refit };
}

function writeValue(key: keyof Refit, value: NonNullable<Refit[keyof Refit]>): string {
  if (key === "plates") return writePlates(value as readonly Plate[], "address");
  if (Array.isArray(value)) return value.map((one: number) => tidy(one)).join("_");
  return typeof value === "number" ? String(tidy(value)) : String(value);
}
