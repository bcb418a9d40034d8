import { isGrave } from "../../core/findings/doubt.ts";
import type { ClassView } from "../../output/views/class/class-view.ts";
import { type Help, helpsOf } from "../../output/views/class/misfit-view.ts";
import * as say from "../../words/messages.ts";
import { printable } from "../../words/printable.ts";
import { seatsText } from "../../words/seats.ts";
import { BuildError } from "../errors/build-error.ts";

/** Seats that do not fit, where the teacher asked to stop at them. */
export class MisfitError extends BuildError {}

/** What is told of a class on the terminal, in lines. */
export interface ClassReport {
  /** Seats whose books are still to come. */
  readonly awaiting: readonly string[];
  /** Seats whose book does not fit, with what would help. */
  readonly misfits: readonly string[];
  /** What may disappoint. */
  readonly doubts: readonly string[];
  /** Whether a seat’s book is to be looked at before it is begun. */
  readonly isGrave: boolean;
}

export function classReport(view: ClassView): ClassReport {
  const isGraveSeat = view.seats.some((seat) => seat.view?.findings.some(isGrave));
  return {
    awaiting: awaitingLines(view),
    misfits: misfitLines(view),
    doubts: warningLines(view),
    isGrave: isGraveSeat,
  };
}

/** Tells of each class. @throws MisfitError where a seat's book does not fit and that is to stop */
export function tellReports(
  reports: readonly ClassReport[],
  stop: boolean,
  log: (line: string) => void = console.warn,
): void {
  const misfits = reports.flatMap((one) => one.misfits);
  if (misfits.length > 0 && stop) throw new MisfitError(misfits.join("\n"));
  const all = [...reports.flatMap((one) => one.awaiting), ...misfits, ...reports.flatMap((one) => one.doubts)];
  for (const line of all) log(printable(line));
}

function awaitingLines({ slug, plan: { seats, awaiting } }: ClassView): string[] {
  if (awaiting.length === 0) return [];
  const numbers = seatsText(awaiting.map(({ number }) => number));
  const all = seats.length + awaiting.length;
  return [say.reportAwaiting({ class: slug, books: seats.length, all, count: awaiting.length, seats: numbers })];
}

function misfitLines({ slug, seats }: ClassView): string[] {
  return seats.flatMap(({ number, kitSlug, misfit }) => {
    if (!misfit) return [];
    const why = say.reportMisfit({ class: slug, seat: number, kit: kitSlug, why: misfit.why });
    return [why, ...helpsOf(misfit).flatMap(helpLines)];
  });
}

function helpLines({ words, entry }: Help): string[] {
  return [say.reportHelp({ help: words }), ...(entry ? [say.reportEntry({ into: entry.into, text: entry.text })] : [])];
}

function warningLines({ slug, seats, unusedStock }: ClassView): string[] {
  return [
    ...seats.flatMap(({ number, doubts }) =>
      doubts.map((doubt) => say.reportDoubt({ class: slug, seat: number, doubt })),
    ),
    ...unusedStock.map((item) => say.reportUnusedStock({ class: slug, item })),
  ];
}
