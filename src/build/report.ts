import type { ClassView } from "../output/views/class/class-view.ts";
import { type Help, helpsOf } from "../output/views/class/misfit-view.ts";
import * as say from "../words/messages.ts";
import { printable } from "../words/printable.ts";
import { seatsText } from "../words/seats.ts";
import { BuildError } from "./errors/build-error.ts";

/** Seats that do not fit, where the teacher asked to stop at them. */
export class MisfitError extends BuildError {}

/** Tells of each class and lists the seats whose book does not fit, with what would help. @throws MisfitError where asked to stop */
export function reportClasses(
  classes: readonly ClassView[],
  stop: boolean,
  log: (line: string) => void = console.warn,
): void {
  const lines = classes.flatMap(misfitLines);
  if (lines.length > 0 && stop) throw new MisfitError(lines.join("\n"));
  for (const line of [...classes.flatMap(awaitingLines), ...lines, ...classes.flatMap(warningLines)])
    log(printable(line));
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
