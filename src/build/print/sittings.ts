import type { PrintJob } from "./print-job.ts";

/** The jobs of one page for as long as it stands open: at least one. */
export type Sitting = readonly PrintJob[];

/**
 * Jobs by their page, which is opened once for all of them. What leaves sheets out comes last, as those do not come back; what
 * differs in the paper only stands together.
 */
export function sittings(jobs: readonly PrintJob[]): Sitting[] {
  const byPage = Map.groupBy(jobs, ({ page }) => page);
  return [...byPage.values()].map((own) =>
    own.toSorted((one, other) => Number(one.without !== undefined) - Number(other.without !== undefined)),
  );
}
