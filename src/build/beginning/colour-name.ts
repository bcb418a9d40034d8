import Color from "colorjs.io/dist/color.js";
import * as say from "../../words/messages.ts";

type Tone = Parameters<typeof say.newColour>[0]["colour"];

/** Below this chroma in OKLCH a colour is grey. */
const GREY = 0.03;

/** Where hues begin in OKLCH, degrees; the last goes on past 360. */
const HUES: readonly (readonly [number, Tone])[] = [
  [12, "red"],
  [42, "orange"],
  [76, "yellow"],
  [120, "green"],
  [170, "turquoise"],
  [218, "blue"],
  [285, "purple"],
  [330, "pink"],
];

/** A lighter orange or yellow than this is no brown. */
const BROWN = 0.62;

/** What people call a colour, `#rrggbb`: one of a dozen words. */
export function colourName(hex: string): string {
  return say.newColour({ colour: toneOf(hex) });
}

function toneOf(hex: string): Tone {
  const [lightness, chroma, hue] = new Color(hex).to("oklch").coords.map((one) => one ?? 0) as [number, number, number];
  if (chroma < GREY) return lightness > 0.95 ? "white" : lightness < 0.25 ? "black" : "grey";
  const tone = HUES.findLast(([from]) => hue >= from)?.[1] ?? "pink";
  if ((tone === "orange" || tone === "yellow") && lightness < BROWN) return "brown";
  return tone;
}

/** Names of which each stands once: `blue`, `blue 2`. */
export function distinctNames(names: readonly string[]): string[] {
  return names.map((name, i) => {
    const count = names.slice(0, i + 1).filter((one) => one === name).length;
    return count === 1 ? name : say.newColourAgain({ colour: name, count });
  });
}
