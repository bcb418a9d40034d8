import { boxOf } from "../../core/geometry/box.ts";
import type { Kit } from "../../core/kit/kit.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { Effort } from "../../core/plan/effort.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import type { MotifPart } from "../../core/window/motif.ts";
import { type BookWindow, partsOf } from "../../core/window/window.ts";
import { type Dual, dual, dualByHand } from "../../words/dual.ts";
import { hoursText } from "../../words/hours.ts";
import { formatByHand, formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { materialName } from "../../words/parts.ts";
import { closing } from "../drawing/diagrams/closing.ts";
import { doorHinge } from "../drawing/diagrams/door-hinge.ts";
import { holderInPlace } from "../drawing/diagrams/holder-in-place.ts";
import { motifsInPlace } from "../drawing/diagrams/motifs-in-place.ts";
import { windowLayers } from "../drawing/parts-figure.ts";
import { pocketElevation } from "../drawing/pocket-figure.ts";
import { type Step, step } from "./step.ts";

/** From the folded book to the lit one: glued things rest while the next are made. Empty without window and light. */
export function windowSteps(kit: Kit, pattern: Pattern, effort: Effort): Step[] {
  const { window, pocket } = pattern;
  const light = pocket ? [lightStep(kit, pattern)] : [];
  if (!window) return light;
  const { frame, tab, holder, door, glazing } = window;
  return [
    cutStep(window, effort),
    step("window", "frame", frameText(window), {
      parts: [frame, tab, holder],
      tools: ["tape", "glue"],
      figure: holderInPlace(kit, pattern),
      cautions: ["glue"],
    }),
    step("window", "glaze", say.stepGlazeText(window.wish), {
      parts: [door, glazing],
      tools: ["glue"],
      cautions: ["glue"],
    }),
    ...decorateSteps(kit, pattern, window),
    step("window", "hang", say.stepHangText(window.wish), {
      parts: [door],
      tools: ["glue"],
      figure: doorHinge(kit, pattern),
      cautions: ["glue"],
    }),
    step("window", "close", closeText(window), {
      parts: [tab, "button", "string"],
      tools: ["glue"],
      figure: closing(kit, pattern),
      cautions: ["glue"],
    }),
    ...light,
  ];
}

function cutStep(window: BookWindow, effort: Effort): Step {
  const parts = partsOf(window);
  const count = parts.filter((part) => part.material === "card").length;
  return step("window", "cut", say.stepCutText({ count }), {
    ready: "parts",
    time: hoursText(effort.byStage.part),
    parts: parts.filter((part) => part.material !== "paper"),
    tools: ["craftKnife", "mat", "metalRuler", "boneFolder"],
    figure: windowLayers(window),
    cautions: ["blade"],
  });
}

function frameText({ wish }: BookWindow): Dual {
  return dual((units) => say.stepFrameText({ lip: formatSize(wish.lip, units) }));
}

/** One step where the kit has motifs. */
function decorateSteps(kit: Kit, pattern: Pattern, { motifs, guide, frame }: BookWindow): Step[] {
  if (motifs.length === 0) return [];
  const { left, top } = boxOf(frame.outlines);
  const set = ({ motif, material, card, spacers, seat }: MotifPart, i: number, units: UnitSystem): string =>
    say.stepDecorateMotif({
      number: i + 1,
      motif: motif ?? "",
      card: materialName({ material, ...(card ? { card } : {}) }),
      spacers,
      left: formatByHand(seat[0] - left, units),
      top: formatByHand(seat[1] - top, units),
    });
  const text = dual((units) =>
    [
      say.stepDecorateGuide(),
      say.stepDecorateMeasure(),
      ...motifs.map((motif, i) => set(motif, i, units)),
      say.stepDecorateDry(),
    ].join(" "),
  );
  const figure = motifsInPlace(kit, pattern);
  return [
    step("window", "decorate", text, { parts: [...motifs, guide], tools: ["glueDots"], figure, cautions: ["glue"] }),
  ];
}

function closeText({ stringLength }: BookWindow): Dual {
  const string = dualByHand(stringLength);
  return dual((units) => say.stepCloseText({ string: string[units] }));
}

function lightStep(kit: Kit, pattern: Pattern): Step {
  const text = dual((units) => say.stepLightText({ setback: formatSize(kit.light!.setback, units) }));
  return step("window", "light", text, {
    parts: ["light"],
    figure: pocketElevation(pattern, pattern.pocket!, kit.units),
    cautions: ["flame", "cell"],
  });
}
