import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { isOver } from "../../core/class/class-state.ts";
import type { NamedSheet } from "../../core/class/preparation.ts";
import { type CutDrawing, OPERATIONS } from "../../core/packing/operation.ts";
import type { SiteSettings } from "../../core/site-settings.ts";
import { filesOf } from "../../output/cut/cut-forms.ts";
import { withNames } from "../../output/cut/pencil-names.ts";
import { CUT_FORMS } from "../../output/cut/written-forms.ts";
import { classCalendar } from "../../output/feeds/calendar.ts";
import { CALENDAR } from "../../output/feeds/calendar-file.ts";
import { CUT_SHEETS } from "../../output/parts/class/print-plan-page.ts";
import { privateFolder } from "../../output/private-folder.ts";
import type { ClassView } from "../../output/views/class/class-view.ts";
import { rowText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { materialName } from "../../words/parts.ts";
import { seatPartNames, seatPartsText } from "../../words/seats.ts";
import { writeCutFiles, writeSeatFiles } from "./publish-files.ts";

/**
 * Writes each seat's pattern, pictures and cut files beside its page, the cut sheets of the whole class among the teacher's
 * papers, and what a calendar reads of a class to come.
 */
export async function publishClass(output: string, view: ClassView, settings: SiteSettings): Promise<void> {
  const folder = join(output, "classes", view.slug);
  mkdirSync(folder, { recursive: true });
  if (!isOver(view.plan.state)) writeFileSync(join(folder, CALENDAR), classCalendar(view.plan, settings));
  for (const seat of view.seats)
    if (seat.view) await writeSeatFiles(join(folder, `seat-${seat.number}`), seat.view, seat.number);
  await writeSheets(join(output, privateFolder(view.slug)), view);
}

/** The cut sheets as files for cutters, in every form, as no page makes them, and all in one PDF at true size for a knife. */
async function writeSheets(folder: string, view: ClassView): Promise<void> {
  if (view.sheets.length === 0) return;
  const drawings = view.sheets.map((sheet) => ({ name: sheet.name, drawing: sheetDrawing(view, sheet) }));
  writeCutFiles(
    join(folder, "cut"),
    drawings.flatMap((one) => filesOf(one, CUT_FORMS)),
  );
  // The library that writes PDFs takes its time to load, and most sites have no class with sheets.
  const [{ cutSheetsPdf }, { finishPdf }] = await Promise.all([
    import("./cut-sheets-pdf.ts"),
    import("../print/finish-pdf.ts"),
  ]);
  const pdf = await cutSheetsPdf(drawings);
  writeFileSync(join(folder, CUT_SHEETS), await finishPdf(pdf, say.printCutSheets({ title: view.plan.title })));
}

function sheetDrawing({ slug, plan }: ClassView, { size, sheet }: NamedSheet): CutDrawing {
  return {
    title: say.sheetTitle({
      class: plan.title,
      material: materialName(sheet),
      size: size.name,
      number: sheet.number,
      parts: seatPartsText(sheet.parts),
    }),
    about: say.sheetAbout({ class: slug, layers: rowText(OPERATIONS) }),
    width: size.width,
    height: size.height,
    paths: withNames(sheet, size, seatPartNames),
  };
}
