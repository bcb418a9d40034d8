import type { Kit } from "../../core/kit/kit.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { Effort } from "../../core/plan/effort.ts";
import type { Insert } from "../../core/window/insert.ts";
import { dual, dualByHand, dualDepth } from "../../words/dual.ts";
import { hoursText } from "../../words/hours.ts";
import { listed } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { stepPart } from "../../words/parts.ts";
import { closing } from "../drawing/diagrams/closing.ts";
import { doorHinge } from "../drawing/diagrams/door-hinge.ts";
import { holderInPlace } from "../drawing/diagrams/holder-in-place.ts";
import { windowLayers } from "../drawing/parts-figure.ts";
import { pocketElevation } from "../drawing/pocket-figure.ts";
import { type Step, type StepWords, step } from "./step.ts";

/** From the folded book to the lit one: glued things rest while the next are made. Empty without window and light. */
export function windowSteps(kit: Kit, pattern: Pattern, effort: Effort): Step[] {
  const { insert, pocket } = pattern;
  const light = pocket ? [lightStep(kit, pattern)] : [];
  if (!insert) return light;
  return [
    cutStep(insert, effort),
    step("window", frameWords(insert), {
      parts: ["baseFrame", "closureTab", "holder"],
      tools: ["tape", "glue"],
      figure: holderInPlace(kit, pattern),
      cautions: ["glue"],
    }),
    step("window", glazeWords(insert), { parts: ["door", "glazing"], tools: ["glue"], cautions: ["glue"] }),
    ...decorateSteps(kit, pattern, insert),
    step("window", hangWords(insert), {
      parts: ["door"],
      tools: ["glue"],
      figure: doorHinge(kit, pattern),
      cautions: ["glue"],
    }),
    step("window", closeWords(insert), {
      parts: ["closureTab", "button", "string"],
      tools: ["glue"],
      figure: closing(kit, pattern),
      cautions: ["glue"],
    }),
    ...light,
  ];
}

function cutStep({ parts }: Insert, effort: Effort): Step {
  const count = parts.filter((part) => part.material === "card").length;
  const words = { title: say.stepCut(), text: say.stepCutText({ count }), gist: say.stepCutGist() };
  return step("window", words, {
    ready: "parts",
    time: hoursText(effort.byStage.part),
    parts: parts.filter((part) => part.material !== "paper").map(stepPart),
    tools: ["craftKnife", "mat", "metalRuler", "boneFolder"],
    figure: windowLayers(parts),
    cautions: ["blade"],
  });
}

function frameWords({ wish }: Insert): StepWords {
  return {
    title: say.stepFrame(),
    text: dual((units) => say.stepFrameText({ lip: dualDepth(wish.lip)[units] })),
    gist: say.stepFrameGist(),
  };
}

function glazeWords({ wish: { hinge } }: Insert): StepWords {
  return { title: say.stepGlaze(), text: say.stepGlazeText({ hinge }), gist: say.stepGlazeGist() };
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
      ...(pattern.pocket ? [say.stepDecorateLight({ width: dualDepth(kit.light!.diameter)[units] })] : []),
      others.length > 0 ? say.stepDecorateOthers({ motifs: listed(others) }) : say.stepDecorateOwn(),
      say.stepDecorateDry(),
    ].join(" "),
  );
  return [
    step(
      "window",
      { title: say.stepDecorate(), text, gist: say.stepDecorateGist() },
      { parts: [...motifs, "decorationGuide"], tools: ["glueDots"], cautions: ["glue"] },
    ),
  ];
}

function hangWords({ wish: { hinge } }: Insert): StepWords {
  return { title: say.stepHang(), text: say.stepHangText({ hinge }), gist: say.stepHangGist() };
}

function closeWords({ stringLength }: Insert): StepWords {
  const string = dualByHand(stringLength);
  return {
    title: say.stepClose(),
    text: dual((units) => say.stepCloseText({ string: string[units] })),
    gist: say.stepCloseGist(),
  };
}

function lightStep(kit: Kit, pattern: Pattern): Step {
  const setback = dualDepth(kit.light!.setback);
  const text = dual((units) => say.stepLightText({ setback: setback[units] }));
  return step(
    "window",
    { title: say.stepLight(), text, gist: say.stepLightGist() },
    {
      parts: ["light"],
      figure: pocketElevation(pattern, pattern.pocket!, kit.units),
      cautions: ["flame", "cell"],
    },
  );
}
