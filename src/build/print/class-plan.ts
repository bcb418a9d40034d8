import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type CountedFile, PLANNED_FILES, type PlannedFile } from "../../core/class/print-plan.ts";
import { printPlanPage } from "../../output/parts/class/print-plan-page.ts";
import { privateFolder } from "../../output/private-folder.ts";
import type { ClassView } from "../../output/views/class/class-view.ts";
import { classSheetJob } from "./class-packets.ts";
import { countPdfPages } from "./count-pdf-pages.ts";
import type { PrintJob } from "./print-job.ts";

/** Counts the pages of a class's printed files into its print plan; the job that prints the plan. None where it is closed. */
export function countClass(output: string, view: ClassView): PrintJob[] {
  if (view.plan.state === "closed") return [];
  const job = classSheetJob(output, view, "print-plan");
  const files: CountedFile[] = [];
  for (const file of PLANNED_FILES) {
    const pages = pagesOf(join(output, placeOf(file, view)));
    if (pages > 0) files.push({ file, pages });
  }
  const html = readFileSync(job.page, "utf8");
  const plan = String(printPlanPage(view, files));
  writeFileSync(
    job.page,
    html.replace(/<section [^>]*data-class-plan[^>]*>[\s\S]*?<\/section>/, () => plan),
  );
  return [job];
}

function placeOf(file: PlannedFile, { slug, plan }: ClassView): string {
  if (file === "measuring-card") return `classes/${slug}/${file}.pdf`;
  const name = file === "teacher" ? file : `${file}-${plan.paper}`;
  return `${privateFolder(slug)}/${name}.pdf`;
}

/** Pages of a PDF; 0 where there is none. */
function pagesOf(path: string): number {
  return existsSync(path) ? countPdfPages(readFileSync(path)) : 0;
}
