import { writePlates } from "../../core/book/plates.ts";
import { ASKED, type Asked, restateBook } from "../../core/finder/book-figures.ts";
import { NO_QUERY, type Query, readHours, WISHES } from "../../core/finder/query.ts";
import type { Field } from "../../core/refit/field.ts";
import { bookFields } from "../../core/refit/fields.ts";
import { readField } from "../../core/refit/read-field.ts";
import type { Refit } from "../../core/refit/refit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { faultText } from "../../words/fields.ts";
import { formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { type Control, markControl } from "../shared/marked-control.ts";

/** Reads the whole form. Wrong texts are marked and ask for nothing; what the form does not show of a book stays. */
export function readForm(form: HTMLFormElement, before: Query): Query {
  const shown = shownFields(form).map(({ key }) => key);
  const book = restateBook(before.book, readBook(form, before.book), shown);
  const asked = Object.keys(book).some((key) => ASKED.includes(key as Asked));
  return {
    ...NO_QUERY,
    book: asked ? book : {},
    hours: readWish(control(form, "hours")),
    levels: Number(control(form, "levels").value) || undefined,
    light: chosen(form, "light") as Query["light"],
    knife: chosen(form, "knife") as Query["knife"],
    fit: chosen(form, "fit") as Query["fit"],
    sort: chosen(form, "sort") as Query["sort"],
  };
}

/** Writes a query into the form. */
export function writeForm(form: HTMLFormElement, query: Query): void {
  writeBook(form, query.book);
  for (const name of WISHES) control(form, name).value = String(query[name] ?? "");
  markControl(control(form, "hours"), undefined);
}

/** Writes the book's figures in the reader's units. */
export function writeBook(form: HTMLFormElement, book: Refit): void {
  const units = unitsOf(form);
  for (const field of shownFields(form)) {
    control(form, field.name).value = textOf(field, book, units);
    markControl(control(form, field.name), undefined);
  }
}

export function unitsOf(form: HTMLFormElement): UnitSystem {
  return form.querySelector<HTMLInputElement>('input[value="in"]')?.checked ? "in" : "mm";
}

/** The fields of a book that the form has: all of them on a class's page. */
function shownFields(form: HTMLFormElement): Field[] {
  return bookFields().filter(({ name }) => form.elements.namedItem(name) !== null);
}

/** A figure of a book as its field shows it; what is not stated is the first of a choice. */
function textOf({ key, ...field }: Field, book: Refit, units: UnitSystem): string {
  const value = book[key];
  if (value === undefined) return field.form === "choice" ? field.options[0]! : "";
  if (field.form === "plates") return writePlates(book.plates!, "plain");
  return field.form === "length" ? formatSize(value as number, units).replace("\u00a0", " ") : String(value);
}

/** What stands as it was written, rounded for the units, keeps its figure: changing units changes no book. */
function readBook(form: HTMLFormElement, before: Refit): Refit {
  let book: Refit = {};
  const units = unitsOf(form);
  for (const field of shownFields(form)) {
    const { key } = field;
    const input = control(form, field.name);
    if (input.value === textOf(field, before, units)) {
      if (before[key] !== undefined) book = { ...book, [key]: before[key] };
      markControl(input, undefined);
      continue;
    }
    const read = input.value.trim() === "" ? { refit: {} } : readField(field, input.value, { units, levels: [] });
    if ("refit" in read) book = { ...book, ...read.refit };
    markControl(input, "fault" in read ? faultText(read.fault, units) : undefined);
  }
  return book;
}

function readWish(input: Control): number | undefined {
  const hours = readHours(input.value);
  markControl(input, hours === undefined && input.value.trim() !== "" ? say.finderHoursAllowed() : undefined);
  return hours;
}

function chosen(form: HTMLFormElement, name: string): string | undefined {
  return control(form, name).value || undefined;
}

function control(form: HTMLFormElement, name: string): Control {
  return form.elements.namedItem(name) as Control;
}
