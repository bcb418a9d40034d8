import type { Area } from "../../core/geometry/area.ts";
import { extentOf } from "../../core/packing/pack.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { isMotif } from "../../core/window/motif.ts";
import type { Part } from "../../core/window/part.ts";
import type { BookWindow } from "../../core/window/window.ts";
import * as say from "../../words/messages.ts";
import { partName, partUse } from "../../words/parts.ts";
import { type Figure, figureOf } from "./figure.ts";
import { lookedAt, motifLookedAt } from "./looked-at.ts";
import { MATERIAL } from "./material-tints.ts";
import { partDrawing } from "./part-drawing.ts";

/** Free room round a part, mm. */
const PAD = 3;

/** Figures of parts are printed this large, and their lines at this share of the sheets'. */
const PRINTED = 16;
const FINER = 0.4;

/** How high such a figure is shown, CSS px (`.parts .figure` in site.css), and how much of one is not seen. */
const SHOWN = 104;
const UNSEEN = 0.3;

/** One part of a window in a small figure of its own. */
export function partFigure(part: Part, window: BookWindow, units: UnitSystem): Figure {
  const box = extentOf(part);
  const field = {
    left: box.left - PAD,
    top: box.top - PAD,
    width: box.right - box.left + 2 * PAD,
    height: box.bottom - box.top + 2 * PAD,
  };
  const label = say.drawPart({ part: partName(part), use: partUse(part, window, units) });
  const times = (FINER * Math.max(field.width, field.height)) / PRINTED;
  const rough = (UNSEEN * field.height) / SHOWN;
  const look = {
    times,
    labels: false,
    fill: MATERIAL[part.material],
    outline: (rings: Area) => (isMotif(part) ? motifLookedAt(part) : lookedAt(rings, rough)),
  };
  return figureOf(
    field,
    label,
    partDrawing(part, (point) => point, look),
  );
}
