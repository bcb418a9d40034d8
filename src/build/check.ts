import { toDegrees } from "../core/units/angle.ts";
import { readKit } from "../input/kit/read-kit.ts";
import type { KitViewBase } from "../output/views/kit-view.ts";
import { formatByHand, formatSize } from "../words/lengths.ts";
import * as say from "../words/messages.ts";
import { fixed } from "../words/numbers.ts";
import { printable } from "../words/printable.ts";
import { readAsked } from "./asked.ts";
import { runCommand } from "./errors/command.ts";
import { tellReports } from "./library/class-report.ts";
import { speakFirst } from "./library/first-words.ts";
import type { KitEntry } from "./library/kit-entry.ts";
import type { Library } from "./library/library.ts";
import { makeableLines } from "./library/makeable-lines.ts";
import { readSite } from "./read-site.ts";
import { chooseSite } from "./site/choose-site.ts";
import { optionNames } from "./site/site-choices.ts";
import { codeKey } from "./store/code-keys.ts";
import { keyOf } from "./store/store.ts";
import { tellDrafts, tellNobodysAddress, tellStrays } from "./tell.ts";

const CHOICES = ["content", "url"] as const;

/** `npm run check`: reads and computes every kit, or those that are named, prints what came out in a line each, and writes nothing. */
await runCommand(async () => {
  const base = process.cwd();
  speakFirst(base);
  const words = chooseSite(base, process.argv.slice(2), CHOICES);
  const { kits, stopAtMisfit } = readAsked(words, ["stop-at-misfit"], optionNames(CHOICES));
  const { library, crew } = await readSite(base, kits);
  const used = await crew.close();
  tellNobodysAddress();
  for (const warning of library.warnings) console.warn(printable(say.checkWarningInside({ warning })));
  for (const kit of library.kits) {
    const { line, makeable } = linesOf(kit, library);
    console.log(line);
    for (const offer of kits.length > 0 ? offersOf(kit, library) : []) console.log(`  ${printable(offer)}`);
    for (const warning of kit.warnings) console.warn(`  ${printable(say.checkWarningInside({ warning }))}`);
    for (const note of kit.notes) console.warn(`  ${printable(say.checkNoteInside({ note }))}`);
    for (const one of makeable) console.log(`  ${printable(one)}`);
  }
  tellDrafts();
  tellStrays();
  library.store.close(used);
  tellReports(
    library.classes.map(({ report }) => report),
    stopAtMisfit,
  );
});

/** What came out of a kit, and how well it can be made, in lines. */
interface KitLines {
  readonly line: string;
  readonly makeable: readonly string[];
}

function linesOf({ slug, key }: KitEntry, { store, view }: Library): KitLines {
  return store.value(keyOf("check", codeKey(import.meta.filename), key), () => {
    const one = view(slug);
    return { line: kitLine(one), makeable: makeableLines(one) };
  });
}

/** By what shapes of a kit's drawings can be picked, a text for each file. */
function offersOf({ slug }: KitEntry, { base, motifs, fonts, folder }: Library): readonly string[] {
  return readKit(folder(slug), base, motifs, fonts).offers();
}

function kitLine({ kit, pattern: { fit }, figures }: KitViewBase): string {
  return say.checkKit({
    kit: kit.slug,
    first: fit.firstLeaf,
    last: fit.lastLeaf,
    width: formatSize(fit.width, kit.units),
    height: formatSize(fit.height, kit.units),
    opening: say.unitDegree({ degrees: fixed(toDegrees(fit.opening), 1) }),
    hold: formatByHand(fit.holdWidth, kit.units),
    hours: figures.hours,
  });
}
