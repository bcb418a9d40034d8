import type { Kit } from "../../core/kit/kit.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { Effort } from "../../core/plan/effort.ts";
import type { Insert } from "../../core/window/insert.ts";
import { type Dual, dual, dualDepth, same } from "../../words/dual.ts";
import { closing } from "../drawing/diagrams/closing.ts";
import { doorHinge } from "../drawing/diagrams/door-hinge.ts";
import { holderInPlace } from "../drawing/diagrams/holder-in-place.ts";
import { windowLayers } from "../drawing/parts-figure.ts";
import { pocketElevation } from "../drawing/pocket-figure.ts";
import { hoursText } from "./figures.ts";
import { type Step, step } from "./steps.ts";

/** From the folded book to the lit one: glued things rest while the next are made. Empty without a window. */
export function windowSteps(kit: Kit, pattern: Pattern, effort: Effort): Step[] {
  const { insert, pocket } = pattern;
  const light = pocket ? [lightStep(kit, pattern)] : [];
  if (!insert) return light;
  const motifs = insert.parts.filter((part) => part.name.startsWith("motif "));
  return [
    step("Cut out the window", cutText(insert), {
      ready: "parts",
      gist: "Inner outlines first, then the outer ones; press the door's dashed line, do not cut it.",
      time: hoursText(effort.byStage.part),
      parts: insert.parts.filter((part) => part.material !== "paper").map((part) => part.name),
      tools: ["craft knife", "mat", "metal ruler", "bone folder"],
      figure: windowLayers(insert.parts),
      cautions: ["blade"],
    }),
    step(
      "Glue the base frame and let it dry",
      dual(
        (units) =>
          `With the holder on, run double-sided tape or clear-drying glue round the back of the base frame and press it onto the front tips, closure tab under its marked edge, its rim an even ${dualDepth(insert.wish.lip)[units]} beyond the folded shape all round. Leave the holder on until the glue is dry, as long as its maker says; overnight is safe. Make the door meanwhile.`,
      ),
      {
        gist: "Put the holder on, glue the frame to the front tips, and leave the holder until the glue is dry.",
        parts: ["base frame", "closure tab", "holder"],
        tools: ["double-sided tape", "clear-drying glue"],
        figure: holderInPlace(kit, pattern),
        cautions: ["glue"],
      },
    ),
    step(
      "Glaze the door",
      same(
        `Fold the flap back along the score and open it again. Then fix the glazing to the back of the door with narrow double-sided tape or a glue that its maker names for acetate, clear of the score line at the ${insert.wish.hinge}. Weigh the door down flat while it dries.`,
      ),
      {
        gist: "Fix the glazing to the back of the door, clear of the score line, and weigh it down flat.",
        parts: ["door", "glazing"],
        tools: ["clear-drying glue"],
        cautions: ["glue"],
      },
    ),
    ...(motifs.length > 0
      ? [
          step(
            "Decorate in layers",
            decorateText(
              kit,
              pattern,
              motifs.map((part) => part.name),
            ),
            {
              gist: "Lay the guide under the glazing; the largest motif low and flat, the others raised on card spacers.",
              parts: [...motifs.map((part) => part.name), "decoration guide"],
              tools: ["glue dots"],
              cautions: ["glue"],
            },
          ),
        ]
      : []),
    step(
      "Hang the door",
      same(
        `Fold the flap under the door, glue it to the face of the dry base frame at the ${insert.wish.hinge}, rims lying on each other, and keep the door open a finger's width until it holds.`,
      ),
      {
        gist: "Glue the flap to the dry frame, rims lying on each other, the door a finger's width open until it holds.",
        parts: ["door"],
        tools: ["clear-drying glue"],
        figure: doorHinge(kit, pattern),
        cautions: ["glue"],
      },
    ),
    step(
      "Close it",
      dual(
        (units) =>
          `Glue the button on the door's mark. Tie ${dualDepth(insert.stringLength)[units]} of string into a loop through the tab's hole, long enough to slip over the button.`,
      ),
      {
        gist: "Glue the button on its mark; tie the string through the tab so that the loop slips over it.",
        parts: ["closure tab", "button", "string"],
        tools: ["clear-drying glue"],
        figure: closing(kit, pattern),
        cautions: ["glue"],
      },
    ),
    ...light,
  ];
}

function cutText(insert: Insert): Dual {
  const card = insert.parts.filter((part) => part.material === "card").length;
  return same(
    `Cut ${card} parts of card and the glazing of acetate from the templates or with the cut files: inner outlines first, then the outer ones. Press the dashed line of the door, do not cut it.`,
  );
}

function decorateText(kit: Kit, pattern: Pattern, names: readonly string[]): Dual {
  const [largest, ...others] = names.map((name) => name.replace("motif ", ""));
  const cover = pattern.pocket
    ? dual((units) => ` It covers the light, ${dualDepth(kit.light!.diameter)[units]} wide, that stands behind.`)
    : same("");
  return dual(
    (units) =>
      `Lay the decoration guide under the glazing. The ${largest} goes low and flat on the glazing, over the marked place.${cover[units]} Then set ${others.length > 0 ? `${others.join(" and ")} on card spacers` : "what else you like on card spacers"}, raised, above and beside it. Take the guide away when all is dry.`,
  );
}

function lightStep(kit: Kit, pattern: Pattern): Step {
  const text = dual(
    (units) =>
      `When all glue is dry, take the holder off. Switch the LED light on and stand it in the pocket on its floor, ${dualDepth(kit.light!.setback)[units]} behind the front. It must stand free: no paper touches its sides. Where its foot does not stand steady on the notches, glue in a small floor of card first.`,
  );
  return step("Set the light", text, {
    gist: "When all is dry, stand the LED light on the pocket's floor; no paper may touch it.",
    parts: ["battery LED light"],
    figure: pocketElevation(pattern, pattern.pocket!, kit.units),
    cautions: ["flame", "cell"],
  });
}
