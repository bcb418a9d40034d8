import type { BroughtDrawing } from "../../../core/beginning/brought.ts";
import type { LevelMap } from "../../../core/picture/level-map.ts";
import * as say from "../../../words/messages.ts";
import { paperTone } from "../../drawing/front/tone.ts";
import { shortRings } from "../../drawing/short-path.ts";
import { type Html, html } from "../markup.ts";

/** A drawing as it paints; each shape says which mark it has. Its longer side has a thousand units. */
export function drawingSeen({ shapes, width, height }: BroughtDrawing, markOf: readonly number[]): Html {
  const scale = 1000 / Math.max(width, height);
  const paths = shapes.map(
    ({ path, rule, colour }, i) =>
      html`<path d="${path}" fill-rule="${rule}" fill="${colour ?? "#8a8f90"}" data-of="${markOf[i] ?? ""}"/>`,
  );
  return html`<svg viewBox="0 0 ${width * scale} ${height * scale}" aria-hidden="true">${paths}</svg>`;
}

/** A photograph as the server shows it. */
export function photographSeen(upload: string): Html {
  return html`<img src="/api/new/seen?upload=${upload}" alt="">`;
}

/** Decimals of a picture whose longer side is divided into some thousands. */
const UNITS = 2000;

/** What becomes of a picture: each level in the tone that its paper has in the book, the proudest the lightest. */
export function mapSeen(map: LevelMap, levels: number): Html {
  const { width, height, background } = map;
  const scale = UNITS / Math.max(width, height);
  const tone = (level: number): string => levelTone(level, levels);
  const paths = map.shapes.map(
    ({ level, rule, rings }) =>
      html`<path d="${shortRings(
        rings.map((ring) => ring.map(([x, y]) => [x * scale, y * scale] as const)),
        0,
      )}" fill-rule="${rule}" fill="${tone(level)}"/>`,
  );
  return html`<svg viewBox="0 0 ${width * scale} ${height * scale}" role="img" aria-label="${say.deskNewBecomesAlt({ count: levels })}"><rect width="100%" height="100%" fill="${tone(background)}"/>${paths}</svg>`;
}

/** Which tone is which level, front to back. */
export function levelKey(names: readonly string[]): Html {
  const items = names.map(
    (name, i) =>
      html`<li><svg class="bring-swatch" viewBox="0 0 10 10" aria-hidden="true"><rect width="10" height="10" fill="${levelTone(i + 1, names.length)}"/></svg><span>${name}</span></li>`,
  );
  return html`<ol class="bring-key">${items}</ol>`;
}

function levelTone(level: number, levels: number): string {
  const share = levels > 1 ? (level - 1) / (levels - 1) : 0;
  return paperTone(share, 1 - 0.32 * share);
}

/** What else may be taken of a picture than the part in the frame. */
export function cropFoot(): Html {
  return html`<p class="buttons"><button type="button" data-crop="canvas" aria-pressed="false">${say.deskNewCropAll()}</button> <button type="button" data-crop="drawing" aria-pressed="false">${say.deskNewCropUsual()}</button></p>
<p class="hint">${say.deskNewCropKeys()}</p>`;
}
