import { describe, expect, it } from "vitest";
import { LEVELS, madePicture } from "./made-picture.ts";
import { overlap, ringRaster, svgRaster } from "./raster.ts";

const PIXELS = [600, 450] as const;
const BOX = { width: 120, height: 90 };
const HULL = "M14 50 H104 Q98 76 70 76 H36 Q20 70 14 50 Z";
const SAIL = "M50 22 L84 46 H50 Z";

/** The boat as an SVG draws it whose corner is at 0,0. */
const boat = (fill: string, parts = `${HULL} ${SAIL}`) =>
  `<path fill="${fill}" transform="translate(-10 -20)" d="${parts}"/>`;

/** An SVG written by hand: `@rim`, `@well` and `@wall` are colours of levels. */
type ByHand = string;

/** How far each level of a picture is where an SVG has it, as librsvg draws both. */
async function overlaps(layers: readonly object[], byHand: ByHand): Promise<number[]> {
  const { map } = madePicture({ ...BOX, layers });
  const found: number[] = [];
  for (const [i, { name }] of LEVELS.entries()) {
    if (name === "wall" || !byHand.includes(`@${name}`)) continue;
    const black = byHand.replace(/@(\w+)/g, (_, level) => (level === name ? "#000" : "#fff"));
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="600" height="450" viewBox="0 0 120 90">${black}</svg>`;
    const painted = map.shapes.map(({ rings, rule, level }) => ({ rings, rule, on: level === i + 1 }));
    const ours = await ringRaster(painted, [0, 0, 120, 90], PIXELS);
    found.push(overlap(ours, await svgRaster(svg, ...PIXELS)));
  }
  return found;
}

describe("kitPicture(kit, matter, levels) beside an SVG with the same transforms", () => {
  it.each<[string, object[], ByHand]>([
    [
      "a layer fills the box as far as its shape allows",
      [
        { level: "rim", file: "boat.svg" },
        { level: "well", oval: {}, width: 10 },
      ],
      `<ellipse cx="60" cy="45" rx="5" ry="3.75" fill="@well"/><g transform="translate(0 9) scale(1.2)">${boat("@rim")}</g>`,
    ],
    [
      "sized by its width, moved, turned and mirrored",
      [
        { level: "rim", file: "boat.svg", at: [50, 40], width: 60, turn: 30, mirror: true },
        { level: "well", rectangle: {} },
      ],
      `<rect width="120" height="90" fill="@well"/><g transform="translate(50 40) rotate(30) scale(-0.6 0.6) translate(-50 -30)">${boat("@rim")}</g>`,
    ],
    [
      "stretched, then turned",
      [
        { level: "well", file: "boat.svg", at: ["50%", "40%"], width: "50%", height: "50%", turn: -75 },
        { level: "rim", rectangle: {}, width: 100, height: 80 },
      ],
      `<rect x="10" y="5" width="100" height="80" fill="@rim"/><g transform="translate(60 36) rotate(-75) scale(0.6 0.75) translate(-50 -30)">${boat("@well")}</g>`,
    ],
    [
      "turned by a quarter, it fits into the box",
      [
        { level: "rim", file: "boat.svg", turn: 90 },
        { level: "well", oval: {}, height: 90 },
      ],
      `<ellipse cx="60" cy="45" rx="60" ry="45" fill="@well"/><g transform="translate(60 45) rotate(90) scale(0.9) translate(-50 -30)">${boat("@rim")}</g>`,
    ],
    [
      "the first layer lies over the others",
      [
        { level: "rim", ring: { width: 12 }, height: 90 },
        { level: "well", file: "boat.svg", names: ["#sail", "#hull"], at: [40, 45], width: 80 },
        { level: "rim", border: { width: 5, corner: 8 } },
      ],
      `<rect x="2.5" y="2.5" width="115" height="85" rx="5.5" fill="none" stroke="@rim" stroke-width="5"/>
       <g transform="translate(40 45) scale(0.8) translate(-50 -30)">${boat("@well")}</g>
       <circle cx="60" cy="45" r="39" fill="none" stroke="@rim" stroke-width="12"/>`,
    ],
    [
      "only what is named",
      [
        { level: "rim", file: "boat.svg", names: "#sail", width: 120, height: 90 },
        { level: "well", ground: { height: 20 } },
      ],
      `<rect y="70" width="120" height="20" fill="@well"/><g transform="scale(1.2 1.5)">${boat("@rim", SAIL)}</g>`,
    ],
    [
      "levels of its own",
      [{ levels: { rim: ["#sail"], well: "#hull" }, file: "boat.svg", width: 100 }],
      `<g transform="translate(10 15)">${boat("@rim", SAIL)}${boat("@well", HULL)}</g>`,
    ],
    [
      "joined and cut",
      [
        {
          level: "rim",
          rectangle: { corner: 10 },
          width: 80,
          height: 40,
          join: [{ oval: {}, at: [60, 20], width: 40, height: 30 }],
          cut: [
            { file: "boat.svg", names: ["#hull"], at: [60, 45], width: 50, turn: 180 },
            { star: { points: 4, inner: 0.5 }, at: [60, 15], width: 16 },
          ],
        },
        {
          level: "well",
          ground: { height: "50%", wave: 8, waves: 1.5 },
          cut: [{ ring: { width: "20%" }, at: [60, 60], width: 50 }],
        },
      ],
      `<mask id="m"><rect width="120" height="90" fill="#fff"/><circle cx="60" cy="60" r="20" fill="none" stroke="#000" stroke-width="10"/></mask>
       <path mask="url(#m)" fill="@well" d="M0 45${Array.from({ length: 600 }, (_, i) => `L${(i + 1) / 5} ${45 - 8 * Math.sin((1.5 * 2 * Math.PI * (i + 1)) / 600)}`).join("")}V90H0Z"/>
       <mask id="n"><rect width="120" height="90" fill="#fff"/>
         <g transform="translate(60 45) rotate(180) scale(0.5) translate(-50 -30)">${boat("#000", HULL)}</g>
         <path fill="#000" transform="translate(60 15) scale(8)" d="M0 -1 L${Math.SQRT1_2 / 2} ${-Math.SQRT1_2 / 2} L1 0 L${Math.SQRT1_2 / 2} ${Math.SQRT1_2 / 2} L0 1 L${-Math.SQRT1_2 / 2} ${Math.SQRT1_2 / 2} L-1 0 L${-Math.SQRT1_2 / 2} ${-Math.SQRT1_2 / 2} Z"/></mask>
       <g mask="url(#n)"><rect x="20" y="25" width="80" height="40" rx="10" fill="@rim"/><ellipse cx="60" cy="20" rx="20" ry="15" fill="@rim"/></g>`,
    ],
  ])("%s", async (_, layers, byHand) => {
    for (const found of await overlaps(layers, byHand)) expect(found).toBeGreaterThan(0.99);
  });
});
