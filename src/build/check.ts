import { makeabilityOf } from "../core/makeability/makeability.ts";
import { toDegrees } from "../core/units/angle.ts";
import { makeabilityLines } from "../words/findings/makeability.ts";
import { formatByHand, formatSize } from "../words/lengths.ts";
import * as say from "../words/messages.ts";
import { fixed } from "../words/numbers.ts";
import { printable } from "../words/printable.ts";
import { readAsked } from "./asked.ts";
import { runCommand } from "./errors/command.ts";
import { speakFirst } from "./library/first-words.ts";
import type { Library } from "./library/library.ts";
import { readSite } from "./read-site.ts";
import { reportClasses } from "./report.ts";
import { chooseSite } from "./site/choose-site.ts";
import { optionNames } from "./site/site-choices.ts";
import { authorWarnings, tellDrafts, tellNobodysAddress, tellStrays } from "./tell.ts";

const CHOICES = ["content", "url"] as const;

/** `npm run check`: reads and computes every kit, or those that are named, prints what came out in a line each, and writes nothing. */
await runCommand(async () => {
  const base = process.cwd();
  speakFirst(base);
  const words = chooseSite(base, process.argv.slice(2), CHOICES);
  const { kits, stopAtMisfit } = readAsked(words, ["stop-at-misfit"], optionNames(CHOICES));
  const library = await readSite(base, kits);
  tellNobodysAddress();
  for (const warning of library.warnings) console.warn(printable(say.checkWarningInside({ warning })));
  for (const view of library.views) {
    console.log(kitLine(view));
    for (const offer of library.offers.get(view.slug) ?? []) console.log(`  ${printable(offer)}`);
    for (const warning of authorWarnings(view)) console.warn(`  ${printable(say.checkWarningInside({ warning }))}`);
    for (const note of view.notes) console.warn(`  ${printable(say.checkNoteInside({ note }))}`);
    for (const line of makeabilityLines(makeabilityOf(view), view.kit)) console.log(`  ${printable(line)}`);
  }
  tellDrafts();
  tellStrays();
  reportClasses(library.classes, stopAtMisfit);
});

function kitLine({ kit, pattern: { fit }, figures }: Library["views"][number]): string {
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
