import { toDegrees } from "../core/units/angle.ts";
import { formatByHand, formatSize } from "../words/lengths.ts";
import * as say from "../words/messages.ts";
import { fixed } from "../words/numbers.ts";
import { foreseen } from "./errors/foreseen.ts";
import { type Library, openLibrary } from "./library/library.ts";
import { reportClasses, STOP_AT_MISFIT } from "./report.ts";
import { authorWarnings } from "./tell.ts";

/** `npm run check`: reads and computes every kit, prints what came out in a line each, and writes nothing. */
try {
  const { views, classes, warnings } = openLibrary(process.cwd());
  for (const warning of warnings) console.warn(say.checkWarningInside({ warning }));
  for (const view of views) {
    console.log(kitLine(view));
    for (const warning of authorWarnings(view)) console.warn(`  ${say.checkWarningInside({ warning })}`);
  }
  reportClasses(classes, process.argv.includes(STOP_AT_MISFIT));
} catch (error) {
  console.error(foreseen(error) ?? error);
  process.exitCode = 1;
}

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
