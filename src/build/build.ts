import { mkdirSync } from "node:fs";
import { join, relative } from "node:path";
import { contentPath } from "../input/files/content-folder.ts";
import { WordsError } from "../input/words/words-error.ts";
import { PRIVATE } from "../output/private-folder.ts";
import * as say from "../words/messages.ts";
import { readAsked } from "./asked.ts";
import { clearBrowsers } from "./browser/browser-leftovers.ts";
import { runCommand } from "./errors/command.ts";
import { leftOut } from "./files/site-files.ts";
import { speakFirst } from "./library/first-words.ts";
import { currentLibrary } from "./library/held-library.ts";
import { endWhenInterrupted } from "./making/at-exit.ts";
import { inTransaction } from "./making/transaction.ts";
import { chooseSite, outputFolder, USUAL_OUTPUT } from "./site/choose-site.ts";
import { optionNames } from "./site/site-choices.ts";
import { runBuild } from "./stages.ts";

/** Builds the site beside `dist` and puts it in place only when all of it is there; a kit that cannot be built stops it first. */
const base = process.cwd();
const CHOICES = ["content", "output", "url"] as const;
let output = USUAL_OUTPUT;

await runCommand(async () => {
  endWhenInterrupted();
  speakFirst(base);
  const words = chooseSite(base, process.argv.slice(2), CHOICES);
  const asked = readAsked(words, ["stop-at-misfit", "no-packets"], optionNames(CHOICES));
  output = outputFolder(base, contentPath());
  clearBrowsers();
  await inTransaction({ base, output }, async (folder) => {
    const aside = join(folder, "../aside");
    mkdirSync(aside, { recursive: true });
    const [site, beside] = [folder, aside].map((one) => relative(base, one));
    await runBuild({ base, output: site!, aside: beside!, ...asked });
  });
  tellMade(output);
  if (asked.kits.length > 0) console.log(say.checkPartOfSite());
  if (!asked.packets) console.warn(say.checkWithoutPackets());
}, nothingBuilt);

/** Said without words where there are none to say it with. */
function nothingBuilt(error: unknown): string {
  return error instanceof WordsError ? `Nothing was built; ${output} is as it was.` : say.checkNothingBuilt({ output });
}

function tellMade(folder: string): void {
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
