import type { OwnFont } from "../../input/fonts/own-fonts.ts";
import { type Face, facesFor, type Use } from "./faces.ts";

/**
 * The style sheet's fonts. Fonts that the site names belong to our families and stand first, without a range of their own: a
 * browser asks the faces after them first, and these for what those have not.
 */
export function fontStyles(use: Use, own: readonly OwnFont[]): string {
  const faces = facesFor(use);
  const cuts = [...new Map(faces.map((face) => [`${face.family} ${face.weight}`, face])).values()];
  return [...cuts.flatMap((cut) => ownRules(cut, use, own)), ...faces.map((face) => faceRule(face, use))].join("\n");
}

function faceRule({ family, weight, file, range }: Face, use: Use): string {
  return rule(use, [
    `font-family: "${family}"`,
    `src: url("../assets/fonts/${file}") format("woff2")`,
    `font-weight: ${weight}`,
    `unicode-range: ${range.replaceAll(",", ", ")}`,
  ]);
}

/** Of each named family the file whose weight is nearest; those named first are asked first. */
function ownRules({ family, weight }: Face, use: Use, own: readonly OwnFont[]): string[] {
  const wanted = use === "site" ? 400 : Number(weight);
  const names = [...new Set(own.map(({ name }) => name))];
  const away = ({ font: { weights } }: OwnFont): number => Math.max(weights[0] - wanted, wanted - weights[1], 0);
  return names
    .map((name) => own.filter((one) => one.name === name).toSorted((a, b) => away(a) - away(b))[0]!)
    .toReversed()
    .map(({ target, font }) =>
      rule(use, [
        `font-family: "${family}"`,
        `src: url("../assets/fonts/${target}") format("${FORMATS[font.kind]}")`,
        `font-weight: ${weight}`,
      ]),
    );
}

const FORMATS = { woff2: "woff2", woff: "woff", ttf: "truetype", otf: "opentype" } as const;

function rule(use: Use, descriptors: readonly string[]): string {
  const all = use === "site" ? [...descriptors, "font-display: swap"] : descriptors;
  return `@font-face { ${all.map((one) => `${one}; `).join("")}}`;
}
