import type { Bounds } from "../../../core/kit/bounds.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import { roundTo, tidy } from "../../../core/units/length.ts";
import { rulerStep } from "../../../core/units/ruler.ts";
import { readLength } from "../../../core/units/written-length.ts";
import { readNumber } from "../../../core/units/written-number.ts";
import type { Edit } from "../../../input/desk/edit.ts";
import type { FieldShown } from "../../../output/parts/desk/field.ts";
import { faultText } from "../../../words/fields.ts";
import { formatSize } from "../../../words/lengths.ts";
import { COARSE } from "./handle.ts";
import type { AnyShown, Shown } from "./shown.ts";

/** A figure of a kit that a field shows and changes. */
export type FigureField = Named & (Figured | Chosen);

interface Named {
  /** Unique on the page. */
  readonly name: string;
  readonly label: string;
}

interface Figured {
  readonly options?: undefined;
  readonly bounds: Bounds<"length" | "count" | "degrees">;
  /** mm, a count or degrees; undefined where it follows from others and none is known. */
  readonly figure: number;
  /** It follows from others, and cannot be changed. */
  readonly fixed?: boolean;
  readonly edits: (value: number) => readonly Edit[];
}

interface Chosen {
  readonly bounds?: undefined;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly chosen: string;
  readonly edits: (value: string) => readonly Edit[];
}

export function isChosen(field: FigureField): field is Named & Chosen {
  return field.options !== undefined;
}

/** A field as its markup is made from. */
export function shownField(field: FigureField, units: Kit["units"]): FieldShown {
  const { name, label } = field;
  if (isChosen(field)) return { name, label, value: field.chosen, options: field.options };
  const { kind } = field.bounds;
  return {
    name,
    label,
    value: figureText(field, units),
    keys: kind === "count" ? "numeric" : kind === "length" && units === "in" ? "text" : "decimal",
    fixed: field.fixed ?? false,
  };
}

/** The figure as it is typed. */
export function figureText({ bounds, figure }: Figured, units: Kit["units"]): string {
  switch (bounds.kind) {
    case "length":
      return formatSize(figure, units).replace("\u00a0", " ");
    case "count":
      return String(figure);
    case "degrees":
      return `${tidy(figure, 1)}°`;
  }
}

/** What a typed text wants, or what would be allowed in its place. */
export function readFigure(
  { bounds: { kind, least, most } }: Figured,
  text: string,
  units: Kit["units"],
): { readonly value: number } | { readonly allowed: string } {
  const value = kind === "length" ? readLength(text, units) : readNumber(text.replace("°", "").trim());
  if (value === undefined || Number.isNaN(value)) {
    const fault = kind === "length" ? ({ kind: "no-length" } as const) : outside(kind, least, most);
    return { allowed: faultText(fault, units) };
  }
  const sensible = value >= least - 1e-9 && value <= most + 1e-9 && (kind !== "count" || Number.isInteger(value));
  return sensible ? { value } : { allowed: faultText(outside(kind, least, most), units) };
}

/** The figure a step further up or down, within its bounds. */
export function steppedFigure(
  { bounds: { kind, least, most }, figure }: Figured,
  by: 1 | -1,
  isLarge: boolean,
  units: Kit["units"],
): number {
  const fine = kind === "length" ? rulerStep(units, "fine") : 1;
  const step = fine * (isLarge ? COARSE : 1);
  const next = figure + by * step;
  return Math.min(most, Math.max(least, roundTo(next, fine)));
}

/** Fields of some part of the kit. */
export type FieldsOf<Of extends AnyShown = Shown> = (shown: Of) => readonly FigureField[];

function outside(kind: "length" | "count" | "degrees", least: number, most: number) {
  return { kind: `${kind}-outside`, least, most } as const;
}
