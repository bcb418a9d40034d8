import { type Fan, leafTip } from "../../../core/fan/fan.ts";
import type { Pocket } from "../../../core/light/light.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { shortStrip } from "../short-path.ts";
import { num, tag } from "../svg-text.ts";
import { foldWidth, leavesOutsideIn } from "./leaves.ts";

/** How far the glow reaches on deep paper, as a share of the picture's height, and how far on all of it. */
const DEEP_REACH = 0.62;
const HALO_REACH = 0.85;

/** Warm light on the paper: strong on what stands at the light's level or deeper, a faint halo on everything near. */
export function glow(pattern: Pattern, pocket: Pocket, fan: Fan): string {
  const { centre, light, floor } = pocket;
  const y = floor - light.height * 0.6;
  const deepFrom = pattern.levels[light.level - 1]!.depth;
  const deep = leavesOutsideIn(pattern, fan).flatMap(({ j, reaches }) =>
    reaches
      .filter((reach) => reach.depth >= deepFrom)
      .map((reach) => {
        const tip = leafTip(fan, j, reach.depth).x;
        const width = foldWidth(pattern, fan, j, reach.depth) * 1.06;
        return shortStrip([tip - width / 2, tip + width / 2], reach.from, reach.to);
      }),
  );
  const halo = pattern.fit.height * HALO_REACH;
  return [
    "<defs>",
    radial("glow-deep", centre.x, y, pattern.fit.height * DEEP_REACH, [
      [0, "#fff3c4", 0.98],
      [0.3, "#ffce6b", 0.9],
      [0.7, "#e08a2c", 0.62],
      [1, "#7a3b12", 0.3],
    ]),
    radial("glow-halo", centre.x, y, halo, [
      [0, "#ffd98a", 0.42],
      [0.5, "#ffb84d", 0.16],
      [1, "#ffb84d", 0],
    ]),
    "</defs>",
    tag("path", { d: deep.join(""), fill: "url(#glow-deep)" }),
    tag("circle", { cx: centre.x, cy: y, r: halo, fill: "url(#glow-halo)" }),
  ].join("");
}

/** The light itself, standing in its pocket in front of the leaves that were notched for it. */
export function lightBody(pocket: Pocket): string {
  const { centre, light, floor } = pocket;
  const left = centre.x - light.diameter / 2;
  const top = floor - light.height;
  return [
    `<defs>${radial("glow-body", centre.x, floor - light.height * 0.62, light.height * 0.75, [
      [0, "#fffdf2", 1],
      [0.55, "#ffeeb5", 1],
      [1, "#f4b552", 1],
    ])}</defs>`,
    tag("rect", {
      x: left,
      y: top,
      width: light.diameter,
      height: light.height,
      rx: light.diameter * 0.16,
      fill: "url(#glow-body)",
    }),
  ].join("");
}

function radial(
  id: string,
  x: number,
  y: number,
  r: number,
  stops: readonly (readonly [number, string, number])[],
): string {
  const inside = stops
    .map(
      ([offset, colour, opacity]) =>
        `<stop offset="${num(offset)}" stop-color="${colour}" stop-opacity="${num(opacity)}"/>`,
    )
    .join("");
  return `<radialGradient id="${id}" gradientUnits="userSpaceOnUse" cx="${num(x)}" cy="${num(y)}" r="${num(r)}">${inside}</radialGradient>`;
}
