import type { Kit } from "../../../src/core/kit/kit.ts";
import { type Assessment, assess } from "../../../src/core/makeability/assessment.ts";
import { keptLevels, type SeenPicture } from "../../../src/core/makeability/kept-levels.ts";
import { type Makeability, makeabilityOf } from "../../../src/core/makeability/makeability.ts";
import { columnsOnFront } from "../../../src/core/makeability/picture-columns.ts";
import type { Viewer } from "../../../src/core/makeability/viewer.ts";
import { computePattern, type FitResult } from "../../../src/core/pattern/compute.ts";
import { type Face, faceOf, layOutPicture } from "../../../src/core/pattern/face.ts";

type Fitting = Extract<FitResult, { readonly fits: true }>;

/** The pattern of a kit that fits. @throws Error where it does not */
export function fitting(kit: Kit): Fitting {
  const result = computePattern(kit);
  if (!result.fits) throw new Error(`does not fit: ${result.finding.kind}`);
  return result;
}

export function assessed(kit: Kit): Assessment {
  return assess(kit, { face: faceFor(kit), pattern: fitting(kit).pattern });
}

export function lookedAt(kit: Kit): Makeability {
  return makeabilityOf({ kit, ...fitting(kit) });
}

/** What a viewer sees of a kit. */
export function seenBy(kit: Kit, viewer: Viewer): SeenPicture {
  const face = faceFor(kit);
  return keptLevels(kit, { pattern: fitting(kit).pattern, face, columns: columnsOnFront(kit, face), viewer })!;
}

function faceFor(kit: Kit): Face {
  const layout = layOutPicture(kit);
  if ("failure" in layout) throw new Error(`is not laid out: ${layout.failure.kind}`);
  return faceOf(kit, layout.value);
}
