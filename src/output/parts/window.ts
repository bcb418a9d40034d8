import * as say from "../../words/messages.ts";
import type { Figure } from "../drawing/figure.ts";
import type { PartView, PocketView, WindowView } from "../views/window-view.ts";
import { drawnOnce } from "./drawn-once.ts";
import { type Html, html, raw, rich } from "./markup.ts";

/** What a kit has of them. */
interface LightAndWindow {
  readonly pocket: PocketView | undefined;
  readonly window: WindowView | undefined;
}

/** Writes links to the files to cut by. */
export interface CutLinks {
  readonly ofPart: (file: string) => Html;
  readonly ofSheets: (sheets: WindowView["sheets"]) => Html;
}

/** Light and window of a kit's page, below their heading; nothing for a kit without them. The packet has them in its steps, its table and its templates. */
export function lightAndWindow({ pocket, window }: LightAndWindow, links: CutLinks): Html {
  if (!pocket && !window) return html``;
  return html`${pocket && pocketMarkup(pocket)}
${window && windowMarkup(window, links)}`;
}

function pocketMarkup({ floor, leastRemaining, plan, elevation, largest, notches }: PocketView): Html {
  const most = rich(say.kitLightMost, {
    given: largest.given,
    width: html`<strong>${largest.diameter}</strong>`,
    height: html`<strong>${largest.height}</strong>`,
  });
  const text = rich(say.kitLightText, {
    floor: html`<strong>${floor}</strong>`,
    paper: leastRemaining,
  });
  return html`<h3>${say.kitLight()}</h3>
<p>${text}</p>
<div class="figure-pair">${captioned(plan, "drawn-pocket")}${captioned(elevation, "drawn-pocket-front")}</div>
<p class="key">${most}</p>
<p><meter class="bar" min="0" max="100" value="${largest.share}" aria-label="${say.kitLightShare()}">${say.unitPercent(largest)}</meter></p>
<details class="notches"><summary>${say.kitNotches({ count: notches.length })}</summary>
<ul class="columns">${notches.map(notchItem)}</ul></details>`;
}

function notchItem({ leaf, notch }: PocketView["notches"][number]): Html {
  return html`<li>${say.kitNotch({ leaf, notch })}</li>`;
}

function windowMarkup({ panel, layers, lit, parts, sheets }: WindowView, links: CutLinks): Html {
  const drawnLayers = captioned(layers, "drawn-layers");
  return html`<h3>${say.kitPanes()}</h3>
<p>${panel === "wrap" ? say.kitPanesWrap() : say.kitPanesFlat()}</p>
${lit ? html`<div class="figure-pair">${drawnLayers}${captioned(lit)}</div>` : drawnLayers}
<ul class="parts">${parts.map((part) => partItem(part, links))}</ul>
${links.ofSheets(sheets)}`;
}

function partItem({ name, file, figure, count, material, size, use }: PartView, links: CutLinks): Html {
  const words = rich(say.kitPart, { count, material, size: size, use: use });
  return html`<li><div class="part-figure">${raw(figure.svg)}</div><div><h4>${name}</h4><p>${words}</p>${links.ofPart(
    file,
  )}</div></li>`;
}

function captioned(figure: Figure, id?: Parameters<typeof drawnOnce>[1]): Html {
  const drawing = id ? drawnOnce(figure, id) : raw(figure.svg);
  return html`<figure>${drawing}<figcaption>${figure.label}</figcaption></figure>`;
}
