import type { PrintJob } from "./print-job.ts";

/** The jobs of one page for as long as it stands open: at least one. */
export type Sitting = readonly PrintJob[];

/**
 * Jobs by their page, which is opened once for all of them. What changes the page comes last, as that is not undone; what
 * differs in the paper only stands together.
 */
export function sittings(jobs: readonly PrintJob[]): Sitting[] {
  const byPage = Map.groupBy(jobs, ({ page }) => page);
  return [...byPage.values()].map((own) =>
    own.toSorted((one, other) => Number(one.edition !== undefined) - Number(other.edition !== undefined)),
  );
}
