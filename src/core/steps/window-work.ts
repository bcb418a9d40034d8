import type { Kit } from "../kit/kit.ts";
import type { Pattern } from "../pattern/pattern.ts";
import { type BookWindow, partsOf } from "../window/window.ts";
import { type WorkStep, workStep } from "./work-step.ts";

/** From the folded book to the lit one. Empty without window and light. */
export function windowWork(kit: Kit, pattern: Pattern): WorkStep[] {
  const { window, pocket } = pattern;
  return [
    ...(window ? closingWork(kit, window) : []),
    ...(pocket ? [workStep("window", "light", { supplies: ["light", "cells", "card"] })] : []),
  ];
}

/** The holder is cut with the other parts, so it is there when the book is opened; the door is made while the frame dries. */
function closingWork({ drying }: Kit, window: BookWindow): WorkStep[] {
  const { frame, tab, holder, door, glazing, guide, motifs } = window;
  const flat = motifs.some((motif) => motif.spacers === 0);
  const spacers = motifs.some((motif) => motif.spacers > 0);
  return [
    workStep("window", "cut", {
      makes: partsOf(window),
      supplies: ["card", "acetate", "knife", "blades", "mat", "boneFolder"],
      stages: ["part"],
      ready: "parts",
    }),
    workStep("window", "hold", { uses: [holder], supplies: ["ruler"] }),
    workStep("window", "frame", { uses: [frame, tab, holder], supplies: ["tape", "glue"], dries: drying.frame }),
    workStep("window", "glaze", { uses: [door, glazing], supplies: ["tape", "weight"] }),
    ...(motifs.length > 0
      ? [
          workStep("window", "decorate", {
            uses: [...motifs, guide],
            supplies: [...(flat ? (["glueDots"] as const) : []), ...(spacers ? (["spacers"] as const) : []), "ruler"],
          }),
        ]
      : []),
    workStep("window", "hang", { uses: [door], supplies: ["glue"], dries: drying.glue }),
    workStep("window", "close", { uses: [tab], supplies: ["button", "glueDots", "string", "scissors"] }),
  ];
}
