import type { Parting } from "../../../core/beginning/picture-wish.ts";
import { type Marked, MOST_PARTED } from "../../../core/beginning/picture-wish.ts";
import * as say from "../../../words/messages.ts";
import { type Html, html } from "../markup.ts";
import { choices, type Option, type Range, range, select } from "./controls.ts";

/** A photograph’s controls. */
export interface PartingShown {
  readonly trace: Parting["trace"];
  readonly near: "dark" | "light";
  readonly levels: number;
  /** Bars of 0…100 for the lightness 0…255. */
  readonly histogram: readonly number[];
  /** Ranges for limits, as many as there are. */
  readonly limits: readonly Range[];
  readonly isFound: boolean;
  /** A transparent picture whose shape is told by that. */
  readonly isCutOut: boolean;
  readonly fine: readonly Range[];
  readonly colours: readonly Marked[];
}

export function partingPart(shown: PartingShown): Html {
  const { trace, levels, fine } = shown;
  return html`${choices(
    "trace",
    say.deskNewTrace(),
    [
      { value: "silhouette", label: say.deskNewTraceSilhouette() },
      { value: "tones", label: say.deskNewTraceTones() },
      { value: "colours", label: say.deskNewTraceColours() },
      { value: "depth", label: say.deskNewTraceDepth() },
    ],
    { chosen: trace, look: "in-rows" },
  )}
${trace !== "silhouette" && range({ name: "levels", label: say.deskNewLevels(), least: 2, most: MOST_PARTED, step: 1, value: levels, said: String(levels) })}
${trace === "colours" ? coloursPart(shown) : tonesPart(shown)}
${fine.map(range)}`;
}

function tonesPart({ trace, near, histogram, limits, isFound, isCutOut }: PartingShown): Html {
  const sides = [
    { value: "dark", label: say.deskNewNearDark() },
    { value: "light", label: say.deskNewNearLight() },
  ];
  if (isCutOut) return html`<p class="hint">${say.deskNewCutOut()}</p>`;
  return html`${trace !== "depth" && choices("near", say.deskNewNear(), sides, { chosen: near })}
<div class="bring-limits">${histogramPart(histogram)}${limits.map(range)}</div>
<p><button type="button" data-found${isFound && html` disabled`}>${say.deskNewLimitsFound()}</button></p>`;
}

/** How often each lightness occurs; the bars stand over the sliders’ own way. */
function histogramPart(histogram: readonly number[]): Html {
  const points = histogram.map((count, i) => `L${i} ${100 - Math.sqrt(count / 100) * 100}`);
  return html`<svg class="bring-histogram" viewBox="0 0 255 100" preserveAspectRatio="none" role="img" aria-label="${say.deskNewHistogram()}"><path d="M0 100${points.join("")}L255 100z"/></svg>`;
}

function coloursPart({ colours, levels }: PartingShown): Html {
  const rows = colours.map(({ selector, level }, i) => {
    const fill = typeof selector !== "string" && "fill" in selector ? selector.fill : "#000000";
    return html`<li><div class="field"><label for="bring-colour-${i}">${say.deskNewColour({ number: i + 1 })}</label><input type="color" id="bring-colour-${i}" data-colour="${i}" value="${fill}"></div>${levelSelect(i, say.deskNewColour({ number: i + 1 }), level, levels - 1)}</li>
`;
  });
  return html`<ul class="bring-marks">${rows}</ul>`;
}

/** The level of a mark, from the front to the ground. */
export function levelSelect(i: number, name: string, level: number, most: number): Html {
  const options: Option[] = Array.from({ length: most }, (_, k) => ({
    value: String(k + 1),
    label: k === 0 ? say.deskNewLevelFront() : String(k + 1),
  }));
  const label = html`<span class="sr">${name}</span>`;
  return select(`mark-${i}`, label, [...options, { value: "0", label: say.deskNewLevelGround() }], String(level));
}
