import {
  type BookAnswer,
  type LightAnswer,
  type OutlineName,
  type Relief,
  USUAL_BOOK,
} from "../../core/beginning/answers.ts";
import type { Brought, BroughtPhotograph } from "../../core/beginning/brought.ts";
import { capital, freeName, slugOf, titleOf } from "../../core/beginning/kit-names.ts";
import type { Marked, Parting, PictureWish } from "../../core/beginning/picture-wish.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import type { NewKitForm } from "../../input/beginning/new-kit-form.ts";
import * as say from "../../words/messages.ts";

/** Where the picture of a new kit comes from, as it is chosen on the page. */
export type Origin = "file" | "word" | "outline" | "icon";

/** A picture that the server keeps. */
export type BroughtPicture = Extract<Brought, { readonly upload: string }>;

/** All that is stated of a kit that is being begun. It is never changed: each step makes another one. */
export interface Bringing {
  readonly origin: Origin;
  readonly brought: BroughtPicture | undefined;
  readonly word: string;
  /** A font by name; empty for the usual one. */
  readonly font: string;
  readonly outline: OutlineName;
  readonly icon: string | undefined;
  readonly crop: PictureWish["crop"];
  readonly parting: Parting;
  /** Which way of telling a drawing's shapes apart is taken, from 0; none where they are all one level. */
  readonly sorting: number | undefined;
  /** Shapes or colours with their levels, as that way has them or as they were changed. */
  readonly marks: readonly Marked[];
  readonly relief: Relief;
  /** As it was typed; undefined while it follows from the picture. */
  readonly title: string | undefined;
  readonly slug: string | undefined;
  readonly book: BookAnswer;
  readonly units: UnitSystem;
  readonly light: LightAnswer | undefined;
  readonly draft: boolean;
}

/** Levels of tones and colours before another number is wished. */
const USUAL_LEVELS = 3;

/** A battery light of the usual size, mm; common practice, no source. */
export const USUAL_LIGHT: LightAnswer = { diameter: 38, height: 40 };

export const NOTHING_BROUGHT: Bringing = {
  origin: "file",
  brought: undefined,
  word: "",
  font: "",
  outline: "heart",
  icon: undefined,
  crop: undefined,
  parting: { trace: "silhouette" },
  sorting: undefined,
  marks: [],
  relief: "raised",
  title: undefined,
  slug: undefined,
  book: USUAL_BOOK,
  units: "mm",
  light: undefined,
  draft: false,
};

/** With a picture that was brought, as the program takes it by itself. */
export function withPicture(state: Bringing, brought: BroughtPicture): Bringing {
  const begun = { ...state, origin: "file", brought, crop: undefined, parting: { trace: "silhouette" } } as const;
  return brought.seen.kind === "drawing" ? withSorting(begun, brought.seen.sortings.length > 0 ? 0 : undefined) : begun;
}

/** With another way of telling a drawing's shapes apart. */
export function withSorting(state: Bringing, sorting: number | undefined): Bringing {
  const seen = state.brought?.seen;
  const marks = seen?.kind === "drawing" && sorting !== undefined ? seen.sortings[sorting]!.marks : [];
  return { ...state, sorting, marks };
}

/** With another kind of tracing, and what goes with one kind only as it is usual. */
export function withTrace(state: Bringing, trace: Parting["trace"]): Bringing {
  const { near, tolerance, least, levels = USUAL_LEVELS } = state.parting;
  const hasSides = trace === "silhouette" || trace === "tones";
  const parting = {
    trace,
    tolerance,
    least,
    ...(hasSides ? { near } : {}),
    ...(trace === "silhouette" ? {} : { levels }),
  };
  return withColours({ ...state, parting });
}

/** With so many levels, the ground among them. */
export function withLevels(state: Bringing, levels: number): Bringing {
  return withColours({ ...state, parting: { ...state.parting, levels, limits: undefined } });
}

function withColours(state: Bringing): Bringing {
  const seen = photographOf(state);
  if (!seen || state.parting.trace !== "colours") return state;
  return { ...state, marks: seen.palettes[levelsOf(state) - 2] ?? [] };
}

/** With a mark at another level, or of another colour. */
export function withMark(state: Bringing, at: number, changed: Partial<Marked>): Bringing {
  return { ...state, marks: state.marks.map((mark, i) => (i === at ? { ...mark, ...changed } : mark)) };
}

/** The greatest limit that leaves something lighter. */
const MOST_LIMIT = 254;

/** Between which lightnesses a limit may be moved, so that there is room for the others on both sides. */
export function limitBounds(at: number, count: number): { readonly least: number; readonly most: number } {
  return { least: at, most: MOST_LIMIT - (count - 1 - at) };
}

/** With one limit moved; the others stand aside, so that they stay in order. */
export function withLimit(state: Bringing, at: number, wished: number): Bringing {
  const found = limitsOf(state);
  const { least, most } = limitBounds(at, found.length);
  const limit = Math.min(most, Math.max(least, wished));
  const limits = found.map((one, i) => {
    if (i === at) return limit;
    return i < at ? Math.min(one, limit - (at - i)) : Math.max(one, limit + (i - at));
  });
  return { ...state, parting: { ...state.parting, limits } };
}

/** The limits between tones, as they are stated or found; none where nothing is parted by lightness. */
export function limitsOf(state: Bringing): readonly number[] {
  const seen = photographOf(state);
  if (!seen || state.parting.trace === "colours") return [];
  return state.parting.limits ?? seen.limits[levelsOf(state) - 2] ?? [];
}

/** How many levels a photograph is parted into, the ground among them. */
export function levelsOf({ parting }: Bringing): number {
  return parting.trace === "silhouette" ? 2 : (parting.levels ?? USUAL_LEVELS);
}

export function photographOf({ origin, brought }: Bringing): BroughtPhotograph | undefined {
  return origin === "file" && brought?.seen.kind === "photograph" ? brought.seen : undefined;
}

/** What is asked of the server; undefined while there is no picture. */
export function formOf(state: Bringing, taken: readonly string[]): NewKitForm | undefined {
  const picture = pictureOf(state);
  return (
    picture && {
      picture,
      title: (state.title ?? "").trim() || proposedTitle(state),
      slug: slugShown(state, taken),
      book: state.book,
      light: state.light,
      relief: state.relief,
      units: state.units,
      draft: state.draft,
    }
  );
}

/** The folder's name as it stands in its field. */
export function slugShown(state: Bringing, taken: readonly string[]): string {
  if (state.slug !== undefined) return state.slug;
  return freeName(slugOf((state.title ?? "").trim() || proposedTitle(state)), taken);
}

/** What a kit may be called after its picture. */
export function proposedTitle({ origin, brought, word, outline, icon }: Bringing): string {
  switch (origin) {
    case "file":
      return titleOf((brought?.name ?? "").replace(/\.[^.]*$/, ""));
    case "word":
      return word.replaceAll(/\s+/g, " ").trim().slice(0, 100);
    case "outline":
      return capital(say.newOutlineName({ outline }));
    case "icon":
      return titleOf(icon ?? "");
  }
}

function pictureOf(state: Bringing): NewKitForm["picture"] | undefined {
  const { origin, brought, word, font, outline, icon } = state;
  switch (origin) {
    case "file":
      return brought && { from: "brought", upload: brought.upload, wish: wishOf(state) };
    case "word":
      return word.trim() === "" ? undefined : { from: "word", text: word.trim(), ...(font === "" ? {} : { font }) };
    case "outline":
      return { from: "outline", name: outline };
    case "icon":
      return icon === undefined ? undefined : { from: "icon", name: icon };
  }
}

/** Of a photograph only what its kind of tracing takes. */
function wishOf({ brought, crop, parting, marks }: Bringing): PictureWish {
  if (brought?.seen.kind !== "photograph") return { crop, marks };
  const { near, limits, ...fine } = parting;
  return parting.trace === "colours" ? { crop, marks, parting: fine } : { crop, parting: { near, limits, ...fine } };
}
