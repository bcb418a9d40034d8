import { contentPath } from "../input/files/content-folder.ts";
import { slugOf } from "../input/files/folders.ts";
import * as say from "../words/messages.ts";
import { readAsked } from "./asked.ts";
import { clearBrowsers } from "./browser/browser-leftovers.ts";
import { BuildError } from "./errors/build-error.ts";
import { runCommand } from "./errors/command.ts";
import { inFolders } from "./in-folders.ts";
import { kitKey } from "./kits/read-kit-entry.ts";
import { speakFirst } from "./library/first-words.ts";
import { Gathering } from "./library/gathering.ts";
import { kitFolders } from "./library/kit-folders.ts";
import { readFacts } from "./library/site-facts.ts";
import { endWhenInterrupted } from "./making/at-exit.ts";
import { checkParts, type Joined } from "./shards/check-parts.ts";
import { partInputs } from "./shards/part-inputs.ts";
import { keepKnown, placeParts } from "./shards/place-parts.ts";
import { readPart } from "./shards/read-part.ts";
import { wholeSite } from "./shards/whole-site.ts";
import { chooseSite, outputFolder, USUAL_OUTPUT } from "./site/choose-site.ts";
import { optionNames } from "./site/site-choices.ts";
import { runBuild } from "./stages.ts";
import { Placing } from "./store/placing.ts";
import { Store } from "./store/store.ts";
import { nothingBuilt, tellMade } from "./tell.ts";

/** `npm run merge`: joins parts that several machines made to the whole site, as a build makes it; what belongs to no kit alone is made here. */
const base = process.cwd();
const CHOICES = ["content", "output", "url"] as const;
let output = USUAL_OUTPUT;

await runCommand(
  async () => {
    endWhenInterrupted();
    speakFirst(base);
    const words = chooseSite(base, process.argv.slice(2), CHOICES);
    const { kits: named, ...asked } = readAsked(words, ["stop-at-misfit", "no-packets"], optionNames(CHOICES));
    output = outputFolder(base, contentPath());
    if (named.length === 0) throw new BuildError(say.sitePartNone());
    const parts = named.map(readPart);
    checkParts(parts, await joinedHere(asked.packets));
    clearBrowsers();
    await inFolders(base, output, async (folders) => {
      const joined = new Placing(folders.output);
      placeParts(joined, parts);
      keepKnown(parts, new Store());
      await runBuild({ base, ...folders, ...asked, kits: [], joined });
    });
    tellMade(output);
    if (!asked.packets) console.warn(say.checkWithoutPackets());
  },
  (error) => nothingBuilt(error, output),
);

async function joinedHere(packets: boolean): Promise<Joined> {
  const facts = readFacts(base, new Gathering("stop"), new Store());
  const { folders } = kitFolders(base, {});
  const inputs = await partInputs({ facts, whole: wholeSite(facts, folders), folders, packets });
  return { inputs, kits: new Map(folders.map((folder) => [slugOf(folder), kitKey(folder, facts)])) };
}
