import type { Kit, Photo } from "../../core/kit/kit.ts";
import { computePattern } from "../../core/pattern/compute.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import { type Counts, countsOf, difficultyOf, type Effort, effortOf } from "../../core/plan/effort.ts";
import { tackList } from "../../core/plan/tack-list.ts";
import { type Field, fieldsOf } from "../../core/refit/fields.ts";
import { costOf, type Supply, suppliesOf, supplyLine } from "../../core/supplies/supplies.ts";
import { stepFor, type UnitSystem } from "../../core/units/length.ts";
import type { KitFolder } from "../../input/kit/read-kit.ts";
import { type Dual, dual, styleFor } from "../../words/dual.ts";
import { formatLength, formatNumber } from "../../words/lengths.ts";
import { cutDepth } from "../drawing/diagrams/cut-depth.ts";
import { lineLegend } from "../drawing/diagrams/line-legend.ts";
import { measureBook } from "../drawing/diagrams/measure-book.ts";
import { wholeLeaf } from "../drawing/diagrams/whole-leaf.ts";
import type { Figure } from "../drawing/figure.ts";
import { type Caution, cautionsFor } from "./cautions.ts";
import { type Edition, editionOf } from "./edition.ts";
import { figuresOf, type KitFigures } from "./figures.ts";
import { lazily, once } from "./lazily.ts";
import { PHOTO_WIDTHS, photoFile } from "./photo-files.ts";
import { type Preparation, preparationOf } from "./preparation.ts";
import { leafAndPage, type NotchText, notchText, type Row, rowOf } from "./row.ts";
import { type Step, stepsOf } from "./steps.ts";
import { type PocketView, pocketView, type WindowView, windowView } from "./window-view.ts";

/** A row of the page's table: the leaf, and its marks in both unit systems. */
export interface DualRow {
  readonly row: Row;
  readonly marks: Dual<Row["marks"]>;
  /** Folds differ between the unit systems only where rounding absorbed another span. */
  readonly folds: Dual<Row["folds"]>;
  readonly sameFolds: boolean;
  readonly notch: Dual<NotchText> | undefined;
}

/** Everything that a kit's page shows, as text and figures ready to print. */
export interface KitView {
  readonly slug: string;
  readonly kit: Kit;
  readonly pattern: Pattern;
  /** The pattern with marks that a ruler in the kit's units has. */
  readonly shown: Pattern;
  readonly counts: Counts;
  readonly effort: Effort;
  readonly difficulty: string;
  readonly figures: KitFigures;
  readonly preparation: Preparation;
  readonly rows: readonly DualRow[];
  readonly steps: readonly Step[];
  /** What the lines of the diagrams mean. */
  readonly legend: Figure;
  /** What is measured on a book, with this one's figures. */
  readonly measuring: Figure;
  /** How a row of the table is read: one leaf whole, and how deep a cut goes. */
  readonly reading: readonly Figure[];
  readonly supplies: readonly (Supply & { readonly line: string })[];
  readonly cautions: readonly Caution[];
  readonly notes: readonly string[];
  readonly tacks: TackView;
  readonly absorbed: readonly {
    readonly leaf: string;
    readonly place: Dual;
    readonly level: number;
    readonly into: number;
  }[];
  readonly pocket: PocketView | undefined;
  readonly window: WindowView | undefined;
  /** Sum of the stated prices with currency, or empty. */
  readonly cost: string;
  readonly photos: readonly PhotoView[];
  readonly edition: Edition;
  /** The fit panel: fields with what the kit says. */
  readonly refitGroups: readonly RefitGroup[];
}

export interface RefitGroup {
  readonly title: string;
  readonly fields: readonly (Pick<Field, "name" | "label" | "help" | "options"> & { readonly value: string })[];
}

/** A photo with its files for `srcset`. */
export interface PhotoView {
  readonly alt: string;
  readonly webp: string;
  readonly jpeg: string;
  readonly fallback: string;
}

export interface TackView {
  readonly rows: readonly { readonly leaf: string; readonly place: Dual }[];
  /** Free stretches too short to need glue. */
  readonly held: number;
}

/** Prepares one kit for its page; what only the printed packet has is added by packet-view.ts. Pure. */
export function viewKit(folder: KitFolder, cautions: readonly Caution[]): KitView {
  const { kit, pattern } = folder;
  const counts = countsOf(pattern);
  const effort = effortOf(counts, kit.rates);
  const style = styleFor(kit.units, kit.fit.markStep);
  const shown = atStep(kit, pattern, style.step);
  const supplies = once(() =>
    suppliesOf(kit, pattern, counts).map((supply) => ({ ...supply, line: supplyLine(supply) })),
  );
  return lazily<KitView>({
    slug: () => kit.slug,
    kit: () => kit,
    pattern: () => pattern,
    shown: () => shown,
    counts: () => counts,
    effort: () => effort,
    difficulty: () => difficultyOf(pattern, effort),
    figures: () => figuresOf(kit, pattern, counts, effort),
    preparation: () => preparationOf(kit, pattern),
    rows: () => dualRows(kit, pattern, shown),
    steps: () => stepsOf(kit, pattern, counts, effort),
    legend: lineLegend,
    measuring: () => measureBook(kit),
    reading: () => [wholeLeaf(kit, shown), cutDepth(kit, shown)].filter((figure) => figure !== undefined),
    supplies,
    cautions: () => cautionsFor(cautions, counts, kit.light !== undefined),
    notes: () => folder.pictureNotes,
    tacks: () => tackView(kit, pattern),
    absorbed: () => absorbedView(kit, pattern),
    pocket: () => pocketView(kit, pattern),
    window: () => windowView(kit, pattern),
    cost: () => costText(kit, supplies()),
    photos: () => kit.photos.map(photoView),
    edition: () => editionOf(kit),
    refitGroups: () => refitGroups(kit),
  });
}

function absorbedView(kit: Kit, pattern: Pattern): KitView["absorbed"] {
  return pattern.absorbed.map((span) => ({
    leaf: `leaf ${span.leaf}`,
    place: stretch(span.from, span.to, kit.fit.markStep),
    level: span.level,
    into: span.into,
  }));
}

function photoView(photo: Photo): PhotoView {
  return {
    alt: photo.alt,
    webp: sourceSet(photo, "webp"),
    jpeg: sourceSet(photo, "jpg"),
    fallback: photoFile(photo, PHOTO_WIDTHS[1], "jpg"),
  };
}

/** The pattern with marks that a ruler in the kit's units has: rounded from the picture, not from other marks. */
function atStep(kit: Kit, pattern: Pattern, markStep: number): Pattern {
  if (Math.abs(markStep - kit.fit.markStep) < 1e-6) return pattern;
  return computePattern({ ...kit, fit: { ...kit.fit, markStep, head: pattern.fit.head } });
}

/** Marks in the other unit system are rounded from the picture, not from the kit's own marks. */
function dualRows(kit: Kit, pattern: Pattern, shown: Pattern): DualRow[] {
  const other: UnitSystem = kit.units === "mm" ? "in" : "mm";
  const markStep = stepFor(other, kit.fit.markStep);
  const twin = computePattern({
    ...kit,
    light: undefined,
    insert: undefined,
    units: other,
    fit: { ...kit.fit, markStep, head: pattern.fit.head },
  });
  const style = styleFor(kit.units, kit.fit.markStep);
  const rows = shown.leaves.map((leaf) => rowOf(leaf, shown, style));
  const twinRows = twin.leaves.map((leaf) => rowOf(leaf, twin, styleFor(other, markStep)));
  return rows.map((row, i) => {
    const twinRow = twinRows[i]!;
    const of = <T>(pick: (row: Row) => T): Dual<T> => dual((units) => pick(units === kit.units ? row : twinRow));
    const notch = pattern.pocket?.notches.find((one) => one.leaf === row.leaf);
    return {
      row,
      marks: of((one) => one.marks),
      folds: of((one) => one.folds),
      sameFolds: row.folds.join() === twinRow.folds.join(),
      notch: notch && dual((units) => notchText(notch, styleFor(units, kit.fit.markStep))!),
    };
  });
}

function refitGroups(kit: Kit): RefitGroup[] {
  const fields = fieldsOf(kit);
  const groups = [
    { group: "book", title: "My book" },
    { group: "fold", title: "My gauge and folds" },
    { group: "light", title: "My light" },
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

function sourceSet(photo: Photo, kind: "webp" | "jpg"): string {
  return PHOTO_WIDTHS.map((width) => `${photoFile(photo, width, kind)} ${width}w`).join(", ");
}

function costText(kit: Kit, supplies: readonly Supply[]): string {
  const cost = costOf(supplies);
  return cost === undefined ? "" : `${cost.toFixed(2)} ${kit.currency}`.trim();
}

function tackView(kit: Kit, pattern: Pattern): TackView {
  const { glued, held } = tackList(pattern);
  return {
    rows: glued.map((tack) => ({ leaf: leafAndPage(tack.leaf), place: stretch(tack.from, tack.to, kit.fit.markStep) })),
    held,
  };
}

/** `46.5–62 mm` from the head. */
function stretch(from: number, to: number, step: number): Dual {
  return dual((units) => `${formatNumber(from, styleFor(units, step))}–${formatLength(to, styleFor(units, step))}`);
}
