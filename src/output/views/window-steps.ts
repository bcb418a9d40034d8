import type { Kit } from "../../core/kit/kit.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { Effort } from "../../core/plan/effort.ts";
import { type BookWindow, partsOf } from "../../core/window/window.ts";
import { type Dual, dual, dualByHand } from "../../words/dual.ts";
import { hoursText } from "../../words/hours.ts";
import { formatSize } from "../../words/lengths.ts";
import { listText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { closing } from "../drawing/diagrams/closing.ts";
import { doorHinge } from "../drawing/diagrams/door-hinge.ts";
import { holderInPlace } from "../drawing/diagrams/holder-in-place.ts";
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
function decorateSteps(kit: Kit, pattern: Pattern, { motifs, guide }: BookWindow): Step[] {
  if (motifs.length === 0) return [];
  const [largest, ...others] = motifs.map(({ motif }) => motif ?? "");
  const text = dual((units) =>
    [
      say.stepDecorateGuide(),
      say.stepDecorateLargest({ motif: largest! }),
      ...(pattern.pocket ? [say.stepDecorateLight({ width: formatSize(kit.light!.diameter, units) })] : []),
      others.length > 0 ? say.stepDecorateOthers({ motifs: listText(others) }) : say.stepDecorateOwn(),
      say.stepDecorateDry(),
    ].join(" "),
  );
  return [step("window", "decorate", text, { parts: [...motifs, guide], tools: ["glueDots"], cautions: ["glue"] })];
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
