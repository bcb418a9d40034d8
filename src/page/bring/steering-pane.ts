import type { Parting } from "../../core/beginning/picture-wish.ts";
import { MM_PER_INCH, type UnitSystem } from "../../core/units/length.ts";
import { RASTER_USUAL } from "../../input/raster/raster-plan.ts";
import type { Range } from "../../output/parts/bring/controls.ts";
import { reliefPart } from "../../output/parts/bring/particulars.ts";
import { partingPart } from "../../output/parts/bring/parting.ts";
import { sortingPart } from "../../output/parts/bring/sorting.ts";
import { type Html, html } from "../../output/parts/markup.ts";
import { formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { fixed } from "../../words/numbers.ts";
import {
  type Bringing,
  levelsOf,
  limitBounds,
  limitsOf,
  photographOf,
  withLevels,
  withLimit,
  withMark,
  withSorting,
  withTrace,
} from "./bringing.ts";
import { fill, partOf, setRange } from "./fill.ts";

/** What stands out of a photograph, which shapes of a drawing are which level, and how a picture of one level stands. */
export class SteeringPane {
  readonly #place: HTMLElement;
  readonly #change: (make: (state: Bringing) => Bringing) => void;

  constructor(table: HTMLElement, change: (make: (state: Bringing) => Bringing) => void) {
    this.#place = partOf(table, "steering");
    this.#change = change;
    this.#place.addEventListener("input", ({ target }) => this.#hear(target as HTMLInputElement));
    this.#place.addEventListener("click", ({ target }) => {
      if ((target as Element).closest("[data-found]"))
        this.#change((state) => ({ ...state, parting: { ...state.parting, limits: undefined } }));
    });
  }

  show(state: Bringing): void {
    const { origin, brought, parting, sorting, marks } = state;
    const isPhotograph = photographOf(state) !== undefined;
    const isEmpty = origin === "file" && brought === undefined;
    const thing = this.#place.parentElement!;
    thing.hidden = isEmpty;
    if (isEmpty) return;
    thing.querySelector("[data-steering-name]")!.textContent =
      origin === "file" && !isPhotograph ? say.deskNewSorting() : say.deskNewParting();
    const kinds = [origin, brought?.upload, parting.trace, levelsOf(state), sorting, marks.length, state.units];
    const key = JSON.stringify([...kinds, limitsOf(state).length, isFlat(state)]);
    fill(this.#place, key, () => html`${steeringOf(state)}${isFlat(state) && reliefPart(state.relief)}`);
    for (const range of rangesOf(state)) setRange(this.#place, range.name, range.value, range.said);
    this.#place.querySelector("[data-found]")?.toggleAttribute("disabled", parting.limits === undefined);
  }

  /** The list's own choice for a shape that was pressed on. */
  find(mark: number): void {
    this.#place.querySelector<HTMLSelectElement>(`#bring-mark-${mark}`)?.focus();
  }

  #hear(input: HTMLInputElement): void {
    const { dataset, value, id } = input;
    const change = this.#change;
    const mark = /^bring-mark-(\d+)$/.exec(id)?.[1];
    if (mark !== undefined) change((state) => withMark(state, Number(mark), { level: Number(value) }));
    if (dataset["colour"] !== undefined)
      change((state) => withMark(state, Number(dataset["colour"]), { selector: { fill: value } }));
    if (dataset["sorting"] !== undefined)
      change((state) => withSorting(state, value === "" ? undefined : Number(value)));
    if (dataset["trace"] !== undefined) change((state) => withTrace(state, value as Parting["trace"]));
    if (dataset["near"] !== undefined) change((state) => withParting(state, { near: value as "dark" | "light" }));
    if (dataset["relief"] !== undefined) change((state) => ({ ...state, relief: value as Bringing["relief"] }));
    if (dataset["range"] !== undefined) change((state) => ranged(state, dataset["range"]!, Number(value)));
  }
}

/** Whether the picture is of one level, which may also be sunk in. */
function isFlat(state: Bringing): boolean {
  if (state.origin !== "file") return true;
  if (photographOf(state)) return state.parting.trace === "silhouette";
  return state.marks.length === 0;
}

function withParting(state: Bringing, changed: Partial<Parting>): Bringing {
  return { ...state, parting: { ...state.parting, ...changed } };
}

function ranged(state: Bringing, name: string, value: number): Bringing {
  const limit = /^limit-(\d+)$/.exec(name)?.[1];
  if (limit !== undefined) return withLimit(state, Number(limit), value);
  if (name === "levels") return withLevels(state, value);
  return withParting(state, { [name]: value });
}

function steeringOf(state: Bringing): Html | false {
  const { brought, parting, sorting, marks } = state;
  const seen = photographOf(state);
  if (!seen) {
    const drawing = state.origin === "file" && brought?.seen.kind === "drawing" ? brought.seen : undefined;
    return drawing !== undefined && drawing.sortings.length > 0 && sortingPart({ ...drawing, taken: sorting, marks });
  }
  return partingPart({
    trace: parting.trace,
    near: parting.near ?? "dark",
    levels: levelsOf(state),
    histogram: seen.histogram,
    limits: limitRanges(state),
    isFound: parting.limits === undefined,
    isCutOut: seen.isCutOut && parting.trace === "silhouette",
    fine: fineRanges(state),
    colours: parting.trace === "colours" ? marks : [],
  });
}

function rangesOf(state: Bringing): Range[] {
  return photographOf(state) ? [...limitRanges(state), ...fineRanges(state), levelRange(state)] : [];
}

function levelRange(state: Bringing): Range {
  const value = levelsOf(state);
  return { name: "levels", label: "", least: 2, most: 6, step: 1, value, said: String(value) };
}

function limitRanges(state: Bringing): Range[] {
  const limits = limitsOf(state);
  return limits.map((value, i) => ({
    name: `limit-${i}`,
    label: limits.length === 1 ? say.deskNewLimit() : say.deskNewLimitNumber({ number: i + 1, count: limits.length }),
    ...limitBounds(i, limits.length),
    step: 1,
    value,
    said: String(value),
  }));
}

function fineRanges({ parting, units }: Bringing): Range[] {
  const { tolerance = RASTER_USUAL.tolerance, least = RASTER_USUAL.least } = parting;
  return [
    {
      name: "tolerance",
      label: say.deskNewTolerance(),
      least: 0.05,
      most: 3,
      step: 0.05,
      value: tolerance,
      said: fineLength(tolerance, units),
    },
    {
      name: "least",
      label: say.deskNewLeast(),
      least: 0,
      most: 15,
      step: 0.5,
      value: least,
      said: fineLength(least, units),
    },
  ];
}

/** No ruler shows such lengths, so inches have decimals. */
function fineLength(mm: number, units: UnitSystem): string {
  if (units === "in") return say.deskNewInches({ inches: fixed(mm / MM_PER_INCH, 3) });
  return mm < 1 ? say.deskNewMillimetres({ millimetres: fixed(mm, 2) }) : formatSize(mm, units);
}
