import type { Kit } from "../../core/kit/kit.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { Effort } from "../../core/plan/effort.ts";
import type { Insert } from "../../core/window/insert.ts";
import { type Dual, dual, dualByHand } from "../../words/dual.ts";
import { hoursText } from "../../words/hours.ts";
import { formatSize } from "../../words/lengths.ts";
import { listText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { stepPart } from "../../words/step-parts.ts";
import { closing } from "../drawing/diagrams/closing.ts";
import { doorHinge } from "../drawing/diagrams/door-hinge.ts";
import { holderInPlace } from "../drawing/diagrams/holder-in-place.ts";
import { windowLayers } from "../drawing/parts-figure.ts";
import { pocketElevation } from "../drawing/pocket-figure.ts";
import { type Step, step } from "./step.ts";

/** From the folded book to the lit one: glued things rest while the next are made. Empty without window and light. */
export function windowSteps(kit: Kit, pattern: Pattern, effort: Effort): Step[] {
  const { insert, pocket } = pattern;
  const light = pocket ? [lightStep(kit, pattern)] : [];
  if (!insert) return light;
  return [
    cutStep(insert, effort),
    step("window", "frame", frameText(insert), {
      parts: ["base-frame", "closure-tab", "holder"],
      tools: ["tape", "glue"],
      figure: holderInPlace(kit, pattern),
      cautions: ["glue"],
    }),
    step("window", "glaze", say.stepGlazeText(insert.wish), {
      parts: ["door", "glazing"],
      tools: ["glue"],
      cautions: ["glue"],
    }),
    ...decorateSteps(kit, pattern, insert),
    step("window", "hang", say.stepHangText(insert.wish), {
      parts: ["door"],
      tools: ["glue"],
      figure: doorHinge(kit, pattern),
      cautions: ["glue"],
    }),
    step("window", "close", closeText(insert), {
      parts: ["closure-tab", "button", "string"],
      tools: ["glue"],
      figure: closing(kit, pattern),
      cautions: ["glue"],
    }),
    ...light,
  ];
}

function cutStep({ parts }: Insert, effort: Effort): Step {
  const count = parts.filter((part) => part.material === "card").length;
  return step("window", "cut", say.stepCutText({ count }), {
    ready: "parts",
    time: hoursText(effort.byStage.part),
    parts: parts.filter((part) => part.material !== "paper").map(stepPart),
    tools: ["craftKnife", "mat", "metalRuler", "boneFolder"],
    figure: windowLayers(parts),
    cautions: ["blade"],
  });
}

function frameText({ wish }: Insert): Dual {
  return dual((units) => say.stepFrameText({ lip: formatSize(wish.lip, units) }));
}

/** One step where the kit has motifs. */
function decorateSteps(kit: Kit, pattern: Pattern, { parts }: Insert): Step[] {
  const motifs = parts.map(stepPart).filter((part) => typeof part === "object");
  if (motifs.length === 0) return [];
  const [largest, ...others] = motifs.map(({ motif }) => motif);
  const text = dual((units) =>
    [
      say.stepDecorateGuide(),
      say.stepDecorateLargest({ motif: largest! }),
      ...(pattern.pocket ? [say.stepDecorateLight({ width: formatSize(kit.light!.diameter, units) })] : []),
      others.length > 0 ? say.stepDecorateOthers({ motifs: listText(others) }) : say.stepDecorateOwn(),
      say.stepDecorateDry(),
    ].join(" "),
  );
  const parted = [...motifs, "decoration-guide"] as const;
  return [step("window", "decorate", text, { parts: parted, tools: ["glueDots"], cautions: ["glue"] })];
}

function closeText({ stringLength }: Insert): Dual {
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
