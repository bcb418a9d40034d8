import { reservedHost } from "../input/settings/reserved-host.ts";
import { settingsFile, URL_VARIABLE } from "../input/settings/settings.ts";
import { WordsError } from "../input/words/words-error.ts";
import { PRIVATE } from "../output/private-folder.ts";
import { rowText } from "../words/lists.ts";
import * as say from "../words/messages.ts";
import { printable } from "../words/printable.ts";
import { leftOut } from "./files/site-files.ts";
import { tellReports } from "./library/class-report.ts";
import { currentLibrary } from "./library/held-library.ts";

/** The most names of stray files in a line. */
const MOST_STRAYS = 8;

/** Tells the warnings of kits and classes, and what lies about. @throws MisfitError where a seat does not fit and that is to stop */
export function tellWarnings({ stopAtMisfit }: { readonly stopAtMisfit: boolean }): void {
  const { kits, classes, warnings: inTexts } = currentLibrary();
  tellNobodysAddress();
  for (const warning of inTexts) console.warn(printable(say.checkWarningInside({ warning })));
  for (const { slug, warnings, notes } of kits) {
    for (const warning of warnings) console.warn(printable(say.checkWarning({ name: slug, warning })));
    for (const note of notes) console.warn(printable(say.checkNote({ note })));
  }
  tellDrafts();
  tellStrays();
  tellReports(
    classes.map(({ report }) => report),
    stopAtMisfit,
  );
}

/** Codes that are printed for a class lead nowhere where the site's address is one of those kept for examples. */
export function tellNobodysAddress(): void {
  const { classes, settings } = currentLibrary();
  const host = settings.url === undefined ? undefined : reservedHost(settings.url);
  const printed = classes.filter(({ card }) => card.plan.state !== "closed").length;
  if (host === undefined || printed === 0) return;
  const warning = say.checkNobodysAddress({ host, file: settingsFile(), variable: URL_VARIABLE });
  console.warn(printable(say.checkWarningInside({ warning })));
}

/** Tells of the kits that are not published yet. */
export function tellDrafts(): void {
  for (const { slug, folder, why } of currentLibrary().drafts) {
    const note = why === "stated" ? say.checkDraft({ folder, kit: slug }) : say.checkNoKitYet({ folder });
    console.warn(printable(say.checkNote({ note })));
  }
}

/** Tells once of each folder what nothing in it names. */
export function tellStrays(): void {
  for (const { folder, names } of currentLibrary().strays) {
    const shown = rowText(names.slice(0, MOST_STRAYS));
    const more = names.length - MOST_STRAYS;
    const list = more > 0 ? say.checkStraysMore({ names: shown, more }) : shown;
    console.warn(printable(say.checkNote({ note: say.checkStrays({ folder, count: names.length, names: list }) })));
  }
}

/** Tells what a site was made of, where it is, and what of it is not to be published. */
export function tellMade(folder: string): void {
  const { kits, classes, settings } = currentLibrary();
  const left = leftOut(settings);
  if (left) console.log(left);
  if (classes.some(({ card }) => card.plan.state !== "closed"))
    console.log(say.checkPrivate({ folder: `${folder}/${PRIVATE}` }));
  const made = { kits: kits.length, output: folder, page: `${folder}/index.html` };
  console.log(
    classes.length === 0 ? say.checkKitCount(made) : say.checkKitsAndClasses({ ...made, classes: classes.length }),
  );
}

/** Said without words where there are none to say it with. */
export function nothingBuilt(error: unknown, output: string): string {
  return error instanceof WordsError ? `Nothing was built; ${output} is as it was.` : say.checkNothingBuilt({ output });
}
