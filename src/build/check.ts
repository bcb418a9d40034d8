import { toDegrees } from "../core/units/angle.ts";
import { KitError } from "../input/files/message.ts";
import { formatSize } from "../words/lengths.ts";
import { openLibrary } from "./library.ts";
import { MisfitError, reportClasses, STOP_AT_MISFIT } from "./report.ts";

/** `npm run check`: reads and computes every kit, prints what came out in a line each, and writes nothing. */
try {
  const { views, classes } = openLibrary(process.cwd());
  for (const { kit, pattern, notes, figures } of views) {
    const { fit } = pattern;
    const size = `${formatSize(fit.width, kit.units)} × ${formatSize(fit.height, kit.units)}`;
    console.log(
      `${kit.slug}: leaves ${fit.firstLeaf} to ${fit.lastLeaf}, ${size}, opening ${toDegrees(fit.opening).toFixed(1)}°, hold width ${formatSize(fit.edgeWidth, kit.units)}, ${figures.hours}`,
    );
    for (const warning of [...pattern.warnings, ...notes]) console.warn(`  warning: ${warning}`);
  }
  reportClasses(classes, process.argv.includes(STOP_AT_MISFIT));
} catch (error) {
  console.error(error instanceof KitError || error instanceof MisfitError ? error.message : error);
  process.exitCode = 1;
}
