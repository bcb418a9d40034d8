import { existsSync, renameSync, rmSync } from "node:fs";
import { WordsError } from "../input/words/words-error.ts";
import * as say from "../words/messages.ts";
import { runCommand } from "./errors/command.ts";
import { leftOut } from "./files/site-files.ts";
import { currentLibrary } from "./library/current-library.ts";
import { STOP_AT_MISFIT } from "./report.ts";
import { runBuild } from "./stages.ts";

/** Builds the site beside `dist` and puts it in place only when all of it is there; a kit that cannot be built stops it first. */
const BESIDE = ".cache/site";

await runCommand(async () => {
  try {
    rmSync(BESIDE, { recursive: true, force: true });
    const stopAtMisfit = process.argv.includes(STOP_AT_MISFIT);
    await runBuild({ base: process.cwd(), output: BESIDE, serving: false, stopAtMisfit });
    rmSync("dist", { recursive: true, force: true });
    renameSync(BESIDE, "dist");
  } finally {
    if (existsSync(BESIDE)) rmSync(BESIDE, { recursive: true, force: true });
  }
  tellMade();
}, nothingBuilt);

/** Said without words where there are none to say it with. */
function nothingBuilt(error: unknown): string {
  return error instanceof WordsError ? "Nothing was built; dist is as it was." : say.checkNothingBuilt();
}

function tellMade(): void {
  const { views, classes, settings } = currentLibrary();
  const left = leftOut(settings);
  if (left) console.log(left);
  const made = { kits: views.length, page: "dist/index.html" };
  console.log(
    classes.length === 0 ? say.checkKitCount(made) : say.checkKitsAndClasses({ ...made, classes: classes.length }),
  );
}
