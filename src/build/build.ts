import { existsSync, renameSync, rmSync } from "node:fs";
import Eleventy from "@11ty/eleventy";
import { KitError } from "../input/files/message.ts";
import { bundlePageScripts } from "./bundle/page-scripts.ts";
import { bundleScripts } from "./bundle/scripts.ts";
import { publishClasses } from "./files/publish-classes.ts";
import { publishFiles } from "./files/publish-files.ts";
import { leftOut, writeSiteFiles } from "./files/site-files.ts";
import { openLibrary } from "./library.ts";
import { writeOffline } from "./offline/write-offline.ts";
import { PrintError } from "./print/print-jobs.ts";
import { printPackets } from "./print/print-packets.ts";
import { MisfitError, reportClasses, STOP_AT_MISFIT } from "./report.ts";

/** Builds the site beside `dist` and puts it in place only when all of it is there; a kit that cannot be built stops it first. */
const BESIDE = ".cache/site";

try {
  const library = openLibrary(process.cwd());
  const { views, classes, settings } = library;
  for (const { kit, pattern, notes } of views) {
    for (const warning of [...pattern.warnings, ...notes]) console.warn(`warning  ${kit.slug}: ${warning}`);
  }
  reportClasses(classes, process.argv.includes(STOP_AT_MISFIT));
  rmSync(BESIDE, { recursive: true, force: true });
  const eleventy = new Eleventy("content", BESIDE, { configPath: ".eleventy.js", quietMode: true });
  await eleventy.write();
  await bundlePageScripts(BESIDE, library);
  await publishFiles("content", BESIDE, views);
  publishClasses(BESIDE, classes);
  writeSiteFiles(
    BESIDE,
    views.map(({ kit }) => kit),
    classes.map(({ slug }) => slug),
    settings,
  );
  await bundleScripts(BESIDE, library);
  await printPackets(BESIDE, views, classes);
  await writeOffline(BESIDE, settings);
  rmSync("dist", { recursive: true, force: true });
  renameSync(BESIDE, "dist");
  const left = leftOut(settings);
  if (left) console.log(left);
  const count = (many: number, one: string, more: string): string => `${many} ${many === 1 ? one : more}`;
  const held = classes.length > 0 ? ` and ${count(classes.length, "class", "classes")}` : "";
  console.log(`${count(views.length, "kit", "kits")}${held} in dist: open dist/index.html`);
} catch (error) {
  if (existsSync(BESIDE)) rmSync(BESIDE, { recursive: true, force: true });
  console.error(
    error instanceof KitError || error instanceof PrintError || error instanceof MisfitError
      ? `\n${error.message}\n\nNothing was built; dist is as it was.`
      : error,
  );
  process.exitCode = 1;
}
