import type { CutOutSheets } from "../../output/parts/print-plan.ts";

/** What a packet's cover counts: the pages before the gauge, and the sheets from there on. */
export interface CountedPacket {
  readonly pages: number;
  readonly sheets: CutOutSheets;
}

/**
 * Runs in a packet's page under print media: how many pages come before the gauge. Text breaks between columns as it does
 * between pages, so it is set in columns as high as a page, `room` mm, for a moment. Nothing on a page without a plan.
 */
export function countPages(room: number): CountedPacket | undefined {
  const plan = document.querySelector<HTMLElement>("[data-print-plan]");
  const flow = document.querySelector<HTMLElement>("[data-flow]");
  if (!plan || !flow) return undefined;
  const { width } = flow.getBoundingClientRect();
  flow.style.cssText = `columns: auto; column-width: ${width}px; column-gap: 0; column-fill: auto; height: ${room}mm; overflow: visible`;
  const columns = Math.round(flow.scrollWidth / width);
  flow.style.cssText = "";
  const sheets: CutOutSheets = JSON.parse(plan.dataset["printPlan"] ?? "");
  return { pages: 1 + columns, sheets };
}

/** Runs in the page: takes sheets out of a packet, and out of what its cover counts. */
export function leaveOut(sheets: "strips"): void {
  for (const sheet of document.querySelectorAll(`[data-sheet="${sheets}"]`)) sheet.remove();
  const plan = document.querySelector<HTMLElement>("[data-print-plan]")!;
  plan.dataset["printPlan"] = JSON.stringify({ ...JSON.parse(plan.dataset["printPlan"]!), [sheets]: 0 });
}

/** Runs in the page: writes the plan on the cover. */
export function writePlan(items: string): void {
  document.querySelector("[data-print-plan]")!.innerHTML = items;
}
