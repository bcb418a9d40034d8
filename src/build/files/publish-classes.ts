import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { isOver } from "../../core/class/class-state.ts";
import type { NamedSheet } from "../../core/class/preparation.ts";
import { OPERATIONS } from "../../core/packing/operation.ts";
import { type CutFile, versions } from "../../output/cut/cut-files.ts";
import { withNames } from "../../output/cut/pencil-names.ts";
import { classCalendar } from "../../output/feeds/calendar.ts";
import { CALENDAR } from "../../output/feeds/calendar-file.ts";
import { privateFolder } from "../../output/private-folder.ts";
import type { ClassView } from "../../output/views/class/class-view.ts";
import { rowText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { materialName } from "../../words/parts.ts";
import { seatPartNames, seatPartsText } from "../../words/seats.ts";
import type { Library } from "../library/library.ts";
import { writeCutFiles, writePatternFiles } from "./publish-files.ts";

/**
 * Writes each seat's pattern, pictures and cut files beside its page, the cut sheets of the whole class among the teacher's
 * papers, and what a calendar reads of a class to come.
 */
export async function publishClasses(
  output: string,
  { classes, settings }: Pick<Library, "classes" | "settings">,
): Promise<void> {
  for (const view of classes) {
    const folder = join(output, "classes", view.slug);
    mkdirSync(folder, { recursive: true });
    if (!isOver(view.plan.state)) writeFileSync(join(folder, CALENDAR), classCalendar(view.plan, settings));
    for (const seat of view.seats)
      if (seat.view) await writePatternFiles(join(folder, `seat-${seat.number}`), seat.view, seat.number);
    writeCutFiles(
      join(output, privateFolder(view.slug), "cut"),
      view.sheets.flatMap((sheet) => sheetFiles(view, sheet)),
    );
  }
}

function sheetFiles({ slug, plan }: ClassView, { name, size, sheet }: NamedSheet): CutFile[] {
  return versions(name, {
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
  });
}
