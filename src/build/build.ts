import { relative } from "node:path";
import { WordsError } from "../input/words/words-error.ts";
import { PRIVATE } from "../output/private-folder.ts";
import * as say from "../words/messages.ts";
import { readAsked } from "./asked.ts";
import { clearBrowsers } from "./browser/browser-leftovers.ts";
import { runCommand } from "./errors/command.ts";
import { leftOut } from "./files/site-files.ts";
import { currentLibrary } from "./library/current-library.ts";
import { speakFirst } from "./library/first-words.ts";
import { endWhenInterrupted } from "./making/at-exit.ts";
import { inTransaction } from "./making/transaction.ts";
import { runBuild } from "./stages.ts";

/** Builds the site beside `dist` and puts it in place only when all of it is there; a kit that cannot be built stops it first. */
const base = process.cwd();

await runCommand(async () => {
  endWhenInterrupted();
  speakFirst(base);
  const { kits, stopAtMisfit } = readAsked(process.argv.slice(2));
  clearBrowsers();
  await inTransaction({ base, output: "dist" }, (folder) =>
    runBuild({ base, output: relative(base, folder), serving: false, kits, stopAtMisfit }),
  );
  tellMade();
  if (kits.length > 0) console.log(say.checkPartOfSite());
}, nothingBuilt);

/** Said without words where there are none to say it with. */
function nothingBuilt(error: unknown): string {
  return error instanceof WordsError ? "Nothing was built; dist is as it was." : say.checkNothingBuilt();
}

function tellMade(): void {
  const { views, classes, settings } = currentLibrary();
  const left = leftOut(settings);
  if (left) console.log(left);
  if (classes.length > 0) console.log(say.checkPrivate({ folder: `dist/${PRIVATE}` }));
  const made = { kits: views.length, page: "dist/index.html" };
  console.log(
    classes.length === 0 ? say.checkKitCount(made) : say.checkKitsAndClasses({ ...made, classes: classes.length }),
  );
}
