import { contentPath } from "../input/files/content-folder.ts";
import * as say from "../words/messages.ts";
import { type Asked, type Flag, readAsked } from "./asked.ts";
import { clearBrowsers } from "./browser/browser-leftovers.ts";
import { BuildError } from "./errors/build-error.ts";
import { runCommand } from "./errors/command.ts";
import { inFolders } from "./in-folders.ts";
import { speakFirst } from "./library/first-words.ts";
import { makePart } from "./make-part.ts";
import { endWhenInterrupted } from "./making/at-exit.ts";
import { type AskedPart, PART_OPTIONS, takePart, usualOutput } from "./shards/asked-part.ts";
import { chooseSite, outputFolder, USUAL_OUTPUT } from "./site/choose-site.ts";
import { optionNames } from "./site/site-choices.ts";
import { runBuild } from "./stages.ts";
import { nothingBuilt, tellMade } from "./tell.ts";

/** Builds the site beside `dist` and puts it in place only when all of it is there; a kit that cannot be built stops it first. Or builds a part of it, to be joined later. */
const base = process.cwd();
const CHOICES = ["content", "output", "url"] as const;
const FLAGS: readonly Flag[] = ["stop-at-misfit", "no-packets"];
let output = USUAL_OUTPUT;

await runCommand(
  async () => {
    endWhenInterrupted();
    speakFirst(base);
    const words = chooseSite(base, process.argv.slice(2), CHOICES);
    const { part, rest } = takePart(words);
    const asked = readAsked(rest, FLAGS, optionNames([...CHOICES, ...PART_OPTIONS]));
    await (part ? buildPart(part, asked) : buildSite(asked));
    if (!asked.packets) console.warn(say.checkWithoutPackets());
  },
  (error) => nothingBuilt(error, output),
);

async function buildSite(asked: Asked): Promise<void> {
  output = outputFolder(base, contentPath());
  clearBrowsers();
  await inFolders(base, output, (folders) => runBuild({ base, ...folders, ...asked }));
  tellMade(output);
  if (asked.kits.length > 0) console.log(say.checkPartOfSite());
}

async function buildPart(part: AskedPart, asked: Asked): Promise<void> {
  const [named] = asked.kits;
  if (named !== undefined) throw new BuildError(say.sitePartAndNames({ kit: named }));
  output = outputFolder(base, contentPath(), "part", usualOutput(part));
  clearBrowsers();
  const kits = await inFolders(base, output, (folders) => makePart(part, { base, ...folders, ...asked }));
  console.log(say.sitePartMade({ kits, output }));
}
