import type { ClassView } from "../output/views/class/class-view.ts";

/** With it, a seat whose book does not fit stops the command. */
export const STOP_AT_MISFIT = "--stop-at-misfit";

/** Seats that do not fit, where the teacher asked to stop at them. */
export class MisfitError extends Error {}

/** Tells of each class and lists the seats whose book does not fit, with what would help. @throws MisfitError where asked to stop */
export function reportClasses(
  classes: readonly ClassView[],
  stop: boolean,
  log: (line: string) => void = console.warn,
): void {
  const lines = classes.flatMap(misfitLines);
  if (lines.length > 0 && stop) throw new MisfitError(lines.join("\n"));
  for (const line of lines) log(line);
  for (const { slug, warnings, unusedStock } of classes) {
    for (const { seat, warnings: own } of warnings)
      for (const warning of own) log(`warning  ${slug}, seat ${seat}: ${warning}`);
    for (const item of unusedStock) log(`warning  ${slug}: stock "${item}" is nothing on the shopping list`);
  }
}

function misfitLines({ slug, seats }: ClassView): string[] {
  return seats.flatMap(({ number, kitSlug, misfit }) => {
    if (!misfit) return [];
    const help = [
      ...misfit.offers.map((offer) => offer.words),
      ...misfit.otherKits.map((other) => `${other.title} instead ${other.words}`),
      misfit.todo,
    ];
    return [
      `${slug}, seat ${number}: ${kitSlug} does not fit its book: ${misfit.why}. What would help:`,
      ...help.map((words) => `  - ${words}`),
    ];
  });
}
