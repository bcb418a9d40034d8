import type { Plate } from "../book/book.ts";
import { readPlates, writePlates } from "../book/plates.ts";
import { tidy } from "../units/length.ts";
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

const WHOLE: readonly (keyof Refit)[] = ["leaves", "pageOneLeaf", "lastPage"];
/** Lengths, and other figures with decimals. */
const LENGTHS: readonly (keyof Refit)[] = [
  "leafHeight",
  "leafWidth",
  "blockThickness",
  "head",
  "height",
  "openingDegrees",
  "markStep",
  "lightDiameter",
  "lightHeight",
  "flapBulk",
];
const CHOICES: Readonly<Partial<Record<keyof Refit, readonly string[]>>> = {
  direction: ["ltr", "rtl"],
  units: ["mm", "in"],
  foldStyle: ["single", "stepped"],
};

/** What an address says, by name; `URLSearchParams` is one. */
export interface AddressParameters {
  get(name: string): string | null;
}

/** Writes a refit as address parameters: `height=210&leaves=180`. Empty where nothing is changed. Nothing in it needs an escape. */
export function toAddress(refit: Refit): string {
  const keys = (Object.keys(NAMES) as (keyof Refit)[]).filter((key) => refit[key] !== undefined);
  return keys.map((key) => `${NAMES[key]}=${writeValue(key, refit[key]!)}`).join("&");
}

/** Reads address parameters; what is not a sensible figure is left out, so an old or damaged link still opens the kit. */
export function fromAddress(address: AddressParameters): Refit {
  const refit: Record<string, unknown> = {};
  for (const key of Object.keys(NAMES) as (keyof Refit)[]) {
    const text = address.get(NAMES[key]);
    const value = text === null ? undefined : readValue(key, text);
    if (value !== undefined) refit[key] = value;
  }
  return refit as Refit;
}

function writeValue(key: keyof Refit, value: NonNullable<Refit[keyof Refit]>): string {
  if (key === "plates") return writePlates(value as readonly Plate[], "address");
  if (Array.isArray(value)) return value.map((one: number) => tidy(one)).join("_");
  return typeof value === "number" ? String(tidy(value)) : String(value);
}

function readValue(key: keyof Refit, text: string): unknown {
  if (key in CHOICES) return CHOICES[key]!.includes(text) ? text : undefined;
  if (key === "plates") return readPlates(text);
  if (key === "lostLeaves") return readNumbers(text, (value) => Number.isInteger(value) && value > 0);
  if (key === "borderLeaves") {
    const pair = readNumbers(text, (value) => Number.isInteger(value) && value >= 0);
    return pair?.length === 2 ? pair : undefined;
  }
  if (key === "depths") return readNumbers(text, (value) => value > 0 && value < 500);
  const [value] = readNumbers(text, (one) => one >= 0 && one < 100_000) ?? [];
  if (value === undefined) return undefined;
  if (WHOLE.includes(key)) return Number.isInteger(value) && value > 0 ? value : undefined;
  return LENGTHS.includes(key) ? value : undefined;
}

function readNumbers(text: string, allowed: (value: number) => boolean): number[] | undefined {
  if (text === "") return [];
  const values = text.split("_").map(Number);
  return values.every((value) => Number.isFinite(value) && allowed(value)) ? values : undefined;
}
